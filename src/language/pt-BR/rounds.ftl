### Sample rounds and measuring.

rounds-title = { $kind }, rodada de amostras { $number }
rounds-revision = Revisão
rounds-factory = Fábrica
rounds-asked = Pedido
rounds-missing = Faltam
rounds-out = Fora da tolerância
rounds-critical-out = Pontos críticos fora
rounds-values = Medidos
rounds-measured-of = { $measured } de { $count }

## Asking for a round

rounds-new-title = Pedir amostras
rounds-new-bound = A fábrica faz estas amostras pela revisão { $revision }.
rounds-choose = Escolha uma fábrica
rounds-factory-missing = Escolha a fábrica.
rounds-kind = Para que são as amostras?
rounds-kind-proto-help = As primeiras peças: estamos nos entendendo?
rounds-kind-fit-help = Veste bem, e as medidas estão certas?
rounds-kind-size-set-help = Uma peça de cada tamanho: a graduação está certa?
rounds-kind-pre-production-help = Como o pedido será feito: materiais reais, linha real.
rounds-kind-top-of-production-help = As primeiras peças do próprio pedido.
rounds-pieces = Quantas peças de cada tamanho?
rounds-count-wrong = Escreva um número inteiro de 0 a { $most }.
rounds-new-button = Pedir amostras
rounds-back-to-style = Voltar ao modelo
rounds-not-shared = Este modelo não foi compartilhado com uma fábrica ainda. Compartilhe primeiro.
rounds-none-current = Não há revisão em vigor. Publique uma primeiro.

## What is next

rounds-next-start = Comece a trabalhar nestas amostras.
rounds-next-start-other = O responsável pelo pedido inicia o trabalho.
rounds-next-start-factory = A seguir: { $org } começa o trabalho.
rounds-next-measure = { $count ->
    [one] Meça as peças: falta { $count } valor.
   *[other] Meça as peças: faltam { $count } valores.
}
rounds-next-dispatch = Tudo foi medido. Envie as peças e depois informe aqui.
rounds-next-dispatch-other = Tudo foi medido. O responsável pelo pedido envia as peças.
rounds-next-in-work = { $org } faz e mede as peças.
rounds-next-receive = As peças estão a caminho. Diga quando chegarem.
rounds-next-on-the-way = As peças estão a caminho. A marca avisa quando chegarem.
rounds-next-check = Meça as peças ou confira os valores da fábrica. Depois diga que a medição terminou.
rounds-next-check-other = A marca confere as peças.
rounds-next-decide = Decida sobre estas amostras.
rounds-next-decide-other = A seguir, a marca decide.
rounds-next-cancelled = Esta rodada foi cancelada. Não há mais nada a fazer.
rounds-next-sign = Leia a decisão e depois assine.
rounds-next-sign-blocked = Há uma pergunta em aberto. Resolva-a e depois assine a decisão.
rounds-next-sign-other = Ainda não assinado por: { $side }.
rounds-next-done = Os dois lados assinaram. Não há mais nada a fazer.

rounds-move-start = Iniciar o trabalho
rounds-move-dispatch = As peças foram enviadas
rounds-move-receive = As peças chegaram
rounds-move-finish-measuring = Medição terminada
rounds-measure = Medir
rounds-correct = Corrigir um valor
rounds-sign = Ir para as assinaturas
rounds-see-open = Ver o que está em aberto
rounds-unfinished = { $count ->
    [one] Falta { $count } valor.
   *[other] Faltam { $count } valores.
}
rounds-unfinished-what = Ninguém mediu estes. Meça-os ou siga sem eles.
rounds-unfinished-piece = Peça { $number }, tamanho { $size }
rounds-dispatch-anyway = As peças foram enviadas, sem estes valores
rounds-finish-anyway = Terminar assim mesmo

## A newer revision

rounds-newer = Existe a revisão { $revision }.
rounds-newer-bound = Estas amostras são feitas pela revisão { $revision }.
rounds-newer-wait = A marca diz se elas continuam.
rounds-newer-changes = Ver o que mudou
rounds-continue = Continuar com a revisão { $revision }
rounds-restart = Recomeçar com a revisão { $revision }
rounds-restart-sure = Esta rodada termina cancelada, e assim fica. O que foi medido nela é guardado. As mesmas peças são pedidas de novo em seguida, com a revisão { $revision }.
rounds-restart-reason = Recomeçada com a revisão { $revision }.

