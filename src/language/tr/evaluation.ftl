### The evaluation of a sample: why its measurements are off, and what to do.

## Where

evaluation-fabric-along = { $fabric }, { $direction }
evaluation-some-points = { $count } nokta
evaluation-whole-garment = Giysinin tamamı

## Causes

evaluation-proportional-shift = { $place }: uzun ve kısa noktalar aynı oranda sapmış, % { $share }. Kumaş çekmiş ya da uzamış, ya da kalıptaki payı yanlış. Kalıbı orada × { $factor } yapın.
evaluation-constant-error = { $place }: uzun ya da kısa, her nokta aynı uzunlukta sapmış, { $by }. Dikiş payına ve kesime ya da ölçülen mezuraya bakın.
evaluation-single-point = { $points }: { $size } bedeninde { $by } sapmış, başka hiçbir şey bunu açıklamıyor. Bu noktanın nasıl kesilip dikildiğine bakın.
evaluation-base-pattern = { $points }: ölçülen her bedende { $by } sapmış. Baz kalıbı orada düzeltin.
evaluation-grading = { $place }: baz bedenden uzaklaştıkça sapma artıyor; adımlar tablodan % { $share } farklı. Serilemeyi düzeltin.
evaluation-size-pattern = { $place }: yalnız { $size } bedeninde { $by } sapmış. Bu bedenin kalıbına bakın.
evaluation-one-piece = { $points }: yalnız numune { $pieces } üzerinde { $by } sapmış. Yeniden ölçün; değişmezse bu numune farklı dikilmiştir.
evaluation-unsteady = { $points }: { $size } bedenindeki numuneler, ölçümün açıklayabileceğinden fazla farklı. Dikime bakın ya da nasıl ölçüleceğinde anlaşın.
evaluation-wrong-label = Numune { $pieces } üzerinde { $size } yazıyor, ölçüsü { $really }. Etiketine ya da hangi kalıptan kesildiğine bakın.
evaluation-swapped-sizes = Numuneler { $pieces } birbirinin bedenini taşıyor: ilki { $size } deniyor, ölçüsü { $really }. Etiketlerini değiştirin.
evaluation-doubled = Numune { $pieces }, { $points }: olması gerekenin yaklaşık iki katı. Yarım yerine tam çevre yazılmış: yeniden ölçün.
evaluation-halved = Numune { $pieces }, { $points }: olması gerekenin yaklaşık yarısı. Tam çevre yerine yarım yazılmış: yeniden ölçün.
evaluation-cm-as-inch = Numune { $pieces }, { $points }: inç yerine santimetre yazılmış.
evaluation-inch-as-cm = Numune { $pieces }, { $points }: santimetre yerine inç yazılmış.
evaluation-ten-times = Numune { $pieces }, { $points }: olması gerekenin on katı. Ondalık işaretine bakın.
evaluation-tenth = Numune { $pieces }, { $points }: olması gerekenin onda biri. Ondalık işaretine bakın.
evaluation-swapped-points = Numune { $pieces }: { $points } değerleri birbirinin yerinde.

## Figures

evaluation-rests-on-one = Tek bir değere dayanıyor.
evaluation-rests-on = { $readings } değere dayanıyor, { $same } tanesi aynı yöne sapmış. Yarısı { $before } değerinden fazla sapmıştı; bundan geriye { $left } kalıyor.

## What is not a cause

evaluation-again = Numune { $piece }, { $point }: tolerans dışı, ama ölçüm yanılgısından fazla değil. Yeniden ölçün.
evaluation-dispute = Numune { $piece }, { $point }: { $one } { $least } ölçtü, { $other } { $most } ölçtü. Önce nasıl ölçüleceğinde anlaşın: { $allowed } kadar fark olabilir.
evaluation-few-points = { $place }: yeterli veri yok. Orada { $have } nokta ölçüldü; kumaşın oynayıp oynamadığını söylemek için { $need } gerekir.
evaluation-one-size = Yeterli veri yok: yalnız { $size } bedeni ölçüldü; kalıp ile serileme ayırt edilemez.
evaluation-one-piece-only = Yeterli veri yok: { $size } bedeninden bir numune ölçüldü; dikim ile kalıp ayırt edilemez.
evaluation-watch = { $out ->
    [0] { $point }: daha önce kalmıştı ({ $rounds }). Şimdi tolerans içinde: izleyin.
   *[other] { $point }: daha önce kalmıştı ({ $rounds }). Yine { $measured } içinde { $out } tanesinde dışarıda.
}
evaluation-repeat-assumed = Hiçbir şey iki kez ölçülmedi. Bir değerin { $deviation } içinde tekrarlanabildiği varsayılıyor.
evaluation-repeat-measurers = Birkaç kişinin ölçtüğü { $count } noktaya göre bir değer { $deviation } içinde tekrarlanabiliyor.
evaluation-repeat-pieces = Aynı bedenden birkaç numunede bulunan { $count } noktaya göre bir değer { $deviation } içinde tekrarlanabiliyor.
evaluation-wash = { $place }: yıkamayla % { $percent }. Kalıbı orada × { $factor } yapın.
evaluation-wash-little = { $place }: yıkamayla % { $percent }; ölçme hatasının açıkladığından fazla değil.

## On a round's page

evaluation-title = Ölçüler ne diyor
evaluation-no-cause = Bir neden belirtilmiyor. Tolerans dışı bir şey varsa ölçüm yanılgısından fazla değil, ya da bunu söylemek için veri az.
evaluation-points-shown = Nerede görülüyor
evaluation-suggested = Önerilen kalıp düzeltmesi
evaluation-agree = Önce nasıl ölçüleceğinde anlaşın
evaluation-again-title = Yeniden ölçün
evaluation-lacks-title = Yeterli veri yok
evaluation-watch-title = Dikkat: önceki bir turda tutmadı
evaluation-watch-word = dikkat
evaluation-strips = Noktaya göre sapma
evaluation-strips-how = Taralı bant toleranstır, içindeki çizgi istenen ölçüdür. ● içinde, ▲ üstünde, ▼ altında.
evaluation-strips-sides = İçi boş işaretler fabrikanın, dolu olanlar markanın değerleridir.
evaluation-strips-beyond = İşaretin yanındaki ok: resmin yetiştiğinden daha uzakta.
evaluation-within = Tolerans içinde { $count } nokta
evaluation-by-size = Bedene göre sapma
evaluation-by-size-how = Çizgi her bedenin ortalama sapmasını birleştirir. Düz çizgi: kalıp. Yükselen ya da inen çizgi: serileme.
evaluation-steps = Bedenler arası adımlar
evaluation-from-to = Nereden, nereye
evaluation-asked = Tabloya göre
evaluation-got = Ölçülen
evaluation-more = Fark
