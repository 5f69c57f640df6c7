### 以封样检验大货。

inspection-title = 大货检验 { $number }
inspection-list = 大货检验
inspection-head = 检验
inspection-none = 还没有以此封样检验过大货。
inspection-do = 检验大货
inspection-what = 从完成的批次中抽取样本，以封样及其版本为准检验。
inspection-no-safety = 通过此检验不说明任何安全性。安全由有资质的实验室和当地法律决定。
inspection-follows = 返工前的检验
inspection-followed = 再次检验于
inspection-earlier = 以此封样进行的检验：{ $count }
inspection-blocked = 不能检验大货的原因：{ $count }
inspection-open-other = 打开那次检验

## 批次与抽样方案

inspection-lot = 批次
inspection-lot-help = 本批每种配色和尺码各有多少件成品。没有的请留空。
inspection-count-wrong = 请填 0 到 { $most } 的整数。
inspection-plan = 抽样方案
inspection-plan-of = 从 { $lot } 件中检验 { $sample } 件
inspection-plan-moved = 显示方案后批次有改动。这是现在的方案。
inspection-show-plan = 显示方案
inspection-begin = 开始这次检验
inspection-level = 检验水平
inspection-aql = AQL
inspection-aql-of = AQL，{ $class }缺陷
inspection-usual = 水平 II 配 2.5 和 4.0 是通行做法，无出处。
inspection-critical-rule = 致命缺陷没有可接受的水平：一个就拒收整批。
inspection-critical-found = 有致命缺陷的件数：
inspection-class = 缺陷
inspection-code = 字码
inspection-sample = 样本
inspection-accept = 接收数
inspection-reject = 拒收数
inspection-done = 已检
inspection-found = 不合格
inspection-of = { $done }／{ $sample }
inspection-every-piece = 本批每一件
inspection-arrow = 表中箭头指向另一字码时，按那个字码的样本量。
inspection-source = 一次抽样、正常检验，依据 MIL-STD-105E 的表。
inspection-colourway = 配色
inspection-size = 尺码
inspection-in-lot = 批中件数
inspection-draw = 抽取
inspection-to-draw = 抽取什么
inspection-draw-how = 按批次比例抽取，样本允许时每种至少一件：通行做法，无出处。请随机抽取。

## 检验结果

inspection-begun = 开始者
inspection-within = 每个方案按抽取顺序只数自己的前几件。每件按最严重的缺陷归类。
inspection-points-rule = 关键点超差算严重缺陷，其他点超差算轻微缺陷：通行做法，无出处。
inspection-pieces = 件
inspection-nothing-yet = 还没有检验任何一件。
inspection-correct = 更正
inspection-sound = 无缺陷：{ $count }
inspection-corrected = 已被更正的记录：{ $count }
inspection-measured = 测量值：{ $count }
inspection-no-defect = 无缺陷
inspection-enter-beyond = 样本之外的致命缺陷
inspection-conceded = 这些在封样时已让步。此处仍算缺陷：由品牌方决定。
inspection-curve = 方案能说明什么
inspection-curve-what = 按不合格品所占比例，本批被接收的可能性。比 AQL 差的批可能被接收，比它好的也可能被拒收。
inspection-curve-share = 不合格品比例
inspection-curve-likelihood = 接收的可能性
inspection-curve-at = 不合格 { $share } 时，接收的可能性为 { $likelihood }

## 下一步

inspection-enter = 检验一件
inspection-conclude = 作结论
inspection-conclude-what = 程序根据记录判断本批接收还是拒收。
inspection-conclude-final = 之后不能再录入或更正任何一件。
inspection-concluded = 结论
inspection-decide = 对本批作决定
inspection-decide-final = 决定以后不再更改。
inspection-reason-help = 除放行外都必须写原因。让步时请写明放过哪些缺陷。
inspection-released-help = 本批可以发货。
inspection-concession-help = 本批虽被拒收仍发货。请写明缺陷。
inspection-rework-help = 工厂挑选并返修，然后再次检验。
inspection-refused-help = 不收本批。
inspection-fails-critical = 有致命缺陷的件数：{ $count }。一件就足以拒收。
inspection-fails = 归为{ $class }的件数：{ $found }。最多可接收 { $accept } 件。
inspection-next-fails = 已发现的问题使本批被拒收。请作结论。
inspection-next-enter = 请检验：{ $sample } 件中已完成 { $done } 件。
inspection-next-enter-other = { $org } 正在检验本批。
inspection-next-conclude = 样本已检验完。请作结论。
inspection-next-decide = 请对本批作决定。
inspection-next-decide-other = 由品牌方对本批作决定。
inspection-next-again = { $org } 挑选并返修本批，然后再次检验。
inspection-next-done = 这里没有要做的事了。
inspection-again = 检验返修后的批次

## 录入一件

inspection-corrects = 此件已录入过。以你这次保存的为准，旧记录仍可查看。
inspection-other-sort = 其他配色或尺码
inspection-defects = 缺陷
inspection-defects-how = 没有缺陷就直接保存。
inspection-classes = 致命：可能伤人；有疑问时选这个。严重：衣服很可能出问题或明显不好用。轻微：与要求不符，但仍可使用。
inspection-defect = 缺陷 { $number }
inspection-class-of = 类别
inspection-where = 位置
inspection-nowhere = 不在此列表中
inspection-times = 数量
inspection-words = 文字说明
inspection-more = 更多缺陷
inspection-values = 测量值
inspection-other-points = 其他测量点：{ $count }
inspection-class-missing = 请选择致命、严重或轻微。
inspection-times-wrong = 请填 1 到 { $most } 的整数。
inspection-moved-on = 有人刚录入了那一件。你的现在是第 { $number } 件：请再保存一次。
