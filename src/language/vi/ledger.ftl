### Who did what when.

ledger-title = Sổ ghi
ledger-what = Mọi việc đã làm với mã hàng này. Ở đây không có gì bị sửa hay xóa: mỗi dòng mang mã băm của dòng trước.
ledger-part = Bạn thấy các dòng liên quan đến nhà máy của bạn; số của các dòng khác được bỏ qua.
ledger-length = Số dòng
ledger-end = Mã băm của dòng cuối
ledger-with = Với { $factory }
ledger-brand-only = Chỉ dành cho nhãn hàng
ledger-program = Chương trình
ledger-each = Từng số đo
ledger-none = Chưa có gì được làm.

## What was done

deed-create = { $who } đã bắt đầu mã hàng.
deed-publish = { $who } đã phát hành phiên bản { $revision }.
deed-withdraw = { $who } đã thu hồi phiên bản { $revision }.
deed-share = { $who } đã chia sẻ mã hàng với { $factory }.
deed-unshare = { $who } đã thôi chia sẻ với { $factory }.
deed-acknowledge = { $who } đã xác nhận phiên bản { $revision }.
deed-ask = { $who } đã nêu { $kind } về { $item }, phiên bản { $revision }.
deed-message = { $photos ->
    [0] { $who } đã viết trong { $kind } về { $item }.
   *[other] { $who } đã viết trong { $kind } về { $item }, kèm { $photos } ảnh.
}
deed-thread = { $move ->
    [agree] { $who } đã đồng ý: { $kind } về { $item }.
    [reopen] { $who } đã mở lại: { $kind } về { $item }.
    [grant] { $who } đã chấp nhận cho qua: { $kind } về { $item }.
    [verify] { $who } đã thấy trên mẫu là đã sửa: { $kind } về { $item }.
   *[close] { $who } đã đóng: { $kind } về { $item }.
}
deed-thread-changed = { $who } đã đưa vào phiên bản { $revision }: { $kind } về { $item }.
deed-round = đợt { $number } ({ $kind })
deed-round-request = { $who } đã yêu cầu { $round }: { $count } chiếc theo phiên bản { $revision }.
deed-round-start = { $who } đã bắt đầu { $round }.
deed-round-dispatch = { $who } đã gửi mẫu của { $round }.
deed-round-receive = { $who } đã nhận mẫu của { $round }.
deed-round-measured = { $who } đã đo xong { $round }.
deed-round-continue = { $who } tiếp tục { $round } dù đã có phiên bản { $revision }.
deed-measure = { $who } đã đo { $value } ở { $item }, chiếc { $piece } của { $round }.
deed-measure-many = { $who } đã đo { $count } số đo trong { $round }.
deed-skip = { $who } không đo { $item }, chiếc { $piece } của { $round }: { $reason }.
deed-photograph = { $who } đã thêm ảnh chiếc { $piece } của { $round }.
deed-decide = { $who } đã quyết định { $round }: { $outcome }.
deed-submit = { $who } đã gửi mẫu { $option } của { $item } ({ $kind }).
deed-approve = { $verdict ->
    [approved] { $who } đã duyệt mẫu { $option } của { $item } ({ $kind }).
   *[rejected] { $who } không duyệt mẫu { $option } của { $item } ({ $kind }).
}
deed-seal = { $who } đã niêm phong mẫu của { $round }: { $count }.
deed-inspection-begin = { $who } đã bắt đầu kiểm hàng loạt { $number }. Số chiếc trong lô: { $count }.
deed-inspect = { $who } đã kiểm chiếc { $piece } trong kiểm hàng loạt { $number }.
deed-inspect-many = { $who } đã kiểm các chiếc trong kiểm hàng loạt { $number }: { $count }.
deed-inspection-conclude = { $who } đã kết luận kiểm hàng loạt { $number }: { $outcome }.
deed-inspection-decide = { $who } đã quyết định về kiểm hàng loạt { $number }: { $decision }.
deed-sign-revision = { $who } đã ký phiên bản { $revision }.
deed-sign-round = { $who } đã ký { $round }.
deed-sign-seal = { $who } đã ký niêm phong của { $round }.
deed-translate = { $count ->
   *[other] { $who } đã dịch { $count } đoạn sang { $language }.
}
deed-translate-message = { $who } đã đặt bản dịch sang { $language } bên cạnh một tin nhắn trong { $kind } về { $item }.
deed-erase = Tên, tin nhắn và ảnh của một người đã bị xóa. Mã băm vẫn còn.
