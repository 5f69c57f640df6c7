### Threads, messages and questions.

## An item of a revision

item-back = 第 { $revision } 版
item-close = 返回
item-mark = { $letter }，{ $name }
item-values = 各尺码的数值，单位 { $unit }；下方为 { $other }
item-tolerance = 公差
item-from = 从
item-to = 到
item-path = 软尺走法
item-relaxed = 自然放平
item-stretched = 拉开
item-note = 备注
item-basis = 量法
item-key = 主要部位
item-critical = 关键部位
item-colours = 各配色中的颜色
item-not-said = 未说明
item-superseded = 已被新版取代
item-superseded-why = 不要按第 { $revision } 版缝制。
item-newer = 请看现行的第 { $revision } 版
item-withdrawn = 已撤回
item-withdrawn-why = 不要按第 { $revision } 版缝制：{ $reason }
item-current = 现行版本是第 { $revision } 版
item-removed = 已删除
item-removed-why = 第 { $revision } 版已没有这一项。关于它的讨论保留在这里。

## Colour patches

patch-approximate = 屏幕颜色仅供参考

## Threads on an item

threads-heading = 问题和必须修改
threads-none = 还没有人就此提问。
thread-asked-by = 由 { $person } 提出
thread-asked-by-brand = 由品牌方 { $person } 提出
thread-asked-by-factory = 由 { $factory } 的 { $person } 提出
thread-asked-of-factory = 由 { $person } 向 { $factory } 提出
thread-raised-on = 针对第 { $revision } 版提出
thread-next-you-answer = 下一步：请你回复。
thread-next-you-read = 已有回复。请关闭，或写明还有什么未解决。
thread-next-you-change = 下一步：请你在草稿中修改并发布。
thread-next-you-verify = 下一步：请你在样衣上查看。
thread-next-answer = 下一步：{ $who } 回复。
thread-next-read = 下一步：{ $who } 看回复。
thread-next-change = 下一步：{ $who } 修改并发布新版本。
thread-next-verify = 下一步：{ $who } 在样衣上查看。
thread-text-erased = （文字已删除）
thread-photo-erased = （照片已删除）
thread-photo = 照片 { $number }
thread-photo-taken = 拍摄于 { $when }

## Writing

thread-answer = 你的留言
thread-send = 发送
thread-translated = { $language }，{ $who } 翻译
thread-translate = 翻译此消息
thread-translate-into = 语言
thread-translation = 译文
thread-translate-help = 译文连同您的名字显示在消息下方。以原消息为准。
thread-translate-button = 附在消息旁
thread-refused = 未发送。
thread-photos = 照片
thread-photos-help = 最多 { $count } 张，JPEG、PNG 或 WebP。不保留拍摄地点和发送人信息。
thread-draw = 在照片上标注
thread-draw-circle = 圆圈
thread-draw-arrow = 箭头
thread-draw-dimension = 尺寸线
thread-draw-value = 数值
thread-draw-undo = 撤销
thread-agree = 同意
thread-mark-changed = 第 { $revision } 版已修改
thread-verify = 第 { $number } 轮样衣（{ $kind }）上已正确
thread-close-question = 关闭问题
thread-close-must-fix = 关闭必须修改项
thread-close-suggestion = 关闭建议
thread-decline = 拒绝申请
thread-take-back = 撤回申请
thread-reopen = 重新打开
thread-grant = 准予让步
thread-grant-final = 签字可能以此为依据：不能收回。

## Asking

ask-heading = 就此提问
ask-kind = 是什么？
ask-question-help = 需要答复，才能继续工作。
ask-must-fix-help = 必须修改。修改之前谁也不签字。
ask-suggestion-help = 可以用更好的做法。
ask-concession-help = 工厂请求按现状放行。
ask-factory = 哪家工厂？
ask-factory-choose = 选择工厂
ask-text = 你的留言
ask-send = 发送
ask-alone = 此款式还没有共享给工厂，没有人可问。
ask-alone-share = 共享款式

## Ready sentences

ready-title = 现成句子
ready-what = 对方以自己的语言看到这句话。
ready-how = 可直接发送，或选一句并填写所缺内容。
ready-other = 换一句
ready-mark = 现成句子
ready-slot-length = 测量值，{ $unit }
ready-slot-spec = 规格值，{ $unit }
ready-slot-item = 关于什么
ready-slot-other = 另一项
ready-slot-material = 物料
ready-slot-size = 尺码
ready-slot-date = 日期
ready-slot-until = 到
ready-slot-count = 数量
ready-slot-percent = 百分比
ready-slot-revision = 版本
ready-slot-wrong = 此内容不合适。请重新填写或选择。

## Live pages

live-new = 此页有新内容。
live-show = 显示
live-lost = 没有网络连接。此页可能不是最新。正在重试。
live-unsent = 没有网络连接：未发送。请再发一次。
