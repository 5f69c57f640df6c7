### Signing in and out, setting up, invitations.

sign-in-title = Entrar
sign-in-login = Correo o nombre de acceso
sign-in-password = Contraseña
sign-in-wrong = El nombre o la contraseña no es correcto. Intente otra vez.
sign-in-code = Tengo un código de mi otro dispositivo
sign-in-lost = ¿Sin contraseña? Pida un enlace nuevo a quien le invitó.

set-up-title = Configurar Fellseam
set-up-what = Usted es la primera persona aquí. Escriba el nombre de su marca y el suyo: usted será el propietario.
set-up-brand = Nombre de la marca
set-up-name = Su nombre
set-up-button = Configurar

join-title = Entrar
join-for = Este enlace es para { $name }
join-as = Usted entra como { $role }, { $org }.
join-name = Su nombre
join-button = Entrar
join-once = El enlace funciona una vez. No se gasta hasta que pulse el botón.

spent-title = Este enlace no funciona
spent-why = Ya se usó o su plazo terminó.

code-title = Código de su otro dispositivo
code-label = Código
code-where = En el otro dispositivo, abra Mi página y elija Mostrar un código.
code-wrong = Este código no es correcto o su plazo terminó. Genere uno nuevo.
code-button = Entrar

me-title = Mi página
me-about = Sobre mí
me-save = Guardar
me-second = Segundo dispositivo
me-second-what = Abra Fellseam en su teléfono o computadora sin un enlace nuevo.
me-second-button = Mostrar un código
me-code-title = Código para su segundo dispositivo
me-code-how = Abra { $address } en el otro dispositivo y escriba este código. Funciona una vez, durante diez minutos.
me-code-qr = Abre la página donde se escribe el código
me-password = Contraseña
me-password-what = Con una contraseña puede entrar sin enlace. Al ponerla se cierra la sesión en los demás dispositivos.
me-password-old = Contraseña actual
me-password-new = Contraseña nueva
me-password-button = Poner contraseña
me-out = Salir en todas partes
me-out-what = Termina todas sus sesiones, en todos los dispositivos.
me-out-sure = También se cierra la sesión en este dispositivo. Para volver a entrar necesita su contraseña o un enlace nuevo.
me-out-button = Salir en todas partes
