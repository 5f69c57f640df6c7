### Why an act is refused, and the way on.

## Publishing and withdrawing

refused-section-moved = { $count ->
    [one] Otra persona guardó { $count } sección después de que usted abrió esta página. Lea abajo lo nuevo y luego publique.
   *[other] Otra persona guardó { $count } secciones después de que usted abrió esta página. Lea abajo lo nuevo y luego publique.
}
refused-errors-remain = { $count ->
    [one] Queda { $count } error. Corrija lo que se lista abajo y luego publique.
   *[other] Quedan { $count } errores. Corrija lo que se lista abajo y luego publique.
}
refused-warning-reason-missing = { $count ->
    [one] { $count } aviso no tiene motivo. Corríjalo o escriba por qué se queda así. El motivo se imprime en la revisión.
   *[other] { $count } avisos no tienen motivo. Corríjalos o escriba por qué se quedan así. El motivo se imprime en la revisión.
}
refused-reason-missing = Escriba un motivo. Otros lo leerán después.
refused-draft-unchanged = El borrador es igual a la revisión { $revision }. Cambie algo primero.
refused-must-fix-unchanged = { $count ->
    [one] { $count } corrección obligatoria acordada no está hecha en el borrador. Cambie el punto, acéptelo como está o ciérrela.
   *[other] { $count } correcciones obligatorias acordadas no están hechas en el borrador. Cambie los puntos, acéptelos como están o ciérrelas.
}
refused-already-withdrawn = Esta revisión ya se retiró.
refused-not-current = Esta no es la revisión vigente. Lo es la revisión { $revision }. Lea qué cambió en ella.
refused-none-current = Esta no es la revisión vigente, y no hay ninguna: la más nueva se retiró. Espere a que la marca publique otra.
refused-not-shared = Este modelo no se comparte ahora con la fábrica. La marca puede compartirlo de nuevo.
refused-already-acknowledged = Su fábrica ya confirmó esta revisión.

## Whose move it is

refused-only-brand = Solo la marca puede hacer esto.
refused-only-factory = Solo la fábrica puede hacer esto.
refused-not-the-asker = Solo quien preguntó, o quien dirige su organización, puede hacer esto.
refused-only-brand-closes = Solo la marca puede cerrarla. Es del tipo: { $kind }.
refused-other-side-first = La otra parte aún no respondió. Espere la respuesta.

## Threads

refused-thread-not-in = Esto no se puede hacer ahora. La conversación está: { $state }.
refused-thread-closed = Esta conversación está cerrada. Vuelva a abrirla o haga una pregunta nueva.
refused-no-such-move = Esto no se puede hacer con este tipo: { $kind }.
refused-item-unchanged = La revisión { $revision } no cambia este punto. Cámbielo en el borrador y publique primero.
refused-sample-too-old = La muestra se hizo antes de la revisión { $revision }. Mida una muestra de esa revisión o de una posterior.

## Rounds

