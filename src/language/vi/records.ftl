### The signed record of a revision or a round.

record-title = Biên bản có chữ ký
record-link = Biên bản có chữ ký
record-round = Đợt { $number }
record-round-head = Đợt mẫu
record-download = Tải biên bản
record-what = Ai đã ký điều gì, lúc nào, cùng các mục trong sổ ghi lại việc đó. Tệp tải về mang chữ ký của dịch vụ này và nhiều năm sau vẫn kiểm tra được trên máy bất kỳ.
record-style = Mã hàng
record-made = Lập lúc
record-digest = Mã băm của nội dung được ký
record-nothing = Chưa có quyết định nào.
record-names = Người ký
record-unsigned = Chưa có ai ký.
record-moved = Có giá trị được sửa sau chữ ký này; lúc đó đã ký cho:
record-chain = Sổ ghi
record-chain-what = Khi lập biên bản, sổ có { $count } mục. Các mục sau ghi lại việc này; mỗi mục mang mã băm của mục trước.
record-head = Cuối sổ
record-how = Kiểm tra
record-how-what = Chương trình kiểm tra tệp mà không cần kết nối và chỉ ra giá trị bị sửa:
record-key = Khóa công khai của dịch vụ này. Hãy giữ một bản ở nơi khác để không ai tráo được:
