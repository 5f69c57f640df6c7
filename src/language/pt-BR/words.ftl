# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = Mulheres
word-wearer-men = Homens
word-wearer-unisex = Unissex
word-wearer-children = Crianças
word-wearer-infants = Bebês

word-market-eu = União Europeia
word-market-uk = Reino Unido
word-market-us = Estados Unidos
word-market-other = Outro

word-garment-joggers = Calça jogger
word-garment-shorts = Bermuda
word-garment-t-shirt = Camiseta
word-garment-hoodie = Moletom com capuz
word-garment-half-zip = Blusa meio zíper
word-garment-jacket = Jaqueta
word-garment-dress = Vestido
word-garment-leggings = Legging

word-worn-upper-outerwear = Por cima de outras roupas, parte de cima do corpo
word-worn-upper = Parte de cima do corpo
word-worn-lower = Parte de baixo do corpo
word-worn-whole = Corpo inteiro, em uma peça
word-worn-sleepwear = Roupa de dormir
word-worn-underwear = Roupa íntima
word-worn-swimwear = Moda praia

word-edges-seam-to-seam = De costura a costura
word-edges-edge-to-edge = De borda a borda

word-size-system-alpha = Letras (P, M, G ou S, M, L)
word-size-system-numeric = Números
word-size-system-height = Pela altura da criança, cm

word-body-height = Altura
word-body-chest-girth = Perímetro do tórax
word-body-bust-girth = Perímetro do busto
word-body-underbust-girth = Perímetro abaixo do busto
word-body-waist-girth = Perímetro da cintura
word-body-hip-girth = Perímetro do quadril
word-body-neck-girth = Perímetro do pescoço
word-body-head-girth = Perímetro da cabeça
word-body-arm-length = Comprimento do braço
word-body-inside-leg-length = Comprimento interno da perna
word-body-hand-girth = Perímetro da mão
word-body-foot-length = Comprimento do pé

word-view-front = Frente
word-view-back = Costas
word-view-left = Lado esquerdo (esquerda de quem veste)
word-view-right = Lado direito (direita de quem veste)
word-view-angle = Em ângulo
word-view-detail = Detalhe

word-path-straight = Em linha reta
word-path-curved = Ao longo da curva

word-closure-closed = Fechado
word-closure-open = Aberto

word-side-left = Esquerda de quem veste
word-side-right = Direita de quem veste
word-side-both = Os dois lados

word-basis-half = Metade (no plano)
word-basis-full = Total (volta inteira)
word-basis-linear = Comprimento

word-direction-length = No comprimento
word-direction-width = Na largura

word-measure-body-length = Comprimento do corpo
word-measure-shoulder-width = Largura de ombro a ombro
word-measure-shoulder-length = Comprimento do ombro
word-measure-across-front = Entre cavas frente
word-measure-across-back = Entre cavas costas
word-measure-chest = Largura do tórax
word-measure-waist = Cintura
word-measure-waist-stretched = Cintura, esticada
word-measure-hip = Quadril
word-measure-hem = Largura da barra
word-measure-hem-height = Altura da barra
word-measure-sleeve-length = Comprimento da manga
word-measure-upper-arm = Largura do braço
word-measure-elbow = Cotovelo
word-measure-armhole = Cava
word-measure-side-seam = Costura lateral
word-measure-underarm-seam = Costura sob o braço
word-measure-cuff = Abertura do punho
word-measure-cuff-stretched = Abertura do punho, esticada
word-measure-cuff-height = Altura do punho
word-measure-neck-width = Largura do decote
word-measure-neck-opening = Abertura do decote
word-measure-neck-stretched = Abertura do decote, esticada
word-measure-neck-drop-front = Profundidade do decote frente
word-measure-neck-drop-back = Profundidade do decote costas
word-measure-collar-height = Altura da gola
word-measure-hood-height = Altura do capuz
word-measure-hood-width = Largura do capuz
word-measure-hood-opening = Abertura do capuz
word-measure-front-opening = Abertura da frente
word-measure-zip-length = Comprimento do zíper
word-measure-front-rise = Gancho dianteiro
word-measure-back-rise = Gancho traseiro
word-measure-inseam = Entrepernas
word-measure-outseam = Comprimento lateral
word-measure-thigh = Coxa
word-measure-knee = Joelho
word-measure-leg-opening = Boca da perna
word-measure-waistband-height = Altura do cós
word-measure-pocket-opening = Abertura do bolso
word-measure-pocket-width = Largura do bolso
word-measure-pocket-depth = Profundidade do bolso
word-measure-pocket-place = Posição do bolso
word-measure-gusset = Fundilho
word-measure-vent = Altura da fenda
word-measure-yoke-height = Altura da pala
word-measure-skirt-length = Comprimento da saia

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = observador de 2°
word-observer-10 = observador de 10°

