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
