### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = 未输入。请写测量值，例如 28、28.5 或 28 1/2。
length-not-a-number = “{ $typed }”不是测量值。请写成 28、28.5 或 28 1/2。
length-unknown-unit = “{ $typed }”的单位不认识。请用 cm、mm 或 inch。
length-unit-missing = “{ $typed }”没有单位，工艺单也还没有单位。请在表头选择单位，或在此写明：28 cm。
length-may-be-thousands = “{ $typed }”可有两种读法。请不写千分位符号，或多写一位小数。
length-zero-divisor = “{ $typed }”的分母为零。请写成 28 1/2。
length-fraction-not-proper = “{ $typed }”的分数不小于一。请写成 28 1/2。
length-too-fine = “{ $typed }”过细，无法准确保存。请少写几位小数。
length-too-long = “{ $typed }”超过一公里。单位对吗？

## A grade rule that cannot be read

grade-unreadable = “{ $piece }”不是放码规则。请写：2（每个尺码），XS-L 2, L-2XL 2.5（按尺码段），same（各码相同），XS=50, S=52（数值），或 =C - 1.5（由 C 点推出）。
grade-two-readings = “{ $piece }”可有两种读法。有两个尺码或两个部位用了同一代码或字母。
grade-unknown-size = “{ $size }”不是已有的尺码。
grade-size-twice = 尺码“{ $size }”有两个数值。
grade-unknown-point = “{ $text }”没有以部位字母开头。请写 =C - 1.5。
grade-too-few-sizes = 还没有两个尺码。请先输入尺码，或写：same。

## Forms

error-missing = 请在此填写。
error-text-long = 太长。最多 { $most } 个字符。
error-number-taken = 已有款式用此款号。请另选一个。
error-size-code-signs = 尺码代码不能含逗号、分号或等号：放码规则要用到它们。
error-screen = “{ $typed }”不是屏幕颜色。请写成 #1f2a3c。
error-washes = 请写洗几次：1 到 99。
error-name-missing = 请写姓名。
error-name-long = 名称太长。最多 100 个字符。
error-login-missing = 请写用于登录的电子邮箱或名称。
error-login-taken = 已有人用此名称登录。请另选一个。
error-password-short = 至少写 { $count } 个字符。
error-password-long = 密码太长。最多 1000 个字符。
error-password-wrong = 这不是你的密码。
error-place-missing = 请选择角色。
error-kind-missing = 请选择类别。
error-factory-missing = 请选择工厂。
error-text-missing = 请写留言。
error-photos-many = 一次最多发送 { $count } 张照片。
error-decimal = “{ $typed }”不是数字。例如写 12.5。
error-choice-missing = 请选择一项。
incomparable-illuminants = 一个在 { $standard } 下测量，另一个在 { $sample } 下测量：这样的读数不能比较。请在同一光源下测量两者。
incomparable-observers = 一个按{ $standard }测量，另一个按{ $sample }测量：这样的读数不能比较。请按同一观察者测量两者。
incomparable-no-colour = 其中一个读数不是任何表面的颜色。请检查 L*、a* 和 b*。
incomparable-weight = 公式的权重不在 0.1 和 10 之间。
not-on-screen-no-colour = 没有表面有这种颜色。L* 为 0 至 150，a* 和 b* 为 −200 至 200。

## Pages

problem-heading = 未成功
problem-heading-refused = 还不行
problem-heading-not-found = 未找到
problem-home = 返回待我处理
problem-not-found = 没有此页，或没有共享给你。
problem-sign-in = 请先登录。
problem-not-yours = 角色“{ $role }”无权操作。请有权的人来做。
problem-forged = 此表单已过期，或不是从本站发出。请重新打开页面再发送一次。
problem-bad-form = 发送的内容无法读取。请重新打开页面再试一次。
problem-too-large = 内容太大，无法发送。
problem-too-many-tries = 错误次数太多。请等一刻钟。
problem-fault = 我方出现故障。已保存的内容没有丢失。请把此编号告诉 Fellseam 的管理人：{ $reference }

way-on-thread = 打开讨论 { $number }
way-on-current = 打开第 { $revision } 版
way-on-publish = 重新检查草稿
way-on-style = 返回款式

## Files

upload-too-large = 图片太大。请发不超过 5000 万像素的图片。
upload-not-a-picture = 此文件不是图片。请发 JPEG、PNG、WebP 或 SVG。
upload-unsupported = { $what } 图片无法显示。请发 JPEG、PNG、WebP 或 SVG。
upload-heic = 此手机把图片存为 HEIC。请在手机相机设置中选择“兼容性最佳”(JPEG)，再拍一次。
upload-too-heavy = 此图片绘制时间过长。请存成更简单的格式再发。
upload-broken = 图片已损坏。请重新保存再发一次。
upload-failed = 图片无法处理。请再试。
