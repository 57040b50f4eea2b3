/** Questions on torque and on gearsets: what one does by itself, what carries the load, what is lost without it. */
export const TORQUE = {
  'member.sun': 'solar',
  'member.ring': 'corona',
  'member.carrier': 'portaplanetas',

  'family.one-set': 'Un conjunto planetario solo',
  'one-set.prompt-simple':
    'Toma {gearset} solo: solar de {sunTeeth} dientes, corona de {ringTeeth}, piñones sencillos. ¿Cómo gira la salida respecto al miembro que impulsa?',
  'one-set.prompt-double-pinion':
    'Toma {gearset} solo: solar de {sunTeeth} dientes, corona de {ringTeeth}, piñones en pares. ¿Cómo gira la salida respecto al miembro que impulsa?',
  'one-set.held': 'entra por {driven}, sale por {out}, {third} sin girar',
  'one-set.joined': 'entra por {driven} y {third} unidos, sale por {out}',
  'one-set.slower': 'igual sentido, más lento',
  'one-set.alike': 'igual sentido, igual de rápido',
  'one-set.faster': 'igual sentido, más rápido',
  'one-set.backward-slower': 'sentido contrario, más lento',
  'one-set.backward-faster': 'sentido contrario, más rápido',
  'one-set.line':
    '{way}: una vuelta de entrada da {turns} de salida, {sense, select, backward {en sentido contrario} other {en el mismo sentido}}.',
  'one-set.reason-simple':
    'Con piñones sencillos el portaplanetas es el lento: gira más lento que lo que lo impulsa y hace girar más rápido lo que él impulsa. Con el portaplanetas quieto, solar y corona giran en sentidos opuestos.',
  'one-set.reason-double-pinion':
    'Con piñones en pares, solar y corona giran en el mismo sentido cuando el portaplanetas está quieto, y la corona toma el lugar que tiene el portaplanetas con piñones sencillos.',

  'torque.carried':
    '{element} en la marcha {range}{count, plural, =0 { (sin otros)} other { (con {others})}}',
  'torque.set':
    '{gearset} reparte el torque según sus dientes, solar {sunPart}, corona {ringPart}, portaplanetas {carrierPart}: {sun}, {ring} y {carrier} N·m.',
  'torque.shaft': 'A {shaft} lo equilibra {element} con {torque} N·m.',
  'torque.case':
    'Para comprobar: entran {input} N·m y salen {output}, así que la carcasa da {reaction} N·m en total, por frenos, unidireccionales y engranajes fijos a ella.',

  'family.element-torque': 'Torque en un elemento',
  'element-torque.prompt':
    'En la marcha {range}, elementos que actúan: {elements}. Entran {input} N·m. ¿Cuánto torque lleva {element}? En N·m enteros, sin pérdidas; vale ± {tolerance}.',
  'element-torque.reason': '{element} lleva {torque} N·m, {times} veces lo que entra.',

  'family.torque-order': 'Torque en orden',
  'torque-order.prompt':
    'Cada vez entra el mismo torque. Ponlos en orden del torque que lleva el elemento, primero el mayor.',
  'torque-order.first': 'más torque',
  'torque-order.last': 'menos torque',
  'torque-order.row': 'De más a menos: {carried}.',
  'torque-order.reason':
    'Cuánto lleva un elemento depende de su lugar en el tren, no solo de lo baja que sea la marcha.',
  'torque-order.line': '{carried}: {times} veces el torque en la entrada.',

  'family.held-push': 'Hacia dónde se empuja una pieza sujeta',
  'held-push.prompt':
    'El motor tira. ¿Hacia dónde giraría la pieza que sujeta cada freno si el freno soltara?',
  'held-push.forward': 'hacia adelante, como gira la entrada',
  'held-push.backward': 'hacia atrás, contra la entrada',
  'held-push.nowhere': 'a ningún lado: nada la empuja',
  'held-push.line':
    '{carried}: {push, select, forward {hacia adelante} other {hacia atrás}}.{known, select, yes { Con la salida parada y el freno suelto, {shaft} gira {turns} en ese sentido por una vuelta de la entrada.} other {}}',
  'held-push.reason':
    'Imagina la salida parada por la carga y el freno suelto: hacia donde la entrada hace girar la pieza, hacia ahí empuja.',

  'family.set-stripped': 'Marchas que se pierden si un conjunto se queda sin dientes',
  'set-stripped.prompt':
    '{gearset} perdió los dientes: sus miembros giran uno sobre otro y no pasan torque. ¿Qué marchas se pierden, con el motor tirando? Una marcha se pierde si no transmite o si transmite con otra relación.',
  'set-stripped.row': 'Se pierde sin {gearset}: {ranges}.',
  'set-stripped.reason':
    'Una marcha se conserva cuando sus elementos hacen pasar el torque por fuera del conjunto. Que un conjunto gire no significa que trabaje, y uno que gira todo junto puede estar llevando la carga.',
  'set-stripped.line-kept': 'Marcha {range}: transmite como antes, por {gearset} no pasa torque.',
  'set-stripped.line-other': 'Marcha {range}: transmite con {ratio} : 1, otra relación.',
  'set-stripped.line-no-drive': 'Marcha {range}: no transmite sin {gearset}.',
  'set-stripped.line-output-held': 'Marcha {range}: la salida queda retenida sin {gearset}.',
  'set-stripped.line-tied-up': 'Marcha {range}: se traba sin {gearset}.',
} as const;
