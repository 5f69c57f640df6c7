### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }, { $direction }
evaluation-some-points = { $count ->
    [one] { $count } punto
   *[other] { $count } puntos
}
evaluation-whole-garment = Toda la prenda

## Causes

evaluation-proportional-shift = { $place }: los puntos largos y cortos se desvían en la misma proporción, { $share } %. La tela encogió o se estiró, o el patrón lo prevé mal. Haga ahí el patrón × { $factor }.
evaluation-constant-error = { $place }: cada punto se desvía la misma longitud, { $by }, sea largo o corto. Mire el margen de costura y el corte, o la cinta usada.
evaluation-single-point = { $points }: se desvía { $by } en la talla { $size }, y nada más lo explica. Mire cómo se corta y se cose este punto.
evaluation-base-pattern = { $points }: se desvía { $by } en todas las tallas medidas. Corrija ahí el patrón base.
evaluation-grading = { $place }: se desvía más cuanto más lejos de la talla base; los pasos difieren { $share } % de la tabla. Corrija el escalado.
evaluation-size-pattern = { $place }: se desvía { $by } solo en la talla { $size }. Mire el patrón de esta talla.
evaluation-one-piece = { $points }: se desvía { $by } solo en la pieza { $pieces }. Mida otra vez; si sigue igual, esta pieza se cosió de otro modo.
evaluation-unsteady = { $points }: las piezas de la talla { $size } difieren entre sí más de lo que explica la medición. Mire la costura o acuerden cómo medir.
evaluation-wrong-label = La pieza { $pieces } lleva la talla { $size } y mide como { $really }. Mire su etiqueta o de qué patrón se cortó.
evaluation-swapped-sizes = Las piezas { $pieces } llevan la talla una de la otra: la primera dice { $size } y mide como { $really }. Cambie sus etiquetas.
evaluation-doubled = Pieza { $pieces }, { $points }: cerca del doble de lo debido. Se escribió la vuelta completa en lugar de la mitad: mida otra vez.
evaluation-halved = Pieza { $pieces }, { $points }: cerca de la mitad de lo debido. Se escribió la mitad en lugar de la vuelta completa: mida otra vez.
evaluation-cm-as-inch = Pieza { $pieces }, { $points }: se escribieron centímetros donde van pulgadas.
evaluation-inch-as-cm = Pieza { $pieces }, { $points }: se escribieron pulgadas donde van centímetros.
evaluation-ten-times = Pieza { $pieces }, { $points }: diez veces lo debido. Mire el signo decimal.
evaluation-tenth = Pieza { $pieces }, { $points }: un décimo de lo debido. Mire el signo decimal.
evaluation-swapped-points = Pieza { $pieces }: los valores de { $points } están cambiados entre sí.

## Figures

evaluation-rests-on-one = Se apoya en un solo valor.
evaluation-rests-on = Se apoya en { $readings } valores, { $same } de ellos desviados hacia el mismo lado. La mitad se desviaba más de { $before }; lo que esto deja es { $left }.

## What is not a cause

evaluation-again = Pieza { $piece }, { $point }: fuera de tolerancia, pero no más de lo que puede errar la medición. Mida otra vez.
evaluation-dispute = Pieza { $piece }, { $point }: { $one } midió { $least } y { $other } midió { $most }. Primero acuerden cómo medir: hasta { $allowed } de diferencia está bien.
evaluation-few-points = { $place }: no hay datos suficientes. Se midieron ahí { $have } puntos, y hacen falta { $need } para decir si la tela cambió.
evaluation-one-size = No hay datos suficientes: solo se midió la talla { $size }, y no se distingue el patrón del escalado.
evaluation-one-piece-only = No hay datos suficientes: se midió una sola pieza de la talla { $size }, y no se distingue la costura del patrón.
evaluation-watch = { $out ->
    [0] { $point }: falló antes ({ $rounds }). Ahora está dentro de tolerancia: vigílelo.
   *[other] { $point }: falló antes ({ $rounds }). Está fuera otra vez en { $out } de { $measured }.
}
evaluation-repeat-assumed = Nada se midió dos veces. Se supone que un valor se repite dentro de { $deviation }.
evaluation-repeat-measurers = A juzgar por { $count } puntos medidos por varias personas, un valor se repite dentro de { $deviation }.
evaluation-repeat-pieces = A juzgar por { $count } puntos que tienen varias piezas de una talla, un valor se repite dentro de { $deviation }.
evaluation-wash = { $place }: { $percent } % por el lavado. Haga ahí el patrón × { $factor }.
evaluation-wash-little = { $place }: { $percent } % por el lavado, no más de lo que explica la medición.

## On a round's page

evaluation-title = Qué dicen las medidas
evaluation-no-cause = No se nombra ninguna causa. Lo que está fuera, si algo lo está, no pasa de lo que explica la medición, o hay muy poco para decirlo.
evaluation-points-shown = Dónde se ve
evaluation-suggested = Corrección propuesta del patrón
evaluation-agree = Primero acordar cómo medir
evaluation-again-title = Medir otra vez
evaluation-lacks-title = Datos insuficientes
evaluation-watch-title = Vigilar: falló en una ronda anterior
evaluation-watch-word = vigilar
evaluation-strips = Desviación por punto
evaluation-strips-how = La banda sombreada es la tolerancia; la línea en ella, la especificación. ● dentro, ▲ por encima, ▼ por debajo.
evaluation-strips-sides = Las marcas huecas son valores de la fábrica; las llenas, de la marca.
evaluation-strips-beyond = Una flecha junto a la marca: queda más lejos de lo que alcanza el dibujo.
evaluation-within = { $count ->
    [one] { $count } punto dentro de tolerancia
   *[other] { $count } puntos dentro de tolerancia
}
evaluation-by-size = Desviación por talla
evaluation-by-size-how = La línea une la desviación media de cada talla. Línea nivelada: el patrón. Línea que sube o baja: el escalado.
evaluation-steps = Pasos entre tallas
evaluation-from-to = De, a
evaluation-asked = Según la tabla
evaluation-got = Medido
evaluation-more = Diferencia
