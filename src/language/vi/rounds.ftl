### Sample rounds and measuring.

rounds-title = { $kind }, đợt mẫu { $number }
rounds-revision = Phiên bản
rounds-factory = Nhà máy
rounds-asked = Yêu cầu
rounds-missing = Còn thiếu
rounds-out = Ngoài dung sai
rounds-critical-out = Vị trí trọng yếu ngoài dung sai
rounds-values = Đã đo
rounds-measured-of = { $measured } / { $count }

## Asking for a round

rounds-new-title = Yêu cầu mẫu
rounds-new-bound = Nhà máy làm các mẫu này theo phiên bản { $revision }.
rounds-choose = Chọn nhà máy
rounds-factory-missing = Hãy chọn nhà máy.
rounds-kind = Mẫu để làm gì?
rounds-kind-proto-help = Những chiếc đầu tiên: hai bên hiểu nhau chưa?
rounds-kind-fit-help = Có vừa không, số đo có đúng không?
rounds-kind-size-set-help = Mỗi cỡ một chiếc: nhảy cỡ có đúng không?
rounds-kind-pre-production-help = Đúng như đơn hàng: vật liệu thật, chuyền thật.
rounds-kind-top-of-production-help = Những chiếc đầu tiên của chính đơn hàng.
rounds-pieces = Mỗi cỡ bao nhiêu chiếc?
rounds-count-wrong = Hãy ghi một số nguyên từ 0 đến { $most }.
rounds-new-button = Yêu cầu mẫu
rounds-back-to-style = Về mã hàng
rounds-not-shared = Mã hàng này chưa chia sẻ với nhà máy nào. Hãy chia sẻ trước.
rounds-none-current = Chưa có phiên bản hiện hành. Hãy phát hành trước.

## What is next

rounds-next-start = Bắt đầu làm các mẫu này.
rounds-next-start-other = Nhân viên theo dõi đơn hàng sẽ bắt đầu.
rounds-next-start-factory = Tiếp theo: { $org } bắt đầu làm.
rounds-next-measure = Hãy đo mẫu: còn thiếu { $count } số đo.
rounds-next-dispatch = Đã đo xong. Hãy gửi mẫu rồi báo ở đây.
rounds-next-dispatch-other = Đã đo xong. Nhân viên theo dõi đơn hàng sẽ gửi mẫu.
rounds-next-in-work = { $org } đang làm và đo mẫu.
rounds-next-receive = Mẫu đang trên đường. Khi nhận được hãy báo.
rounds-next-on-the-way = Mẫu đang trên đường. Nhãn hàng sẽ báo khi nhận được.
rounds-next-check = Hãy đo mẫu, hoặc kiểm tra số đo của nhà máy. Sau đó báo đã đo xong.
rounds-next-check-other = Nhãn hàng đang kiểm tra mẫu.
rounds-next-decide = Hãy quyết định về các mẫu này.
rounds-next-decide-other = Tiếp theo nhãn hàng quyết định.
rounds-next-cancelled = Đợt này đã hủy. Không còn việc gì.
rounds-next-sign = Hãy đọc quyết định rồi ký.
rounds-next-sign-blocked = Còn câu hỏi đang mở. Giải quyết xong rồi ký quyết định.
rounds-next-sign-other = Chưa ký: { $side }.
rounds-next-done = Hai bên đã ký. Không còn việc gì.

rounds-move-start = Bắt đầu làm
rounds-move-dispatch = Đã gửi mẫu
rounds-move-receive = Đã nhận mẫu
rounds-move-finish-measuring = Đã đo xong
rounds-measure = Đo
rounds-correct = Sửa số đo
rounds-sign = Đến phần chữ ký
rounds-see-open = Xem việc còn mở
rounds-unfinished = Còn thiếu { $count } số đo.
rounds-unfinished-what = Chưa ai đo các mục này. Hãy đo, hoặc tiếp tục mà không có.
rounds-unfinished-piece = Chiếc { $number }, cỡ { $size }
rounds-dispatch-anyway = Đã gửi mẫu, không có các số đo này
rounds-finish-anyway = Vẫn kết thúc

## A newer revision

rounds-newer = Đã có phiên bản { $revision }.
rounds-newer-bound = Các mẫu này làm theo phiên bản { $revision }.
rounds-newer-wait = Nhãn hàng sẽ cho biết có làm tiếp không.
rounds-newer-changes = Xem thay đổi
rounds-continue = Tiếp tục với phiên bản { $revision }
rounds-restart = Làm lại theo phiên bản { $revision }
rounds-restart-sure = Vòng mẫu này kết thúc là đã hủy và giữ nguyên như vậy. Những gì đã đo trong vòng được giữ lại. Các mẫu như vậy được yêu cầu lại ngay theo phiên bản { $revision }.
rounds-restart-reason = Đã làm lại theo phiên bản { $revision }.

