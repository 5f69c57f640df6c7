# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = Nữ
word-wearer-men = Nam
word-wearer-unisex = Nam nữ đều mặc
word-wearer-children = Trẻ em
word-wearer-infants = Em bé

word-market-eu = Liên minh châu Âu
word-market-uk = Vương quốc Anh
word-market-us = Hoa Kỳ
word-market-other = Khác

word-garment-joggers = Quần jogger
word-garment-shorts = Quần short
word-garment-t-shirt = Áo thun
word-garment-hoodie = Áo hoodie
word-garment-half-zip = Áo nửa dây kéo
word-garment-jacket = Áo khoác
word-garment-dress = Váy liền
word-garment-leggings = Quần legging

word-worn-upper-outerwear = Mặc ngoài, phần thân trên
word-worn-upper = Phần thân trên
word-worn-lower = Phần thân dưới
word-worn-whole = Cả người, liền một mảnh
word-worn-sleepwear = Đồ ngủ
word-worn-underwear = Đồ lót
word-worn-swimwear = Đồ bơi

word-edges-seam-to-seam = Từ đường may đến đường may
word-edges-edge-to-edge = Từ mép đến mép

word-size-system-alpha = Chữ (S, M, L)
word-size-system-numeric = Số
word-size-system-height = Theo chiều cao của trẻ, cm

word-body-height = Chiều cao
word-body-chest-girth = Vòng ngực (nam)
word-body-bust-girth = Vòng ngực (nữ)
word-body-underbust-girth = Vòng chân ngực
word-body-waist-girth = Vòng eo
word-body-hip-girth = Vòng mông
word-body-neck-girth = Vòng cổ
word-body-head-girth = Vòng đầu
word-body-arm-length = Chiều dài cánh tay
word-body-inside-leg-length = Chiều dài trong chân
word-body-hand-girth = Vòng bàn tay
word-body-foot-length = Chiều dài bàn chân

word-view-front = Mặt trước
word-view-back = Mặt sau
word-view-left = Bên trái (trái của người mặc)
word-view-right = Bên phải (phải của người mặc)
word-view-angle = Nhìn nghiêng
word-view-detail = Chi tiết

word-path-straight = Đo thẳng
word-path-curved = Đo theo đường cong

word-closure-closed = Cài kín
word-closure-open = Mở

word-side-left = Bên trái người mặc
word-side-right = Bên phải người mặc
word-side-both = Cả hai bên

word-basis-half = Nửa vòng (trải phẳng)
word-basis-full = Cả vòng
word-basis-linear = Chiều dài

word-direction-length = Theo chiều dọc
word-direction-width = Theo chiều ngang

word-measure-body-length = Dài áo
word-measure-shoulder-width = Rộng vai
word-measure-shoulder-length = Dài vai con
word-measure-across-front = Ngang ngực trước
word-measure-across-back = Ngang lưng
word-measure-chest = Rộng ngực
word-measure-waist = Eo
word-measure-waist-stretched = Eo, kéo căng
word-measure-hip = Mông
word-measure-hem = Rộng lai
word-measure-hem-height = Cao lai
word-measure-sleeve-length = Dài tay
word-measure-upper-arm = Bắp tay
word-measure-elbow = Khuỷu tay
word-measure-armhole = Vòng nách
word-measure-side-seam = Đường sườn
word-measure-underarm-seam = Đường bụng tay
word-measure-cuff = Cửa tay
word-measure-cuff-stretched = Cửa tay, kéo căng
word-measure-cuff-height = Cao bo tay
word-measure-neck-width = Rộng cổ
word-measure-neck-opening = Vòng cổ
word-measure-neck-stretched = Vòng cổ, kéo căng
word-measure-neck-drop-front = Hạ cổ trước
word-measure-neck-drop-back = Hạ cổ sau
word-measure-collar-height = Cao cổ áo
word-measure-hood-height = Cao mũ
word-measure-hood-width = Rộng mũ
word-measure-hood-opening = Miệng mũ
word-measure-front-opening = Nẹp trước
word-measure-zip-length = Dài dây kéo
word-measure-front-rise = Đáy trước
word-measure-back-rise = Đáy sau
word-measure-inseam = Giàng trong
word-measure-outseam = Giàng ngoài
word-measure-thigh = Đùi
word-measure-knee = Gối
word-measure-leg-opening = Rộng ống quần
word-measure-waistband-height = Cao lưng quần
word-measure-pocket-opening = Miệng túi
word-measure-pocket-width = Rộng túi
word-measure-pocket-depth = Sâu túi
word-measure-pocket-place = Vị trí túi
word-measure-gusset = Miếng đáy
word-measure-vent = Cao xẻ
word-measure-yoke-height = Cao đô
word-measure-skirt-length = Dài váy

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = quan sát viên 2°
word-observer-10 = quan sát viên 10°

word-approval-asked = Đã yêu cầu
word-approval-submitted = Đã gửi mẫu màu
word-approval-approved = Đã duyệt
word-approval-rejected = Không duyệt

