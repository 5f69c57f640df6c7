### Drawings to scale that the program makes: artwork, placement, labels.

## Artwork

plates-true = True size
plates-true-of = { $name } at its true size, { $size }
plates-placement = Where it goes
plates-schematic = Box and distances are to scale with each other. The numbers rule.
plates-flat = On the flat
plates-distance = { $value } from { $line } to its { $anchor }
plates-no-size = Give its width and height: then it is drawn here at its true size.
plates-no-drawing = Not drawn on the flat: choose the drawing that it is placed on.
plates-no-scale = Not drawn on the flat, which is not to scale: it needs a straight dimension line of a point that has a value, and most of its lines have to agree.
plates-no-place = Not drawn on the flat: put its letter { $letter } on the drawing, or a dimension line that begins or ends at the seam.
plates-no-picture = Not drawn on the flat: there is no picture of that drawing.
plates-one-way = Both distances go the same way, or one is missing: they do not tell where it is.
plates-scale = To scale in size { $size }: { $agree } of { $of } dimension lines agree.
plates-scale-one = To scale in size { $size } by a single dimension line.
plates-other-size = The flat is drawn in size { $base } and taken to be larger or smaller all over.
plates-by-middle = { $line }: the middle of the drawing.
plates-by-line = { $line }: where the line of { $point } shows it.
plates-by-letter-across = Across, by its letter { $letter }: no dimension line shows where the other line is.
plates-by-letter-down = Up and down, by its letter { $letter }: no dimension line shows where the other line is.
plates-by-letter-instead = { $line }: by its letter { $letter }. From where the line of { $point } shows it, the artwork would lie { $away } away from its letter. Say in the note where along it the distance is taken.
plates-askew = The picture is { $drawn }, the size asks for { $asked }, width to height. Room is left beside it.
plates-check-screen = Is this screen true?
plates-check-how = Screens differ. Hold a bank card (85.60 × 53.98 mm) against the frame, or a ruler against the bar. Where they differ, zoom the page until they agree.
plates-check-bar = A frame of the size of a bank card, and a bar of 100 mm
plates-check-millimetres = 100 mm

## Labels

plates-open = Open
plates-folded = Folded
plates-zoom = { $times ->
    [one] Drawn at its true size. The marks are millimetres.
   *[other] Drawn { $times } times as large. The marks are millimetres.
}
plates-label-size = Give its width and height: then it is drawn here.
plates-label-artwork = Its artwork, in the outline of the label
plates-label-words = Care stands in words. Care symbols come with the label's artwork.
plates-tight = The text seems not to fit
plates-too-long = It needs about { $needs } mm of height, and the label is { $height } mm high.
plates-too-wide = Wider than the label: { $words }
plates-fits = The text needs about { $needs } of { $height } mm.
plates-estimate = An estimate, by the widths of ordinary letters.
plates-text-height = No text height is given: drawn with capitals 1.5 mm high.
plates-ends = How much of its ends is turned under is not said: drawn open.
plates-made-in = Made in { $country }
plates-blank = Nothing is said of what stands on it: no text and no artwork.
plates-no-base = There is no base size to write on it.
plates-no-care = No care is said yet.
plates-no-care-words = The program has no words for care in { $language }: type them as a text.
plates-no-composition = No composition in { $language }: a word or a share is missing.
plates-no-origin = No country of origin is said yet.
plates-no-origin-words = The program has no words for the origin in { $language }: type them as a text.
plates-unchecked = The program's own words in { $language } were not checked by a native speaker.
