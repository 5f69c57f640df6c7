### Mails about what waits for somebody, and who wants them.

mail-subject = { $count ->
    [one] { $count } coisa espera por você
   *[other] { $count } coisas esperam por você
}
mail-hello = Olá { $name }, isto espera por você:
mail-chain = Registro: { $entries } entradas, a última com o hash
mail-why = Você recebe este e-mail quando algo novo espera por você. Mude isso na sua página:
me-mail = E-mail
me-mail-what = Um e-mail quando algo novo espera por você. Deixe vazio para não receber.
me-mail-address = Endereço de e-mail
error-mail-address = Escreva um endereço de e-mail como name@example.org, ou deixe vazio.
