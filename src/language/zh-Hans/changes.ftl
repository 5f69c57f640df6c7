### What changed from one version of a spec to another.

change-added = 新增{ $what }
change-removed = 删除{ $what }
change-moved = 在列表中移动
change-mark-moved = { $what }已移动
change-relettered = 字母已改
change-changed = 有变更
change-regraded = 数值有变更

change-what-size = 尺码
change-what-length = 长度
change-what-drawing = 款式图
change-what-letter = 字母
change-what-line = 尺寸线
change-what-circle = 圆圈
change-what-point = 测量部位
change-what-part = 部件
change-what-colourway = 配色
change-what-material = 物料
change-what-seam = 接缝或线
change-what-callout = 缝制说明
change-what-artwork = 图案
change-what-label = 标签
change-what-step = 包装步骤
change-what-pack = 配码包

change-yes = 是
change-no = 否
change-empty = 空
change-place = 第 { $place } 位
change-spot = 距左边 { $left } %，距上边 { $top } %
change-item = { $letter } { $name }
change-on-drawing = 在图 { $drawing } 上
change-in-colourway = 配色 { $colourway }
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = 新增 { $value }
change-list-removed = 删除 { $value }
change-line = 从 { $from } 到 { $to }
change-line-curved = 从 { $from } 到 { $to }，弧线经过 { $via }
change-blow-up = { $drawing }，位于 { $spot }
change-both-units = { $value } { $unit }（{ $other } { $other-unit }）

change-rule = 放码规则 { $range }
change-grade-same = 各尺码相同
change-grade-segment = { $range } { $step }
change-grade-more = { $point } 加 { $offset }
change-grade-less = { $point } 减 { $offset }

change-sizes-none = 没有数值变更
change-sizes-all = 全部 { $count } 个尺码有变更
change-sizes-some = { $count } 个尺码有变更
change-sizes-not-base = { $count } 个尺码有变更，基码 { $base } 不变
change-follows = 随 { $point } 变更

change-told = { $subject }：{ $what }
change-from-to = { $old } → { $new }
change-effect = { $what }（{ $effect }）
change-size = { $size } { $value } { $unit }

cell-none = 无
cell-natural = 本色
cell-dyed-to-match = 染成与 { $part } 相同

colour-on = 在 { $substrate } 上
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
