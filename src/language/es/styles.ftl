### The list of styles and one style.

styles-title = Modelos
styles-none = Todavía no hay modelos.
styles-style = Modelo
styles-newest = Revisión más nueva
styles-revision = Revisión { $revision }
styles-draft-only = solo borrador
styles-threads = Conversaciones abiertas
styles-rounds = Rondas de muestras abiertas
styles-create = Iniciar un modelo
styles-create-button = Iniciar el modelo

## One style

style-draft = Borrador
style-draft-first = Todavía no se publicó nada. Ninguna fábrica ve el borrador.
style-draft-differs = El borrador es distinto de la revisión más nueva. Ninguna fábrica lo ve hasta que usted publique.
style-draft-same = El borrador dice lo mismo que la revisión más nueva.
style-publish = Revisar y publicar
style-revisions = Revisiones
style-no-revisions = Todavía no se publicó ninguna revisión.
style-revision = Revisión { $number }
style-open-revision = Abrir la revisión { $number }
style-older = Revisiones anteriores
style-published = Publicada el
style-published-by = Publicada por
style-fingerprint = Huella
style-withdrawn-because = Alto. No trabaje según ella: { $reason }
style-acknowledged-by = Lectura confirmada por { $name }, { $date }
style-signed-factory = Firmada por la fábrica por { $name }, { $date }
style-signed-brand = Firmada por la marca por { $name }, { $date }
style-revision-head = Revisión
style-state = Estado
style-reason = Motivo
style-agreed = Acordado con
style-next = Sigue
style-next-you = usted
style-next-brand = la marca
style-factory = Fábrica
style-threads = Conversaciones abiertas
style-no-threads = No hay nada abierto.
style-thread-item = Sobre
style-thread-words = Qué se escribió
style-thread-open = Abrir
style-rounds = Rondas de muestras
style-no-rounds = Todavía no se pidieron muestras.
style-round-head = Ronda
style-round = { $kind }, ronda { $number }
style-ask-round = Pedir una ronda de muestras
style-shares = Compartido con
style-no-shares = Todavía no se comparte con una fábrica.
style-shared-since = Desde
style-share = Compartir con esta fábrica
style-share-ended = terminó el { $date }
style-unshare = Dejar de compartir
style-unshare-what = { $factory } ya no verá nada de este modelo: ni revisión, ni conversación, ni ronda.
style-acts = Qué puede hacer
style-withdraw = Retirar la revisión { $number }
style-withdraw-what = Cada página y cada impresión de ella dirá alto. No se puede deshacer. Ninguna revisión anterior la sustituye: publique una nueva.
style-withdraw-reason = ¿Por qué? Todos los que la lean ven su motivo.

copy-title = Copiar este modelo
copy-what = La copia empieza con todo lo que dice el borrador. Aprobaciones, exenciones, piezas y números de variantes no se copian; tampoco revisiones, conversaciones ni rondas.
copy-button = Empezar la copia
style-copy = Copiar a un modelo nuevo
style-copied-from = Copiado de
