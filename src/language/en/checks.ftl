### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere

check-id-twice = Two items have the same identity, so that nothing can tell them apart. Remove one of them and enter it again.
check-letter-missing = { $item } has no letter. Give it one.
check-letter-twice = { $item }: “{ $other }” has the letter { $letter } too. Change one of them.
check-item-name-missing = { $item } has no name. Enter it.
check-reference-gone = { $item }: “{ $field }” names something that is not in the spec. Choose another one, or clear it.
check-line-gone = { $item } is placed from a seam or line that is not in the spec. Choose another one.

## Header

check-number-missing = The style number is missing. Enter it in the header.
check-name-missing = The style's name is missing. Enter it in the header.
check-base-size-missing = No base size is chosen. Choose the size that the first sample is made in.
check-base-size-unknown = The base size is not one of the sizes. Choose another one.
check-unit-missing = No unit is chosen. Choose the one that all measurements are written in.
check-measuring-state-missing = It is not said in which state the garment is measured. Choose one: as sewn, after finish or after washes.
check-markets-none = It is not said where the garment will be sold. Choose the markets: the checks of labels and of safety depend on them.
check-wearer-missing = It is not said for whom the garment is. Choose it: the checks of safety depend on it.
check-languages-missing = No languages of the labels are named. Enter them: each market wants its own.
check-origin-missing = The country of origin is missing, which the US asks for. Enter where it is made.
check-exemption-void = The exemption from “{ $code }” has no effect: it needs a reason and a name, and only bans of cords can be set aside. Complete it or remove it.

## Sizes

check-sizes-none = There are no sizes. Enter at least one.
check-size-code-missing = A size has no code. Enter what stands on the label, such as M or 38.
check-size-code-twice = Two sizes have the code { $code }. Change one of them.
check-size-age-missing = This is a child's garment, and these sizes tell neither age nor height: { $sizes }. Enter one of them: the checks of safety depend on it.

## Drawings

check-drawings-none = There is no drawing. Upload at least one, with the letters of the points of measure on it.
check-marker-adrift = A letter on a drawing belongs to nothing any more. Remove it, or put it on something that has a letter.
check-marker-outside = A letter lies beyond the edge of its drawing. Drag it back.
check-point-unmarked = { $letter } { $name }: the letter is on no drawing. Put it where this point is measured.
check-item-unmarked = { $item }: the letter is on no drawing. Put it where this is.
check-dimension-adrift = A dimension line belongs to no point of measure any more. Remove it.
check-dimension-outside = A dimension line or a circle lies beyond the edge of its drawing. Drag it back.
check-blow-up-adrift = A circle on “{ $drawing }” leads to no other drawing. Choose the drawing that shows it larger.
check-side-view-missing = Left and right differ, and there is no drawing of this view: { $view }. Upload it.

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
check-tolerance-size-unknown = { $letter } { $name }: a tolerance is given for a size that is not in the spec. Remove it.
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
check-lengths-partial = { $letter } { $name } changes with some lengths, and nothing is said of { $length }. Enter what it adds; 0 is allowed.

## Relations between measurements

check-stretched-below-relaxed = { $item }: in size { $size } it measures { $relaxed } relaxed and only { $stretched } stretched. Correct one of them.
check-neck-under-head = { $item }: in size { $size } the neck opens to { $opening } around, and the head measures { $girth }. It may not go over the head: check it.
check-cuff-under-hand = { $item }: in size { $size } the cuff opens to { $opening } around, and the hand measures { $girth }. The hand may not pass: check it.
check-zip-not-opening = { $item }: in size { $size } the zip is { $length } long, and its opening { $point } measures { $opening }. Correct one of them.
check-cord-under-channel = { $item }: in size { $size } the cord is { $length } long, and its channel { $point } measures { $channel } around. Make the cord longer.
check-rise-and-inseam = { $item }: in size { $size } the rise { $rise } and the inseam { $inseam } do not make up the outseam { $outseam }. Check the three.
check-points-usual = { $kind }: these points are usual, and no point is said to be one of them: { $missing }. Add them, or say of your points what they are.
check-dimension-missing = { $item }: with it these are needed too, and no point is said to be one of them: { $missing }. Add them.

## Parts and colourways

check-parts-none = There are no parts. Enter what can have a colour of its own: main fabric, cuff, thread.
check-colourways-none = There are no colourways. Enter at least one.
check-part-letter-missing = The part “{ $name }” has no letter. Give it one.
check-part-letter-twice = Part { $letter }: “{ $other }” has the same letter. Change one of them.
check-part-name-missing = Part { $letter } has no name. Enter it.
check-part-without-material = { $letter } { $name }: no material is of this part. Choose the part at its material, its artwork or its label.
check-colourway-name-missing = A colourway has neither code nor name. Enter one of them.
check-colourway-code-twice = Two colourways have the code { $code }. Change one of them.
check-cell-empty = { $letter } { $name } has no colour in { $colourway }. Enter one, or choose: none, natural, or dyed to match.
check-cell-colour-unnamed = { $letter } { $name } in { $colourway }: the colour has neither name nor reference. Enter one of them.
check-cell-screen-malformed = { $letter } { $name } in { $colourway }: the screen colour is not of the form #rrggbb. Choose it again.
check-cell-match-missing = { $letter } { $name } in { $colourway } is dyed to match a part that is not in the spec. Choose another one.
check-cell-match-none = { $letter } { $name } in { $colourway } is dyed to match { $match }, which this colourway does without. Choose another one.
check-cell-match-cycle = { $letter } { $name } in { $colourway } is dyed to match { $match }, which in the end matches it. Give one of them a colour.

## Materials

check-materials-none = There are no materials. Enter fabrics and trims, a line each.
check-material-kind-missing = { $item }: it is not said what kind of material it is. Choose it.
check-material-unused = { $item } is used nowhere. Choose the parts that are made of it.
check-fabrics-none = No material is a fabric, so that the composition cannot be said. Enter the fabric.
check-composition-missing = { $item }: the composition is missing. Enter each fibre with its percent.
check-composition-total = { $item }: the composition comes to { $total } %. Correct it to 100 %.
check-share-incomplete = { $item }: a line of the composition lacks its fibre, its name or its percent. Complete it.
check-component-missing = { $item }: it is not said which part of the garment's composition this is. Choose it: main, rib, lining and so on.
check-claim-hundred = { $item } says 100 %, pure or all, and { $material } has a second fibre. The EU and the US allow such words for a single fibre only. Change them.
check-fibre-twice = { $item }: the composition names a fibre twice. Add the two up.
check-virgin-wool = { $item }: virgin wool in this mixture. The EU allows the name only for at least 25 % of it with one other fibre (Regulation 1007/2011, article 8). Check it.
check-mass-disagrees = { $item }: { $declared } g/m² is declared, and the yarns come to { $computed } g/m². Check both.
check-zip-size-missing = { $item }: the zip has no length. Enter it, or choose the point that it closes.
check-minimum-unmet = { $item }: { $colourway } needs { $needed }, and the minimum order is { $minimum } (counted in: { $unit }). Ask the supplier, or order more.

## Construction

check-callout-text-missing = { $item }: the letter has no text. Say what is to be done there.
check-stitch-unknown = { $item }: { $stitch } is not in the table of stitch types of ISO 4915. Check it.
check-seam-code-unlike = { $item }: { $code } is no designation of ISO 4916, or of another class than the one chosen. Check both.

## Artwork

check-artwork-size-missing = { $item }: the real size is missing. Enter width and height.
check-artwork-distances-missing = { $item }: its place needs two distances, each from a line of the garment to a point of the artwork. Enter them.
check-artwork-size-uncovered = { $item }: nothing is said of size { $size }. Let one line of size and place cover it.
check-artwork-size-twice = { $item }: two lines of size and place cover size { $size }. Correct where they begin and end.
check-artwork-file-missing = { $item }: the original file is missing. Upload it.
check-artwork-coarse = { $item }: at its real size the picture has { $dpi } dots per inch; { $wanted } are usual. Upload a finer one.
check-artwork-live-text = { $item }: the original has live text or linked pictures, which may look different elsewhere. Turn the text into outlines and put the pictures into the file.
check-text-too-small = { $item }: the smallest letters are { $height } high. { $method } usually holds them from { $least } on. Make them larger.

## Labels and care

check-composition-label-missing = No label says the composition, which the markets ask for. Add it to a label.
check-care-missing = The US asks for care instructions (16 CFR 423), and these are missing: { $missing }. Enter them.
check-care-label-missing = No label says the care, which the US asks for (16 CFR 423). Add it to a label.
check-origin-label-missing = No label says the country of origin, which the US asks for. Add it to a label.
check-care-customary = There are no care instructions on a label. The EU and the UK do not ask for them, but buyers expect them. Enter the care, and a label for it.
check-care-harsh = { $treatments }: the label allows more than these materials bear: { $materials }. Choose a milder care.
check-label-size-missing = { $item }: { $missing } is missing. Enter it.
check-label-place-missing = { $item }: it is not said how far from a seam it sits. Enter a distance.
check-label-language-missing = { $item } has no text in this language: { $language }. Enter it.

## Packing

check-ratio-empty = { $item }: the pack holds no pieces. Enter how many of each size.
check-ratio-remainder = { $item }: a pack holds { $pack } pieces, and { $colourway } has { $pieces }, so that { $left } are left over. Change one of them.

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-place-missing = { $item }: it is not said where this cord of a child's garment is. Choose it: the rules depend on it.
check-cord-hood-neck-us = { $item }: a cord in hood or neck of a child's outer garment, sizes { $sizes }. { $rule } bans it in sizes 2T to 12. Take it away. If the rule does not apply, an owner says why in the header.
check-cord-hood-neck-eu = { $item }: a cord in hood or neck of a child's garment, sizes { $sizes }. { $rule } bans it under 7 years, up to 134 cm. Take it away. If the rule does not apply, an owner says why in the header.
check-cord-exempted = { $item }: a cord in hood or neck of a child's garment, and a rule is set aside. { $reasons }. Have a licensed laboratory judge it.
check-cord-free-ends-eu = { $item }: a cord in hood or neck of an older child's garment, sizes { $sizes }. { $rule } bans free ends there. Take them away, or say that there are none.
check-cord-free-missing = { $item }: of this cord of a child's garment { $missing } is missing. Enter it: the rules depend on it.
check-cord-long-us = { $item }: the cord hangs out by { $free }, sizes { $sizes }. { $rule } allows { $most } with the garment at its full width. Shorten it.
check-cord-toggled-us = { $item }: the cord has toggles, tips or knots, sizes { $sizes }. { $rule } allows none at waist and hem. Take them away.
check-cord-loose-us = { $item }: the cord can be pulled out, sizes { $sizes }. { $rule } asks for a bartack that holds it. Add one.
check-cord-long-eu = { $item }: the cord hangs out by { $free }, sizes { $sizes }. From memory, { $rule } allows { $most } there. Read the figure in the standard, and shorten the cord if need be.
check-cord-back-eu = { $item }: a cord at the back of a child's garment, sizes { $sizes }. From memory, { $rule } allows there nothing but tied belts. Read it in the standard.
check-evidence-small-parts = { $item } may come off, and sizes { $sizes } are for children under 3 years. { $rule } asks for a test of small parts. Enter the report.
check-evidence-flammability = { $item }: no test of how fast it burns is named. { $rule } may ask for one. Enter the report, or say why there is none.
check-evidence-sleepwear = { $item }: children's sleepwear, sizes { $sizes }, and no test of how it burns is named. { $rule } asks for one. Enter the report.
check-evidence-nickel = { $item } is metal that touches the skin, and no test of nickel is named. { $rule } limits it. Enter the report.
check-evidence-azo-dyes = { $item } is dyed, and no test of azo dyes is named. { $rule } limits them. Enter the report.
check-evidence-lead = { $item }: a trim of a child's product, sizes { $sizes }, and no test of lead is named. { $rule } limits it. Enter the report.
