### The signed record of a revision or a round.

record-title = İmzalı tutanak
record-link = İmzalı tutanak
record-round = Tur { $number }
record-round-head = Numune turu
record-download = Tutanağı indir
record-what = Kimin neye ne zaman imza attığı ve bunu anlatan defter kayıtları. İndirilen dosya bu hizmetin imzasını taşır ve yıllar sonra her makinede denetlenebilir.
record-style = Model
record-made = Yazıldığı an
record-digest = İmzalananın özeti
record-nothing = Henüz bir karar verilmedi.
record-names = İmzalar
record-unsigned = Henüz kimse imzalamadı.
record-moved = Bu imzadan sonra değerler düzeltildi; imza şunun içindi:
record-chain = Kayıt defteri
record-chain-what = Yazıldığında defterde { $count } kayıt vardı. Bunu anlatan kayıtlar aşağıda; her biri öncekinin özetini taşır.
record-head = Defterin sonu
record-how = Denetleme
record-how-what = Program dosyayı bağlantı olmadan denetler ve değiştirilen değeri gösterir:
record-key = Bu hizmetin açık anahtarı. Kimse yerine başkasını koyamasın diye bir kopyasını başka yerde saklayın:
