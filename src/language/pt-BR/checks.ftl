### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere


## Header

check-markets-none = Não se diz onde a peça será vendida. Escolha os mercados: as verificações de etiquetas e de segurança dependem deles.
check-wearer-missing = Não se diz para quem é a peça. Escolha: as verificações de segurança dependem disso.
check-languages-missing = Nenhum idioma das etiquetas foi indicado. Informe-os: cada mercado pede o seu.
check-exemption-void = A isenção de “{ $code }” não tem efeito: precisa de motivo e nome, e só proibições de cordões podem ser postas de lado. Complete ou remova.

## Sizes

check-size-age-missing = É roupa de criança, e estes tamanhos não dizem idade nem altura: { $sizes }. Informe um dos dois: as verificações de segurança dependem disso.

## Drawings


## Points of measure


## Grade rules

check-grade-reverses = { $letter } { $name }: o valor cresce entre alguns tamanhos e diminui entre outros; muda no tamanho { $size }. É isso mesmo?
check-tolerance-overlaps = { $letter } { $name }: este ponto é crítico, e uma peça { $from } pode passar por { $to }: os tamanhos diferem { $step }, e as tolerâncias são −{ $minus } e +{ $plus }. Reduza as tolerâncias.
check-step-coarse = { $letter } { $name }: o passo de arredondamento { $step } é mais da metade da tolerância (−{ $minus }, +{ $plus }). Use um passo menor ou uma tolerância maior.
check-steps-uneven = { $letter } { $name }: cada tamanho difere { $exact }, mas o arredondamento faz { $before } até o tamanho { $size } e { $after } depois. Use um passo menor ou outra graduação.
check-grade-half-or-full = { $letter } { $name }: do primeiro tamanho ao último cresce { $growth } na volta inteira; pontos parecidos, cerca de { $usual }. Foi digitado como metade ou total por engano?
check-value-not-positive = { $letter } { $name }: o tamanho { $size } dá { $value }. Uma medida é maior que zero: corrija o valor ou a graduação.
check-lengths-partial = { $letter } { $name } muda com alguns comprimentos, e nada se diz de { $length }. Informe o que acrescenta; 0 é permitido.

## Relations between measurements

check-stretched-below-relaxed = { $item }: no tamanho { $size } mede { $relaxed } sem esticar e só { $stretched } esticado. Corrija um dos dois.
check-neck-under-head = { $item }: no tamanho { $size } o decote abre { $opening } em volta, e a cabeça mede { $girth }. Pode não passar pela cabeça: confira.
check-cuff-under-hand = { $item }: no tamanho { $size } o punho abre { $opening } em volta, e a mão mede { $girth }. A mão pode não passar: confira.
check-zip-not-opening = { $item }: no tamanho { $size } o zíper tem { $length }, e a abertura { $point } mede { $opening }. Corrija um dos dois.
check-cord-under-channel = { $item }: no tamanho { $size } o cordão tem { $length }, e o canal { $point } mede { $channel } em volta. Faça o cordão mais longo.
check-rise-and-inseam = { $item }: no tamanho { $size } o gancho { $rise } e o entrepernas { $inseam } não somam o comprimento lateral { $outseam }. Confira os três.
check-points-usual = { $kind }: estes pontos são usuais, e nenhum ponto é dito ser um deles: { $missing }. Acrescente-os ou diga o que são os seus pontos.
check-dimension-missing = { $item }: com ele também são precisos estes, e nenhum ponto é dito ser um deles: { $missing }. Acrescente-os.

## Parts and colourways

check-parts-none = Não há partes. Informe o que pode ter cor própria: tecido principal, punho, linha.
check-colourways-none = Não há variantes de cor. Informe pelo menos uma.

## Materials

check-claim-hundred = { $item } diz 100 %, puro ou todo, e { $material } tem uma segunda fibra. A UE e os EUA permitem tais palavras só para uma única fibra. Altere.
check-fibre-twice = { $item }: a composição cita uma fibra duas vezes. Some as duas.
check-virgin-wool = { $item }: lã virgem nesta mistura. A UE permite o nome só com pelo menos 25 % dela e uma única outra fibra (Regulamento 1007/2011, artigo 8). Confira.
check-mass-disagrees = { $item }: declara-se { $declared } g/m², e os fios dão { $computed } g/m². Confira os dois.
check-zip-size-missing = { $item }: o zíper não tem comprimento. Informe ou escolha o ponto que ele fecha.
check-minimum-unmet = { $item }: { $colourway } precisa de { $needed }, e o pedido mínimo é { $minimum } (contado em: { $unit }). Pergunte ao fornecedor ou peça mais.