word-material-woven-fabric = Vải dệt thoi
word-material-knitted-fabric = Vải dệt kim
word-material-other-fabric = Vải khác
word-material-interlining = Keo lót
word-material-padding = Bông chần
word-material-zip = Dây kéo
word-material-drawcord = Dây rút
word-material-cord-tip = Đầu bịt dây
word-material-cord-stop = Chốt chặn dây
word-material-eyelet = Mắt cáo
word-material-elastic = Thun
word-material-button = Nút
word-material-snap = Nút bấm
word-material-hook-and-loop = Băng nhám dính
word-material-buckle = Khóa cài
word-material-webbing = Dây đai
word-material-tape = Dây viền
word-material-reflective = Phụ liệu phản quang
word-material-thread = Chỉ may
word-material-transfer = Hình ép nhiệt
word-material-patch = Miếng đắp
word-material-label = Nhãn
word-material-packing = Bao bì
word-material-other = Khác

word-component-main = Vải chính
word-component-contrast = Vải phối
word-component-rib = Bo thun
word-component-lining = Vải lót
word-component-pocketing = Vải túi
word-component-padding = Lớp bông
word-component-coating = Lớp phủ
word-component-trimming = Phụ liệu

word-fibre-cotton = Bông (cotton)
word-fibre-wool = Len
word-fibre-virgin-wool = Len nguyên sinh
word-fibre-recycled-wool = Len tái chế
word-fibre-silk = Tơ tằm
word-fibre-linen = Lanh
word-fibre-hemp = Gai dầu
word-fibre-jute = Đay
word-fibre-ramie = Gai ramie
word-fibre-cashmere = Cashmere
word-fibre-mohair = Mohair
word-fibre-alpaca = Alpaca
word-fibre-angora = Angora
word-fibre-camel = Lông lạc đà
word-fibre-down = Lông vũ
word-fibre-viscose = Viscose
word-fibre-modal = Modal
word-fibre-lyocell = Lyocell
word-fibre-cupro = Cupro
word-fibre-acetate = Acetate
word-fibre-triacetate = Triacetate
word-fibre-polyester = Polyester
word-fibre-polyamide = Polyamide (nylon)
word-fibre-acrylic = Acrylic
word-fibre-modacrylic = Modacrylic
word-fibre-polypropylene = Polypropylene
word-fibre-polyethylene = Polyethylene
word-fibre-polyurethane = Polyurethane
word-fibre-elastane = Elastane (spandex)
word-fibre-elastodiene = Elastodiene
word-fibre-elastolefin = Elastolefin
word-fibre-elastomultiester = Elastomultiester
word-fibre-aramid = Aramid
word-fibre-polylactide = Polylactide
word-fibre-chlorofibre = Sợi clo
word-fibre-metal-fibre = Sợi kim loại
word-fibre-paper = Giấy
word-fibre-other = Sợi khác

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = Răng xoắn (nylon)
word-zip-teeth-moulded = Răng nhựa đúc
word-zip-teeth-metal = Răng kim loại
word-zip-teeth-invisible = Răng giấu

word-zip-end-closed = Đuôi kín
word-zip-end-open = Đuôi mở (tách rời)
word-zip-end-two-way = Hai chiều

word-cord-place-hood-neck = Mũ hoặc cổ
word-cord-place-chest = Ngực
word-cord-place-waist = Eo
word-cord-place-hem = Mép dưới của áo
word-cord-place-legs = Đầu ống quần
word-cord-place-sleeve = Tay áo
word-cord-place-back = Lưng
word-cord-place-elsewhere = Chỗ khác

word-cord-ends-free = Đầu dây để tự do
word-cord-ends-toggled = Đầu tự do có chốt, đầu bịt hoặc nút thắt
word-cord-ends-fixed = May cố định, không có đầu tự do
word-cord-ends-loop = Vòng kín

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = cái
word-measured-in-gram = g

word-consumption-marker = Theo sơ đồ cắt
word-consumption-area = Theo diện tích mảnh rập
word-consumption-estimate = Ước tính

word-wastage-allowance = cộng thêm vào nhu cầu
word-wastage-loss-of-input = mất đi từ lượng mua

word-minimum-style = cho mã hàng
word-minimum-colour = cho mỗi màu
word-minimum-dimension = cho mỗi kích thước

word-evidence-small-parts = Chi tiết nhỏ
word-evidence-flammability = Tính dễ cháy
word-evidence-nickel = Niken
word-evidence-azo-dyes = Thuốc nhuộm azo
word-evidence-lead = Chì
word-evidence-colour-fastness = Độ bền màu
word-evidence-shrinkage = Độ co
word-evidence-strength = Độ bền
word-evidence-other = Khác

