### What the program's own values are called.

## Sections of a spec

section-header = Header
section-sizes = Sizes
section-drawings = Drawings
section-points = Points of measure
section-colourways = Parts and colourways
section-materials = Materials
section-construction = Construction
section-artwork = Artwork
section-labels = Labels and care
section-packing = Packing

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = As sewn
measured-after-finish = After garment finish
measured-after-washes = { $count ->
    [one] After { $count } wash
   *[other] After { $count } washes
}

## Units

unit-cm = cm
unit-mm = mm
unit-inch = inch

## Drawings


## Points of measure


## Readiness

severity-error = Error
severity-warning = Warning

## Who takes part

side-brand = Brand
side-factory = Factory
role-owner = Owner
role-designer = Designer
role-viewer = Viewer
role-merchandiser = Merchandiser
role-sample-room = Sample room
role-inspector = Inspector

## Revisions

standing-current = Current
standing-superseded = Superseded
standing-withdrawn = Withdrawn
agreement-shared = Shared
agreement-acknowledged = Acknowledged
agreement-signed-by-factory = Signed by the factory
agreement-signed-by-brand = Signed by the brand
agreement-signed-by-both = Signed by both

## Threads

thread-kind-question = question
thread-kind-must-fix = must-fix
thread-kind-suggestion = suggestion
thread-kind-concession = concession request
thread-state-open = open
thread-state-answered = answered
thread-state-agreed = agreed
thread-state-changed = changed in revision { $revision }
thread-state-verified = verified on a sample of revision { $revision }
thread-state-closed = closed
thread-state-granted = let pass

## Sample rounds

round-kind-proto = Proto
round-kind-fit = Fit
round-kind-size-set = Size set
round-kind-pre-production = Pre-production
round-kind-top-of-production = Top of production
round-state-requested = requested
round-state-in-work = in work
round-state-dispatched = dispatched
round-state-received = received
round-state-measured = measured
round-materials-actual = the materials of the spec
round-materials-substitute = substitutes
round-outcome-approved = approved
round-outcome-approved-with-changes = approved with changes
round-outcome-remake = remake
round-outcome-cancelled = cancelled
wash-before = Before washing
wash-after = After washing
skip-absent = This piece does not have it
skip-unfinished = Not sewn yet
skip-damaged = The piece is damaged here
skip-unclear = I do not understand how to measure it

## Bulk inspections

inspection-critical = critical
inspection-major = major
inspection-minor = minor
inspection-open = open
inspection-accepted = accepted
inspection-rejected = rejected
inspection-released = released
inspection-concession = let pass with a concession
inspection-rework = sent back to be mended
inspection-refused = refused

## Acts in the ledger

act-create = Style started
act-publish = Revision published
act-withdraw = Revision withdrawn
act-share = Shared with a factory
act-unshare = No longer shared with a factory
act-acknowledge = Revision acknowledged
act-ask = Thread raised
act-message = Message sent
act-thread-move = Thread moved on
act-request-round = Sample round asked for
act-round-move = Sample round moved on
act-measure = Measurement taken
act-skip = Point left out
act-photograph = Piece photographed
act-decide = Sample round decided
act-submit = Option submitted
act-approve = Option decided
act-seal = Sample sealed
act-begin-inspection = Bulk inspection begun
act-inspect = Piece inspected
act-conclude-inspection = Bulk inspection concluded
act-decide-inspection = Lot decided
act-sign = Signed
act-translate = Translated
act-translate-message = Message translated
act-erase = Personal text erased
