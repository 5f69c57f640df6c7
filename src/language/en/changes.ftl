### What changed from one version of a spec to another.

change-added = { $what } added
change-removed = { $what } removed
change-moved = moved in the list
change-mark-moved = { $what } moved
change-relettered = re-lettered
change-changed = changed
change-regraded = values changed

change-what-size = size
change-what-length = length
change-what-drawing = drawing
change-what-letter = letter
change-what-line = dimension line
change-what-circle = circle
change-what-point = point of measure
change-what-part = part
change-what-colourway = colourway
change-what-material = material
change-what-seam = seam or line
change-what-callout = callout
change-what-artwork = artwork
change-what-label = label
change-what-step = packing step
change-what-pack = ratio pack

change-yes = yes
change-no = no
change-empty = empty
change-place = place { $place }
change-spot = { $left } % from the left, { $top } % from the top
change-item = { $letter } { $name }
change-on-drawing = on the drawing { $drawing }
change-in-colourway = in colourway { $colourway }
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = { $value } added
change-list-removed = { $value } removed
change-line = { $from } to { $to }
change-line-curved = { $from } to { $to }, curved by { $via }
change-blow-up = { $drawing } at { $spot }
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-rule = Grade rule { $range }
change-grade-same = the same in all sizes
change-grade-segment = { $range } { $step }
change-grade-more = { $point } plus { $offset }
change-grade-less = { $point } minus { $offset }

change-sizes-none = no value changes
change-sizes-all = { $count ->
    [one] the one size changes
   *[other] all { $count } sizes change
}
change-sizes-some = { $count ->
    [one] 1 size changes
   *[other] { $count } sizes change
}
change-sizes-not-base = { $count ->
    [one] 1 size changes, base { $base } does not
   *[other] { $count } sizes change, base { $base } does not
}
change-follows = follows { $point }

change-told = { $subject }: { $what }
change-from-to = { $old } → { $new }
change-effect = { $what } ({ $effect })
change-size = { $size } { $value } { $unit }

cell-none = none
cell-natural = natural
cell-dyed-to-match = dyed to match { $part }

colour-on = on { $substrate }
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
