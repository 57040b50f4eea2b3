/** Questions on one-ways: when they hold, when they overrun, what brakes the engine. */
export const ONE_WAYS = {
  'family.manual-range': 'La misma relación, sujeta a mano',
  'manual-range.prompt':
    'Las marchas {free} y {firm} tienen la misma relación; se da la fila de {free}. ¿Qué actúa en {firm}, y cuál de las dos da freno de motor al soltar el acelerador?',
  'manual-range.element': '{element} actúa',
  'manual-range.braking': 'da freno de motor',
  'manual-range.yes': 'sí',
  'manual-range.no': 'no',
  'manual-range.row':
    'En la marcha {firm} actúa, y en {free} no: {extraCount, plural, =0 {nada} other {{extra}}}{sparedCount, plural, =0 {} other {; no le hace falta: {spared}}}.',
  'manual-range.reason':
    'En la marcha {free} sujeta la carga {oneWays}. Un unidireccional suelta cuando la salida empuja de vuelta; por eso la marcha {free} rueda libre, y la marcha {firm}, con elementos de fricción, da freno de motor.',

  'family.one-way-acts': 'Cuándo sujeta un unidireccional',
  'one-way-acts.prompt':
    '¿Qué hace {oneWay} en cada marcha: con el motor tirando, y cuando sueltas el acelerador y la salida empuja de vuelta?',
  'one-way-acts.drive': 'motor tirando',
  'one-way-acts.coast': 'salida empujando',
  'one-way-acts.holds': 'sujeta',
  'one-way-acts.overruns': 'gira libre',
  'one-way-acts.reason':
    'Sujeta solo donde la carga lo haría girar en el sentido que impide: aquí, con el motor tirando, en {ranges}. En desaceleración la carga empuja al revés y suelta.',
  'one-way-acts.line-holds':
    'Marcha {range}: el motor empuja contra lo que {oneWay} impide; en desaceleración suelta.',
  'one-way-acts.line-overruns':
    'Marcha {range}: sus ejes se apartan al girar, así que {oneWay} gira libre de todos modos.',
} as const;
