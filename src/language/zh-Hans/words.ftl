# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = 女
word-wearer-men = 男
word-wearer-unisex = 男女通用
word-wearer-children = 儿童
word-wearer-infants = 婴儿

word-market-eu = 欧盟
word-market-uk = 英国
word-market-us = 美国
word-market-other = 其他

word-garment-joggers = 束脚运动裤
word-garment-shorts = 短裤
word-garment-t-shirt = T 恤
word-garment-hoodie = 连帽卫衣
word-garment-half-zip = 半拉链上衣
word-garment-jacket = 夹克
word-garment-dress = 连衣裙
word-garment-leggings = 紧身裤

word-worn-upper-outerwear = 上身，穿在其他衣服外面
word-worn-upper = 上身
word-worn-lower = 下身
word-worn-whole = 全身，连体
word-worn-sleepwear = 睡衣
word-worn-underwear = 内衣
word-worn-swimwear = 泳装

word-edges-seam-to-seam = 接缝到接缝
word-edges-edge-to-edge = 边到边

word-size-system-alpha = 字母码 (S, M, L)
word-size-system-numeric = 数字码
word-size-system-height = 按儿童身高，cm

word-body-height = 身高
word-body-chest-girth = 胸围（男）
word-body-bust-girth = 胸围（女）
word-body-underbust-girth = 下胸围
word-body-waist-girth = 腰围
word-body-hip-girth = 臀围
word-body-neck-girth = 颈围
word-body-head-girth = 头围
word-body-arm-length = 臂长
word-body-inside-leg-length = 腿内侧长
word-body-hand-girth = 手围
word-body-foot-length = 脚长

word-view-front = 正面
word-view-back = 背面
word-view-left = 左侧（穿着者的左）
word-view-right = 右侧（穿着者的右）
word-view-angle = 斜视
word-view-detail = 细节

word-path-straight = 直线
word-path-curved = 沿弧线

word-closure-closed = 闭合
word-closure-open = 打开

word-side-left = 穿着者左侧
word-side-right = 穿着者右侧
word-side-both = 两侧

word-basis-half = 半围（平放）
word-basis-full = 全围（一周）
word-basis-linear = 长度

word-direction-length = 纵向
word-direction-width = 横向

word-measure-body-length = 衣长
word-measure-shoulder-width = 总肩宽
word-measure-shoulder-length = 小肩宽
word-measure-across-front = 前胸宽
word-measure-across-back = 后背宽
word-measure-chest = 胸宽
word-measure-waist = 腰
word-measure-waist-stretched = 腰，拉开
word-measure-hip = 臀
word-measure-hem = 下摆宽
word-measure-hem-height = 下摆折边高
word-measure-sleeve-length = 袖长
word-measure-upper-arm = 袖肥
word-measure-elbow = 肘宽
word-measure-armhole = 袖窿
word-measure-side-seam = 侧缝
word-measure-underarm-seam = 袖底缝
word-measure-cuff = 袖口宽
word-measure-cuff-stretched = 袖口宽，拉开
word-measure-cuff-height = 袖口高
word-measure-neck-width = 领宽
word-measure-neck-opening = 领围
word-measure-neck-stretched = 领围，拉开
word-measure-neck-drop-front = 前领深
word-measure-neck-drop-back = 后领深
word-measure-collar-height = 领高
word-measure-hood-height = 帽高
word-measure-hood-width = 帽宽
word-measure-hood-opening = 帽口
word-measure-front-opening = 门襟长
word-measure-zip-length = 拉链长
word-measure-front-rise = 前裆
word-measure-back-rise = 后裆
word-measure-inseam = 内长
word-measure-outseam = 外长
word-measure-thigh = 大腿宽
word-measure-knee = 膝宽
word-measure-leg-opening = 脚口
word-measure-waistband-height = 腰头高
word-measure-pocket-opening = 袋口
word-measure-pocket-width = 袋宽
word-measure-pocket-depth = 袋深
word-measure-pocket-place = 口袋位置
word-measure-gusset = 裆片
word-measure-vent = 开衩高
word-measure-yoke-height = 育克高
word-measure-skirt-length = 裙长

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = 2° 观察者
word-observer-10 = 10° 观察者

word-approval-asked = 已要求
word-approval-submitted = 色样已寄
word-approval-approved = 已批准
word-approval-rejected = 未通过

