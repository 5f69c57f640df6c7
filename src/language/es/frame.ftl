### What stands around every page: title, navigation, footer.

frame-skip = Ir a la página
frame-nav = Principal
frame-sign-out = Salir
frame-foot = Hecho con Fellseam

nav-needs = Lo que me espera
nav-styles = Modelos
nav-people = Personas
nav-me = Mi página

language-label = Idioma
language-unchecked = Escrito por quienes hicieron el programa y aún sin revisar por un hablante nativo: { $languages }.
name-erased = (nombre borrado)

## What the form before this page has done

said-saved = Guardado.
said-made = Creado.
said-restored = La sección está otra vez como era entonces.
said-published = Publicado.
said-shared = Compartido.
said-unshared = Ya no se comparte.
said-withdrawn = Retirado.
said-acknowledged = Lectura confirmada.
said-signed = Firmado.
said-sent = Enviado.
said-photographed = Las fotos están añadidas.
said-translated = La traducción está junto al mensaje.
said-moved = Hecho.
said-measured = Medidas guardadas.
said-decided = Decidido.
said-sealed = Sellada.
said-begun = Empezada.
said-concluded = Concluida.
said-ended = Esta persona ya no puede entrar.

## What needs me

needs-none = Nada le espera.
needs-since = desde { $date }
needs-styles = Sus modelos
needs-no-styles = Todavía no se comparte ningún modelo con usted. La marca lo comparte cuando esté listo.
needs-newest = Revisión { $revision }
need-acknowledge = Leer y confirmar la revisión { $revision }
need-sign-revision = Firmar la revisión { $revision }
need-sign-revision-blocked = Revisión { $revision }: vea qué está abierto antes de firmar
need-answer = Responder: { $kind }
need-read-answer = Leer la respuesta: { $kind }
need-change = Cambiar en la próxima revisión: { $kind }
need-round-start = Empezar la ronda de muestras { $number }, { $kind }
need-round-measure = Medir y enviar la ronda de muestras { $number }, { $kind }
need-round-receive = Confirmar que llegó la ronda de muestras { $number }, { $kind }
need-round-check = Medir la ronda de muestras { $number }, { $kind }
need-round-decide = Decidir la ronda de muestras { $number }, { $kind }
need-round-sign-blocked = Ronda de muestras { $number }, { $kind }: vea qué está abierto antes de firmar
need-round-sign = Firmar la decisión sobre la ronda de muestras { $number }, { $kind }
need-approvals-decide = Decidir lo presentado para aprobación: { $count }
need-approvals-submit = Presentar lo que necesita aprobación: { $count }
need-sign-seal = Firmar el sello de la ronda de muestras { $number }, { $kind }
need-sign-seal-blocked = Sello de la ronda de muestras { $number }, { $kind }: vea lo que está abierto antes de firmar
need-inspection = Inspeccionar la producción: inspección { $number }
need-inspection-decide = Decidir sobre el lote de la inspección de producción { $number }
need-inspection-again = Reparar el lote de la inspección de producción { $number } e inspeccionarlo de nuevo

frame-working = Trabajando. Esta página sigue por sí sola.
frame-sending = Enviando archivos: { $files }, { $size } MB. Esta página sigue por sí sola.
