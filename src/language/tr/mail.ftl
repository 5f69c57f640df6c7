### Mails about what waits for somebody, and who wants them.

mail-subject = { $count ->
    [one] Bir iş sizi bekliyor
   *[other] { $count } iş sizi bekliyor
}
mail-hello = Merhaba { $name }, bunlar sizi bekliyor:
mail-chain = Kayıt defteri: { $entries } kayıt, sonuncusunun özeti
mail-why = Sizi bekleyen yeni bir şey olunca bu e-posta gelir. Sayfanızda değiştirin:
me-mail = E-posta
me-mail-what = Sizi bekleyen yeni bir şey olunca bir e-posta. İstemiyorsanız boş bırakın.
me-mail-address = E-posta adresi
error-mail-address = name@example.org gibi bir e-posta adresi yazın ya da boş bırakın.
