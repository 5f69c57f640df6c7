### Ready instructions for callouts and for how to measure.

instruction-allowance = 缝份 { $value }。
instruction-topstitch-seam = 距缝线 { $value } 压明线。
instruction-topstitch-edge = 距边 { $value } 压明线。
instruction-two-rows = 两道平行线，间距 { $value }。
instruction-turn-under = 折边 { $value } 并缝住。
instruction-bartack-ends = 两端打枣。
instruction-backstitch = 起止处回针。
instruction-press-open = 缝份分开烫。
instruction-press-back = 缝份倒向后片烫。
instruction-no-raw-edges = 内侧无毛边。
instruction-seams-meet = 缝线对齐。
instruction-stripes-match = 条纹在缝处对齐。
instruction-no-puckers = 不起皱。
instruction-stretch-evenly = 缝制时均匀拉伸罗纹。
instruction-fuse-first = 缝制前先粘衬。
instruction-trim-threads = 剪净线头。
instruction-centred = 居中。
instruction-catch-label = 标签夹缝在缝内。
instruction-lay-flat = 将衣服平放抚平，不要拉伸。
instruction-zip-closed = 拉链拉合后测量。
instruction-along-curve = 沿弧线测量。
instruction-rib-flat = 将罗纹拉平后测量。
instruction-below-armhole = 袖窿下 { $value }。
instruction-below-shoulder = 肩高点下 { $value }。
instruction-above-hem = 下摆上 { $value }。
