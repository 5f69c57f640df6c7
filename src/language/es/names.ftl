### What the program's own values are called.

## Sections of a spec

section-header = Encabezado
section-sizes = Tallas
section-drawings = Dibujos
section-points = Puntos de medida
section-colourways = Partes y variantes de color
section-materials = Materiales
section-construction = Confección
section-artwork = Gráficos
section-labels = Etiquetas y cuidado
section-packing = Empaque

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = Recién cosida
measured-after-finish = Después del acabado de la prenda
measured-after-washes = { $count ->
    [one] Después de { $count } lavado
   *[other] Después de { $count } lavados
}

## Units

unit-cm = cm
unit-mm = mm
unit-inch = pulgada

## Drawings


## Points of measure


## Readiness

severity-error = Error
severity-warning = Aviso

## Who takes part

side-brand = Marca
side-factory = Fábrica
role-owner = Propietario
role-designer = Diseñador
role-viewer = Lector
role-merchandiser = Responsable del pedido
role-sample-room = Sala de muestras
role-inspector = Inspector

## Revisions

standing-current = Vigente
standing-superseded = Reemplazada
standing-withdrawn = Retirada
agreement-shared = Compartida
agreement-acknowledged = Lectura confirmada
agreement-signed-by-factory = Firmada por la fábrica
agreement-signed-by-brand = Firmada por la marca
agreement-signed-by-both = Firmada por ambas partes

## Threads

thread-kind-question = pregunta
thread-kind-must-fix = corrección obligatoria
thread-kind-suggestion = sugerencia
thread-kind-concession = solicitud de concesión
thread-state-open = abierta
thread-state-answered = respondida
thread-state-agreed = acordada
thread-state-changed = cambiada en la revisión { $revision }
thread-state-verified = verificada en una muestra de la revisión { $revision }
thread-state-closed = cerrada
thread-state-granted = concedida

## Sample rounds

round-kind-proto = Prototipo
round-kind-fit = Prueba de ajuste
round-kind-size-set = Set de tallas
round-kind-pre-production = Preproducción
round-kind-top-of-production = Inicio de producción (TOP)
round-state-requested = pedida
round-state-in-work = en proceso
round-state-dispatched = enviada
round-state-received = recibida
round-state-measured = medida
round-materials-actual = los materiales de la ficha
round-materials-substitute = materiales sustitutos
round-outcome-approved = aprobada
round-outcome-approved-with-changes = aprobada con cambios
round-outcome-remake = rehacer
round-outcome-cancelled = cancelada
wash-before = Antes del lavado
wash-after = Después del lavado
skip-absent = Esta pieza no lo tiene
skip-unfinished = Todavía sin coser
skip-damaged = La pieza está dañada aquí
skip-unclear = No entiendo cómo medirlo

## Bulk inspections

inspection-critical = crítico
inspection-major = mayor
inspection-minor = menor
inspection-open = en curso
inspection-accepted = aceptado
inspection-rejected = rechazado
inspection-released = liberado
inspection-concession = pasa con concesión
inspection-rework = devuelto para reparar
inspection-refused = no se toma

## Acts in the ledger

act-create = Modelo iniciado
act-publish = Revisión publicada
act-withdraw = Revisión retirada
act-share = Compartido con una fábrica
act-unshare = Fin de compartir con la fábrica
act-acknowledge = Lectura de la revisión confirmada
act-ask = Conversación abierta
act-message = Mensaje enviado
act-thread-move = Conversación avanzada
act-request-round = Ronda de muestras pedida
act-round-move = Ronda de muestras avanzada
act-measure = Medida tomada
act-skip = Punto omitido
act-photograph = Pieza fotografiada
act-decide = Ronda de muestras decidida
act-submit = Opción presentada
act-approve = Opción decidida
act-seal = Muestra sellada
act-begin-inspection = Inspección de producción empezada
act-inspect = Pieza inspeccionada
act-conclude-inspection = Inspección de producción concluida
act-decide-inspection = Lote decidido
act-sign = Firmado
act-translate = Traducido
act-translate-message = Mensaje traducido
act-erase = Texto personal borrado
