### Sheets: what is written into them.

sheet-download = Descargar { $kind }
sheet-draft = Borrador
sheet-base = Talla base { $size }
sheet-chart = Tabla de medidas
sheet-grading = Escalado
sheet-in-cm = En cm
sheet-in-inches = En pulgadas
sheet-further = Otros valores
sheet-materials = Materiales
sheet-yes = sí
sheet-offset = Añadido
sheet-gap = Paso de { $from } a { $to }
sheet-what = Qué es
sheet-wastage = Merma, %
sheet-needed = Necesario
sheet-kilograms = kg
sheet-pieces = Piezas previstas de cada talla

## What cannot be read

sheet-too-large = El archivo es demasiado grande. Envíe uno de 8 MB como máximo, solo con la hoja necesaria.
sheet-unknown = Esto no es una hoja de cálculo. Envíe un archivo XLSX o CSV.
sheet-unsupported = { $what } no se lee aquí. Guárdelo como XLSX y envíelo.
sheet-encoding = No se reconocen las letras de este texto. Guárdelo como “CSV UTF-8” o como XLSX.
sheet-too-far = { $cell } queda más allá de { $rows } filas y { $columns } columnas. Quite lo que no haga falta.
sheet-too-many-cells = Hay más de { $most } celdas llenas. Envíe solo la hoja necesaria.
sheet-too-many-sheets = El archivo tiene más de { $most } hojas. Envíe solo la necesaria.
sheet-too-long = { $cell } tiene más de { $most } letras.
sheet-nothing = No hay nada en este archivo.
sheet-too-heavy = Este archivo tarda demasiado en leerse. Envíe solo la hoja necesaria, guardada como archivo XLSX nuevo.
sheet-broken = El archivo está dañado. Guárdelo de nuevo y envíelo otra vez.
sheet-failed = El archivo no se pudo leer ahora. Inténtelo de nuevo.
