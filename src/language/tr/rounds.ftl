### Sample rounds and measuring.

rounds-title = { $kind }, numune turu { $number }
rounds-revision = Revizyon
rounds-factory = Fabrika
rounds-asked = İstenen
rounds-missing = Eksik
rounds-out = Tolerans dışı
rounds-critical-out = Tolerans dışı kritik noktalar
rounds-values = Ölçülen
rounds-measured-of = { $measured } / { $count }

## Asking for a round

rounds-new-title = Numune iste
rounds-new-bound = Fabrika bu numuneleri revizyon { $revision } ile yapar.
rounds-choose = Fabrika seçin
rounds-factory-missing = Fabrikayı seçin.
rounds-kind = Numuneler ne için?
rounds-kind-proto-help = İlk numuneler: birbirimizi anladık mı?
rounds-kind-fit-help = Üste oturuyor mu, ölçüler doğru mu?
rounds-kind-size-set-help = Her bedenden bir adet: serileme doğru mu?
rounds-kind-pre-production-help = Siparişte yapılacağı gibi: gerçek malzeme, gerçek hat.
rounds-kind-top-of-production-help = Siparişin kendisinden ilk ürünler.
rounds-pieces = Her bedenden kaç adet?
rounds-count-wrong = 0 ile { $most } arasında bir tam sayı yazın.
rounds-new-button = Numune iste
rounds-back-to-style = Modele dön
rounds-not-shared = Bu model henüz bir fabrikayla paylaşılmadı. Önce paylaşın.
rounds-none-current = Geçerli revizyon yok. Önce yayımlayın.

## What is next

rounds-next-start = Bu numunelere başlayın.
rounds-next-start-other = Müşteri temsilciniz başlatır.
rounds-next-start-factory = Sırada: { $org } işe başlar.
rounds-next-measure = Numuneleri ölçün: { $count } değer eksik.
rounds-next-dispatch = Hepsi ölçüldü. Numuneleri gönderin, sonra burada bildirin.
rounds-next-dispatch-other = Hepsi ölçüldü. Müşteri temsilciniz numuneleri gönderir.
rounds-next-in-work = { $org } numuneleri yapıyor ve ölçüyor.
rounds-next-receive = Numuneler yolda. Gelince bildirin.
rounds-next-on-the-way = Numuneler yolda. Gelince marka bildirir.
rounds-next-check = Numuneleri ölçün ya da fabrikanın değerlerini kontrol edin. Sonra ölçümün bittiğini bildirin.
rounds-next-check-other = Marka numuneleri kontrol ediyor.
rounds-next-decide = Bu numunelere karar verin.
rounds-next-decide-other = Sırada: marka karar verir.
rounds-next-cancelled = Bu tur iptal edildi. Yapılacak bir şey kalmadı.
rounds-next-sign = Kararı okuyun, sonra imzalayın.
rounds-next-sign-blocked = Açık bir soru var. Önce onu çözün, sonra kararı imzalayın.
rounds-next-sign-other = Henüz imzalamayan: { $side }.
rounds-next-done = İki taraf da imzaladı. Yapılacak bir şey kalmadı.

rounds-move-start = İşe başla
rounds-move-dispatch = Numuneler gönderildi
rounds-move-receive = Numuneler geldi
rounds-move-finish-measuring = Ölçüm bitti
rounds-measure = Ölç
rounds-correct = Bir değeri düzelt
rounds-sign = İmzalara git
rounds-see-open = Açık kalanlara bak
rounds-unfinished = { $count } değer eksik.
rounds-unfinished-what = Bunları kimse ölçmedi. Ölçün ya da bunlarsız devam edin.
rounds-unfinished-piece = Numune { $number }, beden { $size }
rounds-dispatch-anyway = Numuneler bu değerler olmadan gönderildi
rounds-finish-anyway = Yine de bitir

## A newer revision

rounds-newer = Revizyon { $revision } çıktı.
rounds-newer-bound = Bu numuneler revizyon { $revision } ile yapılıyor.
rounds-newer-wait = Sürüp sürmeyeceğini marka bildirir.
rounds-newer-changes = Değişenlere bak
rounds-continue = Revizyon { $revision } ile devam et
rounds-restart = Revizyon { $revision } ile yeniden başla
rounds-restart-sure = Bu tur iptal edilmiş olarak biter ve öyle kalır. İçinde ölçülenler saklanır. Aynı parçalar hemen revizyon { $revision } ile yeniden istenir.
rounds-restart-reason = Revizyon { $revision } ile yeniden başlandı.

## Pieces and points

