### Mails about what waits for somebody, and who wants them.

mail-subject = { $count } việc đang chờ bạn
mail-hello = Chào { $name }, những việc này đang chờ bạn:
mail-chain = Sổ ghi: { $entries } mục, mã băm của mục cuối là
mail-why = Bạn nhận thư này khi có việc mới chờ bạn. Đổi ở trang của bạn:
me-mail = Thư điện tử
me-mail-what = Một thư khi có việc mới chờ bạn. Để trống nếu không muốn nhận.
me-mail-address = Địa chỉ e-mail
error-mail-address = Viết một địa chỉ e-mail như name@example.org, hoặc để trống.
