### Signing in and out, setting up, invitations.

sign-in-title = Đăng nhập
sign-in-login = E-mail hoặc tên đăng nhập
sign-in-password = Mật khẩu
sign-in-wrong = Tên hoặc mật khẩu không đúng. Hãy thử lại.
sign-in-code = Tôi có mã từ thiết bị khác
sign-in-lost = Không có mật khẩu? Hãy xin người đã mời bạn một đường dẫn mới.

set-up-title = Thiết lập Fellseam
set-up-what = Bạn là người đầu tiên ở đây. Hãy ghi tên nhãn hàng và tên bạn: bạn sẽ là chủ sở hữu.
set-up-brand = Tên nhãn hàng
set-up-name = Tên của bạn
set-up-button = Thiết lập

join-title = Vào
join-for = Đường dẫn này dành cho { $name }
join-as = Bạn vào với vai trò { $role }, { $org }.
join-name = Tên của bạn
join-button = Vào
join-once = Đường dẫn chỉ dùng được một lần. Chưa bấm nút thì chưa bị dùng.

spent-title = Đường dẫn này không dùng được
spent-why = Nó đã được dùng hoặc đã hết hạn.

code-title = Mã từ thiết bị khác của bạn
code-label = Mã
code-where = Trên thiết bị kia, mở Trang của tôi và chọn Hiện mã.
code-wrong = Mã không đúng hoặc đã hết hạn. Hãy tạo mã mới.
code-button = Vào

me-title = Trang của tôi
me-about = Về tôi
me-save = Lưu
me-second = Thiết bị thứ hai
me-second-what = Mở Fellseam trên điện thoại hoặc máy tính mà không cần đường dẫn mới.
me-second-button = Hiện mã
me-code-title = Mã cho thiết bị thứ hai
me-code-how = Mở { $address } trên thiết bị kia và nhập mã này. Mã dùng một lần, trong mười phút.
me-code-qr = Mở trang để nhập mã
me-password = Mật khẩu
me-password-what = Có mật khẩu thì đăng nhập được mà không cần đường dẫn. Đặt mật khẩu sẽ đăng xuất mọi thiết bị khác.
me-password-old = Mật khẩu hiện tại
me-password-new = Mật khẩu mới
me-password-button = Đặt mật khẩu
me-out = Đăng xuất mọi nơi
me-out-what = Kết thúc mọi phiên của bạn, trên mọi thiết bị.
me-out-sure = Thiết bị này cũng bị đăng xuất. Bạn cần mật khẩu hoặc một liên kết mới để vào lại.
me-out-button = Đăng xuất mọi nơi
