### People, factories and invitations.

people-title = Kişiler
people-name = Ad
people-role = Rol
people-org = Kuruluş
people-acts = Yapabilecekleriniz
people-left = erişimi yok
people-new-link = Yeni bağlantı
people-end = Erişimi kapat
people-end-what = { $name } hemen her yerden çıkarılır ve yeniden giremez. Yazdıkları ve imzaladıkları kalır. Bu geri alınmaz: yeniden almak için yeni bir davet gönderin.
people-add = Birini davet et
people-add-button = Bağlantı oluştur
people-inspector = Üçüncü tarafın denetçisi, partilerini denetlediği fabrikaya eklenir. O fabrikanın okuduklarını okur: revizyonlar, yazışmalar ve numune turları; fiyat yok, başka fabrika yok.
people-factory = Fabrika ekle
people-factory-name = Fabrikanın adı
people-factory-button = Fabrika ekle
people-link-for = { $name } için bağlantı
people-link-how = Bu bağlantıyı yalnız o kişiye gönderin. Yedi gün içinde bir kez çalışır. Yalnız şimdi görürsünüz.
people-link-label = Bağlantı
people-link-qr = Ya da telefonuyla taratın
people-link-unreachable = Bu adres yalnız bu makinede açılır. Başkalarına bağlantı oluşturmak için programı --public-url ile başlatın.
