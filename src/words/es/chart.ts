/** Questions on reading the apply chart and on shifts. */
export const CHART = {
  'shaft.case': 'la carcasa',
  'chart.row': 'Marcha {range}: {elements}.',
  'chart.drives-at': 'Con esto la marcha {range} transmite con {ratio} : 1.',
  'chart.brake-holds': '{element} sujeta {first} a la carcasa.',
  'chart.clutch-joins': '{element} hace girar juntos dos ejes: {first}; {second}.',
  'chart.one-way-joins':
    '{element} es unidireccional: no deja que {first} gire hacia {blocked, select, forward {adelante} other {atrás}} respecto a {second}.',

  'family.range-elements': 'Elementos de una marcha',
  'range-elements.prompt': '¿Qué elementos actúan en la marcha {range}?',

  'family.range-from-elements': 'La marcha según sus elementos',
  'range-from-elements.prompt': 'Actúan, y nada más: {elements}. ¿Qué marcha es?',
  'range-from-elements.reason': 'Ninguna otra marcha tiene justo estos.',

  'family.element-ranges': 'Marchas de un elemento',
  'element-ranges.prompt': '¿En qué marchas actúa {element}?',
  'element-ranges.row': '{element} actúa en {count, plural, one {la marcha} other {las marchas}} {ranges}.',

  'change.comes-on': 'se aplica',
  'change.goes-off': 'se libera',
  'change.stays-on': 'sigue aplicado',
  'change.stays-off': 'sigue libre',
  'shift.named': '{from} a {to}',
  'shift.off':
    '{count, plural, =0 {no se libera nada} one {se libera {elements}} other {se liberan {elements}}}',
  'shift.on':
    '{count, plural, =0 {no se aplica nada} one {se aplica {elements}} other {se aplican {elements}}}',
  'shift.changes': '{count}',

  'family.shift-changes': 'Qué cambia en un cambio de marcha',
  'shift-changes.prompt': 'Cambio de la marcha {from} a la {to}: ¿qué hace cada elemento?',
  'shift-changes.row': 'En este cambio {off} y {on}.',
  'shift-changes.held':
    '{count, plural, one {Sigue actuando durante el cambio: {elements}.} other {Siguen actuando durante el cambio: {elements}.}}',
  'shift-changes.none-held': 'Nada sigue actuando durante el cambio.',
  'shift-changes.idle': 'Sin actuar antes ni después: {elements}.',
  'shift-changes.ratios':
    '{before, select, higher {La relación baja de la marcha {from} a la {to}: la salida gira más rápido con la misma entrada.} other {La relación sube de la marcha {from} a la {to}: la salida gira más lento con la misma entrada.}}',

  'family.shift-count': 'Cuánto cambia en un cambio de marcha',
  'shift-count.prompt':
    '¿Cuántos elementos cambian en cada cambio de marcha? Cuenta los que se liberan y los que se aplican.',
  'shift-count.prompt-with-one-ways':
    '¿Cuántos elementos cambian en cada cambio de marcha? Cuenta los que se liberan y los que se aplican, y también los unidireccionales que empiezan o dejan de sujetar.',
  'shift-count.row': 'En el orden preguntado: {counts} elementos.',
  'shift-count.reason':
    'Lo que actúa en las dos marchas no cuenta, y lo que usa una marcha de en medio tampoco.',
  'shift-count.detail': 'De la marcha {from} a la {to} {off} y {on}.',
} as const;
