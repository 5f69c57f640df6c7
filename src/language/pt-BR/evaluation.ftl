### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }, { $direction }
evaluation-some-points = { $count ->
    [one] { $count } ponto
   *[other] { $count } pontos
}
evaluation-whole-garment = A peça inteira

## Causes

evaluation-proportional-shift = { $place }: pontos longos e curtos desviam na mesma proporção, { $share } %. O tecido encolheu ou esticou, ou o molde prevê isso errado. Faça o molde × { $factor } ali.
evaluation-constant-error = { $place }: todo ponto desvia o mesmo comprimento, { $by }, seja longo ou curto. Veja a margem de costura e o corte, ou a fita usada.
evaluation-single-point = { $points }: desvia { $by } no tamanho { $size }, e nada mais explica. Veja como este ponto é cortado e costurado.
evaluation-base-pattern = { $points }: desvia { $by } em todos os tamanhos medidos. Corrija ali o molde base.
evaluation-grading = { $place }: desvia mais quanto mais longe do tamanho base; os passos diferem { $share } % da tabela. Corrija a graduação.
evaluation-size-pattern = { $place }: desvia { $by } só no tamanho { $size }. Veja o molde deste tamanho.
evaluation-one-piece = { $points }: desvia { $by } só na peça { $pieces }. Meça de novo; se continuar, esta peça foi costurada de outro modo.
evaluation-unsteady = { $points }: as peças do tamanho { $size } diferem entre si mais do que a medição explica. Veja a costura ou combinem como medir.
evaluation-wrong-label = A peça { $pieces } traz o tamanho { $size } e mede como { $really }. Veja a etiqueta ou de qual molde foi cortada.
evaluation-swapped-sizes = As peças { $pieces } trazem o tamanho uma da outra: a primeira diz { $size } e mede como { $really }. Troque as etiquetas.
evaluation-doubled = Peça { $pieces }, { $points }: cerca do dobro do que deveria. Foi escrita a volta inteira em vez da metade: meça de novo.
evaluation-halved = Peça { $pieces }, { $points }: cerca da metade do que deveria. Foi escrita a metade em vez da volta inteira: meça de novo.
evaluation-cm-as-inch = Peça { $pieces }, { $points }: foram escritos centímetros onde cabem polegadas.
evaluation-inch-as-cm = Peça { $pieces }, { $points }: foram escritas polegadas onde cabem centímetros.
evaluation-ten-times = Peça { $pieces }, { $points }: dez vezes o que deveria. Veja o sinal decimal.
evaluation-tenth = Peça { $pieces }, { $points }: um décimo do que deveria. Veja o sinal decimal.
evaluation-swapped-points = Peça { $pieces }: os valores de { $points } estão trocados.

## Figures

evaluation-rests-on-one = Apoia-se em um só valor.
evaluation-rests-on = Apoia-se em { $readings } valores, { $same } deles desviados para o mesmo lado. Metade desviava mais de { $before }; o que isto deixa é { $left }.

## What is not a cause

evaluation-again = Peça { $piece }, { $point }: fora da tolerância, mas não mais do que a medição pode errar. Meça de novo.
evaluation-dispute = Peça { $piece }, { $point }: { $one } mediu { $least } e { $other } mediu { $most }. Primeiro combinem como medir: até { $allowed } de diferença serve.
evaluation-few-points = { $place }: dados insuficientes. Foram medidos ali { $have } pontos, e são precisos { $need } para dizer se o tecido mudou.
evaluation-one-size = Dados insuficientes: só o tamanho { $size } foi medido, e não se distingue o molde da graduação.
evaluation-one-piece-only = Dados insuficientes: uma só peça do tamanho { $size } foi medida, e não se distingue a costura do molde.
evaluation-watch = { $out ->
    [0] { $point }: falhou antes ({ $rounds }). Agora está dentro da tolerância: acompanhe.
   *[other] { $point }: falhou antes ({ $rounds }). Está fora de novo em { $out } de { $measured }.
}
evaluation-repeat-assumed = Nada foi medido duas vezes. Supõe-se que um valor se repete dentro de { $deviation }.
evaluation-repeat-measurers = A julgar por { $count } pontos medidos por várias pessoas, um valor se repete dentro de { $deviation }.
evaluation-repeat-pieces = A julgar por { $count } pontos que várias peças de um tamanho têm, um valor se repete dentro de { $deviation }.
evaluation-wash = { $place }: { $percent } % pela lavagem. Faça o molde × { $factor } ali.
evaluation-wash-little = { $place }: { $percent } % pela lavagem, não mais do que a medição explica.

## On a round's page

evaluation-title = O que as medidas dizem
evaluation-no-cause = Nenhuma causa é apontada. O que está fora, se algo está, não passa do que a medição explica, ou há pouco para dizer.
evaluation-points-shown = Onde aparece
evaluation-suggested = Correção sugerida do molde
evaluation-agree = Primeiro combinar como medir
evaluation-again-title = Medir de novo
evaluation-lacks-title = Dados insuficientes
evaluation-watch-title = Observar: falhou em uma rodada anterior
evaluation-watch-word = observar
evaluation-strips = Desvio por ponto
evaluation-strips-how = A faixa sombreada é a tolerância; a linha nela é a especificação. ● dentro, ▲ acima, ▼ abaixo.
evaluation-strips-sides = Marcas vazadas são valores da fábrica; cheias, da marca.
evaluation-strips-beyond = Uma seta ao lado da marca: está mais longe do que o desenho alcança.
evaluation-within = { $count ->
    [one] { $count } ponto dentro da tolerância
   *[other] { $count } pontos dentro da tolerância
}
evaluation-by-size = Desvio por tamanho
evaluation-by-size-how = A linha une o desvio médio de cada tamanho. Linha nivelada: o molde. Linha que sobe ou desce: a graduação.
evaluation-steps = Passos entre tamanhos
evaluation-from-to = De, para
evaluation-asked = Pela tabela
evaluation-got = Medido
evaluation-more = Diferença
