### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere


## Header

check-markets-none = Chưa nêu hàng sẽ bán ở đâu. Hãy chọn thị trường: việc kiểm tra nhãn và an toàn dựa vào đó.
check-wearer-missing = Chưa nêu hàng dành cho ai. Hãy chọn: việc kiểm tra an toàn dựa vào đó.
check-languages-missing = Chưa nêu ngôn ngữ trên nhãn. Hãy nhập: mỗi thị trường đòi hỏi ngôn ngữ riêng.
check-exemption-void = Miễn trừ khỏi “{ $code }” không có hiệu lực: cần lý do và tên người, và chỉ lệnh cấm về dây mới được bỏ qua. Hãy bổ sung hoặc xóa.

## Sizes

check-size-age-missing = Đây là đồ trẻ em, và các cỡ này chưa nêu tuổi hay chiều cao: { $sizes }. Hãy nhập một trong hai: việc kiểm tra an toàn dựa vào đó.

## Drawings


## Points of measure


## Grade rules

check-grade-reverses = { $letter } { $name }: số đo tăng giữa một số cỡ và giảm giữa các cỡ khác; đổi chiều ở cỡ { $size }. Có đúng ý không?
check-tolerance-overlaps = { $letter } { $name }: đây là vị trí trọng yếu, và một chiếc cỡ { $from } có thể được nhận là cỡ { $to }: hai cỡ lệch { $step }, dung sai là −{ $minus } và +{ $plus }. Hãy giảm dung sai.
check-step-coarse = { $letter } { $name }: bước làm tròn { $step } lớn hơn một nửa dung sai (−{ $minus }, +{ $plus }). Hãy dùng bước nhỏ hơn hoặc dung sai lớn hơn.
check-steps-uneven = { $letter } { $name }: mỗi cỡ lệch { $exact }, nhưng làm tròn thành { $before } đến cỡ { $size } và { $after } sau đó. Hãy dùng bước làm tròn nhỏ hơn, hoặc cách nhảy cỡ khác.
check-grade-half-or-full = { $letter } { $name }: từ cỡ đầu đến cỡ cuối, cả vòng tăng { $growth }, các vị trí tương tự tăng khoảng { $usual }. Có nhập nhầm nửa vòng hay cả vòng không?
check-value-not-positive = { $letter } { $name }: cỡ { $size } ra { $value }. Số đo phải lớn hơn 0: hãy sửa số đo hoặc cách nhảy cỡ.
check-lengths-partial = { $letter } { $name } thay đổi theo một số chiều dài, nhưng chưa nêu { $length }. Hãy nhập phần cộng thêm; có thể là 0.

## Relations between measurements

check-stretched-below-relaxed = { $item }: ở cỡ { $size }, để tự nhiên là { $relaxed } mà kéo căng chỉ { $stretched }. Hãy sửa một trong hai.
check-neck-under-head = { $item }: ở cỡ { $size }, cổ mở { $opening } cả vòng, đầu đo { $girth }. Có thể không chui đầu qua được: hãy kiểm tra.
check-cuff-under-hand = { $item }: ở cỡ { $size }, cửa tay mở { $opening } cả vòng, bàn tay đo { $girth }. Có thể không lọt bàn tay: hãy kiểm tra.
check-zip-not-opening = { $item }: ở cỡ { $size }, dây kéo dài { $length }, còn miệng { $point } đo { $opening }. Hãy sửa một trong hai.
check-cord-under-channel = { $item }: ở cỡ { $size }, dây dài { $length }, còn ống luồn { $point } đo { $channel } cả vòng. Hãy làm dây dài hơn.
check-rise-and-inseam = { $item }: ở cỡ { $size }, đáy { $rise } và giàng trong { $inseam } không khớp giàng ngoài { $outseam }. Hãy kiểm tra cả ba.
check-points-usual = { $kind }: các vị trí này thường có, mà chưa vị trí nào được ghi là chúng: { $missing }. Hãy thêm, hoặc ghi các vị trí của bạn là gì.
check-dimension-missing = { $item }: kèm theo còn cần các mục này, mà chưa vị trí nào được ghi là chúng: { $missing }. Hãy thêm.

## Parts and colourways

check-parts-none = Chưa có chi tiết nào. Hãy nhập những gì có thể có màu riêng: vải chính, bo tay, chỉ.
check-colourways-none = Chưa có phối màu nào. Hãy nhập ít nhất một.

## Materials

check-claim-hundred = { $item } ghi 100 %, nguyên chất hoặc toàn bộ, mà { $material } có sợi thứ hai. EU và Hoa Kỳ chỉ cho phép ghi như vậy với một loại sợi. Hãy sửa.
check-fibre-twice = { $item }: thành phần ghi một loại sợi hai lần. Hãy cộng lại.
check-virgin-wool = { $item }: có len nguyên sinh trong hỗn hợp này. EU chỉ cho phép tên đó khi có ít nhất 25 % và chỉ một loại sợi khác (Quy định 1007/2011, điều 8). Hãy kiểm tra.
check-mass-disagrees = { $item }: khai báo { $declared } g/m², mà tính theo sợi là { $computed } g/m². Hãy kiểm tra cả hai.
check-zip-size-missing = { $item }: dây kéo chưa có chiều dài. Hãy nhập, hoặc chọn vị trí mà nó đóng.
check-minimum-unmet = { $item }: { $colourway } cần { $needed }, mà đặt tối thiểu là { $minimum } (tính theo: { $unit }). Hãy hỏi nhà cung cấp, hoặc đặt nhiều hơn.

