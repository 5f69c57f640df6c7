### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }, { $direction }
evaluation-some-points = { $count ->
    [one] { $count } point
   *[other] { $count } points
}
evaluation-whole-garment = The whole garment

## Causes

evaluation-proportional-shift = { $place }: long and short points are off by the same share, { $share } %. The fabric has shrunk or stretched, or the pattern allows wrongly for it. Make the pattern × { $factor } there.
evaluation-constant-error = { $place }: every point is off by the same length, { $by }, whether it is long or short. Look at seam allowance and cutting, or at the tape that was measured with.
evaluation-single-point = { $points }: off by { $by } in size { $size }, and nothing else explains it. Look at how this point is cut and sewn.
evaluation-base-pattern = { $points }: off by { $by } in every size that was measured. Correct the base pattern there.
evaluation-grading = { $place }: off by more the further a size is from the base size; the steps differ from the chart's by { $share } %. Correct the grading.
evaluation-size-pattern = { $place }: off by { $by } in size { $size } alone. Look at the pattern of this size.
evaluation-one-piece = { $points }: off by { $by } on piece { $pieces } alone. Measure it again; if it stays, this piece was sewn differently.
evaluation-unsteady = { $points }: the pieces of size { $size } differ from each other more than measuring explains. Look at the sewing, or agree how to measure.
evaluation-wrong-label = Piece { $pieces } carries the size { $size } and measures as { $really }. Check its label, or which pattern it was cut from.
evaluation-swapped-sizes = Pieces { $pieces } carry each other’s size: the first is said to be { $size } and measures as { $really }. Exchange their labels.
evaluation-doubled = Piece { $pieces }, { $points }: about twice what it should be. The whole way round was written instead of the half: measure again.
evaluation-halved = Piece { $pieces }, { $points }: about half of what it should be. The half was written instead of the whole way round: measure again.
evaluation-cm-as-inch = Piece { $pieces }, { $points }: centimetres were written where inches belong.
evaluation-inch-as-cm = Piece { $pieces }, { $points }: inches were written where centimetres belong.
evaluation-ten-times = Piece { $pieces }, { $points }: ten times what it should be. Check the decimal sign.
evaluation-tenth = Piece { $pieces }, { $points }: a tenth of what it should be. Check the decimal sign.
evaluation-swapped-points = Piece { $pieces }: the values of { $points } stand in each other’s place.

## Figures

evaluation-rests-on-one = It rests on one value.
evaluation-rests-on = It rests on { $readings } values, { $same } of them off to the same side. Half of them were off by more than { $before }; what this leaves of them is { $left }.

## What is not a cause

evaluation-again = Piece { $piece }, { $point }: out of tolerance, but by no more than measuring may be off. Measure it again.
evaluation-dispute = Piece { $piece }, { $point }: { $one } measured { $least } and { $other } measured { $most }. Agree how to measure first: up to { $allowed } apart would be fine.
evaluation-few-points = { $place }: not enough data. { $have ->
    [one] { $have } point was
   *[other] { $have } points were
} measured there, and it takes { $need } to tell whether the fabric moved.
evaluation-one-size = Not enough data: only size { $size } was measured, so that the pattern and its grading cannot be told apart.
evaluation-one-piece-only = Not enough data: one piece of size { $size } was measured, so that its sewing and the pattern cannot be told apart.
evaluation-watch = { $point }: failed before ({ $rounds }). { $out ->
    [0] It is within tolerance now: watch it.
   *[other] It is out again on { $out } of { $measured }.
}
evaluation-repeat-assumed = Nothing was measured twice. It is assumed that a value can be repeated to { $deviation }.
evaluation-repeat-measurers = Judged by { $count } points that were measured by several people, a value can be repeated to { $deviation }.
evaluation-repeat-pieces = Judged by { $count } points that several pieces of a size have, a value can be repeated to { $deviation }.
evaluation-wash = { $place }: { $percent } % by washing. Make the pattern × { $factor } there.
evaluation-wash-little = { $place }: { $percent } % by washing, which is no more than measuring explains.

## On a round's page

evaluation-title = What the measurements say
evaluation-no-cause = No cause is named. What is out, if anything, is no more than measuring explains, or there is too little to tell.
evaluation-points-shown = Where it shows
evaluation-suggested = Suggested correction of the pattern
evaluation-agree = Agree how to measure first
evaluation-again-title = Measure again
evaluation-lacks-title = Not enough data
evaluation-watch-title = Watch: failed in an earlier round
evaluation-watch-word = watch
evaluation-strips = Deviation by point
evaluation-strips-how = The shaded band is the tolerance, the line in it is the spec. ● within, ▲ over, ▼ under.
evaluation-strips-sides = Hollow marks are the factory’s values, filled ones the brand’s.
evaluation-strips-beyond = An arrow beside a mark: it lies further out than the picture reaches.
evaluation-within = { $count ->
    [one] { $count } point within tolerance
   *[other] { $count } points within tolerance
}
evaluation-by-size = Deviation by size
evaluation-by-size-how = The line joins the mean deviation of each size. A level line: the pattern. A line that rises or falls: the grading.
evaluation-steps = Steps between sizes
evaluation-from-to = From, to
evaluation-asked = By the chart
evaluation-got = Measured
evaluation-more = Difference
