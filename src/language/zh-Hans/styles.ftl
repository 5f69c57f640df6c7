### The list of styles and one style.

styles-title = 款式
styles-none = 还没有款式。
styles-style = 款式
styles-newest = 最新版本
styles-revision = 第 { $revision } 版
styles-draft-only = 仅有草稿
styles-threads = 未解决的讨论
styles-rounds = 进行中的样衣
styles-create = 新建款式
styles-create-button = 新建款式

## One style

style-draft = 草稿
style-draft-first = 还没有发布。工厂看不到草稿。
style-draft-differs = 草稿与最新版本不同。发布之前工厂看不到。
style-draft-same = 草稿与最新版本相同。
style-publish = 检查并发布
style-revisions = 版本
style-no-revisions = 还没有发布任何版本。
style-revision = 第 { $number } 版
style-open-revision = 打开第 { $number } 版
style-older = 较早的版本
style-published = 发布日期
style-published-by = 发布人
style-fingerprint = 指纹码
style-withdrawn-because = 停止。不要按它工作：{ $reason }
style-acknowledged-by = { $name } 已确认，{ $date }
style-signed-factory = { $name } 代表工厂签字，{ $date }
style-signed-brand = { $name } 代表品牌方签字，{ $date }
style-revision-head = 版本
style-state = 状态
style-reason = 原因
style-agreed = 与谁确认
style-next = 下一步
style-next-you = 你
style-next-brand = 品牌方
style-factory = 工厂
style-threads = 未解决的讨论
style-no-threads = 没有未解决的事项。
style-thread-item = 关于
style-thread-words = 内容
style-thread-open = 打开
style-rounds = 样衣
style-no-rounds = 还没有要求样衣。
style-round-head = 轮次
style-round = { $kind }，第 { $number } 轮
style-ask-round = 要求样衣
style-shares = 共享给
style-no-shares = 还没有共享给工厂。
style-shared-since = 自
style-share = 共享给此工厂
style-share-ended = { $date } 结束
style-unshare = 停止共享
style-unshare-what = { $factory } 将不再看到此款式的任何内容：版本、讨论和样衣都看不到。
style-acts = 可执行的操作
style-withdraw = 撤回第 { $number } 版
style-withdraw-what = 它的每一页和每份打印件都会显示停止。此操作不能收回。旧版本不会顶替：请发布新版本。
style-withdraw-reason = 为什么？看到它的人都会看到你的原因。

copy-title = 复制此款式
copy-what = 副本以草稿的全部内容开始。批准、豁免、件数和配色编号不复制；版本、讨论和样衣也不复制。
copy-button = 开始复制
style-copy = 复制为新款式
style-copied-from = 复制自
