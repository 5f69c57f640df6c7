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
