/** Questions on solenoids: currents, pressure, the unplugged unit. */
export const SOLENOIDS = {
  'solenoid.on': 'corriente máxima',
  'solenoid.off': 'sin corriente',
  'solenoid.elements': '{elements}',
  'solenoid.feeds': '{solenoid} (alimenta a {elements})',
  'solenoid.feeds-column': 'Alimenta a',
  'solenoid.current-column': 'Corriente',
  'solenoid.sense':
    '{solenoid} {unplugged, select, full {da presión total al desconectarse, así que la corriente la quita} other {no da presión al desconectarse, así que la corriente la da}}.',
  'solenoid.line':
    '{solenoid}: {current, select, on {corriente máxima} other {sin corriente}}, así que {pressure, select, full {presión total} other {sin presión}} en {elements}.',

  'family.solenoid-elements': 'Elementos según la corriente de los solenoides',
  'solenoid-elements.prompt': 'Estas son las corrientes de los solenoides. ¿Qué elementos tienen presión?',
  'solenoid-elements.prompt-lever':
    'Palanca en {position}, así que estos pasos están todos abiertos. ¿Qué elementos tienen presión?',
  'solenoid-elements.row': 'Con presión: {elements}.',

  'family.range-solenoids': 'Corriente de los solenoides en una marcha',
  'range-solenoids.prompt-lever':
    'Palanca en {position}, se pide la marcha {range}; se muestra su fila. ¿Qué solenoides llevan corriente?',
  'range-solenoids.prompt':
    'Se pide la marcha {range}, y se muestra su fila. ¿Qué solenoides llevan corriente?',

  'family.unplugged': 'La unidad desconectada',
  'unplugged.prompt':
    'El conector está quitado, así que ningún solenoide tiene corriente. Palanca en {position}. ¿Qué hace la unidad, con el motor en marcha?',
  'unplugged.range': 'transmite en la marcha {range}',
  'unplugged.no-drive': 'no transmite en ninguna marcha',
  'unplugged.tied-up': 'se traba',
  'unplugged.output-held': 'retiene la salida',
  'unplugged.other-ratio': 'transmite con una relación que no es de ninguna marcha',
  'unplugged.row': 'Desconectada, en {position}, hay presión en {elements}.',
  'unplugged.row-none': 'Desconectada, en {position}, ningún elemento tiene presión.',
  'unplugged.reason': 'Por eso la unidad {does}.',
  'unplugged.by-hand': 'En {position} la válvula manual alimenta por sí misma a {elements}.',
  'unplugged.cut': 'En {position} la válvula manual corta el paso a {elements}.',
} as const;
