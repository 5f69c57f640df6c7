### What changed from one version of a spec to another.

change-added = added
change-removed = removed
change-moved = moved in the list
change-relettered = new letter
change-changed = changed
change-regraded = values changed

change-yes = yes
change-no = no
change-empty = empty
change-place = place { $place }
change-extent = { $width } × { $height }
change-spot = { $left } % from the left, { $top } % from the top
change-item = { $letter } { $name }
change-on-drawing = letter on the drawing { $drawing }
change-in-colourway = in colourway { $colourway }
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-grade-same = the same in all sizes
change-grade-segment = { $from } to { $to }: { $step }
change-grade-value = { $size }: { $value }
change-grade-derived = from { $point }, plus { $offset }

cell-none = none
cell-natural = natural
cell-dyed-to-match = dyed to match { $part }

## Fields

change-field-number = Style number
change-field-name = Name
change-field-garment = Garment
change-field-wearer = For whom
change-field-season = Season
change-field-markets = Sold in
change-field-origin = Made in
change-field-base-size = Base size
change-field-unit = Unit
change-field-measured = Measured
change-field-main-fabric = Main fabric
change-field-contrast-fabric = Contrast fabric
change-field-code = Code
change-field-label = Label
change-field-view = View
change-field-title = Title
change-field-file = Picture (fingerprint)
change-field-extent = Size of the picture
change-field-letter = Letter
change-field-how-start = Measure from
change-field-how-end = Measure to
change-field-how-path = Path
change-field-how-stretched = Stretched
change-field-how-note = Note
change-field-basis = Basis
change-field-direction = Direction
change-field-key = Key point
change-field-critical = Critical
change-field-minus = Tolerance −
change-field-plus = Tolerance +
change-field-step = Rounded to
change-field-base = Base value
change-field-grade = Grade
change-field-cell = Colour
