### What stands around every page: title, navigation, footer.

frame-skip = Ir para a página
frame-nav = Principal
frame-sign-out = Sair
frame-foot = Feito com Fellseam

nav-needs = O que precisa de mim
nav-styles = Modelos
nav-people = Pessoas
nav-me = Minha página

language-label = Idioma
language-unchecked = Escrito por quem fez o programa e ainda não conferido por falante nativo: { $languages }.
name-erased = (nome apagado)

## What the form before this page has done

said-saved = Salvo.
said-made = Criado.
said-restored = A seção voltou a ser como era naquele momento.
said-published = Publicado.
said-shared = Compartilhado.
said-unshared = Não é mais compartilhado.
said-withdrawn = Retirado.
said-acknowledged = Leitura confirmada.
said-signed = Assinado.
said-sent = Enviado.
said-photographed = As fotos foram adicionadas.
said-translated = A tradução está ao lado da mensagem.
said-moved = Feito.
said-measured = Medidas salvas.
said-decided = Decidido.
said-sealed = Lacrada.
said-begun = Começada.
said-concluded = Concluída.
said-ended = Esta pessoa não pode mais entrar.

## What needs me

needs-none = Nada espera por você.
needs-since = desde { $date }
needs-styles = Seus modelos
needs-no-styles = Nenhum modelo foi compartilhado com você ainda. A marca compartilha quando estiver pronto.
needs-newest = Revisão { $revision }
need-acknowledge = Ler e confirmar a revisão { $revision }
need-sign-revision = Assinar a revisão { $revision }
need-sign-revision-blocked = Revisão { $revision }: veja o que está em aberto antes de assinar
need-answer = Responder: { $kind }
need-read-answer = Ler a resposta: { $kind }
need-change = Alterar na próxima revisão: { $kind }
need-round-start = Iniciar a rodada de amostras { $number }, { $kind }
need-round-measure = Medir e enviar a rodada de amostras { $number }, { $kind }
need-round-receive = Confirmar que a rodada de amostras { $number } chegou, { $kind }
need-round-check = Medir a rodada de amostras { $number }, { $kind }
need-round-decide = Decidir a rodada de amostras { $number }, { $kind }
need-round-sign-blocked = Rodada de amostras { $number }, { $kind }: veja o que está em aberto antes de assinar
need-round-sign = Assinar a decisão sobre a rodada de amostras { $number }, { $kind }
need-approvals-decide = Decidir o que foi enviado para aprovação: { $count }
need-approvals-submit = Enviar o que precisa de aprovação: { $count }
need-sign-seal = Assinar o lacre da rodada de amostras { $number }, { $kind }
need-sign-seal-blocked = Lacre da rodada de amostras { $number }, { $kind }: veja o que está aberto antes de assinar
need-inspection = Inspecionar a produção: inspeção { $number }
need-inspection-decide = Decidir sobre o lote da inspeção da produção { $number }
need-inspection-again = Consertar o lote da inspeção da produção { $number } e inspecionar de novo

frame-working = Trabalhando. Esta página continua sozinha.
frame-sending = Enviando arquivos: { $files }, { $size } MB. Esta página continua sozinha.
