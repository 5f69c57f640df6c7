### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = Tôi đã đọc phiên bản này. Nhà máy của tôi sẽ làm mã hàng theo đúng phiên bản này.
statement-revision-brand = Phiên bản này là điều chúng tôi yêu cầu. Chúng tôi sẽ lấy đó để xét hàng nhận được.
statement-round-factory = Tôi đã đọc quyết định về đợt mẫu này. Nhà máy của tôi sẽ làm theo.
statement-round-brand = Đây là quyết định của chúng tôi về đợt mẫu này.
statement-seal-factory = Các chiếc nêu ở đây đã được niêm phong. Nhà máy của tôi sẽ làm hàng loạt theo chúng và theo phiên bản.
statement-seal-brand = Các chiếc nêu ở đây đã được niêm phong. Chúng tôi sẽ xét hàng loạt theo chúng và theo phiên bản.

## A revision

revision-number = Phiên bản { $revision }
revision-reason = Lý do phát hành

## What changed

changes-title = Thay đổi trong phiên bản { $revision }
changes-since = So với phiên bản { $revision }.
changes-acknowledged = Đây là phiên bản nhà máy của bạn xác nhận gần nhất.
changes-none = Không có thay đổi so với phiên bản { $revision }.
changes-first = Đây là phiên bản đầu tiên. Không có phiên bản trước để so sánh.
changes-compare = So với phiên bản khác
changes-with = Với phiên bản { $revision }
changes-read = Đọc phiên bản { $revision }

## The revision page

revision-what-changed = Thay đổi
revision-to-signatures = Chữ ký
revision-current = Phiên bản { $revision } đang hiện hành
revision-published = { $name } phát hành ngày { $date }
revision-superseded = Đã bị thay thế
revision-superseded-stop = Không may theo bản này.
revision-withdrawn = Đã thu hồi
revision-withdrawn-why = Dừng lại. Không may theo bản này: { $reason }
revision-use = Dùng phiên bản { $revision }
revision-see-changes = Xem thay đổi
revision-none-current = Không có phiên bản hiện hành. Hãy chờ nhãn hàng phát hành bản mới.
revision-original = Tệp gốc
revision-tap = Chọn một chữ cái để đọc hoặc hỏi. ? là câu hỏi đang mở, ! là việc bắt buộc sửa đang mở.
revision-style = Mã hàng
revision-revision = Phiên bản
revision-fingerprint = Mã nhận dạng
revision-date = Ngày phát hành
revision-by = Người phát hành
revision-state = Trạng thái
revision-compare = So sánh
revision-measured = { $state } · trải phẳng, để tự nhiên · { $edges }. Từng vị trí có thể quy định khác.
revision-contents = Trên trang này
revision-others = Phiên bản khác và tải về
revision-archive = Tải toàn bộ phiên bản (ZIP)
revision-archive-what = Tài liệu và các tệp gốc mà phiên bản này hiển thị, giữ nguyên từng byte.
revision-document = Tải tài liệu của phiên bản này (JSON)
revision-document-what = Đúng các byte đã tạo nên mã nhận dạng.

## Acknowledging

acknowledge-not-yet = Nhà máy của bạn chưa xác nhận phiên bản { $revision }.
acknowledge-changed = Có { $count } thay đổi so với phiên bản { $revision } mà nhà máy của bạn xác nhận gần nhất.
acknowledge-what = Khi xác nhận, bạn cam kết: chúng tôi đã đọc phiên bản này và chỉ làm theo phiên bản này.
acknowledge-button = Xác nhận phiên bản { $revision }
acknowledge-others = Hãy nhờ nhân viên theo dõi đơn hàng xác nhận.

## The size chart

chart-title = Bảng thông số
chart-caption = Bảng thông số, { $unit }
chart-units = Mọi số đo theo { $unit }. Số nhỏ theo { $other }, chỉ để tham khảo.
chart-changed = Số gạch chân đã thay đổi so với phiên bản { $revision } mà nhà máy của bạn xác nhận gần nhất; số cũ bị gạch ngang.
chart-size = Cỡ
chart-point = Vị trí đo
chart-base = cỡ gốc
chart-tolerance = Dung sai

## How to measure

how-title = Cách đo
how-from = Từ
how-to = Đến
how-way = Cách
how-relaxed = Để tự nhiên
how-stretched = Kéo căng

## Parts and colourways

parts-approximate = Màu trên màn hình chỉ gần đúng. Mã màu mới là chuẩn.
parts-colourway = Phối màu
parts-part = Chi tiết

## Words beside a name

about-must-fix = { $count } việc bắt buộc sửa
about-open = { $count } mục đang mở
about-new = mới
about-changed = đã thay đổi

## Warnings that were accepted

accepted-title = Cảnh báo mà nhãn hàng đã chấp nhận
accepted-reason = Lý do:

## Signing

sign-not-shared = Mã hàng này chưa chia sẻ với nhà máy nào.
sign-acknowledged = Xác nhận lúc { $time } UTC