rounds-pieces-by-points = Ölçüler
rounds-caption = Birim: { $unit }
rounds-pick-piece = Numune
rounds-piece = Numune { $number }
rounds-letter = Harf
rounds-point = Ölçü noktası
rounds-spec = Spek
rounds-critical = kritik
rounds-critical-line = { $letter } { $name } kritik; { $count } numunede tolerans dışı.
rounds-not-yet = henüz yok
rounds-over = toleransın üstünde
rounds-under = toleransın altında
rounds-apart = İki taraf çok farklı ölçmüş: önce nasıl ölçüleceğinde anlaşın.
rounds-legend = ▲ toleransın üstünde, ▼ toleransın altında.
rounds-legend-both = Markanın ölçtüğü yerde onun değeri geçerlidir.

## Deciding

rounds-decide = Karar ver
rounds-stop = Bu turu durdur
rounds-outcome = Kararınız nedir?
rounds-outcome-missing = Kararınızı seçin.
rounds-approved-help = Numuneler doğru. Değişiklik yok.
rounds-approved-with-changes-help = Aşağıdaki değişiklikler dışında doğru. Her biri sonraki revizyon için zorunlu düzeltme olur.
rounds-remake-help = Bu numuneleri yeniden yapın. Nedenini yazın.
rounds-cancelled-help = Bu turu sonuçsuz bitirin. Nedenini yazın.
rounds-changes = Değişiklikler
rounds-changes-help = Yalnız değişikliklerle onay için. Değişmesi gerekmeyenin işaretini kaldırın.
rounds-change-text = { $letter } noktasında ne değişmeli
rounds-other-item = Başka bir değişiklik
rounds-no-item = Yok
rounds-other-text = Orada ne değişmeli
rounds-reason = Neden
rounds-reason-help = İki taraf da okur. Yeniden yapma ve iptal için neden gerekir.
rounds-decide-button = Karar ver
rounds-suggestion = { $pieces } Bunu { $tolerance } { $unit } içine getirin.
rounds-suggestion-piece = Numune { $piece }, beden { $size }: ölçülen { $measured }, spek { $spec } ({ $off }).

rounds-decided = Karar
rounds-reason-erased = (neden silindi)
rounds-must-fixes = Bu karardan çıkan zorunlu düzeltmeler
rounds-another = Yeni bir tur iste

## Signing

sign-title = İmzalar
sign-signed = imzalandı
sign-not-yet = henüz imzalanmadı
sign-fingerprint = Parmak izi
sign-as = { $name }, { $role } olarak imzalıyorum
sign-button = İmzala
sign-blocked = Henüz imzalayamazsınız
sign-local = { $time }, imzalayanın kendi saati
sign-to-acknowledge = Teyit et
sign-to-thread = Aç, { $kind }: { $item }

## History

rounds-history = Geçmiş
rounds-did-request = revizyon { $revision } için { $count } numune istedi.
rounds-did-start = işe başladı.
rounds-did-dispatch = numuneleri gönderdi.
rounds-did-receive = numuneleri teslim aldı.
rounds-did-finish-measuring = ölçümün bittiğini bildirdi.
rounds-did-continue = bu numunelerle devam ediyor. Revizyon { $revision } bunları değiştirmez.
rounds-did-measure = { $count } değer ölçtü.
rounds-did-decide = karar verdi: { $outcome }.
rounds-did-sign = kararı imzaladı.
rounds-did-must-fix = zorunlu düzeltme verdi: { $letter } { $name }.

## Measuring on a phone

rounds-measure-title = Numune { $piece }: ölçüm
rounds-missing-count = { $count ->
    [0] hepsi ölçüldü
   *[other] { $count } eksik
}
rounds-back-to-round = { $kind }, tur { $number }: geri dön
rounds-progress = Bu numunede ölçülen noktalar
rounds-waiting = Henüz gönderilmedi:
rounds-drop = At
rounds-place = { $place } / { $count }
rounds-how = Başlangıç: { $start }. Bitiş: { $end }.
rounds-stretched = Gererek ölçün.
rounds-half = YARIM
rounds-half-how = düz serili
rounds-full = TAM ÇEVRE
rounds-full-how = çepeçevre
rounds-length = UZUNLUK
rounds-value = Ölçülen değer
rounds-save-next = Kaydet, sonraki
rounds-kept = Bu sayfa bağlantı olmadan da yeniden açılır.
rounds-plain = HTTPS olmadan bu sayfa bağlantısız yeniden açılamaz. Yazdıklarınız yine de saklanır.
rounds-save-anyway = Doğru: kaydet
rounds-back = Geri
rounds-next = Sonraki
rounds-skip = Atla
rounds-skip-why = Neden ölçülmedi?
rounds-skip-later = Sonra: sıradaki nokta
rounds-skipped = Ölçülmedi:
rounds-state-spec = Spesifikasyona göre
rounds-state-is-spec = spesifikasyonun sayıları
rounds-measure-in = Ölç:
rounds-delete = Sil
rounds-not-positive = Ölçü sıfırdan büyük olur.
rounds-key-used = Bu form daha önce başka bir değerle gönderildi. Değere bir daha bakın, sonra kaydedin.

