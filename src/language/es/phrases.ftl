### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = Preguntas
phrase-group-answer = Respuestas
phrase-group-fix = Lo que debe cambiar
phrase-group-measuring = Medición
phrase-group-material = Materiales
phrase-group-date = Fechas
phrase-group-shipping = Envío

## Questions

phrase-ask-how-measured = ¿Cómo se mide { $item }? Muestre dónde empieza y dónde termina.
phrase-ask-which-right = { $item }: el dibujo y el texto difieren. ¿Cuál es el correcto?
phrase-ask-photo = Envíe una foto de { $item }.
phrase-ask-larger-drawing = Envíe un dibujo más grande de { $item }.
phrase-ask-value = El valor de { $item } en la talla { $size } no está claro. ¿Cuál es?
phrase-ask-stitch = ¿Qué tipo de puntada es el correcto para { $item }?
phrase-ask-allowance = ¿Cuánto margen de costura necesita { $item }?
phrase-ask-place = ¿Dónde va exactamente { $item }? ¿Desde qué costura se mide?
phrase-ask-colour = ¿Qué referencia de color es la correcta para { $item }?
phrase-ask-revision = ¿Trabajamos según la revisión { $revision }?
phrase-ask-order = ¿Podemos coser { $item } antes de { $other }?
phrase-ask-sample = Envíe una muestra de { $item }.

## Answers

phrase-answer-yes = Sí.
phrase-answer-no = No.
phrase-answer-spec = La ficha es correcta. Trabaje según ella.
phrase-answer-drawing = El dibujo es correcto. Se cambiará el texto.
phrase-answer-text = El texto es correcto. Se cambiará el dibujo.
phrase-answer-value = { $item }, talla { $size }: el valor correcto es { $value }.
phrase-answer-next = Se cambiará en la próxima revisión. Espérela.
phrase-answer-changed = Se cambió en la revisión { $revision }.
phrase-answer-go-on = Continúe. Esto no detiene el trabajo.
phrase-answer-stop = Detenga el trabajo en { $item } hasta que esto se resuelva.
phrase-answer-understood = Entendido. Lo haremos así.
phrase-answer-allowance = Use { $value } de margen de costura en { $item }.
phrase-answer-distance = Coloque { $item } a { $value } de { $other }.

## What must change

phrase-fix-large = { $item } es { $value } más grande. Déjelo en la medida de la ficha.
phrase-fix-small = { $item } es { $value } más pequeño. Déjelo en la medida de la ficha.
phrase-fix-density = { $item }: cosa { $count } puntadas por cm.
phrase-fix-twisted = La costura en { $item } está torcida. Cósala plana.
phrase-fix-puckers = La costura en { $item } se frunce. Revise la tensión del hilo.
phrase-fix-skipped = Hay puntadas saltadas en { $item }.
phrase-fix-ends = Corte las puntas de hilo en { $item }.
phrase-fix-bartack = Falta una presilla en { $item }.
phrase-fix-place = { $item } está en el lugar equivocado. Muévalo { $value }.
phrase-fix-turned = { $item } está cosido al revés.
phrase-fix-sides = Izquierda y derecha difieren { $value } en { $item }. Iguálelas.
phrase-fix-colour = El color de { $item } no es el aprobado.
phrase-fix-print = El estampado en { $item } se agrieta o se despega.
phrase-fix-stain = Hay manchas en { $item }. Mantenga limpias las piezas.
phrase-fix-label = El texto en { $item } es incorrecto. Use el texto de la ficha.

## Measuring

phrase-measured-says = { $item }: medido { $value }, la ficha dice { $spec }.
phrase-measured-size = { $item }, talla { $size }: medido { $value }.
phrase-measured-shrinks = { $item } encoge { $percent } % al lavar.
phrase-measured-grows = { $item } crece { $percent } % al lavar.
phrase-measure-again = Mida { $item } otra vez, en plano y sin estirar.
phrase-measured-half = { $item } se midió en plano: media vuelta.
phrase-measured-stretched = { $item }, estirado: medido { $value }.
phrase-measured-allowance = El patrón necesita { $value } más de margen de costura en { $item }.
phrase-measured-tolerance = La tolerancia de { $item } no se puede mantener. Podemos mantener { $value }.
phrase-measured-vary = Las piezas difieren entre sí { $value } en { $item }.

## Materials

phrase-material-instead = ¿Podemos usar { $material } en lugar de { $other }?
phrase-material-none = { $material } no está disponible.
phrase-material-arrives = { $material } llega el { $date }.
phrase-material-shade = El tono de { $material } difiere de la muestra de color aprobada.
phrase-material-dip-sent = La muestra de color de { $material } se envió el { $date }.
phrase-material-dip-approve = Apruebe la muestra de color de { $material }.
phrase-material-minimum = El pedido mínimo de { $material } es más de lo que necesitamos.
phrase-material-width = El ancho de { $material } es { $value }.
phrase-material-shrinks = { $material } encoge { $percent } %.
phrase-material-keep = No. Use { $material } como dice la ficha.
phrase-material-take = Sí. Puede usar { $material }.
phrase-material-short = { $material }: faltan { $count } unidades.

## Dates

phrase-date-ready = Las muestras están listas el { $date }.
phrase-date-late = Llevamos { $count } días de retraso.
phrase-date-need = Necesitamos las muestras a más tardar el { $date }.
phrase-date-answer = Responda a más tardar el { $date }. Después el trabajo se detiene.
phrase-date-cutting = El corte empieza el { $date }.
phrase-date-sewn = La costura termina el { $date }.
phrase-date-closed = La fábrica cierra del { $date } al { $until }.
phrase-date-confirm = Confirme esta fecha: { $date }.

## Shipping

phrase-ship-sent = Enviadas el { $date }: { $count } piezas.
phrase-ship-arrived = Llegaron el { $date }: { $count } piezas.
phrase-ship-cartons = Número de cajas: { $count }.
phrase-ship-missing = Faltan en el paquete: { $count } piezas.
phrase-ship-damaged = El paquete llegó dañado.
phrase-ship-address = Confirme la dirección del paquete.
phrase-ship-papers = Envíe los documentos de aduana.