## Construction

check-stitch-unknown = { $item }: { $stitch } não está na tabela de pontos da ISO 4915. Confira.
check-seam-code-unlike = { $item }: { $code } não é designação da ISO 4916, ou é de classe diferente da escolhida. Confira os dois.

## Artwork

check-artwork-file-missing = { $item }: falta o arquivo original. Envie-o.
check-artwork-coarse = { $item }: no tamanho real a imagem tem { $dpi } pontos por polegada; { $wanted } é o usual. Envie uma mais fina.
check-artwork-live-text = { $item }: o original tem texto vivo ou imagens vinculadas, que podem aparecer diferentes em outro lugar. Converta o texto em contornos e incorpore as imagens.
check-text-too-small = { $item }: as letras menores têm { $height }. { $method } costuma segurar a partir de { $least }. Aumente-as.

## Labels and care

check-care-customary = Não há instruções de conservação em etiqueta. A UE e o Reino Unido não as exigem, mas os compradores esperam. Informe a conservação e uma etiqueta para ela.
check-care-harsh = { $treatments }: a etiqueta permite mais do que estes materiais suportam: { $materials }. Escolha uma conservação mais suave.
check-label-size-missing = { $item }: falta { $missing }. Informe.
check-label-place-missing = { $item }: não se diz a que distância de uma costura fica. Informe uma distância.
check-label-language-missing = { $item } não tem texto neste idioma: { $language }. Informe.

## Packing

check-ratio-remainder = { $item }: um pacote tem { $pack } peças, e { $colourway } tem { $pieces }; sobram { $left }. Altere um dos dois.

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-exempted = { $item }: um cordão no capuz ou decote de roupa de criança, e uma regra foi posta de lado. { $reasons }. Peça a avaliação de um laboratório autorizado.
check-cord-free-ends-eu = { $item }: um cordão no capuz ou decote de roupa de criança maior, tamanhos { $sizes }. { $rule } proíbe pontas livres ali. Retire-as ou diga que não há.
check-cord-free-missing = { $item }: deste cordão de roupa de criança falta { $missing }. Informe: as regras dependem disso.
check-cord-long-us = { $item }: o cordão fica { $free } para fora, tamanhos { $sizes }. { $rule } permite { $most } com a peça na largura total. Encurte-o.
check-cord-toggled-us = { $item }: o cordão tem reguladores, ponteiras ou nós, tamanhos { $sizes }. { $rule } não permite nenhum na cintura e na barra. Retire-os.
check-cord-loose-us = { $item }: o cordão pode ser puxado para fora, tamanhos { $sizes }. { $rule } pede um travete que o prenda. Acrescente um.
check-cord-long-eu = { $item }: o cordão fica { $free } para fora, tamanhos { $sizes }. De memória, sem conferir, { $rule } permite { $most } ali. Leia o número na norma e encurte o cordão se preciso.
check-cord-back-eu = { $item }: um cordão nas costas de roupa de criança, tamanhos { $sizes }. De memória, sem conferir, { $rule } permite ali só cintos amarrados. Leia na norma.
check-evidence-small-parts = { $item } pode soltar-se, e os tamanhos { $sizes } são para crianças menores de 3 anos. { $rule } pede um ensaio de peças pequenas. Informe o laudo.
check-evidence-flammability = { $item }: nenhum ensaio de velocidade de queima foi indicado. { $rule } pode pedir um. Informe o laudo ou diga por que não há.
check-evidence-sleepwear = { $item }: roupa de dormir infantil, tamanhos { $sizes }, e nenhum ensaio de queima foi indicado. { $rule } pede um. Informe o laudo.
check-evidence-nickel = { $item } é metal em contato com a pele, e nenhum ensaio de níquel foi indicado. { $rule } o limita. Informe o laudo.
check-evidence-azo-dyes = { $item } é tingido, e nenhum ensaio de corantes azo foi indicado. { $rule } os limita. Informe o laudo.
check-evidence-lead = { $item }: aviamento de produto infantil, tamanhos { $sizes }, e nenhum ensaio de chumbo foi indicado. { $rule } o limita. Informe o laudo.
