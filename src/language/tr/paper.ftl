### Prints, and the page behind their code.

## The sheets

paper-identity = Kimlik ve değişiklikler
paper-pattern = Kalıphane
paper-cutting = Kesim ve malzemeler
paper-sewing = Dikim
paper-artwork = Baskı ve nakış
paper-labels = Etiketler ve paketleme
paper-inspection = Kontrol
paper-nothing = Burada bir şey söylenmiyor.
paper-left-out = Eklenmedi, çünkü özgün dosyalar birlikte { $most } MB’tan büyük: { $names }. Revizyonun sayfasından indirin.
paper-page = Sayfa
paper-changed = revizyon { $revision } sonrasında değişti; eski değerin üstü çizili
paper-scan = Bu çıktı hâlâ geçerli mi? Taratın.
paper-for = Kimin için
paper-printed = Yazdırıldı
paper-band-draft = TASLAK. Buna göre dikmeyin.
paper-band-superseded = YERİNİ revizyon { $revision } ALDI. Buna göre dikmeyin.
paper-band-withdrawn = GERİ ÇEKİLDİ. Durun. Buna göre dikmeyin.
paper-no-chart = Henüz ölçü tablosu yok: bazı değerler eksik.
paper-true-size = %100 ölçekte yazdırın. Cetvel 100 mm gelmelidir.
paper-larger = Bu sayfa { $width } × { $height } mm, ötekilerden büyük. Büyük kâğıda ya da parçalar hâlinde %100 ölçekte yazdırın.
paper-found = Ölçülen
paper-inspector = Kontrol eden
paper-day = Tarih
paper-pieces = Adet, numune veya parti
paper-stage = Tur
paper-how-to-fill = Ölçtüğünüzü her değerin yanına yazın. Nokta başka bir şey söylemiyorsa düz ve gevşek ölçün.

## Where a print is asked for

print-title = Yazdır
print-what = Seçtiğiniz sayfalarla tek bir PDF. Çizimlerin ve baskıların asıl dosyaları ekindedir.
print-language = Dil
print-second = İkinci dil
print-one = Yalnız bir dil
print-paper = Kâğıt
print-sheets = Sayfalar
print-for = Kimin için
print-own = markanın kendisi
print-make = PDF’yi yap
print-no-address = Hiçbir şey yazdırılmadı: her sayfadaki kod yalnız bu makineye götürürdü. Programı çalıştıran kişi önce genel adresini belirler.
print-no-font = Hiçbir şey yazdırılmadı: bu makinede { $letters } için yazı tipi yok. Çalıştıran kişi şunu kurar: { $packages }
print-failed = PDF yapılamadı. Daha az sayfayla deneyin.

## The page behind the code on a print

now-title = Bu çıktı hâlâ geçerli mi?
now-current = Geçerli
now-superseded = Yenisi var
now-withdrawn = Geri çekildi
now-draft = Taslak
now-go = Bu çıktı revizyon { $revision }; geçerli olan budur.
now-stop = Buna göre dikmeyin. Revizyon { $revision } daha yeni.
now-draft-stop = Taslağa göre asla üretim yapılmaz. Yayımlanmış bir revizyon bekleyin.
now-changes = { $count ->
    [one] O zamandan beri { $count } değişiklik
   *[other] O zamandan beri { $count } değişiklik
}
now-checked = { $time } UTC’de bakıldı
now-see = Revizyonu görün
