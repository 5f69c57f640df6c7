### What stands around every page: title, navigation, footer.

frame-skip = Đến nội dung trang
frame-nav = Menu chính
frame-sign-out = Đăng xuất
frame-foot = Tạo bằng Fellseam

nav-needs = Việc cần tôi làm
nav-styles = Mã hàng
nav-people = Nhân sự
nav-me = Trang của tôi

language-label = Ngôn ngữ
language-unchecked = Do người làm chương trình viết, chưa được người bản ngữ kiểm tra: { $languages }.
name-erased = (tên đã bị xóa)

## What the form before this page has done

said-saved = Đã lưu.
said-made = Đã tạo.
said-restored = Phần này đã trở lại như lúc đó.
said-published = Đã phát hành.
said-shared = Đã chia sẻ.
said-unshared = Không còn chia sẻ.
said-withdrawn = Đã thu hồi.
said-acknowledged = Đã xác nhận.
said-signed = Đã ký.
said-sent = Đã gửi.
said-photographed = Đã thêm ảnh.
said-translated = Bản dịch đã được đặt bên cạnh tin nhắn.
said-moved = Xong.
said-measured = Đã lưu số đo.
said-decided = Đã quyết định.
said-sealed = Đã niêm phong.
said-begun = Đã bắt đầu.
said-concluded = Đã kết luận.
said-ended = Người này không đăng nhập được nữa.

## What needs me

needs-none = Không có việc nào chờ bạn.
needs-since = từ { $date }
needs-styles = Mã hàng của bạn
needs-no-styles = Chưa có mã hàng nào được chia sẻ với bạn. Nhãn hàng sẽ chia sẻ khi sẵn sàng.
needs-newest = Phiên bản { $revision }
need-acknowledge = Đọc và xác nhận phiên bản { $revision }
need-sign-revision = Ký phiên bản { $revision }
need-sign-revision-blocked = Phiên bản { $revision }: xem việc còn mở trước khi ký
need-answer = Trả lời: { $kind }
need-read-answer = Đọc câu trả lời: { $kind }
need-change = Sửa trong phiên bản sau: { $kind }
need-round-start = Bắt đầu đợt mẫu { $number }, { $kind }
need-round-measure = Đo và gửi đợt mẫu { $number }, { $kind }
need-round-receive = Xác nhận đợt mẫu { $number } đã đến, { $kind }
need-round-check = Đo đợt mẫu { $number }, { $kind }
need-round-decide = Quyết định đợt mẫu { $number }, { $kind }
need-round-sign-blocked = Đợt mẫu { $number }, { $kind }: xem việc còn mở trước khi ký
need-round-sign = Ký quyết định về đợt mẫu { $number }, { $kind }
need-approvals-decide = Quyết định những mẫu đã gửi duyệt: { $count }
need-approvals-submit = Gửi những gì cần duyệt: { $count }
need-sign-seal = Ký niêm phong của đợt mẫu { $number }, { $kind }
need-sign-seal-blocked = Niêm phong của đợt mẫu { $number }, { $kind }: xem còn gì chưa xong trước khi ký
need-inspection = Kiểm hàng loạt: lần kiểm { $number }
need-inspection-decide = Quyết định về lô của kiểm hàng loạt { $number }
need-inspection-again = Sửa lô của kiểm hàng loạt { $number } rồi kiểm lại

frame-working = Đang xử lý. Trang này tự tiếp tục.
frame-sending = Đang gửi tệp: { $files }, { $size } MB. Trang này tự tiếp tục.
