# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = Mujer
word-wearer-men = Hombre
word-wearer-unisex = Unisex
word-wearer-children = Niños
word-wearer-infants = Bebés

word-market-eu = Unión Europea
word-market-uk = Reino Unido
word-market-us = Estados Unidos
word-market-other = Otro

word-garment-joggers = Pantalón jogger
word-garment-shorts = Pantalón corto
word-garment-t-shirt = Camiseta
word-garment-hoodie = Sudadera con capucha
word-garment-half-zip = Suéter de media cremallera
word-garment-jacket = Chaqueta
word-garment-dress = Vestido
word-garment-leggings = Leggings

word-worn-upper-outerwear = Sobre otra ropa, parte superior del cuerpo
word-worn-upper = Parte superior del cuerpo
word-worn-lower = Parte inferior del cuerpo
word-worn-whole = Cuerpo entero, en una pieza
word-worn-sleepwear = Ropa de dormir
word-worn-underwear = Ropa interior
word-worn-swimwear = Traje de baño

word-edges-seam-to-seam = De costura a costura
word-edges-edge-to-edge = De borde a borde

word-size-system-alpha = Letras (S, M, L)
word-size-system-numeric = Números
word-size-system-height = Por la altura del niño, cm

word-body-height = Estatura
word-body-chest-girth = Contorno de pecho
word-body-bust-girth = Contorno de busto
word-body-underbust-girth = Contorno bajo el busto
word-body-waist-girth = Contorno de cintura
word-body-hip-girth = Contorno de cadera
word-body-neck-girth = Contorno de cuello
word-body-head-girth = Contorno de cabeza
word-body-arm-length = Largo de brazo
word-body-inside-leg-length = Largo interior de pierna
word-body-hand-girth = Contorno de mano
word-body-foot-length = Largo de pie

word-view-front = Delantero
word-view-back = Espalda
word-view-left = Lado izquierdo (izquierda de quien lo lleva)
word-view-right = Lado derecho (derecha de quien lo lleva)
word-view-angle = En ángulo
word-view-detail = Detalle

word-path-straight = En línea recta
word-path-curved = A lo largo de la curva

word-closure-closed = Cerrado
word-closure-open = Abierto

word-side-left = Izquierda de quien lo lleva
word-side-right = Derecha de quien lo lleva
word-side-both = Ambos lados

word-basis-half = Medio (en plano)
word-basis-full = Completo (todo alrededor)
word-basis-linear = Largo

word-direction-length = A lo largo
word-direction-width = A lo ancho

word-measure-body-length = Largo de cuerpo
word-measure-shoulder-width = Ancho de hombros
word-measure-shoulder-length = Largo de hombro
word-measure-across-front = Ancho de delantero
word-measure-across-back = Ancho de espalda
word-measure-chest = Ancho de pecho
word-measure-waist = Cintura
word-measure-waist-stretched = Cintura, estirada
word-measure-hip = Cadera
word-measure-hem = Ancho de bajo
word-measure-hem-height = Alto de bajo
word-measure-sleeve-length = Largo de manga
word-measure-upper-arm = Ancho de brazo
word-measure-elbow = Codo
word-measure-armhole = Sisa
word-measure-side-seam = Costura lateral
word-measure-underarm-seam = Costura bajo el brazo
word-measure-cuff = Abertura de puño
word-measure-cuff-stretched = Abertura de puño, estirada
word-measure-cuff-height = Alto de puño
word-measure-neck-width = Ancho de cuello
word-measure-neck-opening = Abertura de cuello
word-measure-neck-stretched = Abertura de cuello, estirada
word-measure-neck-drop-front = Caída de cuello delantero
word-measure-neck-drop-back = Caída de cuello trasero
word-measure-collar-height = Alto de cuello
word-measure-hood-height = Alto de capucha
word-measure-hood-width = Ancho de capucha
word-measure-hood-opening = Abertura de capucha
word-measure-front-opening = Abertura delantera
word-measure-zip-length = Largo de cremallera
word-measure-front-rise = Tiro delantero
word-measure-back-rise = Tiro trasero
word-measure-inseam = Entrepierna
word-measure-outseam = Largo exterior
word-measure-thigh = Muslo
word-measure-knee = Rodilla
word-measure-leg-opening = Botapié
word-measure-waistband-height = Alto de pretina
word-measure-pocket-opening = Abertura de bolsillo
word-measure-pocket-width = Ancho de bolsillo
word-measure-pocket-depth = Profundidad de bolsillo
word-measure-pocket-place = Posición de bolsillo
word-measure-gusset = Rombo
word-measure-vent = Alto de abertura
word-measure-yoke-height = Alto de canesú
word-measure-skirt-length = Largo de falda

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = observador de 2°
word-observer-10 = observador de 10°

