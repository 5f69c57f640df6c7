### What the program's own values are called.

## Sections of a spec

section-header = Cabeçalho
section-sizes = Tamanhos
section-drawings = Desenhos
section-points = Pontos de medida
section-colourways = Partes e variantes de cor
section-materials = Materiais
section-construction = Costura e montagem
section-artwork = Artes
section-labels = Etiquetas e conservação
section-packing = Embalagem

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = Como costurada
measured-after-finish = Depois do acabamento da peça
measured-after-washes = { $count ->
    [one] Depois de { $count } lavagem
   *[other] Depois de { $count } lavagens
}

## Units

unit-cm = cm
unit-mm = mm
unit-inch = polegada

## Drawings


## Points of measure


## Readiness

severity-error = Erro
severity-warning = Aviso

## Who takes part

side-brand = Marca
side-factory = Fábrica
role-owner = Proprietário
role-designer = Designer
role-viewer = Leitor
role-merchandiser = Responsável pelo pedido
role-sample-room = Sala de amostras
role-inspector = Inspetor

## Revisions

standing-current = Em vigor
standing-superseded = Substituída
standing-withdrawn = Retirada
agreement-shared = Compartilhada
agreement-acknowledged = Leitura confirmada
agreement-signed-by-factory = Assinada pela fábrica
agreement-signed-by-brand = Assinada pela marca
agreement-signed-by-both = Assinada pelos dois lados

## Threads

thread-kind-question = pergunta
thread-kind-must-fix = correção obrigatória
thread-kind-suggestion = sugestão
thread-kind-concession = pedido de concessão
thread-state-open = em aberto
thread-state-answered = respondida
thread-state-agreed = acordada
thread-state-changed = alterada na revisão { $revision }
thread-state-verified = verificada em amostra da revisão { $revision }
thread-state-closed = encerrada
thread-state-granted = concedida

## Sample rounds

round-kind-proto = Protótipo
round-kind-fit = Prova
round-kind-size-set = Todos os tamanhos
round-kind-pre-production = Pré-produção
round-kind-top-of-production = Início de produção (TOP)
round-state-requested = pedida
round-state-in-work = em andamento
round-state-dispatched = enviada
round-state-received = recebida
round-state-measured = medida
round-materials-actual = os materiais da ficha
round-materials-substitute = materiais substitutos
round-outcome-approved = aprovada
round-outcome-approved-with-changes = aprovada com alterações
round-outcome-remake = refazer
round-outcome-cancelled = cancelada
wash-before = Antes da lavagem
wash-after = Depois da lavagem
skip-absent = Esta peça não tem
skip-unfinished = Ainda não costurado
skip-damaged = A peça está danificada aqui
skip-unclear = Não entendo como medir

## Bulk inspections

inspection-critical = crítico
inspection-major = maior
inspection-minor = menor
inspection-open = em andamento
inspection-accepted = aceito
inspection-rejected = rejeitado
inspection-released = liberado
inspection-concession = passa com concessão
inspection-rework = devolvido para conserto
inspection-refused = recusado

## Acts in the ledger

act-create = Modelo iniciado
act-publish = Revisão publicada
act-withdraw = Revisão retirada
act-share = Compartilhado com uma fábrica
act-unshare = Fim do compartilhamento com a fábrica
act-acknowledge = Leitura da revisão confirmada
act-ask = Conversa aberta
act-message = Mensagem enviada
act-thread-move = Conversa avançou
act-request-round = Rodada de amostras pedida
act-round-move = Rodada de amostras avançou
act-measure = Medida tomada
act-skip = Ponto deixado de fora
act-photograph = Peça fotografada
act-decide = Rodada de amostras decidida
act-submit = Opção enviada
act-approve = Opção decidida
act-seal = Amostra lacrada
act-begin-inspection = Inspeção da produção começada
act-inspect = Peça inspecionada
act-conclude-inspection = Inspeção da produção concluída
act-decide-inspection = Lote decidido
act-sign = Assinado
act-translate = Traduzido
act-translate-message = Mensagem traduzida
act-erase = Texto pessoal apagado
