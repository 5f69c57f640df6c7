### Who did what when.

ledger-title = Libro de registro
ledger-what = Todo lo que se hizo con este modelo. Aquí nada se cambia ni se quita: cada entrada lleva el hash de la anterior.
ledger-part = Usted ve las entradas que conciernen a su fábrica; los números de las otras se omiten.
ledger-length = Entradas
ledger-end = Hash de la última
ledger-with = Con { $factory }
ledger-brand-only = Solo para la marca
ledger-program = El programa
ledger-each = Cada valor
ledger-none = Aún no se hizo nada.

## What was done

deed-create = { $who } inició el modelo.
deed-publish = { $who } publicó la revisión { $revision }.
deed-withdraw = { $who } retiró la revisión { $revision }.
deed-share = { $who } compartió el modelo con { $factory }.
deed-unshare = { $who } dejó de compartir con { $factory }.
deed-acknowledge = { $who } confirmó la revisión { $revision }.
deed-ask = { $who } planteó: { $kind } sobre { $item }, revisión { $revision }.
deed-message = { $photos ->
    [0] { $who } escribió: { $kind } sobre { $item }.
    [one] { $who } escribió: { $kind } sobre { $item }, con una foto.
   *[other] { $who } escribió: { $kind } sobre { $item }, con { $photos } fotos.
}
deed-thread = { $move ->
    [agree] { $who } estuvo de acuerdo: { $kind } sobre { $item }.
    [reopen] { $who } volvió a abrir: { $kind } sobre { $item }.
    [grant] { $who } aceptó como está: { $kind } sobre { $item }.
    [verify] { $who } vio en una muestra que está corregido: { $kind } sobre { $item }.
   *[close] { $who } cerró: { $kind } sobre { $item }.
}
deed-thread-changed = { $who } llevó a la revisión { $revision }: { $kind } sobre { $item }.
deed-round = ronda { $number } ({ $kind })
deed-round-request = { $count ->
    [one] { $who } pidió { $round }: 1 pieza, según la revisión { $revision }.
   *[other] { $who } pidió { $round }: { $count } piezas, según la revisión { $revision }.
}
deed-round-start = { $who } empezó { $round }.
deed-round-dispatch = { $who } envió las piezas de { $round }.
deed-round-receive = { $who } recibió las piezas de { $round }.
deed-round-measured = { $who } terminó de medir { $round }.
deed-round-continue = { $who } siguió con { $round } aunque existe la revisión { $revision }.
deed-measure = { $who } midió { $value } en { $item }, pieza { $piece } de { $round }.
deed-measure-many = { $count ->
    [one] { $who } midió 1 valor en { $round }.
   *[other] { $who } midió { $count } valores en { $round }.
}
deed-skip = { $who } no midió { $item }, pieza { $piece } de { $round }: { $reason }.
deed-photograph = { $who } añadió una foto de la pieza { $piece } de { $round }.
deed-decide = { $who } decidió { $round }: { $outcome }.
deed-submit = { $who } presentó la opción { $option } de { $item } ({ $kind }).
deed-approve = { $verdict ->
    [approved] { $who } aprobó la opción { $option } de { $item } ({ $kind }).
   *[rejected] { $who } rechazó la opción { $option } de { $item } ({ $kind }).
}
deed-seal = { $who } selló piezas de { $round }: { $count }.
deed-inspection-begin = { $who } empezó la inspección de producción { $number }. Piezas en el lote: { $count }.
deed-inspect = { $who } inspeccionó la pieza { $piece } en la inspección de producción { $number }.
deed-inspect-many = { $who } inspeccionó piezas en la inspección de producción { $number }: { $count }.
deed-inspection-conclude = { $who } concluyó la inspección de producción { $number }: { $outcome }.
deed-inspection-decide = { $who } decidió sobre la inspección de producción { $number }: { $decision }.
deed-sign-revision = { $who } firmó la revisión { $revision }.
deed-sign-round = { $who } firmó { $round }.
deed-sign-seal = { $who } firmó el sello de { $round }.
deed-translate = { $count ->
    [one] { $who } tradujo un texto al { $language }.
   *[other] { $who } tradujo { $count } textos al { $language }.
}
deed-translate-message = { $who } puso una traducción a { $language } junto a un mensaje ({ $kind }, { $item }).
deed-erase = Se borraron el nombre, los mensajes y las fotos de alguien. Sus hashes quedan.
