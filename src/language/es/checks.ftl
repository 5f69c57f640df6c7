### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere


## Header

check-markets-none = No se dice dónde se venderá la prenda. Elija los mercados: las revisiones de etiquetas y de seguridad dependen de ellos.
check-wearer-missing = No se dice para quién es la prenda. Elíjalo: las revisiones de seguridad dependen de ello.
check-languages-missing = No se indica ningún idioma de las etiquetas. Escríbalos: cada mercado pide el suyo.
check-exemption-void = La exención de “{ $code }” no tiene efecto: necesita un motivo y un nombre, y solo se pueden dejar de lado las prohibiciones de cordones. Complétela o quítela.

## Sizes

check-size-age-missing = Es una prenda de niño, y estas tallas no dicen edad ni estatura: { $sizes }. Escriba una de las dos: las revisiones de seguridad dependen de ello.

## Drawings


## Points of measure


## Grade rules

check-grade-reverses = { $letter } { $name }: el valor crece entre unas tallas y disminuye entre otras; cambia en la talla { $size }. ¿Es a propósito?
check-tolerance-overlaps = { $letter } { $name }: este punto es crítico, y una pieza de talla { $from } puede pasar por { $to }: las tallas difieren { $step }, y las tolerancias son −{ $minus } y +{ $plus }. Reduzca las tolerancias.
check-step-coarse = { $letter } { $name }: el paso de redondeo { $step } es más de la mitad de la tolerancia (−{ $minus }, +{ $plus }). Use un paso menor o una tolerancia mayor.
check-steps-uneven = { $letter } { $name }: cada talla difiere { $exact }, pero el redondeo hace { $before } hasta la talla { $size } y { $after } después. Use un paso menor u otro escalado.
check-grade-half-or-full = { $letter } { $name }: de la primera talla a la última crece { $growth } en la vuelta completa; puntos parecidos, unos { $usual }. ¿Se escribió como medio o completo por error?
check-value-not-positive = { $letter } { $name }: la talla { $size } da { $value }. Una medida es mayor que cero: corrija el valor o el escalado.
check-lengths-partial = { $letter } { $name } cambia con algunos largos, y nada se dice de { $length }. Escriba lo que añade; se permite 0.

## Relations between measurements

check-stretched-below-relaxed = { $item }: en la talla { $size } mide { $relaxed } sin estirar y solo { $stretched } estirado. Corrija uno de los dos.
check-neck-under-head = { $item }: en la talla { $size } el cuello abre { $opening } alrededor, y la cabeza mide { $girth }. Puede no pasar por la cabeza: revíselo.
check-cuff-under-hand = { $item }: en la talla { $size } el puño abre { $opening } alrededor, y la mano mide { $girth }. La mano puede no pasar: revíselo.
check-zip-not-opening = { $item }: en la talla { $size } la cremallera mide { $length }, y su abertura { $point } mide { $opening }. Corrija uno de los dos.
check-cord-under-channel = { $item }: en la talla { $size } el cordón mide { $length }, y su canal { $point } mide { $channel } alrededor. Alargue el cordón.
check-rise-and-inseam = { $item }: en la talla { $size } el tiro { $rise } y la entrepierna { $inseam } no suman el largo exterior { $outseam }. Revise los tres.
check-points-usual = { $kind }: estos puntos son usuales, y de ningún punto se dice que sea uno de ellos: { $missing }. Añádalos o diga qué son sus puntos.
check-dimension-missing = { $item }: con ello hacen falta también estos, y de ningún punto se dice que sea uno de ellos: { $missing }. Añádalos.

## Parts and colourways

check-parts-none = No hay partes. Escriba lo que puede tener color propio: tela principal, puño, hilo.
check-colourways-none = No hay variantes de color. Escriba al menos una.

## Materials

check-claim-hundred = { $item } dice 100 %, puro o todo, y { $material } tiene una segunda fibra. La UE y EE. UU. permiten tales palabras solo para una única fibra. Cámbielas.
check-fibre-twice = { $item }: la composición nombra una fibra dos veces. Súmelas.
check-virgin-wool = { $item }: lana virgen en esta mezcla. La UE permite el nombre solo con al menos 25 % de ella y una única otra fibra (Reglamento 1007/2011, artículo 8). Revíselo.
check-mass-disagrees = { $item }: se declara { $declared } g/m², y los hilos dan { $computed } g/m². Revise ambos.
check-zip-size-missing = { $item }: la cremallera no tiene largo. Escríbalo o elija el punto que cierra.
check-minimum-unmet = { $item }: { $colourway } necesita { $needed }, y el pedido mínimo es { $minimum } (contado en: { $unit }). Pregunte al proveedor o pida más.

