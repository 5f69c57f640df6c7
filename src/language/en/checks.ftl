### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere

check-id-twice = Two items have the same identity, so that nothing can tell them apart. Remove one of them and enter it again.

## Header

check-number-missing = The style number is missing. Enter it in the header.
check-name-missing = The style's name is missing. Enter it in the header.
check-base-size-missing = No base size is chosen. Choose the size that the first sample is made in.
check-base-size-unknown = The base size is not one of the sizes. Choose another one.
check-unit-missing = No unit is chosen. Choose the one that all measurements are written in.
check-measuring-state-missing = It is not said in which state the garment is measured. Choose one: as sewn, after finish or after washes.

## Sizes

check-sizes-none = There are no sizes. Enter at least one.
check-size-code-missing = A size has no code. Enter what stands on the label, such as M or 38.
check-size-code-twice = Two sizes have the code { $code }. Change one of them.

## Drawings

check-drawings-none = There is no drawing. Upload at least one, with the letters of the points of measure on it.
check-marker-adrift = A letter on a drawing belongs to nothing any more. Remove it, or put it on something that has a letter.
check-marker-outside = A letter lies beyond the edge of its drawing. Drag it back.
check-point-unmarked = { $letter } { $name }: the letter is on no drawing. Put it where this point is measured.

## Points of measure

check-points-none = There are no points of measure. Enter at least one.
check-point-letter-missing = The point “{ $name }” has no letter. Give it one.
check-point-letter-twice = { $letter } { $name }: “{ $other }” has the same letter. Change one of them.
check-point-name-missing = The point { $letter } has no name. Say what is measured.
check-point-basis-missing = { $letter } { $name }: it is not said what the numbers count. Choose half, full or length.
check-point-base-missing = { $letter } { $name }: the value at the base size is missing. Enter it.
check-point-grade-missing = { $letter } { $name }: it is not said how the value changes from size to size. Enter a grade rule, or choose: the same in all sizes.
check-point-minus-missing = { $letter } { $name }: it is not said how much smaller it may be. Enter the minus tolerance; 0 is allowed.
check-point-plus-missing = { $letter } { $name }: it is not said how much larger it may be. Enter the plus tolerance; 0 is allowed.
check-tolerance-negative = { $letter } { $name }: a tolerance is below zero. Enter it without a sign: minus and plus have a field each.
check-tolerance-unit = { $letter } { $name }: a tolerance is in another kind of unit than the spec. Enter it in the unit of the spec.
check-point-step-missing = { $letter } { $name }: the rounding step is missing or zero. Enter what the values are rounded to.
check-step-unit = { $letter } { $name }: the rounding step is in another kind of unit than the spec. Enter it in the unit of the spec.
check-how-start-missing = { $letter } { $name }: it is not said where to begin to measure. Enter the start.
check-how-end-missing = { $letter } { $name }: it is not said where to stop measuring. Enter the end.

## Grade rules

check-grade-gap-uncovered = { $letter } { $name }: the grade rule says nothing about the step from { $from } to { $to }. Add it.
check-grade-gap-twice = { $letter } { $name }: the grade rule covers the step from { $from } to { $to } twice. Correct where its parts begin and end.
check-grade-backwards = { $letter } { $name }: the grade rule goes from { $from } to { $to }, which is not a later size. Turn it round.
check-grade-size-unknown = { $letter } { $name }: the grade rule names a size that is not in the spec. Choose another one.
check-grade-size-missing = { $letter } { $name }: there is no value for size { $size }. Enter it.
check-grade-source-missing = { $letter } { $name }: it follows a point that is not in the spec. Choose another one.
check-grade-cycle = { $letter } { $name }: its value is taken from itself: { $letters }. Enter a value for one of them.
check-grade-base-disagrees = { $letter } { $name }: the base size is entered as { $typed }, but its grade gives { $graded }. Correct one of them.
check-grade-too-long = { $letter } { $name }: the values grow longer than a kilometre. Correct the value or the grade.
check-grade-reverses = { $letter } { $name }: the value grows between some sizes and shrinks between others; it turns at size { $size }. Is this meant?
check-tolerance-overlaps = { $letter } { $name }: this point is critical, and a piece of size { $from } can pass as { $to }: the sizes differ by { $step }, and the tolerances are −{ $minus } and +{ $plus }. Make the tolerances smaller.
check-step-coarse = { $letter } { $name }: the rounding step { $step } is more than half of the tolerance (−{ $minus }, +{ $plus }). Use a smaller step or a larger tolerance.
check-steps-uneven = { $letter } { $name }: each size differs by { $exact }, but rounding makes it { $before } up to size { $size } and { $after } after it. Use a smaller rounding step, or another grade.
check-grade-half-or-full = { $letter } { $name }: from the first size to the last it grows by { $growth } the full way round, points like it by about { $usual }. Was it entered as half or as full by mistake?
check-value-not-positive = { $letter } { $name }: size { $size } comes to { $value }. A measurement is more than zero: correct the value or the grade.

## Parts and colourways

check-parts-none = There are no parts. Enter what can have a colour of its own: main fabric, cuff, thread.
check-colourways-none = There are no colourways. Enter at least one.
check-part-letter-missing = The part “{ $name }” has no letter. Give it one.
check-part-letter-twice = Part { $letter }: “{ $other }” has the same letter. Change one of them.
check-part-name-missing = Part { $letter } has no name. Enter it.
check-colourway-name-missing = A colourway has neither code nor name. Enter one of them.
check-colourway-code-twice = Two colourways have the code { $code }. Change one of them.
check-cell-empty = { $letter } { $name } has no colour in { $colourway }. Enter one, or choose: none, natural, or dyed to match.
check-cell-colour-unnamed = { $letter } { $name } in { $colourway }: the colour has neither name nor reference. Enter one of them.
check-cell-screen-malformed = { $letter } { $name } in { $colourway }: the screen colour is not of the form #rrggbb. Choose it again.
check-cell-match-missing = { $letter } { $name } in { $colourway } is dyed to match a part that is not in the spec. Choose another one.
check-cell-match-none = { $letter } { $name } in { $colourway } is dyed to match { $match }, which this colourway does without. Choose another one.
check-cell-match-cycle = { $letter } { $name } in { $colourway } is dyed to match { $match }, which in the end matches it. Give one of them a colour.
