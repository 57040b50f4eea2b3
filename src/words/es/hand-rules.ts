/** What the rules find in the data for the hands: seats, stacks, fits, steps, wires. See findings.ts. */
const NAMES = {
  'finding.things-exist.found': '"{ref}", que el cuaderno no tiene',
  'finding.things-exist.expected':
    'algo de este cuaderno, clase e id: "element:C1", "solenoid:S1", "sensor:output-speed"',
  'finding.records-exist.stack.found': 'un paquete "{id}" que el cuaderno no tiene',
  'finding.records-exist.stack.expected':
    '{count, plural, =0 {un paquete con ese id} other {uno de {known}}}',
  'finding.records-exist.plate.found': 'un disco "{id}" que este paquete no tiene',
  'finding.records-exist.plate.expected': 'uno de {known}',
  'finding.records-exist.seat.found': 'un asiento "{id}" que el cuaderno no tiene',
  'finding.records-exist.seat.expected': '{count, plural, =0 {un asiento con ese id} other {uno de {known}}}',
  'finding.records-exist.part.found': 'una pieza "{id}" que no está en la lista de este ajuste',
  'finding.records-exist.part.expected':
    '{count, plural, =0 {una lista de piezas selectivas} other {una de {known}}}',
  'finding.records-exist.solenoid.found': 'un solenoide "{id}" que el cuaderno no tiene',
  'finding.records-exist.solenoid.expected':
    '{count, plural, =0 {un solenoide con ese id} other {uno de {known}}}',
  'finding.records-exist.sensor.found': 'un sensor "{id}" que el cuaderno no tiene',
  'finding.records-exist.sensor.expected':
    '{count, plural, =0 {un sensor con ese id} other {uno de {known}}}',
  'finding.records-exist.supply.found': 'una línea de voltaje "{id}" que el cuaderno no tiene',
  'finding.records-exist.supply.expected':
    '{count, plural, =0 {una línea de voltaje con ese id} other {una de {known}}}',
  'finding.records-exist.torque.found': 'un torque "{id}" que el cuaderno no lista',
  'finding.records-exist.torque.expected':
    '{count, plural, =0 {un torque con ese id} other {uno de {known}}}',
  'finding.records-exist.fit.found': 'un ajuste "{id}" que el cuaderno no tiene',
  'finding.records-exist.fit.expected': '{count, plural, =0 {un ajuste con ese id} other {uno de {known}}}',
  'finding.aliases-clear.found': 'el nombre "{name}", que también tiene {other}',
  'finding.aliases-clear.expected': 'un nombre que signifique una sola cosa',
} as const;

const AMOUNTS = {
  'finding.bands-ordered.found': 'un extremo bajo de {low} y uno alto de {high}',
  'finding.bands-ordered.expected': 'el extremo bajo menor que el alto',
  'finding.inner-smaller.found': 'un diámetro interior de {inner} y uno exterior de {outer}',
  'finding.inner-smaller.expected': 'un diámetro interior menor que el exterior',
} as const;

