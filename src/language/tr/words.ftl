# The words of the document: every value of its fixed sets, `word-SET-value`.


word-wearer-women = Kadın
word-wearer-men = Erkek
word-wearer-unisex = Üniseks
word-wearer-children = Çocuk
word-wearer-infants = Bebek

word-market-eu = Avrupa Birliği
word-market-uk = Birleşik Krallık
word-market-us = ABD
word-market-other = Diğer

word-garment-joggers = Jogger pantolon
word-garment-shorts = Şort
word-garment-t-shirt = Tişört
word-garment-hoodie = Kapüşonlu sweatshirt
word-garment-half-zip = Yarım fermuarlı üst
word-garment-jacket = Ceket
word-garment-dress = Elbise
word-garment-leggings = Tayt

word-worn-upper-outerwear = Dış giyim, üst beden
word-worn-upper = Üst beden
word-worn-lower = Alt beden
word-worn-whole = Bütün vücut, tek parça
word-worn-sleepwear = Gecelik giyim
word-worn-underwear = İç giyim
word-worn-swimwear = Mayo

word-edges-seam-to-seam = Dikişten dikişe
word-edges-edge-to-edge = Kenardan kenara

word-size-system-alpha = Harf (S, M, L)
word-size-system-numeric = Sayı
word-size-system-height = Çocuğun boyuna göre, cm

word-body-height = Boy
word-body-chest-girth = Göğüs çevresi
word-body-bust-girth = Göğüs çevresi (kadın)
word-body-underbust-girth = Göğüs altı çevresi
word-body-waist-girth = Bel çevresi
word-body-hip-girth = Kalça çevresi
word-body-neck-girth = Boyun çevresi
word-body-head-girth = Baş çevresi
word-body-arm-length = Kol boyu
word-body-inside-leg-length = İç bacak boyu
word-body-hand-girth = El çevresi
word-body-foot-length = Ayak boyu

word-view-front = Ön
word-view-back = Arka
word-view-left = Sol taraf (giyenin solu)
word-view-right = Sağ taraf (giyenin sağı)
word-view-angle = Açılı
word-view-detail = Detay

word-path-straight = Düz
word-path-curved = Eğri boyunca

word-closure-closed = Kapalı
word-closure-open = Açık

word-side-left = Giyenin solu
word-side-right = Giyenin sağı
word-side-both = İki taraf

word-basis-half = Yarım (düz serili)
word-basis-full = Tam (çepeçevre)
word-basis-linear = Uzunluk

word-direction-length = Boyuna
word-direction-width = Enine

word-measure-body-length = Boy
word-measure-shoulder-width = Omuz genişliği
word-measure-shoulder-length = Omuz boyu
word-measure-across-front = Ön genişlik
word-measure-across-back = Arka genişlik
word-measure-chest = Göğüs genişliği
word-measure-waist = Bel
word-measure-waist-stretched = Bel, gergin
word-measure-hip = Kalça
word-measure-hem = Etek ucu genişliği
word-measure-hem-height = Etek ucu kıvrım payı
word-measure-sleeve-length = Kol boyu
word-measure-upper-arm = Pazu
word-measure-elbow = Dirsek
word-measure-armhole = Kol evi
word-measure-side-seam = Yan dikiş
word-measure-underarm-seam = Kol altı dikişi
word-measure-cuff = Manşet açıklığı
word-measure-cuff-stretched = Manşet açıklığı, gergin
word-measure-cuff-height = Manşet yüksekliği
word-measure-neck-width = Yaka genişliği
word-measure-neck-opening = Yaka açıklığı
word-measure-neck-stretched = Yaka açıklığı, gergin
word-measure-neck-drop-front = Ön yaka düşüklüğü
word-measure-neck-drop-back = Arka yaka düşüklüğü
word-measure-collar-height = Yaka yüksekliği
word-measure-hood-height = Kapüşon yüksekliği
word-measure-hood-width = Kapüşon genişliği
word-measure-hood-opening = Kapüşon açıklığı
word-measure-front-opening = Ön açıklık
word-measure-zip-length = Fermuar boyu
word-measure-front-rise = Ön ağ
word-measure-back-rise = Arka ağ
word-measure-inseam = İç boy
word-measure-outseam = Dış boy
word-measure-thigh = Baldır
word-measure-knee = Diz
word-measure-leg-opening = Paça genişliği
word-measure-waistband-height = Kemer yüksekliği
word-measure-pocket-opening = Cep açıklığı
word-measure-pocket-width = Cep genişliği
word-measure-pocket-depth = Cep derinliği
word-measure-pocket-place = Cep yeri
word-measure-gusset = Kuş (apışlık)
word-measure-vent = Yırtmaç yüksekliği
word-measure-yoke-height = Roba yüksekliği
word-measure-skirt-length = Etek boyu

word-illuminant-d50 = D50
word-illuminant-d65 = D65
word-illuminant-a = A
word-illuminant-f11 = F11

word-observer-2 = 2° gözlemci
word-observer-10 = 10° gözlemci

word-approval-asked = İstendi
word-approval-submitted = Renk numunesi gönderildi
word-approval-approved = Onaylandı
word-approval-rejected = Reddedildi

word-material-woven-fabric = Dokuma kumaş
word-material-knitted-fabric = Örme kumaş
word-material-other-fabric = Diğer kumaş
word-material-interlining = Tela
word-material-padding = Dolgu
word-material-zip = Fermuar
word-material-drawcord = Büzgü ipi
word-material-cord-tip = İp ucu
word-material-cord-stop = İp stoperi
word-material-eyelet = Kuşgözü
word-material-elastic = Lastik
word-material-button = Düğme
word-material-snap = Çıtçıt
word-material-hook-and-loop = Cırt bant
word-material-buckle = Toka
word-material-webbing = Kolon
word-material-tape = Şerit
word-material-reflective = Reflektif aksesuar
word-material-thread = Dikiş ipliği
word-material-transfer = Transfer
word-material-patch = Arma
word-material-label = Etiket
word-material-packing = Paketleme
word-material-other = Diğer

word-component-main = Ana kumaş
word-component-contrast = Kontrast kumaş
word-component-rib = Ribana
word-component-lining = Astar
word-component-pocketing = Cep astarı
word-component-padding = Dolgu
word-component-coating = Kaplama
word-component-trimming = Aksesuar

word-fibre-cotton = Pamuk
word-fibre-wool = Yün
word-fibre-virgin-wool = Kırkım yünü
word-fibre-recycled-wool = Geri kazanılmış yün
word-fibre-silk = İpek
word-fibre-linen = Keten
word-fibre-hemp = Kenevir
word-fibre-jute = Jüt
word-fibre-ramie = Rami
word-fibre-cashmere = Kaşmir
word-fibre-mohair = Tiftik
word-fibre-alpaca = Alpaka
word-fibre-angora = Angora
word-fibre-camel = Deve tüyü
word-fibre-down = Kuş tüyü
word-fibre-viscose = Viskon
word-fibre-modal = Modal
word-fibre-lyocell = Liyosel
word-fibre-cupro = Kupro
word-fibre-acetate = Asetat
word-fibre-triacetate = Triasetat
word-fibre-polyester = Polyester
word-fibre-polyamide = Poliamid
word-fibre-acrylic = Akrilik
word-fibre-modacrylic = Modakrilik
word-fibre-polypropylene = Polipropilen
word-fibre-polyethylene = Polietilen
word-fibre-polyurethane = Poliüretan
word-fibre-elastane = Elastan
word-fibre-elastodiene = Elastodien
word-fibre-elastolefin = Elastolefin
word-fibre-elastomultiester = Elastomultiester
word-fibre-aramid = Aramid
word-fibre-polylactide = Polilaktit
word-fibre-chlorofibre = Klorlu lif
word-fibre-metal-fibre = Metal lif
word-fibre-paper = Kâğıt
word-fibre-other = Diğer lif

word-yarn-tex = tex
word-yarn-dtex = dtex
word-yarn-denier = den
word-yarn-nm = Nm
word-yarn-ne = Ne

word-zip-teeth-coil = Spiral
word-zip-teeth-moulded = Kemik (plastik döküm)
word-zip-teeth-metal = Metal
word-zip-teeth-invisible = Gizli spiral

word-zip-end-closed = Kapalı uç
word-zip-end-open = Açık uç (ayrılabilir)
word-zip-end-two-way = Çift yönlü

word-cord-place-hood-neck = Kapüşon ya da yaka
word-cord-place-chest = Göğüs
word-cord-place-waist = Bel
word-cord-place-hem = Üst giysinin alt kenarı
word-cord-place-legs = Paça uçları
word-cord-place-sleeve = Kol
word-cord-place-back = Sırt
word-cord-place-elsewhere = Başka yerde

word-cord-ends-free = Serbest uçlar
word-cord-ends-toggled = Stoper, uç ya da düğümlü serbest uçlar
word-cord-ends-fixed = Dikilmiş, serbest uç yok
word-cord-ends-loop = Kapalı ilmek

word-measured-in-metre = m
word-measured-in-square-metre = m²
word-measured-in-piece = adet
word-measured-in-gram = g

word-consumption-marker = Pastal planından
word-consumption-area = Parça alanından
word-consumption-estimate = Tahmin

word-wastage-allowance = gereken miktara eklenir
word-wastage-loss-of-input = satın alınandan kaybolan

word-minimum-style = model için
word-minimum-colour = her renk için
word-minimum-dimension = her ölçüsü için

word-evidence-small-parts = Küçük parçalar
word-evidence-flammability = Yanıcılık
word-evidence-nickel = Nikel
word-evidence-azo-dyes = Azo boyar maddeler
word-evidence-lead = Kurşun
word-evidence-colour-fastness = Renk haslığı
word-evidence-shrinkage = Çekme
word-evidence-strength = Mukavemet
word-evidence-other = Diğer

word-wash-normal-95 = 95 °C’de yıkanır
word-wash-normal-70 = 70 °C’de yıkanır
word-wash-normal-60 = 60 °C’de yıkanır
word-wash-mild-60 = 60 °C’de hassas yıkanır
word-wash-normal-50 = 50 °C’de yıkanır
word-wash-mild-50 = 50 °C’de hassas yıkanır
word-wash-normal-40 = 40 °C’de yıkanır
word-wash-mild-40 = 40 °C’de hassas yıkanır
word-wash-very-mild-40 = 40 °C’de çok hassas yıkanır
word-wash-normal-30 = 30 °C’de yıkanır
word-wash-mild-30 = 30 °C’de hassas yıkanır
word-wash-very-mild-30 = 30 °C’de çok hassas yıkanır
word-wash-hand = Elde yıkanır, en çok 40 °C
word-wash-no = Yıkanmaz

word-bleach-any = Her ağartıcı kullanılabilir
word-bleach-oxygen = Yalnız klorsuz ağartıcı
word-bleach-no = Ağartılmaz

word-tumble-normal = Tamburlu kurutma, normal (80 °C)
word-tumble-low = Tamburlu kurutma, düşük (60 °C)
word-tumble-no = Tamburda kurutulmaz

word-air-dry-line = Asarak kurutulur
word-air-dry-line-shade = Gölgede asarak kurutulur
word-air-dry-line-drip = Sıkmadan asarak kurutulur
word-air-dry-line-drip-shade = Gölgede sıkmadan asarak kurutulur
word-air-dry-flat = Sererek kurutulur
word-air-dry-flat-shade = Gölgede sererek kurutulur
word-air-dry-flat-drip = Sıkmadan sererek kurutulur
word-air-dry-flat-drip-shade = Gölgede sıkmadan sererek kurutulur

word-iron-high = Ütü, en çok 200 °C
word-iron-medium = Ütü, en çok 150 °C
word-iron-low = Ütü, en çok 110 °C, buharsız
word-iron-no = Ütülenmez

word-dry-clean-p = Kuru temizleme, P
word-dry-clean-p-mild = Kuru temizleme, P, hassas
word-dry-clean-f = Kuru temizleme, F
word-dry-clean-f-mild = Kuru temizleme, F, hassas
word-dry-clean-no = Kuru temizleme yapılmaz

word-wet-clean-normal = Profesyonel ıslak temizleme
word-wet-clean-mild = Profesyonel ıslak temizleme, hassas
word-wet-clean-very-mild = Profesyonel ıslak temizleme, çok hassas
word-wet-clean-no = Islak temizleme yapılmaz

word-line-seam = Dikiş
word-line-edge = Kenar
word-line-fold = Kat
word-line-centre-line = Orta çizgi

word-seam-1 = 1 üst üste
word-seam-2 = 2 bindirme
word-seam-3 = 3 biyeli
word-seam-4 = 4 düz birleştirme
word-seam-5 = 5 süs dikişi
word-seam-6 = 6 kenar temizleme
word-seam-7 = 7 ekleme
word-seam-8 = 8 tek kat

word-method-screen-print = Serigrafi baskı
word-method-heat-transfer = Isı transferi
word-method-digital-print = Dijital baskı
word-method-sublimation = Süblimasyon
word-method-embroidery = Nakış
word-method-woven-patch = Dokuma arma
word-method-applique = Aplike
word-method-deboss = Gömme baskı
word-method-other = Diğer

word-artwork-form-vector = Çizgi ve alan (vektör)
word-artwork-form-raster = Resim (raster)
word-artwork-form-stitches = Nakış dosyası

word-anchor-top = üst kenar
word-anchor-bottom = alt kenar
word-anchor-left = sol kenar (okunduğu yönde)
word-anchor-right = sağ kenar (okunduğu yönde)
word-anchor-centre = orta

word-label-brand = Marka
word-label-care-composition = Bakım ve karışım
word-label-size-loop = Beden etiketi (ilmek)
word-label-origin = Menşe
word-label-warning = Uyarı
word-label-other = Diğer

word-label-made-woven = Dokuma
word-label-made-printed = Baskılı
word-label-made-transfer = Transfer

word-label-fold-flat = Katlanmamış
word-label-fold-centre = Ortadan katlı
word-label-fold-ends = Uçlardan katlı
word-label-fold-mitre = Gönye katlı
word-label-fold-loop = İlmek

word-driver-style = Hepsinde aynı
word-driver-size = Bedene göre
word-driver-colourway = Renk varyantına göre
word-driver-market = Pazara göre

word-label-content-composition = Karışım
word-label-content-care = Bakım
word-label-content-origin = Menşe
word-label-content-size = Beden

word-assortment-solid = Tekli: bir kolide tek beden ve renk
word-assortment-assorted = Karışık

word-stitch-class-100 = Tek iplik zincir dikiş
word-stitch-class-200 = El dikişi
word-stitch-class-300 = Düz dikiş (kilit)
word-stitch-class-400 = Çok iplik zincir dikiş
word-stitch-class-500 = Overlok dikiş
word-stitch-class-600 = Reçme dikiş

word-status-verified = Yayımlanmış metinle karşılaştırıldı
word-status-seen = Kullanımda görüldü, resmi metinle karşılaştırılmadı
word-status-from-memory = Resmi metinle karşılaştırılmadı
