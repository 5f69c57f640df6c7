### Sample rounds and measuring.

rounds-title = { $kind }, ronda de muestras { $number }
rounds-revision = Revisión
rounds-factory = Fábrica
rounds-asked = Pedido
rounds-missing = Faltan
rounds-out = Fuera de tolerancia
rounds-critical-out = Puntos críticos fuera
rounds-values = Medidos
rounds-measured-of = { $measured } de { $count }

## Asking for a round

rounds-new-title = Pedir muestras
rounds-new-bound = La fábrica hace estas muestras según la revisión { $revision }.
rounds-choose = Elija una fábrica
rounds-factory-missing = Elija la fábrica.
rounds-kind = ¿Para qué son las muestras?
rounds-kind-proto-help = Las primeras piezas: ¿nos entendemos?
rounds-kind-fit-help = ¿Ajusta bien, y las medidas son correctas?
rounds-kind-size-set-help = Una pieza de cada talla: ¿el escalado es correcto?
rounds-kind-pre-production-help = Como se hará el pedido: materiales reales, línea real.
rounds-kind-top-of-production-help = Las primeras piezas del propio pedido.
rounds-pieces = ¿Cuántas piezas de cada talla?
rounds-count-wrong = Escriba un número entero de 0 a { $most }.
rounds-new-button = Pedir muestras
rounds-back-to-style = Volver al modelo
rounds-not-shared = Este modelo todavía no se comparte con una fábrica. Compártalo primero.
rounds-none-current = No hay revisión vigente. Publique una primero.

## What is next

rounds-next-start = Empiece el trabajo en estas muestras.
rounds-next-start-other = El responsable del pedido empieza el trabajo.
rounds-next-start-factory = Sigue: { $org } empieza el trabajo.
rounds-next-measure = { $count ->
    [one] Mida las piezas: falta { $count } valor.
   *[other] Mida las piezas: faltan { $count } valores.
}
rounds-next-dispatch = Todo está medido. Envíe las piezas y luego dígalo aquí.
rounds-next-dispatch-other = Todo está medido. El responsable del pedido envía las piezas.
rounds-next-in-work = { $org } hace y mide las piezas.
rounds-next-receive = Las piezas están en camino. Diga cuándo lleguen.
rounds-next-on-the-way = Las piezas están en camino. La marca avisa cuando lleguen.
rounds-next-check = Mida las piezas o revise los valores de la fábrica. Luego diga que la medición terminó.
rounds-next-check-other = La marca revisa las piezas.
rounds-next-decide = Decida sobre estas muestras.
rounds-next-decide-other = Sigue: la marca decide.
rounds-next-cancelled = Esta ronda se canceló. No queda nada por hacer.
rounds-next-sign = Lea la decisión y luego fírmela.
rounds-next-sign-blocked = Hay una pregunta abierta. Resuélvala y luego firme la decisión.
rounds-next-sign-other = Aún sin firmar por: { $side }.
rounds-next-done = Ambas partes firmaron. No queda nada por hacer.

rounds-move-start = Empezar el trabajo
rounds-move-dispatch = Las piezas se enviaron
rounds-move-receive = Las piezas llegaron
rounds-move-finish-measuring = Medición terminada
rounds-measure = Medir
rounds-correct = Corregir un valor
rounds-sign = Ir a las firmas
rounds-see-open = Ver qué está abierto
rounds-unfinished = { $count ->
    [one] Falta { $count } valor.
   *[other] Faltan { $count } valores.
}
rounds-unfinished-what = Nadie midió estos. Mídalos o siga sin ellos.
rounds-unfinished-piece = Pieza { $number }, talla { $size }
rounds-dispatch-anyway = Las piezas se enviaron, sin estos valores
rounds-finish-anyway = Terminar de todos modos

## A newer revision

rounds-newer = Existe la revisión { $revision }.
rounds-newer-bound = Estas muestras se hacen según la revisión { $revision }.
rounds-newer-wait = La marca dice si continúan.
rounds-newer-changes = Ver qué cambió
rounds-continue = Continuar con la revisión { $revision }
rounds-restart = Reiniciar con la revisión { $revision }
rounds-restart-sure = Esta ronda termina cancelada, y así queda. Lo que se midió en ella se conserva. Las mismas piezas se piden de nuevo enseguida, con la revisión { $revision }.
rounds-restart-reason = Reiniciada con la revisión { $revision }.

