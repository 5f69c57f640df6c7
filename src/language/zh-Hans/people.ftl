### People, factories and invitations.

people-title = 人员
people-name = 姓名
people-role = 角色
people-org = 单位
people-acts = 可执行的操作
people-left = 无权限
people-new-link = 新链接
people-end = 取消权限
people-end-what = { $name } 会立即在所有设备上退出，并且无法再进入。其写过和签过的内容保留。此操作无法撤回：如需恢复，请重新邀请。
people-add = 邀请人员
people-add-button = 生成链接
people-inspector = 第三方的检验员加入其所检验批次的工厂。他们看到该工厂所看到的：版本、讨论和样衣轮次；没有价格，也看不到其他工厂。
people-factory = 添加工厂
people-factory-name = 工厂名称
people-factory-button = 添加工厂
people-link-for = 给 { $name } 的链接
people-link-how = 只把此链接发给本人，不要发给别人。七天内有效，只能用一次。现在是唯一一次显示。
people-link-label = 链接
people-link-qr = 或用对方手机扫码
people-link-unreachable = 此地址只能在本机打开。请用 --public-url 启动程序，以便为他人生成链接。
