### Inspecting bulk against a sealed sample.

inspection-title = Bulk inspection { $number }
inspection-list = Bulk inspections
inspection-head = Inspection
inspection-none = No bulk was inspected against it yet.
inspection-do = Inspect bulk
inspection-what = A sample of a finished lot is inspected against the sealed sample and its revision.
inspection-no-safety = Passing this inspection says nothing about safety. A licensed laboratory and local law decide that.
inspection-follows = Mended after
inspection-followed = Inspected again in
inspection-earlier = Inspections against this seal: { $count }
inspection-blocked = What keeps bulk from being inspected: { $count }
inspection-open-other = Open that inspection

## The lot and its plan

inspection-lot = Lot
inspection-lot-help = How many finished pieces the lot has of each colourway and size. Leave a field empty where there are none.
inspection-count-wrong = Write a whole number from 0 to { $most }.
inspection-plan = Sampling plan
inspection-plan-of = { $sample } of { $lot } pieces are inspected
inspection-plan-moved = The lot was changed after its plan was shown. This is its plan now.
inspection-show-plan = Show the plan
inspection-begin = Begin this inspection
inspection-level = Inspection level
inspection-aql = AQL
inspection-aql-of = AQL, { $class } defects
inspection-usual = Level II with 2.5 and 4.0 is common practice, no source.
inspection-critical-rule = A critical defect has no acceptable level: one rejects the lot.
inspection-critical-found = Pieces with a critical defect:
inspection-class = Defects
inspection-code = Code letter
inspection-sample = Sample
inspection-accept = Accept
inspection-reject = Reject
inspection-done = Inspected
inspection-found = Defective
inspection-of = { $done } of { $sample }
inspection-every-piece = every piece of the lot
inspection-arrow = Where an arrow of the table leads to another letter, that letter’s sample counts.
inspection-source = Single sampling, normal inspection, by the tables of MIL-STD-105E.
inspection-colourway = Colourway
inspection-size = Size
inspection-in-lot = In the lot
inspection-draw = Draw
inspection-to-draw = What to draw
inspection-draw-how = Drawn in proportion to the lot, at least one of each where the sample allows it: common practice, no source. Draw at random.

## What was found

inspection-begun = Begun by
inspection-within = Each plan counts its own first pieces, in the order in which they are drawn. A piece counts in the class of its worst defect.
inspection-points-rule = A critical point out of tolerance is a major defect, another point a minor one: common practice, no source.
inspection-pieces = Pieces
inspection-nothing-yet = No piece was inspected yet.
inspection-correct = Correct
inspection-sound = Without a defect: { $count }
inspection-corrected = Corrected entries: { $count }
inspection-measured = values: { $count }
inspection-no-defect = No defect
inspection-enter-beyond = Critical defect beyond the sample
inspection-conceded = These were let pass on the sealed sample. Here they count as defects all the same: the brand decides.
inspection-curve = What the plans can tell
inspection-curve-what = How likely this lot is accepted, by the share of it that is defective. A lot worse than the AQL may be accepted, and a better one rejected.
inspection-curve-share = Share defective
inspection-curve-likelihood = Likelihood of acceptance
inspection-curve-at = with { $share } defective, accepted with { $likelihood }

## What is next

inspection-enter = Inspect a piece
inspection-conclude = Conclude
inspection-conclude-what = The program says from the entries whether the lot is accepted or rejected.
inspection-conclude-final = After that no piece can be entered or corrected.
inspection-concluded = Conclusion
inspection-decide = Decide on the lot
inspection-decide-final = A decision is not changed later.
inspection-reason-help = Everything but a release needs a reason. For a concession name the defects that are let pass.
inspection-released-help = The lot may be shipped.
inspection-concession-help = The lot is shipped although it was rejected. Name the defects.
inspection-rework-help = The factory sorts and mends the lot. Then it is inspected again.
inspection-refused-help = The lot is not taken.
inspection-fails-critical = Pieces with a critical defect: { $count }. One is enough.
inspection-fails = Pieces that count as { $class }: { $found }. At most { $accept } may be accepted.
inspection-next-fails = What was found rejects the lot. Conclude the inspection.
inspection-next-enter = Inspect the pieces: { $done } of { $sample } are done.
inspection-next-enter-other = { $org } inspects the lot.
inspection-next-conclude = The sample is inspected. Conclude the inspection.
inspection-next-decide = Decide on this lot.
inspection-next-decide-other = The brand decides on this lot.
inspection-next-again = { $org } sorts and mends the lot. Then it is inspected again.
inspection-next-done = Nothing is left to do here.
inspection-again = Inspect the mended lot

## Entering a piece

inspection-corrects = This piece was entered before. What you save counts instead; the older entry stays to be read.
inspection-other-sort = Another colourway or size
inspection-defects = Defects
inspection-defects-how = Without a defect, save at once.
inspection-classes = Critical: it can hurt somebody; when in doubt, choose this. Major: the garment is likely to fail, or to serve much less. Minor: it departs from what was asked, and the garment serves all the same.
inspection-defect = Defect { $number }
inspection-class-of = Class
inspection-where = Where
inspection-nowhere = Not in this list
inspection-times = How many
inspection-words = In words
inspection-more = More defects
inspection-values = Measured values
inspection-other-points = Other points: { $count }
inspection-class-missing = Choose critical, major or minor.
inspection-times-wrong = Write a whole number from 1 to { $most }.
inspection-moved-on = Somebody entered that piece meanwhile. Yours is piece { $number } now: save it once more.