word-approval-asked = Pedido
word-approval-submitted = Muestra de color enviada
word-approval-approved = Aprobado
word-approval-rejected = Rechazado

word-material-woven-fabric = Tejido plano
word-material-knitted-fabric = Tejido de punto
word-material-other-fabric = Otra tela
word-material-interlining = Entretela
word-material-padding = Relleno
word-material-zip = Cremallera
word-material-drawcord = Cordón
word-material-cord-tip = Puntera de cordón
word-material-cord-stop = Tope de cordón
word-material-eyelet = Ojete
word-material-elastic = Elástico
word-material-button = Botón
word-material-snap = Botón de presión
word-material-hook-and-loop = Cinta de contacto
word-material-buckle = Hebilla
word-material-webbing = Cincha
word-material-tape = Cinta
word-material-reflective = Adorno reflectante
word-material-thread = Hilo de coser
word-material-transfer = Transfer
word-material-patch = Parche
word-material-label = Etiqueta
word-material-packing = Empaque
word-material-other = Otro

word-component-main = Tela principal
word-component-contrast = Tela de contraste
word-component-rib = Puño acanalado (rib)
word-component-lining = Forro
word-component-pocketing = Tela de bolsillo
word-component-padding = Relleno
word-component-coating = Recubrimiento
word-component-trimming = Adorno

word-fibre-cotton = Algodón
word-fibre-wool = Lana
word-fibre-virgin-wool = Lana virgen
word-fibre-recycled-wool = Lana reciclada
word-fibre-silk = Seda
word-fibre-linen = Lino
word-fibre-hemp = Cáñamo
word-fibre-jute = Yute
word-fibre-ramie = Ramio
word-fibre-cashmere = Cachemira
word-fibre-mohair = Mohair
word-fibre-alpaca = Alpaca
word-fibre-angora = Angora
word-fibre-camel = Camello
word-fibre-down = Plumón
word-fibre-viscose = Viscosa
word-fibre-modal = Modal
word-fibre-lyocell = Lyocell
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
word-fibre-other = Otra fibra

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = Espiral
word-zip-teeth-moulded = Plástico inyectado
word-zip-teeth-metal = Metal
word-zip-teeth-invisible = Espiral invisible

word-zip-end-closed = Terminal cerrado
word-zip-end-open = Terminal abierto (separable)
word-zip-end-two-way = Doble sentido

word-cord-place-hood-neck = Capucha o cuello
word-cord-place-chest = Pecho
word-cord-place-waist = Cintura
word-cord-place-hem = Borde inferior de una prenda superior
word-cord-place-legs = Bajos de las piernas
word-cord-place-sleeve = Manga
word-cord-place-back = Espalda
word-cord-place-elsewhere = Otro lugar

word-cord-ends-free = Puntas libres
word-cord-ends-toggled = Puntas libres con tope, puntera o nudo
word-cord-ends-fixed = Cosido, sin punta libre
word-cord-ends-loop = Lazo cerrado

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = pzas
word-measured-in-gram = g

word-consumption-marker = Del marcado
word-consumption-area = Del área de las piezas
word-consumption-estimate = Estimación

word-wastage-allowance = sumado a lo necesario
word-wastage-loss-of-input = perdido de lo comprado

word-minimum-style = por modelo
word-minimum-colour = por color
word-minimum-dimension = por medida

word-evidence-small-parts = Piezas pequeñas
word-evidence-flammability = Inflamabilidad
word-evidence-nickel = Níquel
word-evidence-azo-dyes = Colorantes azoicos
word-evidence-lead = Plomo
word-evidence-colour-fastness = Solidez del color
word-evidence-shrinkage = Encogimiento
word-evidence-strength = Resistencia
word-evidence-other = Otro

word-wash-normal-95 = Lavar a 95 °C
word-wash-normal-70 = Lavar a 70 °C
word-wash-normal-60 = Lavar a 60 °C
word-wash-mild-60 = Lavar a 60 °C, suave
word-wash-normal-50 = Lavar a 50 °C
word-wash-mild-50 = Lavar a 50 °C, suave
word-wash-normal-40 = Lavar a 40 °C
word-wash-mild-40 = Lavar a 40 °C, suave
word-wash-very-mild-40 = Lavar a 40 °C, muy suave
word-wash-normal-30 = Lavar a 30 °C
word-wash-mild-30 = Lavar a 30 °C, suave
word-wash-very-mild-30 = Lavar a 30 °C, muy suave
word-wash-hand = Lavar a mano, máximo 40 °C
word-wash-no = No lavar

