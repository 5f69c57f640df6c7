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
change-spot = { $left } % from the left, { $top } % from the top
change-item = { $letter } { $name }
change-letter-on = letter on the drawing { $drawing }
change-line-on = line on the drawing { $drawing }
change-circle-on = circle on the drawing { $drawing }
change-in-colourway = in colourway { $colourway }
change-by-item = { $item }: { $value }
change-named = { $name } { $value }
change-line = { $from } to { $to }
change-line-curved = { $from } to { $to }, curved by { $via }
change-blow-up = { $drawing } at { $spot }
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-grade-same = the same in all sizes
change-grade-segment = { $from } to { $to }: { $step }
change-grade-value = { $size }: { $value }
change-grade-derived = from { $point }, plus { $offset }

cell-none = none
cell-natural = natural
cell-dyed-to-match = dyed to match { $part }
