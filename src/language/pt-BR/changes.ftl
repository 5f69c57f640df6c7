### What changed from one version of a spec to another.

change-added = adicionado: { $what }
change-removed = removido: { $what }
change-moved = mudou de lugar na lista
change-mark-moved = mudou de lugar: { $what }
change-relettered = mudou de letra
change-changed = alterado
change-regraded = valores alterados

change-what-size = tamanho
change-what-length = comprimento
change-what-drawing = desenho
change-what-letter = letra
change-what-line = linha de cota
change-what-circle = círculo
change-what-point = ponto de medida
change-what-part = parte
change-what-colourway = variante de cor
change-what-material = material
change-what-seam = costura ou linha
change-what-callout = indicação de costura
change-what-artwork = arte
change-what-label = etiqueta
change-what-step = passo de embalagem
change-what-pack = pacote sortido

change-yes = sim
change-no = não
change-empty = vazio
change-place = posição { $place }
change-spot = { $left } % da esquerda, { $top } % do alto
change-item = { $letter } { $name }
change-on-drawing = no desenho { $drawing }
change-in-colourway = na variante { $colourway }
change-by-item = { $item } { $value }
change-range = { $from }–{ $to }
change-amount = { $value } { $unit }
change-list-added = adicionado: { $value }
change-list-removed = removido: { $value }
change-line = de { $from } até { $to }
change-line-curved = de { $from } até { $to }, em curva por { $via }
change-blow-up = { $drawing } em { $spot }
change-both-units = { $value } { $unit } ({ $other } { $other-unit })

change-rule = Regra de graduação { $range }
change-grade-same = igual em todos os tamanhos
change-grade-segment = { $range } { $step }
change-grade-more = { $point } mais { $offset }
change-grade-less = { $point } menos { $offset }

change-sizes-none = nenhum valor muda
change-sizes-all = { $count ->
    [one] o único tamanho muda ({ $count })
   *[other] todos os { $count } tamanhos mudam
}
change-sizes-some = { $count ->
    [one] { $count } tamanho muda
   *[other] { $count } tamanhos mudam
}
change-sizes-not-base = { $count ->
    [one] { $count } tamanho muda, a base { $base } não
   *[other] { $count } tamanhos mudam, a base { $base } não
}
change-follows = acompanha { $point }

change-told = { $subject }: { $what }
change-from-to = { $old } → { $new }
change-effect = { $what } ({ $effect })
change-size = { $size } { $value } { $unit }

cell-none = nenhuma
cell-natural = cor natural
cell-dyed-to-match = tingido para combinar com { $part }

colour-on = sobre { $substrate }
colour-lab = L* { $l } a* { $a } b* { $b } ({ $illuminant }, { $observer })
