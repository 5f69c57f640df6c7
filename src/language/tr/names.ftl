### What the program's own values are called.

## Sections of a spec

section-header = Başlık
section-sizes = Bedenler
section-drawings = Çizimler
section-points = Ölçü noktaları
section-colourways = Parçalar ve renk varyantları
section-materials = Malzemeler
section-construction = Dikim
section-artwork = Baskı ve nakış
section-labels = Etiketler ve bakım
section-packing = Paketleme

## Who wears it


## Where it is sold


## The state of the garment that the numbers hold for

measured-as-sewn = Dikildiği gibi
measured-after-finish = Bitim işleminden sonra
measured-after-washes = { $count } yıkamadan sonra

## Units

unit-cm = cm
unit-mm = mm
unit-inch = inç

## Drawings


## Points of measure


## Readiness

severity-error = Hata
severity-warning = Uyarı

## Who takes part

side-brand = Marka
side-factory = Fabrika
role-owner = Sahip
role-designer = Tasarımcı
role-viewer = İzleyici
role-merchandiser = Müşteri temsilcisi
role-sample-room = Numune atölyesi
role-inspector = Denetçi

## Revisions

standing-current = Geçerli
standing-superseded = Yenisi çıktı
standing-withdrawn = Geri çekildi
agreement-shared = Paylaşıldı
agreement-acknowledged = Teyit edildi
agreement-signed-by-factory = Fabrika imzaladı
agreement-signed-by-brand = Marka imzaladı
agreement-signed-by-both = İki taraf da imzaladı

## Threads

thread-kind-question = soru
thread-kind-must-fix = zorunlu düzeltme
thread-kind-suggestion = öneri
thread-kind-concession = sapma izni talebi
thread-state-open = açık
thread-state-answered = yanıtlandı
thread-state-agreed = anlaşıldı
thread-state-changed = revizyon { $revision } ile değişti
thread-state-verified = revizyon { $revision } numunesinde doğrulandı
thread-state-closed = kapalı
thread-state-granted = izin verildi

## Sample rounds

round-kind-proto = İlk numune (proto)
round-kind-fit = Fit numunesi
round-kind-size-set = Beden seti
round-kind-pre-production = Üretim öncesi numune (PP)
round-kind-top-of-production = Üretimden ilk numune (TOP)
round-state-requested = istendi
round-state-in-work = yapılıyor
round-state-dispatched = gönderildi
round-state-received = teslim alındı
round-state-measured = ölçüldü
round-materials-actual = spekteki malzemeler
round-materials-substitute = ikame malzeme
round-outcome-approved = onaylandı
round-outcome-approved-with-changes = değişikliklerle onaylandı
round-outcome-remake = yeniden yapılacak
round-outcome-cancelled = iptal edildi
wash-before = Yıkamadan önce
wash-after = Yıkamadan sonra
skip-absent = Bu numunede yok
skip-unfinished = Henüz dikilmedi
skip-damaged = Numune burada hasarlı
skip-unclear = Nasıl ölçüleceğini anlamadım

## Bulk inspections

inspection-critical = kritik
inspection-major = majör
inspection-minor = minör
inspection-open = sürüyor
inspection-accepted = kabul edildi
inspection-rejected = reddedildi
inspection-released = serbest bırakıldı
inspection-concession = sapma izniyle geçti
inspection-rework = onarıma geri gönderildi
inspection-refused = alınmadı

## Acts in the ledger

act-create = Model başlatıldı
act-publish = Revizyon yayımlandı
act-withdraw = Revizyon geri çekildi
act-share = Fabrikayla paylaşıldı
act-unshare = Fabrikayla paylaşım bitti
act-acknowledge = Revizyon teyit edildi
act-ask = Konu açıldı
act-message = Mesaj gönderildi
act-thread-move = Konu ilerledi
act-request-round = Numune turu istendi
act-round-move = Numune turu ilerledi
act-measure = Ölçü alındı
act-skip = Ölçülmeyen nokta
act-photograph = Numune fotoğrafı
act-decide = Numune turu kararı
act-submit = Seçenek sunuldu
act-approve = Seçenek kararı
act-seal = Numune mühürlendi
act-begin-inspection = Seri üretim denetimi başladı
act-inspect = Adet denetlendi
act-conclude-inspection = Seri üretim denetimi sonuçlandı
act-decide-inspection = Partiye karar verildi
act-sign = İmzalandı
act-translate = Çevrildi
act-translate-message = Mesaj çevirisi
act-erase = Kişisel metin silindi
