### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = Perguntas
phrase-group-answer = Respostas
phrase-group-fix = O que deve mudar
phrase-group-measuring = Medição
phrase-group-material = Materiais
phrase-group-date = Datas
phrase-group-shipping = Envio

## Questions

phrase-ask-how-measured = Como se mede { $item }? Mostre onde começa e onde termina.
phrase-ask-which-right = { $item }: o desenho e o texto diferem. Qual está certo?
phrase-ask-photo = Envie uma foto de { $item }.
phrase-ask-larger-drawing = Envie um desenho maior de { $item }.
phrase-ask-value = O valor de { $item } no tamanho { $size } não está claro. Qual é?
phrase-ask-stitch = Qual tipo de ponto é o certo para { $item }?
phrase-ask-allowance = Quanta margem de costura { $item } precisa?
phrase-ask-place = Onde exatamente vai { $item }? De qual costura se mede?
phrase-ask-colour = Qual referência de cor é a certa para { $item }?
phrase-ask-revision = Devemos trabalhar pela revisão { $revision }?
phrase-ask-order = Podemos costurar { $item } antes de { $other }?
phrase-ask-sample = Envie uma amostra de { $item }.

## Answers

phrase-answer-yes = Sim.
phrase-answer-no = Não.
phrase-answer-spec = A ficha está certa. Trabalhe de acordo com ela.
phrase-answer-drawing = O desenho está certo. O texto será alterado.
phrase-answer-text = O texto está certo. O desenho será alterado.
phrase-answer-value = { $item }, tamanho { $size }: o valor certo é { $value }.
phrase-answer-next = Será alterado na próxima revisão. Espere por ela.
phrase-answer-changed = Foi alterado na revisão { $revision }.
phrase-answer-go-on = Continue. Isto não para o trabalho.
phrase-answer-stop = Pare o trabalho em { $item } até isto ser resolvido.
phrase-answer-understood = Entendido. Vamos fazer assim.
phrase-answer-allowance = Use { $value } de margem de costura em { $item }.
phrase-answer-distance = Coloque { $item } a { $value } de { $other }.

## What must change

phrase-fix-large = { $item } está { $value } maior. Deixe na medida da ficha.
phrase-fix-small = { $item } está { $value } menor. Deixe na medida da ficha.
phrase-fix-density = { $item }: costure { $count } pontos por cm.
phrase-fix-twisted = A costura em { $item } está torcida. Costure plano.
phrase-fix-puckers = A costura em { $item } franze. Verifique a tensão da linha.
phrase-fix-skipped = Há pontos falhados em { $item }.
phrase-fix-ends = Apare as pontas de linha em { $item }.
phrase-fix-bartack = Falta um travete em { $item }.
phrase-fix-place = { $item } está no lugar errado. Desloque { $value }.
phrase-fix-turned = { $item } está costurado ao contrário.
phrase-fix-sides = Esquerda e direita diferem { $value } em { $item }. Iguale.
phrase-fix-colour = A cor de { $item } não é a aprovada.
phrase-fix-print = A estampa em { $item } racha ou descola.
phrase-fix-stain = Há manchas em { $item }. Mantenha as peças limpas.
phrase-fix-label = O texto em { $item } está errado. Use o texto da ficha.

## Measuring

phrase-measured-says = { $item }: medido { $value }, a ficha diz { $spec }.
phrase-measured-size = { $item }, tamanho { $size }: medido { $value }.
phrase-measured-shrinks = { $item } encolhe { $percent } % na lavagem.
phrase-measured-grows = { $item } cresce { $percent } % na lavagem.
phrase-measure-again = Meça { $item } de novo, no plano e sem esticar.
phrase-measured-half = { $item } foi medido no plano: meia volta.
phrase-measured-stretched = { $item }, esticado: medido { $value }.
phrase-measured-allowance = O molde precisa de mais { $value } de margem de costura em { $item }.
phrase-measured-tolerance = A tolerância de { $item } não pode ser mantida. Podemos manter { $value }.
phrase-measured-vary = As peças diferem entre si { $value } em { $item }.

## Materials

phrase-material-instead = Podemos usar { $material } em vez de { $other }?
phrase-material-none = { $material } não está disponível.
phrase-material-arrives = { $material } chega em { $date }.
phrase-material-shade = O tom de { $material } difere da amostra de cor aprovada.
phrase-material-dip-sent = A amostra de cor de { $material } foi enviada em { $date }.
phrase-material-dip-approve = Aprove a amostra de cor de { $material }.
phrase-material-minimum = O pedido mínimo de { $material } é maior do que precisamos.
phrase-material-width = A largura de { $material } é { $value }.
phrase-material-shrinks = { $material } encolhe { $percent } %.
phrase-material-keep = Não. Use { $material } como diz a ficha.
phrase-material-take = Sim. Pode usar { $material }.
phrase-material-short = { $material }: faltam { $count } unidades.

## Dates

phrase-date-ready = As amostras ficam prontas em { $date }.
phrase-date-late = Estamos { $count } dias atrasados.
phrase-date-need = Precisamos das amostras até { $date }.
phrase-date-answer = Responda até { $date }. Depois disso o trabalho para.
phrase-date-cutting = O corte começa em { $date }.
phrase-date-sewn = A costura termina em { $date }.
phrase-date-closed = A fábrica fecha de { $date } a { $until }.
phrase-date-confirm = Confirme esta data: { $date }.

## Shipping

phrase-ship-sent = Enviadas em { $date }: { $count } peças.
phrase-ship-arrived = Chegaram em { $date }: { $count } peças.
phrase-ship-cartons = Número de caixas: { $count }.
phrase-ship-missing = Faltam no pacote: { $count } peças.
phrase-ship-damaged = O pacote chegou danificado.
phrase-ship-address = Confirme o endereço do pacote.
phrase-ship-papers = Envie os documentos da alfândega.