word-wash-normal-95 = Giặt 95 °C
word-wash-normal-70 = Giặt 70 °C
word-wash-normal-60 = Giặt 60 °C
word-wash-mild-60 = Giặt nhẹ 60 °C
word-wash-normal-50 = Giặt 50 °C
word-wash-mild-50 = Giặt nhẹ 50 °C
word-wash-normal-40 = Giặt 40 °C
word-wash-mild-40 = Giặt nhẹ 40 °C
word-wash-very-mild-40 = Giặt rất nhẹ 40 °C
word-wash-normal-30 = Giặt 30 °C
word-wash-mild-30 = Giặt nhẹ 30 °C
word-wash-very-mild-30 = Giặt rất nhẹ 30 °C
word-wash-hand = Giặt tay, tối đa 40 °C
word-wash-no = Không giặt

word-bleach-any = Được dùng mọi chất tẩy
word-bleach-oxygen = Chỉ dùng chất tẩy không clo
word-bleach-no = Không tẩy

word-tumble-normal = Sấy thường (80 °C)
word-tumble-low = Sấy nhiệt thấp (60 °C)
word-tumble-no = Không sấy

word-air-dry-line = Phơi dây
word-air-dry-line-shade = Phơi dây trong bóng râm
word-air-dry-line-drip = Phơi dây nhỏ giọt
word-air-dry-line-drip-shade = Phơi dây nhỏ giọt trong bóng râm
word-air-dry-flat = Phơi phẳng
word-air-dry-flat-shade = Phơi phẳng trong bóng râm
word-air-dry-flat-drip = Phơi phẳng nhỏ giọt
word-air-dry-flat-drip-shade = Phơi phẳng nhỏ giọt trong bóng râm

word-iron-high = Ủi, tối đa 200 °C
word-iron-medium = Ủi, tối đa 150 °C
word-iron-low = Ủi, tối đa 110 °C, không hơi nước
word-iron-no = Không ủi

word-dry-clean-p = Giặt khô, P
word-dry-clean-p-mild = Giặt khô, P, nhẹ
word-dry-clean-f = Giặt khô, F
word-dry-clean-f-mild = Giặt khô, F, nhẹ
word-dry-clean-no = Không giặt khô

word-wet-clean-normal = Giặt ướt chuyên nghiệp
word-wet-clean-mild = Giặt ướt chuyên nghiệp, nhẹ
word-wet-clean-very-mild = Giặt ướt chuyên nghiệp, rất nhẹ
word-wet-clean-no = Không giặt ướt

word-line-seam = Đường may
word-line-edge = Mép
word-line-fold = Nếp gấp
word-line-centre-line = Đường giữa

word-seam-1 = 1 may chập
word-seam-2 = 2 may chồng mí
word-seam-3 = 3 may viền bọc
word-seam-4 = 4 may nối phẳng
word-seam-5 = 5 may trang trí
word-seam-6 = 6 may hoàn thiện mép
word-seam-7 = 7 may gắn thêm
word-seam-8 = 8 may một lớp

word-method-screen-print = In lụa
word-method-heat-transfer = Ép chuyển nhiệt
word-method-digital-print = In kỹ thuật số
word-method-sublimation = In thăng hoa
word-method-embroidery = Thêu
word-method-woven-patch = Miếng dệt
word-method-applique = Đắp vải
word-method-deboss = Ép chìm
word-method-other = Khác

word-artwork-form-vector = Nét và mảng (vector)
word-artwork-form-raster = Ảnh (raster)
word-artwork-form-stitches = Tệp thêu

word-anchor-top = cạnh trên
word-anchor-bottom = cạnh dưới
word-anchor-left = cạnh trái (theo chiều đọc)
word-anchor-right = cạnh phải (theo chiều đọc)
word-anchor-centre = tâm

word-label-brand = Nhãn hiệu
word-label-care-composition = Nhãn giặt và thành phần
word-label-size-loop = Nhãn cỡ dạng vòng
word-label-origin = Nhãn xuất xứ
word-label-warning = Nhãn cảnh báo
word-label-other = Khác

word-label-made-woven = Dệt
word-label-made-printed = In
word-label-made-transfer = Ép nhiệt

word-label-fold-flat = Không gấp
word-label-fold-centre = Gấp giữa
word-label-fold-ends = Gấp hai đầu
word-label-fold-mitre = Gấp chéo góc
word-label-fold-loop = Gấp vòng

word-driver-style = Như nhau ở tất cả
word-driver-size = Theo cỡ
word-driver-colourway = Theo phối màu
word-driver-market = Theo thị trường

word-label-content-composition = Thành phần
word-label-content-care = Hướng dẫn giặt
word-label-content-origin = Xuất xứ
word-label-content-size = Cỡ

word-assortment-solid = Đơn nhất: mỗi thùng một cỡ và một phối màu
word-assortment-assorted = Phối hỗn hợp

word-stitch-class-100 = Mũi móc xích một chỉ
word-stitch-class-200 = Mũi may tay
word-stitch-class-300 = Mũi thắt nút
word-stitch-class-400 = Mũi móc xích nhiều chỉ
word-stitch-class-500 = Mũi vắt sổ
word-stitch-class-600 = Mũi đánh bông

word-status-verified = Đã đối chiếu với bản công bố
word-status-seen = Thấy trong sử dụng, chưa đối chiếu văn bản chính thức
word-status-from-memory = Chưa đối chiếu văn bản chính thức
