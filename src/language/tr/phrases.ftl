### Ready sentences that both sides read in their own language: phrase-<id> of exchange/phrase.rs.

phrase-group-question = Sorular
phrase-group-answer = Yanıtlar
phrase-group-fix = Değişmesi gerekenler
phrase-group-measuring = Ölçüm
phrase-group-material = Malzemeler
phrase-group-date = Tarihler
phrase-group-shipping = Gönderim

## Questions

phrase-ask-how-measured = { $item } nasıl ölçülür? Lütfen başladığı ve bittiği yeri gösterin.
phrase-ask-which-right = { $item }: çizim ile metin farklı. Hangisi doğru?
phrase-ask-photo = Lütfen şunun fotoğrafını gönderin: { $item }.
phrase-ask-larger-drawing = Lütfen şunun daha büyük çizimini gönderin: { $item }.
phrase-ask-value = { $item }, beden { $size } değeri açık değil. Kaç olmalı?
phrase-ask-stitch = { $item } için doğru dikiş tipi hangisi?
phrase-ask-allowance = { $item } için dikiş payı ne kadar olmalı?
phrase-ask-place = { $item } tam olarak nereye gelir? Hangi dikişten ölçülür?
phrase-ask-colour = { $item } için doğru renk referansı hangisi?
phrase-ask-revision = Revizyon { $revision } ile mi çalışalım?
phrase-ask-order = Önce { $item }, sonra { $other } dikilebilir mi?
phrase-ask-sample = Lütfen şunun numunesini gönderin: { $item }.

## Answers

phrase-answer-yes = Evet.
phrase-answer-no = Hayır.
phrase-answer-spec = Spek doğru. Lütfen ona göre çalışın.
phrase-answer-drawing = Çizim doğru. Metin değiştirilecek.
phrase-answer-text = Metin doğru. Çizim değiştirilecek.
phrase-answer-value = { $item }, beden { $size }: doğru değer { $value }.
phrase-answer-next = Sonraki revizyonda değişecek. Lütfen bekleyin.
phrase-answer-changed = Revizyon { $revision } içinde değişti.
phrase-answer-go-on = Lütfen devam edin. Bu işi durdurmaz.
phrase-answer-stop = Bu çözülene kadar lütfen şu işi durdurun: { $item }.
phrase-answer-understood = Anlaşıldı. Öyle yapacağız.
phrase-answer-allowance = { $item } için dikiş payı { $value } olsun.
phrase-answer-distance = { $item }, { $other } ile arası { $value } olacak şekilde yerleştirilsin.

## What must change

phrase-fix-large = { $item }, { $value } fazla büyük. Speke getirin.
phrase-fix-small = { $item }, { $value } fazla küçük. Speke getirin.
phrase-fix-density = { $item }: cm’de { $count } dikiş olsun.
phrase-fix-twisted = { $item }: dikiş burulmuş. Düz dikin.
phrase-fix-puckers = { $item }: dikiş büzülüyor. İplik gerginliğini kontrol edin.
phrase-fix-skipped = { $item }: dikiş atlamış.
phrase-fix-ends = { $item }: iplik uçlarını temizleyin.
phrase-fix-bartack = { $item }: punteriz eksik.
phrase-fix-place = { $item } yanlış yerde. { $value } kaydırın.
phrase-fix-turned = { $item } ters dikilmiş.
phrase-fix-sides = { $item }: sol ve sağ arasında { $value } fark var. Eşitleyin.
phrase-fix-colour = { $item }: renk onaylanan renk değil.
phrase-fix-print = { $item }: baskı çatlıyor ya da soyuluyor.
phrase-fix-stain = { $item }: leke var. Ürünleri temiz tutun.
phrase-fix-label = { $item }: yazı yanlış. Spekteki yazıyı kullanın.

## Measuring

phrase-measured-says = { $item }: ölçülen { $value }, spek { $spec }.
phrase-measured-size = { $item }, beden { $size }: ölçülen { $value }.
phrase-measured-shrinks = { $item } yıkamada % { $percent } çekiyor.
phrase-measured-grows = { $item } yıkamada % { $percent } uzuyor.
phrase-measure-again = Lütfen yeniden ölçün: { $item }, düz serili ve germeden.
phrase-measured-half = { $item } düz serili ölçüldü: yarım çevre.
phrase-measured-stretched = { $item }, gergin: ölçülen { $value }.
phrase-measured-allowance = Kalıpta { $item } için { $value } daha dikiş payı gerekiyor.
phrase-measured-tolerance = { $item }: tolerans tutturulamıyor. Tutturabileceğimiz: { $value }.
phrase-measured-vary = Numuneler arasında { $value } fark var: { $item }.

## Materials

phrase-material-instead = { $other } yerine { $material } kullanılabilir mi?
phrase-material-none = { $material } bulunamıyor.
phrase-material-arrives = { $material } geliş tarihi: { $date }.
phrase-material-shade = { $material }: ton, onaylanan renk numunesinden farklı.
phrase-material-dip-sent = { $material }: renk numunesi { $date } tarihinde gönderildi.
phrase-material-dip-approve = Lütfen renk numunesini onaylayın: { $material }.
phrase-material-minimum = { $material }: en az sipariş miktarı ihtiyacımızdan fazla.
phrase-material-width = { $material }: en { $value }.
phrase-material-shrinks = { $material } % { $percent } çekiyor.
phrase-material-keep = Hayır. Spekteki gibi { $material } kullanın.
phrase-material-take = Evet. { $material } kullanabilirsiniz.
phrase-material-short = { $material }: { $count } adet eksik.

## Dates

phrase-date-ready = Numuneler { $date } tarihinde hazır.
phrase-date-late = { $count } gün gecikiyoruz.
phrase-date-need = Numuneler en geç { $date } tarihinde gerekli.
phrase-date-answer = Lütfen en geç { $date } tarihinde yanıtlayın. Sonra iş durur.
phrase-date-cutting = Kesim { $date } tarihinde başlıyor.
phrase-date-sewn = Dikim { $date } tarihinde bitiyor.
phrase-date-closed = Fabrika kapalı: { $date } – { $until }.
phrase-date-confirm = Lütfen bu tarihi onaylayın: { $date }.

## Shipping

phrase-ship-sent = { $date } tarihinde { $count } adet gönderildi.
phrase-ship-arrived = { $date } tarihinde { $count } adet geldi.
phrase-ship-cartons = Koli sayısı: { $count }.
phrase-ship-missing = Pakette { $count } adet eksik.
phrase-ship-damaged = Paket hasarlı geldi.
phrase-ship-address = Lütfen paketin adresini onaylayın.
phrase-ship-papers = Lütfen gümrük belgelerini gönderin.
