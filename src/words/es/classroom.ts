/** Assigning, taking, handing in, the group board, print. Words on who sees what are meant literally. */
export const CLASSROOM = {
  'handing.files': 'Archivos o imágenes de códigos',
  'handing.camera': 'Usar la cámara',
  'handing.camera-view': 'Lo que ve la cámara',
  'handing.camera-hint':
    'Mantén un código en el cuadro hasta que se lea, luego el siguiente. La imagen no se guarda y no va a ningún lado.',
  'handing.camera-close': 'Cerrar la cámara',
  'handing.no-camera':
    'Aquí no se puede usar la cámara: no hay, no se permitió, o esta página no se abrió por https. Toma una foto del código y elígela como imagen, o usa el archivo o el enlace.',
  'handing.codes-read':
    '{read, plural, one {1 código} other {# códigos}} de {of} leídos. Falta leer: {missing}. Pueden venir en cualquier orden.',
  'handing.start-over': 'Olvidar estos códigos',
  'handing.paste': 'O pega aquí un enlace',
  'handing.read': 'Leerlo',
  'handing.how':
    'Sirve cualquiera de los tres. Ninguno necesita red, y desde aquí no se envía nada solo. No está cifrado: quien lo reciba puede leerlo.',
  'handing.as-file': 'Como archivo',
  'handing.save': 'Guardar el archivo ({kilobytes} kB)',
  'handing.as-link': 'Como enlace',
  'handing.link': 'El enlace, {letters} letras',
  'handing.copy': 'Copiar el enlace',
  'handing.copied-yes': 'Copiado.',
  'handing.copied-refused':
    'El navegador no deja copiar a esta página. Selecciona el enlace y cópialo a mano.',
  'handing.link-long':
    'Este enlace es largo. Algunos mensajeros cortan enlaces así; si pasa, se avisa al otro lado. El archivo es más seguro.',
  'handing.as-codes': 'Como códigos en pantalla o papel',
  'handing.chain':
    '{count} códigos, cada uno una parte. El otro lado los lee todos, en cualquier orden: con la cámara, o desde fotos.',
  'handing.code': 'Código {number} de {of}',
  'handing.code-back': 'Código anterior',
  'handing.code-next': 'Código siguiente',
  'handing.codes-run': 'Cambiar cada {seconds} s',
  'handing.codes-on-paper': 'Todos los códigos para papel',
  'handing.codes-off-paper': 'Guardar el papel',
  'handing.paper-how':
    '{count, plural, one {Abre la cámara del teléfono o Detent, y lee el código.} other {Abre Detent, ve a “Recibir”, y lee los # códigos en cualquier orden.}}',
  'handing.print': 'Imprimir',
  'handing.who': '{learner} · {date}',

  'class-time': '{date}, {time} ({zone})',
  'scope.deck': 'todo el cuaderno',
  'scope.areas': '{areas}',
  'scope.facts': '{count, plural, one {un dato} other {# datos}} del cuaderno',

  'assign.title': 'Asignar',
  'assign.link': 'Asignar y recoger',
  'assign.made': 'Tareas hechas aquí',
  'assign.line': '{unit}, revisión {revision}: {scope}',
  'assign.class': 'Clase: {when}',
  'assign.issue': '{issue, plural, one {repartida una vez} other {edición #}}',
  'assign.hand-out': 'Repartir',
  'assign.change': 'Cambiarla',
  'assign.remove': 'Quitarla, con sus informes',
  'assign.remove-sure': 'Sí, quitarla con todos sus informes',
  'assign.remove-not': 'Conservarla',
  'assign.new': 'Una tarea nueva sobre {unit}',
  'assign.changing': 'Cambiar la tarea de {group}',
  'assign.group': 'Nombre del grupo',
  'assign.what': 'Qué se pregunta',
  'assign.areas': 'algunas áreas',
  'assign.which-areas': 'Áreas',
  'assign.facts': 'Eso pregunta {count, plural, one {un dato} other {# datos}}.',
  'assign.counting': 'Qué cuenta más y qué menos',
  'assign.counting-note':
    'Si los días no alcanzan para todo, primero se practican las áreas que cuentan doble, y las que cuentan la mitad son las primeras en quedar fuera.',
  'counts.double': 'doble',
  'counts.usual': 'como siempre',
  'counts.half': 'la mitad',
  'assign.date': 'Día de la clase',
  'assign.time': 'Hora',
  'assign.zone': 'Zona horaria',
  'assign.minutes': 'Minutos al día',
  'assign.share': 'Listo desde, % de los datos',
  'assign.cautioned': 'Los datos con precaución deben estar todos correctos',
  'assign.note': 'Unas palabras para los aprendices (puede quedar vacío)',
  'assign.roster': 'Nombres que esperas, uno por línea (se quedan en este dispositivo)',
  'assign.with-deck': 'Incluir también el cuaderno',
  'assign.with-deck-note':
    'Déjalo fuera donde todos tengan esta revisión: el enlace y los códigos quedan mucho más cortos.',
  'assign.wrong': 'Qué estaba mal antes de esta revisión (se le dice a quien ya había respondido)',
  'assign.wrong-note':
    'Se repartió con la revisión {before}; aquí el cuaderno es la revisión {after}. Lo que sale distinto se encuentra al comparar las dos; las respuestas sobre eso ya no cuentan, y se pregunta otra vez.',
  'assign.corrected':
    '{facts, plural, =0 {Entre las dos revisiones ninguna respuesta sale distinta.} one {Un dato sale distinto. A quien ya respondió sobre él se le dice cuando esto llegue al teléfono, y se le pregunta otra vez.} other {# datos salen distintos. A quien ya respondió sobre ellos se le dice cuando esto llegue al teléfono, y se le preguntan otra vez.}}',
  'assign.make': 'Hacer la tarea',
  'assign.make-again': 'Hacer la edición {issue}',
  'assign.fault.group': 'Dale al grupo un nombre de hasta 200 letras.',
  'assign.fault.date': 'Indica el día de la clase.',
  'assign.fault.time': 'Indica la hora de la clase con horas y minutos: 08:00.',
  'assign.fault.zone': 'Esta zona horaria no se conoce aquí. Se escribe como Europe/Berlin.',
  'assign.fault.minutes': 'Minutos al día: un número entero de 1 a 120.',
  'assign.fault.share': 'Listo desde: de 1 a 100 %.',
  'assign.fault.areas': 'Elige al menos un área en la que el cuaderno tenga algo que preguntar.',
  'assign.fault.note': 'Las palabras para los aprendices son demasiado largas: 2000 letras como mucho.',
  'assign.other-text':
    'La revisión {revision} de este cuaderno se repartió antes con otro contenido. Dale al cuaderno el siguiente número de revisión y luego asígnalo: si no, nadie puede saber cuál tiene un teléfono.',
  'assign.ready': 'Tarea de {group}',

  'take.title': 'Recibir',
  'take.link': 'Recibir un archivo, enlace o código',
  'take.how': 'Una tarea de tu instructor, un informe o un cuaderno: como archivo, enlace o código.',
  'take.from': 'Una tarea para {group}',
  'take.note': 'Tu instructor dice: {note}',
  'take.class-here': 'La clase en tu reloj: {when}',
  'take.class-there': 'Como la escribió tu instructor: {when}',
  'take.days':
    '{days, plural, =0 {La clase es hoy.} one {Falta un día para la clase.} other {Faltan # días para la clase.}} {minutes} minutos al día.',
  'take.past':
    'La clase fue el {date}. Puedes seguir practicando; los repasos vienen entonces cada vez más espaciados.',
  'take.asks': 'Pregunta {scope}: {count, plural, one {un dato} other {# datos}}.',
  'take.double': 'Cuenta doble: {areas}',
  'take.half': 'Cuenta la mitad: {areas}',
  'take.missing':
    '{count, plural, one {Un dato que nombra no está} other {# datos que nombra no están}} en esta revisión del cuaderno, y no se {count, plural, one {pregunta} other {preguntan}}.',
  'take.who-title': 'Quién ve qué',
  'take.who':
    'Recibir esto no envía nada. Tus respuestas se quedan en este teléfono hasta que tú entregues un informe. El informe le muestra a tu instructor el nombre que escribas, cada respuesta de esta tarea con su hora, y lo que señalaste. No muestra nada de otros cuadernos, autoevaluaciones ni casos. Los otros aprendices no ven nada de aquí. Quien consiga un archivo o enlace de informe puede leerlo, así que dáselo solo a tu instructor.',
  'take.it': 'Recibirla',
  'take.no-deck':
    'El cuaderno “{deck}”, revisión {revision}, no está en este dispositivo y no vino incluido. Pide la tarea con el cuaderno adentro, o agrega antes el cuaderno y recíbela otra vez.',
  'take.older-deck':
    'El cuaderno de este dispositivo es la revisión {here}; la tarea es sobre la revisión {revision}. Pide la tarea con el cuaderno adentro.',
  'take.newer-deck':
    'Este dispositivo tiene una revisión posterior del cuaderno ({here}) a la que vino incluida ({revision}). Se conserva la posterior.',
  'take.other-deck': 'El cuaderno que vino incluido no es el que nombra la tarea. No se recibió nada.',
  'take.deck-refused':
    'El cuaderno que vino incluido no pasa las revisiones, así que no se recibió nada. {count, plural, one {Una cosa} other {# cosas}} por corregir:',
  'take.done': 'Recibida.',
  'take.done-later': 'Aquí ya había una edición posterior de esta tarea. Cuenta esa.',
  'take.drill': 'A la práctica',
  'take.corrections': 'Valores que estaban mal',
  'take.correction':
    '{note} Habías respondido {answers, plural, one {una vez} other {# veces}} sobre eso; esas respuestas ya no cuentan, y se pregunta otra vez.',
  'take.deck': 'Es un archivo de cuaderno solo. Se agrega en la página de cuadernos.',
  'take.decks': 'A los cuadernos',

  'flag.trust': 'Confía en la unidad y en el libro del fabricante, no en esta página.',
  'flag.note': 'Qué está mal, en tus palabras',
  'flag.raise': 'Señalarlo',
  'flag.raised': 'Guardado en este dispositivo. Va a tu instructor con tu próximo informe.',
  'flag.take-back': 'Retirarlo',
  'flag.reference': 'Esta pregunta: {reference}',

  'today.assigned': 'Para {group}: {count, plural, one {un dato} other {# datos}}.',

  'report.title': 'Entregar un informe',
  'report.link': 'Entregar un informe',
  'report.none':
    'En este dispositivo no se recibió ninguna tarea sobre {unit}. Recibe una antes, o elige su cuaderno.',
  'report.for': 'Informe para',
  'report.name': 'Tu nombre, o como te conoce tu instructor',
  'report.name-missing': 'Escribe el nombre con que quieres aparecer, hasta 200 letras.',
  'report.since': 'Qué incluye',
  'report.since-all': 'todo lo de esta tarea',
  'report.since-week': 'los últimos 7 días (más corto, para códigos)',
  'report.holds':
    '{answers, plural, =0 {Ninguna respuesta} one {Una respuesta} other {# respuestas}}, {flags, plural, =0 {nada señalado} one {una señal} other {# señales}}.',
  'report.who':
    'Le muestra a tu instructor este nombre, cada respuesta de esta tarea con su hora, y lo que señalaste. No dice nada de otros cuadernos, autoevaluaciones ni casos, ni dónde estabas. No va a ningún lado solo: lo entregas tú. Entregar dos veces no hace daño.',
  'report.key':
    'La clave de este dispositivo: {digits}. Léesela a tu instructor si pregunta de quién es el dispositivo.',
  'report.no-key': 'Este navegador no da claves aquí, así que el informe va sin sello.',
  'report.make': 'Hacer el informe',
  'report.ready': 'Informe de {name}',
  'report.flags': 'Lo que señalaste',
  'report.flag-take-back': 'Retirarlo',
  'report.put-away': 'Guardar esta tarea',
  'report.put-away-sure': 'Sí, guardarla',
  'report.put-away-not': 'Conservarla',
  'report.put-away-note':
    'La práctica pregunta entonces otra vez todo el cuaderno. Tus respuestas, el cuaderno y lo que señalaste se quedan.',

  'group.title': 'Grupo',
  'group.link': 'Tablero e informes',
  'group.assignments': 'Tareas',
  'group.none':
    'En este dispositivo no se hizo ninguna tarea. El tablero muestra informes sobre tareas hechas aquí.',
  'group.which': 'Tarea',
  'group.no-deck':
    'El cuaderno de esta tarea ya no está en este dispositivo. Agrégalo otra vez para ver el tablero.',
  'group.days':
    '{when, select, past {La clase ya pasó.} today {La clase es hoy.} other {{days, plural, one {Falta un día para la clase.} other {Faltan # días para la clase.}}}}',
  'group.started': 'empezaron de {of}',
  'group.likely-ready': 'probablemente listos',
  'group.make-ups': 'necesitan recuperación',
  'group.not-heard': 'No llegó nada de {names}.',
  'group.no-roster': 'Pon en la tarea los nombres que esperas, y aquí dirá de quién no llegó nada.',
  'group.collect': 'Recibir informes',
  'group.collect-how':
    'Archivos (varios a la vez), enlaces, o códigos por cámara o foto. El mismo informe dos veces, o uno viejo, no hace daño.',
  'group.collected.kept':
    '{name}: {answers, plural, one {una respuesta} other {# respuestas}}{flags, plural, =0 {} one {, una señal} other {, # señales}}. Recibido.',
  'group.collected.known': '{name}: este informe ya estaba aquí.',
  'group.collected.broken':
    '{name}: el sello no concuerda, así que el informe se cambió después de hacerlo. No se recibió nada. Pídelo otra vez.',
  'group.collected.stranger':
    '{name}: este informe responde a una tarea que no se hizo en este dispositivo. No se recibió nada.',
  'group.part.people': 'Cómo va cada quien',
  'group.part.mixed-up': 'Qué se confunde',
  'group.part.nobody-holds': 'Lo que nadie tiene',
  'group.part.bench-groups': 'Grupos para el banco',
  'group.part.before-after': 'Antes y después de la clase',
  'group.part.flags': 'Señalado: los datos están mal',
  'group.part.exports': 'Para otros programas',
  'group.show': 'Mostrar',
  'group.show.all': 'todos ({count})',
  'group.show.make-up': 'necesita recuperación ({count})',
  'group.show.likely': 'probablemente listo ({count})',
  'group.show.open': 'muy poco para decir ({count})',
  'group.show.unlikely': 'no listo según las respuestas ({count})',
  'group.likely.likely': 'probablemente listo',
  'group.likely.open': 'muy poco para decir',
  'group.likely.unlikely': 'no listo según las respuestas',
  'group.not-started': 'nada respondido',
  'group.needs-make-up': 'necesita recuperación',
  'group.readiness':
    '{right} correctas de {tried} preguntadas, {of} en total. Eso pone lo que se sabe entre {low} % y {high} %.',
  'group.activity':
    '{answers, plural, one {Una respuesta} other {# respuestas}} en {days, plural, one {un día} other {# días}}{days, plural, =0 {} other {, la última el {last}}}.{voided, plural, =0 {} one { Una más ya no cuenta.} other { # más ya no cuentan.}}',
  'group.kept':
    'Según el modelo de memoria, el día de la clase quedaría {share} % si no se practicara más. Es una estimación.',
  'group.cautioned': 'Datos con precaución: {right} de {of} correctos la última vez.',
  'group.make-up.nothing-answered': 'Necesita recuperación: no respondió nada.',
  'group.make-up.caution-missed': 'Necesita recuperación: la última vez faltó un dato con precaución.',
  'group.make-up.little-answered': 'Necesita recuperación: se preguntó menos de la mitad de los datos.',
  'group.make-up.likely-not-ready': 'Necesita recuperación: según las respuestas, no listo.',
  'group.make-up-sheet': 'Hoja de recuperación de {count, plural, one {una pregunta} other {# preguntas}}',
  'group.mixed-up': 'Se confundió',
  'group.slip-ups': 'Según la regla que hay detrás',
  'group.nothing-mixed-up': 'No se confundió nada que se pueda nombrar.',
  'group.by-people':
    '{what} ({people, plural, one {una persona} other {# personas}}, {times, plural, one {una vez} other {# veces}})',
  'group.swapped': '{right} y {given}, cada uno en el lugar del otro',
  'group.instead': '{given} en lugar de {right}',
  'group.instead-about': '{given} en lugar de {right}: {about}',
  'group.more': '{count, plural, one {Uno más} other {# más}}',
  'group.fact': '{kind}: {fact}',
  'group.unheld':
    '{fact} ({tried, plural, =0 {no se preguntó a nadie} one {se preguntó a una persona} other {se preguntó a # personas}})',
  'group.all-held': 'Cada dato lo tiene alguien.',
  'group.size': 'Personas por grupo',
  'group.bench': '{names}. Ahí fallaron {missed} % de {tried}, todos juntos {all} %.',
  'group.no-groups': 'Todavía no hay respuestas para formar grupos.',
  'group.unplaced': 'Sin lugar, porque no se sabe nada de ellos: {names}.',
  'group.before-after-note':
    'Primeras respuestas de las mismas personas a los mismos datos, sin nombres, y solo donde hay {least} personas o más detrás. Quien practica más también aprende más: esto no muestra que la causa fuera la clase.',
  'group.no-before-after': 'Todavía no hay respuestas de antes y de después de la clase.',
  'group.rise':
    '{area}: {before} correctas de {asked} antes, {after} después ({people} personas). La parte cambió de {low} a {high} puntos, {beyond, select, yes {más} other {no más}} de lo que explica el azar.',
  'group.withheld': 'Menos de {least} personas: {areas}.',
  'group.no-flags': 'No se señaló nada.',
  'group.flag-older': 'Señalado en la revisión {revision}; el cuaderno aquí es otro. Mira si todavía vale.',
  'group.devices': 'Dispositivos detrás de los informes',
  'group.keys':
    '{count, plural, one {Sellado por un dispositivo: {keys}.} other {Sellado por # dispositivos: {keys}.}}',
  'group.changed':
    '{count, plural, one {Una respuesta llegó con dos contenidos} other {# respuestas llegaron con dos contenidos}}. Cuenta la que se entregó primero.',
  'group.lost':
    '{count, plural, one {Un informe no se puede leer, o su sello no concuerda.} other {# informes no se pueden leer, o su sello no concuerda.}}',
  'group.untold': 'Todavía no sabe de estas correcciones, que tocan respuestas dadas',
  'group.flags-of': 'Señalado',
  'group.remove': 'Quitar a esta persona y todos sus informes',
  'group.remove-sure': 'Sí, quitar a {name} de todas las tareas',
  'group.remove-not': 'Conservar',

  'print.title': 'Imprimir',
  'print.link': 'Imprimir hojas',
  'print.what': 'Hoja',
  'print.bench': 'Hoja de banco',
  'print.work': 'Hoja de trabajo',
  'print.make-up': 'Hoja de recuperación',
  'print.parts': 'Qué lleva',
  'print.torques': 'Torques',
  'print.size': 'Papel',
  'print.size.a4': 'A4',
  'print.size.letter': 'Carta',
  'print.work-note':
    'A todos se les preguntan los mismos datos con otras preguntas. Las claves van al final, en hojas aparte. La misma semilla imprime otra vez las mismas hojas.',
  'print.names': 'Nombres, uno por línea (una línea vacía deja lugar para uno)',
  'print.count': 'Preguntas (hasta 40)',
  'print.seed': 'Semilla',
  'print.area': 'De',
  'print.head': '{unit} · {deck}, revisión {revision} · impreso {on}',
  'print.line': 'Nombre: {name} · hoja {sheet}',
  'print.date-line': 'Fecha: ____________',
  'print.key': 'Clave: {title}',
  'print.one': 'Marca uno.',
  'print.order': 'Numéralos desde 1: {first}, hasta el último: {last}.',
  'print.number':
    '{tolerance, select, 0 {(un número entero)} other {{unit, select, none {(con ± {tolerance})} other {(con ± {tolerance} {unit})}}}}',
  'print.pair': 'Escribe uno de estos junto a cada uno: {right}.',
  'print.fill': 'Llena cada línea con uno de estos: {marks}.',
  'print.place': 'Número del lugar en el dibujo:',
  'print.other-orders': 'También son correctos otros órdenes que respeten lo que debe ir antes.',

  'print.make-up-note':
    '{count, plural, one {Una pregunta} other {# preguntas}}: primero los datos con precaución que faltaron, luego los otros que faltaron, luego lo que nunca se preguntó. La hoja tiene el número {sheet}; con él se capturan después las marcas.',
  'print.keep': 'Conservar esta hoja, para imprimirla',
  'print.kept': 'Conservada. Sus marcas se pueden capturar en el tablero, en “Hojas en papel”.',
  'print.no-make-up':
    'Nada que recuperar: esta persona no necesita recuperación, o ninguno de sus datos se puede preguntar.',
  'marks.title': 'Marcas de una hoja',
  'marks.note':
    'Hoja {sheet} de {name}. Elige lo que se escribió; lo que se dejó en blanco queda abierto. Se une a las respuestas de {name} como un informe sellado por este dispositivo.',
  'marks.open': 'dejada abierta',
  'marks.right': 'correcta: {answer}{more, select, yes { (u otro orden que valga)} other {}}',
  'marks.wrong': 'no correcta: {answer}',
  'marks.other': 'no correcta: otra respuesta',
  'marks.keep':
    '{count, plural, =0 {Guardar (marca algo antes)} one {Guardar una marca} other {Guardar # marcas}}',
  'marks.done': 'Las marcas de esta hoja ya se capturaron.',
  'marks.none':
    'Esta hoja no está en este dispositivo, o el cuaderno cambió desde que se imprimió, así que sus preguntas no se pueden hacer otra vez.',
  'group.sheet-waits': 'Capturar las marcas de la hoja {sheet}, impresa el {on}',
  'group.sheet-marked': 'Hoja {sheet}: marcas capturadas el {on}',
  'group.absent': 'Hojas de recuperación en papel para ellos',
  'group.absent-note':
    'Las marcas se capturan después. Si más tarde llega un informe del teléfono, los dos quedan en el tablero como dos personas.',
  'group.absent-sheet': 'Una hoja para {name}',
  'group.no-sheets': 'Todavía no se imprimió ninguna hoja de recuperación.',
  'group.part.sheets': 'Hojas en papel',
} as const;