word-bleach-any = Cualquier blanqueador
word-bleach-oxygen = Solo blanqueador sin cloro
word-bleach-no = No blanquear

word-tumble-normal = Secar en secadora, normal (80 °C)
word-tumble-low = Secar en secadora, baja (60 °C)
word-tumble-no = No secar en secadora

word-air-dry-line = Secar colgado
word-air-dry-line-shade = Secar colgado a la sombra
word-air-dry-line-drip = Secar colgado por goteo
word-air-dry-line-drip-shade = Secar colgado por goteo a la sombra
word-air-dry-flat = Secar en plano
word-air-dry-flat-shade = Secar en plano a la sombra
word-air-dry-flat-drip = Secar en plano por goteo
word-air-dry-flat-drip-shade = Secar en plano por goteo a la sombra

word-iron-high = Planchar, máximo 200 °C
word-iron-medium = Planchar, máximo 150 °C
word-iron-low = Planchar, máximo 110 °C, sin vapor
word-iron-no = No planchar

word-dry-clean-p = Limpieza en seco, P
word-dry-clean-p-mild = Limpieza en seco, P, suave
word-dry-clean-f = Limpieza en seco, F
word-dry-clean-f-mild = Limpieza en seco, F, suave
word-dry-clean-no = No limpiar en seco

word-wet-clean-normal = Limpieza en húmedo profesional
word-wet-clean-mild = Limpieza en húmedo profesional, suave
word-wet-clean-very-mild = Limpieza en húmedo profesional, muy suave
word-wet-clean-no = No limpiar en húmedo

word-line-seam = Costura
word-line-edge = Borde
word-line-fold = Doblez
word-line-centre-line = Línea central

word-seam-1 = 1 superpuesta
word-seam-2 = 2 solapada
word-seam-3 = 3 ribeteada
word-seam-4 = 4 plana
word-seam-5 = 5 decorativa
word-seam-6 = 6 acabado de borde
word-seam-7 = 7 aplicada
word-seam-8 = 8 capa única

word-method-screen-print = Serigrafía
word-method-heat-transfer = Transfer térmico
word-method-digital-print = Estampado digital
word-method-sublimation = Sublimación
word-method-embroidery = Bordado
word-method-woven-patch = Parche tejido
word-method-applique = Aplicación
word-method-deboss = Bajorrelieve
word-method-other = Otro

word-artwork-form-vector = Líneas y áreas (vector)
word-artwork-form-raster = Imagen (ráster)
word-artwork-form-stitches = Archivo de bordado

word-anchor-top = arriba
word-anchor-bottom = abajo
word-anchor-left = izquierda (como se lee)
word-anchor-right = derecha (como se lee)
word-anchor-centre = centro

word-label-brand = Marca
word-label-care-composition = Cuidado y composición
word-label-size-loop = Etiqueta de talla
word-label-origin = Origen
word-label-warning = Advertencia
word-label-other = Otra

word-label-made-woven = Tejida
word-label-made-printed = Impresa
word-label-made-transfer = Transfer

word-label-fold-flat = Sin doblar
word-label-fold-centre = Doblez central
word-label-fold-ends = Doblez en los extremos
word-label-fold-mitre = Doblez en inglete
word-label-fold-loop = Lazo

word-driver-style = Igual en todos
word-driver-size = Por talla
word-driver-colourway = Por variante de color
word-driver-market = Por mercado

word-label-content-composition = Composición
word-label-content-care = Cuidado
word-label-content-origin = Origen
word-label-content-size = Talla

word-assortment-solid = Sólido: una talla y variante por caja
word-assortment-assorted = Surtido

word-stitch-class-100 = Cadeneta de un hilo
word-stitch-class-200 = Puntada a mano
word-stitch-class-300 = Puntada de doble pespunte
word-stitch-class-400 = Cadeneta de varios hilos
word-stitch-class-500 = Puntada de sobrehilado
word-stitch-class-600 = Puntada de recubrimiento

word-status-verified = Cotejado con una copia publicada
word-status-seen = Visto en uso, sin cotejar con el texto oficial
word-status-from-memory = Sin cotejar con el texto oficial