word-material-woven-fabric = 梭织面料
word-material-knitted-fabric = 针织面料
word-material-other-fabric = 其他面料
word-material-interlining = 衬布
word-material-padding = 填充棉
word-material-zip = 拉链
word-material-drawcord = 抽绳
word-material-cord-tip = 绳头
word-material-cord-stop = 绳扣
word-material-eyelet = 气眼
word-material-elastic = 松紧带
word-material-button = 纽扣
word-material-snap = 按扣
word-material-hook-and-loop = 魔术贴
word-material-buckle = 扣具
word-material-webbing = 织带
word-material-tape = 带
word-material-reflective = 反光辅料
word-material-thread = 缝纫线
word-material-transfer = 烫印
word-material-patch = 布章
word-material-label = 标签
word-material-packing = 包装
word-material-other = 其他

word-component-main = 主面料
word-component-contrast = 配料布
word-component-rib = 罗纹
word-component-lining = 里布
word-component-pocketing = 袋布
word-component-padding = 填充
word-component-coating = 涂层
word-component-trimming = 辅料

word-fibre-cotton = 棉
word-fibre-wool = 羊毛
word-fibre-virgin-wool = 新羊毛
word-fibre-recycled-wool = 再生羊毛
word-fibre-silk = 桑蚕丝
word-fibre-linen = 亚麻
word-fibre-hemp = 大麻
word-fibre-jute = 黄麻
word-fibre-ramie = 苎麻
word-fibre-cashmere = 羊绒
word-fibre-mohair = 马海毛
word-fibre-alpaca = 羊驼毛
word-fibre-angora = 安哥拉兔毛
word-fibre-camel = 骆驼毛
word-fibre-down = 羽绒
word-fibre-viscose = 粘胶纤维
word-fibre-modal = 莫代尔
word-fibre-lyocell = 莱赛尔
word-fibre-cupro = 铜氨纤维
word-fibre-acetate = 醋酯纤维
word-fibre-triacetate = 三醋酯纤维
word-fibre-polyester = 聚酯纤维（涤纶）
word-fibre-polyamide = 聚酰胺纤维（锦纶）
word-fibre-acrylic = 聚丙烯腈纤维（腈纶）
word-fibre-modacrylic = 改性腈纶
word-fibre-polypropylene = 聚丙烯纤维（丙纶）
word-fibre-polyethylene = 聚乙烯纤维
word-fibre-polyurethane = 聚氨酯
word-fibre-elastane = 氨纶
word-fibre-elastodiene = 二烯类弹性纤维
word-fibre-elastolefin = 烯烃类弹性纤维
word-fibre-elastomultiester = 聚酯复合弹性纤维
word-fibre-aramid = 芳纶
word-fibre-polylactide = 聚乳酸纤维
word-fibre-chlorofibre = 含氯纤维
word-fibre-metal-fibre = 金属纤维
word-fibre-paper = 纸
word-fibre-other = 其他纤维

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = 尼龙（线圈）牙
word-zip-teeth-moulded = 注塑牙
word-zip-teeth-metal = 金属牙
word-zip-teeth-invisible = 隐形尼龙牙

word-zip-end-closed = 闭尾
word-zip-end-open = 开尾
word-zip-end-two-way = 双开

word-cord-place-hood-neck = 帽或领口
word-cord-place-chest = 胸部
word-cord-place-waist = 腰部
word-cord-place-hem = 上衣下摆
word-cord-place-legs = 裤脚口
word-cord-place-sleeve = 袖
word-cord-place-back = 背部
word-cord-place-elsewhere = 其他位置

word-cord-ends-free = 绳端自由
word-cord-ends-toggled = 绳端自由，带绳扣、绳头或结
word-cord-ends-fixed = 缝住，无自由端
word-cord-ends-loop = 闭合绳圈

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = 件
word-measured-in-gram = g

word-consumption-marker = 按排料图
word-consumption-area = 按裁片面积
word-consumption-estimate = 估算

word-wastage-allowance = 加在需要量之上
word-wastage-loss-of-input = 从采购量中损失

word-minimum-style = 每款
word-minimum-colour = 每色
word-minimum-dimension = 每种规格

word-evidence-small-parts = 小部件
word-evidence-flammability = 燃烧性
word-evidence-nickel = 镍
word-evidence-azo-dyes = 偶氮染料
word-evidence-lead = 铅
word-evidence-colour-fastness = 色牢度
word-evidence-shrinkage = 缩水率
word-evidence-strength = 强力
word-evidence-other = 其他

