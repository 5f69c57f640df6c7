### Kiểm hàng loạt theo mẫu niêm phong.

inspection-title = Kiểm hàng loạt { $number }
inspection-list = Kiểm hàng loạt
inspection-head = Lần kiểm
inspection-none = Chưa kiểm hàng loạt nào theo mẫu này.
inspection-do = Kiểm hàng loạt
inspection-what = Một số chiếc của lô đã xong được kiểm theo mẫu niêm phong và phiên bản của nó.
inspection-no-safety = Đạt lần kiểm này không nói gì về an toàn. Phòng thí nghiệm được cấp phép và luật địa phương quyết định điều đó.
inspection-follows = Sửa sau lần kiểm
inspection-followed = Đã kiểm lại ở
inspection-earlier = Các lần kiểm theo niêm phong này: { $count }
inspection-blocked = Những điều ngăn việc kiểm hàng loạt: { $count }
inspection-open-other = Mở lần kiểm đó

## Lô hàng và phương án

inspection-lot = Lô hàng
inspection-lot-help = Lô có bao nhiêu chiếc đã xong của từng phối màu và cỡ. Để trống nếu không có.
inspection-count-wrong = Hãy ghi số nguyên từ 0 đến { $most }.
inspection-plan = Phương án lấy mẫu
inspection-plan-of = Kiểm { $sample } trong { $lot } chiếc
inspection-plan-moved = Lô đã đổi sau khi xem phương án. Đây là phương án bây giờ.
inspection-show-plan = Xem phương án
inspection-begin = Bắt đầu lần kiểm này
inspection-level = Bậc kiểm tra
inspection-aql = AQL
inspection-aql-of = AQL, lỗi { $class }
inspection-usual = Bậc II với 2.5 và 4.0 là thông lệ, không có nguồn.
inspection-critical-rule = Lỗi nghiêm trọng không có mức chấp nhận: một lỗi là loại cả lô.
inspection-critical-found = Số chiếc có lỗi nghiêm trọng:
inspection-class = Lỗi
inspection-code = Chữ mã
inspection-sample = Cỡ mẫu
inspection-accept = Chấp nhận
inspection-reject = Loại
inspection-done = Đã kiểm
inspection-found = Chiếc lỗi
inspection-of = { $done } trên { $sample }
inspection-every-piece = mọi chiếc của lô
inspection-arrow = Khi mũi tên của bảng dẫn sang chữ khác thì tính cỡ mẫu của chữ đó.
inspection-source = Lấy mẫu một lần, kiểm tra thường, theo bảng của MIL-STD-105E.
inspection-colourway = Phối màu
inspection-size = Cỡ
inspection-in-lot = Trong lô
inspection-draw = Lấy
inspection-to-draw = Lấy những gì
inspection-draw-how = Lấy theo tỷ lệ của lô, mỗi loại ít nhất một chiếc nếu cỡ mẫu cho phép: thông lệ, không có nguồn. Hãy lấy ngẫu nhiên.

## Kết quả kiểm

inspection-begun = Người bắt đầu
inspection-within = Mỗi phương án chỉ đếm những chiếc đầu của mình, theo thứ tự lấy. Mỗi chiếc tính theo lỗi nặng nhất.
inspection-points-rule = Điểm trọng yếu ngoài dung sai là lỗi nặng, điểm khác là lỗi nhẹ: thông lệ, không có nguồn.
inspection-pieces = Các chiếc
inspection-nothing-yet = Chưa kiểm chiếc nào.
inspection-correct = Sửa lại
inspection-sound = Không có lỗi: { $count }
inspection-corrected = Mục đã được sửa: { $count }
inspection-measured = số đo: { $count }
inspection-no-defect = Không có lỗi
inspection-enter-beyond = Lỗi nghiêm trọng ngoài số mẫu
inspection-conceded = Những điều này đã được chấp nhận ở mẫu niêm phong. Ở đây vẫn tính là lỗi: nhãn hàng quyết định.
inspection-curve = Phương án cho biết được gì
inspection-curve-what = Khả năng lô này được chấp nhận, theo tỷ lệ chiếc lỗi trong lô. Lô kém hơn AQL vẫn có thể được chấp nhận, lô tốt hơn vẫn có thể bị loại.
inspection-curve-share = Tỷ lệ lỗi
inspection-curve-likelihood = Khả năng được chấp nhận
inspection-curve-at = có { $share } lỗi thì khả năng được chấp nhận là { $likelihood }

## Việc tiếp theo

inspection-enter = Kiểm một chiếc
inspection-conclude = Kết luận
inspection-conclude-what = Chương trình dựa trên các mục đã ghi để nói lô được chấp nhận hay bị loại.
inspection-conclude-final = Sau đó không ghi thêm hay sửa chiếc nào được nữa.
inspection-concluded = Kết luận
inspection-decide = Quyết định về lô
inspection-decide-final = Quyết định không thay đổi về sau.
inspection-reason-help = Trừ cho xuất hàng, mọi quyết định đều cần lý do. Khi chấp nhận sai lệch, hãy ghi rõ các lỗi được bỏ qua.
inspection-released-help = Lô được xuất hàng.
inspection-concession-help = Lô vẫn xuất dù bị loại. Hãy ghi rõ các lỗi.
inspection-rework-help = Nhà máy lựa và sửa lô. Sau đó kiểm lại.
inspection-refused-help = Không nhận lô này.
inspection-fails-critical = Số chiếc có lỗi nghiêm trọng: { $count }. Một chiếc là đủ.
inspection-fails = Số chiếc tính là lỗi { $class }: { $found }. Chấp nhận nhiều nhất { $accept }.
inspection-next-fails = Những gì đã thấy làm lô bị loại. Hãy kết luận.
inspection-next-enter = Hãy kiểm các chiếc: đã xong { $done } trên { $sample }.
inspection-next-enter-other = { $org } đang kiểm lô.
inspection-next-conclude = Đã kiểm đủ mẫu. Hãy kết luận.
inspection-next-decide = Hãy quyết định về lô này.
inspection-next-decide-other = Nhãn hàng quyết định về lô này.
inspection-next-again = { $org } lựa và sửa lô. Sau đó kiểm lại.
inspection-next-done = Ở đây không còn việc gì.
inspection-again = Kiểm lô đã sửa

## Ghi một chiếc

inspection-corrects = Chiếc này đã được ghi. Những gì bạn lưu sẽ được tính thay; mục cũ vẫn đọc được.
inspection-other-sort = Phối màu hoặc cỡ khác
inspection-defects = Lỗi
inspection-defects-how = Không có lỗi thì lưu ngay.
inspection-classes = Nghiêm trọng: có thể làm người bị thương; khi nghi ngờ hãy chọn loại này. Nặng: sản phẩm dễ hỏng hoặc kém dùng hẳn. Nhẹ: khác với yêu cầu nhưng vẫn dùng được.
inspection-defect = Lỗi { $number }
inspection-class-of = Loại
inspection-where = Ở đâu
inspection-nowhere = Không có trong danh sách
inspection-times = Bao nhiêu
inspection-words = Bằng lời
inspection-more = Thêm lỗi
inspection-values = Số đo
inspection-other-points = Các điểm khác: { $count }
inspection-class-missing = Hãy chọn nghiêm trọng, nặng hoặc nhẹ.
inspection-times-wrong = Hãy ghi số nguyên từ 1 đến { $most }.
inspection-moved-on = Có người vừa ghi chiếc đó. Chiếc của bạn giờ là chiếc { $number }: hãy lưu lại lần nữa.