## Pieces and points

rounds-pieces-by-points = Medidas
rounds-caption = Unidad: { $unit }
rounds-pick-piece = Pieza
rounds-piece = Pieza { $number }
rounds-letter = Letra
rounds-point = Punto de medida
rounds-spec = Ficha
rounds-critical = crítico
rounds-critical-line = { $count ->
    [one] { $letter } { $name } es crítico, y está fuera de tolerancia en { $count } pieza.
   *[other] { $letter } { $name } es crítico, y está fuera de tolerancia en { $count } piezas.
}
rounds-not-yet = aún no
rounds-over = sobre la tolerancia
rounds-under = bajo la tolerancia
rounds-apart = Las dos partes difieren demasiado: primero acuerden cómo medir.
rounds-legend = ▲ sobre la tolerancia, ▼ bajo la tolerancia.
rounds-legend-both = Donde la marca midió, vale su valor.

## Deciding

rounds-decide = Decidir
rounds-stop = Detener esta ronda
rounds-outcome = ¿Qué decide?
rounds-outcome-missing = Elija qué decide.
rounds-approved-help = Las muestras están bien. Sin cambios.
rounds-approved-with-changes-help = Bien, salvo los cambios de abajo. Cada uno pasa a ser una corrección obligatoria de la próxima revisión.
rounds-remake-help = Haga estas muestras otra vez. Dé el motivo.
rounds-cancelled-help = Termine esta ronda sin resultado. Dé el motivo.
rounds-changes = Cambios
rounds-changes-help = Solo para aprobada con cambios. Quite la marca de lo que no necesita cambiar.
rounds-change-text = Qué debe cambiar en { $letter }
rounds-other-item = Otro cambio
rounds-no-item = Ninguno
rounds-other-text = Qué debe cambiar allí
rounds-reason = Motivo
rounds-reason-help = Ambas partes lo leen. Rehacer o cancelar necesita un motivo.
rounds-decide-button = Decidir
rounds-suggestion = { $pieces } Déjelo dentro de { $tolerance } { $unit }.
rounds-suggestion-piece = Pieza { $piece }, talla { $size }: medido { $measured }, la ficha dice { $spec } ({ $off }).

rounds-decided = Decisión
rounds-reason-erased = (motivo borrado)
rounds-must-fixes = Correcciones obligatorias de esta decisión
rounds-another = Pedir otra ronda

## Signing

sign-title = Firmas
sign-signed = firmado
sign-not-yet = aún sin firmar
sign-fingerprint = Huella
sign-as = Firmo como { $name }, { $role }
sign-button = Firmar
sign-blocked = Usted aún no puede firmar
sign-local = { $time }, hora local de quien firma
sign-to-acknowledge = Confirmar la lectura
sign-to-thread = Abrir { $kind }: { $item }

## History

rounds-history = Historial
rounds-did-request = { $count ->
    [one] pidió { $count } pieza de la revisión { $revision }.
   *[other] pidió { $count } piezas de la revisión { $revision }.
}
rounds-did-start = empezó el trabajo.
rounds-did-dispatch = envió las piezas.
rounds-did-receive = recibió las piezas.
rounds-did-finish-measuring = dijo que la medición terminó.
rounds-did-continue = sigue con estas muestras. La revisión { $revision } no las cambia.
rounds-did-measure = { $count ->
    [one] midió { $count } valor.
   *[other] midió { $count } valores.
}
rounds-did-decide = decidió: { $outcome }.
rounds-did-sign = firmó la decisión.
rounds-did-must-fix = creó una corrección obligatoria: { $letter } { $name }.

## Measuring on a phone

