### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = 我已阅读本版。我厂将按本版制作此款式。
statement-revision-brand = 本版即我方的要求。我方将以此判断到货。
statement-round-factory = 我已阅读对本轮样衣的决定。我厂将按此执行。
statement-round-brand = 这是我方对本轮样衣的决定。
statement-seal-factory = 此处所列样衣已封存。我厂将按这些样衣和此版本生产大货。
statement-seal-brand = 此处所列样衣已封存。我方将按这些样衣和此版本判断大货。

## A revision

revision-number = 第 { $revision } 版
revision-reason = 发布原因

## What changed

changes-title = 第 { $revision } 版的变更
changes-since = 与第 { $revision } 版比较。
changes-acknowledged = 这是你厂最后确认的版本。
changes-none = 自第 { $revision } 版以来没有变更。
changes-first = 这是第一个版本，没有更早的版本可比较。
changes-compare = 与其他版本比较
changes-with = 与第 { $revision } 版
changes-read = 阅读第 { $revision } 版

## The revision page

revision-what-changed = 变更内容
revision-to-signatures = 签字
revision-current = 第 { $revision } 版为现行版本
revision-published = { $date } 由 { $name } 发布
revision-superseded = 已被新版取代
revision-superseded-stop = 不要按此版缝制。
revision-withdrawn = 已撤回
revision-withdrawn-why = 停止。不要按此版缝制：{ $reason }
revision-use = 使用第 { $revision } 版
revision-see-changes = 查看变更
revision-none-current = 没有现行版本。请等品牌方发布新版本。
revision-original = 原始文件
revision-tap = 点字母可阅读说明或提问。? 表示有未解决的问题，! 表示有未完成的必须修改。
revision-style = 款号
revision-revision = 版本
revision-fingerprint = 指纹码
revision-date = 发布日期
revision-by = 发布人
revision-state = 状态
revision-compare = 比较
revision-measured = { $state } · 平放自然状态 · { $edges }。个别部位可另有说明。
revision-contents = 本页内容
revision-others = 其他版本和下载
revision-archive = 下载整个版本 (ZIP)
revision-archive-what = 文件及其显示的原始文件，逐字节原样。
revision-document = 下载本版文件 (JSON)
revision-document-what = 指纹码就是由这些字节算出的。

## Acknowledging

acknowledge-not-yet = 你厂尚未确认第 { $revision } 版。
acknowledge-changed = 自你厂上次确认的第 { $revision } 版以来有 { $count } 处变更。
acknowledge-what = 确认即表示：我们已阅读本版，并且只按本版工作。
acknowledge-button = 确认第 { $revision } 版
acknowledge-others = 请跟单员确认。

## The size chart

chart-title = 尺寸表
chart-caption = 尺寸表，{ $unit }
chart-units = 所有数值单位为 { $unit }。小字为 { $other }，仅供参考。
chart-changed = 带下划线的数值自你厂上次确认的第 { $revision } 版以来有变更；旧值已划去。
chart-size = 尺码
chart-point = 测量部位
chart-base = 基码
chart-tolerance = 公差

## How to measure

how-title = 测量方法
how-from = 从
how-to = 到
how-way = 方式
how-relaxed = 自然放平
how-stretched = 拉开

## Parts and colourways

parts-approximate = 屏幕颜色仅供参考，以色号为准。
parts-colourway = 配色
parts-part = 部件

## Words beside a name

about-must-fix = { $count } 项必须修改
about-open = { $count } 项未解决
about-new = 新增
about-changed = 有变更

## Warnings that were accepted

accepted-title = 品牌方已接受的警告
accepted-reason = 原因：

## Signing

sign-not-shared = 此款式还没有共享给工厂。
sign-acknowledged = { $time } UTC 已确认
