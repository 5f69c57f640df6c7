### The list of styles and one style.

styles-title = Mã hàng
styles-none = Chưa có mã hàng nào.
styles-style = Mã hàng
styles-newest = Phiên bản mới nhất
styles-revision = Phiên bản { $revision }
styles-draft-only = chỉ có bản nháp
styles-threads = Mục trao đổi đang mở
styles-rounds = Đợt mẫu đang mở
styles-create = Bắt đầu một mã hàng
styles-create-button = Bắt đầu mã hàng

## One style

style-draft = Bản nháp
style-draft-first = Chưa phát hành gì. Nhà máy không thấy bản nháp.
style-draft-differs = Bản nháp khác phiên bản mới nhất. Nhà máy không thấy cho đến khi bạn phát hành.
style-draft-same = Bản nháp giống phiên bản mới nhất.
style-publish = Kiểm tra và phát hành
style-revisions = Các phiên bản
style-no-revisions = Chưa phát hành phiên bản nào.
style-revision = Phiên bản { $number }
style-open-revision = Mở phiên bản { $number }
style-older = Phiên bản cũ hơn
style-published = Ngày phát hành
style-published-by = Người phát hành
style-fingerprint = Mã nhận dạng
style-withdrawn-because = Dừng lại. Không làm theo bản này: { $reason }
style-acknowledged-by = { $name } xác nhận, { $date }
style-signed-factory = { $name } ký cho nhà máy, { $date }
style-signed-brand = { $name } ký cho nhãn hàng, { $date }
style-revision-head = Phiên bản
style-state = Trạng thái
style-reason = Lý do
style-agreed = Đã thống nhất với
style-next = Tiếp theo
style-next-you = bạn
style-next-brand = nhãn hàng
style-factory = Nhà máy
style-threads = Mục trao đổi đang mở
style-no-threads = Không có gì đang mở.
style-thread-item = Về
style-thread-words = Nội dung
style-thread-open = Mở
style-rounds = Đợt mẫu
style-no-rounds = Chưa yêu cầu mẫu nào.
style-round-head = Đợt
style-round = { $kind }, đợt { $number }
style-ask-round = Yêu cầu đợt mẫu
style-shares = Chia sẻ với
style-no-shares = Chưa chia sẻ với nhà máy nào.
style-shared-since = Từ
style-share = Chia sẻ với nhà máy này
style-share-ended = kết thúc { $date }
style-unshare = Thôi chia sẻ
style-unshare-what = { $factory } sẽ không còn thấy gì của mã hàng này: phiên bản, mục trao đổi và đợt mẫu.
style-acts = Việc bạn có thể làm
style-withdraw = Thu hồi phiên bản { $number }
style-withdraw-what = Mọi trang và mọi bản in của nó sẽ báo dừng. Không thể rút lại. Không phiên bản cũ nào thay thế: hãy phát hành bản mới.
style-withdraw-reason = Vì sao? Ai đọc cũng thấy lý do của bạn.

copy-title = Sao chép mã hàng này
copy-what = Bản sao bắt đầu với mọi nội dung của bản nháp. Phê duyệt, miễn trừ, số chiếc và số phối màu không được sao chép; phiên bản, mục trao đổi và đợt mẫu cũng không.
copy-button = Bắt đầu bản sao
style-copy = Sao chép thành mã hàng mới
style-copied-from = Sao chép từ