const SEATS = {
  'finding.seats-touch.unknown.found': '"{id}", que no es pieza de la línea de ejes ni asiento',
  'finding.seats-touch.unknown.expected':
    '{count, plural, =0 {una línea de ejes donde ponerlo} other {uno de {known}, u otro asiento}}',
  'finding.seats-touch.itself.found': 'un asiento que se apoya en sí mismo',
  'finding.seats-touch.itself.expected': 'aquello contra lo que va esta cara',
  'finding.seats-touch.both.found': 'las dos caras contra "{id}"',
  'finding.seats-touch.both.expected': 'un vecino distinto de cada lado',
  'finding.seats-touch.one-sided.found':
    'el asiento "{id}", que según su propio registro no va contra "{seat}"',
  'finding.seats-touch.one-sided.expected': 'que dos asientos que van uno contra otro lo digan los dos',
  'finding.seats-placed.found': 'el lugar {place, number}, que ya tiene el asiento "{other}"',
  'finding.seats-placed.expected': 'un número propio, contado desde el frente',
  'finding.seats-in-line.found':
    'el lugar {place, number} después del asiento "{other}", aunque está más cerca del frente en la línea de ejes',
  'finding.seats-in-line.expected': 'lugares contados del frente hacia atrás; revisa sus vecinos',
  'finding.seat-faces.one-mark.found': 'ninguna marca en esta cara, pero sí en la otra',
  'finding.seat-faces.one-mark.expected': 'una marca en las dos caras, o en ninguna si son iguales',
  'finding.seat-faces.same-mark.found': 'la misma marca en las dos caras',
  'finding.seat-faces.same-mark.expected': 'marcas que las distingan, o ninguna',
  'finding.seat-faces.alike.found': '"{field}" en una pieza cuyas caras no tienen marcas',
  'finding.seat-faces.alike.expected': 'marcas que distingan las caras, o sin ese campo',
  'finding.seat-faces.kind.found': '"{field}" en una pieza de clase {kind}',
  'finding.seat-faces.kind.expected': 'ese campo solo en la clase {needed}',
  'finding.seat-pilots.inner.found': 'un hombro de {diameter} en un diámetro interior de {own}',
  'finding.seat-pilots.inner.expected': 'un hombro no más ancho que el diámetro interior',
  'finding.seat-pilots.outer.found': 'una caja de {diameter} para una pieza de {own} de ancho',
  'finding.seat-pilots.outer.expected': 'una caja no más angosta que la pieza',
  'finding.seat-pilots.alike.found': 'una pieza que no entra volteada, aunque los dos lados centran en {a}',
  'finding.seat-pilots.alike.expected':
    'dos diámetros de centrado, o true: si los dos lados son iguales entra de los dos modos',
  'finding.seat-pilots.differ.found': 'una pieza que entra volteada, aunque sus lados centran en {a} y {b}',
  'finding.seat-pilots.differ.expected': 'un solo diámetro de centrado, o false: entra de un solo modo',
  'finding.lip-faces-pressure.found': 'el labio en la cara {lip} y la presión desde la cara {pressure}',
  'finding.lip-faces-pressure.expected':
    'el labio donde está la presión; déjalo si la unidad está hecha así, con una nota',
} as const;

const STACKS = {
  'finding.plates-measured.thickness.found': 'ningún espesor en un disco de clase {kind}',
  'finding.plates-measured.thickness.expected': 'su espesor: ocupa lugar en el paquete',
  'finding.plates-measured.free.found': 'ninguna altura libre en un disco de clase {kind}',
  'finding.plates-measured.free.expected': 'su altura sin carga',
  'finding.plates-measured.flat.found': 'una altura libre en un disco de clase {kind}',
  'finding.plates-measured.flat.expected': 'altura libre solo en discos ondulados y cónicos',
  'finding.plates-measured.waves.found': 'nada sobre cómo cuentan los discos ondulados y cónicos',
  'finding.plates-measured.waves.expected': '"waves": "flat" o "free", según se mide la holgura',
  'finding.waves-higher.found': 'una altura libre de {free} en un disco de {flat} aplastado',
  'finding.waves-higher.expected': 'una altura libre mayor que la del disco aplastado',
  'finding.identical-alike.alone.found': 'la palabra "{word}" en un solo disco',
  'finding.identical-alike.alone.expected': 'esa palabra en cada disco del paquete que sea como este',
  'finding.identical-alike.differ.found': 'un disco idéntico a "{other}" que difiere de él en "{property}"',
  'finding.identical-alike.differ.expected': 'discos que puedan cambiar de lugar, u otra palabra',
  'finding.identical-marked.found': 'un disco que nada distingue de "{other}"',
  'finding.identical-marked.expected': 'una misma palabra en "identical" en los dos, o lo que los distingue',
  'finding.frictions-faced.found': 'el disco de fricción "{id}" sin nada contra qué rozar de un lado',
  'finding.frictions-faced.expected':
    'un disco de acero o un plato de aplicación o de respaldo de los dos lados',
  'finding.stack-room.found': 'un espacio de {room}, {by} mm menos que la altura de los discos',
  'finding.stack-room.expected': 'discos que quepan; busca uno de más o una profundidad equivocada',
  'finding.capacity-agrees.one-way.found': 'una capacidad en un unidireccional',
  'finding.capacity-agrees.one-way.expected': 'capacidad solo en frenos y embragues',
  'finding.capacity-agrees.frictions.found': '{stated, number} discos de fricción',
  'finding.capacity-agrees.frictions.expected': '{counted, number}, como en el paquete "{stack}"',
} as const;

