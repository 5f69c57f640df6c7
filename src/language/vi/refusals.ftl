### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = Có { $count } phần đã được người khác lưu sau khi bạn mở trang này. Hãy đọc phần mới bên dưới rồi phát hành.
refused-errors-remain = Còn { $count } lỗi. Hãy sửa các lỗi dưới đây rồi phát hành.
refused-warning-reason-missing = Có { $count } cảnh báo chưa có lý do. Hãy sửa, hoặc ghi lý do giữ nguyên. Lý do được in trong phiên bản.
refused-reason-missing = Hãy ghi lý do. Người khác sẽ đọc sau này.
refused-draft-unchanged = Bản nháp giống phiên bản { $revision }. Hãy sửa gì đó trước.
refused-must-fix-unchanged = Có { $count } việc bắt buộc sửa đã đồng ý mà bản nháp chưa sửa. Hãy sửa, chấp nhận cho qua, hoặc đóng lại.
refused-already-withdrawn = Phiên bản này đã bị thu hồi rồi.
refused-not-current = Đây không phải phiên bản hiện hành. Hiện hành là phiên bản { $revision }. Hãy đọc thay đổi ở đó.
refused-none-current = Đây không phải phiên bản hiện hành, và hiện không có bản nào: bản mới nhất đã bị thu hồi. Hãy chờ nhãn hàng phát hành bản mới.
refused-not-shared = Mã hàng này hiện không chia sẻ với nhà máy. Nhãn hàng có thể chia sẻ lại.
refused-already-acknowledged = Nhà máy của bạn đã xác nhận phiên bản này rồi.

## Whose move it is

refused-only-brand = Chỉ nhãn hàng mới được làm việc này.
refused-only-factory = Chỉ nhà máy mới được làm việc này.
refused-not-the-asker = Chỉ người đã hỏi, hoặc người phụ trách đơn vị của họ, mới được làm việc này.
refused-only-brand-closes = Chỉ nhãn hàng mới được đóng mục này. Đây là: { $kind }.
refused-other-side-first = Bên kia chưa trả lời. Hãy chờ câu trả lời.

## Threads

refused-thread-not-in = Lúc này chưa làm được. Mục này đang: { $state }.
refused-thread-closed = Mục này đã đóng. Hãy mở lại, hoặc đặt câu hỏi mới.
refused-no-such-move = Không làm được việc này với loại: { $kind }.
refused-item-unchanged = Phiên bản { $revision } không sửa mục này. Hãy sửa trong bản nháp rồi phát hành trước.
refused-sample-too-old = Mẫu này làm trước phiên bản { $revision }. Hãy đo mẫu của phiên bản đó hoặc mới hơn.

## Rounds

