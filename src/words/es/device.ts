/** This device: how safe what is stored here is, a backup, a new phone. */
export const DEVICE = {
  'device.title': 'Este dispositivo',
  'device.language': 'Idioma',
  'device.link': 'Este dispositivo: idioma, copia, teléfono nuevo',
  'device.reading': 'Leyendo…',
  'device.keeping': '¿Está seguro aquí?',
  'device.keeping.promised':
    'El navegador prometió conservar tus respuestas. Solo tú puedes quitarlas, borrando los datos de este sitio.',
  'device.keeping.not-promised':
    'Se le pidió al navegador y no prometió conservar tus respuestas: si falta espacio en este dispositivo, puede borrarlas. Guarda una copia de vez en cuando.',
  'device.keeping.not-asked':
    'Todavía no se le ha pedido al navegador que conserve tus respuestas. Se le pide después de la primera práctica.',
  'device.keeping.unknown':
    'Este navegador no dice si conserva tus respuestas. Guarda una copia de vez en cuando.',
  'device.ask': 'Pedir al navegador que las conserve',
  'device.room': 'Unos {used, number} MB usados aquí, de {room, number} GB que hay.',
  'device.where': 'En una ventana privada todo desaparece al cerrar la ventana.',
  'device.backup': 'Copia de seguridad',
  'device.backup-how':
    'Un archivo con todo lo tuyo en este dispositivo: respuestas, cuadernos, ajustes, la práctica en curso, autoevaluaciones y lo que asignaste o recogiste.',
  'device.backup-save': 'Guardar una copia',
  'device.backup-saved':
    '{file} está listo. Consérvalo donde puedas encontrarlo si este dispositivo se pierde.',
  'device.backup-without':
    'El archivo no está cifrado: quien lo tenga puede leerlo. No contiene la clave que sella los informes, que no puede salir de este dispositivo: un teléfono nuevo recibe la suya.',
  'device.new-phone': 'Teléfono nuevo',
  'device.new-phone-how':
    'Lo mejor es llevar el archivo de la copia y ponerlo allí. Sin cable ni cuenta también sirven los códigos, mientras no haya demasiadas respuestas: se muestran aquí y se leen allí.',
  'device.codes-decks': 'También los cuadernos (más códigos; no hace falta para los que trae Detent)',
  'device.codes': 'Mostrar los códigos',
  'device.codes-title': 'Tu copia en códigos',
  'device.restore': 'Poner una copia',
  'device.restore-how': 'Elige el archivo de una copia, o lee los códigos que muestra tu otro dispositivo.',
  'device.no-backup': 'Se puede leer, pero no es una copia.',
  'device.offer-title': 'Una copia',
  'device.offer':
    'Hecha el {made}{named, select, yes { por {name}} other {}}, con {answers, plural, =0 {ninguna respuesta} one {una respuesta} other {# respuestas}} y {decks, plural, =0 {ningún cuaderno} one {un cuaderno} other {# cuadernos}}.',
  'device.left-out':
    'Estos cuadernos de la copia no pasan la revisión y se quedan fuera: {decks}. Las respuestas sobre ellos se ponen, y cuentan en cuanto el cuaderno esté.',
  'device.another-person':
    'Esta copia es de {theirs}, y en este dispositivo practica {own}. Una vez puestas, estas respuestas cuentan como de {own}.',
  'device.offer-joins':
    'En este dispositivo no se sobrescribe nada: las respuestas que ya están quedan como están, las que faltan se agregan.',
  'device.put-in': 'Ponerla',
  'device.restored':
    '{answers, plural, =0 {No faltaba ninguna respuesta} one {Se agregó una respuesta} other {Se agregaron # respuestas}}, {known, plural, =0 {ninguna estaba} one {una estaba} other {# estaban}} ya aquí; {decks, plural, =0 {no se agregó ningún cuaderno} one {se agregó un cuaderno} other {se agregaron # cuadernos}}.',
  'clock.behind':
    'El reloj de este dispositivo va por detrás de tu última respuesta. Tus respuestas están seguras y conservan su orden, pero los días se cuentan con este reloj: ponlo en hora.',
  'clock.moved':
    'La última vez practicaste con el reloj de {before}; ahora rige el de {now}. Los días ya contados quedan como están.',
} as const;
