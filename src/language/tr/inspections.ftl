### Seri üretimi mühürlü numuneye göre denetlemek.

inspection-title = Seri üretim denetimi { $number }
inspection-list = Seri üretim denetimleri
inspection-head = Denetim
inspection-none = Buna göre henüz seri üretim denetlenmedi.
inspection-do = Seri üretimi denetle
inspection-what = Bitmiş bir partiden alınan örnek, mühürlü numuneye ve onun revizyonuna göre denetlenir.
inspection-no-safety = Bu denetimden geçmek güvenlik hakkında hiçbir şey söylemez. Buna yetkili bir laboratuvar ve yerel yasalar karar verir.
inspection-follows = Şundan sonra onarıldı
inspection-followed = Yeniden denetlendi
inspection-earlier = Bu mühre göre denetimler: { $count }
inspection-blocked = Seri üretimin denetlenmesini engelleyenler: { $count }
inspection-open-other = O denetimi aç

## Parti ve planı

inspection-lot = Parti
inspection-lot-help = Partide her renk varyantından ve bedenden kaç bitmiş adet olduğu. Yoksa alanı boş bırakın.
inspection-count-wrong = 0 ile { $most } arasında bir tam sayı yazın.
inspection-plan = Örnekleme planı
inspection-plan-of = { $lot } adetten { $sample } adet denetlenir
inspection-plan-moved = Plan gösterildikten sonra parti değişti. Şimdiki planı budur.
inspection-show-plan = Planı göster
inspection-begin = Bu denetimi başlat
inspection-level = Denetim düzeyi
inspection-aql = AQL
inspection-aql-of = AQL, { $class } kusurlar
inspection-usual = Düzey II ile 2.5 ve 4.0 yaygın uygulamadır, kaynağı yok.
inspection-critical-rule = Kritik kusurun kabul edilebilir bir düzeyi yoktur: bir tanesi partiyi reddettirir.
inspection-critical-found = Kritik kusurlu adet:
inspection-class = Kusurlar
inspection-code = Kod harfi
inspection-sample = Örnek
inspection-accept = Kabul
inspection-reject = Ret
inspection-done = Denetlenen
inspection-found = Kusurlu
inspection-of = { $done } / { $sample }
inspection-every-piece = partinin her adedi
inspection-arrow = Tablodaki ok başka bir harfe götürürse o harfin örneği geçerlidir.
inspection-source = MIL-STD-105E tablolarına göre tek katlı örnekleme, normal denetim.
inspection-colourway = Renk varyantı
inspection-size = Beden
inspection-in-lot = Partide
inspection-draw = Çekilecek
inspection-to-draw = Ne çekilecek
inspection-draw-how = Partiyle orantılı çekilir, örnek yettiğinde her birinden en az bir adet: yaygın uygulama, kaynağı yok. Rastgele çekin.

## Bulunanlar

inspection-begun = Başlatan
inspection-within = Her plan, çekiliş sırasıyla yalnızca kendi ilk adetlerini sayar. Bir adet en kötü kusurunun sınıfında sayılır.
inspection-points-rule = Tolerans dışı kritik nokta majör, başka nokta minör kusurdur: yaygın uygulama, kaynağı yok.
inspection-pieces = Adetler
inspection-nothing-yet = Henüz hiçbir adet denetlenmedi.
inspection-correct = Düzelt
inspection-sound = Kusursuz: { $count }
inspection-corrected = Düzeltilmiş kayıtlar: { $count }
inspection-measured = ölçü: { $count }
inspection-no-defect = Kusur yok
inspection-enter-beyond = Örneğin dışında kritik kusur
inspection-conceded = Bunlara mühürlü numunede izin verildi. Burada yine kusur sayılır: kararı marka verir.
inspection-curve = Planlar ne söyleyebilir
inspection-curve-what = Kusurlu payına göre bu partinin kabul edilme olasılığı. AQL'den kötü bir parti kabul, daha iyisi reddedilebilir.
inspection-curve-share = Kusurlu payı
inspection-curve-likelihood = Kabul olasılığı
inspection-curve-at = { $share } kusurluyken kabul olasılığı { $likelihood }

## Sırada ne var

inspection-enter = Bir adet denetle
inspection-conclude = Sonuçlandır
inspection-conclude-what = Program, kayıtlara göre partinin kabul mü ret mi olduğunu söyler.
inspection-conclude-final = Bundan sonra hiçbir adet kaydedilemez veya düzeltilemez.
inspection-concluded = Sonuç
inspection-decide = Partiye karar ver
inspection-decide-final = Karar sonradan değişmez.
inspection-reason-help = Serbest bırakma dışında her karar için neden gerekir. Sapma izninde hangi kusurlara izin verildiğini yazın.
inspection-released-help = Parti sevk edilebilir.
inspection-concession-help = Parti reddedildiği halde sevk edilir. Kusurları yazın.
inspection-rework-help = Fabrika partiyi ayıklar ve onarır. Sonra yeniden denetlenir.
inspection-refused-help = Parti alınmaz.
inspection-fails-critical = Kritik kusurlu adet: { $count }. Bir tane yeter.
inspection-fails = { $class } sayılan adet: { $found }. En çok { $accept } kabul edilebilir.
inspection-next-fails = Bulunanlar partiyi reddettiriyor. Denetimi sonuçlandırın.
inspection-next-enter = Adetleri denetleyin: { $done } / { $sample } bitti.
inspection-next-enter-other = { $org } partiyi denetliyor.
inspection-next-conclude = Örnek denetlendi. Denetimi sonuçlandırın.
inspection-next-decide = Bu partiye karar verin.
inspection-next-decide-other = Bu partiye marka karar verir.
inspection-next-again = { $org } partiyi ayıklar ve onarır. Sonra yeniden denetlenir.
inspection-next-done = Burada yapılacak bir şey kalmadı.
inspection-again = Onarılan partiyi denetle

## Bir adet kaydetmek

inspection-corrects = Bu adet daha önce kaydedildi. Onun yerine kaydettiğiniz sayılır; eski kayıt okunmak üzere kalır.
inspection-other-sort = Başka renk varyantı veya beden
inspection-defects = Kusurlar
inspection-defects-how = Kusur yoksa hemen kaydedin.
inspection-classes = Kritik: birine zarar verebilir; şüphede kalırsanız bunu seçin. Majör: ürün büyük olasılıkla bozulur ya da işini çok daha az görür. Minör: istenenden farklıdır, ürün yine de işini görür.
inspection-defect = Kusur { $number }
inspection-class-of = Sınıf
inspection-where = Nerede
inspection-nowhere = Bu listede yok
inspection-times = Kaç tane
inspection-words = Sözle
inspection-more = Daha fazla kusur
inspection-values = Ölçülen değerler
inspection-other-points = Diğer noktalar: { $count }
inspection-class-missing = Kritik, majör veya minör seçin.
inspection-times-wrong = 1 ile { $most } arasında bir tam sayı yazın.
inspection-moved-on = Bu arada biri o adedi kaydetti. Sizinki artık { $number } numaralı adet: bir kez daha kaydedin.
