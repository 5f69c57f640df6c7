### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ là từ của chương trình bằng tiếng của bạn, chưa được người bản ngữ kiểm tra. Lời của nhãn hàng mới là chuẩn. Sau dấu = là bản dịch của chính nhãn hàng.
later-title = Được dịch lại sau khi bản này phát hành. Bản gốc không đổi.

## Drawings

drawing-larger = Phóng to: { $drawing }
legend-point = vị trí đo
legend-part = chi tiết
legend-callout = cách may
legend-artwork = hình in, thêu
legend-label = nhãn
legend-larger = xem hình phóng to có số đó
legend-dimension = đoạn cần đo

## A rule that an owner sets aside

exemption-title = Có một quy tắc không áp dụng ở đây: { $code }
exemption-reason = Lý do: { $reason }
exemption-by = Người nêu: { $name }

## Sizes

lengths-caption = Chiều dài, { $unit }
sizes-ages = Tuổi
sizes-years = { $from } đến { $to } tuổi
sizes-months = { $from } đến { $to } tháng
sizes-range = { $from } đến { $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = dự kiến { $count } chiếc
parts-as-dyed = Màu sau nhuộm

## Materials

materials-material = Nguyên phụ liệu
materials-what = Mô tả
materials-where = Dùng ở đâu
materials-length = Chiều dài và định mức
materials-supply = Nguồn cung
materials-care = Chịu được tối đa
materials-parts = Màu của

## Construction

construction-callout = May gì
construction-larger = Phóng to
construction-stitch = Mũi may và kiểu đường may
construction-measures = Khoảng cách
construction-with = Chỉ, dây viền, bọ
construction-per-inch = { $count } mỗi inch
construction-lines = Đường may, mép và đường chuẩn

## Artwork

artwork-sizes = { $from } đến { $to }
artwork-all-sizes = Mọi cỡ
artwork-true-size = { $width } × { $height } mm
artwork-placed = Đặt tại
artwork-original = Tệp gốc
artwork-no-picture = Không có hình xem trước. Hãy tải tệp gốc.

## Labels

labels-care = Hướng dẫn giặt, theo thứ tự trên nhãn
labels-signs = Các hình nhỏ chỉ giúp đọc trên màn hình. Chúng không phải ký hiệu giặt trên nhãn.

## Packing

packing-steps = Các bước
packing-packs = Gói phối cỡ: số chiếc mỗi cỡ
packing-pack = Gói
packing-every-colourway = mọi phối màu
packing-total = Tổng

## An item without a name

sheet-item = không có tên

## To be dyed

dyeing-title = Cần nhuộm cho số chiếc dự kiến
dyeing-substrate = Trên
dyeing-colour = Màu
dyeing-kilograms = kg
dyeing-of = Cho
dyeing-undyed = không nhuộm
dyeing-not-whole = Chưa tính vào số ki-lô-gam này:
dyeing-lacks-pieces = chưa nêu số chiếc dự kiến
dyeing-lacks-parts = chưa nêu làm chi tiết nào
dyeing-lacks-colour = chưa nêu màu
dyeing-parts-differ = các chi tiết có màu khác nhau
dyeing-lacks-consumption = chưa nêu định mức một chiếc
dyeing-lacks-unit = tính theo cái, chưa nêu khối lượng
dyeing-lacks-mass = chưa nêu khối lượng mỗi mét vuông
dyeing-lacks-width = chưa nêu khổ vải
dyeing-lacks-wastage = chưa nêu hao hụt
dyeing-too-large = các số quá lớn

## What composition labels say

composition-title = Thành phần, dùng cho nhãn
composition-draft = Bản nháp của chương trình. Người chịu trách nhiệm về nhãn sẽ kiểm tra.
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
