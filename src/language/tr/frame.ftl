### What stands around every page: title, navigation, footer.

frame-skip = Sayfaya geç
frame-nav = Ana menü
frame-sign-out = Çıkış yap
frame-foot = Fellseam ile yapıldı

nav-needs = Beni bekleyenler
nav-styles = Modeller
nav-people = Kişiler
nav-me = Sayfam

language-label = Dil
language-unchecked = Programı yapanlarca yazıldı, ana dili olan biri henüz denetlemedi: { $languages }.
name-erased = (ad silindi)

## What the form before this page has done

said-saved = Kaydedildi.
said-made = Oluşturuldu.
said-restored = Bölüm o günkü haline döndü.
said-published = Yayımlandı.
said-shared = Paylaşıldı.
said-unshared = Artık paylaşılmıyor.
said-withdrawn = Geri çekildi.
said-acknowledged = Teyit edildi.
said-signed = İmzalandı.
said-sent = Gönderildi.
said-photographed = Fotoğraflar eklendi.
said-translated = Çeviri mesajın yanında duruyor.
said-moved = Tamam.
said-measured = Ölçüler kaydedildi.
said-decided = Karar verildi.
said-sealed = Mühürlendi.
said-begun = Başladı.
said-concluded = Sonuçlandı.
said-ended = Bu kişi artık giriş yapamaz.

## What needs me

needs-none = Sizi bekleyen bir şey yok.
needs-since = { $date } tarihinden beri
needs-styles = Modelleriniz
needs-no-styles = Sizinle henüz model paylaşılmadı. Marka, hazır olunca paylaşır.
needs-newest = Revizyon { $revision }
need-acknowledge = Revizyon { $revision }: okuyun ve teyit edin
need-sign-revision = Revizyon { $revision }: imzalayın
need-sign-revision-blocked = Revizyon { $revision }: imzalamadan önce açık kalanlara bakın
need-answer = Yanıtlayın: { $kind }
need-read-answer = Yanıtı okuyun: { $kind }
need-change = Sonraki revizyonda değiştirin: { $kind }
need-round-start = Numune turu { $number }: başlatın, { $kind }
need-round-measure = Numune turu { $number }: ölçün ve gönderin, { $kind }
need-round-receive = Numune turu { $number }: geldiğini bildirin, { $kind }
need-round-check = Numune turu { $number }: ölçün, { $kind }
need-round-decide = Numune turu { $number }: karar verin, { $kind }
need-round-sign-blocked = Numune turu { $number }, { $kind }: imzalamadan önce açık kalanlara bakın
need-round-sign = Numune turu { $number }: kararı imzalayın, { $kind }
need-approvals-decide = Onaya sunulanlara karar verin: { $count }
need-approvals-submit = Onay gerektirenleri sunun: { $count }
need-sign-seal = Numune turu { $number }: mührü imzalayın, { $kind }
need-sign-seal-blocked = Numune turu { $number } mührü, { $kind }: imzalamadan önce açık olanlara bakın
need-inspection = Seri üretimi denetleyin: denetim { $number }
need-inspection-decide = Seri üretim denetimi { $number }: partiye karar verin
need-inspection-again = Seri üretim denetimi { $number }: partiyi onarın ve yeniden denetleyin

frame-working = Çalışıyor. Bu sayfa kendiliğinden ilerler.
frame-sending = Dosyalar gönderiliyor: { $files }, { $size } MB. Bu sayfa kendiliğinden ilerler.
