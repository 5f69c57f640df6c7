### What changed from one version of a spec to another.

change-added = { $what } जोड़ा गया
change-removed = { $what } हटाया गया
change-moved = सूची में जगह बदली
change-mark-moved = { $what } की जगह बदली
change-relettered = अक्षर बदला
change-changed = बदला
change-regraded = नाप बदले

change-what-size = साइज़
change-what-length = लंबाई
change-what-drawing = ड्रॉइंग
change-what-letter = अक्षर
change-what-line = नाप की रेखा
change-what-circle = गोला
change-what-point = नाप का पॉइंट
change-what-part = पार्ट
change-what-colourway = रंग संयोजन
change-what-material = मटीरियल
change-what-seam = सीम या रेखा
change-what-callout = सिलाई नोट
change-what-artwork = आर्टवर्क
change-what-label = लेबल
change-what-step = पैकिंग का चरण
change-what-pack = रेशियो पैक

change-yes = हाँ
change-no = नहीं
change-empty = ख़ाली
change-place = स्थान { $place }
change-spot = बाएँ से { $left } %, ऊपर से { $top } %
change-item = { $letter } { $name }
change-on-drawing = ड्रॉइंग { $drawing } पर
change-in-colourway = रंग संयोजन { $colourway } में
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = { $value } जोड़ा गया
change-list-removed = { $value } हटाया गया
change-line = { $from } से { $to }
change-line-curved = { $from } से { $to }, { $via } से होकर घुमावदार
change-blow-up = { $drawing }, { $spot } पर
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-rule = ग्रेड नियम { $range }
change-grade-same = सभी साइज़ में एक जैसा
change-grade-segment = { $range } { $step }
change-grade-more = { $point } में { $offset } जोड़कर
change-grade-less = { $point } में से { $offset } घटाकर

change-sizes-none = कोई नाप नहीं बदला
change-sizes-all = सभी { $count } साइज़ बदले
change-sizes-some = { $count } साइज़ बदले
change-sizes-not-base = { $count } साइज़ बदले, बेस { $base } नहीं बदला
change-follows = { $point } के साथ

change-told = { $subject }: { $what }
change-from-to = { $old } → { $new }
change-effect = { $what } ({ $effect })
change-size = { $size } { $value } { $unit }

cell-none = कुछ नहीं
cell-natural = प्राकृतिक रंग
cell-dyed-to-match = { $part } से मिलाकर रंगा

colour-on = { $substrate } पर
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
