### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = Sayfayı açtıktan sonra başkası { $count } bölüm kaydetti. Aşağıdaki yenilikleri okuyun, sonra yayımlayın.
refused-errors-remain = { $count } hata kaldı. Aşağıdakileri düzeltin, sonra yayımlayın.
refused-warning-reason-missing = { $count } uyarının nedeni yok. Düzeltin ya da neden öyle kaldığını yazın. Neden revizyonda basılır.
refused-reason-missing = Bir neden yazın. Başkaları sonra okuyacak.
refused-draft-unchanged = Taslak revizyon { $revision } ile aynı. Önce bir şey değiştirin.
refused-must-fix-unchanged = Üzerinde anlaşılan { $count } zorunlu düzeltme taslakta yapılmadı. Yapın, izin verin ya da kapatın.
refused-already-withdrawn = Bu revizyon zaten geri çekildi.
refused-not-current = Bu geçerli revizyon değil. Geçerli olan revizyon { $revision }. Orada değişenleri okuyun.
refused-none-current = Bu geçerli revizyon değil ve şu an geçerli olan yok: en yenisi geri çekildi. Markanın yenisini yayımlamasını bekleyin.
refused-not-shared = Bu model şu an fabrikayla paylaşılmıyor. Marka yeniden paylaşabilir.
refused-already-acknowledged = Fabrikanız bu revizyonu zaten teyit etti.

## Whose move it is

refused-only-brand = Bunu yalnız marka yapabilir.
refused-only-factory = Bunu yalnız fabrika yapabilir.
refused-not-the-asker = Bunu yalnız soran kişi ya da kuruluşunu yöneten biri yapabilir.
refused-only-brand-closes = Bunu yalnız marka kapatabilir. Konunun türü: { $kind }.
refused-other-side-first = Karşı taraf henüz yanıtlamadı. Yanıtı bekleyin.

## Threads

refused-thread-not-in = Bu şu an yapılamaz. Konunun durumu: { $state }.
refused-thread-closed = Bu konu kapalı. Yeniden açın ya da yeni bir soru sorun.
refused-no-such-move = Bu türden bir konuda yapılamaz: { $kind }.
refused-item-unchanged = Revizyon { $revision } bunu değiştirmiyor. Önce taslakta değiştirip yayımlayın.
refused-sample-too-old = Numune revizyon { $revision } öncesinde yapıldı. O revizyonun ya da sonrakinin numunesini ölçün.

## Rounds

