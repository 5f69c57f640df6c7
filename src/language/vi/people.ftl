### People, factories and invitations.

people-title = Nhân sự
people-name = Tên
people-role = Vai trò
people-org = Đơn vị
people-acts = Việc bạn có thể làm
people-left = không còn quyền vào
people-new-link = Đường dẫn mới
people-end = Chấm dứt quyền vào
people-end-what = { $name } bị đăng xuất mọi nơi ngay lập tức và không vào lại được. Những gì họ đã viết và ký vẫn còn. Việc này không hoàn lại được: muốn có họ lại thì mời mới.
people-add = Mời người
people-add-button = Tạo đường dẫn
people-inspector = Người kiểm hàng của bên thứ ba được thêm vào nhà máy có lô mà họ kiểm. Họ đọc những gì nhà máy đó đọc: phiên bản, trao đổi và đợt mẫu; không có giá, không có nhà máy khác.
people-factory = Thêm nhà máy
people-factory-name = Tên nhà máy
people-factory-button = Thêm nhà máy
people-link-for = Đường dẫn cho { $name }
people-link-how = Chỉ gửi đường dẫn này cho người đó, không gửi cho ai khác. Dùng một lần, trong bảy ngày. Bạn chỉ thấy nó lúc này.
people-link-label = Đường dẫn
people-link-qr = Hoặc quét bằng điện thoại của họ
people-link-unreachable = Địa chỉ này chỉ mở được trên máy này. Hãy chạy chương trình với --public-url để tạo đường dẫn cho người khác.
