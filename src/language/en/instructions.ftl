### Ready instructions for callouts and for how to measure.

instruction-allowance = Seam allowance { $value }.
instruction-topstitch-seam = Topstitch { $value } from the seam.
instruction-topstitch-edge = Topstitch { $value } from the edge.
instruction-two-rows = Two parallel rows, { $value } apart.
instruction-turn-under = Turn the edge under { $value } and stitch it down.
instruction-bartack-ends = Bartack at both ends.
instruction-backstitch = Backstitch at the beginning and at the end.
instruction-press-open = Press the seam open.
instruction-press-back = Press the seam to the back.
instruction-no-raw-edges = No raw edges inside.
instruction-seams-meet = The seams meet.
instruction-stripes-match = The stripes match at the seam.
instruction-no-puckers = No puckers.
instruction-stretch-evenly = Stretch the rib evenly while sewing.
instruction-fuse-first = Fuse before sewing.
instruction-trim-threads = Trim all threads.
instruction-centred = Centred.
instruction-catch-label = Catch the label in the seam.
instruction-lay-flat = Lay the garment flat and smooth it without stretching.
instruction-zip-closed = Measure with the zip closed.
instruction-along-curve = Measure along the curve.
instruction-rib-flat = Stretch until the rib is flat, then measure.
instruction-below-armhole = { $value } below the armhole.
instruction-below-shoulder = { $value } below the high point of the shoulder.
instruction-above-hem = { $value } above the hem.
