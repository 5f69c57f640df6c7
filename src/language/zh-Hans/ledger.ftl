### Who did what when.

ledger-title = 台账
ledger-what = 对此款式所做的一切。这里的内容从不更改或删除：每条记录都带有前一条的哈希值。
ledger-part = 你看到与你厂有关的记录；其他记录的编号略去。
ledger-length = 记录数
ledger-end = 最后一条的哈希值
ledger-with = 与 { $factory }
ledger-brand-only = 仅限品牌方
ledger-program = 程序
ledger-each = 每个数值
ledger-none = 还没有任何操作。

## What was done

deed-create = { $who } 开始了此款式。
deed-publish = { $who } 发布了第 { $revision } 版。
deed-withdraw = { $who } 撤回了第 { $revision } 版。
deed-share = { $who } 将此款式共享给 { $factory }。
deed-unshare = { $who } 停止与 { $factory } 共享。
deed-acknowledge = { $who } 确认了第 { $revision } 版。
deed-ask = { $who } 就 { $item }（第 { $revision } 版）提出：{ $kind }。
deed-message = { $photos ->
    [0] { $who } 留言：{ $kind }，{ $item }。
   *[other] { $who } 留言：{ $kind }，{ $item }，附 { $photos } 张照片。
}
deed-thread = { $move ->
    [agree] { $who } 同意：{ $kind }，{ $item }。
    [reopen] { $who } 重新打开：{ $kind }，{ $item }。
    [grant] { $who } 准予让步：{ $kind }，{ $item }。
    [verify] { $who } 在样衣上确认已改好：{ $kind }，{ $item }。
   *[close] { $who } 关闭：{ $kind }，{ $item }。
}
deed-thread-changed = { $who } 在第 { $revision } 版中落实：{ $kind }，{ $item }。
deed-round = 第 { $number } 轮（{ $kind }）
deed-round-request = { $who } 要求{ $round }：{ $count } 件，按第 { $revision } 版。
deed-round-start = { $who } 开始{ $round }。
deed-round-dispatch = { $who } 寄出{ $round }的样衣。
deed-round-receive = { $who } 收到{ $round }的样衣。
deed-round-measured = { $who } 完成{ $round }的测量。
deed-round-continue = { $who } 在已有第 { $revision } 版的情况下继续{ $round }。
deed-measure = { $who } 测量 { $item }：{ $value }，{ $round }第 { $piece } 件。
deed-measure-many = { $who } 在{ $round }测量了 { $count } 个数值。
deed-skip = { $who } 未量 { $item }，{ $round }第 { $piece } 件：{ $reason }。
deed-photograph = { $who } 添加了{ $round }第 { $piece } 件的照片。
deed-decide = { $who } 对{ $round }作出决定：{ $outcome }。
deed-submit = { $who } 为 { $item }（{ $kind }）提交了样品 { $option }。
deed-approve = { $verdict ->
    [approved] { $who } 批准了 { $item }（{ $kind }）的样品 { $option }。
   *[rejected] { $who } 没有通过 { $item }（{ $kind }）的样品 { $option }。
}
deed-seal = { $who } 封存了{ $round }的样衣：{ $count }。
deed-inspection-begin = { $who } 开始了大货检验 { $number }。本批件数：{ $count }。
deed-inspect = { $who } 在大货检验 { $number } 中检验了第 { $piece } 件。
deed-inspect-many = { $who } 在大货检验 { $number } 中检验的件数：{ $count }。
deed-inspection-conclude = { $who } 对大货检验 { $number } 作出结论：{ $outcome }。
deed-inspection-decide = { $who } 对大货检验 { $number } 作出决定：{ $decision }。
deed-sign-revision = { $who } 签署了第 { $revision } 版。
deed-sign-round = { $who } 签署了{ $round }。
deed-sign-seal = { $who } 签署了{ $round }的封样。
deed-translate = { $count ->
   *[other] { $who } 把 { $count } 处文字译成了{ $language }。
}
deed-translate-message = { $who } 为“{ $item }”的{ $kind }中的一条消息附上了译文（{ $language }）。
deed-erase = 某人的姓名、留言和照片已删除。其哈希值保留。
