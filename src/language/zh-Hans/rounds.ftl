### Sample rounds and measuring.

rounds-title = { $kind }，第 { $number } 轮样衣
rounds-revision = 版本
rounds-factory = 工厂
rounds-asked = 要求
rounds-missing = 缺少
rounds-out = 超出公差
rounds-critical-out = 关键部位超差
rounds-values = 已测量
rounds-measured-of = { $measured } / { $count }

## Asking for a round

rounds-new-title = 要求样衣
rounds-new-bound = 工厂按第 { $revision } 版制作这些样衣。
rounds-choose = 选择工厂
rounds-factory-missing = 请选择工厂。
rounds-kind = 样衣用途是什么？
rounds-kind-proto-help = 最初的样衣：双方理解是否一致？
rounds-kind-fit-help = 是否合身，尺寸是否正确？
rounds-kind-size-set-help = 每个尺码一件：放码是否正确？
rounds-kind-pre-production-help = 与大货一致：实际物料，实际生产线。
rounds-kind-top-of-production-help = 大货最先做出的几件。
rounds-pieces = 每个尺码几件？
rounds-count-wrong = 请输入 0 到 { $most } 的整数。
rounds-new-button = 要求样衣
rounds-back-to-style = 返回款式
rounds-not-shared = 此款式还没有共享给工厂。请先共享。
rounds-none-current = 没有现行版本。请先发布。

## What is next

rounds-next-start = 请开始制作这些样衣。
rounds-next-start-other = 由跟单员开始。
rounds-next-start-factory = 下一步：{ $org } 开始制作。
rounds-next-measure = 请测量样衣：还缺 { $count } 个数值。
rounds-next-dispatch = 已全部测量。请寄出样衣，然后在此说明。
rounds-next-dispatch-other = 已全部测量。由跟单员寄出样衣。
rounds-next-in-work = { $org } 正在制作和测量样衣。
rounds-next-receive = 样衣在途中。收到后请说明。
rounds-next-on-the-way = 样衣在途中。品牌方收到后会说明。
rounds-next-check = 请测量样衣，或核对工厂的数值。然后说明测量完成。
rounds-next-check-other = 品牌方正在检查样衣。
rounds-next-decide = 请对这些样衣作决定。
rounds-next-decide-other = 下一步由品牌方决定。
rounds-next-cancelled = 本轮已取消，无需再做什么。
rounds-next-sign = 请阅读决定，然后签字。
rounds-next-sign-blocked = 有未解决的问题。先解决，再签署决定。
rounds-next-sign-other = 尚未签字：{ $side }。
rounds-next-done = 双方已签字，无需再做什么。

rounds-move-start = 开始制作
rounds-move-dispatch = 样衣已寄出
rounds-move-receive = 样衣已收到
rounds-move-finish-measuring = 测量完成
rounds-measure = 测量
rounds-correct = 更正数值
rounds-sign = 去签字
rounds-see-open = 查看未解决的事项
rounds-unfinished = 还缺 { $count } 个数值。
rounds-unfinished-what = 这些还没有人测量。请测量，或不量而继续。
rounds-unfinished-piece = 第 { $number } 件，尺码 { $size }
rounds-dispatch-anyway = 样衣已寄出，缺这些数值
rounds-finish-anyway = 仍然结束

## A newer revision

rounds-newer = 已有第 { $revision } 版。
rounds-newer-bound = 这些样衣按第 { $revision } 版制作。
rounds-newer-wait = 是否继续由品牌方决定。
rounds-newer-changes = 查看变更
rounds-continue = 继续按第 { $revision } 版
rounds-restart = 按第 { $revision } 版重新开始
rounds-restart-sure = 本轮样衣以取消结束，并保持如此。其中量过的数值会保留。随即按第 { $revision } 版要求制作同样的样衣。
rounds-restart-reason = 已按第 { $revision } 版重新开始。

## Pieces and points

rounds-pieces-by-points = 测量值
rounds-caption = 单位：{ $unit }
rounds-pick-piece = 件
rounds-piece = 第 { $number } 件
rounds-letter = 字母
rounds-point = 测量部位
rounds-spec = 规格
rounds-critical = 关键
rounds-critical-line = { $letter } { $name } 为关键部位，有 { $count } 件超出公差。
rounds-not-yet = 尚未
rounds-over = 超上限
rounds-under = 低于下限
rounds-apart = 双方数值相差太大：请先商定测量方法。
rounds-legend = ▲ 超上限，▼ 低于下限。
rounds-legend-both = 品牌方测量过的部位，以其数值为准。

## Deciding

rounds-decide = 决定
rounds-stop = 停止本轮
rounds-outcome = 你的决定是什么？
rounds-outcome-missing = 请选择决定。
rounds-approved-help = 样衣正确，无需修改。
rounds-approved-with-changes-help = 除以下修改外正确。每项都成为下一版的必须修改。
rounds-remake-help = 重新制作这些样衣。请写明原因。
rounds-cancelled-help = 不作结论，结束本轮。请写明原因。
rounds-changes = 修改
rounds-changes-help = 仅用于“修改后批准”。无需修改的项目请取消勾选。
rounds-change-text = { $letter } 处须修改什么
rounds-other-item = 其他修改
rounds-no-item = 无
rounds-other-text = 那里须修改什么
rounds-reason = 原因
rounds-reason-help = 双方都会看到。重做或取消必须写原因。
rounds-decide-button = 决定
rounds-suggestion = { $pieces } 请修正到 { $tolerance } { $unit } 以内。
rounds-suggestion-piece = 第 { $piece } 件，尺码 { $size }：量得 { $measured }，规格为 { $spec }（{ $off }）。

