### What a revision says, section by section.

## The program's words beside the brand's

term-legend = ≈ programın sizin dilinizdeki sözüdür, ana dili olan biri denetlemedi. Markanın yazdığı geçerlidir. = işaretinden sonrası markanın kendi çevirisidir.
later-title = Bu sürüm yayımlandıktan sonra yeniden çevrildi. Asıl metin aynıdır.

## Drawings

drawing-larger = Büyük: { $drawing }
legend-point = ölçü noktası
legend-part = parça
legend-callout = nasıl dikildiği
legend-artwork = baskı ya da nakış
legend-label = etiket
legend-larger = o numaralı çizimde büyük hali
legend-dimension = noktanın ölçtüğü yer

## A rule that an owner sets aside

exemption-title = Burada bir kural uygulanmıyor: { $code }
exemption-reason = Neden: { $reason }
exemption-by = Söyleyen: { $name }

## Sizes

lengths-caption = Boylar, { $unit }
sizes-ages = Yaş
sizes-years = { $from }–{ $to } yaş
sizes-months = { $from }–{ $to } ay
sizes-range = { $from }–{ $to } { $unit }
sizes-single = { $value } { $unit }

## Colourways

parts-planned = { $count } adet planlandı
parts-as-dyed = Boyanmış hali

## Materials

materials-material = Malzeme
materials-what = Ne olduğu
materials-where = Nereye gelir
materials-length = Uzunluk ve sarfiyat
materials-supply = Tedarik
materials-care = En çok dayandığı
materials-parts = Rengini verdiği parça

## Construction

construction-callout = Ne dikiliyor
construction-larger = Büyük
construction-stitch = Dikiş tipi ve birleştirme
construction-measures = Mesafeler
construction-with = İplik, şerit, punteriz
construction-per-inch = inç başına { $count }
construction-lines = Dikişler, kenarlar ve çizgiler

## Artwork

artwork-sizes = { $from }–{ $to }
artwork-all-sizes = Bütün bedenler
artwork-true-size = { $width } × { $height } mm
artwork-placed = Yeri
artwork-original = Özgün dosya
artwork-no-picture = Bu dosyanın resmi yok. Özgün dosyayı indirin.

## Labels

labels-care = Bakım, etiketteki sırayla
labels-signs = Küçük işaretler ekranda yardım içindir. Etiketin bakım sembolleri değildir.

## Packing

packing-steps = Adımlar
packing-packs = Asorti paketler: her bedenden adet
packing-pack = Paket
packing-every-colourway = her renk varyantı
packing-total = Toplam

## An item without a name

sheet-item = adsız

## To be dyed

dyeing-title = Planlanan adetler için boyanacak
dyeing-substrate = Zemin
dyeing-colour = Renk
dyeing-kilograms = kg
dyeing-of = Ne için
dyeing-undyed = boyanmaz
dyeing-not-whole = Bu kilolara girmeyen:
dyeing-lacks-pieces = kaç adet planlandığı belirtilmemiş
dyeing-lacks-parts = yaptığı parçalar belirtilmemiş
dyeing-lacks-colour = rengi belirtilmemiş
dyeing-parts-differ = parçalarının renkleri farklı
dyeing-lacks-consumption = bir ürün için sarfiyatı belirtilmemiş
dyeing-lacks-unit = adetle sayılıyor, ağırlığı bilinmiyor
dyeing-lacks-mass = metrekare ağırlığı belirtilmemiş
dyeing-lacks-width = tam eni belirtilmemiş
dyeing-lacks-wastage = firesi belirtilmemiş
dyeing-too-large = sayıları çok büyük

## What composition labels say

composition-title = Karışım, etiketler için
composition-draft = Programın taslağıdır. Etiketten sorumlu kişi denetler.
materials-mass = { $mass } ({ $ounces } oz/yd²)
drawing-see = → { $number }
drawing-number = { $number } ·
