### Ready instructions for callouts and for how to measure.

instruction-allowance = Đường may chừa { $value }.
instruction-topstitch-seam = Diễu cách đường may { $value }.
instruction-topstitch-edge = Diễu cách mép { $value }.
instruction-two-rows = Hai đường song song, cách nhau { $value }.
instruction-turn-under = Gấp mép vào { $value } rồi may chặn.
instruction-bartack-ends = Đính bọ hai đầu.
instruction-backstitch = Lại mũi ở đầu và cuối đường may.
instruction-press-open = Ủi rẽ đường may.
instruction-press-back = Ủi đường may lật về thân sau.
instruction-no-raw-edges = Bên trong không để mép vải thô.
instruction-seams-meet = Các đường may khớp nhau.
instruction-stripes-match = Sọc khớp nhau ở đường may.
instruction-no-puckers = Không nhăn.
instruction-stretch-evenly = Kéo đều bo khi may.
instruction-fuse-first = Ép dựng trước khi may.
instruction-trim-threads = Cắt sạch chỉ thừa.
instruction-centred = Canh giữa.
instruction-catch-label = Kẹp nhãn vào đường may.
instruction-lay-flat = Trải phẳng áo và vuốt thẳng, không kéo giãn.
instruction-zip-closed = Đo khi kéo khóa đóng.
instruction-along-curve = Đo theo đường cong.
instruction-rib-flat = Kéo đến khi bo phẳng rồi đo.
instruction-below-armhole = Dưới nách { $value }.
instruction-below-shoulder = Dưới điểm cao vai { $value }.
instruction-above-hem = Trên lai { $value }.
