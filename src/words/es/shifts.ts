/** Questions on shifts beyond the next range, on how a shift hands over, and on speeds before and after. */
export const SHIFTS = {
  'family.skip-shift': 'Qué cambia en un cambio más largo',
  'skip-shift.prompt': 'La unidad cambia directo de la marcha {from} a la {to}. ¿Qué hace cada elemento?',
  'skip-shift.reason':
    'Solo cuentan la primera y la última fila. Se pasa por alto lo que {count, plural, one {usa la marcha {ranges}} other {usan las marchas {ranges}}}.',

  'family.shift-kind': 'Cómo se pasa la carga en un cambio',
  'shift-kind.prompt': '¿Cómo se pasa la carga en cada uno de estos cambios, con el motor tirando?',
  'shift-kind.lets-go': 'un unidireccional suelta solo, sin sincronizar',
  'shift-kind.catches': 'un unidireccional agarra solo, sin sincronizar',
  'shift-kind.exchange': 'un elemento por otro, hay que sincronizar',
  'shift-kind.comes-on-alone': 'se aplica un elemento, no se libera nada',
  'shift-kind.line-lets-go': 'Marcha {from} a {to}: {on}, y desde ahí gira libre {oneWays}.',
  'shift-kind.line-catches': 'Marcha {from} a {to}: {off}, y recibe la carga {oneWays}.',
  'shift-kind.line-exchange': 'Marcha {from} a {to}: {off} mientras {on}, y ningún unidireccional ayuda.',
  'shift-kind.line-comes-on-alone': 'Marcha {from} a {to}: {on}.',
  'shift-kind.reason':
    'Un unidireccional no necesita sincronizarse: suelta en cuanto su eje se adelanta, y agarra en cuanto se atrasa. Dos elementos de fricción tienen que repartirse la carga por un momento.',

  'family.output-speed': 'Velocidad de la salida',
  'output-speed.prompt':
    'Marcha {range}, relación {ratio} : 1, entrada a {input} rpm. ¿A qué velocidad gira la salida? En rpm enteras; vale ± {tolerance}. Con menos si gira hacia atrás.',
  'output-speed.prompt-road':
    'Marcha {range}, relación {ratio} : 1, entrada a {input} rpm, sin patinaje. El mando final es {final} : 1 y una rueda avanza {tyre} m por vuelta. ¿A qué velocidad va el vehículo, en km/h? Vale ± {tolerance}.',
  'output-speed.row': '{input} ÷ {ratio} = {output} rpm en la salida.',
  'output-speed.reason':
    'Relación es velocidad de entrada ÷ velocidad de salida, así que la velocidad de salida es velocidad de entrada ÷ relación.',
  'output-speed.reason-road':
    'El mando final divide otra vez, y lo que las ruedas avanzan por minuto, por 60, es lo que avanzan por hora: {speed} km/h.',
  'output-speed.wheels': '{output} ÷ {final} = {wheels} rpm en las ruedas.',
  'output-speed.road': '{wheels} rpm × {tyre} m × 60 ÷ 1000 = {speed} km/h.',

  'family.shift-guard': 'Cambios que giran demasiado rápido la entrada',
  'shift-guard.prompt':
    'Marcha {range}: la salida gira a {output} rpm, la entrada a {input} y el motor, por el convertidor, a {engine}. La entrada puede girar como mucho a {limit} rpm. ¿Qué haría en cada otra marcha, con esta velocidad de salida?',
  'shift-guard.slower': 'girar más lento que ahora',
  'shift-guard.within': 'girar más rápido, dentro del límite',
  'shift-guard.too-fast': 'girar demasiado rápido',
  'shift-guard.row': 'Sobre {limit} rpm en {count, plural, =0 {ninguna de estas} other {{ranges}}}.',
  'shift-guard.reason':
    'La salida mantiene su velocidad durante un cambio, así que la entrada gira a {output} × relación. El motor no viene al caso.',
  'shift-guard.line': 'Marcha {range}: {output} × {ratio} = {speed} rpm.',
} as const;