## Pieces and points

rounds-pieces-by-points = Medidas
rounds-caption = Unidade: { $unit }
rounds-pick-piece = Peça
rounds-piece = Peça { $number }
rounds-letter = Letra
rounds-point = Ponto de medida
rounds-spec = Ficha
rounds-critical = crítico
rounds-critical-line = { $count ->
    [one] { $letter } { $name } é crítico, e está fora da tolerância em { $count } peça.
   *[other] { $letter } { $name } é crítico, e está fora da tolerância em { $count } peças.
}
rounds-not-yet = ainda não
rounds-over = acima da tolerância
rounds-under = abaixo da tolerância
rounds-apart = Os dois lados diferem demais: primeiro combinem como medir.
rounds-legend = ▲ acima da tolerância, ▼ abaixo da tolerância.
rounds-legend-both = Onde a marca mediu, vale o valor dela.

## Deciding

rounds-decide = Decidir
rounds-stop = Parar esta rodada
rounds-outcome = O que você decide?
rounds-outcome-missing = Escolha o que decide.
rounds-approved-help = As amostras estão certas. Sem alterações.
rounds-approved-with-changes-help = Certas, exceto pelas alterações abaixo. Cada uma vira uma correção obrigatória da próxima revisão.
rounds-remake-help = Faça estas amostras de novo. Dê o motivo.
rounds-cancelled-help = Encerre esta rodada sem resultado. Dê o motivo.
rounds-changes = Alterações
rounds-changes-help = Só para aprovada com alterações. Desmarque o que não precisa mudar.
rounds-change-text = O que deve mudar em { $letter }
rounds-other-item = Outra alteração
rounds-no-item = Nenhum
rounds-other-text = O que deve mudar ali
rounds-reason = Motivo
rounds-reason-help = Os dois lados leem. Refazer ou cancelar exige um motivo.
rounds-decide-button = Decidir
rounds-suggestion = { $pieces } Deixe dentro de { $tolerance } { $unit }.
rounds-suggestion-piece = Peça { $piece }, tamanho { $size }: medido { $measured }, a ficha diz { $spec } ({ $off }).

rounds-decided = Decisão
rounds-reason-erased = (motivo apagado)
rounds-must-fixes = Correções obrigatórias desta decisão
rounds-another = Pedir outra rodada

## Signing

sign-title = Assinaturas
sign-signed = assinado
sign-not-yet = ainda não assinado
sign-fingerprint = Impressão digital
sign-as = Assino como { $name }, { $role }
sign-button = Assinar
sign-blocked = Você ainda não pode assinar
sign-local = { $time }, hora local de quem assina
sign-to-acknowledge = Confirmar a leitura
sign-to-thread = Abrir { $kind }: { $item }

## History

rounds-history = Histórico
rounds-did-request = { $count ->
    [one] pediu { $count } peça da revisão { $revision }.
   *[other] pediu { $count } peças da revisão { $revision }.
}
rounds-did-start = iniciou o trabalho.
rounds-did-dispatch = enviou as peças.
rounds-did-receive = recebeu as peças.
rounds-did-finish-measuring = disse que a medição terminou.
rounds-did-continue = continua com estas amostras. A revisão { $revision } não as muda.
rounds-did-measure = { $count ->
    [one] mediu { $count } valor.
   *[other] mediu { $count } valores.
}
rounds-did-decide = decidiu: { $outcome }.
rounds-did-sign = assinou a decisão.
rounds-did-must-fix = criou uma correção obrigatória: { $letter } { $name }.

## Measuring on a phone