refused-round-not-in = Bu şu an yapılamaz. Turun durumu: { $state }.
refused-nothing-measured = Henüz ölçüm yok. Önce en az bir numuneyi ölçün.
refused-only-corrections = Tura karar verildi. Artık bir değer yalnız düzeltilebilir, eklenemez.
refused-pieces-missing = Hangi bedenden kaç adet, yazın: en az bir, en çok { $most }, yalnız bu revizyonun bedenleri.
refused-substitutes-missing = Hangi malzemenin yerine hangisi kullanıldı, yazın.
refused-changes-missing = Neyin değişmesi gerektiğini yazın: en az bir madde, sözle.
refused-critical-out = { $count } kritik nokta tolerans dışında. Yeniden yapılmasını isteyin, değişiklik olarak yazın ya da sapma izni verin.
refused-newer-revision-needed = Son tur değişikliklerle onaylandı. Önce, bu değişiklikleri içeren, revizyon { $revision } sonrası bir revizyon yayımlayın.
refused-no-newer-revision = Daha yeni revizyon yok.
refused-nothing-to-approve = Bu revizyon bunun için onay gerektirmiyor. Gerekenlerin listesine bakın.
refused-photo-missing = Bir fotoğraf ekleyin: seçenek en az bir fotoğraftan değerlendirilir.
refused-option-decided = Bu seçenek için karar verildi: { $verdict }. Başka seçenek başka karar alır.
refused-only-owner = Numuneyi yalnızca markanın sahibi mühürler.
refused-already-sealed = Bu turun parçaları zaten mühürlü.
refused-too-early-to-seal = Bu turun türü: { $kind }. Numune, üretim öncesi veya üretimden ilk numune turundan mühürlenir.
refused-round-not-approved = Bu turun durumu: { $state }. Numune onaylanmış bir turdan mühürlenir.
refused-questions-before-sealing = Açık sorular: { $count }. Yanıtlayın; soran kapatır.
refused-must-fix-unverified = Numunede düzeldiği görülmemiş zorunlu düzeltmeler: { $count }. Numunede doğrulayın veya geçmesine izin verin.
refused-size-set-missing = Bu fabrikayla bu bedenler ve bu tablo için onaylanmış beden seti yok.
refused-not-approved-yet = Henüz onaylanmadı: { $count }.
refused-substitutes-sent = Parçalar ikame malzemelerden yapılmış. Mühürlü numune dosyadaki malzemelerden yapılır.
refused-piece-critical-out = Saklanacak parçada tolerans dışı ya da ölçülmemiş kritik noktalar: { $count }. Ölçün, sapma izni verin veya başka parçayı mühürleyin.
refused-seal-unsaid = En az bir parça seçin. Her birine kendi mühür numarasını verin ve nerede saklandığını yazın.
refused-seal-unsigned = Seri üretim, iki tarafın da imzaladığı mühre göre denetlenir. Henüz imzalamayan: { $sides }.
refused-lot-unsaid = Partide hangi renk varyantından ve bedenden kaç adet olduğunu yazın: en az bir, toplam en çok { $most }, yalnızca bu revizyondakiler.
refused-not-for-rework = Marka o partiyi onarıma geri göndermedi. Yalnızca böyle bir parti yeniden denetlenir.
refused-inspected-again = O parti zaten yeniden denetleniyor.
refused-lot-grown = Onarılan partide hiçbir renk varyantından ve bedenden eskisinden çok adet olmaz.
refused-inspection-not-in = Bu şu an yapılamaz. Denetimin durumu: { $state }.
refused-piece-unsaid = Hangi adet olduğunu söyleyin: 1 ile { $most } arasında bir numara; bir renk varyantı ve bedenden partidekinden çok olamaz.
refused-piece-beyond = Örnekte { $sample } adet var. Dışındaki bir adet yalnızca kritik kusur için kaydedilir.
refused-piece-moved = Siz sayfayı açtıktan sonra biri bu adedi kaydetti. Okuyun; sizinki sayılacaksa yeniden kaydedin.
refused-defect-unsaid = Kusurun nerede olduğunu veya ne olduğunu sözle yazın.
refused-pieces-uninspected = Örnekten henüz denetlenmeyen adet: { $count }. Önce onları denetleyin.
refused-lot-rejected = Parti reddedildi, serbest bırakılamaz. Sapma izni verin, geri gönderin veya almayın.
refused-nothing-to-concede = Parti kabul edildi: izin verilecek bir şey yok. Serbest bırakın, geri gönderin veya almayın.
refused-critical-in-bulk = Kritik kusurlu adet: { $count }. Böyle bir parti yalnızca geri gönderilir veya alınmaz.

## Signing

refused-open-questions = { $count } soru açık. Yanıtlayın; soran kapatır. Sonra imzalayın.
refused-must-fix-open = { $count } zorunlu düzeltme bu revizyonda yapılmadı, izin de verilmedi. Marka ya yapıp yayımlamalı ya da izin vermeli.
refused-same-person-both-sides = Bu modelde karşı taraf adına imza attınız. Bir kişi iki taraf adına imzalamaz: başkası imzalamalı.
refused-already-signed = Tarafınız bunu zaten imzaladı.
refused-not-acknowledged = Önce bu revizyonu teyit edin, sonra imzalayın.
refused-nothing-decided = İmzalanacak karar henüz yok. Önce marka tura karar vermeli.
refused-role-does-not-sign = Rolünüz imza atmaz. Kuruluşunuzda yetkili birinden isteyin.
refused-screen-moved = Sayfayı açtıktan sonra bu değişti. Yeniden okuyun, sonra imzalayın.
