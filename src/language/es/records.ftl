### The signed record of a revision or a round.

record-title = Acta firmada
record-link = Acta firmada
record-round = Ronda { $number }
record-round-head = Ronda de muestras
record-download = Descargar el acta
record-what = Quién firmó qué y cuándo, con los asientos del libro que lo cuentan. El archivo descargado lleva la firma de este servicio y se puede comprobar en cualquier máquina, años después.
record-style = Modelo
record-made = Escrita
record-digest = Resumen de lo firmado
record-nothing = Aún no hay decisión.
record-names = Firmas
record-unsigned = Nadie ha firmado aún.
record-moved = Se corrigieron valores después de esta firma; se puso a:
record-chain = Libro
record-chain-what = El libro tenía { $count } asientos cuando se escribió esto. Estos lo cuentan; cada uno lleva el resumen del anterior.
record-head = Fin del libro
record-how = Comprobar
record-how-what = El programa comprueba el archivo sin conexión y señala el valor que se cambió:
record-key = La clave pública de este servicio. Guarde una copia en otro lugar, para que nadie la sustituya:
