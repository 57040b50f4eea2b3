/** What the command line says. */
export const CLI = {
  'cli.usage': `Cuadernos de Detent desde la línea de comandos.

  npm run -s deck -- check FILE... [--json]   qué está mal en un cuaderno (sale con 1 si hay errores)
  npm run -s deck -- solve FILE [--json]      estado, relación, velocidades y torques de cada fila
  npm run -s deck -- ask FILE [--family ID] [--fact ID] [--seed N] [--count K] [--json]
                                              preguntas enteras, con respuestas y explicaciones
  npm run -s deck -- families [--json]        los tipos de pregunta, una línea cada uno

Códigos de salida: 0 hecho; 1 el cuaderno tiene errores, o no hay nada que preguntar; 2 el comando o un archivo no sirve.`,
  'cli.no-command': 'Falta el comando. Usa uno de {known}, o --help.',
  'cli.unknown-command': 'No hay un comando "{name}". Usa uno de {known}.',
  'cli.unknown-option': 'El comando {command} no tiene la opción {option}. Usa {known}.',
  'cli.flag-value': 'La opción {option} no lleva valor. Quita lo que sigue al signo igual.',
  'cli.no-value': 'La opción {option} necesita un valor después.',
  'cli.option-twice': 'La opción {option} está dos veces. Quita una.',
  'cli.bad-number':
    'La opción {option} es "{text}". Da un número entero de {least, number, ::group-off} a {most, number, ::group-off}.',
  'cli.no-file':
    'El comando {command} necesita un archivo de cuaderno: npm run -s deck -- {command} decks/kestrel-7.json',
  'cli.one-file': 'El comando {command} toma un solo archivo de cuaderno. Quita "{extra}".',
  'cli.no-files': 'El comando {command} no toma archivos. Quítalo.',
  'cli.file-missing': 'No existe el archivo {file}. Revisa la ruta.',
  'cli.file-folder': 'La ruta {file} es una carpeta. Nombra un archivo de cuaderno dentro de ella.',
  'cli.file-forbidden': 'No se permite leer el archivo {file}. Revisa sus permisos.',
  'cli.file-device': 'La ruta {file} no es un archivo. Nombra un archivo de cuaderno.',
  'cli.file-large':
    'El archivo {file} tiene {size, number} bytes, demasiado para un cuaderno. Nombra un archivo de cuaderno.',
  'cli.file-unread': 'El archivo {file} no se puede leer ({code}). Revisa la ruta y el disco.',
  'cli.file-binary': 'El archivo {file} no es texto. Da un cuaderno: texto JSON en UTF-8.',
  'cli.not-json':
    'El archivo {file} no es JSON (línea {line}, columna {column}). Usa check para ver por qué.',
  'cli.not-a-deck':
    'El archivo {file} no tiene la forma de un cuaderno ({count, plural, one {un hallazgo} other {# hallazgos}}). Usa check para verlos.',
  'cli.broken': 'Algo salió mal en este programa ({message}). No cambió nada; por favor avisa.',
  'cli.revision': 'revisión {revision}',
  'cli.check.head':
    '{file}: {errors, plural, =0 {{warnings, plural, =0 {en orden} one {un aviso} other {# avisos}}} one {un error} other {# errores}}{errors, plural, =0 {} other {{warnings, plural, =0 {} one {, un aviso} other {, # avisos}}}}',
  'cli.check.error': 'ERROR    {where}{line}  [{rule}]',
  'cli.check.warning': 'aviso    {where}{line}  [{rule}]',
  'cli.check.line': ' (línea {line, number, ::group-off})',
  'cli.check.found': 'hay',
  'cli.check.expected': 'se espera',
  'cli.solve.row': 'fila',
  'cli.solve.on': 'actúan',
  'cli.solve.state': 'estado',
  'cli.solve.ratio': 'relación',
  'cli.solve.exact': 'exacta',
  'cli.solve.output': 'salida',
  'cli.solve.case': 'carcasa',
  'cli.solve.drives': 'transmite',
  'cli.solve.free': 'libre',
  'cli.solve.output-held': 'salida retenida',
  'cli.solve.tied-up': 'trabado',
  'cli.solve.unsolved': 'no se puede calcular',
  'cli.solve.open': 'sin definir',
  'cli.solve.holding': 'sujeta el unidireccional {holding}',
  'cli.solve.speeds':
    'Velocidad de cada eje por una vuelta de la entrada. Menos gira contra la entrada; "sin definir" no queda fijada.',
  'cli.solve.torques':
    'Torque por 1 N·m en la entrada, sin pérdidas: lo que cada elemento pone en el eje tras los dos puntos, y luego lo que la carga y la carcasa ponen en la unidad. Más actúa como gira la entrada.',
  'cli.solve.indeterminate':
    '? es indeterminado: varios elementos se reparten la carga, y solo su rigidez decide cómo.',
  'cli.solve.errors':
    'El cuaderno {file} tiene {count, plural, one {un error} other {# errores}}. Usa check para {count, plural, one {verlo} other {verlos}}.',
  'cli.ask.no-family': 'No hay un tipo de pregunta "{family}". Usa uno de {known}.',
  'cli.ask.no-fact':
    'Aquí ninguna pregunta es sobre "{fact}". Usa uno de {known}{more, plural, =0 {} other {, entre otros}}.',
  'cli.ask.nothing':
    'No hay nada justo que preguntar de este cuaderno{family, select, all {} other { en el tipo {family}}}. Prueba otro tipo u otra semilla, o revisa lo que está marcado como dudoso.',
  'cli.ask.errors':
    'El cuaderno {file} tiene {count, plural, one {un error} other {# errores}}, así que no se pregunta nada de él. Usa check y corrígelo antes.',
  'cli.ask.seed': 'semilla {seed}',
  'cli.ask.answer': 'respuesta',
  'cli.ask.guess': 'al azar',
  'cli.ask.why': 'por qué',
  'cli.ask.more': 'más',
  'cli.ask.slip-up': 'desliz',
  'cli.ask.caution': 'PRECAUCIÓN',
  'cli.ask.guess-rate': '{rate, number, ::percent .0}',
  'cli.ask.train': 'Se muestra el tren de engranajes; actúa: {count, plural, =0 {nada} other {{applied}}}.',
  'cli.ask.drawing': 'Dibujado: {title}.',
  'cli.ask.form-set': 'Marca todo lo correcto:',
  'cli.ask.form-one': 'Elige uno:',
  'cli.ask.form-order': 'Pon en orden, de {first} a {last}:',
  'cli.ask.form-number':
    '{tolerance, select, 0 {Escribe un número entero.} other {Escribe un número{unit, select, none {} other { en {unit}}}, vale ± {tolerance}{signed, select, yes {, con su signo} other {}}.}}',
  'cli.ask.form-pair': 'Dale a cada uno uno de: {right}',
  'cli.ask.form-place': 'Elige uno de los lugares del dibujo:',
  'cli.ask.form-fill': 'Llena las celdas marcadas ? con uno de: {marks}',
} as const;