rounds-measure-title = Medir a peça { $piece }
rounds-missing-count = { $count ->
    [0] tudo medido
   *[other] faltam { $count }
}
rounds-back-to-round = Voltar a { $kind }, rodada { $number }
rounds-progress = Pontos medidos desta peça
rounds-waiting = Ainda não enviado:
rounds-drop = Descartar
rounds-place = { $place } de { $count }
rounds-how = De { $start } até { $end }.
rounds-stretched = Esticado.
rounds-half = METADE
rounds-half-how = no plano
rounds-full = TOTAL
rounds-full-how = em toda a volta
rounds-length = COMPRIMENTO
rounds-value = Valor medido
rounds-save-next = Salvar, próximo
rounds-kept = Esta página abre de novo sem conexão.
rounds-plain = Sem HTTPS esta página não abre de novo sem conexão. O que você digita fica guardado mesmo assim.
rounds-save-anyway = Está certo: salvar
rounds-back = Voltar
rounds-next = Próximo
rounds-skip = Pular
rounds-skip-why = Por que não foi medido?
rounds-skip-later = Depois: próximo ponto
rounds-skipped = Não medido:
rounds-state-spec = Como diz a especificação
rounds-state-is-spec = os números da especificação
rounds-measure-in = Medir:
rounds-delete = Apagar
rounds-not-positive = Uma medida é maior que zero.
rounds-key-used = Este formulário já foi enviado com outro valor. Confira o valor mais uma vez e salve.

rounds-ask-doubled = { $value } é cerca do dobro da ficha. É a volta inteira? Meça de novo.
rounds-ask-halved = { $value } é cerca da metade da ficha. É só meia volta? Meça de novo.
rounds-ask-cm-as-inch = { $value } parece centímetros. Meça de novo.
rounds-ask-inch-as-cm = { $value } parece polegadas. Meça de novo.
rounds-ask-ten-times = { $value } é cerca de dez vezes a ficha. Veja o sinal decimal.
rounds-ask-tenth = { $value } é cerca de um décimo da ficha. Veja o sinal decimal.
rounds-ask-other-size = Esta peça combina mais com o tamanho { $size }. Veja a etiqueta e meça de novo.
rounds-ask-copied = Todos os valores são iguais à ficha. Foram medidos ou copiados?

## Sending the pieces

rounds-send-title = Enviar as peças
rounds-send-materials = De que são feitas as peças?
rounds-send-substitutes = Quais substitutos, no lugar de quê?
rounds-send-parcel = Transportadora e código de rastreio
rounds-send-materials-missing = Diga de que são feitas as peças.
rounds-materials = Materiais
rounds-parcel = Envio

## Washing

washes-title = Lavagem
washes-what = Mudança do que foi medido antes e depois da lavagem: (depois − antes) / antes.
washes-rest = { $count ->
    [one] Mais { $count } lugar mudou não mais do que a medição explica.
   *[other] Mais { $count } lugares mudaram não mais do que a medição explica.
}
washes-points = { $count ->
    [one] { $count } ponto
   *[other] Cada um dos { $count } pontos
}

## Photographs of pieces

photographs-title = Fotos das peças
photographs-add = Adicionar fotos
photographs-add-button = Adicionar
photographs-missing = Escolha ou tire uma foto.
photographs-many = Uma peça tem no máximo { $count } fotos.

## Every value side by side

readings-title = Todos os valores lado a lado
readings-state = Estado das peças
readings-wrong = Nada foi salvo. Veja os valores marcados.
readings-asks = Ainda não salvo. Veja de novo:
readings-look = Nada foi salvo ainda. Veja os valores e depois salve.
readings-save = Salvar tudo
readings-empty = Um campo esvaziado mantém o valor que existe.
readings-paste-title = Colar ou abrir uma planilha
readings-paste = Valores de uma planilha ou de uma carta
readings-paste-help = Uma linha para cada ponto, começando por sua letra ou nome. As colunas das peças têm o número da peça em cima, ou vêm em ordem.
readings-file = Ou um arquivo: XLSX ou CSV
readings-first = As colunas sem número começam com
readings-fill = Pôr nos campos
readings-nothing-pasted = Cole valores ou escolha um arquivo.
readings-filled = { $count ->
    [one] { $count } valor foi posto em seu campo.
   *[other] { $count } valores foram postos em seus campos.
}
readings-unknown = { $cell }: “{ $words }” não é ponto desta tabela, ou já apareceu. Seus valores foram deixados de fora.
readings-unreadable = { $cell } não tem número que se possa ler: a planilha pode ter feito dele uma data.
readings-no-points = Nenhuma linha começa com a letra ou o nome de um ponto, e { $rows } linhas não são os { $points } pontos da tabela. Ponha as letras antes dos valores.
readings-columns = { $columns } colunas têm valores, e há { $pieces } peças a partir da escolhida. Escreva o número da peça acima de cada coluna.
readings-twice = Duas colunas são da peça { $piece }. Deixe só uma.
