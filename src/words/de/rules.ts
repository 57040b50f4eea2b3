/** What the rules of src/content/rules find in a deck, in German. See findings.ts for how they are said. */
const NAMES = {
  'finding.ids-unique.found': 'das Kürzel "{id}" ein zweites Mal',
  'finding.ids-unique.expected': 'ein anderes Kürzel: Eintrag {first} hat dieses schon',
  'finding.names-reserved.found': 'ein Schaltelement mit dem Kürzel "{id}"',
  'finding.names-reserved.expected': 'ein anderes Kürzel: {reserved} sind für anderes vorbehalten',
  'finding.listed-once.found': '"{id}" ein zweites Mal in der Liste',
  'finding.listed-once.expected': 'das einmal',
  'finding.sources-exist.found': 'eine Quelle "{id}", die der Datensatz nicht nennt',
  'finding.sources-exist.expected':
    '{count, plural, =0 {eine Quelle mit diesem Kürzel in "sources"} other {eine von {known}}}',
  'finding.shafts-exist.unknown.found':
    'eine Welle "{id}", auf der kein Planetensatz und kein Schaltelement sitzt',
  'finding.shafts-exist.unknown.expected':
    '{count, plural, =0 {eine Welle des Räderwerks} other {eine von {known}}}',
  'finding.shafts-exist.case.found': 'das Gehäuse, das nicht dreht',
  'finding.shafts-exist.case.expected':
    '{count, plural, =0 {eine Welle des Räderwerks} other {eine von {known}}}',
  'finding.elements-exist.found': 'ein Schaltelement "{id}", das das Räderwerk nicht hat',
  'finding.elements-exist.expected': 'eines von {known}',
  'finding.rows-exist.found': 'eine Zeile "{id}", die die Matrix nicht hat',
  'finding.rows-exist.expected': 'eine von {known}',
  'finding.steps-exist.found': 'ein Schritt "{id}", den diese Arbeitsfolge nicht hat',
  'finding.steps-exist.expected': 'einer von {known}',
  'finding.cautions-attached.found': '"{ref}", das der Datensatz nicht hat',
  'finding.cautions-attached.expected':
    'etwas aus diesem Datensatz, Art und Kürzel: "element:C1", "solenoid:S1", "seat:T5"; oder mit dem, worin es steht: "step:strip/drain", "cell:4/C1", "plate:C1/steel-2"',
} as const;

const TRAIN = {
  'finding.input-output.found': '"{shaft}", das auch der Antrieb ist',
  'finding.input-output.expected':
    'eine andere Welle: die Leistung geht an einer hinein und an einer anderen heraus',
  'finding.gearset-members.found': 'Welle "{shaft}" zweimal in einem Planetensatz',
  'finding.gearset-members.expected': 'drei verschiedene Wellen für Sonnenrad, Hohlrad und Steg',
  'finding.element-joins.itself.found': 'Welle "{shaft}" mit sich selbst verbunden',
  'finding.element-joins.itself.expected': 'zwei verschiedene Wellen',
  'finding.element-joins.brake.found': 'eine Bremse zwischen "{first}" und "{second}"',
  'finding.element-joins.brake.expected': '"case" als eine von beiden, oder die Art "clutch"',
  'finding.element-joins.clutch.found': 'eine Kupplung zwischen "{first}" und "{second}"',
  'finding.element-joins.clutch.expected': 'zwei Wellen, die drehen, oder die Art "brake"',
  'finding.element-joins.overruns.found': 'eine freie Richtung "{overruns}" bei der Art {kind}',
  'finding.element-joins.overruns.expected': 'das nur bei Freiläufen',
  'finding.shafts-joined.found': 'Welle "{shaft}" sonst nirgends im Räderwerk',
  'finding.shafts-joined.expected':
    'mindestens ein weiteres Rad oder Schaltelement darauf; so trägt sie nichts. Ist der Name überall gleich geschrieben?',
  'finding.planets-whole.none.found':
    'ein Hohlrad mit {ring, number} Zähnen um ein Sonnenrad mit {sun, number}',
  'finding.planets-whole.none.expected':
    'mehr Zähne am Hohlrad als am Sonnenrad, damit Planeten dazwischen passen',
  'finding.planets-whole.half.found':
    'Hohlrad {ring, number} und Sonnenrad {sun, number}; dazwischen bleiben Planeten mit {planet, number} Zähnen',
  'finding.planets-whole.half.expected':
    'eine ganze Zahl: Hohlrad = Sonnenrad + 2 × Planet. Zähle beide Räder noch einmal',
  'finding.planets-spaced.found':
    '{planets, number} Planeten; Sonnenrad und Hohlrad haben zusammen {sum, number} Zähne',
  'finding.planets-spaced.expected':
    'eine Summe, die sich durch die Zahl der Planeten teilen lässt; sonst können sie nicht in gleichen Winkeln stehen',
  'finding.one-ways-few.found': '{count, number} Freiläufe',
  'finding.one-ways-few.expected': 'höchstens {most, number}: jede Kombination davon wird durchgerechnet',
} as const;

