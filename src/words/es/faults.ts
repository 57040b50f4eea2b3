/** Questions on faults and on speeds read from the scan tool. */
export const FAULTS = {
  'outcome.works': 'Marcha {range}: funciona según la tabla.',
  'outcome.covered': 'Marcha {range}: aún transmite por {oneWays}, pero ya no hay freno de motor.',
  'outcome.unneeded': 'Marcha {range}: transmite igual sin {element}.',
  'outcome.no-drive': 'Marcha {range}: nada recibe la carga, así que no transmite.',
  'outcome.output-held': 'Marcha {range}: la salida queda retenida.',
  'outcome.tied-up': 'Marcha {range}: se traba, la entrada no puede girar.',
  'outcome.becomes': 'Marcha {range}: transmite como la marcha {becomes}, con {ratio} : 1.',
  'outcome.other-ratio':
    'Marcha {range}: transmite con {ratio} : 1, una relación que no es de ninguna marcha.',

  'family.element-fails': 'Marchas que se pierden si falla un elemento',
  'element-fails.prompt':
    '{element} ya no se aplica. ¿Qué marchas se pierden, con el motor tirando? Una marcha se pierde si no transmite o si transmite con otra relación.',
  'element-fails.prompt-one-way':
    '{element} ya no sujeta. ¿Qué marchas se pierden, con el motor tirando? Una marcha se pierde si no transmite o si transmite con otra relación.',
  'element-fails.row': 'La tabla usa {element} en {ranges}.',
  'element-fails.reason': 'Se pierde sin él: {ranges}.',

  'family.element-stuck': 'Marchas si un elemento no se libera',
  'element-stuck.prompt':
    '{element} se atascó: no se libera nunca. ¿Qué hace cada marcha, con el motor tirando?',
  'element-stuck.works': 'funciona según la tabla',
  'element-stuck.other-ratio': 'transmite con otra relación',
  'element-stuck.tied-up': 'se traba',
  'element-stuck.no-drive': 'no transmite',
  'element-stuck.row': 'La tabla usa {element} en {ranges}.',
  'element-stuck.reason':
    'Un elemento de más traba el tren, salvo que los ejes que une puedan girar igual ahí.',

  'family.actual-range': 'La marcha que muestran las velocidades',
  'actual-range.prompt':
    'Se pide la marcha {commanded}. El escáner lee {input} rpm en la entrada y {output} rpm en la salida, estables. ¿En qué marcha está de verdad la unidad?',
  'actual-range.row': '{input} ÷ {output} = {seen}.',
  'actual-range.reason':
    'Es la relación de la marcha {range} ({ratio} : 1), no de la marcha pedida {commanded} ({commandedRatio} : 1).',
  'actual-range.reason-commanded': 'Es la relación de la marcha {range} ({ratio} : 1), la pedida.',
  'actual-range.line': 'Marcha {range}: {output} × {ratio} = {expected} rpm en la entrada.',

  'family.slip-speed': 'Patinaje según dos velocidades',
  'slip-speed.prompt-rpm':
    'Se pide la marcha {range}, relación {ratio} : 1. El escáner lee {input} rpm en la entrada y {output} rpm en la salida. ¿Cuántas rpm patina la unidad? Vale ± {tolerance} rpm.',
  'slip-speed.prompt-share':
    'Se pide la marcha {range}, relación {ratio} : 1. El escáner lee {input} rpm en la entrada y {output} rpm en la salida. ¿Cuánto patina la unidad, en por ciento de la velocidad de entrada? Vale ± {tolerance}.',
  'slip-speed.row': 'Sin patinaje la entrada gira a {output} × {ratio} = {expected} rpm.',
  'slip-speed.reason':
    'El patinaje es lo que sobra de la velocidad de entrada: {input} − {expected} = {slip} rpm.',
  'slip-speed.share': '{slip} ÷ {input} = {share} % de la velocidad de entrada.',
  'slip-speed.not-another': '{input} ÷ {output} = {seen}, la relación de ninguna otra marcha.',
} as const;