word-approval-asked = Pedido
word-approval-submitted = Amostra de cor enviada
word-approval-approved = Aprovado
word-approval-rejected = Reprovado

word-material-woven-fabric = Tecido plano
word-material-knitted-fabric = Malha
word-material-other-fabric = Outro tecido
word-material-interlining = Entretela
word-material-padding = Enchimento
word-material-zip = Zíper
word-material-drawcord = Cordão
word-material-cord-tip = Ponteira de cordão
word-material-cord-stop = Regulador de cordão
word-material-eyelet = Ilhós
word-material-elastic = Elástico
word-material-button = Botão
word-material-snap = Botão de pressão
word-material-hook-and-loop = Fecho de contato
word-material-buckle = Fivela
word-material-webbing = Cadarço
word-material-tape = Fita
word-material-reflective = Aviamento refletivo
word-material-thread = Linha de costura
word-material-transfer = Transfer
word-material-patch = Aplique
word-material-label = Etiqueta
word-material-packing = Embalagem
word-material-other = Outro

word-component-main = Tecido principal
word-component-contrast = Tecido contrastante
word-component-rib = Ribana
word-component-lining = Forro
word-component-pocketing = Forro de bolso
word-component-padding = Enchimento
word-component-coating = Revestimento
word-component-trimming = Aviamento

word-fibre-cotton = Algodão
word-fibre-wool = Lã
word-fibre-virgin-wool = Lã virgem
word-fibre-recycled-wool = Lã reciclada
word-fibre-silk = Seda
word-fibre-linen = Linho
word-fibre-hemp = Cânhamo
word-fibre-jute = Juta
word-fibre-ramie = Rami
word-fibre-cashmere = Caxemira
word-fibre-mohair = Mohair
word-fibre-alpaca = Alpaca
word-fibre-angora = Angorá
word-fibre-camel = Camelo
word-fibre-down = Penugem
word-fibre-viscose = Viscose
word-fibre-modal = Modal
word-fibre-lyocell = Liocel
word-fibre-cupro = Cupro
word-fibre-acetate = Acetato
word-fibre-triacetate = Triacetato
word-fibre-polyester = Poliéster
word-fibre-polyamide = Poliamida
word-fibre-acrylic = Acrílico
word-fibre-modacrylic = Modacrílico
word-fibre-polypropylene = Polipropileno
word-fibre-polyethylene = Polietileno
word-fibre-polyurethane = Poliuretano
word-fibre-elastane = Elastano
word-fibre-elastodiene = Elastodieno
word-fibre-elastolefin = Elastolefina
word-fibre-elastomultiester = Elastomultiéster
word-fibre-aramid = Aramida
word-fibre-polylactide = Polilactida
word-fibre-chlorofibre = Clorofibra
word-fibre-metal-fibre = Fibra metálica
word-fibre-paper = Papel
word-fibre-other = Outra fibra

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = Espiral (nylon)
word-zip-teeth-moulded = Plástico injetado
word-zip-teeth-metal = Metal
word-zip-teeth-invisible = Espiral invisível

word-zip-end-closed = Terminal fechado
word-zip-end-open = Terminal aberto (separável)
word-zip-end-two-way = Dois sentidos

word-cord-place-hood-neck = Capuz ou decote
word-cord-place-chest = Tórax
word-cord-place-waist = Cintura
word-cord-place-hem = Borda inferior de uma peça de cima
word-cord-place-legs = Bocas das pernas
word-cord-place-sleeve = Manga
word-cord-place-back = Costas
word-cord-place-elsewhere = Outro lugar

word-cord-ends-free = Pontas livres
word-cord-ends-toggled = Pontas livres com regulador, ponteira ou nó
word-cord-ends-fixed = Costurado, sem ponta livre
word-cord-ends-loop = Laço fechado

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = un.
word-measured-in-gram = g

word-consumption-marker = Do encaixe
word-consumption-area = Da área das peças
word-consumption-estimate = Estimativa

word-wastage-allowance = somado ao necessário
word-wastage-loss-of-input = perdido do que se compra

word-minimum-style = por modelo
word-minimum-colour = por cor
word-minimum-dimension = por dimensão

word-evidence-small-parts = Peças pequenas
word-evidence-flammability = Inflamabilidade
word-evidence-nickel = Níquel
word-evidence-azo-dyes = Corantes azo
word-evidence-lead = Chumbo
word-evidence-colour-fastness = Solidez da cor
word-evidence-shrinkage = Encolhimento
word-evidence-strength = Resistência
word-evidence-other = Outro

