### Ready instructions for callouts and for how to measure.

instruction-allowance = Margem de costura { $value }.
instruction-topstitch-seam = Pesponte a { $value } da costura.
instruction-topstitch-edge = Pesponte a { $value } da borda.
instruction-two-rows = Duas costuras paralelas, a { $value } uma da outra.
instruction-turn-under = Dobre a borda { $value } para dentro e costure.
instruction-bartack-ends = Mosca nas duas pontas.
instruction-backstitch = Retrocesso no início e no fim.
instruction-press-open = Passe a costura aberta.
instruction-press-back = Passe a costura para as costas.
instruction-no-raw-edges = Sem bordas cruas por dentro.
instruction-seams-meet = As costuras se encontram.
instruction-stripes-match = As listras coincidem na costura.
instruction-no-puckers = Sem franzidos.
instruction-stretch-evenly = Estique a ribana por igual ao costurar.
instruction-fuse-first = Entretele antes de costurar.
instruction-trim-threads = Corte todas as linhas.
instruction-centred = Centralizado.
instruction-catch-label = Prenda a etiqueta na costura.
instruction-lay-flat = Deite a peça plana e alise sem esticar.
instruction-zip-closed = Meça com o zíper fechado.
instruction-along-curve = Meça ao longo da curva.
instruction-rib-flat = Estique até a ribana ficar plana e meça.
instruction-below-armhole = { $value } abaixo da cava.
instruction-below-shoulder = { $value } abaixo do ponto alto do ombro.
instruction-above-hem = { $value } acima da barra.
