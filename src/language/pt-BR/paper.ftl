### Prints, and the page behind their code.

## The sheets

paper-identity = Identificação e alterações
paper-pattern = Modelagem
paper-cutting = Corte e materiais
paper-sewing = Costura
paper-artwork = Arte
paper-labels = Etiquetas e embalagem
paper-inspection = Inspeção
paper-nothing = Nada é dito aqui.
paper-left-out = Não anexado, pois os originais juntos passam de { $most } MB: { $names }. Baixe da página da revisão.
paper-page = Página
paper-changed = alterado desde a revisão { $revision }; o valor antigo está riscado
paper-scan = Esta impressão ainda vale? Leia o código.
paper-for = Impresso para
paper-printed = Impresso em
paper-band-draft = RASCUNHO. Não costure por este papel.
paper-band-superseded = SUBSTITUÍDA pela revisão { $revision }. Não costure por este papel.
paper-band-withdrawn = RETIRADA. Pare. Não costure por este papel.
paper-no-chart = Ainda não há tabela de medidas: faltam alguns valores.
paper-true-size = Imprima a 100 %. A régua deve medir 100 mm.
paper-larger = Esta página tem { $width } × { $height } mm, maior que as outras. Imprima a 100 % em papel grande ou em partes.
paper-found = Medido
paper-inspector = Inspetor
paper-day = Data
paper-pieces = Peças, amostra ou lote
paper-stage = Rodada
paper-how-to-fill = Escreva o que mediu ao lado de cada valor. Meça plano e relaxado, salvo se o ponto disser outra coisa.

## Where a print is asked for

print-title = Imprimir
print-what = Um PDF com as folhas que você escolher. Os originais dos desenhos e da arte vão anexados.
print-language = Idioma
print-second = Segundo idioma
print-one = Só um idioma
print-paper = Papel
print-sheets = Folhas
print-for = Impresso para
print-own = a própria marca
print-make = Fazer o PDF
print-no-address = Nada foi impresso: o código de cada página levaria apenas a esta máquina. Quem opera o programa define antes o endereço público.
print-no-font = Nada foi impresso: esta máquina não tem fonte para { $letters }. Quem a opera instala: { $packages }
print-failed = Não foi possível fazer o PDF. Tente com menos folhas.

## The page behind the code on a print

now-title = Esta impressão ainda vale?
now-current = Vigente
now-superseded = Substituída
now-withdrawn = Retirada
now-draft = Rascunho
now-go = Esta impressão é da revisão { $revision }, que está vigente.
now-stop = Não costure por este papel. A revisão { $revision } é mais nova.
now-draft-stop = Nunca se produz por um rascunho. Espere uma revisão publicada.
now-changes = { $count ->
    [one] { $count } alteração desde então
   *[other] { $count } alterações desde então
}
now-checked = Verificado às { $time } UTC
now-see = Ver a revisão
