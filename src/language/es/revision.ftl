### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = He leído esta revisión. Mi fábrica hará el modelo según ella.
statement-revision-brand = Esta revisión es lo que pedimos. Según ella juzgaremos lo que llegue.
statement-round-factory = He leído la decisión sobre esta ronda de muestras. Mi fábrica trabajará según ella.
statement-round-brand = Esta es nuestra decisión sobre esta ronda de muestras.
statement-seal-factory = Las piezas nombradas aquí están selladas. Mi fábrica hará la producción según ellas y según la revisión.
statement-seal-brand = Las piezas nombradas aquí están selladas. Juzgaremos la producción por ellas y por la revisión.

## A revision

revision-number = Revisión { $revision }
revision-reason = Por qué se publicó

## What changed

changes-title = Qué cambió en la revisión { $revision }
changes-since = En comparación con la revisión { $revision }.
changes-acknowledged = Es la última que su fábrica confirmó.
changes-none = Nada cambió desde la revisión { $revision }.
changes-first = Esta es la primera revisión. No hay anterior con que comparar.
changes-compare = Comparar con otra revisión
changes-with = Con la revisión { $revision }
changes-read = Leer la revisión { $revision }

## The revision page

revision-what-changed = Qué cambió
revision-to-signatures = Firmas
revision-current = La revisión { $revision } es la vigente
revision-published = Publicada el { $date } por { $name }
revision-superseded = Reemplazada
revision-superseded-stop = No cosa según esta.
revision-withdrawn = Retirada
revision-withdrawn-why = Alto. No cosa según esta: { $reason }
revision-use = Use la revisión { $revision }
revision-see-changes = Ver qué cambió
revision-none-current = Ninguna revisión está vigente. Espere a que la marca publique una nueva.
revision-original = Archivo original
revision-tap = Elija una letra para leer o preguntar. ? es una pregunta abierta, ! es una corrección obligatoria abierta.
revision-style = Modelo
revision-revision = Revisión
revision-fingerprint = Huella
revision-date = Publicada el
revision-by = Publicada por
revision-state = Estado
revision-compare = Comparar
revision-measured = { $state } · en plano y sin estirar · { $edges }. Un punto puede decir otra cosa.
revision-contents = En esta página
revision-others = Otras revisiones y descargas
revision-archive = Descargar la revisión entera (ZIP)
revision-archive-what = Su documento y los archivos originales que muestra, byte a byte.
revision-document = Descargar el documento de esta revisión (JSON)
revision-document-what = Los bytes exactos de los que sale la huella.

## Acknowledging

acknowledge-not-yet = Su fábrica no ha confirmado la revisión { $revision }.
acknowledge-changed = { $count ->
    [one] 1 cambio desde la revisión { $revision }, la última que su fábrica confirmó.
   *[other] { $count } cambios desde la revisión { $revision }, la última que su fábrica confirmó.
}
acknowledge-what = Al confirmar, usted dice: hemos leído esta revisión y no trabajamos con ninguna otra.
acknowledge-button = Confirmar la revisión { $revision }
acknowledge-others = Pida al responsable del pedido que la confirme.

## The size chart

chart-title = Tabla de medidas
chart-caption = Tabla de medidas, { $unit }
chart-units = Todos los valores en { $unit }. Los números pequeños son en { $other }, solo de referencia.
chart-changed = Los valores subrayados cambiaron desde la revisión { $revision }, la última que su fábrica confirmó; el valor anterior está tachado.
chart-size = Talla
chart-point = Punto de medida
chart-base = base
chart-tolerance = Tolerancia

## How to measure

how-title = Cómo medir
how-from = Desde
how-to = Hasta
how-way = Cómo
how-relaxed = Sin estirar
how-stretched = Estirado

## Parts and colourways

parts-approximate = Los colores en pantalla son aproximados. Manda la referencia.
parts-colourway = Variante de color
parts-part = Parte

## Words beside a name

about-must-fix = { $count ->
    [one] 1 corrección obligatoria
   *[other] { $count } correcciones obligatorias
}
about-open = { $count } sin resolver
about-new = nuevo
about-changed = cambiado

## Warnings that were accepted

accepted-title = Avisos que la marca aceptó
accepted-reason = Motivo:

## Signing

sign-not-shared = Este modelo todavía no se comparte con ninguna fábrica.
sign-acknowledged = Confirmada el { $time } UTC
