### Threads, messages and questions.

## An item of a revision

item-back = Revisão { $revision }
item-close = Voltar
item-mark = { $letter }, { $name }
item-values = O valor de cada tamanho em { $unit }, e abaixo em { $other }
item-tolerance = Tolerância
item-from = De
item-to = Até
item-path = Como a fita fica
item-relaxed = sem esticar
item-stretched = esticado
item-note = Observação
item-basis = Medido
item-key = ponto-chave
item-critical = ponto crítico
item-colours = A cor em cada variante
item-not-said = não informado
item-superseded = Substituída
item-superseded-why = Não costure pela revisão { $revision }.
item-newer = Leia isto na revisão { $revision }, a que está em vigor
item-withdrawn = Retirada
item-withdrawn-why = Não costure pela revisão { $revision }: { $reason }
item-current = A revisão { $revision } está em vigor
item-removed = Removido
item-removed-why = A revisão { $revision } não tem mais isto. O que foi dito continua aqui.

## Colour patches

patch-approximate = cor da tela aproximada

## Threads on an item

threads-heading = Perguntas e correções obrigatórias
threads-none = Ninguém perguntou sobre isto ainda.
thread-asked-by = Aberta por { $person }
thread-asked-by-brand = Aberta por { $person }, da marca
thread-asked-by-factory = Aberta por { $person }, { $factory }
thread-asked-of-factory = Aberta por { $person }, com { $factory }
thread-raised-on = aberta na revisão { $revision }
thread-next-you-answer = Agora você responde.
thread-next-you-read = Há uma resposta. Encerre ou escreva o que ainda está em aberto.
thread-next-you-change = Agora você altera no rascunho e publica.
thread-next-you-verify = Agora você confere em uma amostra.
thread-next-answer = A seguir: { $who } responde.
thread-next-read = A seguir: { $who } lê a resposta.
thread-next-change = A seguir: { $who } altera e publica uma revisão.
thread-next-verify = A seguir: { $who } confere em uma amostra.
thread-text-erased = (texto apagado)
thread-photo-erased = (foto apagada)
thread-photo = Foto { $number }
thread-photo-taken = tirada em { $when }

## Writing

thread-answer = Sua mensagem
thread-send = Enviar
thread-translated = { $language }, traduzido por { $who }
thread-translate = Traduzir esta mensagem
thread-translate-into = Idioma
thread-translation = Tradução
thread-translate-help = Fica abaixo da mensagem com o seu nome. O que vale é a própria mensagem.
thread-translate-button = Pôr ao lado da mensagem
thread-refused = Não foi enviado.
thread-photos = Fotos
thread-photos-help = Até { $count }, em JPEG, PNG ou WebP. Lugar e remetente da foto não são guardados.
thread-draw = Desenhar nesta foto
thread-draw-circle = Círculo
thread-draw-arrow = Seta
thread-draw-dimension = Cota
thread-draw-value = Valor
thread-draw-undo = Desfazer
thread-agree = Concordar
thread-mark-changed = Foi alterado na revisão { $revision }
thread-verify = Está certo na rodada de amostras { $number }, { $kind }
thread-close-question = Encerrar a pergunta
thread-close-must-fix = Encerrar a correção obrigatória
thread-close-suggestion = Encerrar a sugestão
thread-decline = Recusar o pedido
thread-take-back = Retirar o pedido
thread-reopen = Reabrir
thread-grant = Aceitar como está
thread-grant-final = Assinaturas podem se apoiar nisto: não pode ser desfeito.

## Asking

ask-heading = Perguntar sobre isto
ask-kind = O que é?
ask-question-help = É preciso uma resposta para o trabalho continuar.
ask-must-fix-help = Tem que mudar. Ninguém assina antes disso.
ask-suggestion-help = Poderia ser feito de um jeito melhor.
ask-concession-help = A fábrica pede que algo seja aceito como está.
ask-factory = Qual fábrica?
ask-factory-choose = Escolha uma fábrica
ask-text = Sua mensagem
ask-send = Enviar
ask-alone = Este modelo não foi compartilhado com nenhuma fábrica ainda, então não há a quem perguntar.
ask-alone-share = Compartilhar o modelo

## Ready sentences

ready-title = Frases prontas
ready-what = O outro lado lê a frase no seu próprio idioma.
ready-how = Envie uma como está ou escolha uma e preencha o que falta.
ready-other = Outra frase
ready-mark = frase pronta
ready-slot-length = Medida, { $unit }
ready-slot-spec = O que a ficha diz, { $unit }
ready-slot-item = Sobre o quê
ready-slot-other = E o outro
ready-slot-material = Material
ready-slot-size = Tamanho
ready-slot-date = Data
ready-slot-until = Até
ready-slot-count = Número
ready-slot-percent = Por cento
ready-slot-revision = Revisão
ready-slot-wrong = Isto não serve aqui. Escreva ou escolha de novo.

## Live pages

live-new = Há novidade nesta página.
live-show = Mostrar
live-lost = Sem conexão. Esta página pode estar desatualizada. Tentando de novo.
live-unsent = Sem conexão: não foi enviado. Envie de novo.
