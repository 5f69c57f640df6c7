### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = Chưa nhập gì. Hãy ghi số đo, ví dụ 28, 28.5 hoặc 28 1/2.
length-not-a-number = “{ $typed }” không phải số đo. Hãy ghi như 28, 28.5 hoặc 28 1/2.
length-unknown-unit = “{ $typed }” có đơn vị không nhận ra. Hãy dùng cm, mm hoặc inch.
length-unit-missing = “{ $typed }” không có đơn vị, và tài liệu cũng chưa có. Hãy chọn đơn vị ở phần đầu, hoặc ghi ở đây: 28 cm.
length-may-be-thousands = “{ $typed }” có thể đọc theo hai cách. Hãy ghi không có dấu hàng nghìn, hoặc thêm một số thập phân.
length-zero-divisor = “{ $typed }” là phân số có mẫu bằng 0. Hãy ghi như 28 1/2.
length-fraction-not-proper = “{ $typed }” có phân số không nhỏ hơn một. Hãy ghi như 28 1/2.
length-too-fine = “{ $typed }” quá chi tiết, không lưu chính xác được. Hãy ghi ít số thập phân hơn.
length-too-long = “{ $typed }” dài hơn một ki-lô-mét. Đơn vị có đúng không?

## A grade rule that cannot be read

grade-unreadable = “{ $piece }” không phải quy tắc nhảy cỡ. Hãy ghi 2 (mọi cỡ), XS-L 2, L-2XL 2.5 (theo cỡ), same (như nhau), XS=50, S=52 (số đo), hoặc =C - 1.5 (từ vị trí C).
grade-two-readings = “{ $piece }” có thể đọc theo hai cách. Hai cỡ hoặc hai vị trí có cùng mã hoặc chữ cái.
grade-unknown-size = “{ $size }” không phải một trong các cỡ.
grade-size-twice = Cỡ “{ $size }” có hai số đo.
grade-unknown-point = “{ $text }” không bắt đầu bằng chữ cái của một vị trí đo. Hãy ghi =C - 1.5.
grade-too-few-sizes = Chưa có đủ hai cỡ. Hãy nhập các cỡ trước, hoặc ghi: same.

## Forms

error-missing = Hãy ghi vào đây.
error-text-long = Dài quá. Tối đa { $most } chữ.
error-number-taken = Đã có mã hàng khác dùng số này. Hãy chọn số khác.
error-size-code-signs = Mã cỡ không được có dấu phẩy, chấm phẩy hoặc dấu bằng: quy tắc nhảy cỡ cần các dấu đó.
error-screen = “{ $typed }” không phải màu màn hình. Hãy ghi như #1f2a3c.
error-washes = Hãy ghi số lần giặt: 1 đến 99.
error-name-missing = Hãy ghi tên.
error-name-long = Tên dài quá. Tối đa 100 chữ.
error-login-missing = Hãy ghi e-mail hoặc tên để đăng nhập.
error-login-taken = Đã có người khác dùng tên này để đăng nhập. Hãy chọn tên khác.
error-password-short = Hãy ghi ít nhất { $count } ký tự.
error-password-long = Mật khẩu dài quá. Tối đa 1000 ký tự.
error-password-wrong = Đây không phải mật khẩu của bạn.
error-place-missing = Hãy chọn vai trò.
error-kind-missing = Hãy chọn loại.
error-factory-missing = Hãy chọn nhà máy.
error-text-missing = Hãy viết tin nhắn.
error-photos-many = Mỗi lần gửi tối đa { $count } ảnh.
error-decimal = “{ $typed }” không phải là số. Ví dụ hãy viết 12.5.
error-choice-missing = Hãy chọn một mục.
incomparable-illuminants = Một cái đo dưới { $standard }, cái kia dưới { $sample }: không so sánh được. Hãy đo cả hai dưới cùng nguồn sáng.
incomparable-observers = Một cái đo với { $standard }, cái kia với { $sample }: không so sánh được. Hãy đo cả hai với cùng góc quan sát.
incomparable-no-colour = Một trong hai số đo không phải màu của bề mặt nào. Hãy kiểm tra L*, a* và b*.
incomparable-weight = Trọng số của công thức không nằm giữa 0.1 và 10.
not-on-screen-no-colour = Không bề mặt nào có màu này. L* từ 0 đến 150, a* và b* từ −200 đến 200.

## Pages

problem-heading = Chưa làm được
problem-heading-refused = Chưa được
problem-heading-not-found = Không tìm thấy
problem-home = Về việc cần tôi làm
problem-not-found = Không có trang này, hoặc trang không được chia sẻ với bạn.
problem-sign-in = Hãy đăng nhập trước.
problem-not-yours = Việc này không dành cho vai trò { $role }. Hãy nhờ người có quyền.
problem-forged = Biểu mẫu này đã cũ, hoặc không gửi từ trang này. Hãy mở lại trang và gửi lại.
problem-bad-form = Không đọc được nội dung đã gửi. Hãy mở lại trang và thử lại.
problem-too-large = Nội dung quá lớn, không gửi được.
problem-too-many-tries = Thử sai quá nhiều lần. Hãy chờ mười lăm phút.
problem-fault = Phía chúng tôi có trục trặc. Những gì đã lưu không bị mất. Hãy báo số này cho người quản lý Fellseam: { $reference }

way-on-thread = Mở mục trao đổi { $number }
way-on-current = Mở phiên bản { $revision }
way-on-publish = Kiểm tra lại bản nháp
way-on-style = Về mã hàng

## Files

upload-too-large = Ảnh quá lớn. Hãy gửi ảnh tối đa 50 triệu điểm ảnh.
upload-not-a-picture = Tệp này không phải ảnh. Hãy gửi JPEG, PNG, WebP hoặc SVG.
upload-unsupported = Không hiển thị được ảnh loại { $what }. Hãy gửi JPEG, PNG, WebP hoặc SVG.
upload-heic = Điện thoại này lưu ảnh dạng HEIC. Trong cài đặt máy ảnh, hãy chọn “tương thích nhất” (JPEG) rồi chụp lại.
upload-too-heavy = Ảnh này mất quá lâu để vẽ. Hãy lưu dạng đơn giản hơn rồi gửi lại.
upload-broken = Ảnh bị hỏng. Hãy lưu lại rồi gửi lại.
upload-failed = Không xử lý được ảnh. Hãy thử lại.
