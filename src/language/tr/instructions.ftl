### Ready instructions for callouts and for how to measure.

instruction-allowance = Dikiş payı { $value }.
instruction-topstitch-seam = Dikişten { $value } uzağa üst dikiş yapın.
instruction-topstitch-edge = Kenardan { $value } içeriye üst dikiş yapın.
instruction-two-rows = İki paralel sıra, araları { $value }.
instruction-turn-under = Kenarı { $value } içe kıvırıp dikin.
instruction-bartack-ends = İki uca punteriz atın.
instruction-backstitch = Başta ve sonda geri dikiş yapın.
instruction-press-open = Dikişi açarak ütüleyin.
instruction-press-back = Dikişi arkaya doğru ütüleyin.
instruction-no-raw-edges = İçeride çiğ kenar kalmasın.
instruction-seams-meet = Dikişler karşılaşır.
instruction-stripes-match = Çizgiler dikişte denk gelir.
instruction-no-puckers = Büzülme olmasın.
instruction-stretch-evenly = Dikerken ribanayı eşit gerin.
instruction-fuse-first = Dikmeden önce tela yapıştırın.
instruction-trim-threads = Tüm iplikleri temizleyin.
instruction-centred = Ortalı.
instruction-catch-label = Etiketi dikişe yakalayın.
instruction-lay-flat = Giysiyi düz serin, germeden düzeltin.
instruction-zip-closed = Fermuar kapalıyken ölçün.
instruction-along-curve = Eğri boyunca ölçün.
instruction-rib-flat = Ribana düzleşene kadar gerin, sonra ölçün.
instruction-below-armhole = Kol evinin { $value } altında.
instruction-below-shoulder = Omuz tepe noktasının { $value } altında.
instruction-above-hem = Etek ucunun { $value } üstünde.
