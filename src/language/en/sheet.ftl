### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ is the program’s word in your language, not checked by a native speaker. What the brand wrote counts. = is the brand’s own translation.
later-title = Translated anew since this revision was published. The original is as it was.

## Drawings

drawing-larger = Larger: { $drawing }
legend-point = point of measure
legend-part = part
legend-callout = how it is sewn
legend-artwork = artwork
legend-label = label
legend-larger = larger on the drawing of that number
legend-dimension = what a point measures

## A rule that an owner sets aside

exemption-title = A rule does not apply here: { $code }
exemption-reason = Reason: { $reason }
exemption-by = Says { $name }

## Sizes

lengths-caption = Lengths, { $unit }
sizes-ages = Ages
sizes-years = { $from } to { $to } years
sizes-months = { $from } to { $to } months
sizes-range = { $from } to { $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = { $count ->
    [one] 1 piece planned
   *[other] { $count } pieces planned
}
parts-as-dyed = As dyed

## Materials

materials-material = Material
materials-what = What it is
materials-where = Where it goes
materials-length = Length and use
materials-supply = Supply
materials-care = Bears at most
materials-parts = Colour of

## Construction

construction-callout = What is sewn
construction-larger = Larger
construction-stitch = Stitch and seam
construction-measures = Distances
construction-with = Thread, tape, bartacks
construction-per-inch = { $count } per inch
construction-lines = Seams, edges and lines

## Artwork

artwork-sizes = { $from } to { $to }
artwork-all-sizes = All sizes
artwork-true-size = { $width } × { $height } mm
artwork-placed = Placed on
artwork-original = Original file
artwork-no-picture = No picture of this file. Download the original.

## Labels

labels-care = Care, in the order of the label
labels-signs = The small signs are a help on the screen. They are not the care symbols of a label.

## Packing

packing-steps = Steps
packing-packs = Ratio packs: pieces of each size
packing-pack = Pack
packing-every-colourway = every colourway
packing-total = Together

## An item without a name

sheet-item = no name

## To be dyed

dyeing-title = To be dyed for the planned pieces
dyeing-substrate = On
dyeing-colour = Colour
dyeing-kilograms = kg
dyeing-of = For
dyeing-undyed = stays undyed
dyeing-not-whole = Not in these kilograms:
dyeing-lacks-pieces = how many pieces are planned is not said
dyeing-lacks-parts = the parts that it makes are not said
dyeing-lacks-colour = its colour is not said
dyeing-parts-differ = its parts have different colours
dyeing-lacks-consumption = how much of it one garment needs is not said
dyeing-lacks-unit = its pieces say nothing of the mass
dyeing-lacks-mass = its mass per square metre is not said
dyeing-lacks-width = its full width is not said
dyeing-lacks-wastage = its wastage is not said
dyeing-too-large = its numbers are too large

## What composition labels say

composition-title = Composition, for the labels
composition-draft = A draft of the program. Whoever answers for the label checks it.
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
