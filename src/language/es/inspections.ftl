### Inspeccionar la producción por la muestra sellada.

inspection-title = Inspección de producción { $number }
inspection-list = Inspecciones de producción
inspection-head = Inspección
inspection-none = Aún no se ha inspeccionado producción por ella.
inspection-do = Inspeccionar la producción
inspection-what = Una muestra de un lote terminado se inspecciona por la muestra sellada y su revisión.
inspection-no-safety = Pasar esta inspección no dice nada de la seguridad. Eso lo deciden un laboratorio autorizado y la ley local.
inspection-follows = Reparado después de
inspection-followed = Inspeccionado de nuevo en
inspection-earlier = Inspecciones por este sello: { $count }
inspection-blocked = Lo que impide inspeccionar la producción: { $count }
inspection-open-other = Abrir esa inspección

## El lote y su plan

inspection-lot = Lote
inspection-lot-help = Cuántas piezas terminadas tiene el lote de cada variante de color y talla. Deje el campo vacío donde no haya ninguna.
inspection-count-wrong = Escriba un número entero de 0 a { $most }.
inspection-plan = Plan de muestreo
inspection-plan-of = De { $lot } piezas se inspeccionan { $sample }
inspection-plan-moved = El lote cambió después de mostrar su plan. Este es su plan ahora.
inspection-show-plan = Mostrar el plan
inspection-begin = Empezar esta inspección
inspection-level = Nivel de inspección
inspection-aql = AQL
inspection-aql-of = AQL, defecto { $class }
inspection-usual = Nivel II con 2.5 y 4.0 es práctica común, sin fuente.
inspection-critical-rule = Un defecto crítico no tiene nivel aceptable: uno solo rechaza el lote.
inspection-critical-found = Piezas con un defecto crítico:
inspection-class = Defectos
inspection-code = Letra código
inspection-sample = Muestra
inspection-accept = Acepta
inspection-reject = Rechaza
inspection-done = Inspeccionadas
inspection-found = Defectuosas
inspection-of = { $done } de { $sample }
inspection-every-piece = todas las piezas del lote
inspection-arrow = Donde una flecha de la tabla lleva a otra letra, vale la muestra de esa letra.
inspection-source = Muestreo simple, inspección normal, por las tablas de MIL-STD-105E.
inspection-colourway = Variante de color
inspection-size = Talla
inspection-in-lot = En el lote
inspection-draw = Sacar
inspection-to-draw = Qué sacar
inspection-draw-how = En proporción al lote, al menos una de cada donde la muestra lo permite: práctica común, sin fuente. Sáquelas al azar.

## Lo que se encontró

inspection-begun = Empezada por
inspection-within = Cada plan cuenta sus propias primeras piezas, en el orden en que se sacan. Una pieza cuenta en la clase de su peor defecto.
inspection-points-rule = Un punto crítico fuera de tolerancia es un defecto mayor, otro punto uno menor: práctica común, sin fuente.
inspection-pieces = Piezas
inspection-nothing-yet = Aún no se ha inspeccionado ninguna pieza.
inspection-correct = Corregir
inspection-sound = Sin defecto: { $count }
inspection-corrected = Registros corregidos: { $count }
inspection-measured = medidas: { $count }
inspection-no-defect = Sin defecto
inspection-enter-beyond = Defecto crítico fuera de la muestra
inspection-conceded = Esto se concedió en la muestra sellada. Aquí cuenta como defecto igualmente: decide la marca.
inspection-curve = Lo que los planes pueden decir
inspection-curve-what = La probabilidad de que este lote se acepte, según la parte defectuosa. Un lote peor que el AQL puede aceptarse, y uno mejor rechazarse.
inspection-curve-share = Parte defectuosa
inspection-curve-likelihood = Probabilidad de aceptación
inspection-curve-at = con { $share } defectuoso, se acepta con probabilidad de { $likelihood }

## Lo que sigue

inspection-enter = Inspeccionar una pieza
inspection-conclude = Concluir
inspection-conclude-what = El programa dice por los registros si el lote se acepta o se rechaza.
inspection-conclude-final = Después no se puede registrar ni corregir ninguna pieza.
inspection-concluded = Conclusión
inspection-decide = Decidir sobre el lote
inspection-decide-final = Una decisión no se cambia después.
inspection-reason-help = Todo menos una liberación necesita un motivo. En una concesión, diga qué defectos se dejan pasar.
inspection-released-help = El lote puede enviarse.
inspection-concession-help = El lote se envía aunque fue rechazado. Diga los defectos.
inspection-rework-help = La fábrica selecciona y repara el lote. Después se inspecciona de nuevo.
inspection-refused-help = La marca no toma el lote.
inspection-fails-critical = Piezas con un defecto crítico: { $count }. Una basta.
inspection-fails = Piezas que cuentan como { $class }: { $found }. Como máximo pueden aceptarse { $accept }.
inspection-next-fails = Lo encontrado rechaza el lote. Concluya la inspección.
inspection-next-enter = Inspeccione las piezas: { $done } de { $sample } están hechas.
inspection-next-enter-other = { $org } inspecciona el lote.
inspection-next-conclude = La muestra está inspeccionada. Concluya la inspección.
inspection-next-decide = Decida sobre este lote.
inspection-next-decide-other = La marca decide sobre este lote.
inspection-next-again = { $org } selecciona y repara el lote. Después se inspecciona de nuevo.
inspection-next-done = No queda nada por hacer aquí.
inspection-again = Inspeccionar el lote reparado

## Registrar una pieza

inspection-corrects = Esta pieza ya se registró. Cuenta lo que usted guarde; el registro anterior queda para leerse.
inspection-other-sort = Otra variante de color o talla
inspection-defects = Defectos
inspection-defects-how = Sin defecto, guarde enseguida.
inspection-classes = Crítico: puede herir a alguien; en caso de duda, elija este. Mayor: la prenda probablemente falla o sirve mucho menos. Menor: difiere de lo pedido, y la prenda sirve igualmente.
inspection-defect = Defecto { $number }
inspection-class-of = Clase
inspection-where = Dónde
inspection-nowhere = No está en esta lista
inspection-times = Cuántos
inspection-words = En palabras
inspection-more = Más defectos
inspection-values = Valores medidos
inspection-other-points = Otros puntos: { $count }
inspection-class-missing = Elija crítico, mayor o menor.
inspection-times-wrong = Escriba un número entero de 1 a { $most }.
inspection-moved-on = Alguien registró esa pieza mientras tanto. La suya es ahora la pieza { $number }: guárdela una vez más.
