/** Questions on suspects: which faults fit, which test tells them apart, where the chain breaks. */
export const SUSPECTS = {
  'suspects.feeding': '{fault} (alimenta a {elements})',
  'suspects.bearing': '{fault} (de ahí cuelgan {solenoids})',
  'suspects.unit': 'Unidad {name}',
  'suspects.left': 'Quedan en pie: {faults}.',
  'suspects.stands': 'Queda en pie: {fault}.',
  'suspects.struck': 'Descartada: {fault}. {test}: sería “{would}”, pero se vio “{seen}”.',

  'family.faults-that-fit': 'Fallas que concuerdan con lo que hacen las marchas',
  'faults-that-fit.prompt':
    'La unidad tiene una sola falla. En la prueba de manejo: {rows}. ¿Cuáles de estas podrían ser? Marca todas las que concuerden.',
  'faults-that-fit.rows': 'en {ranges} “{does}”',
  'faults-that-fit.reason':
    'Una falla concuerda solo si da cada fila: las marchas que aún funcionan cuentan tanto como las que no.',

  'family.one-cause': 'Dos quejas, una causa',
  'one-cause.prompt':
    'Dos quejas de una unidad: {first}, y {second}. Hay una sola falla. ¿Cuáles de estas explicarían las dos? Marca todas.',
  'one-cause.reason': 'Una sola falla tiene que explicar las dos. Lo que explica solo una se descarta.',

  'family.impossible-suspects': 'Fallas que los resultados descartan',
  'impossible-suspects.prompt':
    'La queja: {symptom}. Todas estas fallas harían eso. Luego llegaron dos resultados. {first} {second} ¿Qué fallas son ahora imposibles?',
  'impossible-suspects.reason':
    'Un solo resultado que una falla no puede dar la descarta. Lo que solo está sin probar se queda.',

  'family.separating-test': 'La prueba que distingue dos fallas',
  'separating-test.prompt':
    'La queja: {symptom}. Quedan dos fallas posibles: {first}, o {second}. ¿Cuáles de estas pruebas las distinguen?',
  'separating-test.row': '{test}: “{first}” con una, “{second}” con la otra.',
  'separating-test.reason':
    'Una prueba distingue dos fallas solo si muestra una cosa con una y otra cosa con la otra.',
  'separating-test.alike': '{test}: “{reading}” con las dos.',

  'family.next-test': 'Pruebas por lo que dicen según su esfuerzo',
  'next-test.prompt':
    'La queja: {symptom}. Quedan seis fallas posibles, todas igual de probables. La tabla dice lo que mostrarían cuatro pruebas. Ordena las pruebas por cuántas fallas descartan en promedio por cada punto de esfuerzo.',
  'next-test.item': '{test} ({cost, plural, one {# punto} other {# puntos}})',
  'next-test.first': 'descarta más por el esfuerzo',
  'next-test.last': 'descarta menos por el esfuerzo',
  'next-test.row': 'Primero: {test}.',
  'next-test.reason':
    'Una prueba reparte las fallas en montones. Después queda solo el montón con la causa: un montón de k sale k veces de {count} y descarta las demás.',
  'next-test.line':
    '{test}: montones de {heaps}, así que descarta {struck} en promedio; entre {cost, plural, one {# punto} other {# puntos}} de esfuerzo da {gain}.',

  'family.predicted-gauge': 'Lo que muestra un manómetro con una falla',
  'predicted-gauge.prompt':
    'Supón que {fault}. Todo lo demás está bien y se pide según la tabla. ¿Qué muestra un manómetro en cada una de estas tomas?',
  'predicted-gauge.row-behind':
    'La falla está en {element}, detrás de su toma: el manómetro muestra lo de siempre.',
  'predicted-gauge.row-port': 'La falla cambia lo que llega a la toma, así que el manómetro la muestra.',
  'predicted-gauge.reason':
    'Un manómetro dice qué presión llega a la toma, no qué hace el elemento con ella.',

  'family.first-break': 'Dónde se corta la cadena',
  'first-break.prompt':
    'Tres unidades, cada una con una falla. Cada fila se leyó desde la orden hasta la marcha. ¿En qué eslabón sale mal primero cada una?',
  'first-break.case':
    '{name}: {element} en la marcha {range}, donde {wanted, select, on {debe actuar} other {no debe actuar}}; {solenoid} desconectado da {gives, select, full {presión total} other {nada}}',
  'first-break.column-asked': 'orden',
  'first-break.column-voltage': 'voltaje en la bobina',
  'first-break.column-current': 'corriente',
  'first-break.column-given': 'tras el solenoide',
  'first-break.column-port': 'en la toma',
  'first-break.column-road': 'la marcha',
  'first-break.on': 'corriente',
  'first-break.off': 'sin corriente',
  'first-break.voltage': 'hay',
  'first-break.no-voltage': 'no hay',
  'first-break.row':
    'Recorre la cadena desde la orden; la primera lectura que no se sigue de la anterior es el lugar.',
  'first-break.reason':
    'Todo lo que va después de ese eslabón también sale mal, pero solo por él. Antes todo está bien: no hace falta buscar ahí.',
  'first-break.line':
    '{name}: {link}. {side, select, driver {Se pide corriente, pero no llega voltaje: una línea de voltaje o un driver.} winding {Hay voltaje, pero no pasa corriente: la bobina o su enchufe.} valve {El solenoide no da lo que pide su corriente.} feed {El solenoide da presión, pero no llega a la toma.} other {La toma está como debe, pero el elemento no hace lo que dice su presión.}}',

  'family.slip-or-ratio': 'Patinaje, otra marcha o una cuenta equivocada',
  'slip-or-ratio.prompt':
    'Relaciones de esta unidad: {ratios}. Cuatro unidades se manejaron en dos marchas pedidas cada una, leídas en dos momentos (entrada y salida, rpm). ¿Qué le pasa a cada una?',
  'slip-or-ratio.ratio': '{range} {ratio}',
  'slip-or-ratio.first': 'primera lectura',
  'slip-or-ratio.second': 'segunda lectura',
  'slip-or-ratio.row': '{name}, marcha {range} ({ratio} : 1)',
  'slip-or-ratio.speeds': 'entra {input}, sale {output}',
  'slip-or-ratio.seen': '{ratio} : 1',
  'slip-or-ratio.as-commanded': 'todo como se pide',
  'slip-or-ratio.other-range': 'de verdad en otra marcha',
  'slip-or-ratio.slip': 'patina',
  'slip-or-ratio.wrong-count': 'un número de dientes mal puesto',
  'slip-or-ratio.by': 'Divide entrada entre salida y compárala con la relación pedida.',
  'slip-or-ratio.reason':
    'Estable en la relación de otra marcha: está en esa marcha. Se mueve y no es de ninguna: patinaje. Errada por el mismo factor en cada marcha: una velocidad se cuenta mal.',
  'slip-or-ratio.line': '{name}: {verdict}.',

  'family.air-check': 'Lo que dice una prueba con aire',
  'air-check.prompt':
    'Se mete aire, regulado como dice la información del fabricante y con los ojos protegidos, en los conductos de cuatro elementos, uno tras otro. ¿Qué dice cada uno?',
  'air-check.passage': '{element}: {noticed}',
  'air-check.thud': 'un golpe sordo, luego silencio',
  'air-check.nothing': 'no se mueve nada, y no se oye aire',
  'air-check.hiss': 'sin golpe; el aire sigue silbando en el pistón de {element}',
  'air-check.two': 'un golpe, y también se mueve {other}; ahí sigue silbando el aire',
  'air-check.sound': 'está bien',
  'air-check.blocked': 'el conducto está tapado',
  'air-check.seal': 'el sello de su pistón tiene fuga',
  'air-check.crosses': 'se escapa a otro conducto',
  'air-check.row': 'Un golpe es un pistón que se mueve; un silbido es aire que sigue escapando.',
  'air-check.reason':
    'Pregunta dónde silba y qué más se mueve: en su propio pistón es el sello, en otro elemento los conductos están unidos.',
  'air-check.line': '{element}: {noticed}. Entonces: {verdict}.',
} as const;
