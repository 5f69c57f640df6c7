### Mails about what waits for somebody, and who wants them.

mail-subject = { $count ->
    [one] One thing waits for you
   *[other] { $count } things wait for you
}
mail-hello = Hello { $name }, this waits for you:
mail-chain = Ledger: { $entries } entries, the last with the hash
mail-why = You get this mail when something new waits for you. Change that on your page:
me-mail = Mail
me-mail-what = One mail when something new waits for you. Leave it empty to get none.
me-mail-address = E-mail address
error-mail-address = Write an e-mail address such as name@example.org, or leave it empty.
