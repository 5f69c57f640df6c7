### Ready instructions for callouts and for how to measure.

instruction-allowance = Margen de costura { $value }.
instruction-topstitch-seam = Pespunte a { $value } de la costura.
instruction-topstitch-edge = Pespunte a { $value } del borde.
instruction-two-rows = Dos costuras paralelas, separadas { $value }.
instruction-turn-under = Doble el borde { $value } hacia dentro y cósalo.
instruction-bartack-ends = Presilla en ambos extremos.
instruction-backstitch = Remate al principio y al final.
instruction-press-open = Planche la costura abierta.
instruction-press-back = Planche la costura hacia la espalda.
instruction-no-raw-edges = Sin bordes vivos por dentro.
instruction-seams-meet = Las costuras coinciden.
instruction-stripes-match = Las rayas coinciden en la costura.
instruction-no-puckers = Sin fruncidos.
instruction-stretch-evenly = Estire el canalé por igual al coser.
instruction-fuse-first = Entretele antes de coser.
instruction-trim-threads = Corte todos los hilos.
instruction-centred = Centrado.
instruction-catch-label = Coja la etiqueta en la costura.
instruction-lay-flat = Extienda la prenda plana y alísela sin estirar.
instruction-zip-closed = Mida con la cremallera cerrada.
instruction-along-curve = Mida a lo largo de la curva.
instruction-rib-flat = Estire hasta que el canalé quede plano y mida.
instruction-below-armhole = { $value } por debajo de la sisa.
instruction-below-shoulder = { $value } por debajo del punto alto del hombro.
instruction-above-hem = { $value } por encima del bajo.