## Pieces and points

rounds-pieces-by-points = Số đo
rounds-caption = Đơn vị: { $unit }
rounds-pick-piece = Chiếc
rounds-piece = Chiếc { $number }
rounds-letter = Chữ cái
rounds-point = Vị trí đo
rounds-spec = Thông số
rounds-critical = trọng yếu
rounds-critical-line = { $letter } { $name } là vị trí trọng yếu, có { $count } chiếc ngoài dung sai.
rounds-not-yet = chưa có
rounds-over = vượt dung sai
rounds-under = dưới dung sai
rounds-apart = Hai bên đo lệch nhau quá nhiều: hãy thống nhất cách đo trước.
rounds-legend = ▲ vượt dung sai, ▼ dưới dung sai.
rounds-legend-both = Chỗ nào nhãn hàng đã đo thì lấy số đo của nhãn hàng.

## Deciding

rounds-decide = Quyết định
rounds-stop = Dừng đợt này
rounds-outcome = Bạn quyết định thế nào?
rounds-outcome-missing = Hãy chọn quyết định.
rounds-approved-help = Mẫu đạt. Không sửa gì.
rounds-approved-with-changes-help = Đạt, trừ những sửa đổi dưới đây. Mỗi mục là việc bắt buộc sửa cho phiên bản sau.
rounds-remake-help = Làm lại các mẫu này. Ghi lý do.
rounds-cancelled-help = Kết thúc đợt này không có kết quả. Ghi lý do.
rounds-changes = Sửa đổi
rounds-changes-help = Chỉ dùng khi duyệt kèm sửa đổi. Bỏ dấu chọn ở mục không cần sửa.
rounds-change-text = Phải sửa gì ở { $letter }
rounds-other-item = Sửa đổi khác
rounds-no-item = Không có
rounds-other-text = Phải sửa gì ở đó
rounds-reason = Lý do
rounds-reason-help = Cả hai bên đều đọc. Làm lại hoặc hủy thì phải có lý do.
rounds-decide-button = Quyết định
rounds-suggestion = { $pieces } Hãy đưa về trong khoảng { $tolerance } { $unit }.
rounds-suggestion-piece = Chiếc { $piece }, cỡ { $size }: đo được { $measured }, thông số là { $spec } ({ $off }).

rounds-decided = Quyết định
rounds-reason-erased = (lý do đã bị xóa)
rounds-must-fixes = Việc bắt buộc sửa từ quyết định này
rounds-another = Yêu cầu đợt khác

## Signing

sign-title = Chữ ký
sign-signed = đã ký
sign-not-yet = chưa ký
sign-fingerprint = Mã nhận dạng
sign-as = Tôi ký với tư cách { $name }, { $role }
sign-button = Ký
sign-blocked = Bạn chưa ký được
sign-local = { $time }, giờ của người ký
sign-to-acknowledge = Xác nhận
sign-to-thread = Mở { $kind }: { $item }

## History

rounds-history = Lịch sử
rounds-did-request = đã yêu cầu { $count } chiếc theo phiên bản { $revision }.
rounds-did-start = đã bắt đầu làm.
rounds-did-dispatch = đã gửi mẫu.
rounds-did-receive = đã nhận mẫu.
rounds-did-finish-measuring = báo đã đo xong.
rounds-did-continue = tiếp tục với các mẫu này. Phiên bản { $revision } không làm chúng thay đổi.
rounds-did-measure = đã đo { $count } số đo.
rounds-did-decide = đã quyết định: { $outcome }.
rounds-did-sign = đã ký quyết định.
rounds-did-must-fix = nêu việc bắt buộc sửa: { $letter } { $name }.

## Measuring on a phone

rounds-measure-title = Đo chiếc { $piece }
rounds-missing-count = { $count ->
    [0] đã đo hết
   *[other] còn thiếu { $count }
}
rounds-back-to-round = Về { $kind }, đợt { $number }
rounds-progress = Vị trí đã đo của chiếc này
rounds-waiting = Chưa gửi:
rounds-drop = Bỏ
rounds-place = { $place } / { $count }
rounds-how = Từ { $start } đến { $end }.
rounds-stretched = Kéo căng.
rounds-half = NỬA VÒNG
rounds-half-how = đặt phẳng
rounds-full = CẢ VÒNG
rounds-full-how = đo quanh cả vòng
rounds-length = CHIỀU DÀI
rounds-value = Số đo
rounds-save-next = Lưu, tiếp
rounds-kept = Trang này mở lại được khi không có mạng.
rounds-plain = Không có HTTPS, trang này không mở lại được khi mất mạng. Số bạn nhập vẫn được giữ.
rounds-save-anyway = Đúng rồi: lưu
rounds-back = Trước
rounds-next = Tiếp
rounds-skip = Bỏ qua
rounds-skip-why = Vì sao không đo?
rounds-skip-later = Để sau: điểm tiếp theo
rounds-skipped = Không đo:
rounds-state-spec = Theo quy cách
rounds-state-is-spec = số liệu của quy cách
rounds-measure-in = Đo:
rounds-delete = Xóa
rounds-not-positive = Số đo phải lớn hơn 0.
rounds-key-used = Biểu mẫu này đã gửi trước đó với số khác. Hãy xem lại số đo rồi lưu.

