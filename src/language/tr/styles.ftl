### The list of styles and one style.

styles-title = Modeller
styles-none = Henüz model yok.
styles-style = Model
styles-newest = En yeni revizyon
styles-revision = Revizyon { $revision }
styles-draft-only = yalnız taslak
styles-threads = Açık konular
styles-rounds = Açık numune turları
styles-create = Model başlat
styles-create-button = Modeli başlat

## One style

style-draft = Taslak
style-draft-first = Henüz bir şey yayımlanmadı. Taslağı hiçbir fabrika görmez.
style-draft-differs = Taslak en yeni revizyondan farklı. Yayımlayana kadar hiçbir fabrika görmez.
style-draft-same = Taslak en yeni revizyonla aynı.
style-publish = Denetle ve yayımla
style-revisions = Revizyonlar
style-no-revisions = Henüz revizyon yayımlanmadı.
style-revision = Revizyon { $number }
style-open-revision = Revizyon { $number }: aç
style-older = Eski revizyonlar
style-published = Yayım tarihi
style-published-by = Yayımlayan
style-fingerprint = Parmak izi
style-withdrawn-because = Durun. Buna göre çalışmayın: { $reason }
style-acknowledged-by = Teyit eden: { $name }, { $date }
style-signed-factory = Fabrika adına imzalayan: { $name }, { $date }
style-signed-brand = Marka adına imzalayan: { $name }, { $date }
style-revision-head = Revizyon
style-state = Durum
style-reason = Neden
style-agreed = Anlaşılan
style-next = Sırada
style-next-you = siz
style-next-brand = marka
style-factory = Fabrika
style-threads = Açık konular
style-no-threads = Açık bir şey yok.
style-thread-item = Hakkında
style-thread-words = Yazılan
style-thread-open = Aç
style-rounds = Numune turları
style-no-rounds = Henüz numune istenmedi.
style-round-head = Tur
style-round = { $kind }, tur { $number }
style-ask-round = Numune turu iste
style-shares = Paylaşılanlar
style-no-shares = Henüz bir fabrikayla paylaşılmadı.
style-shared-since = Başlangıç
style-share = Bu fabrikayla paylaş
style-share-ended = bitti: { $date }
style-unshare = Paylaşımı bitir
style-unshare-what = { $factory } bu modelden artık hiçbir şey görmez: ne revizyon, ne konu, ne tur.
style-acts = Yapabilecekleriniz
style-withdraw = Revizyon { $number }: geri çek
style-withdraw-what = Bütün sayfaları ve baskıları durun diyecek. Geri alınamaz. Yerine eski bir revizyon geçmez: yenisini yayımlayın.
style-withdraw-reason = Neden? Okuyan herkes nedeninizi görür.

copy-title = Bu modeli kopyala
copy-what = Kopya, taslaktaki her şeyle başlar. Onaylar, muafiyetler, adetler ve renk varyantı numaraları kopyalanmaz; revizyonlar, konular ve turlar da.
copy-button = Kopyaya başla
style-copy = Yeni modele kopyala
style-copied-from = Kopyalandığı model