rounds-ask-doubled = { $value }, spekin yaklaşık iki katı. Tam çevre mi? Yeniden ölçün.
rounds-ask-halved = { $value }, spekin yaklaşık yarısı. Yalnız yarım çevre mi? Yeniden ölçün.
rounds-ask-cm-as-inch = { $value } santimetre gibi görünüyor. Yeniden ölçün.
rounds-ask-inch-as-cm = { $value } inç gibi görünüyor. Yeniden ölçün.
rounds-ask-ten-times = { $value }, spekin yaklaşık on katı. Ondalık işaretine bakın.
rounds-ask-tenth = { $value }, spekin yaklaşık onda biri. Ondalık işaretine bakın.
rounds-ask-other-size = Bu numune { $size } bedene daha çok uyuyor. Etiketine bakın ve yeniden ölçün.
rounds-ask-copied = Bütün değerler spekle aynı. Ölçüldü mü, kopyalandı mı?

## Sending the pieces

rounds-send-title = Numuneleri gönderin
rounds-send-materials = Numuneler neyden yapıldı?
rounds-send-substitutes = Neyin yerine ne kullanıldı?
rounds-send-parcel = Kargo firması ve takip numarası
rounds-send-materials-missing = Numunelerin neyden yapıldığını yazın.
rounds-materials = Malzeme
rounds-parcel = Gönderi

## Washing

washes-title = Yıkama
washes-what = Yıkamadan önce ve sonra ölçülenin değişimi: (sonra − önce) / önce.
washes-rest = { $count ->
    [one] { $count } yerde daha değişim, ölçme hatasının açıkladığından fazla değil.
   *[other] { $count } yerde daha değişim, ölçme hatasının açıkladığından fazla değil.
}
washes-points = { $count ->
    [one] { $count } nokta
   *[other] Her nokta ({ $count })
}

## Photographs of pieces

photographs-title = Numunelerin fotoğrafları
photographs-add = Fotoğraf ekle
photographs-add-button = Ekle
photographs-missing = Bir fotoğraf seçin ya da çekin.
photographs-many = Bir numunenin en çok { $count } fotoğrafı olur.

## Every value side by side

readings-title = Tüm ölçüler yan yana
readings-state = Numunelerin durumu
readings-wrong = Hiçbir şey kaydedilmedi. İşaretli değerlere bakın.
readings-asks = Henüz kaydedilmedi. Bunlara yeniden bakın:
readings-look = Henüz hiçbir şey kaydedilmedi. Değerlere bakın, sonra kaydedin.
readings-save = Tümünü kaydet
readings-empty = Boşaltılan alan, var olan değeri korur.
readings-paste-title = Yapıştır ya da tablo aç
readings-paste = Bir tablodan ya da mektuptan değerler
readings-paste-help = Her nokta için bir satır, harfi ya da adıyla başlar. Numune sütunlarının üstünde numunenin numarası durur, ya da sırayla gelirler.
readings-file = Ya da bir dosya: XLSX veya CSV
readings-first = Numarasız sütunlar şununla başlar
readings-fill = Alanlara koy
readings-nothing-pasted = Değer yapıştırın ya da bir dosya seçin.
readings-filled = { $count ->
    [one] { $count } değer alanına kondu.
   *[other] { $count } değer alanlarına kondu.
}
readings-unknown = { $cell }: “{ $words }” bu tablonun noktası değil ya da daha önce geçti. Değerleri alınmadı.
readings-unreadable = { $cell } okunabilir bir sayı içermiyor: tablo programı onu tarihe çevirmiş olabilir.
readings-no-points = Hiçbir satır bir noktanın harfi ya da adıyla başlamıyor ve { $rows } satır, tablonun { $points } noktasına uymuyor. Değerlerin önüne harfleri yazın.
readings-columns = { $columns } sütunda değer var, seçilenden başlayarak { $pieces } numune var. Her sütunun üstüne numunenin numarasını yazın.
readings-twice = İki sütun da { $piece } numaralı numunenin. Birini bırakın.