rounds-measure-title = Medir la pieza { $piece }
rounds-missing-count = { $count ->
    [0] todo medido
   *[other] faltan { $count }
}
rounds-back-to-round = Volver a { $kind }, ronda { $number }
rounds-progress = Puntos medidos de esta pieza
rounds-waiting = Aún sin enviar:
rounds-drop = Descartar
rounds-place = { $place } de { $count }
rounds-how = Desde { $start } hasta { $end }.
rounds-stretched = Estirado.
rounds-half = MEDIO
rounds-half-how = en plano
rounds-full = COMPLETO
rounds-full-how = todo alrededor
rounds-length = LARGO
rounds-value = Valor medido
rounds-save-next = Guardar, siguiente
rounds-kept = Esta página se abre de nuevo sin conexión.
rounds-plain = Sin HTTPS esta página no se abre de nuevo sin conexión. Lo que escribe se guarda igualmente.
rounds-save-anyway = Está bien: guardar
rounds-back = Atrás
rounds-next = Siguiente
rounds-skip = Saltar
rounds-skip-why = ¿Por qué no se mide?
rounds-skip-later = Después: punto siguiente
rounds-skipped = Sin medir:
rounds-state-spec = Como dice la especificación
rounds-state-is-spec = los números de la especificación
rounds-measure-in = Medir:
rounds-delete = Borrar
rounds-not-positive = Una medida es mayor que cero.
rounds-key-used = Este formulario ya se envió con otro valor. Mire el valor otra vez y guárdelo.

rounds-ask-doubled = { $value } es cerca del doble de la ficha. ¿Es la vuelta completa? Mida otra vez.
rounds-ask-halved = { $value } es cerca de la mitad de la ficha. ¿Es solo media vuelta? Mida otra vez.
rounds-ask-cm-as-inch = { $value } parece centímetros. Mida otra vez.
rounds-ask-inch-as-cm = { $value } parece pulgadas. Mida otra vez.
rounds-ask-ten-times = { $value } es cerca de diez veces la ficha. Mire el signo decimal.
rounds-ask-tenth = { $value } es cerca de un décimo de la ficha. Mire el signo decimal.
rounds-ask-other-size = Esta pieza corresponde mejor a la talla { $size }. Mire su etiqueta y mida otra vez.
rounds-ask-copied = Todos los valores son iguales a la ficha. ¿Se midieron o se copiaron?

## Sending the pieces

rounds-send-title = Enviar las piezas
rounds-send-materials = ¿De qué están hechas las piezas?
rounds-send-substitutes = ¿Qué sustitutos, en lugar de qué?
rounds-send-parcel = Mensajería y número de envío
rounds-send-materials-missing = Diga de qué están hechas las piezas.
rounds-materials = Materiales
rounds-parcel = Envío

## Washing

washes-title = Lavado
washes-what = Cambio de lo medido antes y después del lavado: (después − antes) / antes.
washes-rest = { $count ->
    [one] { $count } lugar más cambió no más de lo que explica la medición.
   *[other] { $count } lugares más cambiaron no más de lo que explica la medición.
}
washes-points = { $count ->
    [one] { $count } punto
   *[other] Cada uno de los { $count } puntos
}

## Photographs of pieces

photographs-title = Fotos de las piezas
photographs-add = Añadir fotos
photographs-add-button = Añadir
photographs-missing = Elija o haga una foto.
photographs-many = Una pieza tiene como máximo { $count } fotos.

## Every value side by side

readings-title = Todos los valores lado a lado
readings-state = Estado de las piezas
readings-wrong = No se guardó nada. Mire los valores marcados.
readings-asks = Todavía sin guardar. Mire esto otra vez:
readings-look = Todavía no se ha guardado nada. Mire los valores y después guarde.
readings-save = Guardar todo
readings-empty = Un campo vaciado conserva el valor que tiene.
readings-paste-title = Pegar o abrir una hoja
readings-paste = Valores de una hoja o de una carta
readings-paste-help = Una fila para cada punto, que empieza con su letra o su nombre. Las columnas de las piezas llevan encima el número de la pieza, o van en orden.
readings-file = O un archivo: XLSX o CSV
readings-first = Las columnas sin número empiezan con
readings-fill = Poner en los campos
readings-nothing-pasted = Pegue valores o elija un archivo.
readings-filled = { $count ->
    [one] Se puso { $count } valor en su campo.
   *[other] Se pusieron { $count } valores en sus campos.
}
readings-unknown = { $cell }: “{ $words }” no es un punto de esta tabla, o ya apareció. Sus valores quedaron fuera.
readings-unreadable = { $cell } no tiene un número que se pueda leer: la hoja puede haberlo convertido en fecha.
readings-no-points = Ninguna fila empieza con la letra o el nombre de un punto, y { $rows } filas no son los { $points } puntos de la tabla. Ponga las letras delante de los valores.
readings-columns = { $columns } columnas tienen valores, y hay { $pieces } piezas desde la elegida. Escriba el número de la pieza encima de cada columna.
readings-twice = Dos columnas son de la pieza { $piece }. Deje solo una.
