### Threads, messages and questions.

## An item of a revision

item-back = Phiên bản { $revision }
item-close = Quay lại
item-mark = { $letter }, { $name }
item-values = Số đo từng cỡ theo { $unit }, dòng dưới theo { $other }
item-tolerance = Dung sai
item-from = Từ
item-to = Đến
item-path = Cách đặt thước
item-relaxed = để tự nhiên
item-stretched = kéo căng
item-note = Ghi chú
item-basis = Cách tính số đo
item-key = vị trí chính
item-critical = vị trí trọng yếu
item-colours = Màu trong từng phối màu
item-not-said = chưa nêu
item-superseded = Đã bị thay thế
item-superseded-why = Không may theo phiên bản { $revision }.
item-newer = Đọc mục này trong phiên bản { $revision } đang hiện hành
item-withdrawn = Đã thu hồi
item-withdrawn-why = Không may theo phiên bản { $revision }: { $reason }
item-current = Phiên bản { $revision } đang hiện hành
item-removed = Đã bỏ
item-removed-why = Phiên bản { $revision } không còn mục này. Những gì đã trao đổi vẫn ở đây.

## Colour patches

patch-approximate = màu trên màn hình chỉ gần đúng

## Threads on an item

threads-heading = Câu hỏi và việc bắt buộc sửa
threads-none = Chưa ai hỏi về mục này.
thread-asked-by = { $person } hỏi
thread-asked-by-brand = { $person } (nhãn hàng) hỏi
thread-asked-by-factory = { $person }, { $factory } hỏi
thread-asked-of-factory = { $person } hỏi, với { $factory }
thread-raised-on = nêu ở phiên bản { $revision }
thread-next-you-answer = Đến lượt bạn trả lời.
thread-next-you-read = Đã có câu trả lời. Hãy đóng lại, hoặc viết điều còn vướng.
thread-next-you-change = Đến lượt bạn sửa trong bản nháp rồi phát hành.
thread-next-you-verify = Đến lượt bạn kiểm tra trên mẫu.
thread-next-answer = Tiếp theo: { $who } trả lời.
thread-next-read = Tiếp theo: { $who } đọc câu trả lời.
thread-next-change = Tiếp theo: { $who } sửa và phát hành phiên bản mới.
thread-next-verify = Tiếp theo: { $who } kiểm tra trên mẫu.
thread-text-erased = (nội dung đã bị xóa)
thread-photo-erased = (ảnh đã bị xóa)
thread-photo = Ảnh { $number }
thread-photo-taken = chụp lúc { $when }

## Writing

thread-answer = Tin nhắn của bạn
thread-send = Gửi
thread-translated = { $language }, { $who } dịch
thread-translate = Dịch tin nhắn này
thread-translate-into = Ngôn ngữ
thread-translation = Bản dịch
thread-translate-help = Bản dịch nằm dưới tin nhắn cùng tên của bạn. Tin nhắn gốc mới có giá trị.
thread-translate-button = Đặt bên cạnh tin nhắn
thread-refused = Chưa gửi được.
thread-photos = Ảnh
thread-photos-help = Tối đa { $count } ảnh, dạng JPEG, PNG hoặc WebP. Không lưu nơi chụp và người gửi.
thread-draw = Vẽ lên ảnh này
thread-draw-circle = Vòng tròn
thread-draw-arrow = Mũi tên
thread-draw-dimension = Kích thước
thread-draw-value = Giá trị
thread-draw-undo = Hoàn tác
thread-agree = Đồng ý
thread-mark-changed = Đã sửa trong phiên bản { $revision }
thread-verify = Đã đúng trên đợt mẫu { $number }, { $kind }
thread-close-question = Đóng câu hỏi
thread-close-must-fix = Đóng việc bắt buộc sửa
thread-close-suggestion = Đóng góp ý
thread-decline = Từ chối yêu cầu
thread-take-back = Rút lại yêu cầu
thread-reopen = Mở lại
thread-grant = Chấp nhận cho qua
thread-grant-final = Chữ ký có thể dựa vào điều này: không thể rút lại.

## Asking

ask-heading = Hỏi về mục này
ask-kind = Đây là gì?
ask-question-help = Cần câu trả lời mới làm tiếp được.
ask-must-fix-help = Phải sửa. Chưa sửa thì không ai ký.
ask-suggestion-help = Có thể làm cách tốt hơn.
ask-concession-help = Nhà máy xin được giữ nguyên như hiện tại.
ask-factory = Nhà máy nào?
ask-factory-choose = Chọn nhà máy
ask-text = Tin nhắn của bạn
ask-send = Gửi
ask-alone = Mã hàng này chưa chia sẻ với nhà máy nào nên chưa có ai để hỏi.
ask-alone-share = Chia sẻ mã hàng

## Ready sentences

ready-title = Câu soạn sẵn
ready-what = Bên kia đọc câu này bằng tiếng của họ.
ready-how = Gửi ngay một câu, hoặc chọn một câu và điền chỗ trống.
ready-other = Câu khác
ready-mark = câu soạn sẵn
ready-slot-length = Số đo, { $unit }
ready-slot-spec = Thông số, { $unit }
ready-slot-item = Về mục nào
ready-slot-other = Mục kia
ready-slot-material = Nguyên phụ liệu
ready-slot-size = Cỡ
ready-slot-date = Ngày
ready-slot-until = Đến ngày
ready-slot-count = Số lượng
ready-slot-percent = Phần trăm
ready-slot-revision = Phiên bản
ready-slot-wrong = Nội dung này không hợp. Hãy ghi hoặc chọn lại.

## Live pages

live-new = Trang này có nội dung mới.
live-show = Xem
live-lost = Mất kết nối. Trang này có thể đã cũ. Đang thử lại.
live-unsent = Mất kết nối: chưa gửi được. Hãy gửi lại.
