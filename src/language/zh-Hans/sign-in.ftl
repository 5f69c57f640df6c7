### Signing in and out, setting up, invitations.

sign-in-title = 登录
sign-in-login = 电子邮箱或登录名
sign-in-password = 密码
sign-in-wrong = 名称或密码不正确。请再试。
sign-in-code = 我有另一台设备上的代码
sign-in-lost = 没有密码？请邀请你的人给一个新链接。

set-up-title = 设置 Fellseam
set-up-what = 你是这里的第一人。请写上品牌和你的姓名：你将成为负责人。
set-up-brand = 品牌名称
set-up-name = 你的姓名
set-up-button = 设置

join-title = 进入
join-for = 此链接给 { $name }
join-as = 你将以 { $org } 的 { $role } 身份进入。
join-name = 你的姓名
join-button = 进入
join-once = 此链接只能用一次。按下按钮之前不会用掉。

spent-title = 此链接无效
spent-why = 它已被使用过，或已过期。

code-title = 另一台设备上的代码
code-label = 代码
code-where = 在另一台设备上打开“我的页面”，选择“显示代码”。
code-wrong = 代码不正确，或已过期。请生成新代码。
code-button = 进入

me-title = 我的页面
me-about = 关于我
me-save = 保存
me-second = 第二台设备
me-second-what = 无需新链接，即可在手机或电脑上打开 Fellseam。
me-second-button = 显示代码
me-code-title = 第二台设备的代码
me-code-how = 在另一台设备上打开 { $address } 并输入此代码。只能用一次，十分钟内有效。
me-code-qr = 打开输入代码的页面
me-password = 密码
me-password-what = 有密码后，无需链接也能登录。设置密码会使其他设备全部退出。
me-password-old = 当前密码
me-password-new = 新密码
me-password-button = 设置密码
me-out = 全部退出
me-out-what = 结束你在所有设备上的登录。
me-out-sure = 这台设备也会退出。再次进入需要密码或新的链接。
me-out-button = 全部退出
