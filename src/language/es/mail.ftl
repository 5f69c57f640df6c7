### Mails about what waits for somebody, and who wants them.

mail-subject = { $count ->
    [one] Una cosa le espera
   *[other] { $count } cosas le esperan
}
mail-hello = Hola { $name }, esto le espera:
mail-chain = Registro: { $entries } entradas, la última con el hash
mail-why = Recibe este correo cuando algo nuevo le espera. Cámbielo en su página:
me-mail = Correo
me-mail-what = Un correo cuando algo nuevo le espera. Déjelo vacío para no recibir ninguno.
me-mail-address = Dirección de correo
error-mail-address = Escriba una dirección de correo como name@example.org, o déjela vacía.
