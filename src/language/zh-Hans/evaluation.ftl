### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }，{ $direction }
evaluation-some-points = { $count } 个部位
evaluation-whole-garment = 整件服装

## Causes

evaluation-proportional-shift = { $place }：长短部位按相同比例偏差 { $share } %。面料缩了或伸了，或纸样的预留不对。请将该处纸样 × { $factor }。
evaluation-constant-error = { $place }：不论长短，每个部位都偏差相同长度 { $by }。请检查缝份和裁剪，或所用的软尺。
evaluation-single-point = { $points }：尺码 { $size } 偏差 { $by }，没有别的原因可解释。请检查此部位的裁剪和缝制。
evaluation-base-pattern = { $points }：所有测量过的尺码都偏差 { $by }。请修正该处的基码纸样。
evaluation-grading = { $place }：离基码越远偏差越大；档差与尺寸表相差 { $share } %。请修正放码。
evaluation-size-pattern = { $place }：只有尺码 { $size } 偏差 { $by }。请检查此尺码的纸样。
evaluation-one-piece = { $points }：只有第 { $pieces } 件偏差 { $by }。请再量一次；如仍如此，则此件缝法不同。
evaluation-unsteady = { $points }：尺码 { $size } 的各件之间相差大于测量误差所能解释。请检查缝制，或商定测量方法。
evaluation-wrong-label = 第 { $pieces } 件标为尺码 { $size }，量得为 { $really }。请检查标签，或它是按哪个纸样裁的。
evaluation-swapped-sizes = 第 { $pieces } 件的尺码互相调换：第一件标为 { $size }，量得为 { $really }。请对调标签。
evaluation-doubled = 第 { $pieces } 件，{ $points }：约为应有的两倍。写的是全围而不是半围：请再量一次。
evaluation-halved = 第 { $pieces } 件，{ $points }：约为应有的一半。写的是半围而不是全围：请再量一次。
evaluation-cm-as-inch = 第 { $pieces } 件，{ $points }：应写英寸处写了厘米。
evaluation-inch-as-cm = 第 { $pieces } 件，{ $points }：应写厘米处写了英寸。
evaluation-ten-times = 第 { $pieces } 件，{ $points }：是应有的十倍。请检查小数点。
evaluation-tenth = 第 { $pieces } 件，{ $points }：是应有的十分之一。请检查小数点。
evaluation-swapped-points = 第 { $pieces } 件：{ $points } 的数值互相调换了。

## Figures

evaluation-rests-on-one = 只依据一个数值。
evaluation-rests-on = 依据 { $readings } 个数值，其中 { $same } 个偏向同一侧。其中一半偏差超过 { $before }；扣除此原因后剩 { $left }。

## What is not a cause

evaluation-again = 第 { $piece } 件，{ $point }：超出公差，但不超过测量可能的误差。请再量一次。
evaluation-dispute = 第 { $piece } 件，{ $point }：{ $one } 量得 { $least }，{ $other } 量得 { $most }。请先商定测量方法：相差不超过 { $allowed } 即可。
evaluation-few-points = { $place }：数据不足。该处测量了 { $have } 个部位，需要 { $need } 个才能判断面料是否变化。
evaluation-one-size = 数据不足：只测量了尺码 { $size }，无法区分纸样和放码。
evaluation-one-piece-only = 数据不足：尺码 { $size } 只测量了一件，无法区分缝制和纸样。
evaluation-watch = { $out ->
    [0] { $point }：以前未通过（{ $rounds }）。现在在公差内：请留意。
   *[other] { $point }：以前未通过（{ $rounds }）。现在 { $measured } 件中又有 { $out } 件超差。
}
evaluation-repeat-assumed = 没有部位量过两次。假定同一数值的重复误差为 { $deviation }。
evaluation-repeat-measurers = 根据多人测量的 { $count } 个部位，同一数值的重复误差为 { $deviation }。
evaluation-repeat-pieces = 根据同码多件的 { $count } 个部位，同一数值的重复误差为 { $deviation }。
evaluation-wash = { $place }：洗后 { $percent } %。请将该处纸样 × { $factor }。
evaluation-wash-little = { $place }：水洗 { $percent } %，不超过测量误差可解释的范围。

## On a round's page

evaluation-title = 测量结果说明什么
evaluation-no-cause = 未指出原因。如有超差，也不超过测量误差所能解释的范围，或者数据太少，无法判断。
evaluation-points-shown = 出现在何处
evaluation-suggested = 建议的纸样修正
evaluation-agree = 请先商定测量方法
evaluation-again-title = 请再量一次
evaluation-lacks-title = 数据不足
evaluation-watch-title = 留意：上一轮未合格
evaluation-watch-word = 留意
evaluation-strips = 各部位偏差
evaluation-strips-how = 灰色带为公差，带中的线为规格值。● 合格，▲ 超上限，▼ 低于下限。
evaluation-strips-sides = 空心标记为工厂的数值，实心标记为品牌方的数值。
evaluation-strips-beyond = 标记旁的箭头：偏差超出图的范围。
evaluation-within = { $count } 个部位在公差内
evaluation-by-size = 各尺码偏差
evaluation-by-size-how = 线连接各尺码的平均偏差。水平线：纸样问题。上升或下降的线：放码问题。
evaluation-steps = 尺码之间的档差
evaluation-from-to = 从，到
evaluation-asked = 按尺寸表
evaluation-got = 实测
evaluation-more = 差值
