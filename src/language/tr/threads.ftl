### Threads, messages and questions.

## An item of a revision

item-back = Revizyon { $revision }
item-close = Geri
item-mark = { $letter }, { $name }
item-values = Her bedenin değeri { $unit } olarak, altında { $other } olarak
item-tolerance = Tolerans
item-from = Başlangıç
item-to = Bitiş
item-path = Mezuranın duruşu
item-relaxed = gevşek
item-stretched = gergin
item-note = Not
item-basis = Ölçüm şekli
item-key = ana nokta
item-critical = kritik nokta
item-colours = Her renk varyantındaki renk
item-not-said = belirtilmemiş
item-superseded = Yenisi çıktı
item-superseded-why = Revizyon { $revision } ile dikim yapmayın.
item-newer = Bunu geçerli olan revizyon { $revision } içinde okuyun
item-withdrawn = Geri çekildi
item-withdrawn-why = Revizyon { $revision } ile dikim yapmayın: { $reason }
item-current = Geçerli olan revizyon { $revision }
item-removed = Kaldırıldı
item-removed-why = Revizyon { $revision } içinde bu artık yok. Hakkında yazılanlar burada kalır.

## Colour patches

patch-approximate = ekran rengi yaklaşıktır

## Threads on an item

threads-heading = Sorular ve zorunlu düzeltmeler
threads-none = Bununla ilgili henüz soru sorulmadı.
thread-asked-by = Soran: { $person }
thread-asked-by-brand = Soran: { $person }, marka
thread-asked-by-factory = Soran: { $person }, { $factory }
thread-asked-of-factory = Soran: { $person }, { $factory } ile
thread-raised-on = revizyon { $revision } üzerinde açıldı
thread-next-you-answer = Sıra sizde: yanıtlayın.
thread-next-you-read = Yanıt geldi. Kapatın ya da açık kalanı yazın.
thread-next-you-change = Sıra sizde: taslakta değiştirip yayımlayın.
thread-next-you-verify = Sıra sizde: numunede bakın.
thread-next-answer = Sırada: { $who } yanıtlar.
thread-next-read = Sırada: { $who } yanıtı okur.
thread-next-change = Sırada: { $who } değiştirir ve revizyon yayımlar.
thread-next-verify = Sırada: { $who } numunede bakar.
thread-text-erased = (metin silindi)
thread-photo-erased = (fotoğraf silindi)
thread-photo = Fotoğraf { $number }
thread-photo-taken = çekim: { $when }

## Writing

thread-answer = Mesajınız
thread-send = Gönder
thread-translated = { $language }, çeviren: { $who }
thread-translate = Bu mesajı çevir
thread-translate-into = Dil
thread-translation = Çeviri
thread-translate-help = Çeviri, adınızla birlikte mesajın altında durur. Geçerli olan mesajın kendisidir.
thread-translate-button = Mesajın yanına koy
thread-refused = Gönderilmedi.
thread-photos = Fotoğraflar
thread-photos-help = En çok { $count } adet, JPEG, PNG ya da WebP. Yer ve gönderen bilgisi saklanmaz.
thread-draw = Bu fotoğrafın üstüne çiz
thread-draw-circle = Daire
thread-draw-arrow = Ok
thread-draw-dimension = Ölçü
thread-draw-value = Değer
thread-draw-undo = Geri al
thread-agree = Kabul et
thread-mark-changed = Revizyon { $revision } içinde değişti
thread-verify = Numune turu { $number }, { $kind }: doğru
thread-close-question = Soruyu kapat
thread-close-must-fix = Zorunlu düzeltmeyi kapat
thread-close-suggestion = Öneriyi kapat
thread-decline = Talebi reddet
thread-take-back = Talebi geri al
thread-reopen = Yeniden aç
thread-grant = Sapmaya izin ver
thread-grant-final = İmzalar buna dayanabilir: geri alınamaz.

## Asking

ask-heading = Bununla ilgili sorun
ask-kind = Bu nedir?
ask-question-help = İşin sürmesi için yanıt gerekir.
ask-must-fix-help = Değişmesi gerekir. Değişmeden kimse imzalamaz.
ask-suggestion-help = Daha iyi bir şekilde yapılabilir.
ask-concession-help = Fabrika, olduğu gibi kabul edilmesini ister.
ask-factory = Hangi fabrika?
ask-factory-choose = Fabrika seçin
ask-text = Mesajınız
ask-send = Gönder
ask-alone = Bu model henüz hiçbir fabrikayla paylaşılmadı; soracak kimse yok.
ask-alone-share = Modeli paylaş

## Ready sentences

ready-title = Hazır cümleler
ready-what = Karşı taraf cümleyi kendi dilinde okur.
ready-how = Birini olduğu gibi gönderin ya da birini seçip eksiklerini doldurun.
ready-other = Başka bir cümle
ready-mark = hazır cümle
ready-slot-length = Ölçü, { $unit }
ready-slot-spec = Spekteki değer, { $unit }
ready-slot-item = Neyle ilgili
ready-slot-other = Öteki
ready-slot-material = Malzeme
ready-slot-size = Beden
ready-slot-date = Tarih
ready-slot-until = Bitiş
ready-slot-count = Sayı
ready-slot-percent = Yüzde
ready-slot-revision = Revizyon
ready-slot-wrong = Bu buraya uymuyor. Yeniden yazın ya da seçin.

## Live pages

live-new = Bu sayfada yeni bir şey var.
live-show = Göster
live-lost = Bağlantı yok. Sayfa eski olabilir. Yeniden deneniyor.
live-unsent = Bağlantı yok: gönderilmedi. Bir kez daha gönderin.
