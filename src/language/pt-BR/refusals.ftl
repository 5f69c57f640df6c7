### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = { $count ->
    [one] { $count } seção foi salva por outra pessoa depois que você abriu esta página. Leia abaixo o que é novo e depois publique.
   *[other] { $count } seções foram salvas por outra pessoa depois que você abriu esta página. Leia abaixo o que é novo e depois publique.
}
refused-errors-remain = { $count ->
    [one] Resta { $count } erro. Corrija o que está listado abaixo e depois publique.
   *[other] Restam { $count } erros. Corrija o que está listado abaixo e depois publique.
}
refused-warning-reason-missing = { $count ->
    [one] { $count } aviso está sem motivo. Corrija ou escreva por que fica como está. O motivo é impresso na revisão.
   *[other] { $count } avisos estão sem motivo. Corrija ou escreva por que ficam como estão. O motivo é impresso na revisão.
}
refused-reason-missing = Escreva um motivo. Outros vão ler depois.
refused-draft-unchanged = O rascunho é igual à revisão { $revision }. Altere algo primeiro.
refused-must-fix-unchanged = { $count ->
    [one] { $count } correção obrigatória acordada não foi feita no rascunho. Altere o item, aceite como está ou encerre.
   *[other] { $count } correções obrigatórias acordadas não foram feitas no rascunho. Altere os itens, aceite como estão ou encerre.
}
refused-already-withdrawn = Esta revisão já foi retirada.
refused-not-current = Esta não é a revisão em vigor. A revisão { $revision } é. Leia o que mudou nela.
refused-none-current = Esta não é a revisão em vigor, e não há nenhuma: a mais nova foi retirada. Espere a marca publicar outra.
refused-not-shared = Este modelo não está compartilhado com a fábrica agora. A marca pode compartilhá-lo de novo.
refused-already-acknowledged = Sua fábrica já confirmou esta revisão.

## Whose move it is

refused-only-brand = Só a marca pode fazer isto.
refused-only-factory = Só a fábrica pode fazer isto.
refused-not-the-asker = Só quem perguntou, ou quem dirige a organização dessa pessoa, pode fazer isto.
refused-only-brand-closes = Só a marca pode encerrar. É do tipo: { $kind }.
refused-other-side-first = O outro lado ainda não respondeu. Espere a resposta.

## Threads

refused-thread-not-in = Isto não pode ser feito agora. A conversa está: { $state }.
refused-thread-closed = Esta conversa está encerrada. Reabra ou faça uma nova pergunta.
refused-no-such-move = Isto não pode ser feito com este tipo: { $kind }.
refused-item-unchanged = A revisão { $revision } não altera este item. Altere no rascunho e publique primeiro.
refused-sample-too-old = A amostra foi feita antes da revisão { $revision }. Meça uma amostra dessa revisão ou de outra posterior.

## Rounds

