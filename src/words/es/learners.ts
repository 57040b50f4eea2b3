/** One device, several learners. What a PIN does and does not is meant literally. */
export const LEARNERS = {
  'learners.link': 'Quién usa este dispositivo',
  'learners.title': 'Quién usa este dispositivo',

  'names.title': '¿Quién practica?',
  'names.with-pin': 'con PIN',
  'names.none': 'No se puede leer ningún nombre.',
  'names.unreadable':
    '{count, plural, one {Un nombre} other {# nombres}} no {count, plural, one {se puede leer con esta versión y queda fuera} other {se pueden leer con esta versión y quedan fuera}}. No se borró nada.',
  'names.gone': 'El nombre que estaba abierto aquí se quitó de este dispositivo, desde otra pestaña.',
  'names.idle':
    'Nadie tocó esto por un rato, así que volvió a los nombres. Todas las respuestas se conservan.',
  'names.leaving':
    '{count, plural, one {Todavía se está quitando un nombre} other {Todavía se están quitando # nombres}}: Detent está abierto en otra pestaña, que tiene lo guardado. Cierra esa pestaña y vuelve a intentarlo.',
  'names.again': 'Intentar otra vez',
  'names.trouble': 'No se pueden abrir los nombres de este dispositivo.',
  'names.trouble-own': 'No se puede abrir lo guardado para {name}.',
  'names.go-on': 'Practicar sin los nombres',
  'names.go-on-note':
    'Los nombres se guardan aparte de las respuestas. Quien tuvo primero este dispositivo puede practicar sin ellos: lo que se responda entonces queda con las respuestas del primer aprendiz. Nadie más debe hacerlo.',
  'names.other': 'Volver a los nombres',
  'names.other-note': 'Las respuestas de los otros se guardan aparte de estas.',

  'who.here': 'Quién practica',
  'who.as': 'Practica: {name}',
  'who.leave': 'Salir',
  'who.still-there':
    'Nadie ha tocado esto por un rato. En menos de {seconds} segundos vuelve a los nombres. Las respuestas de {name} se conservan.',
  'who.stay': 'Quedarse',
  'who.pin-off':
    'El {date} se quitó tu PIN en la página “Quién usa este dispositivo”. Si no se acordó contigo, pregunta a quien cuida este dispositivo, y pon uno nuevo.',
  'who.pin-off-read': 'Ya lo leí',

  'pin.of': 'PIN de {name}',
  'pin.shop': 'El PIN del taller',
  'pin.field': 'PIN',
  'pin.enter': 'Abrir',
  'pin.checking': 'Revisando…',
  'pin.back': 'Otro nombre',
  'pin.wrong': 'Ese no es el PIN. No cambió nada.',
  'pin.wait':
    'Ese no es el PIN. Después de varios equivocados, el siguiente intento espera: {seconds, plural, one {# segundo} other {# segundos}}.',
  'pin.wait-minutes':
    'Ese no es el PIN. Después de varios equivocados, el siguiente intento espera: {minutes, plural, one {# minuto} other {# minutos}}.',
  'pin.may-try': 'Ya puedes intentar otra vez.',
  'pin.empty': 'Un PIN tiene de cuatro a ocho cifras.',
  'pin.forgotten':
    '¿Se olvidó? Se puede quitar en la página “Quién usa este dispositivo”. Las respuestas se quedan.',
  'pin.no-crypto':
    'Los PIN necesitan una página abierta por https (o en este mismo dispositivo). Esta no lo fue.',

  'own.title': 'Tu lugar: {name}',
  'own.pin': 'Tu PIN',
  'own.pin-does':
    'Un PIN evita que un colega responda con tu nombre. No cifra tus respuestas: quien sepa cómo puede leerlas en este dispositivo sin él.',
  'own.pin-none': 'No tienes.',
  'own.pin-some': 'Tienes uno.',
  'own.pin-new': 'PIN nuevo, de cuatro a ocho cifras',
  'own.pin-again': 'El mismo otra vez',
  'own.pin-differ': 'Los dos no son iguales.',
  'own.pin-now': 'El PIN que tienes ahora',
  'own.pin-set': 'Poner el PIN',
  'own.pin-change': 'Cambiar el PIN',
  'own.pin-off': 'Quitar el PIN',
  'own.pin-is-set': 'El PIN está puesto. Se pide cada vez que se elige tu nombre.',
  'own.pin-is-off': 'El PIN está quitado.',
  'own.pin-saving': 'Poniéndolo: tarda un momento a propósito.',
  'own.data': 'Tus respuestas',
  'own.data-note':
    'Todo lo guardado con tu nombre, en un archivo. No está cifrado: quien lo reciba puede leerlo.',
  'own.data-save': 'Guardar mis respuestas en un archivo',
  'own.data-saved': 'Guardado como {file}.',

  'shop.title': 'Para todos los de este dispositivo',
  'shop.about-one':
    'Varias personas pueden practicar en un dispositivo, cada una con sus respuestas, prácticas y cuadernos aparte. Lo guardado aquí hasta ahora queda con el primer nombre.',
  'shop.first': '¿De quién son las respuestas de aquí hasta ahora?',
  'shop.second': '¿Quién más viene?',
  'shop.share': 'Compartir este dispositivo',
  'shop.names': 'Nombres',
  'shop.new': 'Otro nombre',
  'shop.add': 'Agregar el nombre',
  'shop.added': 'Se agregó a {name}.',
  'shop.fault.empty': 'Falta un nombre.',
  'shop.fault.long': 'Ese nombre es demasiado largo: 40 letras como mucho.',
  'shop.fault.taken': 'Ya hay alguien con ese nombre. Agrega una letra para distinguirlos.',
  'shop.here-now': 'aquí ahora',
  'shop.rename': 'Nombre',
  'shop.rename-save': 'Guardar el nombre',
  'shop.renamed': 'El nombre ahora es {name}.',
  'shop.pin-off': 'Quitar el PIN de {name}',
  'shop.pin-off-note': 'Para un PIN olvidado. A {name} se le dice al empezar la próxima vez.',
  'shop.pin-is-off': 'El PIN de {name} está quitado.',
  'shop.remove': 'Quitar a {name} de este dispositivo',
  'shop.remove-note':
    'Quita el nombre y todo lo guardado con él: respuestas, prácticas, autoevaluaciones, cuadernos, y lo que se asignó o escribió ahí. No se puede deshacer. Guarda antes las respuestas si alguien puede quererlas.',
  'shop.remove-sure': 'Sí, quitar a {name}',
  'shop.remove-not': 'Conservar a {name}',
  'shop.removed': 'Se quitó a {name}, con todo lo guardado con ese nombre.',
  'shop.save-of': 'Guardar las respuestas de {name}',
  'shop.idle': 'Vuelta a los nombres',
  'shop.idle-field': 'Cuando nadie toca la pantalla por',
  'shop.idle-choice': '{minutes, plural, one {# minuto} other {# minutos}}',
  'shop.idle-never': 'nunca por sí solo',
  'shop.idle-note':
    'Medio minuto antes, la página lo avisa. No se pierde nada: cada respuesta se guarda al tocar Comprobar, y una práctica sigue donde se dejó.',
  'shop.pin': 'El PIN del taller',
  'shop.pin-note':
    'Con él, solo quien lo sabe puede agregar, cambiar o quitar nombres, quitar un PIN, y borrar. Sin él, puede quien tenga este dispositivo. Si se olvida, solo ayuda borrar los datos de esta página en el navegador, y eso borra todas las respuestas.',
  'shop.pin-set': 'Poner el PIN del taller',
  'shop.pin-take': 'Quitar el PIN del taller',
  'shop.pin-is-set': 'El PIN del taller está puesto.',
  'shop.pin-gone': 'El PIN del taller está quitado.',
  'shop.locked': 'El resto de esta página necesita el PIN del taller.',
  'shop.wipe': 'Fin de curso: borrar todo',
  'shop.wipe-note':
    'Quita todos los nombres de este dispositivo, con todas las respuestas, prácticas, autoevaluaciones, cuadernos, tareas, informes y borradores. Detent se queda, con sus cuadernos de muestra. No se puede deshacer.',
  'shop.wipe-first': 'Antes, guarda lo que alguien pueda querer, un archivo cada uno:',
  'shop.wipe-word': 'BORRAR',
  'shop.wipe-type': 'Para borrar, escribe {word} aquí',
  'shop.wipe-mistyped': 'No se borró nada: la casilla no dice {word}.',
  'shop.wipe-now': 'Borrar {count, plural, one {un aprendiz} other {# aprendices}} de este dispositivo',
  'shop.wiped': 'Se borró todo. Este dispositivo empieza de nuevo.',
  'shop.held-up':
    'No todo se pudo borrar todavía: Detent está abierto en otra pestaña, que tiene lo guardado. Cierra esa pestaña; entonces se va solo.',
} as const;
