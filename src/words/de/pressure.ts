/** Questions on pressure, force and the torque that packs hold, in German. */
export const PRESSURE = {
  'pressure.area':
    '{inner, select, none {π ÷ 4 × {outer}²} other {π ÷ 4 × ({outer}² − {inner}²)}} = {area} {unit}² Kolbenfläche.',
  'pressure.units-mm': 'kPa auf mm² sind Tausendstel Newton; N mal mm sind Tausendstel N·m.',
  'pressure.units-in': 'psi auf in² sind lbf; lbf mal in sind lbf·in, zwölf davon sind ein lbf·ft.',

  'family.piston-force': 'Kraft eines Kolbens',
  'piston-force.prompt':
    '{element}: Schaltkolben {outer} Durchmesser{inner, select, none {} other {, Bohrung {inner}}}, Rückstellfeder {spring}. Das Manometer zeigt {gauge} {gaugeUnit}. Wie stark drückt der Kolben auf die Lamellen, in {unit}? Mitdrehendes Öl bleibt außer Betracht. Bis {tolerance} Abweichung gilt als richtig.',
  'piston-force.reason':
    'Druck mal Fläche sind {open} {unit}; weniger die Feder, {spring}, bleiben {force} {unit}.',

  'family.clutch-torque': 'Drehmoment, das ein Paket hält',
  'clutch-torque.prompt':
    '{element}: Schaltkolben {outer} Durchmesser{inner, select, none {} other {, Bohrung {inner}}}, Rückstellfeder {spring}; Belaglamellen: {frictions}, Belag außen {liningOuter} und innen {liningInner} Durchmesser, Reibwert {friction}. Das Manometer zeigt {gauge} {gaugeUnit}. Wie viel Drehmoment hält es, in {unit}? Rechne mit Reibung in der Mitte des Belags, mitdrehendes Öl bleibt außer Betracht. Bis {tolerance} Abweichung gilt als richtig.',
  'clutch-torque.row':
    '{faces} Flächen × {friction} × {force} {forceUnit} × {radius} {length} = {torque} {unit}.',
  'clutch-torque.reason':
    'Belaglamellen: {frictions}, Reibflächen: {faces}, und jede Fläche hält gleich viel.',
  'clutch-torque.force': 'Druck mal Fläche, weniger die Feder {spring}: {force} {unit} auf die Lamellen.',
  'clutch-torque.radius': 'Mitte des Belags: ({outer} + {inner}) ÷ 4 = {radius} {unit} von der Achse.',

  'family.pressure-needed': 'Druck, den ein Schaltelement braucht',
  'pressure-needed.prompt':
    'In Gang {range} trägt {element} {torque} {torqueUnit}. Schaltkolben {outer} Durchmesser{inner, select, none {} other {, Bohrung {inner}}}, Rückstellfeder {spring}; Belaglamellen: {frictions}, Belag außen {liningOuter} und innen {liningInner} Durchmesser, Reibwert {friction}. Welchen Druck braucht es, um nicht zu rutschen, in {unit}? Rechne mit Reibung in der Mitte des Belags, mitdrehendes Öl bleibt außer Betracht. Bis {tolerance} Abweichung gilt als richtig.',
  'pressure-needed.row':
    '{torque} {torqueUnit} auf {faces} Flächen, mit {friction} und der Mitte des Belags, verlangen {force} {forceUnit}.',
  'pressure-needed.reason':
    '{force} für die Lamellen und {spring} für die Feder sind {sum} {forceUnit}; geteilt durch die Fläche sind das {pressure} {unit}.',
  'pressure-needed.input':
    'Das trägt es bei {input} {unit} am Antrieb: {torque} {unit}, aus den Zähnezahlen.',

  'family.tap-pressures': 'Was die Manometer zeigen',
  'tap-pressures.prompt':
    'Gang {range} ist angefordert{lever, select, yes {, Wählhebel in {position}} other {}}, und der Stecker ist ab bei {solenoid}. Was zeigt ein Manometer am Messanschluss jedes Schaltelements?',
  'tap-pressures.gauge': 'Manometer',
  'tap-pressures.shows-full': 'Hauptdruck',
  'tap-pressures.shows-none': 'nichts',
  'tap-pressures.reason': '{solenoid} versorgt {elements}; alles andere bleibt, wie es die Zeile sagt.',
  'tap-pressures.line-charted':
    '{element}: {pressure, select, full {in Gang {range} geschlossen, also Hauptdruck} other {in Gang {range} offen, also nichts}}.',
  'tap-pressures.line-dead':
    '{element}: versorgt von {solenoid}, gibt ohne Strom {pressure, select, full {Hauptdruck} other {nichts}}.',
  'tap-pressures.line-valve':
    '{element}: {pressure, select, full {in {position} vom Wählschieber selbst versorgt} other {in {position} vom Wählschieber gesperrt}}.',
} as const;