const FITS = {
  'finding.fit-place.item.found': 'un disco sin nombrar el paquete',
  'finding.fit-place.item.expected': 'el paquete en que está',
  'finding.fit-place.two.found': 'un disco y un asiento',
  'finding.fit-place.two.expected': 'aquel cuyo espesor se elige',
  'finding.fit-place.stack.found': 'una holgura de embrague sin nombrar el paquete',
  'finding.fit-place.stack.expected': 'el paquete en que se mide',
  'finding.fit-one-unit.found': '{length} en un ajuste con límites en {unit}',
  'finding.fit-one-unit.expected': 'una sola unidad en el ajuste: en la que se mide',
  'finding.aim-in-limits.found': 'un valor buscado de {aim}',
  'finding.aim-in-limits.expected': 'un juego de {low} a {high}',
  'finding.selective-sorted.found': 'una pieza de {thickness} después de una de {before}',
  'finding.selective-sorted.expected': 'cada pieza una vez, primero la más delgada',
  'finding.selective-listed.found': 'una lista de {parts}; lo que elige está registrado con {thickness}',
  'finding.selective-listed.expected': 'ese espesor en la lista, o uno de la lista en el registro',
  'finding.clearance-in-limits.found':
    'límites de {low} a {high}, pero los discos del paquete "{stack}" dejan {clearance} mm',
  'finding.clearance-in-limits.expected':
    'una holgura dentro de los límites; revisa discos, espacio y límites',
  'finding.readings-complete.missing.found': 'sin "{field}"',
  'finding.readings-complete.missing.expected': 'ese campo: el método "{method}" lo necesita',
  'finding.readings-complete.extra.found': '"{field}" en una lectura con el método "{method}"',
  'finding.readings-complete.extra.expected': 'solo lo que necesita el método',
  'finding.readings-complete.bar.found': 'una profundidad leída sobre una barra',
  'finding.readings-complete.bar.expected': 'la altura de la barra en el ajuste, como "bar"',
  'finding.readings-complete.half.found': 'una pieza elegida sin resultado, o un resultado sin pieza elegida',
  'finding.readings-complete.half.expected': '"chosen" y "result", o ninguno de los dos',
  'finding.readings-possible.overlap.found': 'profundidades con las que las piezas se enciman {by}',
  'finding.readings-possible.overlap.expected':
    'un asiento más hondo que lo que entra en él; lee las dos otra vez',
  'finding.readings-possible.bar.found': 'una profundidad menor que la barra sobre la que se leyó',
  'finding.readings-possible.bar.expected': 'una profundidad que incluya la barra',
  'finding.readings-possible.below.found':
    'un juego de {bare} sin pieza puesta, menos de lo que piden los límites',
  'finding.readings-possible.below.expected': 'más: una pieza solo puede quitarle. Lee otra vez',
  'finding.readings-possible.above.found':
    'un juego de {bare} sin pieza puesta, más de lo que permiten los límites',
  'finding.readings-possible.above.expected': 'menos: una pieza solo puede sumarle. Lee otra vez',
  'finding.effect-proved.other-way.found':
    'un resultado de {result}, como si una pieza más gruesa hiciera lo contrario',
  'finding.effect-proved.other-way.expected':
    '{play}, porque una pieza más gruesa {effect, select, closes {cierra} other {abre}} el juego; revisa "effect"',
  'finding.effect-proved.differs.found': 'un resultado de {result}',
  'finding.effect-proved.differs.expected': '{play} según las otras cifras de la lectura',
  'finding.effect-proved.outside.found': 'un resultado de {result}, fuera de los límites del mismo ajuste',
  'finding.effect-proved.outside.expected': 'una pieza elegida que deje el juego dentro de ellos',
} as const;

