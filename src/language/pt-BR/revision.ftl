### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = Li esta revisão. Minha fábrica vai fazer o modelo de acordo com ela.
statement-revision-brand = Esta revisão é o que pedimos. Vamos julgar por ela o que chegar.
statement-round-factory = Li a decisão sobre esta rodada de amostras. Minha fábrica vai trabalhar de acordo com ela.
statement-round-brand = Esta é a nossa decisão sobre esta rodada de amostras.
statement-seal-factory = As peças citadas aqui estão lacradas. Minha fábrica fará a produção por elas e pela revisão.
statement-seal-brand = As peças citadas aqui estão lacradas. Julgaremos a produção por elas e pela revisão.

## A revision

revision-number = Revisão { $revision }
revision-reason = Por que foi publicada

## What changed

changes-title = O que mudou na revisão { $revision }
changes-since = Em comparação com a revisão { $revision }.
changes-acknowledged = É a última que a sua fábrica confirmou.
changes-none = Nada mudou desde a revisão { $revision }.
changes-first = Esta é a primeira revisão. Não há anterior para comparar.
changes-compare = Comparar com outra revisão
changes-with = Com a revisão { $revision }
changes-read = Ler a revisão { $revision }

## The revision page

revision-what-changed = O que mudou
revision-to-signatures = Assinaturas
revision-current = A revisão { $revision } está em vigor
revision-published = Publicada em { $date } por { $name }
revision-superseded = Substituída
revision-superseded-stop = Não costure por esta.
revision-withdrawn = Retirada
revision-withdrawn-why = Pare. Não costure por esta: { $reason }
revision-use = Use a revisão { $revision }
revision-see-changes = Ver o que mudou
revision-none-current = Nenhuma revisão está em vigor. Espere a marca publicar uma nova.
revision-original = Arquivo original
revision-tap = Escolha uma letra para ler ou perguntar. ? é uma pergunta em aberto, ! é uma correção obrigatória em aberto.
revision-style = Modelo
revision-revision = Revisão
revision-fingerprint = Impressão digital
revision-date = Publicada em
revision-by = Publicada por
revision-state = Estado
revision-compare = Comparar
revision-measured = { $state } · no plano e sem esticar · { $edges }. Um ponto pode dizer outra coisa.
revision-contents = Nesta página
revision-others = Outras revisões e downloads
revision-archive = Baixar a revisão inteira (ZIP)
revision-archive-what = O documento e os arquivos originais que ela mostra, byte a byte.
revision-document = Baixar o documento desta revisão (JSON)
revision-document-what = Os bytes exatos de que a impressão digital é feita.

## Acknowledging

acknowledge-not-yet = Sua fábrica não confirmou a revisão { $revision }.
acknowledge-changed = { $count ->
    [one] { $count } alteração desde a revisão { $revision }, a última que a sua fábrica confirmou.
   *[other] { $count } alterações desde a revisão { $revision }, a última que a sua fábrica confirmou.
}
acknowledge-what = Ao confirmar, você diz: lemos esta revisão e não trabalhamos por nenhuma outra.
acknowledge-button = Confirmar a revisão { $revision }
acknowledge-others = Peça ao responsável pelo pedido que confirme.

## The size chart

chart-title = Tabela de medidas
chart-caption = Tabela de medidas, { $unit }
chart-units = Todos os valores em { $unit }. Os números pequenos são em { $other }, só para referência.
chart-changed = Os valores sublinhados mudaram desde a revisão { $revision }, a última que a sua fábrica confirmou; o valor antigo está riscado.
chart-size = Tamanho
chart-point = Ponto de medida
chart-base = base
chart-tolerance = Tolerância

## How to measure

how-title = Como medir
how-from = De
how-to = Até
how-way = Como
how-relaxed = Sem esticar
how-stretched = Esticado

## Parts and colourways

parts-approximate = As cores na tela são aproximadas. A referência é que vale.
parts-colourway = Variante de cor
parts-part = Parte

## Words beside a name

about-must-fix = { $count ->
    [one] { $count } correção obrigatória
   *[other] { $count } correções obrigatórias
}
about-open = { $count } em aberto
about-new = novo
about-changed = alterado

## Warnings that were accepted

accepted-title = Avisos que a marca aceitou
accepted-reason = Motivo:

## Signing

sign-not-shared = Este modelo não foi compartilhado com nenhuma fábrica ainda.
sign-acknowledged = Confirmada em { $time } UTC
