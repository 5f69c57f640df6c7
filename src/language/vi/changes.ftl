### What changed from one version of a spec to another.

change-added = thêm { $what }
change-removed = bỏ { $what }
change-moved = đổi chỗ trong danh sách
change-mark-moved = { $what } đổi chỗ
change-relettered = đổi chữ cái
change-changed = đã thay đổi
change-regraded = số đo đã thay đổi

change-what-size = cỡ
change-what-length = chiều dài
change-what-drawing = bản vẽ
change-what-letter = chữ cái
change-what-line = đường kích thước
change-what-circle = vòng tròn
change-what-point = vị trí đo
change-what-part = chi tiết
change-what-colourway = phối màu
change-what-material = nguyên phụ liệu
change-what-seam = đường may hoặc đường chuẩn
change-what-callout = chú dẫn
change-what-artwork = hình in, thêu
change-what-label = nhãn
change-what-step = bước đóng gói
change-what-pack = gói phối cỡ

change-yes = có
change-no = không
change-empty = trống
change-place = vị trí { $place }
change-spot = cách trái { $left } %, cách trên { $top } %
change-item = { $letter } { $name }
change-on-drawing = trên bản vẽ { $drawing }
change-in-colourway = trong phối màu { $colourway }
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = thêm { $value }
change-list-removed = bỏ { $value }
change-line = từ { $from } đến { $to }
change-line-curved = từ { $from } đến { $to }, cong qua { $via }
change-blow-up = { $drawing } tại { $spot }
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-rule = Quy tắc nhảy cỡ { $range }
change-grade-same = như nhau ở mọi cỡ
change-grade-segment = { $range } { $step }
change-grade-more = { $point } cộng { $offset }
change-grade-less = { $point } trừ { $offset }

change-sizes-none = không số đo nào thay đổi
change-sizes-all = cả { $count } cỡ thay đổi
change-sizes-some = { $count } cỡ thay đổi
change-sizes-not-base = { $count } cỡ thay đổi, cỡ gốc { $base } giữ nguyên
change-follows = theo { $point }

change-told = { $subject }: { $what }
change-from-to = { $old } → { $new }
change-effect = { $what } ({ $effect })
change-size = { $size } { $value } { $unit }

cell-none = không có
cell-natural = màu mộc
cell-dyed-to-match = nhuộm theo { $part }

colour-on = trên { $substrate }
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
