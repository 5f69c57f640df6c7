### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = Câu hỏi
phrase-group-answer = Trả lời
phrase-group-fix = Phải sửa
phrase-group-measuring = Đo
phrase-group-material = Nguyên phụ liệu
phrase-group-date = Ngày
phrase-group-shipping = Gửi hàng

## Questions

phrase-ask-how-measured = { $item } đo thế nào? Hãy chỉ rõ đo từ đâu đến đâu.
phrase-ask-which-right = { $item }: bản vẽ và lời mô tả khác nhau. Cái nào đúng?
phrase-ask-photo = Hãy gửi ảnh { $item }.
phrase-ask-larger-drawing = Hãy gửi bản vẽ phóng to của { $item }.
phrase-ask-value = Số đo { $item }, cỡ { $size }, chưa rõ. Là bao nhiêu?
phrase-ask-stitch = { $item } dùng loại mũi may nào?
phrase-ask-allowance = { $item } cần chừa đường may bao nhiêu?
phrase-ask-place = { $item } đặt chính xác ở đâu? Đo từ đường may nào?
phrase-ask-colour = { $item } dùng mã màu nào?
phrase-ask-revision = Chúng tôi làm theo phiên bản { $revision } phải không?
phrase-ask-order = May { $item } trước { $other } có được không?
phrase-ask-sample = Hãy gửi mẫu { $item }.

## Answers

phrase-answer-yes = Có.
phrase-answer-no = Không.
phrase-answer-spec = Tài liệu kỹ thuật đúng. Hãy làm theo.
phrase-answer-drawing = Bản vẽ đúng. Lời mô tả sẽ được sửa.
phrase-answer-text = Lời mô tả đúng. Bản vẽ sẽ được sửa.
phrase-answer-value = { $item }, cỡ { $size }: số đo đúng là { $value }.
phrase-answer-next = Sẽ sửa trong phiên bản sau. Hãy chờ.
phrase-answer-changed = Đã sửa trong phiên bản { $revision }.
phrase-answer-go-on = Hãy làm tiếp. Việc này không làm dừng công việc.
phrase-answer-stop = Hãy dừng làm { $item } cho đến khi xong việc này.
phrase-answer-understood = Đã hiểu. Chúng tôi sẽ làm như vậy.
phrase-answer-allowance = Chừa đường may { $value } ở { $item }.
phrase-answer-distance = Đặt { $item } cách { $other } { $value }.

## What must change

phrase-fix-large = { $item } lớn quá { $value }. Hãy đưa về đúng thông số.
phrase-fix-small = { $item } nhỏ quá { $value }. Hãy đưa về đúng thông số.
phrase-fix-density = { $item }: may { $count } mũi mỗi cm.
phrase-fix-twisted = Đường may ở { $item } bị xoắn. Hãy may cho phẳng.
phrase-fix-puckers = Đường may ở { $item } bị nhăn. Hãy kiểm tra độ căng chỉ.
phrase-fix-skipped = Bị bỏ mũi ở { $item }.
phrase-fix-ends = Hãy cắt sạch chỉ thừa ở { $item }.
phrase-fix-bartack = Thiếu bọ ở { $item }.
phrase-fix-place = { $item } sai vị trí. Hãy dời { $value }.
phrase-fix-turned = { $item } bị may ngược.
phrase-fix-sides = { $item }: trái và phải lệch { $value }. Hãy làm cho bằng nhau.
phrase-fix-colour = Màu của { $item } không đúng màu đã duyệt.
phrase-fix-print = Hình in ở { $item } bị nứt hoặc bong.
phrase-fix-stain = Có vết bẩn ở { $item }. Hãy giữ sản phẩm sạch.
phrase-fix-label = Chữ trên { $item } sai. Hãy dùng chữ trong tài liệu.

## Measuring

phrase-measured-says = { $item }: đo được { $value }, thông số là { $spec }.
phrase-measured-size = { $item }, cỡ { $size }: đo được { $value }.
phrase-measured-shrinks = { $item } co { $percent } % sau khi giặt.
phrase-measured-grows = { $item } giãn { $percent } % sau khi giặt.
phrase-measure-again = Hãy đo lại { $item }, trải phẳng, không kéo.
phrase-measured-half = { $item } đo trải phẳng: nửa vòng.
phrase-measured-stretched = { $item }, kéo căng: đo được { $value }.
phrase-measured-allowance = Rập cần thêm { $value } đường may ở { $item }.
phrase-measured-tolerance = Không giữ được dung sai của { $item }. Chúng tôi giữ được { $value }.
phrase-measured-vary = Các chiếc lệch nhau { $value } ở { $item }.

## Materials

phrase-material-instead = Dùng { $material } thay cho { $other } có được không?
phrase-material-none = { $material } không có hàng.
phrase-material-arrives = { $material } về ngày { $date }.
phrase-material-shade = Màu của { $material } khác mẫu màu đã duyệt.
phrase-material-dip-sent = Mẫu màu của { $material } đã gửi ngày { $date }.
phrase-material-dip-approve = Hãy duyệt mẫu màu của { $material }.
phrase-material-minimum = Lượng đặt tối thiểu của { $material } nhiều hơn nhu cầu của chúng tôi.
phrase-material-width = Khổ của { $material } là { $value }.
phrase-material-shrinks = { $material } co { $percent } %.
phrase-material-keep = Không. Hãy dùng { $material } như tài liệu.
phrase-material-take = Được. Có thể dùng { $material }.
phrase-material-short = { $material }: thiếu { $count } cái.

## Dates

phrase-date-ready = Mẫu xong ngày { $date }.
phrase-date-late = Chúng tôi trễ { $count } ngày.
phrase-date-need = Chúng tôi cần mẫu trước ngày { $date }.
phrase-date-answer = Hãy trả lời trước ngày { $date }. Sau đó công việc sẽ dừng.
phrase-date-cutting = Bắt đầu cắt ngày { $date }.
phrase-date-sewn = May xong ngày { $date }.
phrase-date-closed = Nhà máy nghỉ từ { $date } đến { $until }.
phrase-date-confirm = Hãy xác nhận ngày này: { $date }.

## Shipping

phrase-ship-sent = Đã gửi { $count } chiếc ngày { $date }.
phrase-ship-arrived = Đã nhận { $count } chiếc ngày { $date }.
phrase-ship-cartons = Số thùng: { $count }.
phrase-ship-missing = Trong kiện thiếu { $count } chiếc.
phrase-ship-damaged = Kiện hàng đến bị hỏng.
phrase-ship-address = Hãy xác nhận địa chỉ nhận kiện hàng.
phrase-ship-papers = Hãy gửi giấy tờ hải quan.