## Construction

check-stitch-unknown = { $item }: { $stitch } không có trong bảng mũi may ISO 4915. Hãy kiểm tra.
check-seam-code-unlike = { $item }: { $code } không phải ký hiệu của ISO 4916, hoặc thuộc nhóm khác nhóm đã chọn. Hãy kiểm tra cả hai.

## Artwork

check-artwork-file-missing = { $item }: thiếu tệp gốc. Hãy tải lên.
check-artwork-coarse = { $item }: ở kích thước thật, hình có { $dpi } điểm mỗi inch; thường cần { $wanted }. Hãy tải hình nét hơn.
check-artwork-live-text = { $item }: tệp gốc có chữ chưa chuyển nét hoặc ảnh liên kết, nơi khác có thể hiện khác. Hãy chuyển chữ thành nét và nhúng ảnh vào tệp.
check-text-too-small = { $item }: chữ nhỏ nhất cao { $height }. { $method } thường chỉ rõ từ { $least } trở lên. Hãy làm lớn hơn.

## Labels and care

check-care-customary = Nhãn không có hướng dẫn giặt. EU và Anh không bắt buộc, nhưng người mua mong có. Hãy nhập hướng dẫn giặt và nhãn cho nó.
check-care-harsh = { $treatments }: nhãn cho phép quá mức các vật liệu này chịu được: { $materials }. Hãy chọn cách giặt nhẹ hơn.
check-label-size-missing = { $item }: thiếu { $missing }. Hãy nhập.
check-label-place-missing = { $item }: chưa nêu cách đường may bao xa. Hãy nhập khoảng cách.
check-label-language-missing = { $item } chưa có nội dung bằng ngôn ngữ này: { $language }. Hãy nhập.

## Packing

check-ratio-remainder = { $item }: mỗi gói { $pack } chiếc, mà { $colourway } có { $pieces }, nên dư { $left }. Hãy sửa một trong hai.

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-exempted = { $item }: có dây ở mũ hoặc cổ của đồ trẻ em, và một quy tắc đã được bỏ qua. { $reasons }. Hãy để phòng thử nghiệm được cấp phép đánh giá.
check-cord-free-ends-eu = { $item }: có dây ở mũ hoặc cổ của đồ trẻ lớn, cỡ { $sizes }. { $rule } cấm đầu dây tự do ở đó. Hãy bỏ, hoặc ghi rõ là không có.
check-cord-free-missing = { $item }: dây này của đồ trẻ em thiếu { $missing }. Hãy nhập: quy tắc dựa vào đó.
check-cord-long-us = { $item }: dây lộ ra { $free }, cỡ { $sizes }. { $rule } cho phép { $most } khi áo mở rộng hết cỡ. Hãy làm ngắn lại.
check-cord-toggled-us = { $item }: dây có chốt, đầu bịt hoặc nút thắt, cỡ { $sizes }. { $rule } không cho phép ở eo và lai. Hãy bỏ.
check-cord-loose-us = { $item }: dây có thể bị rút ra, cỡ { $sizes }. { $rule } yêu cầu đính bọ để giữ. Hãy thêm.
check-cord-long-eu = { $item }: dây lộ ra { $free }, cỡ { $sizes }. Theo trí nhớ, chưa đối chiếu, { $rule } cho phép { $most } ở đó. Hãy đọc con số trong tiêu chuẩn, và làm ngắn nếu cần.
check-cord-back-eu = { $item }: có dây ở lưng của đồ trẻ em, cỡ { $sizes }. Theo trí nhớ, chưa đối chiếu, { $rule } chỉ cho phép đai buộc ở đó. Hãy đọc trong tiêu chuẩn.
check-evidence-small-parts = { $item } có thể rơi ra, và cỡ { $sizes } dành cho trẻ dưới 3 tuổi. { $rule } yêu cầu thử chi tiết nhỏ. Hãy nhập báo cáo.
check-evidence-flammability = { $item }: chưa có thử nghiệm tốc độ cháy. { $rule } có thể yêu cầu. Hãy nhập báo cáo, hoặc nêu vì sao không có.
check-evidence-sleepwear = { $item }: đồ ngủ trẻ em, cỡ { $sizes }, chưa có thử nghiệm cháy. { $rule } yêu cầu. Hãy nhập báo cáo.
check-evidence-nickel = { $item } là kim loại chạm da, chưa có thử nghiệm niken. { $rule } giới hạn chất này. Hãy nhập báo cáo.
check-evidence-azo-dyes = { $item } có nhuộm, chưa có thử nghiệm thuốc nhuộm azo. { $rule } giới hạn chất này. Hãy nhập báo cáo.
check-evidence-lead = { $item }: phụ liệu của sản phẩm trẻ em, cỡ { $sizes }, chưa có thử nghiệm chì. { $rule } giới hạn chất này. Hãy nhập báo cáo.
