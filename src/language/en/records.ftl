### The signed record of a revision or a round.

record-title = Signed record
record-link = Signed record
record-round = Round { $number }
record-round-head = Sample round
record-download = Download the record
record-what = Who put their name to what, and when, with the entries of the ledger that tell of it. The downloaded file carries the signature of this service and can be checked on any machine, years later.
record-style = Style
record-made = Written
record-digest = SHA-256 of what is signed
record-nothing = Nothing is decided yet.
record-names = Names
record-unsigned = Nobody has signed yet.
record-moved = Values were corrected after this signature; it was put to:
record-chain = Ledger
record-chain-what = The ledger had { $count } entries when this was written. These tell of it; each carries the hash of the one before.
record-head = End of the ledger
record-how = Check it
record-how-what = The program checks the file without a connection and names the value that was changed:
record-key = The public key of this service. Keep a copy of it elsewhere, so that nobody can put another in its place:
