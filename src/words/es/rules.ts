/** What the rules of src/content/rules find in a deck. See findings.ts for how they are said. */
const NAMES = {
  'finding.ids-unique.found': 'el id "{id}" por segunda vez',
  'finding.ids-unique.expected': 'otro id: la entrada {first} ya tiene este',
  'finding.names-reserved.found': 'un elemento llamado "{id}"',
  'finding.names-reserved.expected': 'otro id: {reserved} se reservan para otras cosas',
  'finding.listed-once.found': '"{id}" por segunda vez en la lista',
  'finding.listed-once.expected': 'una sola vez',
  'finding.sources-exist.found': 'una fuente "{id}" que el cuaderno no lista',
  'finding.sources-exist.expected':
    '{count, plural, =0 {una fuente con ese id en "sources"} other {una de {known}}}',
  'finding.shafts-exist.unknown.found': 'un eje "{id}" en el que no está ningún conjunto ni elemento',
  'finding.shafts-exist.unknown.expected': '{count, plural, =0 {un eje del tren} other {uno de {known}}}',
  'finding.shafts-exist.case.found': 'la carcasa, que no gira',
  'finding.shafts-exist.case.expected': '{count, plural, =0 {un eje del tren} other {uno de {known}}}',
  'finding.elements-exist.found': 'un elemento "{id}" que el tren no tiene',
  'finding.elements-exist.expected': 'uno de {known}',
  'finding.rows-exist.found': 'una fila "{id}" que la tabla no tiene',
  'finding.rows-exist.expected': 'una de {known}',
  'finding.steps-exist.found': 'un paso "{id}" que este trabajo no tiene',
  'finding.steps-exist.expected': 'uno de {known}',
  'finding.cautions-attached.found': '"{ref}", que el cuaderno no tiene',
  'finding.cautions-attached.expected':
    'algo de este cuaderno, clase e id: "element:C1", "solenoid:S1", "seat:T5"; o con aquello en que está: "step:strip/drain", "cell:4/C1", "plate:C1/steel-2"',
} as const;

const TRAIN = {
  'finding.input-output.found': '"{shaft}", que también es la entrada',
  'finding.input-output.expected': 'un eje distinto: la potencia entra por uno y sale por otro',
  'finding.gearset-members.found': 'el eje "{shaft}" dos veces en un conjunto',
  'finding.gearset-members.expected': 'tres ejes distintos para solar, corona y portaplanetas',
  'finding.element-joins.itself.found': 'el eje "{shaft}" unido consigo mismo',
  'finding.element-joins.itself.expected': 'dos ejes distintos',
  'finding.element-joins.brake.found': 'un freno entre "{first}" y "{second}"',
  'finding.element-joins.brake.expected': '"case" como uno de los dos, o la clase "clutch"',
  'finding.element-joins.clutch.found': 'un embrague entre "{first}" y "{second}"',
  'finding.element-joins.clutch.expected': 'dos ejes que giren, o la clase "brake"',
  'finding.element-joins.overruns.found': 'un sentido libre "{overruns}" en la clase {kind}',
  'finding.element-joins.overruns.expected': 'ese dato solo en unidireccionales',
  'finding.shafts-joined.found': 'el eje "{shaft}" en ningún otro lugar del tren',
  'finding.shafts-joined.expected':
    'al menos otro engranaje o elemento en él; así no lleva nada. ¿El nombre se escribe igual en todas partes?',
  'finding.planets-whole.none.found':
    'una corona de {ring, number} dientes alrededor de un solar de {sun, number}',
  'finding.planets-whole.none.expected':
    'más dientes en la corona que en el solar, para que quepan planetas en medio',
  'finding.planets-whole.half.found':
    'corona {ring, number} y solar {sun, number}, que dejan planetas de {planet, number} dientes',
  'finding.planets-whole.half.expected':
    'un número entero: corona = solar + 2 × planeta. Cuenta otra vez los dos engranajes',
  'finding.planets-spaced.found':
    '{planets, number} planetas; solar y corona tienen {sum, number} dientes juntos',
  'finding.planets-spaced.expected':
    'una suma divisible entre el número de planetas, o no pueden ir a ángulos iguales',
  'finding.one-ways-few.found': '{count, number} unidireccionales',
  'finding.one-ways-few.expected': 'como mucho {most, number}: se prueba cada combinación de ellos',
} as const;

const CHART = {
  'hint.none': '',
  'hint.stated': '. La relación indicada {ratio} sale con {elements}',
  'hint.add': '. Transmite si se agrega uno de estos: {elements}',
  'hint.drop': '. Transmite si se quita uno de estos: {elements}',
  'finding.range-drives.tied-up.found':
    'una fila que se traba: actuando {count, plural, =0 {nada} other {{elements}}}, la entrada no puede girar',
  'finding.range-drives.tied-up.expected':
    'elementos que den a la salida una sola velocidad, distinta de 0{hint}',
  'finding.range-drives.output-held.found':
    'una fila que retiene la salida: actuando {count, plural, =0 {nada} other {{elements}}}, no puede girar',
  'finding.range-drives.output-held.expected':
    'elementos que den a la salida una sola velocidad, distinta de 0{hint}',
  'finding.range-drives.free.found':
    'una fila que deja libre la salida: {count, plural, =0 {sin que actúe nada, los engranajes no definen} one {{elements} no define} other {{elements} no definen}} su velocidad',
  'finding.range-drives.free.expected':
    'elementos que den a la salida una sola velocidad, distinta de 0{hint}',
  'finding.ratio-agrees.found': 'una relación indicada de {stated}',
  'finding.ratio-agrees.expected':
    '{rounded}, que en este tren sale con {elements} (calculada: {exact}){hint}',
  'finding.ratio-cut.found': 'una relación indicada de {stated}, cortada y no redondeada',
  'finding.ratio-cut.expected': '{rounded} (calculada: {exact}), salvo que la fuente la imprima así',
  'finding.ranges-distinct.found':
    'los mismos elementos que la marcha "{other}"{count, plural, =0 { (ninguno)} other {: {elements}}}',
  'finding.ranges-distinct.expected': 'elementos propios',
  'finding.ratios-distinct.found': 'la misma relación que la marcha "{other}", {ratio}, con otros elementos',
  'finding.ratios-distinct.expected': 'una relación propia; revisa las dos filas',
  'finding.one-way-holds.found':
    'el unidireccional "{id}" como si sujetara, pero la carga lo empuja en el sentido en que gira libre',
  'finding.one-way-holds.expected': 'esta fila sin él, o sus dos ejes (o "overruns") al revés',
  'finding.one-way-binds.found':
    'el unidireccional "{id}" fuera de la fila, pero girado en el sentido que impide: se trabaría',
  'finding.one-way-binds.expected':
    'en reposo o girando libre cada unidireccional que no está en la lista; revisa sus dos ejes y "overruns"',
  'finding.one-way-idle.found': 'el unidireccional "{id}" como si sujetara, pero aquí no lleva carga',
  'finding.one-way-idle.expected': 'esta fila sin él',
  'finding.neutral-stays.drives.found':
    'una fila neutral que transmite con {ratio} actuando {count, plural, =0 {nada} other {{elements}}}',
  'finding.neutral-stays.drives.expected': 'elementos que dejen libre la salida',
  'finding.neutral-stays.tied-up.found':
    'una fila neutral que se traba actuando {count, plural, =0 {nada} other {{elements}}}',
  'finding.neutral-stays.tied-up.expected': 'elementos que dejen girar la entrada',
  'finding.elements-used.found': 'el elemento "{id}" en ninguna marcha',
  'finding.elements-used.expected': 'al menos una marcha que lo aplique',
  'finding.one-ways-used.found': 'el unidireccional "{id}" en ninguna marcha',
  'finding.one-ways-used.expected': 'ese unidireccional en las filas donde sujeta',
} as const;

const OIL = {
  'finding.solenoid-feeds.found': 'un solenoide que no alimenta nada',
  'finding.solenoid-feeds.expected':
    'un elemento, o uno de "line-pressure", "converter-clutch" y "lubrication"',
  'finding.one-ways-unfed.found': 'aceite para el unidireccional "{id}"',
  'finding.one-ways-unfed.expected': 'un freno o embrague: un unidireccional sujeta por sí mismo',
  'finding.solenoid-demands.found':
    'un solenoide para {on} y {off}, pero en la fila "{row}" actúa {on} y no actúa {off}',
  'finding.solenoid-demands.expected':
    'un solenoide para cada uno, o una posición de la palanca que cierre uno de los pasos',
  'finding.feeds-recorded.found': 'nada que alimente a "{id}"',
  'finding.feeds-recorded.expected':
    'un solenoide o una posición de la palanca que lo alimente; hasta entonces no se pregunta nada sobre su aceite',
  'finding.feeds-single.found': 'el elemento "{id}" alimentado por {solenoids}',
  'finding.feeds-single.expected':
    'un solenoide por elemento: un cuaderno no puede decir cuál de dos gana, así que no se pregunta nada sobre él',
  'finding.feeds-agree.found':
    'el elemento "{id}" con presión y sin ella al desconectar: {first} y {second} difieren',
  'finding.feeds-agree.expected': 'un solenoide para el elemento, o dos que den lo mismo',
  'finding.lever-valve.manual.found': 'nada',
  'finding.lever-valve.manual.expected':
    'los elementos a los que la válvula manual deja paso aquí; una lista vacía si no hay',
  'finding.lever-valve.none.found': 'pasos de una válvula manual en una palanca que no la tiene',
  'finding.lever-valve.none.expected': 'sin ese campo, o "valve": "manual"',
  'finding.rows-reached.found': 'la fila "{id}" en ninguna posición de la palanca',
  'finding.rows-reached.expected': 'una posición que la pida',
  'finding.interlocks-allow.found': 'la fila "{row}", en la que le quitaría la presión a {elements}',
  'finding.interlocks-allow.expected':
    'ninguna fila en que actúe todo "whenApplied" y también algo de "blocks"',
  'finding.interlocks-settle.found': 'un círculo de enclavamientos: {circle}',
  'finding.interlocks-settle.expected':
    'ningún elemento que, a través de otros, se quite la presión a sí mismo: no se sabría si actúa',
  'finding.positions-allow.closed.found': 'la fila "{row}", pero aquí está cerrado el paso a {elements}',
  'finding.positions-allow.closed.expected':
    'un paso abierto para cada elemento de la fila, o la fila en otro lugar',
  'finding.positions-allow.forced.found':
    'la fila "{row}", pero aquí la válvula alimenta por sí misma a {elements}, que no está en la fila',
  'finding.positions-allow.forced.expected':
    'en cada fila de esta posición, lo que la válvula alimenta por sí misma',
  'finding.unplugged-safe.tied-up.found':
    'una unidad que se traba al desconectarla: {count, plural, =0 {nada tiene} one {{elements} tiene} other {{elements} tienen}} presión',
  'finding.unplugged-safe.tied-up.expected':
    'una unidad que pueda girar; revisa la presión al desconectar y lo que abre la válvula',
  'finding.unplugged-safe.drives.found':
    'una unidad que aquí transmite con {ratio} al desconectarla: {count, plural, =0 {nada tiene} one {{elements} tiene} other {{elements} tienen}} presión',
  'finding.unplugged-safe.drives.expected':
    'que no transmita en una posición sin fila que transmita; revisa la presión al desconectar y lo que abre la válvula',
  'finding.unplugged-safe.turned.found':
    'una unidad que aquí transmite con {ratio} al desconectarla, en sentido contrario: {count, plural, =0 {nada tiene} one {{elements} tiene} other {{elements} tienen}} presión',
  'finding.unplugged-safe.turned.expected':
    'que transmita en el sentido de sus filas, o que no transmita; revisa la presión al desconectar y lo que abre la válvula',
} as const;

const WORK = {
  'finding.sequence-acyclic.found': 'pasos que se esperan en círculo: {circle}',
  'finding.sequence-acyclic.expected': 'relaciones que algún orden pueda cumplir',
  'finding.sequence-order.found': 'el paso "{step}" puesto antes de "{before}", al que debe seguir',
  'finding.sequence-order.expected': 'los pasos en un orden que funcione',
} as const;

export const RULE_WORDS = { ...NAMES, ...TRAIN, ...CHART, ...OIL, ...WORK } as const;
