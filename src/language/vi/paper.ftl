### Prints, and the page behind their code.

## The sheets

paper-identity = Nhận dạng và thay đổi
paper-pattern = Phòng rập
paper-cutting = Cắt và nguyên phụ liệu
paper-sewing = May
paper-artwork = Hình in thêu
paper-labels = Nhãn và đóng gói
paper-inspection = Kiểm hàng
paper-nothing = Ở đây không có nội dung.
paper-left-out = Không đính kèm, vì các tệp gốc cộng lại lớn hơn { $most } MB: { $names }. Hãy tải từ trang của phiên bản.
paper-page = Trang
paper-changed = đã đổi so với bản { $revision }; giá trị cũ bị gạch ngang
paper-scan = Bản in này còn hiệu lực không? Hãy quét.
paper-for = In cho
paper-printed = In lúc
paper-band-draft = BẢN NHÁP. Không may theo bản này.
paper-band-superseded = ĐÃ ĐƯỢC THAY bằng bản { $revision }. Không may theo bản này.
paper-band-withdrawn = ĐÃ THU HỒI. Dừng lại. Không may theo bản này.
paper-no-chart = Chưa có bảng thông số: còn thiếu một số giá trị.
paper-true-size = In ở tỷ lệ 100 %. Thước phải đo đúng 100 mm.
paper-larger = Trang này { $width } × { $height } mm, lớn hơn các trang khác. Hãy in ở tỷ lệ 100 % trên giấy lớn hoặc chia nhiều tờ.
paper-found = Đo được
paper-inspector = Người kiểm
paper-day = Ngày
paper-pieces = Số cái, mẫu hoặc lô
paper-stage = Vòng mẫu
paper-how-to-fill = Ghi số đo được bên cạnh mỗi giá trị. Đo khi trải phẳng và thả lỏng, trừ khi điểm đo nói khác.

## Where a print is asked for

print-title = In
print-what = Một tệp PDF gồm các tờ bạn chọn. Tệp gốc của bản vẽ và hình được đính kèm.
print-language = Ngôn ngữ
print-second = Ngôn ngữ thứ hai
print-one = Chỉ một ngôn ngữ
print-paper = Khổ giấy
print-sheets = Các tờ
print-for = In cho
print-own = chính thương hiệu
print-make = Tạo PDF
print-no-address = Không in: mã trên mỗi trang chỉ dẫn đến chính máy này. Người vận hành chương trình cần đặt địa chỉ công khai trước.
print-no-font = Không in: máy này không có phông chữ cho { $letters }. Người vận hành cần cài: { $packages }
print-failed = Không tạo được PDF. Hãy thử với ít tờ hơn.

## The page behind the code on a print

now-title = Bản in này còn hiệu lực không?
now-current = Hiện hành
now-superseded = Đã được thay
now-withdrawn = Đã thu hồi
now-draft = Bản nháp
now-go = Bản in này là bản { $revision }, đang hiện hành.
now-stop = Không may theo bản này. Bản { $revision } mới hơn.
now-draft-stop = Không bao giờ sản xuất theo bản nháp. Hãy đợi bản được phát hành.
now-changes = { $count ->
   *[other] { $count } thay đổi từ đó
}
now-checked = Kiểm tra lúc { $time } UTC
now-see = Xem bản này
