### Mails about what waits for somebody, and who wants them.

mail-subject = 有 { $count } 件事等您处理
mail-hello = { $name }，您好，以下事项等您处理：
mail-chain = 记录簿：{ $entries } 条，最后一条的哈希值为
mail-why = 有新事项等您处理时，您会收到此邮件。可在您的页面更改：
me-mail = 邮件
me-mail-what = 有新事项等您处理时发一封邮件。留空则不发。
me-mail-address = 电子邮箱
error-mail-address = 请填写电子邮箱，例如 name@example.org，或留空。