rounds-ask-doubled = { $value } gấp khoảng hai lần thông số. Có phải cả vòng không? Hãy đo lại.
rounds-ask-halved = { $value } bằng khoảng một nửa thông số. Có phải chỉ nửa vòng không? Hãy đo lại.
rounds-ask-cm-as-inch = { $value } có vẻ là xăng-ti-mét. Hãy đo lại.
rounds-ask-inch-as-cm = { $value } có vẻ là inch. Hãy đo lại.
rounds-ask-ten-times = { $value } gấp khoảng mười lần thông số. Hãy xem lại dấu thập phân.
rounds-ask-tenth = { $value } bằng khoảng một phần mười thông số. Hãy xem lại dấu thập phân.
rounds-ask-other-size = Chiếc này hợp với cỡ { $size } hơn. Hãy xem nhãn và đo lại.
rounds-ask-copied = Mọi số đo đều giống thông số. Đã đo thật hay chép lại?

## Sending the pieces

rounds-send-title = Gửi các chiếc mẫu
rounds-send-materials = Mẫu may bằng gì?
rounds-send-substitutes = Cái gì thay cho cái gì?
rounds-send-parcel = Hãng chuyển phát và mã vận đơn
rounds-send-materials-missing = Hãy ghi mẫu may bằng gì.
rounds-materials = Nguyên phụ liệu
rounds-parcel = Gửi bằng

## Washing

washes-title = Giặt
washes-what = Thay đổi giữa số đo trước và sau khi giặt: (sau − trước) / trước.
washes-rest = { $count ->
   *[other] { $count } chỗ khác thay đổi không hơn mức mà sai số đo giải thích được.
}
washes-points = { $count ->
   *[other] Từng điểm ({ $count })
}

## Photographs of pieces

photographs-title = Ảnh các chiếc mẫu
photographs-add = Thêm ảnh
photographs-add-button = Thêm
photographs-missing = Hãy chọn hoặc chụp một ảnh.
photographs-many = Mỗi chiếc có nhiều nhất { $count } ảnh.

## Every value side by side

readings-title = Tất cả số đo cạnh nhau
readings-state = Trạng thái của các chiếc mẫu
readings-wrong = Chưa lưu gì cả. Hãy xem các giá trị được đánh dấu.
readings-asks = Chưa lưu. Hãy xem lại:
readings-look = Chưa lưu gì cả. Hãy xem các giá trị rồi lưu.
readings-save = Lưu tất cả
readings-empty = Ô để trống giữ nguyên giá trị đã có.
readings-paste-title = Dán hoặc mở bảng tính
readings-paste = Giá trị từ bảng tính hoặc thư
readings-paste-help = Mỗi điểm một hàng, bắt đầu bằng chữ cái hoặc tên. Cột của mỗi chiếc có số của chiếc ở trên, hoặc theo thứ tự.
readings-file = Hoặc một tệp: XLSX hoặc CSV
readings-first = Các cột không có số bắt đầu từ
readings-fill = Điền vào các ô
readings-nothing-pasted = Hãy dán giá trị hoặc chọn một tệp.
readings-filled = { $count ->
   *[other] Đã điền { $count } giá trị vào các ô.
}
readings-unknown = { $cell }: “{ $words }” không phải là điểm của bảng này, hoặc đã có trước đó. Giá trị của hàng này bị bỏ qua.
readings-unreadable = { $cell } không chứa số đọc được: bảng tính có thể đã đổi nó thành ngày tháng.
readings-no-points = Không hàng nào bắt đầu bằng chữ cái hoặc tên của một điểm, và { $rows } hàng không khớp { $points } điểm của bảng. Hãy ghi chữ cái trước giá trị.
readings-columns = Có { $columns } cột giá trị, còn từ chiếc đã chọn chỉ có { $pieces } chiếc. Hãy ghi số của chiếc trên mỗi cột.
readings-twice = Hai cột đều là của chiếc { $piece }. Chỉ để lại một cột.
