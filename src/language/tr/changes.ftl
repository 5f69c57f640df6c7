### What changed from one version of a spec to another.

change-added = { $what } eklendi
change-removed = { $what } kaldırıldı
change-moved = listede yeri değişti
change-mark-moved = { $what } yer değiştirdi
change-relettered = harfi değişti
change-changed = değişti
change-regraded = değerleri değişti

change-what-size = beden
change-what-length = boy
change-what-drawing = çizim
change-what-letter = harf
change-what-line = ölçü çizgisi
change-what-circle = daire
change-what-point = ölçü noktası
change-what-part = parça
change-what-colourway = renk varyantı
change-what-material = malzeme
change-what-seam = dikiş ya da çizgi
change-what-callout = dikim notu
change-what-artwork = baskı ya da nakış
change-what-label = etiket
change-what-step = paketleme adımı
change-what-pack = asorti paket

change-yes = evet
change-no = hayır
change-empty = boş
change-place = sıra { $place }
change-spot = soldan % { $left }, üstten % { $top }
change-item = { $letter } { $name }
change-on-drawing = { $drawing } çiziminde
change-in-colourway = { $colourway } renk varyantında
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = { $value } eklendi
change-list-removed = { $value } kaldırıldı
change-line = { $from } ile { $to } arası
change-line-curved = { $from } ile { $to } arası, { $via } üzerinden eğri
change-blow-up = { $drawing }, yeri: { $spot }
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-rule = Serileme kuralı { $range }
change-grade-same = bütün bedenlerde aynı
change-grade-segment = { $range } { $step }
change-grade-more = { $point } artı { $offset }
change-grade-less = { $point } eksi { $offset }

change-sizes-none = hiçbir değer değişmedi
change-sizes-all = { $count } bedenin hepsi değişti
change-sizes-some = { $count } beden değişti
change-sizes-not-base = { $count } beden değişti, baz { $base } değişmedi
change-follows = { $point } ile birlikte

change-told = { $subject }: { $what }
change-from-to = { $old } → { $new }
change-effect = { $what } ({ $effect })
change-size = { $size } { $value } { $unit }

cell-none = yok
cell-natural = ham (boyasız)
cell-dyed-to-match = { $part } rengine boyalı

colour-on = { $substrate } üzerinde
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