const CHART = {
  'hint.none': '',
  'hint.stated': '. Die angegebene {ratio} kommt mit: {elements}',
  'hint.add': '. Kraftschluss kommt, wenn eines davon dazukommt: {elements}',
  'hint.drop': '. Kraftschluss kommt, wenn eines davon wegbleibt: {elements}',
  'finding.range-drives.tied-up.found':
    'eine Zeile, die verspannt: mit {count, plural, =0 {nichts} other {{elements}}} geschlossen kann der Antrieb nicht drehen',
  'finding.range-drives.tied-up.expected':
    'Schaltelemente, die dem Abtrieb genau eine Drehzahl lassen, nicht 0{hint}',
  'finding.range-drives.output-held.found':
    'eine Zeile, die den Abtrieb festhält: mit {count, plural, =0 {nichts} other {{elements}}} geschlossen kann er nicht drehen',
  'finding.range-drives.output-held.expected':
    'Schaltelemente, die dem Abtrieb genau eine Drehzahl lassen, nicht 0{hint}',
  'finding.range-drives.free.found':
    'eine Zeile, die den Abtrieb frei lässt: {count, plural, =0 {mit nichts geschlossen} one {mit nur {elements} geschlossen} other {mit {elements} geschlossen}} ist seine Drehzahl nicht bestimmt',
  'finding.range-drives.free.expected':
    'Schaltelemente, die dem Abtrieb genau eine Drehzahl lassen, nicht 0{hint}',
  'finding.ratio-agrees.found': 'angegebene Übersetzung {stated}',
  'finding.ratio-agrees.expected':
    '{rounded}, wie {elements} sie in diesem Räderwerk geben (gerechnet: {exact}){hint}',
  'finding.ratio-cut.found': 'angegebene Übersetzung {stated}, abgeschnitten statt gerundet',
  'finding.ratio-cut.expected': '{rounded} (gerechnet: {exact}), außer die Quelle druckt es so',
  'finding.ranges-distinct.found':
    'die gleichen Schaltelemente wie Gang "{other}"{count, plural, =0 { (keine)} other {: {elements}}}',
  'finding.ranges-distinct.expected': 'eigene Schaltelemente',
  'finding.ratios-distinct.found':
    'die gleiche Übersetzung wie Gang "{other}", {ratio}, mit anderen Schaltelementen',
  'finding.ratios-distinct.expected': 'eine eigene Übersetzung; prüfe beide Zeilen',
  'finding.one-way-holds.found':
    'Freilauf "{id}" als sperrend, aber die Last drückt ihn in seine freie Richtung',
  'finding.one-way-holds.expected':
    'ihn nicht in dieser Zeile, oder seine zwei Wellen (oder "overruns") andersherum',
  'finding.one-way-binds.found':
    'Freilauf "{id}" nicht in der Zeile, aber in seine Sperrrichtung gedreht: er würde klemmen',
  'finding.one-way-binds.expected':
    'jeden nicht genannten Freilauf in Ruhe oder frei laufend; prüfe seine zwei Wellen und "overruns"',
  'finding.one-way-idle.found': 'Freilauf "{id}" als sperrend, aber er trägt hier keine Last',
  'finding.one-way-idle.expected': 'ihn nicht in dieser Zeile',
  'finding.neutral-stays.drives.found':
    'eine Neutralzeile, die mit {count, plural, =0 {nichts} other {{elements}}} geschlossen mit {ratio} treibt',
  'finding.neutral-stays.drives.expected': 'Schaltelemente, die den Abtrieb frei lassen',
  'finding.neutral-stays.tied-up.found':
    'eine Neutralzeile, die mit {count, plural, =0 {nichts} other {{elements}}} geschlossen verspannt',
  'finding.neutral-stays.tied-up.expected': 'Schaltelemente, die den Antrieb drehen lassen',
  'finding.elements-used.found': 'Schaltelement "{id}" in keinem Gang',
  'finding.elements-used.expected': 'mindestens einen Gang, in dem es geschlossen ist',
  'finding.one-ways-used.found': 'Freilauf "{id}" in keinem Gang',
  'finding.one-ways-used.expected': 'ihn in den Zeilen, in denen er sperrt',
} as const;

