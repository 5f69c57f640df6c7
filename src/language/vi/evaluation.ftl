### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }, { $direction }
evaluation-some-points = { $count } vị trí
evaluation-whole-garment = Cả sản phẩm

## Causes

evaluation-proportional-shift = { $place }: vị trí dài và ngắn đều lệch cùng tỷ lệ { $share } %. Vải đã co hoặc giãn, hoặc rập chừa sai cho việc đó. Hãy nhân rập ở đó × { $factor }.
evaluation-constant-error = { $place }: mọi vị trí đều lệch cùng một độ dài { $by }, dù dài hay ngắn. Hãy xem đường may chừa và khâu cắt, hoặc thước đã dùng.
evaluation-single-point = { $points }: lệch { $by } ở cỡ { $size }, không có lý do nào khác giải thích được. Hãy xem vị trí này được cắt và may thế nào.
evaluation-base-pattern = { $points }: lệch { $by } ở mọi cỡ đã đo. Hãy sửa rập gốc ở đó.
evaluation-grading = { $place }: càng xa cỡ gốc càng lệch nhiều; bước nhảy khác bảng thông số { $share } %. Hãy sửa nhảy cỡ.
evaluation-size-pattern = { $place }: chỉ riêng cỡ { $size } lệch { $by }. Hãy xem rập của cỡ này.
evaluation-one-piece = { $points }: chỉ riêng chiếc { $pieces } lệch { $by }. Hãy đo lại; nếu vẫn vậy, chiếc này đã may khác.
evaluation-unsteady = { $points }: các chiếc cỡ { $size } lệch nhau nhiều hơn mức sai số khi đo. Hãy xem khâu may, hoặc thống nhất cách đo.
evaluation-wrong-label = Chiếc { $pieces } mang nhãn cỡ { $size } mà đo ra cỡ { $really }. Hãy xem nhãn, hoặc nó được cắt theo rập nào.
evaluation-swapped-sizes = Các chiếc { $pieces } mang cỡ của nhau: chiếc đầu ghi { $size } mà đo ra { $really }. Hãy đổi nhãn cho nhau.
evaluation-doubled = Chiếc { $pieces }, { $points }: gấp khoảng hai lần. Đã ghi cả vòng thay vì nửa vòng: hãy đo lại.
evaluation-halved = Chiếc { $pieces }, { $points }: bằng khoảng một nửa. Đã ghi nửa vòng thay vì cả vòng: hãy đo lại.
evaluation-cm-as-inch = Chiếc { $pieces }, { $points }: ghi xăng-ti-mét ở chỗ phải ghi inch.
evaluation-inch-as-cm = Chiếc { $pieces }, { $points }: ghi inch ở chỗ phải ghi xăng-ti-mét.
evaluation-ten-times = Chiếc { $pieces }, { $points }: gấp mười lần. Hãy xem lại dấu thập phân.
evaluation-tenth = Chiếc { $pieces }, { $points }: bằng một phần mười. Hãy xem lại dấu thập phân.
evaluation-swapped-points = Chiếc { $pieces }: số đo của { $points } bị đổi chỗ cho nhau.

## Figures

evaluation-rests-on-one = Dựa trên một số đo.
evaluation-rests-on = Dựa trên { $readings } số đo, trong đó { $same } lệch về cùng một phía. Một nửa lệch hơn { $before }; phần còn lại sau khi trừ là { $left }.

## What is not a cause

evaluation-again = Chiếc { $piece }, { $point }: ngoài dung sai, nhưng không quá mức sai số khi đo. Hãy đo lại.
evaluation-dispute = Chiếc { $piece }, { $point }: { $one } đo { $least }, { $other } đo { $most }. Hãy thống nhất cách đo trước: lệch đến { $allowed } là được.
evaluation-few-points = { $place }: chưa đủ dữ liệu. Ở đó đo { $have } vị trí, cần { $need } mới biết vải có thay đổi không.
evaluation-one-size = Chưa đủ dữ liệu: chỉ đo cỡ { $size }, không phân biệt được rập và nhảy cỡ.
evaluation-one-piece-only = Chưa đủ dữ liệu: chỉ đo một chiếc cỡ { $size }, không phân biệt được khâu may và rập.
evaluation-watch = { $out ->
    [0] { $point }: trước đây không đạt ({ $rounds }). Nay trong dung sai: hãy theo dõi.
   *[other] { $point }: trước đây không đạt ({ $rounds }). Nay lại ngoài dung sai ở { $out } trên { $measured }.
}
evaluation-repeat-assumed = Không có gì được đo hai lần. Giả định đo lại lệch trong { $deviation }.
evaluation-repeat-measurers = Xét theo { $count } vị trí có nhiều người đo, đo lại lệch trong { $deviation }.
evaluation-repeat-pieces = Xét theo { $count } vị trí có nhiều chiếc cùng cỡ, đo lại lệch trong { $deviation }.
evaluation-wash = { $place }: { $percent } % do giặt. Hãy nhân rập ở đó × { $factor }.
evaluation-wash-little = { $place }: { $percent } % do giặt, không hơn mức mà sai số đo giải thích được.

## On a round's page

evaluation-title = Số đo cho biết gì
evaluation-no-cause = Không nêu nguyên nhân nào. Nếu có chỗ ngoài dung sai thì cũng không quá sai số khi đo, hoặc dữ liệu còn quá ít.
evaluation-points-shown = Thấy ở đâu
evaluation-suggested = Đề nghị sửa rập
evaluation-agree = Thống nhất cách đo trước
evaluation-again-title = Đo lại
evaluation-lacks-title = Chưa đủ dữ liệu
evaluation-watch-title = Theo dõi: vòng mẫu trước không đạt
evaluation-watch-word = theo dõi
evaluation-strips = Độ lệch theo vị trí
evaluation-strips-how = Dải tô đậm là dung sai, vạch bên trong là thông số. ● trong dung sai, ▲ vượt, ▼ dưới.
evaluation-strips-sides = Dấu rỗng là số đo của nhà máy, dấu đặc là của nhãn hàng.
evaluation-strips-beyond = Mũi tên cạnh dấu: lệch xa hơn khung hình.
evaluation-within = { $count } vị trí trong dung sai
evaluation-by-size = Độ lệch theo cỡ
evaluation-by-size-how = Đường nối độ lệch trung bình của từng cỡ. Đường ngang: do rập. Đường lên hoặc xuống: do nhảy cỡ.
evaluation-steps = Bước nhảy giữa các cỡ
evaluation-from-to = Từ, đến
evaluation-asked = Theo bảng thông số
evaluation-got = Đo được
evaluation-more = Chênh lệch
