### Who did what when.

ledger-title = Livro de registro
ledger-what = Tudo o que foi feito com este modelo. Nada aqui é alterado ou removido: cada registro leva o hash do anterior.
ledger-part = Você vê os registros que dizem respeito à sua fábrica; os números dos outros ficam de fora.
ledger-length = Registros
ledger-end = Hash do último
ledger-with = Com { $factory }
ledger-brand-only = Só para a marca
ledger-program = O programa
ledger-each = Cada valor
ledger-none = Nada foi feito ainda.

## What was done

deed-create = { $who } iniciou o modelo.
deed-publish = { $who } publicou a revisão { $revision }.
deed-withdraw = { $who } retirou a revisão { $revision }.
deed-share = { $who } compartilhou o modelo com { $factory }.
deed-unshare = { $who } encerrou o compartilhamento com { $factory }.
deed-acknowledge = { $who } confirmou a revisão { $revision }.
deed-ask = { $who } abriu: { $kind } sobre { $item }, revisão { $revision }.
deed-message = { $photos ->
    [0] { $who } escreveu: { $kind } sobre { $item }.
    [one] { $who } escreveu: { $kind } sobre { $item }, com { $photos } foto.
   *[other] { $who } escreveu: { $kind } sobre { $item }, com { $photos } fotos.
}
deed-thread = { $move ->
    [agree] { $who } concordou: { $kind } sobre { $item }.
    [reopen] { $who } reabriu: { $kind } sobre { $item }.
    [grant] { $who } aceitou como está: { $kind } sobre { $item }.
    [verify] { $who } viu em uma amostra que foi corrigido: { $kind } sobre { $item }.
   *[close] { $who } encerrou: { $kind } sobre { $item }.
}
deed-thread-changed = { $who } levou para a revisão { $revision }: { $kind } sobre { $item }.
deed-round = rodada { $number } ({ $kind })
deed-round-request = { $count ->
    [one] { $who } pediu { $round }: { $count } peça, pela revisão { $revision }.
   *[other] { $who } pediu { $round }: { $count } peças, pela revisão { $revision }.
}
deed-round-start = { $who } iniciou { $round }.
deed-round-dispatch = { $who } enviou as peças de { $round }.
deed-round-receive = { $who } recebeu as peças de { $round }.
deed-round-measured = { $who } terminou de medir { $round }.
deed-round-continue = { $who } continuou { $round } embora exista a revisão { $revision }.
deed-measure = { $who } mediu { $value } em { $item }, peça { $piece } de { $round }.
deed-measure-many = { $count ->
    [one] { $who } mediu { $count } valor em { $round }.
   *[other] { $who } mediu { $count } valores em { $round }.
}
deed-skip = { $who } deixou de medir { $item }, peça { $piece } de { $round }: { $reason }.
deed-photograph = { $who } adicionou uma foto da peça { $piece } de { $round }.
deed-decide = { $who } decidiu { $round }: { $outcome }.
deed-submit = { $who } enviou a opção { $option } de { $item } ({ $kind }).
deed-approve = { $verdict ->
    [approved] { $who } aprovou a opção { $option } de { $item } ({ $kind }).
   *[rejected] { $who } reprovou a opção { $option } de { $item } ({ $kind }).
}
deed-seal = { $who } lacrou peças de { $round }: { $count }.
deed-inspection-begin = { $who } começou a inspeção da produção { $number }. Peças no lote: { $count }.
deed-inspect = { $who } inspecionou a peça { $piece } na inspeção da produção { $number }.
deed-inspect-many = { $who } inspecionou peças na inspeção da produção { $number }: { $count }.
deed-inspection-conclude = { $who } concluiu a inspeção da produção { $number }: { $outcome }.
deed-inspection-decide = { $who } decidiu sobre a inspeção da produção { $number }: { $decision }.
deed-sign-revision = { $who } assinou a revisão { $revision }.
deed-sign-round = { $who } assinou { $round }.
deed-sign-seal = { $who } assinou o lacre de { $round }.
deed-translate = { $count ->
    [one] { $who } traduziu { $count } texto para { $language }.
   *[other] { $who } traduziu { $count } textos para { $language }.
}
deed-translate-message = { $who } pôs uma tradução para { $language } ao lado de uma mensagem ({ $kind }, { $item }).
deed-erase = O nome, as mensagens e as fotos de alguém foram apagados. Os hashes ficam.