const OIL = {
  'finding.solenoid-feeds.found': 'ein Magnetventil, das nichts versorgt',
  'finding.solenoid-feeds.expected':
    'ein Schaltelement, oder eines von "line-pressure", "converter-clutch" und "lubrication"',
  'finding.one-ways-unfed.found': 'Öl für Freilauf "{id}"',
  'finding.one-ways-unfed.expected': 'eine Bremse oder Kupplung: ein Freilauf sperrt von selbst',
  'finding.solenoid-demands.found':
    'ein Magnetventil für {on} und {off}, aber in Zeile "{row}" ist {on} geschlossen und {off} offen',
  'finding.solenoid-demands.expected':
    'je ein Magnetventil, oder eine Stellung des Wählhebels, die eine der Versorgungen sperrt',
  'finding.feeds-recorded.found': 'nichts, was "{id}" versorgt',
  'finding.feeds-recorded.expected':
    'ein Magnetventil oder eine Stellung des Wählhebels, die es versorgt; bis dahin wird nichts über sein Öl gefragt',
  'finding.feeds-single.found': 'Schaltelement "{id}", versorgt von {solenoids}',
  'finding.feeds-single.expected':
    'ein Magnetventil je Schaltelement: ein Datensatz kann nicht sagen, welches von zweien gewinnt; darum wird nichts darüber gefragt',
  'finding.feeds-agree.found':
    'Schaltelement "{id}" abgesteckt mit und ohne Druck: {first} und {second} sind verschieden',
  'finding.feeds-agree.expected': 'ein Magnetventil dafür, oder zwei, die dasselbe geben',
  'finding.lever-valve.manual.found': 'nichts',
  'finding.lever-valve.manual.expected':
    'die Schaltelemente, deren Versorgung der Wählschieber hier frei lässt; eine leere Liste, wenn es keine gibt',
  'finding.lever-valve.none.found': 'Versorgungen eines Wählschiebers bei einem Wählhebel, der keinen hat',
  'finding.lever-valve.none.expected': 'dieses Feld nicht, oder "valve": "manual"',
  'finding.rows-reached.found': 'Zeile "{id}" in keiner Stellung des Wählhebels',
  'finding.rows-reached.expected': 'eine Stellung, die sie anfordert',
  'finding.interlocks-allow.found': 'Zeile "{row}", in der sie Druck fernhielte von: {elements}',
  'finding.interlocks-allow.expected':
    'keine Zeile, in der alles aus "whenApplied" geschlossen ist und etwas aus "blocks" auch',
  'finding.interlocks-settle.found': 'ein Kreis von Verriegelungen: {circle}',
  'finding.interlocks-settle.expected':
    'kein Schaltelement, das über andere den Druck von sich selbst fernhält: ob es wirkt, ließe sich nicht sagen',
  'finding.positions-allow.closed.found': 'Zeile "{row}", aber hier ist gesperrt: {elements}',
  'finding.positions-allow.closed.expected':
    'eine freie Versorgung für jedes Schaltelement der Zeile, oder die Zeile anderswo',
  'finding.positions-allow.forced.found':
    'Zeile "{row}", aber von Hand versorgt und nicht in der Zeile: {elements}',
  'finding.positions-allow.forced.expected':
    'in jeder Zeile dieser Stellung, was der Wählschieber von Hand versorgt',
  'finding.unplugged-safe.tied-up.found':
    'ein Getriebe, das sich abgesteckt verspannt: Druck {count, plural, =0 {hat nichts} one {hat {elements}} other {haben {elements}}}',
  'finding.unplugged-safe.tied-up.expected':
    'ein Getriebe, das drehen kann; prüfe den Druck im abgesteckten Zustand und was der Wählschieber frei lässt',
  'finding.unplugged-safe.drives.found':
    'ein Getriebe, das hier abgesteckt mit {ratio} treibt: Druck {count, plural, =0 {hat nichts} one {hat {elements}} other {haben {elements}}}',
  'finding.unplugged-safe.drives.expected':
    'keinen Kraftschluss in einer Stellung ohne treibende Zeile; prüfe den Druck im abgesteckten Zustand und was der Wählschieber frei lässt',
  'finding.unplugged-safe.turned.found':
    'ein Getriebe, das hier abgesteckt mit {ratio} treibt, also andersherum: Druck {count, plural, =0 {hat nichts} one {hat {elements}} other {haben {elements}}}',
  'finding.unplugged-safe.turned.expected':
    'die Richtung seiner Zeilen, oder keinen Kraftschluss; prüfe den Druck im abgesteckten Zustand und was der Wählschieber frei lässt',
} as const;

const WORK = {
  'finding.sequence-acyclic.found': 'Schritte, die im Kreis aufeinander warten: {circle}',
  'finding.sequence-acyclic.expected': 'Beziehungen, die in irgendeiner Reihenfolge gehen',
  'finding.sequence-order.found': 'Schritt "{step}" vor "{before}" genannt, dem er folgen muss',
  'finding.sequence-order.expected': 'die Schritte in einer Reihenfolge, die geht',
} as const;

export const RULE_WORDS = { ...NAMES, ...TRAIN, ...CHART, ...OIL, ...WORK } as const;
