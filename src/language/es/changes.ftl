### What changed from one version of a spec to another.

change-added = añadido: { $what }
change-removed = eliminado: { $what }
change-moved = cambió de lugar en la lista
change-mark-moved = cambió de lugar: { $what }
change-relettered = cambió de letra
change-changed = cambiado
change-regraded = valores cambiados

change-what-size = talla
change-what-length = largo
change-what-drawing = dibujo
change-what-letter = letra
change-what-line = línea de cota
change-what-circle = círculo
change-what-point = punto de medida
change-what-part = parte
change-what-colourway = variante de color
change-what-material = material
change-what-seam = costura o línea
change-what-callout = indicación de costura
change-what-artwork = gráfico
change-what-label = etiqueta
change-what-step = paso de empaque
change-what-pack = paquete surtido

change-yes = sí
change-no = no
change-empty = vacío
change-place = posición { $place }
change-spot = { $left } % desde la izquierda, { $top } % desde arriba
change-item = { $letter } { $name }
change-on-drawing = en el dibujo { $drawing }
change-in-colourway = en la variante { $colourway }
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = añadido: { $value }
change-list-removed = eliminado: { $value }
change-line = de { $from } a { $to }
change-line-curved = de { $from } a { $to }, en curva por { $via }
change-blow-up = { $drawing } en { $spot }
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-rule = Regla de escalado { $range }
change-grade-same = igual en todas las tallas
change-grade-segment = { $range } { $step }
change-grade-more = { $point } más { $offset }
change-grade-less = { $point } menos { $offset }

change-sizes-none = ningún valor cambia
change-sizes-all = { $count ->
    [one] cambia la única talla
   *[other] cambian las { $count } tallas
}
change-sizes-some = { $count ->
    [one] 1 talla cambia
   *[other] { $count } tallas cambian
}
change-sizes-not-base = { $count ->
    [one] 1 talla cambia, la base { $base } no
   *[other] { $count } tallas cambian, la base { $base } no
}
change-follows = sigue a { $point }

change-told = { $subject }: { $what }
change-from-to = { $old } → { $new }
change-effect = { $what } ({ $effect })
change-size = { $size } { $value } { $unit }

cell-none = ninguno
cell-natural = color natural
cell-dyed-to-match = teñido a juego con { $part }

colour-on = sobre { $substrate }
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
