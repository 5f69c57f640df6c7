### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ 是程序给出的你的语言的词，未经母语者核对。以品牌方所写为准。 “=” 后是品牌方自己的译文。
later-title = 本版发布之后重新翻译的词句。原文未变。

## Drawings

drawing-larger = 放大图：{ $drawing }
legend-point = 测量部位
legend-part = 部件
legend-callout = 缝制方法
legend-artwork = 图案
legend-label = 标签
legend-larger = 见该编号的放大图
legend-dimension = 该部位的测量范围

## A rule that an owner sets aside

exemption-title = 此处有一条规则不适用：{ $code }
exemption-reason = 原因：{ $reason }
exemption-by = 说明人：{ $name }

## Sizes

lengths-caption = 长度，{ $unit }
sizes-ages = 年龄
sizes-years = { $from } 至 { $to } 岁
sizes-months = { $from } 至 { $to } 个月
sizes-range = { $from } 至 { $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = 计划 { $count } 件
parts-as-dyed = 染后实物

## Materials

materials-material = 物料
materials-what = 说明
materials-where = 用在哪里
materials-length = 长度和用量
materials-supply = 供应
materials-care = 最高可承受
materials-parts = 用于部件

## Construction

construction-callout = 缝什么
construction-larger = 放大
construction-stitch = 线迹和缝型
construction-measures = 距离
construction-with = 线、带、打枣
construction-per-inch = 每英寸 { $count }
construction-lines = 接缝、边和线

## Artwork

artwork-sizes = { $from } 至 { $to }
artwork-all-sizes = 所有尺码
artwork-true-size = { $width } × { $height } mm
artwork-placed = 位置
artwork-original = 原始文件
artwork-no-picture = 此文件没有图片预览。请下载原始文件。

## Labels

labels-care = 洗护，按标签顺序
labels-signs = 小图标仅供屏幕参考，不是标签上的洗护符号。

## Packing

packing-steps = 步骤
packing-packs = 配码包：各尺码件数
packing-pack = 包
packing-every-colourway = 每种配色
packing-total = 合计

## An item without a name

sheet-item = 无名称

## To be dyed

dyeing-title = 计划件数需染
dyeing-substrate = 材质
dyeing-colour = 颜色
dyeing-kilograms = kg
dyeing-of = 用于
dyeing-undyed = 不染
dyeing-not-whole = 未计入以上公斤数：
dyeing-lacks-pieces = 未说明计划件数
dyeing-lacks-parts = 未说明用于哪些部件
dyeing-lacks-colour = 未说明颜色
dyeing-parts-differ = 其部件颜色不同
dyeing-lacks-consumption = 未说明每件用量
dyeing-lacks-unit = 按件计，未说明重量
dyeing-lacks-mass = 未说明每平方米克重
dyeing-lacks-width = 未说明全幅宽
dyeing-lacks-wastage = 未说明损耗
dyeing-too-large = 数值太大

## What composition labels say

composition-title = 成分，用于标签
composition-draft = 由程序草拟。由对标签负责的人核对。
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