rounds-decided = 决定
rounds-reason-erased = （原因已删除）
rounds-must-fixes = 由此决定产生的必须修改项
rounds-another = 要求下一轮

## Signing

sign-title = 签字
sign-signed = 已签字
sign-not-yet = 尚未签字
sign-fingerprint = 指纹码
sign-as = 我以 { $name }（{ $role }）身份签字
sign-button = 签字
sign-blocked = 你还不能签字
sign-local = 签字人当地时间 { $time }
sign-to-acknowledge = 确认
sign-to-thread = 打开 { $kind }：{ $item }

## History

rounds-history = 历史
rounds-did-request = 要求 { $count } 件，按第 { $revision } 版。
rounds-did-start = 开始制作。
rounds-did-dispatch = 寄出样衣。
rounds-did-receive = 收到样衣。
rounds-did-finish-measuring = 说明测量完成。
rounds-did-continue = 继续用这些样衣。第 { $revision } 版不改变它们。
rounds-did-measure = 测量了 { $count } 个数值。
rounds-did-decide = 决定：{ $outcome }。
rounds-did-sign = 签署了决定。
rounds-did-must-fix = 提出必须修改：{ $letter } { $name }。

## Measuring on a phone

rounds-measure-title = 测量第 { $piece } 件
rounds-missing-count = { $count ->
    [0] 已全部测量
   *[other] 还缺 { $count } 个
}
rounds-back-to-round = 返回{ $kind }，第 { $number } 轮
rounds-progress = 本件已测量的部位
rounds-waiting = 尚未发送：
rounds-drop = 丢弃
rounds-place = { $place } / { $count }
rounds-how = 从 { $start } 量到 { $end }。
rounds-stretched = 拉开量。
rounds-half = 半围
rounds-half-how = 平放量
rounds-full = 全围
rounds-full-how = 绕一周
rounds-length = 长度
rounds-value = 测量值
rounds-save-next = 保存，下一个
rounds-kept = 没有网络时也能再次打开本页。
rounds-plain = 没有 HTTPS，断网时无法再次打开本页。您输入的数值仍会保留。
rounds-save-anyway = 数值无误：保存
rounds-back = 上一个
rounds-next = 下一个
rounds-skip = 跳过
rounds-skip-why = 为什么不量？
rounds-skip-later = 稍后再量：下一点
rounds-skipped = 未量：
rounds-state-spec = 按规格
rounds-state-is-spec = 规格数值
rounds-measure-in = 测量：
rounds-delete = 删除
rounds-not-positive = 测量值必须大于零。
rounds-key-used = 此表单之前已用另一数值发送过。请再核对数值，然后保存。

rounds-ask-doubled = { $value } 约为规格的两倍。是全围吗？请再量一次。
rounds-ask-halved = { $value } 约为规格的一半。是只量了半围吗？请再量一次。
rounds-ask-cm-as-inch = { $value } 像是厘米。请再量一次。
rounds-ask-inch-as-cm = { $value } 像是英寸。请再量一次。
rounds-ask-ten-times = { $value } 约为规格的十倍。请看小数点。
rounds-ask-tenth = { $value } 约为规格的十分之一。请看小数点。
rounds-ask-other-size = 本件更符合 { $size } 码。请看标签并再量一次。
rounds-ask-copied = 所有数值都与规格相同。是测量的，还是照抄的？

## Sending the pieces

rounds-send-title = 寄出样衣
rounds-send-materials = 样衣用的是什么材料？
rounds-send-substitutes = 用什么代替了什么？
rounds-send-parcel = 快递公司和单号
rounds-send-materials-missing = 请写明样衣用的是什么材料。
rounds-materials = 材料
rounds-parcel = 寄送方式

## Washing

washes-title = 水洗
washes-what = 水洗前后测量值的变化：（水洗后 − 水洗前）/ 水洗前。
washes-rest = { $count ->
   *[other] 另有 { $count } 处的变化不超过测量误差可解释的范围。
}
washes-points = { $count ->
   *[other] 每个部位（{ $count }）
}

## Photographs of pieces

photographs-title = 样衣照片
photographs-add = 添加照片
photographs-add-button = 添加
photographs-missing = 请选择或拍摄照片。
photographs-many = 每件最多 { $count } 张照片。

## Every value side by side

readings-title = 并排填写全部数值
readings-state = 样衣状态
readings-wrong = 没有保存任何内容。请查看标出的数值。
readings-asks = 尚未保存。请再看一下：
readings-look = 尚未保存。请核对数值后再保存。
readings-save = 全部保存
readings-empty = 清空的格子保留原有数值。
readings-paste-title = 粘贴或打开表格
readings-paste = 来自表格或信件的数值
readings-paste-help = 每个部位一行，以字母或名称开头。各件的列上方写件号，或按顺序排列。
readings-file = 或文件：XLSX 或 CSV
readings-first = 没有件号的列从哪一件开始
readings-fill = 填入格子
readings-nothing-pasted = 请粘贴数值或选择文件。
readings-filled = { $count ->
   *[other] 已填入 { $count } 个数值。
}
readings-unknown = { $cell }：“{ $words }”不是此尺寸表的部位，或已出现过。其数值未填入。
readings-unreadable = { $cell } 中没有可读的数字：表格可能把它变成了日期。
readings-no-points = 没有一行以部位的字母或名称开头，而且 { $rows } 行与尺寸表的 { $points } 个部位不符。请在数值前写上字母。
readings-columns = 有 { $columns } 列数值，而从所选件起只有 { $pieces } 件。请在每列上方写上件号。
readings-twice = 有两列都是第 { $piece } 件。请只留一列。
