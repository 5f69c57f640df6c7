### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = Bir şey girilmedi. Bir ölçü yazın, örneğin 28, 28.5 ya da 28 1/2.
length-not-a-number = “{ $typed }” bir ölçü değil. 28, 28.5 ya da 28 1/2 gibi yazın.
length-unknown-unit = “{ $typed }” içindeki birim bilinmiyor. cm, mm ya da inch kullanın.
length-unit-missing = “{ $typed }” birimsiz ve spekte de birim yok. Birimi başlıkta seçin ya da burada yazın: 28 cm.
length-may-be-thousands = “{ $typed }” iki türlü okunabilir. Binlik işareti olmadan ya da bir ondalık fazlasıyla yazın.
length-zero-divisor = “{ $typed }” sıfıra bölünen bir kesir. 28 1/2 gibi yazın.
length-fraction-not-proper = “{ $typed }” içindeki kesir birden küçük değil. 28 1/2 gibi yazın.
length-too-fine = “{ $typed }” tam olarak saklanamayacak kadar ince. Daha az ondalık yazın.
length-too-long = “{ $typed }” bir kilometreden uzun. Birim doğru mu?

## A grade rule that cannot be read

grade-unreadable = “{ $piece }” bir serileme kuralı değil. Şöyle yazın: 2 (her beden), XS-L 2, L-2XL 2.5 (bedenlere göre), same (aynı), XS=50, S=52 (değerler) ya da =C - 1.5 (C noktasından).
grade-two-readings = “{ $piece }” iki türlü okunabilir. İki bedenin ya da iki noktanın kodu ya da harfi aynı.
grade-unknown-size = “{ $size }” bedenlerden biri değil.
grade-size-twice = “{ $size }” bedeninin iki değeri var.
grade-unknown-point = “{ $text }” bir noktanın harfiyle başlamıyor. =C - 1.5 gibi yazın.
grade-too-few-sizes = Henüz iki beden yok. Önce bedenleri girin ya da şunu yazın: same.

## Forms

error-missing = Buraya bir şey yazın.
error-text-long = Çok uzun. En çok { $most } harf yazın.
error-number-taken = Başka bir modelin numarası bu. Başka bir numara seçin.
error-size-code-signs = Beden kodunda virgül, noktalı virgül ya da eşittir olamaz: serileme kuralları bunları kullanır.
error-screen = “{ $typed }” bir ekran rengi değil. #1f2a3c gibi yazın.
error-washes = Kaç yıkama olduğunu yazın: 1–99.
error-name-missing = Bir ad yazın.
error-name-long = Ad çok uzun. En çok 100 harf yazın.
error-login-missing = Giriş için bir e-posta ya da ad yazın.
error-login-taken = Bu adla başka biri giriş yapıyor. Başka bir ad seçin.
error-password-short = En az { $count } karakter yazın.
error-password-long = Parola çok uzun. En çok 1000 karakter yazın.
error-password-wrong = Bu sizin parolanız değil.
error-place-missing = Bir rol seçin.
error-kind-missing = Ne olduğunu seçin.
error-factory-missing = Bir fabrika seçin.
error-text-missing = Bir mesaj yazın.
error-photos-many = Bir seferde en çok { $count } fotoğraf gönderin.
error-decimal = “{ $typed }” sayı değil. Örneğin 12.5 yazın.
error-choice-missing = Birini seçin.
incomparable-illuminants = Biri { $standard } altında, öteki { $sample } altında ölçüldü: böyle ölçümler karşılaştırılamaz. İkisini aynı ışıkta ölçün.
incomparable-observers = Biri { $standard } için, öteki { $sample } için ölçüldü: böyle ölçümler karşılaştırılamaz. İkisini aynı gözlemci için ölçün.
incomparable-no-colour = Ölçümlerden biri hiçbir yüzeyin rengi değil. L*, a* ve b* değerlerini kontrol edin.
incomparable-weight = Formülün ağırlıkları 0.1 ile 10 arasında değil.
not-on-screen-no-colour = Hiçbir yüzeyin böyle rengi yok. L* 0 ile 150, a* ve b* −200 ile 200 arasındadır.

## Pages

problem-heading = Olmadı
problem-heading-refused = Henüz değil
problem-heading-not-found = Bulunamadı
problem-home = Beni bekleyenlere dön
problem-not-found = Böyle bir sayfa yok ya da sizinle paylaşılmıyor.
problem-sign-in = Önce giriş yapın.
problem-not-yours = Bu, { $role } rolü için değil. Yetkili birinden isteyin.
problem-forged = Form eskimiş ya da bu siteden gönderilmemiş. Sayfayı yeniden açıp formu bir daha gönderin.
problem-bad-form = Gönderilen okunamadı. Sayfayı yeniden açıp bir daha deneyin.
problem-too-large = Bu gönderilemeyecek kadar büyük.
problem-too-many-tries = Çok fazla yanlış deneme. Bir çeyrek saat bekleyin.
problem-fault = Bizim tarafta bir arıza oldu. Daha önce kaydedilen hiçbir şey kaybolmadı. Fellseam’i çalıştıran kişiye şu numarayı bildirin: { $reference }

way-on-thread = Konu { $number }: aç
way-on-current = Revizyon { $revision }: aç
way-on-publish = Taslağı yeniden denetle
way-on-style = Modele dön

## Files

upload-too-large = Resim çok büyük. En çok 50 megapiksellik bir resim gönderin.
upload-not-a-picture = Bu dosya bir resim değil. JPEG, PNG, WebP ya da SVG gönderin.
upload-unsupported = { $what } gösterilebilen bir resim türü değil. JPEG, PNG, WebP ya da SVG gönderin.
upload-heic = Bu telefon resimleri HEIC olarak saklıyor. Telefonun kamera ayarlarında “en uyumlu” (JPEG) seçin ve resmi yeniden çekin.
upload-too-heavy = Bu resmin çizilmesi çok sürüyor. Daha sade kaydedip yeniden gönderin.
upload-broken = Resim bozuk. Yeniden kaydedip bir daha gönderin.
upload-failed = Resim hazırlanamadı. Yeniden deneyin.
