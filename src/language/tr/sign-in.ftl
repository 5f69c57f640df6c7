### Signing in and out, setting up, invitations.

sign-in-title = Giriş yap
sign-in-login = E-posta ya da giriş adı
sign-in-password = Parola
sign-in-wrong = Ad ya da parola yanlış. Yeniden deneyin.
sign-in-code = Öteki cihazımdan bir kodum var
sign-in-lost = Parolanız yok mu? Sizi davet eden kişiden yeni bir bağlantı isteyin.

set-up-title = Fellseam kurulumu
set-up-what = Buradaki ilk kişi sizsiniz. Markanızın ve kendi adınızı yazın: sahibi siz olursunuz.
set-up-brand = Markanın adı
set-up-name = Adınız
set-up-button = Kur

join-title = İçeri girin
join-for = Bu bağlantı { $name } içindir
join-as = { $org } için { $role } olarak giriyorsunuz.
join-name = Adınız
join-button = Gir
join-once = Bağlantı bir kez çalışır. Düğmeye basana kadar harcanmaz.

spent-title = Bu bağlantı çalışmıyor
spent-why = Daha önce kullanıldı ya da süresi doldu.

code-title = Öteki cihazınızdaki kod
code-label = Kod
code-where = Öteki cihazda Sayfam’ı açın ve Kod göster’i seçin.
code-wrong = Kod yanlış ya da süresi doldu. Yeni bir kod alın.
code-button = Gir

me-title = Sayfam
me-about = Hakkımda
me-save = Kaydet
me-second = İkinci cihaz
me-second-what = Fellseam’i yeni bağlantı olmadan telefonunuzda ya da bilgisayarınızda açın.
me-second-button = Kod göster
me-code-title = İkinci cihazınız için kod
me-code-how = Öteki cihazda { $address } adresini açın ve bu kodu yazın. On dakika içinde bir kez geçerlidir.
me-code-qr = Kodun yazıldığı sayfayı açar
me-password = Parola
me-password-what = Parolayla bağlantı olmadan giriş yapılır. Parola koymak öteki cihazların oturumunu kapatır.
me-password-old = Şimdiki parola
me-password-new = Yeni parola
me-password-button = Parola koy
me-out = Her yerden çık
me-out-what = Bütün cihazlardaki bütün oturumlarınızı kapatır.
me-out-sure = Bu cihazdan da çıkılır. Yeniden girmek için parolanız ya da yeni bir bağlantı gerekir.
me-out-button = Her yerden çık
