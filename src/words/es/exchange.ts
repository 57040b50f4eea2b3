/** Handing work on: what can go wrong, and what a seal shows and does not show. */
export const EXCHANGE = {
  'exchange.empty': 'No tiene nada adentro. Elige otro archivo o pega el enlace completo.',
  'exchange.not-ours': 'Esto no es un archivo, enlace ni código de Detent. No se recibió nada.',
  'exchange.damaged': 'No llegó entero, así que no se recibió nada. Pídelo otra vez, mejor como archivo.',
  'exchange.too-large': 'Es demasiado grande para recibirlo así. Pásalo como archivo.',
  'exchange.newer':
    'Lo hizo un Detent más nuevo. Recarga esta página para tener el nuevo; lo que tienes queda igual.',
  'exchange.wrong-shape': 'No es lo que dice ser, así que no se recibió nada. Pídelo otra vez.',
  'exchange.wrong-shape.at':
    'No es lo que dice ser, en {detail}, así que no se recibió nada. Pídelo otra vez.',
  'exchange.part-of-another': 'Este código es de otra serie. Los códigos que ya leíste se conservan.',
  'exchange.parts-missing': 'Falta leer: código {detail}.',
  'exchange.no-code-seen':
    'No se encontró ningún código en la imagen. Mantén firme, llena el cuadro con un solo código, evita reflejos.',
  'proof.sound':
    'El sello está entero: esto es tal como lo hizo el dispositivo, y nadie lo cambió en el camino.',
  'proof.broken': 'El sello no concuerda: el informe se cambió después de hacerlo. Pídelo otra vez.',
  'proof.none': 'El informe no tiene sello, así que no se puede saber si cambió en el camino.',
  'proof.not-checked': 'El sello no se puede comprobar en esta página. Abre Detent por https.',
  'proof.limits':
    'Un sello muestra que un informe está tal como lo hizo un dispositivo, y si dos informes vienen del mismo dispositivo. No muestra quién tenía el dispositivo, ni que nadie ayudó.',
  'proof.other-device':
    'Este informe viene de otro dispositivo que el anterior. Pregunta si hay un teléfono nuevo.',
  'qti.caution': 'Precaución: {text}',
  'qti.place': '{number}: {label}',
  'qti.order': 'Ponlos en orden. Primero: {first}. Último: {last}.',
  'qti.number':
    '{decimals, plural, =0 {Responde con números enteros.} one {Responde con un decimal.} other {Responde con # decimales.}} Vale ± {tolerance}.',
  'qti.chart.range': 'Marcha',
  'qti.chart.ratio': 'Relación',
} as const;