word-wash-normal-95 = Lavar a 95 °C
word-wash-normal-70 = Lavar a 70 °C
word-wash-normal-60 = Lavar a 60 °C
word-wash-mild-60 = Lavar a 60 °C, suave
word-wash-normal-50 = Lavar a 50 °C
word-wash-mild-50 = Lavar a 50 °C, suave
word-wash-normal-40 = Lavar a 40 °C
word-wash-mild-40 = Lavar a 40 °C, suave
word-wash-very-mild-40 = Lavar a 40 °C, muito suave
word-wash-normal-30 = Lavar a 30 °C
word-wash-mild-30 = Lavar a 30 °C, suave
word-wash-very-mild-30 = Lavar a 30 °C, muito suave
word-wash-hand = Lavar à mão, no máximo 40 °C
word-wash-no = Não lavar

word-bleach-any = Qualquer alvejante
word-bleach-oxygen = Só alvejante sem cloro
word-bleach-no = Não alvejar

word-tumble-normal = Secar em tambor, normal (80 °C)
word-tumble-low = Secar em tambor, baixa (60 °C)
word-tumble-no = Não secar em tambor

word-air-dry-line = Secar no varal
word-air-dry-line-shade = Secar no varal à sombra
word-air-dry-line-drip = Secar no varal sem torcer
word-air-dry-line-drip-shade = Secar no varal sem torcer, à sombra
word-air-dry-flat = Secar na horizontal
word-air-dry-flat-shade = Secar na horizontal à sombra
word-air-dry-flat-drip = Secar na horizontal sem torcer
word-air-dry-flat-drip-shade = Secar na horizontal sem torcer, à sombra

word-iron-high = Passar, no máximo 200 °C
word-iron-medium = Passar, no máximo 150 °C
word-iron-low = Passar, no máximo 110 °C, sem vapor
word-iron-no = Não passar

word-dry-clean-p = Limpeza a seco, P
word-dry-clean-p-mild = Limpeza a seco, P, suave
word-dry-clean-f = Limpeza a seco, F
word-dry-clean-f-mild = Limpeza a seco, F, suave
word-dry-clean-no = Não limpar a seco

word-wet-clean-normal = Limpeza a úmido profissional
word-wet-clean-mild = Limpeza a úmido profissional, suave
word-wet-clean-very-mild = Limpeza a úmido profissional, muito suave
word-wet-clean-no = Não limpar a úmido

word-line-seam = Costura
word-line-edge = Borda
word-line-fold = Dobra
word-line-centre-line = Linha de centro

word-seam-1 = 1 sobreposta
word-seam-2 = 2 encavalada
word-seam-3 = 3 debruada
word-seam-4 = 4 plana
word-seam-5 = 5 decorativa
word-seam-6 = 6 acabamento de borda
word-seam-7 = 7 aplicada
word-seam-8 = 8 camada única

word-method-screen-print = Serigrafia
word-method-heat-transfer = Transfer térmico
word-method-digital-print = Estampa digital
word-method-sublimation = Sublimação
word-method-embroidery = Bordado
word-method-woven-patch = Aplique tecido
word-method-applique = Aplicação
word-method-deboss = Baixo-relevo
word-method-other = Outro

word-artwork-form-vector = Linhas e áreas (vetor)
word-artwork-form-raster = Imagem (raster)
word-artwork-form-stitches = Arquivo de bordado

word-anchor-top = alto
word-anchor-bottom = base
word-anchor-left = esquerda (como se lê)
word-anchor-right = direita (como se lê)
word-anchor-centre = centro

word-label-brand = Marca
word-label-care-composition = Conservação e composição
word-label-size-loop = Etiqueta de tamanho
word-label-origin = Origem
word-label-warning = Aviso
word-label-other = Outra

word-label-made-woven = Tecida
word-label-made-printed = Impressa
word-label-made-transfer = Transfer

word-label-fold-flat = Sem dobra
word-label-fold-centre = Dobra central
word-label-fold-ends = Dobra nas pontas
word-label-fold-mitre = Dobra em esquadria
word-label-fold-loop = Laço

word-driver-style = Igual em todos
word-driver-size = Por tamanho
word-driver-colourway = Por variante de cor
word-driver-market = Por mercado

word-label-content-composition = Composição
word-label-content-care = Conservação
word-label-content-origin = Origem
word-label-content-size = Tamanho

word-assortment-solid = Sólido: um tamanho e uma variante por caixa
word-assortment-assorted = Sortido

word-stitch-class-100 = Ponto corrente de uma linha
word-stitch-class-200 = Ponto à mão
word-stitch-class-300 = Ponto fixo
word-stitch-class-400 = Ponto corrente de várias linhas
word-stitch-class-500 = Ponto overloque
word-stitch-class-600 = Ponto de cobertura

word-status-verified = Conferido com um texto publicado
word-status-seen = Visto em uso, não conferido com o texto oficial
word-status-from-memory = Não conferido com o texto oficial
