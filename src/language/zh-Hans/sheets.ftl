### Sheets: what is written into them.

sheet-download = 下载 { $kind }
sheet-draft = 草稿
sheet-base = 基码 { $size }
sheet-chart = 尺寸表
sheet-grading = 放码
sheet-in-cm = 厘米
sheet-in-inches = 英寸
sheet-further = 其他数值
sheet-materials = 物料
sheet-yes = 是
sheet-offset = 加减量
sheet-gap = { $from } 至 { $to } 档差
sheet-what = 说明
sheet-wastage = 损耗，%
sheet-needed = 需要量
sheet-kilograms = kg
sheet-pieces = 各尺码计划件数

## What cannot be read

sheet-too-large = 文件太大。请发送最大 8 MB、只含所需工作表的文件。
sheet-unknown = 这不是表格。请发送 XLSX 或 CSV 文件。
sheet-unsupported = 这里不读取 { $what }。请另存为 XLSX 后发送。
sheet-encoding = 无法识别此文本的编码。请另存为“CSV UTF-8”或 XLSX。
sheet-too-far = { $cell } 超出了 { $rows } 行和 { $columns } 列。请删去不需要的内容。
sheet-too-many-cells = 填写的格子超过 { $most } 个。请只发送所需的工作表。
sheet-too-many-sheets = 文件中的工作表超过 { $most } 个。请只发送所需的那个。
sheet-too-long = { $cell } 中超过 { $most } 个字符。
sheet-nothing = 此文件是空的。
sheet-too-heavy = 读取此文件耗时过长。请把所需的工作表另存为新的 XLSX 文件后发送。
sheet-broken = 文件已损坏。请重新保存后再发送。
sheet-failed = 暂时无法读取此文件。请再试一次。
