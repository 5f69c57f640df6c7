### What the program's own values are called.

## Sections of a spec

section-header = 表头
section-sizes = 尺码
section-drawings = 款式图
section-points = 测量部位
section-colourways = 部件和配色
section-materials = 物料
section-construction = 缝制工艺
section-artwork = 图案
section-labels = 标签和洗护
section-packing = 包装

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = 缝制后未后整理
measured-after-finish = 成衣后整理后
measured-after-washes = 洗 { $count } 次后

## Units

unit-cm = cm
unit-mm = mm
unit-inch = 英寸

## Drawings


## Points of measure


## Readiness

severity-error = 错误
severity-warning = 警告

## Who takes part

side-brand = 品牌方
side-factory = 工厂
role-owner = 负责人
role-designer = 设计师
role-viewer = 只读者
role-merchandiser = 跟单员
role-sample-room = 样衣间
role-inspector = 检验员

## Revisions

standing-current = 现行
standing-superseded = 已被新版取代
standing-withdrawn = 已撤回
agreement-shared = 已共享
agreement-acknowledged = 已确认
agreement-signed-by-factory = 工厂已签字
agreement-signed-by-brand = 品牌方已签字
agreement-signed-by-both = 双方已签字

## Threads

thread-kind-question = 问题
thread-kind-must-fix = 必须修改
thread-kind-suggestion = 建议
thread-kind-concession = 让步申请
thread-state-open = 未解决
thread-state-answered = 已回复
thread-state-agreed = 已同意
thread-state-changed = 第 { $revision } 版已修改
thread-state-verified = 已在第 { $revision } 版的样衣上核实
thread-state-closed = 已关闭
thread-state-granted = 准予让步

## Sample rounds

round-kind-proto = 头样
round-kind-fit = 试身样
round-kind-size-set = 齐码样
round-kind-pre-production = 产前样
round-kind-top-of-production = 大货首件样 (TOP)
round-state-requested = 已要求
round-state-in-work = 制作中
round-state-dispatched = 已寄出
round-state-received = 已收到
round-state-measured = 已测量
round-materials-actual = 规格书规定的材料
round-materials-substitute = 代用材料
round-outcome-approved = 批准
round-outcome-approved-with-changes = 修改后批准
round-outcome-remake = 重做
round-outcome-cancelled = 取消
wash-before = 水洗前
wash-after = 水洗后
skip-absent = 这件没有此部位
skip-unfinished = 尚未缝制
skip-damaged = 此处有破损
skip-unclear = 不明白怎么量

## Bulk inspections

inspection-critical = 致命
inspection-major = 严重
inspection-minor = 轻微
inspection-open = 进行中
inspection-accepted = 接收
inspection-rejected = 拒收
inspection-released = 已放行
inspection-concession = 让步放行
inspection-rework = 退回返修
inspection-refused = 不收

## Acts in the ledger

act-create = 开始款式
act-publish = 发布版本
act-withdraw = 撤回版本
act-share = 共享给工厂
act-unshare = 停止与工厂共享
act-acknowledge = 确认版本
act-ask = 提出讨论
act-message = 发送留言
act-thread-move = 讨论有进展
act-request-round = 要求样衣
act-round-move = 样衣有进展
act-measure = 已测量
act-skip = 漏量说明
act-photograph = 样衣照片
act-decide = 样衣已决定
act-submit = 已提交样品
act-approve = 样品已决定
act-seal = 已封样
act-begin-inspection = 已开始大货检验
act-inspect = 已检验一件
act-conclude-inspection = 大货检验已作结论
act-decide-inspection = 批次已作决定
act-sign = 已签字
act-translate = 已翻译
act-translate-message = 消息译文
act-erase = 个人文字已删除
