### Prints, and the page behind their code.

## The sheets

paper-identity = Identificación y cambios
paper-pattern = Patronaje
paper-cutting = Corte y materiales
paper-sewing = Costura
paper-artwork = Arte
paper-labels = Etiquetas y embalaje
paper-inspection = Inspección
paper-nothing = Aquí no se dice nada.
paper-left-out = Sin adjuntar, porque los originales juntos superan { $most } MB: { $names }. Descárguelos de la página de la revisión.
paper-page = Página
paper-changed = cambió desde la revisión { $revision }; el valor anterior está tachado
paper-scan = ¿Sigue siendo válida esta impresión? Escanee.
paper-for = Impreso para
paper-printed = Impreso
paper-band-draft = BORRADOR. No cosa con este papel.
paper-band-superseded = SUSTITUIDA por la revisión { $revision }. No cosa con este papel.
paper-band-withdrawn = RETIRADA. Pare. No cosa con este papel.
paper-no-chart = Todavía no hay tabla de medidas: faltan algunos valores.
paper-true-size = Imprima al 100 %. La regla debe medir 100 mm.
paper-larger = Esta página mide { $width } × { $height } mm, más que las otras. Imprímala al 100 % en papel grande o por partes.
paper-found = Medido
paper-inspector = Inspector
paper-day = Fecha
paper-pieces = Piezas, muestra o lote
paper-stage = Ronda
paper-how-to-fill = Escriba lo medido junto a cada valor. Mida plano y relajado, salvo que el punto diga otra cosa.

## Where a print is asked for

print-title = Imprimir
print-what = Un PDF con las hojas que elija. Los originales de dibujos y arte van adjuntos.
print-language = Idioma
print-second = Segundo idioma
print-one = Un solo idioma
print-paper = Papel
print-sheets = Hojas
print-for = Impreso para
print-own = la propia marca
print-make = Hacer el PDF
print-no-address = No se imprime nada: el código de cada página llevaría solo a esta máquina. Quien lleva el programa fija antes su dirección pública.
print-no-font = No se imprime nada: esta máquina no tiene fuente para { $letters }. Quien la lleva instala: { $packages }
print-failed = No se pudo hacer el PDF. Pruebe con menos hojas.

## The page behind the code on a print

now-title = ¿Sigue siendo válida esta impresión?
now-current = Vigente
now-superseded = Sustituida
now-withdrawn = Retirada
now-draft = Borrador
now-go = Esta impresión es de la revisión { $revision }, que está vigente.
now-stop = No cosa con este papel. La revisión { $revision } es más nueva.
now-draft-stop = Nunca se produce con un borrador. Espere una revisión publicada.
now-changes = { $count ->
    [one] 1 cambio desde entonces
   *[other] { $count } cambios desde entonces
}
now-checked = Comprobado a las { $time } UTC
now-see = Ver la revisión
