### Readiness checks: one sentence a code, check-<code>. It names the item and says what to do.

## Anywhere


## Header

check-markets-none = Giysinin nerede satılacağı belirtilmemiş. Pazarları seçin: etiket ve güvenlik denetimleri buna bağlıdır.
check-wearer-missing = Giysinin kimin için olduğu belirtilmemiş. Seçin: güvenlik denetimleri buna bağlıdır.
check-languages-missing = Etiket dilleri belirtilmemiş. Girin: her pazar kendi dilini ister.
check-exemption-void = “{ $code }” için muafiyet geçersiz: neden ve ad gerekir; yalnız ip yasakları bir yana bırakılabilir. Tamamlayın ya da kaldırın.

## Sizes

check-size-age-missing = Bu bir çocuk giysisi ve şu bedenlerde ne yaş ne boy var: { $sizes }. Birini girin: güvenlik denetimleri buna bağlıdır.

## Drawings


## Points of measure


## Grade rules

check-grade-reverses = { $letter } { $name }: değer bazı bedenler arasında büyüyor, bazılarında küçülüyor; { $size } bedeninde dönüyor. Böyle mi isteniyor?
check-tolerance-overlaps = { $letter } { $name }: bu nokta kritik ve { $from } bedeninden bir ürün { $to } olarak geçebilir: bedenler arası fark { $step }, toleranslar −{ $minus } ve +{ $plus }. Toleransları küçültün.
check-step-coarse = { $letter } { $name }: yuvarlama adımı { $step }, toleransın yarısından büyük (−{ $minus }, +{ $plus }). Daha küçük adım ya da daha büyük tolerans kullanın.
check-steps-uneven = { $letter } { $name }: bedenler { $exact } fark ediyor, ama yuvarlama bunu { $size } bedenine kadar { $before }, sonra { $after } yapıyor. Daha küçük yuvarlama ya da başka serileme kullanın.
check-grade-half-or-full = { $letter } { $name }: ilk bedenden sonuncuya tam çevrede { $growth } büyüyor, benzer noktalar yaklaşık { $usual }. Yanlışlıkla yarım ya da tam olarak mı girildi?
check-value-not-positive = { $letter } { $name }: { $size } bedeni { $value } oluyor. Ölçü sıfırdan büyüktür: değeri ya da serilemeyi düzeltin.
check-lengths-partial = { $letter } { $name } bazı boylarla değişiyor, { $length } için bir şey yazmıyor. Ne eklendiğini girin; 0 olabilir.

## Relations between measurements

check-stretched-below-relaxed = { $item }: { $size } bedeninde gevşek { $relaxed }, gergin yalnız { $stretched }. Birini düzeltin.
check-neck-under-head = { $item }: { $size } bedeninde yaka çepeçevre { $opening } açılıyor, baş { $girth }. Baştan geçmeyebilir: kontrol edin.
check-cuff-under-hand = { $item }: { $size } bedeninde manşet çepeçevre { $opening } açılıyor, el { $girth }. El geçmeyebilir: kontrol edin.
check-zip-not-opening = { $item }: { $size } bedeninde fermuar { $length }, açıklığı { $point } ise { $opening }. Birini düzeltin.
check-cord-under-channel = { $item }: { $size } bedeninde ip { $length }, tüneli { $point } ise çepeçevre { $channel }. İpi uzatın.
check-rise-and-inseam = { $item }: { $size } bedeninde ağ { $rise } ile iç boy { $inseam }, dış boyu { $outseam } vermiyor. Üçünü de kontrol edin.
check-points-usual = { $kind }: şu noktalar olağandır ve hiçbir nokta onlardan biri olarak belirtilmemiş: { $missing }. Ekleyin ya da noktalarınızın ne olduğunu yazın.
check-dimension-missing = { $item }: bununla birlikte şunlar da gerekir ve hiçbir nokta onlardan biri olarak belirtilmemiş: { $missing }. Ekleyin.

## Parts and colourways

check-parts-none = Parça yok. Kendi rengi olabilecekleri girin: ana kumaş, manşet, iplik.
check-colourways-none = Renk varyantı yok. En az bir tane girin.

## Materials

check-claim-hundred = { $item } yüzde 100, saf ya da tamamı diyor; { $material } içinde ikinci lif var. AB ve ABD böyle sözlere yalnız tek lif için izin verir. Değiştirin.
check-fibre-twice = { $item }: karışımda bir lif iki kez yazılmış. İkisini toplayın.
check-virgin-wool = { $item }: bu karışımda kırkım yünü var. AB bu ada yalnız en az % 25 oranında ve tek bir başka lifle izin verir (1007/2011 sayılı Tüzük, madde 8). Kontrol edin.
check-mass-disagrees = { $item }: { $declared } g/m² bildirilmiş, ipliklerden { $computed } g/m² çıkıyor. İkisini de kontrol edin.
check-zip-size-missing = { $item }: fermuarın boyu yok. Girin ya da kapattığı noktayı seçin.
check-minimum-unmet = { $item }: { $colourway } için { $needed } gerekiyor, en az sipariş { $minimum } (birim: { $unit }). Tedarikçiye sorun ya da daha çok sipariş edin.

## Construction

check-stitch-unknown = { $item }: { $stitch }, ISO 4915 dikiş tipleri tablosunda yok. Kontrol edin.
check-seam-code-unlike = { $item }: { $code }, ISO 4916 gösterimi değil ya da seçilenden başka bir sınıftan. İkisini de kontrol edin.

## Artwork

check-artwork-file-missing = { $item }: özgün dosya eksik. Yükleyin.
check-artwork-coarse = { $item }: gerçek ölçüsünde resim inç başına { $dpi } nokta; olağanı { $wanted }. Daha ince bir resim yükleyin.
check-artwork-live-text = { $item }: özgün dosyada canlı metin ya da bağlantılı resim var; başka yerde farklı görünebilir. Metni çizgiye çevirin, resimleri dosyaya gömün.
check-text-too-small = { $item }: en küçük harf { $height }. { $method } genellikle { $least } ve üstünü tutar. Büyütün.

## Labels and care

check-care-customary = Etikette bakım talimatı yok. AB ve Birleşik Krallık istemez, ama alıcılar bekler. Bakımı ve etiketini girin.
check-care-harsh = { $treatments }: etiket, şu malzemelerin dayandığından fazlasına izin veriyor: { $materials }. Daha hassas bir bakım seçin.
check-label-size-missing = { $item }: eksik: { $missing }. Girin.
check-label-place-missing = { $item }: dikişten ne kadar uzakta olduğu belirtilmemiş. Bir mesafe girin.
check-label-language-missing = { $item } bu dilde metin içermiyor: { $language }. Girin.

## Packing

check-ratio-remainder = { $item }: bir pakette { $pack } adet var, { $colourway } için { $pieces } adet; { $left } adet artıyor. Birini değiştirin.

## Safety: these caution. The text of the rule, local law and a licensed laboratory decide.

check-cord-exempted = { $item }: çocuk giysisinin kapüşonunda ya da yakasında ip var ve bir kural bir yana bırakılmış. { $reasons }. Yetkili bir laboratuvar değerlendirsin.
check-cord-free-ends-eu = { $item }: büyük çocuk giysisinin kapüşonunda ya da yakasında ip, bedenler { $sizes }. { $rule } orada serbest uçları yasaklar. Kaldırın ya da olmadığını yazın.
check-cord-free-missing = { $item }: çocuk giysisindeki bu ip için eksik: { $missing }. Girin: kurallar buna bağlıdır.
check-cord-long-us = { $item }: ip { $free } dışarıda kalıyor, bedenler { $sizes }. { $rule }, giysi tam genişlikteyken { $most } kadarına izin verir. Kısaltın.
check-cord-toggled-us = { $item }: ipte stoper, uç ya da düğüm var, bedenler { $sizes }. { $rule } belde ve etekte bunlara izin vermez. Kaldırın.
check-cord-loose-us = { $item }: ip çekilip çıkarılabiliyor, bedenler { $sizes }. { $rule } onu tutan bir punteriz ister. Ekleyin.
check-cord-long-eu = { $item }: ip { $free } dışarıda kalıyor, bedenler { $sizes }. Hafızadan, denetlenmeden: { $rule } orada { $most } kadarına izin verir. Sayıyı standarttan okuyun, gerekirse ipi kısaltın.
check-cord-back-eu = { $item }: çocuk giysisinin sırtında ip, bedenler { $sizes }. Hafızadan, denetlenmeden: { $rule } orada yalnız bağlanan kuşaklara izin verir. Standarttan okuyun.
check-evidence-small-parts = { $item } kopabilir ve { $sizes } bedenleri 3 yaşından küçük çocuklar içindir. { $rule } küçük parça testi ister. Raporu girin.
check-evidence-flammability = { $item }: yanma hızı testi belirtilmemiş. { $rule } isteyebilir. Raporu girin ya da neden olmadığını yazın.
check-evidence-sleepwear = { $item }: çocuk gecelik giysisi, bedenler { $sizes }, yanma testi belirtilmemiş. { $rule } ister. Raporu girin.
check-evidence-nickel = { $item } tene değen bir metal ve nikel testi belirtilmemiş. { $rule } bunu sınırlar. Raporu girin.
check-evidence-azo-dyes = { $item } boyalı ve azo boyar madde testi belirtilmemiş. { $rule } bunları sınırlar. Raporu girin.
check-evidence-lead = { $item }: çocuk ürününün aksesuarı, bedenler { $sizes }, kurşun testi belirtilmemiş. { $rule } bunu sınırlar. Raporu girin.
