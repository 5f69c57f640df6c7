### What stands around every page: title, navigation, footer.

frame-skip = 跳到正文
frame-nav = 主菜单
frame-sign-out = 退出
frame-foot = 由 Fellseam 制作

nav-needs = 待我处理
nav-styles = 款式
nav-people = 人员
nav-me = 我的页面

language-label = 语言
language-unchecked = 由程序作者翻译，尚未经母语者核对：{ $languages }。
name-erased = （姓名已删除）

## What the form before this page has done

said-saved = 已保存。
said-made = 已建立。
said-restored = 本部分已恢复到当时的内容。
said-published = 已发布。
said-shared = 已共享。
said-unshared = 已停止共享。
said-withdrawn = 已撤回。
said-acknowledged = 已确认收到。
said-signed = 已签字。
said-sent = 已发送。
said-photographed = 照片已添加。
said-translated = 译文已附在消息旁。
said-moved = 完成。
said-measured = 测量值已保存。
said-decided = 已作决定。
said-sealed = 已封样。
said-begun = 已开始。
said-concluded = 已作结论。
said-ended = 此人已不能登录。

## What needs me

needs-none = 没有待你处理的事。
needs-since = 自 { $date } 起
needs-styles = 你的款式
needs-no-styles = 还没有款式共享给你。品牌方准备好后会共享。
needs-newest = 第 { $revision } 版
need-acknowledge = 阅读并确认第 { $revision } 版
need-sign-revision = 签署第 { $revision } 版
need-sign-revision-blocked = 第 { $revision } 版：签字前请先看还有什么未解决
need-answer = 请回复：{ $kind }
need-read-answer = 请看回复：{ $kind }
need-change = 在下一版中修改：{ $kind }
need-round-start = 开始第 { $number } 轮样衣，{ $kind }
need-round-measure = 测量并寄出第 { $number } 轮样衣，{ $kind }
need-round-receive = 确认第 { $number } 轮样衣已收到，{ $kind }
need-round-check = 测量第 { $number } 轮样衣，{ $kind }
need-round-decide = 对第 { $number } 轮样衣作决定，{ $kind }
need-round-sign-blocked = 第 { $number } 轮样衣，{ $kind }：签字前请先看还有什么未解决
need-round-sign = 签署第 { $number } 轮样衣的决定，{ $kind }
need-approvals-decide = 对提交批核的样品作决定：{ $count }
need-approvals-submit = 提交需要批核的内容：{ $count }
need-sign-seal = 为第 { $number } 轮样衣的封样签字，{ $kind }
need-sign-seal-blocked = 第 { $number } 轮样衣的封样，{ $kind }：签字前请看还有什么未解决
need-inspection = 检验大货：检验 { $number }
need-inspection-decide = 对大货检验 { $number } 的批次作决定
need-inspection-again = 返修大货检验 { $number } 的批次并再次检验

frame-working = 正在处理。本页会自动继续。
frame-sending = 正在发送文件：{ $files } 个，{ $size } MB。本页会自动继续。