const WORK = {
  'finding.assembly-works.circle.found': 'un armado cuyos pasos se esperan en círculo: {circle}',
  'finding.assembly-works.circle.expected': 'excepciones que algún orden pueda cumplir',
  'finding.assembly-works.lifted-unknown.found':
    'una relación retirada "{earlier}" antes de "{later}" que el armado no tiene',
  'finding.assembly-works.lifted-unknown.expected':
    'los dos pasos en el orden del armado, de los que uno sigue directo al otro al desarmar',
  'finding.assembly-works.lifted-still-implied.found':
    'una relación retirada "{earlier}" antes de "{later}" que otras relaciones todavía piden',
  'finding.assembly-works.lifted-still-implied.expected':
    'retiradas todas las relaciones entre los dos, o ninguna',
  'finding.assembly-worded.missing.found': 'sin "turned" en el paso "{id}", que también se hace al armar',
  'finding.assembly-worded.missing.expected': 'lo que se hace entonces, o el paso en "leftOut"',
  'finding.assembly-worded.extra.found': '"turned" en el paso "{id}", que no se hace al armar',
  'finding.assembly-worded.extra.expected': 'sin ese campo',
  'finding.checks-possible.never.found':
    'una comprobación que necesita el paso "{step}", que la hace imposible',
  'finding.checks-possible.never.expected': 'una comprobación que se pueda hacer en algún momento',
  'finding.checks-possible.not-turned.found': 'una comprobación del armado, pero sin "assembly"',
  'finding.checks-possible.not-turned.expected': '"assembly" en el trabajo, o "during": "strip"',
  'finding.step-torque.found': 'un torque propio y además "{tightens}"',
  'finding.step-torque.expected': 'uno de los dos',
  'finding.hazards-cautioned.found': 'el peligro {hazard} sin precaución sobre él',
  'finding.hazards-cautioned.expected': 'una precaución de ese peligro, unida a "{ref}"',
} as const;

const WIRES = {
  'finding.solenoids-placed.outside.found': 'un solenoide en la fila {row, number}, columna {column, number}',
  'finding.solenoids-placed.outside.expected':
    'un lugar en una cara de {rows, plural, one {una fila} other {# filas}} y {columns, plural, one {una columna} other {# columnas}}',
  'finding.solenoids-placed.taken.found':
    'un solenoide en la fila {row, number}, columna {column, number}, donde está "{other}"',
  'finding.solenoids-placed.taken.expected': 'un lugar propio',
  'finding.solenoids-placed.twice.found': 'un segundo lugar para lo mismo',
  'finding.solenoids-placed.twice.expected': 'un solo lugar',
  'finding.pins-placed.outside.found': 'un pin en la fila {row, number}, columna {column, number}',
  'finding.pins-placed.outside.expected':
    'un lugar en una cara de {rows, plural, one {una fila} other {# filas}} y {columns, plural, one {una columna} other {# columnas}}',
  'finding.pins-placed.taken.found':
    'un pin en la fila {row, number}, columna {column, number}, donde está el pin "{other}"',
  'finding.pins-placed.taken.expected': 'un lugar propio',
  'finding.pins-complete.found': 'ningún pin para "{what}"',
  'finding.pins-complete.expected': 'un pin que le sirva, o el conector por donde sale',
  'finding.pickup-kind.coil.found': 'una bobina sin resistencia',
  'finding.pickup-kind.coil.expected': 'su resistencia a 20 °C, como "at20"',
  'finding.pickup-kind.hall.found': 'un sensor hall sin línea de voltaje',
  'finding.pickup-kind.hall.expected': 'la línea de voltaje que necesita',
  'finding.pickup-kind.extra.found': '"{field}" en un sensor de clase {kind}',
  'finding.pickup-kind.extra.expected':
    '{kind, select, coil {una bobina sin línea de voltaje} other {sin resistencia: un sensor hall no tiene bobina que medir}}',
  'finding.thermistor-sense.wrong-sense.found':
    'una resistencia a {at} que no va en el sentido de las demás, lejos de la anterior',
  'finding.thermistor-sense.wrong-sense.expected':
    'una resistencia que {sense, select, falls {baja} other {sube}} con el calor; busca un error de imprenta',
  'finding.thermistor-sense.temperatures-equal.found': 'la temperatura {at} por segunda vez',
  'finding.thermistor-sense.temperatures-equal.expected': 'cada temperatura una vez',
  'finding.codes-watch.range.found': '"{ref}" vigilado por un código de clase {kind}',
  'finding.codes-watch.range.expected': 'una pieza; las marchas las vigilan códigos de clase ratio',
  'finding.codes-watch.part.found': '"{ref}" vigilado por un código de clase {kind}',
  'finding.codes-watch.part.expected': 'marchas: "range:3"',
} as const;

export const HAND_RULE_WORDS = {
  ...NAMES,
  ...AMOUNTS,
  ...SEATS,
  ...STACKS,
  ...FITS,
  ...WORK,
  ...WIRES,
} as const;
