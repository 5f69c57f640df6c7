### What the program's own values are called.

## Sections of a spec

section-header = Phần đầu
section-sizes = Cỡ
section-drawings = Bản vẽ
section-points = Vị trí đo
section-colourways = Chi tiết và phối màu
section-materials = Nguyên phụ liệu
section-construction = Quy cách may
section-artwork = Hình in, thêu
section-labels = Nhãn và hướng dẫn giặt
section-packing = Đóng gói

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = Sau khi may
measured-after-finish = Sau khi hoàn tất
measured-after-washes = Sau { $count } lần giặt

## Units

unit-cm = cm
unit-mm = mm
unit-inch = inch

## Drawings


## Points of measure


## Readiness

severity-error = Lỗi
severity-warning = Cảnh báo

## Who takes part

side-brand = Nhãn hàng
side-factory = Nhà máy
role-owner = Chủ sở hữu
role-designer = Nhà thiết kế
role-viewer = Người xem
role-merchandiser = Nhân viên theo dõi đơn hàng
role-sample-room = Phòng mẫu
role-inspector = Người kiểm hàng

## Revisions

standing-current = Hiện hành
standing-superseded = Đã bị thay thế
standing-withdrawn = Đã thu hồi
agreement-shared = Đã chia sẻ
agreement-acknowledged = Đã xác nhận
agreement-signed-by-factory = Nhà máy đã ký
agreement-signed-by-brand = Nhãn hàng đã ký
agreement-signed-by-both = Hai bên đã ký

## Threads

thread-kind-question = câu hỏi
thread-kind-must-fix = bắt buộc sửa
thread-kind-suggestion = góp ý
thread-kind-concession = xin chấp nhận sai lệch
thread-state-open = đang mở
thread-state-answered = đã trả lời
thread-state-agreed = đã đồng ý
thread-state-changed = đã sửa trong phiên bản { $revision }
thread-state-verified = đã kiểm tra trên mẫu của phiên bản { $revision }
thread-state-closed = đã đóng
thread-state-granted = được chấp nhận

## Sample rounds

round-kind-proto = Mẫu đầu (proto)
round-kind-fit = Mẫu fit
round-kind-size-set = Mẫu bộ cỡ
round-kind-pre-production = Mẫu trước sản xuất (PP)
round-kind-top-of-production = Mẫu đầu chuyền (TOP)
round-state-requested = đã yêu cầu
round-state-in-work = đang làm
round-state-dispatched = đã gửi
round-state-received = đã nhận
round-state-measured = đã đo
round-materials-actual = đúng nguyên phụ liệu của bản thông số
round-materials-substitute = nguyên phụ liệu thay thế
round-outcome-approved = duyệt
round-outcome-approved-with-changes = duyệt kèm sửa đổi
round-outcome-remake = làm lại
round-outcome-cancelled = hủy
wash-before = Trước khi giặt
wash-after = Sau khi giặt
skip-absent = Chiếc này không có phần đó
skip-unfinished = Chưa may
skip-damaged = Chiếc mẫu bị hỏng ở đây
skip-unclear = Tôi không hiểu cách đo

## Bulk inspections

inspection-critical = nghiêm trọng
inspection-major = nặng
inspection-minor = nhẹ
inspection-open = đang kiểm
inspection-accepted = chấp nhận
inspection-rejected = loại
inspection-released = cho xuất hàng
inspection-concession = chấp nhận sai lệch
inspection-rework = trả về để sửa
inspection-refused = không nhận

## Acts in the ledger

act-create = Bắt đầu mã hàng
act-publish = Phát hành phiên bản
act-withdraw = Thu hồi phiên bản
act-share = Chia sẻ với nhà máy
act-unshare = Thôi chia sẻ với nhà máy
act-acknowledge = Xác nhận phiên bản
act-ask = Mở mục trao đổi
act-message = Gửi tin nhắn
act-thread-move = Cập nhật mục trao đổi
act-request-round = Yêu cầu đợt mẫu
act-round-move = Cập nhật đợt mẫu
act-measure = Đã đo
act-skip = Điểm không đo
act-photograph = Ảnh chiếc mẫu
act-decide = Đã quyết định đợt mẫu
act-submit = Đã gửi mẫu duyệt
act-approve = Đã quyết định mẫu duyệt
act-seal = Đã niêm phong mẫu
act-begin-inspection = Đã bắt đầu kiểm hàng loạt
act-inspect = Đã kiểm một chiếc
act-conclude-inspection = Đã kết luận kiểm hàng loạt
act-decide-inspection = Đã quyết định về lô
act-sign = Đã ký
act-translate = Đã dịch
act-translate-message = Bản dịch tin nhắn
act-erase = Đã xóa nội dung cá nhân
