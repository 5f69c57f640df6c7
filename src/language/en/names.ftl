### What the program's own values are called.

## Sections of a spec

section-header = Header
section-sizes = Sizes
section-drawings = Drawings
section-points = Points of measure
section-colourways = Parts and colourways

## Who wears it

wearer-women = Women
wearer-men = Men
wearer-unisex = Unisex
wearer-children = Children
wearer-infants = Infants

## Where it is sold

market-eu = European Union
market-uk = United Kingdom
market-us = United States
market-other = Other

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

view-front = Front
view-back = Back
view-left = Left side (the wearer's left)
view-right = Right side (the wearer's right)
view-detail = Detail

## Points of measure

path-straight = Straight
path-curved = Along the curve
basis-half = Half (laid flat)
basis-full = Full (all the way round)
basis-linear = Length
direction-length = Along the length
direction-width = Across the width
