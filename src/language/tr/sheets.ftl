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