refused-round-not-in = Isto não pode ser feito agora. A rodada está: { $state }.
refused-nothing-measured = Nada foi medido ainda. Meça pelo menos uma peça primeiro.
refused-only-corrections = A rodada está decidida. Agora um valor só pode ser corrigido, não acrescentado.
refused-pieces-missing = Diga quantas peças de qual tamanho: pelo menos uma, no máximo { $most }, e só tamanhos desta revisão.
refused-substitutes-missing = Diga que materiais estão no lugar de quais.
refused-changes-missing = Diga o que deve mudar: pelo menos um item, com palavras.
refused-critical-out = { $count ->
    [one] { $count } ponto crítico está fora da tolerância. Peça para refazer, indique-o como alteração ou dê uma concessão.
   *[other] { $count } pontos críticos estão fora da tolerância. Peça para refazer, indique-os como alterações ou dê uma concessão.
}
refused-newer-revision-needed = A última rodada foi aprovada com alterações. Publique primeiro uma revisão depois da revisão { $revision }, com essas alterações.
refused-no-newer-revision = Não há revisão mais nova.
refused-nothing-to-approve = Esta revisão não precisa de aprovação disto. Veja a lista do que precisa.
refused-photo-missing = Acrescente uma foto: uma opção é julgada por uma pelo menos.
refused-option-decided = Esta opção já está decidida: { $verdict }. Outra opção recebe outra decisão.
refused-only-owner = Só um proprietário da marca lacra uma amostra.
refused-already-sealed = As peças desta rodada já estão lacradas.
refused-too-early-to-seal = Esta rodada é do tipo: { $kind }. Lacra-se uma amostra de pré-produção ou de início de produção.
refused-round-not-approved = Esta rodada está: { $state }. Lacra-se uma amostra de uma rodada aprovada.
refused-questions-before-sealing = Há perguntas abertas: { $count }. Responda; quem perguntou fecha.
refused-must-fix-unverified = Correções obrigatórias que ninguém viu feitas numa amostra: { $count }. Verifique numa amostra, ou deixe passar.
refused-size-set-missing = Nenhum conjunto de tamanhos com estes tamanhos e esta tabela está aprovado com esta fábrica.
refused-not-approved-yet = Ainda não aprovado: { $count }.
refused-substitutes-sent = As peças são de materiais substitutos. A amostra lacrada é feita dos materiais da ficha.
refused-piece-critical-out = Pontos críticos fora da tolerância ou não medidos numa peça a guardar: { $count }. Meça, conceda, ou lacre outra peça.
refused-seal-unsaid = Escolha ao menos uma peça. Dê a cada uma seu número de lacre e diga onde fica guardada.
refused-seal-unsigned = A produção é inspecionada por um lacre que os dois lados assinaram. Ainda sem assinatura: { $sides }.
refused-lot-unsaid = Diga quantas peças de qual variante de cor e tamanho o lote tem: ao menos uma, no máximo { $most } ao todo, e só as desta revisão.
refused-not-for-rework = A marca não devolveu esse lote para conserto. Só um lote assim é inspecionado de novo.
refused-inspected-again = Esse lote já está sendo inspecionado de novo.
refused-lot-grown = Um lote consertado não tem mais peças de nenhuma variante de cor e tamanho do que antes.
refused-inspection-not-in = Isto não pode ser feito agora. A inspeção está: { $state }.
refused-piece-unsaid = Diga qual peça: um número de 1 a { $most }, e não mais de uma variante de cor e tamanho do que o lote tem.
refused-piece-beyond = A amostra tem { $sample } peças. Uma peça além dela só é registrada por um defeito crítico.
refused-piece-moved = Alguém registrou esta peça depois que você abriu a página. Leia, e salve a sua de novo se ela deve valer.
refused-defect-unsaid = Diga onde está o defeito, ou o que é em palavras.
refused-pieces-uninspected = Peças da amostra ainda não inspecionadas: { $count }. Inspecione-as primeiro.
refused-lot-rejected = O lote está rejeitado e não pode ser liberado. Conceda, devolva ou recuse.
refused-nothing-to-concede = O lote está aceito: não há nada a conceder. Libere, devolva ou recuse.
refused-critical-in-bulk = Peças com defeito crítico: { $count }. Um lote assim só é devolvido ou recusado.

## Signing

refused-open-questions = { $count ->
    [one] { $count } pergunta está em aberto. Responda; quem perguntou encerra. Depois assine.
   *[other] { $count } perguntas estão em aberto. Responda; quem perguntou encerra. Depois assine.
}
refused-must-fix-open = { $count ->
    [one] { $count } correção obrigatória não foi feita nesta revisão nem aceita como está. A marca deve fazê-la e publicar, ou aceitar.
   *[other] { $count } correções obrigatórias não foram feitas nesta revisão nem aceitas como estão. A marca deve fazê-las e publicar, ou aceitar.
}
refused-same-person-both-sides = Você assinou pelo outro lado deste modelo. Uma pessoa nunca assina pelos dois lados: outra deve assinar.
refused-already-signed = O seu lado já assinou isto.
refused-not-acknowledged = Confirme esta revisão primeiro e depois assine.
refused-nothing-decided = Ainda não há decisão para assinar. A marca precisa decidir a rodada primeiro.
refused-role-does-not-sign = A sua função não assina. Peça a alguém da sua organização que possa.
refused-screen-moved = Isto mudou depois que você abriu a página. Leia de novo e depois assine.
