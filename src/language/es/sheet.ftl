### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ es la palabra del programa en su idioma, sin revisar por un hablante nativo. Vale lo que escribió la marca. Tras = está la traducción de la propia marca.
later-title = Traducido de nuevo después de publicarse esta revisión. El original no ha cambiado.

## Drawings

drawing-larger = Ampliado: { $drawing }
legend-point = punto de medida
legend-part = parte
legend-callout = cómo se cose
legend-artwork = gráfico
legend-label = etiqueta
legend-larger = ampliado en el dibujo de ese número
legend-dimension = lo que mide un punto

## A rule that an owner sets aside

exemption-title = Una regla no se aplica aquí: { $code }
exemption-reason = Motivo: { $reason }
exemption-by = Lo dice: { $name }

## Sizes

lengths-caption = Largos, { $unit }
sizes-ages = Edades
sizes-years = { $from } a { $to } años
sizes-months = { $from } a { $to } meses
sizes-range = { $from } a { $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = { $count ->
    [one] 1 pieza prevista
   *[other] { $count } piezas previstas
}
parts-as-dyed = Ya teñido

## Materials

materials-material = Material
materials-what = Qué es
materials-where = Dónde va
materials-length = Largo y consumo
materials-supply = Suministro
materials-care = Soporta como máximo
materials-parts = Color de

## Construction

construction-callout = Qué se cose
construction-larger = Ampliado
construction-stitch = Puntada y costura
construction-measures = Distancias
construction-with = Hilo, cinta, presillas
construction-per-inch = { $count } por pulgada
construction-lines = Costuras, bordes y líneas

## Artwork

artwork-sizes = { $from } a { $to }
artwork-all-sizes = Todas las tallas
artwork-true-size = { $width } × { $height } mm
artwork-placed = Ubicación
artwork-original = Archivo original
artwork-no-picture = No hay imagen de este archivo. Descargue el original.

## Labels

labels-care = Cuidado, en el orden de la etiqueta
labels-signs = Los signos pequeños son una ayuda en la pantalla. No son los símbolos de cuidado de la etiqueta.

## Packing

packing-steps = Pasos
packing-packs = Paquetes surtidos: piezas de cada talla
packing-pack = Paquete
packing-every-colourway = todas las variantes de color
packing-total = Total

## An item without a name

sheet-item = sin nombre

## To be dyed

dyeing-title = Por teñir para las piezas previstas
dyeing-substrate = Sobre
dyeing-colour = Color
dyeing-kilograms = kg
dyeing-of = Para
dyeing-undyed = se queda sin teñir
dyeing-not-whole = No incluido en estos kilos:
dyeing-lacks-pieces = no se dice cuántas piezas se prevén
dyeing-lacks-parts = no se dice qué partes forma
dyeing-lacks-colour = no se dice su color
dyeing-parts-differ = sus partes tienen colores distintos
dyeing-lacks-consumption = no se dice cuánto necesita una prenda
dyeing-lacks-unit = contado en piezas, sin masa
dyeing-lacks-mass = no se dice la masa por metro cuadrado
dyeing-lacks-width = no se dice el ancho total
dyeing-lacks-wastage = no se dice la merma
dyeing-too-large = sus números son demasiado grandes

## What composition labels say

composition-title = Composición, para las etiquetas
composition-draft = Un borrador del programa. Quien responde por la etiqueta lo revisa.
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