## Construction

check-stitch-unknown = { $item }: { $stitch } no está en la tabla de puntadas de la ISO 4915. Revíselo.
check-seam-code-unlike = { $item }: { $code } no es una designación de la ISO 4916, o es de otra clase que la elegida. Revise ambos.

## Artwork

check-artwork-file-missing = { $item }: falta el archivo original. Súbalo.
check-artwork-coarse = { $item }: a su tamaño real la imagen tiene { $dpi } puntos por pulgada; lo usual es { $wanted }. Suba una más fina.
check-artwork-live-text = { $item }: el original tiene texto vivo o imágenes vinculadas, que pueden verse distintas en otro lugar. Convierta el texto en contornos e incorpore las imágenes.
check-text-too-small = { $item }: las letras más pequeñas miden { $height }. { $method } suele sostener desde { $least }. Agrándelas.

## Labels and care

check-care-customary = No hay instrucciones de cuidado en una etiqueta. La UE y el Reino Unido no las exigen, pero los compradores las esperan. Escriba el cuidado y una etiqueta para él.
check-care-harsh = { $treatments }: la etiqueta permite más de lo que soportan estos materiales: { $materials }. Elija un cuidado más suave.
check-label-size-missing = { $item }: falta { $missing }. Escríbalo.
check-label-place-missing = { $item }: no se dice a qué distancia de una costura va. Escriba una distancia.
check-label-language-missing = { $item } no tiene texto en este idioma: { $language }. Escríbalo.

## Packing

check-ratio-remainder = { $item }: un paquete tiene { $pack } piezas, y { $colourway } tiene { $pieces }; sobran { $left }. Cambie uno de los dos.

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-exempted = { $item }: un cordón en la capucha o cuello de una prenda de niño, y una regla se dejó de lado. { $reasons }. Haga que lo juzgue un laboratorio autorizado.
check-cord-free-ends-eu = { $item }: un cordón en la capucha o cuello de una prenda de niño mayor, tallas { $sizes }. { $rule } prohíbe ahí las puntas libres. Quítelas o diga que no hay.
check-cord-free-missing = { $item }: de este cordón de prenda de niño falta { $missing }. Escríbalo: las reglas dependen de ello.
check-cord-long-us = { $item }: el cordón cuelga { $free } por fuera, tallas { $sizes }. { $rule } permite { $most } con la prenda en su ancho total. Acórtelo.
check-cord-toggled-us = { $item }: el cordón tiene topes, punteras o nudos, tallas { $sizes }. { $rule } no permite ninguno en la cintura y el bajo. Quítelos.
check-cord-loose-us = { $item }: el cordón se puede sacar, tallas { $sizes }. { $rule } pide una presilla que lo sujete. Añada una.
check-cord-long-eu = { $item }: el cordón cuelga { $free } por fuera, tallas { $sizes }. De memoria, sin cotejar, { $rule } permite { $most } ahí. Lea la cifra en la norma y acorte el cordón si hace falta.
check-cord-back-eu = { $item }: un cordón en la espalda de una prenda de niño, tallas { $sizes }. De memoria, sin cotejar, { $rule } permite ahí solo cinturones atados. Léalo en la norma.
check-evidence-small-parts = { $item } puede desprenderse, y las tallas { $sizes } son para niños menores de 3 años. { $rule } pide un ensayo de piezas pequeñas. Escriba el informe.
check-evidence-flammability = { $item }: no se indica ningún ensayo de velocidad de combustión. { $rule } puede pedir uno. Escriba el informe o diga por qué no hay.
check-evidence-sleepwear = { $item }: ropa de dormir infantil, tallas { $sizes }, y no se indica ningún ensayo de combustión. { $rule } pide uno. Escriba el informe.
check-evidence-nickel = { $item } es metal en contacto con la piel, y no se indica ningún ensayo de níquel. { $rule } lo limita. Escriba el informe.
check-evidence-azo-dyes = { $item } está teñido, y no se indica ningún ensayo de colorantes azoicos. { $rule } los limita. Escriba el informe.
check-evidence-lead = { $item }: adorno de un producto infantil, tallas { $sizes }, y no se indica ningún ensayo de plomo. { $rule } lo limita. Escriba el informe.
