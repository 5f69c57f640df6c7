### The list of styles and one style.

styles-title = Modelos
styles-none = Ainda não há modelos.
styles-style = Modelo
styles-newest = Revisão mais nova
styles-revision = Revisão { $revision }
styles-draft-only = só rascunho
styles-threads = Conversas em aberto
styles-rounds = Rodadas de amostras em aberto
styles-create = Iniciar um modelo
styles-create-button = Iniciar o modelo

## One style

style-draft = Rascunho
style-draft-first = Nada foi publicado ainda. Nenhuma fábrica vê o rascunho.
style-draft-differs = O rascunho é diferente da revisão mais nova. Nenhuma fábrica o vê até você publicar.
style-draft-same = O rascunho diz o mesmo que a revisão mais nova.
style-publish = Verificar e publicar
style-revisions = Revisões
style-no-revisions = Nenhuma revisão foi publicada ainda.
style-revision = Revisão { $number }
style-open-revision = Abrir a revisão { $number }
style-older = Revisões anteriores
style-published = Publicada em
style-published-by = Publicada por
style-fingerprint = Impressão digital
style-withdrawn-because = Pare. Não trabalhe por ela: { $reason }
style-acknowledged-by = Leitura confirmada por { $name }, { $date }
style-signed-factory = Assinada pela fábrica por { $name }, { $date }
style-signed-brand = Assinada pela marca por { $name }, { $date }
style-revision-head = Revisão
style-state = Estado
style-reason = Motivo
style-agreed = Acordado com
style-next = A seguir
style-next-you = você
style-next-brand = a marca
style-factory = Fábrica
style-threads = Conversas em aberto
style-no-threads = Nada em aberto.
style-thread-item = Sobre
style-thread-words = O que foi escrito
style-thread-open = Abrir
style-rounds = Rodadas de amostras
style-no-rounds = Nenhuma amostra foi pedida ainda.
style-round-head = Rodada
style-round = { $kind }, rodada { $number }
style-ask-round = Pedir uma rodada de amostras
style-shares = Compartilhado com
style-no-shares = Ainda não foi compartilhado com uma fábrica.
style-shared-since = Desde
style-share = Compartilhar com esta fábrica
style-share-ended = encerrado em { $date }
style-unshare = Encerrar o compartilhamento
style-unshare-what = { $factory } não verá mais nada deste modelo: nem revisão, nem conversa, nem rodada.
style-acts = O que você pode fazer
style-withdraw = Retirar a revisão { $number }
style-withdraw-what = Cada página e cada impressão dela vai dizer pare. Isto não pode ser desfeito. Nenhuma revisão anterior toma o lugar: publique uma nova.
style-withdraw-reason = Por quê? Todos que lerem verão o seu motivo.

copy-title = Copiar este modelo
copy-what = A cópia começa com tudo o que o rascunho diz. Aprovações, isenções, quantidades e números de variantes não são copiados; nem revisões, conversas e rodadas.
copy-button = Iniciar a cópia
style-copy = Copiar para um novo modelo
style-copied-from = Copiado de
