### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ é a palavra do programa na sua língua, não conferida por falante nativo. Vale o que a marca escreveu. Depois de = vem a tradução da própria marca.
later-title = Traduzido de novo depois que esta revisão foi publicada. O original não mudou.

## Drawings

drawing-larger = Ampliado: { $drawing }
legend-point = ponto de medida
legend-part = parte
legend-callout = como é costurado
legend-artwork = arte
legend-label = etiqueta
legend-larger = ampliado no desenho desse número
legend-dimension = o que um ponto mede

## A rule that an owner sets aside

exemption-title = Uma regra não se aplica aqui: { $code }
exemption-reason = Motivo: { $reason }
exemption-by = Quem diz: { $name }

## Sizes

lengths-caption = Comprimentos, { $unit }
sizes-ages = Idades
sizes-years = { $from } a { $to } anos
sizes-months = { $from } a { $to } meses
sizes-range = { $from } a { $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = { $count ->
    [one] { $count } peça planejada
   *[other] { $count } peças planejadas
}
parts-as-dyed = Depois de tingido

## Materials

materials-material = Material
materials-what = O que é
materials-where = Onde vai
materials-length = Comprimento e consumo
materials-supply = Fornecimento
materials-care = Suporta no máximo
materials-parts = Cor de

## Construction

construction-callout = O que se costura
construction-larger = Ampliado
construction-stitch = Ponto e costura
construction-measures = Distâncias
construction-with = Linha, fita, travetes
construction-per-inch = { $count } por polegada
construction-lines = Costuras, bordas e linhas

## Artwork

artwork-sizes = { $from } a { $to }
artwork-all-sizes = Todos os tamanhos
artwork-true-size = { $width } × { $height } mm
artwork-placed = Posição
artwork-original = Arquivo original
artwork-no-picture = Não há imagem deste arquivo. Baixe o original.

## Labels

labels-care = Conservação, na ordem da etiqueta
labels-signs = Os pequenos sinais são uma ajuda na tela. Não são os símbolos de conservação da etiqueta.

## Packing

packing-steps = Passos
packing-packs = Pacotes sortidos: peças de cada tamanho
packing-pack = Pacote
packing-every-colourway = todas as variantes de cor
packing-total = Total

## An item without a name

sheet-item = sem nome

## To be dyed

dyeing-title = A tingir para as peças planejadas
dyeing-substrate = Sobre
dyeing-colour = Cor
dyeing-kilograms = kg
dyeing-of = Para
dyeing-undyed = fica sem tingir
dyeing-not-whole = Não incluído nestes quilos:
dyeing-lacks-pieces = não se diz quantas peças estão planejadas
dyeing-lacks-parts = não se diz quais partes ele forma
dyeing-lacks-colour = não se diz a cor
dyeing-parts-differ = as partes têm cores diferentes
dyeing-lacks-consumption = não se diz quanto uma peça consome
dyeing-lacks-unit = contado em peças, sem massa
dyeing-lacks-mass = não se diz a massa por metro quadrado
dyeing-lacks-width = não se diz a largura total
dyeing-lacks-wastage = não se diz a perda
dyeing-too-large = os números são grandes demais

## What composition labels say

composition-title = Composição, para as etiquetas
composition-draft = Um rascunho do programa. Quem responde pela etiqueta confere.
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