word-wash-normal-95 = 95 °C 水洗
word-wash-normal-70 = 70 °C 水洗
word-wash-normal-60 = 60 °C 水洗
word-wash-mild-60 = 60 °C 缓和水洗
word-wash-normal-50 = 50 °C 水洗
word-wash-mild-50 = 50 °C 缓和水洗
word-wash-normal-40 = 40 °C 水洗
word-wash-mild-40 = 40 °C 缓和水洗
word-wash-very-mild-40 = 40 °C 非常缓和水洗
word-wash-normal-30 = 30 °C 水洗
word-wash-mild-30 = 30 °C 缓和水洗
word-wash-very-mild-30 = 30 °C 非常缓和水洗
word-wash-hand = 手洗，最高 40 °C
word-wash-no = 不可水洗

word-bleach-any = 可用任何漂白剂
word-bleach-oxygen = 仅可用非氯漂白剂
word-bleach-no = 不可漂白

word-tumble-normal = 可烘干，常规 (80 °C)
word-tumble-low = 可烘干，低温 (60 °C)
word-tumble-no = 不可烘干

word-air-dry-line = 悬挂晾干
word-air-dry-line-shade = 阴凉处悬挂晾干
word-air-dry-line-drip = 悬挂滴干
word-air-dry-line-drip-shade = 阴凉处悬挂滴干
word-air-dry-flat = 平摊晾干
word-air-dry-flat-shade = 阴凉处平摊晾干
word-air-dry-flat-drip = 平摊滴干
word-air-dry-flat-drip-shade = 阴凉处平摊滴干

word-iron-high = 熨烫，最高 200 °C
word-iron-medium = 熨烫，最高 150 °C
word-iron-low = 熨烫，最高 110 °C，不用蒸汽
word-iron-no = 不可熨烫

word-dry-clean-p = 干洗，P
word-dry-clean-p-mild = 缓和干洗，P
word-dry-clean-f = 干洗，F
word-dry-clean-f-mild = 缓和干洗，F
word-dry-clean-no = 不可干洗

word-wet-clean-normal = 专业湿洗
word-wet-clean-mild = 缓和专业湿洗
word-wet-clean-very-mild = 非常缓和专业湿洗
word-wet-clean-no = 不可湿洗

word-line-seam = 接缝
word-line-edge = 边
word-line-fold = 折线
word-line-centre-line = 中线

word-seam-1 = 1 叠合缝
word-seam-2 = 2 搭接缝
word-seam-3 = 3 包边缝
word-seam-4 = 4 平缝
word-seam-5 = 5 装饰缝
word-seam-6 = 6 边缘整理缝
word-seam-7 = 7 附加缝
word-seam-8 = 8 单片缝

word-method-screen-print = 丝网印
word-method-heat-transfer = 热转印
word-method-digital-print = 数码印
word-method-sublimation = 升华转印
word-method-embroidery = 刺绣
word-method-woven-patch = 织章
word-method-applique = 贴布
word-method-deboss = 压凹
word-method-other = 其他

word-artwork-form-vector = 线条和色块（矢量）
word-artwork-form-raster = 图片（点阵）
word-artwork-form-stitches = 绣花文件

word-anchor-top = 上边
word-anchor-bottom = 下边
word-anchor-left = 左边（按阅读方向）
word-anchor-right = 右边（按阅读方向）
word-anchor-centre = 中心

word-label-brand = 品牌标
word-label-care-composition = 洗水成分标
word-label-size-loop = 尺码环标
word-label-origin = 产地标
word-label-warning = 警告标
word-label-other = 其他

word-label-made-woven = 织标
word-label-made-printed = 印标
word-label-made-transfer = 烫标

word-label-fold-flat = 不折
word-label-fold-centre = 对折
word-label-fold-ends = 两端折
word-label-fold-mitre = 斜角折
word-label-fold-loop = 环折

word-driver-style = 全部相同
word-driver-size = 按尺码
word-driver-colourway = 按配色
word-driver-market = 按市场

word-label-content-composition = 成分
word-label-content-care = 洗护
word-label-content-origin = 产地
word-label-content-size = 尺码

word-assortment-solid = 独色独码：一箱只装一个尺码和配色
word-assortment-assorted = 混装

word-stitch-class-100 = 单线链式线迹
word-stitch-class-200 = 手工线迹
word-stitch-class-300 = 锁式线迹
word-stitch-class-400 = 多线链式线迹
word-stitch-class-500 = 包缝线迹
word-stitch-class-600 = 覆盖线迹

word-status-verified = 已对照公布的文本核对
word-status-seen = 见于使用，未对照官方文本核对
word-status-from-memory = 未对照官方文本核对
