### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = Bu revizyonu okudum. Fabrikam modeli buna göre yapacak.
statement-revision-brand = İstediğimiz bu revizyondur. Gelen ürünü buna göre değerlendireceğiz.
statement-round-factory = Bu numune turu hakkındaki kararı okudum. Fabrikam buna göre çalışacak.
statement-round-brand = Bu numune turu hakkındaki kararımız budur.
statement-seal-factory = Burada adı geçen parçalar mühürlüdür. Fabrikam seri üretimi bunlara ve revizyona göre yapacak.
statement-seal-brand = Burada adı geçen parçalar mühürlüdür. Seri üretimi bunlara ve revizyona göre değerlendireceğiz.

## A revision

revision-number = Revizyon { $revision }
revision-reason = Neden yayımlandı

## What changed

changes-title = Revizyon { $revision } içinde değişenler
changes-since = Revizyon { $revision } ile karşılaştırma.
changes-acknowledged = Fabrikanızın en son teyit ettiği revizyon budur.
changes-none = Revizyon { $revision } sonrasında değişen bir şey yok.
changes-first = Bu ilk revizyon. Karşılaştırılacak eskisi yok.
changes-compare = Başka bir revizyonla karşılaştır
changes-with = Revizyon { $revision } ile
changes-read = Revizyon { $revision }: oku

## The revision page

revision-what-changed = Değişenler
revision-to-signatures = İmzalar
revision-current = Revizyon { $revision } geçerli
revision-published = { $date } tarihinde { $name } yayımladı
revision-superseded = Yenisi çıktı
revision-superseded-stop = Buna göre dikim yapmayın.
revision-withdrawn = Geri çekildi
revision-withdrawn-why = Durun. Buna göre dikim yapmayın: { $reason }
revision-use = Revizyon { $revision } kullanın
revision-see-changes = Değişenlere bak
revision-none-current = Geçerli revizyon yok. Markanın yenisini yayımlamasını bekleyin.
revision-original = Özgün dosya
revision-tap = Okumak ya da sormak için bir harf seçin. ? açık soru, ! açık zorunlu düzeltme demektir.
revision-style = Model
revision-revision = Revizyon
revision-fingerprint = Parmak izi
revision-date = Yayım tarihi
revision-by = Yayımlayan
revision-state = Durum
revision-compare = Karşılaştır
revision-measured = { $state } · düz ve gevşek · { $edges }. Bir noktada farklı yazabilir.
revision-contents = Bu sayfada
revision-others = Diğer revizyonlar ve indirmeler
revision-archive = Revizyonun tamamını indir (ZIP)
revision-archive-what = Belgesi ve gösterdiği özgün dosyalar, bayt bayt.
revision-document = Bu revizyonun belgesini indir (JSON)
revision-document-what = Parmak izinin hesaplandığı baytların kendisi.

## Acknowledging

acknowledge-not-yet = Fabrikanız revizyon { $revision } için teyit vermedi.
acknowledge-changed = Fabrikanızın en son teyit ettiği revizyon { $revision } sonrasında { $count } değişiklik var.
acknowledge-what = Teyit ettiğinizde şunu dersiniz: bu revizyonu okuduk ve başkasına göre çalışmıyoruz.
acknowledge-button = Revizyon { $revision }: teyit et
acknowledge-others = Müşteri temsilcinizden teyit etmesini isteyin.

## The size chart

chart-title = Ölçü tablosu
chart-caption = Ölçü tablosu, { $unit }
chart-units = Bütün değerler { $unit } cinsindendir. Küçük sayılar { $other } cinsinden, yalnız bilgi içindir.
chart-changed = Altı çizili değerler, fabrikanızın en son teyit ettiği revizyon { $revision } sonrasında değişti; eski değerin üstü çizilidir.
chart-size = Beden
chart-point = Ölçü noktası
chart-base = baz
chart-tolerance = Tolerans

## How to measure

how-title = Nasıl ölçülür
how-from = Başlangıç
how-to = Bitiş
how-way = Şekil
how-relaxed = Gevşek
how-stretched = Gergin

## Parts and colourways

parts-approximate = Ekrandaki renkler yaklaşıktır. Referans geçerlidir.
parts-colourway = Renk varyantı
parts-part = Parça

## Words beside a name

about-must-fix = { $count } zorunlu düzeltme
about-open = { $count } açık
about-new = yeni
about-changed = değişti

## Warnings that were accepted

accepted-title = Markanın kabul ettiği uyarılar
accepted-reason = Neden:

## Signing

sign-not-shared = Bu model henüz bir fabrikayla paylaşılmadı.
sign-acknowledged = Teyit: { $time } UTC
