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
