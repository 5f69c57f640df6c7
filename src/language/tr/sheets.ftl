### Sheets: what is written into them.

sheet-download = { $kind } indir
sheet-draft = Taslak
sheet-base = Baz beden { $size }
sheet-chart = Ölçü tablosu
sheet-grading = Serileme
sheet-in-cm = cm olarak
sheet-in-inches = inç olarak
sheet-further = Diğer değerler
sheet-materials = Malzemeler
sheet-yes = evet
sheet-offset = Eklenen
sheet-gap = Adım { $from }–{ $to }
sheet-what = Ne olduğu
sheet-wastage = Fire, %
sheet-needed = Gereken
sheet-kilograms = kg
sheet-pieces = Her bedenden planlanan adet

## What cannot be read

sheet-too-large = Dosya çok büyük. En çok 8 MB olan, yalnızca gereken sayfayı içeren bir dosya gönderin.
sheet-unknown = Bu bir tablo değil. XLSX ya da CSV dosyası gönderin.
sheet-unsupported = { $what } burada okunmaz. XLSX olarak kaydedip gönderin.
sheet-encoding = Bu metnin harfleri tanınamadı. “CSV UTF-8” ya da XLSX olarak kaydedin.
sheet-too-far = { $cell }, { $rows } satırın ve { $columns } sütunun dışında. Gerekmeyeni silin.
sheet-too-many-cells = { $most } hücreden fazlası dolu. Yalnızca gereken sayfayı gönderin.
sheet-too-many-sheets = Dosyada { $most } sayfadan fazlası var. Yalnızca gerekeni gönderin.
sheet-too-long = { $cell } içinde { $most } harften fazlası var.
sheet-nothing = Bu dosyada hiçbir şey yok.
sheet-too-heavy = Bu dosyayı okumak çok uzun sürüyor. Yalnızca gereken sayfayı yeni bir XLSX dosyası olarak gönderin.
sheet-broken = Dosya bozuk. Yeniden kaydedip bir daha gönderin.
sheet-failed = Dosya şu anda okunamadı. Yeniden deneyin.
