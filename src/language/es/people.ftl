### People, factories and invitations.

people-title = Personas
people-name = Nombre
people-role = Función
people-org = Organización
people-acts = Qué puede hacer
people-left = sin acceso
people-new-link = Enlace nuevo
people-end = Terminar el acceso
people-end-what = { $name } queda fuera de inmediato en todas partes y no puede volver a entrar. Lo que escribió y firmó se queda. Esto no se deshace: para volver a contar con esta persona, invítela de nuevo.
people-add = Invitar a alguien
people-add-button = Crear un enlace
people-inspector = Un inspector de terceros se agrega a la fábrica cuyos lotes inspecciona. Lee lo que lee esa fábrica: sus revisiones, conversaciones y rondas; ni precios ni otra fábrica.
people-factory = Añadir una fábrica
people-factory-name = Nombre de la fábrica
people-factory-button = Añadir fábrica
people-link-for = Un enlace para { $name }
people-link-how = Envíe este enlace solo a esa persona. Funciona una vez, dentro de siete días. Solo lo ve ahora.
people-link-label = Enlace
people-link-qr = O escanéelo con su teléfono
people-link-unreachable = Esta dirección solo se abre en esta máquina. Inicie el programa con --public-url para crear enlaces para otros.
