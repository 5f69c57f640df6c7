### What changed from one version of a spec to another.

change-added = { $what } যোগ হয়েছে
change-removed = { $what } বাদ গেছে
change-moved = তালিকায় সরানো হয়েছে
change-mark-moved = { $what } সরানো হয়েছে
change-relettered = অক্ষর বদলেছে
change-changed = বদলেছে
change-regraded = মাপ বদলেছে

change-what-size = সাইজ
change-what-length = দৈর্ঘ্য
change-what-drawing = ড্রয়িং
change-what-letter = অক্ষর
change-what-line = মাপের রেখা
change-what-circle = বৃত্ত
change-what-point = মাপের পয়েন্ট
change-what-part = পার্ট
change-what-colourway = কালারওয়ে
change-what-material = ম্যাটেরিয়াল
change-what-seam = সিম বা রেখা
change-what-callout = কলআউট
change-what-artwork = আর্টওয়ার্ক
change-what-label = লেবেল
change-what-step = প্যাকিং ধাপ
change-what-pack = রেশিও প্যাক

change-yes = হ্যাঁ
change-no = না
change-empty = খালি
change-place = স্থান { $place }
change-spot = বাম থেকে { $left } %, উপর থেকে { $top } %
change-item = { $letter } { $name }
change-on-drawing = { $drawing } ড্রয়িংয়ে
change-in-colourway = { $colourway } কালারওয়েতে
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = { $value } যোগ হয়েছে
change-list-removed = { $value } বাদ গেছে
change-line = { $from } থেকে { $to }
change-line-curved = { $from } থেকে { $to }, { $via } হয়ে বাঁকা
change-blow-up = { $drawing }, { $spot }-এ
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-rule = গ্রেড রুল { $range }
change-grade-same = সব সাইজে একই
change-grade-segment = { $range } { $step }
change-grade-more = { $point } যোগ { $offset }
change-grade-less = { $point } বিয়োগ { $offset }

change-sizes-none = কোনো মাপ বদলায়নি
change-sizes-all = { $count }টি সাইজের সব বদলেছে
change-sizes-some = { $count }টি সাইজ বদলেছে
change-sizes-not-base = { $count }টি সাইজ বদলেছে, বেস { $base } বদলায়নি
change-follows = { $point } অনুসারে

change-told = { $subject }: { $what }
change-from-to = { $old } → { $new }
change-effect = { $what } ({ $effect })
change-size = { $size } { $value } { $unit }

cell-none = কিছু নেই
cell-natural = প্রাকৃতিক রং
cell-dyed-to-match = { $part }-এর সাথে মিলিয়ে রং করা

colour-on = { $substrate }-এর উপর
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
