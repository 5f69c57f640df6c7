### Threads, messages and questions.

## An item of a revision

item-back = Revisión { $revision }
item-close = Volver
item-mark = { $letter }, { $name }
item-values = El valor de cada talla en { $unit }, y debajo en { $other }
item-tolerance = Tolerancia
item-from = Desde
item-to = Hasta
item-path = Cómo va la cinta
item-relaxed = sin estirar
item-stretched = estirado
item-note = Nota
item-basis = Medido
item-key = punto clave
item-critical = punto crítico
item-colours = El color en cada variante
item-not-said = no indicado
item-superseded = Reemplazada
item-superseded-why = No cosa según la revisión { $revision }.
item-newer = Lea esto en la revisión { $revision }, la vigente
item-withdrawn = Retirada
item-withdrawn-why = No cosa según la revisión { $revision }: { $reason }
item-current = La revisión { $revision } es la vigente
item-removed = Eliminado
item-removed-why = La revisión { $revision } ya no tiene esto. Lo que se dijo queda aquí.

## Colour patches

patch-approximate = color de pantalla aproximado

## Threads on an item

threads-heading = Preguntas y correcciones obligatorias
threads-none = Nadie ha preguntado por esto todavía.
thread-asked-by = Planteada por { $person }
thread-asked-by-brand = Planteada por { $person }, de la marca
thread-asked-by-factory = Planteada por { $person }, { $factory }
thread-asked-of-factory = Planteada por { $person }, con { $factory }
thread-raised-on = planteada en la revisión { $revision }
thread-next-you-answer = Ahora le toca responder a usted.
thread-next-you-read = Hay una respuesta. Cierre, o escriba lo que sigue abierto.
thread-next-you-change = Ahora usted lo cambia en el borrador y publica.
thread-next-you-verify = Ahora usted lo revisa en una muestra.
thread-next-answer = Sigue: { $who } responde.
thread-next-read = Sigue: { $who } lee la respuesta.
thread-next-change = Sigue: { $who } lo cambia y publica una revisión.
thread-next-verify = Sigue: { $who } lo revisa en una muestra.
thread-text-erased = (texto borrado)
thread-photo-erased = (foto borrada)
thread-photo = Foto { $number }
thread-photo-taken = tomada el { $when }

## Writing

thread-answer = Su mensaje
thread-send = Enviar
thread-translated = { $language }, traducido por { $who }
thread-translate = Traducir este mensaje
thread-translate-into = Idioma
thread-translation = Traducción
thread-translate-help = Queda debajo del mensaje con su nombre. Lo que cuenta es el mensaje mismo.
thread-translate-button = Ponerla junto al mensaje
thread-refused = No se envió.
thread-photos = Fotos
thread-photos-help = Hasta { $count }, en JPEG, PNG o WebP. No se guardan el lugar ni el remitente.
thread-draw = Dibujar en esta foto
thread-draw-circle = Círculo
thread-draw-arrow = Flecha
thread-draw-dimension = Cota
thread-draw-value = Valor
thread-draw-undo = Deshacer
thread-agree = De acuerdo
thread-mark-changed = Se cambió en la revisión { $revision }
thread-verify = Está bien en la ronda de muestras { $number }, { $kind }
thread-close-question = Cerrar la pregunta
thread-close-must-fix = Cerrar la corrección obligatoria
thread-close-suggestion = Cerrar la sugerencia
thread-decline = Rechazar la solicitud
thread-take-back = Retirar la solicitud
thread-reopen = Volver a abrir
thread-grant = Aceptar como está
thread-grant-final = Las firmas pueden apoyarse en esto: no se puede deshacer.

## Asking

ask-heading = Preguntar por esto
ask-kind = ¿Qué es?
ask-question-help = Hace falta una respuesta para seguir el trabajo.
ask-must-fix-help = Tiene que cambiar. Nadie firma antes.
ask-suggestion-help = Se podría hacer de mejor manera.
ask-concession-help = La fábrica pide que algo se acepte como está.
ask-factory = ¿Qué fábrica?
ask-factory-choose = Elija una fábrica
ask-text = Su mensaje
ask-send = Enviar
ask-alone = Este modelo todavía no se comparte con ninguna fábrica, así que no hay a quién preguntar.
ask-alone-share = Compartir el modelo

## Ready sentences

ready-title = Frases listas
ready-what = La otra parte lee la frase en su propio idioma.
ready-how = Envíe una como está o elija una y complete lo que falta.
ready-other = Otra frase
ready-mark = frase lista
ready-slot-length = Medida, { $unit }
ready-slot-spec = Lo que dice la ficha, { $unit }
ready-slot-item = Sobre qué
ready-slot-other = Y el otro
ready-slot-material = Material
ready-slot-size = Talla
ready-slot-date = Fecha
ready-slot-until = Hasta
ready-slot-count = Número
ready-slot-percent = Por ciento
ready-slot-revision = Revisión
ready-slot-wrong = Esto no encaja aquí. Escríbalo o elíjalo otra vez.

## Live pages

live-new = Hay algo nuevo en esta página.
live-show = Mostrar
live-lost = Sin conexión. Esta página puede estar desactualizada. Intentando de nuevo.
live-unsent = Sin conexión: no se envió. Envíelo otra vez.