refused-round-not-in = Esto no se puede hacer ahora. La ronda está: { $state }.
refused-nothing-measured = Aún no se midió nada. Mida al menos una pieza primero.
refused-only-corrections = La ronda está decidida. Ahora un valor solo se puede corregir, no añadir.
refused-pieces-missing = Diga cuántas piezas de qué talla: al menos una, no más de { $most }, y solo tallas de esta revisión.
refused-substitutes-missing = Diga qué materiales están en lugar de cuáles.
refused-changes-missing = Diga qué debe cambiar: al menos un punto, con palabras.
refused-critical-out = { $count ->
    [one] { $count } punto crítico está fuera de tolerancia. Pida rehacer, nómbrelo como cambio o conceda una excepción.
   *[other] { $count } puntos críticos están fuera de tolerancia. Pida rehacer, nómbrelos como cambios o conceda una excepción.
}
refused-newer-revision-needed = La última ronda se aprobó con cambios. Publique primero una revisión posterior a la revisión { $revision }, con esos cambios.
refused-no-newer-revision = No hay revisión más nueva.
refused-nothing-to-approve = Esta revisión no necesita aprobación de esto. Vea la lista de lo que necesita.
refused-photo-missing = Añada una foto: una opción se juzga al menos por una.
refused-option-decided = Esta opción ya está decidida: { $verdict }. Otra opción recibe otra decisión.
refused-only-owner = Solo un propietario de la marca sella una muestra.
refused-already-sealed = Las piezas de esta ronda ya están selladas.
refused-too-early-to-seal = Esta ronda es del tipo: { $kind }. Se sella una muestra de preproducción o de inicio de producción.
refused-round-not-approved = Esta ronda está: { $state }. Se sella una muestra de una ronda aprobada.
refused-questions-before-sealing = Hay preguntas abiertas: { $count }. Respóndalas; quien preguntó las cierra.
refused-must-fix-unverified = Correcciones obligatorias que nadie ha visto hechas en una muestra: { $count }. Verifíquelas en una muestra, o déjelas pasar.
refused-size-set-missing = Ningún set de tallas con estas tallas y esta tabla está aprobado con esta fábrica.
refused-not-approved-yet = Aún no aprobado: { $count }.
refused-substitutes-sent = Las piezas son de materiales sustitutos. La muestra sellada se hace con los de la ficha.
refused-piece-critical-out = Puntos críticos fuera de tolerancia o sin medir en una pieza que se guardará: { $count }. Mídalos, conceda, o selle otra pieza.
refused-seal-unsaid = Elija al menos una pieza. Dé a cada una su número de sello y diga dónde se guarda.
refused-seal-unsigned = La producción se inspecciona por un sello que ambas partes firmaron. Aún sin firmar: { $sides }.
refused-lot-unsaid = Diga cuántas piezas de qué variante de color y talla tiene el lote: al menos una, no más de { $most } en total, y solo las de esta revisión.
refused-not-for-rework = La marca no devolvió ese lote para repararlo. Solo un lote así se inspecciona de nuevo.
refused-inspected-again = Ese lote ya se inspecciona de nuevo.
refused-lot-grown = Un lote reparado no tiene más piezas de ninguna variante de color y talla que antes.
refused-inspection-not-in = Esto no se puede hacer ahora. La inspección está: { $state }.
refused-piece-unsaid = Diga qué pieza: un número de 1 a { $most }, y no más de una variante de color y talla que las que tiene el lote.
refused-piece-beyond = La muestra tiene { $sample } piezas. Una pieza fuera de ella solo se registra por un defecto crítico.
refused-piece-moved = Alguien registró esta pieza después de que usted abriera la página. Léala, y guarde la suya de nuevo si debe contar.
refused-defect-unsaid = Diga dónde está el defecto, o qué es en palabras.
refused-pieces-uninspected = Piezas de la muestra aún sin inspeccionar: { $count }. Inspecciónelas primero.
refused-lot-rejected = El lote está rechazado y no puede liberarse. Conceda, devuélvalo o no lo tome.
refused-nothing-to-concede = El lote está aceptado: no hay nada que conceder. Libérelo, devuélvalo o no lo tome.
refused-critical-in-bulk = Piezas con un defecto crítico: { $count }. Un lote así solo se devuelve o no se toma.

## Signing

refused-open-questions = { $count ->
    [one] { $count } pregunta está abierta. Respóndala; quien preguntó la cierra. Luego firme.
   *[other] { $count } preguntas están abiertas. Respóndalas; quien preguntó las cierra. Luego firme.
}
refused-must-fix-open = { $count ->
    [one] { $count } corrección obligatoria no está hecha en esta revisión ni aceptada. La marca debe hacerla y publicar, o aceptarla.
   *[other] { $count } correcciones obligatorias no están hechas en esta revisión ni aceptadas. La marca debe hacerlas y publicar, o aceptarlas.
}
refused-same-person-both-sides = Usted firmó por la otra parte de este modelo. Una persona nunca firma por ambas partes: debe firmar otra.
refused-already-signed = Su parte ya firmó esto.
refused-not-acknowledged = Confirme esta revisión primero y luego fírmela.
refused-nothing-decided = Aún no hay decisión que firmar. La marca debe decidir la ronda primero.
refused-role-does-not-sign = Su función no firma. Pida a alguien de su organización que pueda.
refused-screen-moved = Esto cambió después de que usted abrió la página. Léalo otra vez y luego firme.
