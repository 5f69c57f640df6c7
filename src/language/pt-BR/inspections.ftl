### Inspecionar a produção pela amostra lacrada.

inspection-title = Inspeção da produção { $number }
inspection-list = Inspeções da produção
inspection-head = Inspeção
inspection-none = Ainda não se inspecionou produção por ela.
inspection-do = Inspecionar a produção
inspection-what = Uma amostra de um lote pronto é inspecionada pela amostra lacrada e por sua revisão.
inspection-no-safety = Passar nesta inspeção não diz nada sobre segurança. Isso é decidido por um laboratório licenciado e pela lei local.
inspection-follows = Consertado depois de
inspection-followed = Inspecionado de novo em
inspection-earlier = Inspeções por este lacre: { $count }
inspection-blocked = O que impede de inspecionar a produção: { $count }
inspection-open-other = Abrir essa inspeção

## O lote e seu plano

inspection-lot = Lote
inspection-lot-help = Quantas peças prontas o lote tem de cada variante de cor e tamanho. Deixe vazio onde não há nenhuma.
inspection-count-wrong = Escreva um número inteiro de 0 a { $most }.
inspection-plan = Plano de amostragem
inspection-plan-of = De { $lot } peças são inspecionadas { $sample }
inspection-plan-moved = O lote mudou depois que o plano foi mostrado. Este é o plano agora.
inspection-show-plan = Mostrar o plano
inspection-begin = Começar esta inspeção
inspection-level = Nível de inspeção
inspection-aql = AQL
inspection-aql-of = AQL, defeito { $class }
inspection-usual = Nível II com 2.5 e 4.0 é prática comum, sem fonte.
inspection-critical-rule = Um defeito crítico não tem nível aceitável: um só rejeita o lote.
inspection-critical-found = Peças com defeito crítico:
inspection-class = Defeitos
inspection-code = Letra-código
inspection-sample = Amostra
inspection-accept = Aceita
inspection-reject = Rejeita
inspection-done = Inspecionadas
inspection-found = Defeituosas
inspection-of = { $done } de { $sample }
inspection-every-piece = todas as peças do lote
inspection-arrow = Onde uma seta da tabela leva a outra letra, vale a amostra dessa letra.
inspection-source = Amostragem simples, inspeção normal, pelas tabelas da MIL-STD-105E.
inspection-colourway = Variante de cor
inspection-size = Tamanho
inspection-in-lot = No lote
inspection-draw = Retirar
inspection-to-draw = O que retirar
inspection-draw-how = Em proporção ao lote, ao menos uma de cada onde a amostra permite: prática comum, sem fonte. Retire ao acaso.

## O que se encontrou

inspection-begun = Começada por
inspection-within = Cada plano conta suas próprias primeiras peças, na ordem em que são retiradas. Uma peça conta na classe de seu pior defeito.
inspection-points-rule = Um ponto crítico fora da tolerância é um defeito maior, outro ponto um menor: prática comum, sem fonte.
inspection-pieces = Peças
inspection-nothing-yet = Ainda não se inspecionou nenhuma peça.
inspection-correct = Corrigir
inspection-sound = Sem defeito: { $count }
inspection-corrected = Registros corrigidos: { $count }
inspection-measured = medidas: { $count }
inspection-no-defect = Sem defeito
inspection-enter-beyond = Defeito crítico além da amostra
inspection-conceded = Isto foi concedido na amostra lacrada. Aqui conta como defeito do mesmo modo: a marca decide.
inspection-curve = O que os planos podem dizer
inspection-curve-what = A probabilidade de este lote ser aceito, conforme a parte defeituosa. Um lote pior que o AQL pode ser aceito, e um melhor rejeitado.
inspection-curve-share = Parte defeituosa
inspection-curve-likelihood = Probabilidade de aceitação
inspection-curve-at = com { $share } de defeituosas, aceito com probabilidade de { $likelihood }

## O que vem agora

inspection-enter = Inspecionar uma peça
inspection-conclude = Concluir
inspection-conclude-what = O programa diz pelos registros se o lote é aceito ou rejeitado.
inspection-conclude-final = Depois disso nenhuma peça pode ser registrada nem corrigida.
inspection-concluded = Conclusão
inspection-decide = Decidir sobre o lote
inspection-decide-final = Uma decisão não muda depois.
inspection-reason-help = Tudo menos uma liberação exige um motivo. Numa concessão, diga quais defeitos passam.
inspection-released-help = O lote pode ser despachado.
inspection-concession-help = O lote é despachado embora rejeitado. Diga os defeitos.
inspection-rework-help = A fábrica separa e conserta o lote. Depois ele é inspecionado de novo.
inspection-refused-help = O lote não é aceito pela marca.
inspection-fails-critical = Peças com defeito crítico: { $count }. Uma basta.
inspection-fails = Peças que contam como { $class }: { $found }. No máximo { $accept } podem ser aceitas.
inspection-next-fails = O que se encontrou rejeita o lote. Conclua a inspeção.
inspection-next-enter = Inspecione as peças: { $done } de { $sample } estão prontas.
inspection-next-enter-other = { $org } inspeciona o lote.
inspection-next-conclude = A amostra está inspecionada. Conclua a inspeção.
inspection-next-decide = Decida sobre este lote.
inspection-next-decide-other = A marca decide sobre este lote.
inspection-next-again = { $org } separa e conserta o lote. Depois ele é inspecionado de novo.
inspection-next-done = Não resta nada a fazer aqui.
inspection-again = Inspecionar o lote consertado

## Registrar uma peça

inspection-corrects = Esta peça já foi registrada. Vale o que você salvar; o registro antigo continua legível.
inspection-other-sort = Outra variante de cor ou tamanho
inspection-defects = Defeitos
inspection-defects-how = Sem defeito, salve logo.
inspection-classes = Crítico: pode ferir alguém; na dúvida, escolha este. Maior: a peça provavelmente falha ou serve bem menos. Menor: difere do que foi pedido, e a peça serve mesmo assim.
inspection-defect = Defeito { $number }
inspection-class-of = Classe
inspection-where = Onde
inspection-nowhere = Não está nesta lista
inspection-times = Quantos
inspection-words = Em palavras
inspection-more = Mais defeitos
inspection-values = Valores medidos
inspection-other-points = Outros pontos: { $count }
inspection-class-missing = Escolha crítico, maior ou menor.
inspection-times-wrong = Escreva um número inteiro de 1 a { $most }.
inspection-moved-on = Alguém registrou essa peça nesse meio tempo. A sua agora é a peça { $number }: salve mais uma vez.
