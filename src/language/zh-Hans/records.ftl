### The signed record of a revision or a round.

record-title = 签署记录
record-link = 签署记录
record-round = 第 { $number } 轮
record-round-head = 样衣轮次
record-download = 下载记录
record-what = 谁在何时签署了什么，以及记载此事的台账条目。下载的文件带有本服务的签名，多年以后仍可在任何一台机器上核对。
record-style = 款式
record-made = 写成时间
record-digest = 所签内容的哈希值
record-nothing = 尚未作出决定。
record-names = 签署人
record-unsigned = 还没有人签署。
record-moved = 签署之后有数值更正；当时签署的是：
record-chain = 台账
record-chain-what = 写成时台账共有 { $count } 条。以下各条记载此事，每条都带有前一条的哈希值。
record-head = 台账末尾
record-how = 核对
record-how-what = 程序无需联网即可核对文件，并指出被改动的数值：
record-key = 本服务的公钥。请在别处另存一份，以免被人替换：
