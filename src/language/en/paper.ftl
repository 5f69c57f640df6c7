### Prints, and the page behind their code.

## The sheets

paper-identity = Identity and changes
paper-pattern = Pattern room
paper-cutting = Cutting and materials
paper-sewing = Sewing
paper-artwork = Artwork
paper-labels = Labels and packing
paper-inspection = Inspection
paper-nothing = Nothing is said here.
paper-left-out = Not attached, since the originals together are larger than { $most } MB: { $names }. Download them from the page of the revision.
paper-page = Page
paper-changed = changed since revision { $revision }; what it was is struck through
paper-scan = Is this print still valid? Scan.
paper-for = Printed for
paper-printed = Printed
paper-band-draft = DRAFT. Do not sew from this.
paper-band-superseded = SUPERSEDED by revision { $revision }. Do not sew from this.
paper-band-withdrawn = WITHDRAWN. Stop. Do not sew from this.
paper-no-chart = There is no size chart yet: some values are missing.
paper-true-size = Print at 100 %. The ruler must measure 100 mm.
paper-larger = This page is { $width } × { $height } mm, larger than the others. Print it at 100 % on large paper or in tiles.
paper-found = Found
paper-inspector = Inspector
paper-day = Date
paper-pieces = Pieces, sample or lot
paper-stage = Round
paper-how-to-fill = Write what you measured beside each value. Measure flat and relaxed, unless the point says something else.

## Where a print is asked for

print-title = Print
print-what = One PDF with the sheets that you choose. The originals of drawings and artwork are attached to it.
print-language = Language
print-second = Second language
print-one = One language only
print-paper = Paper
print-sheets = Sheets
print-for = Printed for
print-own = the brand itself
print-make = Make the PDF
print-no-address = Nothing is printed: the code on every page would lead to this machine alone. Whoever runs the program sets its public address first.
print-no-font = Nothing is printed: this machine has no font for { $letters }. Whoever runs it installs: { $packages }
print-failed = The PDF could not be made. Try fewer sheets.

## The page behind the code on a print

now-title = Is this print still valid?
now-current = Current
now-superseded = Superseded
now-withdrawn = Withdrawn
now-draft = Draft
now-go = This print shows revision { $revision }, which is current.
now-stop = Do not sew from this. Revision { $revision } is newer.
now-draft-stop = A draft is never made from. Wait for a published revision.
now-changes = { $count ->
    [one] 1 change since then
   *[other] { $count } changes since then
}
now-checked = Checked at { $time } UTC
now-see = See the revision
