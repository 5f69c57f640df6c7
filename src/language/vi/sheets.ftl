### Sheets: what is written into them.

sheet-download = Tải { $kind }
sheet-draft = Bản nháp
sheet-base = Cỡ gốc { $size }
sheet-chart = Bảng thông số
sheet-grading = Nhảy cỡ
sheet-in-cm = Theo cm
sheet-in-inches = Theo inch
sheet-further = Số đo khác
sheet-materials = Nguyên phụ liệu
sheet-yes = có
sheet-offset = Cộng thêm
sheet-gap = Bước nhảy { $from } đến { $to }
sheet-what = Mô tả
sheet-wastage = Hao hụt, %
sheet-needed = Cần
sheet-kilograms = kg
sheet-pieces = Số chiếc dự kiến mỗi cỡ

## What cannot be read

sheet-too-large = Tệp quá lớn. Hãy gửi tệp tối đa 8 MB, chỉ có trang tính cần thiết.
sheet-unknown = Đây không phải bảng tính. Hãy gửi tệp XLSX hoặc CSV.
sheet-unsupported = { $what } không đọc được ở đây. Hãy lưu thành XLSX rồi gửi.
sheet-encoding = Không nhận ra bảng mã của văn bản này. Hãy lưu thành “CSV UTF-8” hoặc XLSX.
sheet-too-far = { $cell } nằm ngoài { $rows } hàng và { $columns } cột. Hãy xóa phần không cần.
sheet-too-many-cells = Hơn { $most } ô có dữ liệu. Chỉ gửi trang tính cần thiết.
sheet-too-many-sheets = Tệp có hơn { $most } trang tính. Chỉ gửi trang cần thiết.
sheet-too-long = { $cell } có hơn { $most } ký tự.
sheet-nothing = Tệp này không có gì.
sheet-too-heavy = Đọc tệp này mất quá lâu. Hãy gửi riêng trang tính cần thiết, lưu thành tệp XLSX mới.
sheet-broken = Tệp bị hỏng. Hãy lưu lại rồi gửi lần nữa.
sheet-failed = Hiện không đọc được tệp. Hãy thử lại.
