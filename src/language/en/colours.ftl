### Colours: one cell of the matrix, and how colours stand beside each other.

## Why a reading has no screen value

not-on-screen-illuminant = A reading under { $illuminant } does not say what the colour looks like by daylight, so no screen colour is computed from it.

## Beside each other

near-title = Beside each other
near-how = The parts of a colourway in their order. ΔE00 is the difference from the part before: from the readings where both have one, else from the screen colours, which are approximate. “Hard to tell apart” is under ΔE00 5, “alike without colour” is less than 10 in lightness: limits of our own, a help for the eye and no standard.
near-same = same colour
near-read = ΔE00 { $difference }
near-screen = ΔE00 about { $difference }
near-hard = hard to tell apart
near-grey = alike without colour
near-unknown = not compared

## One cell

colour-back = Back to parts and colourways
colour-open = All of it
colour-open-cell = { $part } in { $colourway }: all of it
colour-name = Name
colour-reference = Reference system and code
colour-reference-help = As your colour book or mill writes it.
colour-substrate = Dyed or printed on
colour-substrate-help = The same reference looks another on another cloth.
colour-reading = Reading, L*a*b*
colour-reading-help = As the instrument gives it, with the light and the observer that it was set to.
colour-l = L*
colour-a = a*
colour-b = b*
colour-illuminant = Light
colour-observer = Observer
colour-screen = Screen colour
colour-screen-help = Like #1f2a3c. Shown where no reading says what the colour looks like by daylight.
colour-computed = { $screen }, computed from the reading. Approximate: no screen is set up for cloth.
colour-typed = { $screen }, as typed. Approximate: no screen is set up for cloth.
colour-clipped = A screen cannot show this colour. This is the nearest it can.
colour-none-shown = No reading and no screen colour yet.
colour-photo = Photograph as dyed
colour-photo-help = JPEG, PNG, WebP or a phone's picture. Where and when it was taken is not kept.
colour-photo-remove = Take the photograph away
colour-approval = Lab dip
colour-looks = What it looks like
colour-on-screen = On this screen
colour-empty = Empty: nothing is said yet
colourway-number = Number of the colourway
hint-number = Number
colourway-copy = Copy
colourway-copy-of = Copy of { $name }
colourway-copied-name = { $name } (copy)
colourways-reference = Another reference in a cell begins without the reading, photograph and lab dip of the one before.
error-colourway-number-twice = Another colourway of this style has this number. Choose another one.
error-colourway-number-style = A style has this number. Choose another one.
error-colourway-number-other = This number is not one of the style { $number }. Its colourways are numbered like { $like }.
