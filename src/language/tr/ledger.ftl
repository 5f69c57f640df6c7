### Who did what when.

ledger-title = Kayıt defteri
ledger-what = Bu modelle yapılan her şey. Burada hiçbir şey değiştirilmez ya da silinmez: her kayıt öncekinin özetini taşır.
ledger-part = Fabrikanızla ilgili kayıtları görürsünüz; ötekilerin numaraları atlanmıştır.
ledger-length = Kayıt sayısı
ledger-end = Sonuncunun özeti
ledger-with = { $factory } ile
ledger-brand-only = Yalnız marka için
ledger-program = Program
ledger-each = Her değer
ledger-none = Henüz bir şey yapılmadı.

## What was done

deed-create = { $who } modeli başlattı.
deed-publish = { $who } revizyon { $revision } yayımladı.
deed-withdraw = { $who } revizyon { $revision } geri çekti.
deed-share = { $who } modeli { $factory } ile paylaştı.
deed-unshare = { $who }, { $factory } ile paylaşımı bitirdi.
deed-acknowledge = { $who } revizyon { $revision } için teyit verdi.
deed-ask = { $who } konu açtı: { $kind }, { $item }, revizyon { $revision }.
deed-message = { $photos ->
    [0] { $who } yazdı: { $kind }, { $item }.
   *[other] { $who } yazdı: { $kind }, { $item }, { $photos } fotoğrafla.
}
deed-thread = { $move ->
    [agree] { $who } kabul etti: { $kind }, { $item }.
    [reopen] { $who } yeniden açtı: { $kind }, { $item }.
    [grant] { $who } sapmaya izin verdi: { $kind }, { $item }.
    [verify] { $who } numunede düzeldiğini gördü: { $kind }, { $item }.
   *[close] { $who } kapattı: { $kind }, { $item }.
}
deed-thread-changed = { $who } revizyon { $revision } içine aldı: { $kind }, { $item }.
deed-round = tur { $number } ({ $kind })
deed-round-request = { $who } istedi, { $round }: { $count } numune, revizyon { $revision } ile.
deed-round-start = { $who } başlattı: { $round }.
deed-round-dispatch = { $who } numuneleri gönderdi: { $round }.
deed-round-receive = { $who } numuneleri teslim aldı: { $round }.
deed-round-measured = { $who } ölçümü bitirdi: { $round }.
deed-round-continue = { $who }, revizyon { $revision } olmasına rağmen devam etti: { $round }.
deed-measure = { $who } ölçtü: { $item } { $value }, { $round }, numune { $piece }.
deed-measure-many = { $who } { $count } değer ölçtü: { $round }.
deed-skip = { $who } ölçmedi: { $item }, { $round }, numune { $piece }: { $reason }.
deed-photograph = { $who } fotoğraf ekledi: { $round }, numune { $piece }.
deed-decide = { $who } karar verdi, { $round }: { $outcome }.
deed-submit = { $who } seçenek { $option } sundu: { $item } ({ $kind }).
deed-approve = { $verdict ->
    [approved] { $who } seçenek { $option } için onay verdi: { $item } ({ $kind }).
   *[rejected] { $who } seçenek { $option } için ret verdi: { $item } ({ $kind }).
}
deed-seal = { $who } parça mühürledi, { $round }: { $count }.
deed-inspection-begin = { $who } seri üretim denetimini başlattı, { $number }. Partideki adet: { $count }.
deed-inspect = { $who } adet denetledi, seri üretim denetimi { $number }, adet { $piece }.
deed-inspect-many = { $who } adet denetledi, seri üretim denetimi { $number }: { $count }.
deed-inspection-conclude = { $who } sonuçlandırdı, seri üretim denetimi { $number }: { $outcome }.
deed-inspection-decide = { $who } karar verdi, seri üretim denetimi { $number }: { $decision }.
deed-sign-revision = { $who } revizyon { $revision } imzaladı.
deed-sign-round = { $who } imzaladı: { $round }.
deed-sign-seal = { $who } mührü imzaladı, { $round }.
deed-translate = { $count ->
    [one] { $who } bir metni { $language } diline çevirdi.
   *[other] { $who } { $count } metni { $language } diline çevirdi.
}
deed-translate-message = { $who } bir mesajın yanına çeviri koydu ({ $language }): { $item }, { $kind }.
deed-erase = Bir kişinin adı, mesajları ve fotoğrafları silindi. Özetleri kalır.
