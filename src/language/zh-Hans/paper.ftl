### Prints, and the page behind their code.

## The sheets

paper-identity = 款式与改动
paper-pattern = 版房
paper-cutting = 裁剪与物料
paper-sewing = 车缝
paper-artwork = 图案
paper-labels = 标签与包装
paper-inspection = 检验
paper-nothing = 此处没有内容。
paper-left-out = 未附上（原文件合计超过 { $most } MB）：{ $names }。请从该版页面下载。
paper-page = 页
paper-changed = 自第 { $revision } 版以来有改动；原值划掉
paper-scan = 这份打印件还有效吗？请扫码。
paper-for = 打印给
paper-printed = 打印时间
paper-band-draft = 草稿。请勿照此生产。
paper-band-superseded = 已被第 { $revision } 版取代。请勿照此生产。
paper-band-withdrawn = 已撤回。停止。请勿照此生产。
paper-no-chart = 还没有尺寸表：缺少一些数值。
paper-true-size = 请按 100 % 打印。尺子必须量得 100 mm。
paper-larger = 本页为 { $width } × { $height } mm，比其他页大。请用大纸按 100 % 打印，或分块打印。
paper-found = 实测
paper-inspector = 检验员
paper-day = 日期
paper-pieces = 件数、样衣或批次
paper-stage = 轮次
paper-how-to-fill = 请把量得的数写在每个数值旁边。除非该部位另有说明，平放、放松测量。

## Where a print is asked for

print-title = 打印
print-what = 一份 PDF，包含您选择的页。图纸和图案的原始文件附在其中。
print-language = 语言
print-second = 第二语言
print-one = 只用一种语言
print-paper = 纸张
print-sheets = 页面
print-for = 打印给
print-own = 品牌自己
print-make = 生成 PDF
print-no-address = 没有打印：每页上的二维码只会指向这台机器。请运行程序的人先设置公开地址。
print-no-font = 没有打印：这台机器没有 { $letters } 的字体。请运行程序的人安装：{ $packages }
print-failed = 无法生成 PDF。请少选几页再试。

## The page behind the code on a print

now-title = 这份打印件还有效吗？
now-current = 有效
now-superseded = 已被取代
now-withdrawn = 已撤回
now-draft = 草稿
now-go = 这份打印件是第 { $revision } 版，为现行版本。
now-stop = 请勿照此生产。第 { $revision } 版更新。
now-draft-stop = 草稿绝不能用于生产。请等待正式发布的版本。
now-changes = { $count ->
   *[other] 此后有 { $count } 处改动
}
now-checked = 查询时间 { $time } UTC
now-see = 查看该版本