refused-round-not-in = Lúc này chưa làm được. Đợt mẫu đang: { $state }.
refused-nothing-measured = Chưa đo gì. Hãy đo ít nhất một chiếc trước.
refused-only-corrections = Đợt này đã quyết định. Chỉ được sửa số đo, không thêm mới.
refused-pieces-missing = Hãy ghi bao nhiêu chiếc cỡ nào: ít nhất một chiếc, không quá { $most }, và chỉ các cỡ của phiên bản này.
refused-substitutes-missing = Hãy ghi nguyên phụ liệu nào thay cho nguyên phụ liệu nào.
refused-changes-missing = Hãy ghi phải sửa gì: ít nhất một mục, có lời mô tả.
refused-critical-out = Có { $count } vị trí trọng yếu ngoài dung sai. Hãy yêu cầu làm lại, ghi thành sửa đổi, hoặc chấp nhận sai lệch.
refused-newer-revision-needed = Đợt trước được duyệt kèm sửa đổi. Hãy phát hành phiên bản sau phiên bản { $revision }, có các sửa đổi đó, trước.
refused-no-newer-revision = Không có phiên bản mới hơn.
refused-nothing-to-approve = Phiên bản này không cần duyệt cái này. Xem danh sách những gì cần duyệt.
refused-photo-missing = Hãy thêm ảnh: mẫu được xét ít nhất qua một ảnh.
refused-option-decided = Mẫu này đã có quyết định: { $verdict }. Mẫu khác có quyết định khác.
refused-only-owner = Chỉ chủ sở hữu của nhãn hàng mới niêm phong mẫu.
refused-already-sealed = Mẫu của đợt này đã được niêm phong.
refused-too-early-to-seal = Đợt này thuộc loại: { $kind }. Mẫu được niêm phong từ đợt trước sản xuất hoặc đầu chuyền.
refused-round-not-approved = Đợt này: { $state }. Mẫu được niêm phong từ đợt đã duyệt.
refused-questions-before-sealing = Còn câu hỏi chưa đóng: { $count }. Hãy trả lời; người hỏi sẽ đóng.
refused-must-fix-unverified = Bắt buộc sửa chưa ai thấy đã sửa trên mẫu: { $count }. Hãy xác nhận trên mẫu, hoặc cho qua.
refused-size-set-missing = Chưa có bộ cỡ nào với các cỡ và bảng thông số này được duyệt với nhà máy này.
refused-not-approved-yet = Chưa duyệt: { $count }.
refused-substitutes-sent = Mẫu làm bằng vật liệu thay thế. Mẫu niêm phong phải làm bằng vật liệu của tài liệu.
refused-piece-critical-out = Điểm quan trọng ngoài dung sai hoặc chưa đo trên chiếc sẽ giữ: { $count }. Hãy đo, chấp nhận sai lệch, hoặc niêm phong chiếc khác.
refused-seal-unsaid = Hãy chọn ít nhất một chiếc. Ghi cho mỗi chiếc một số niêm phong riêng và nơi giữ.
refused-seal-unsigned = Hàng loạt được kiểm theo niêm phong mà hai bên đã ký. Chưa ký: { $sides }.
refused-lot-unsaid = Hãy ghi lô có bao nhiêu chiếc của phối màu và cỡ nào: ít nhất một, tổng không quá { $most }, và chỉ những loại của phiên bản này.
refused-not-for-rework = Nhãn hàng chưa trả lô đó về để sửa. Chỉ lô như vậy mới được kiểm lại.
refused-inspected-again = Lô đó đang được kiểm lại rồi.
refused-lot-grown = Lô đã sửa không có nhiều chiếc hơn trước ở bất kỳ phối màu và cỡ nào.
refused-inspection-not-in = Lúc này chưa làm được. Lần kiểm đang: { $state }.
refused-piece-unsaid = Hãy nói chiếc nào: số từ 1 đến { $most }, và không quá số chiếc mà lô có của phối màu và cỡ đó.
refused-piece-beyond = Số mẫu là { $sample } chiếc. Chiếc ngoài số mẫu chỉ được ghi khi có lỗi nghiêm trọng.
refused-piece-moved = Có người đã ghi chiếc này sau khi bạn mở trang. Hãy đọc, rồi lưu lại nếu muốn tính mục của bạn.
refused-defect-unsaid = Hãy nói lỗi ở đâu, hoặc mô tả bằng lời.
refused-pieces-uninspected = Số chiếc trong mẫu chưa kiểm: { $count }. Hãy kiểm trước.
refused-lot-rejected = Lô bị loại, không cho xuất được. Hãy chấp nhận sai lệch, trả về để sửa, hoặc không nhận.
refused-nothing-to-concede = Lô được chấp nhận: không có gì để bỏ qua. Hãy cho xuất, trả về để sửa, hoặc không nhận.
refused-critical-in-bulk = Số chiếc có lỗi nghiêm trọng: { $count }. Lô như vậy chỉ được trả về để sửa hoặc không nhận.

## Signing

refused-open-questions = Có { $count } câu hỏi đang mở. Hãy trả lời; người hỏi sẽ đóng. Sau đó ký.
refused-must-fix-open = Có { $count } việc bắt buộc sửa chưa sửa trong phiên bản này và chưa được cho qua. Nhãn hàng phải sửa rồi phát hành, hoặc chấp nhận cho qua.
refused-same-person-both-sides = Bạn đã ký cho bên kia của mã hàng này. Một người không ký cho cả hai bên: người khác phải ký.
refused-already-signed = Bên bạn đã ký rồi.
refused-not-acknowledged = Hãy xác nhận phiên bản này trước, rồi ký.
refused-nothing-decided = Chưa có quyết định để ký. Nhãn hàng phải quyết định đợt mẫu trước.
refused-role-does-not-sign = Vai trò của bạn không ký. Hãy nhờ người có quyền trong đơn vị của bạn.
refused-screen-moved = Nội dung đã thay đổi sau khi bạn mở trang. Hãy đọc lại rồi ký.
