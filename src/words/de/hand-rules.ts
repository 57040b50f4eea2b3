/** What the rules find in the data for the hands, in German: seats, stacks, fits, steps, wires. See findings.ts. */
const NAMES = {
  'finding.things-exist.found': '"{ref}", das der Datensatz nicht hat',
  'finding.things-exist.expected':
    'etwas aus diesem Datensatz, Art und Kürzel: "element:C1", "solenoid:S1", "sensor:output-speed"',
  'finding.records-exist.stack.found': 'ein Paket "{id}", das der Datensatz nicht hat',
  'finding.records-exist.stack.expected':
    '{count, plural, =0 {ein Paket mit diesem Kürzel} other {eines von {known}}}',
  'finding.records-exist.plate.found': 'eine Lamelle "{id}", die dieses Paket nicht hat',
  'finding.records-exist.plate.expected': 'eine von {known}',
  'finding.records-exist.seat.found': 'ein Einbauplatz "{id}", den der Datensatz nicht hat',
  'finding.records-exist.seat.expected':
    '{count, plural, =0 {ein Einbauplatz mit diesem Kürzel} other {einer von {known}}}',
  'finding.records-exist.part.found': 'ein Teil "{id}", das nicht auf der Liste dieses Einstellmaßes steht',
  'finding.records-exist.part.expected':
    '{count, plural, =0 {eine Liste von Auswahlteilen} other {eines von {known}}}',
  'finding.records-exist.solenoid.found': 'ein Magnetventil "{id}", das der Datensatz nicht hat',
  'finding.records-exist.solenoid.expected':
    '{count, plural, =0 {ein Magnetventil mit diesem Kürzel} other {eines von {known}}}',
  'finding.records-exist.sensor.found': 'ein Sensor "{id}", den der Datensatz nicht hat',
  'finding.records-exist.sensor.expected':
    '{count, plural, =0 {ein Sensor mit diesem Kürzel} other {einer von {known}}}',
  'finding.records-exist.supply.found': 'eine Versorgung "{id}", die der Datensatz nicht hat',
  'finding.records-exist.supply.expected':
    '{count, plural, =0 {eine Versorgung mit diesem Kürzel} other {eine von {known}}}',
  'finding.records-exist.torque.found': 'ein Anzugsmoment "{id}", das der Datensatz nicht nennt',
  'finding.records-exist.torque.expected':
    '{count, plural, =0 {ein Anzugsmoment mit diesem Kürzel} other {eines von {known}}}',
  'finding.records-exist.fit.found': 'ein Einstellmaß "{id}", das der Datensatz nicht hat',
  'finding.records-exist.fit.expected':
    '{count, plural, =0 {ein Einstellmaß mit diesem Kürzel} other {eines von {known}}}',
  'finding.aliases-clear.found': 'der Name "{name}", den auch {other} hat',
  'finding.aliases-clear.expected': 'ein Name, der nur eines bezeichnet',
} as const;

const AMOUNTS = {
  'finding.bands-ordered.found': 'unteres Ende {low} und oberes Ende {high}',
  'finding.bands-ordered.expected': 'ein unteres Ende unter dem oberen',
  'finding.inner-smaller.found': 'Innendurchmesser {inner} und Außendurchmesser {outer}',
  'finding.inner-smaller.expected': 'ein Innendurchmesser, der kleiner ist als der äußere',
} as const;

const SEATS = {
  'finding.seats-touch.unknown.found': '"{id}", weder ein Teil des Wellenstrangs noch ein Einbauplatz',
  'finding.seats-touch.unknown.expected':
    '{count, plural, =0 {ein Wellenstrang, an dem es liegt} other {eines von {known}, oder ein anderer Einbauplatz}}',
  'finding.seats-touch.itself.found': 'ein Einbauplatz, der an sich selbst liegt',
  'finding.seats-touch.itself.expected': 'woran diese Seite liegt',
  'finding.seats-touch.both.found': 'beide Seiten an "{id}"',
  'finding.seats-touch.both.expected': 'auf jeder Seite ein anderer Nachbar',
  'finding.seats-touch.one-sided.found':
    'Einbauplatz "{id}", der nach seinem eigenen Eintrag nicht an "{seat}" liegt',
  'finding.seats-touch.one-sided.expected': 'dass zwei Einbauplätze, die aneinander liegen, es beide sagen',
  'finding.seats-placed.found': 'Platz {place, number}, den schon Einbauplatz "{other}" hat',
  'finding.seats-placed.expected': 'eine eigene Nummer, von vorn gezählt',
  'finding.seats-in-line.found':
    'Platz {place, number} nach Einbauplatz "{other}", obwohl er im Wellenstrang weiter vorn liegt',
  'finding.seats-in-line.expected': 'Plätze von vorn nach hinten gezählt; prüfe die Nachbarn',
  'finding.seat-faces.one-mark.found': 'kein Merkmal an dieser Seite, aber eines an der anderen',
  'finding.seat-faces.one-mark.expected':
    'ein Merkmal an beiden Seiten, oder an keiner, wenn sie gleich sind',
  'finding.seat-faces.same-mark.found': 'das gleiche Merkmal an beiden Seiten',
  'finding.seat-faces.same-mark.expected': 'Merkmale, die sie unterscheiden, oder keine',
  'finding.seat-faces.alike.found': '"{field}" an einem Teil, dessen Seiten keine Merkmale haben',
  'finding.seat-faces.alike.expected': 'Merkmale, die die Seiten unterscheiden, oder dieses Feld nicht',
  'finding.seat-faces.kind.found': '"{field}" bei der Art {kind}',
  'finding.seat-faces.kind.expected': 'das nur bei der Art {needed}',
  'finding.seat-pilots.inner.found': 'ein Absatz von {diameter} in einer Bohrung von {own}',
  'finding.seat-pilots.inner.expected': 'ein Absatz, der nicht breiter ist als die Bohrung',
  'finding.seat-pilots.outer.found': 'eine Aufnahme von {diameter} für ein Teil, das {own} breit ist',
  'finding.seat-pilots.outer.expected': 'eine Aufnahme, die nicht enger ist als das Teil',
  'finding.seat-pilots.alike.found':
    'ein Teil, das verkehrt herum nicht hineingeht, obwohl beide Seiten mit {a} zentrieren',
  'finding.seat-pilots.alike.expected':
    'zwei Zentrierdurchmesser, oder true: auf beiden Seiten gleich geht es in beiden Richtungen hinein',
  'finding.seat-pilots.differ.found':
    'ein Teil, das verkehrt herum hineingeht, obwohl seine Seiten mit {a} und {b} zentrieren',
  'finding.seat-pilots.differ.expected':
    'ein Zentrierdurchmesser, oder false: es geht nur in einer Richtung hinein',
  'finding.lip-faces-pressure.found': 'eine Lippe auf Seite {lip} und Druck von Seite {pressure}',
  'finding.lip-faces-pressure.expected':
    'die Lippe dort, wo der Druck ist; lass es, wenn das Getriebe so gebaut ist, mit einer Anmerkung',
} as const;

const STACKS = {
  'finding.plates-measured.thickness.found': 'keine Dicke bei einer Lamelle der Art {kind}',
  'finding.plates-measured.thickness.expected': 'ihre Dicke: sie braucht Raum im Paket',
  'finding.plates-measured.free.found': 'keine freie Höhe bei einer Lamelle der Art {kind}',
  'finding.plates-measured.free.expected': 'ihre Höhe ohne Last',
  'finding.plates-measured.flat.found': 'eine freie Höhe bei einer Lamelle der Art {kind}',
  'finding.plates-measured.flat.expected': 'das nur bei Wellfedern und Tellerfedern',
  'finding.plates-measured.waves.found': 'keine Angabe, wie Wellfedern und Tellerfedern zählen',
  'finding.plates-measured.waves.expected': '"waves": "flat" oder "free", so wie das Lüftspiel gemessen wird',
  'finding.waves-higher.found': 'freie Höhe {free} bei einer Lamelle, die flach {flat} dick ist',
  'finding.waves-higher.expected': 'eine freie Höhe über der flachen',
  'finding.identical-alike.alone.found': 'das Wort "{word}" nur an einer Lamelle',
  'finding.identical-alike.alone.expected': 'das an jeder Lamelle des Pakets, die dieser gleicht',
  'finding.identical-alike.differ.found':
    'eine Lamelle gleich "{other}", die sich davon in "{property}" unterscheidet',
  'finding.identical-alike.differ.expected': 'Lamellen, die Plätze tauschen dürfen, oder ein anderes Wort',
  'finding.identical-marked.found': 'eine Lamelle, die nichts von "{other}" unterscheidet',
  'finding.identical-marked.expected': 'ein Wort in "identical" an beiden, oder was sie unterscheidet',
  'finding.frictions-faced.found': 'Belaglamelle "{id}", die auf einer Seite keine Lamelle zum Reiben hat',
  'finding.frictions-faced.expected': 'auf beiden Seiten eine Stahllamelle, Drucklamelle oder Endlamelle',
  'finding.stack-room.found': 'ein Raum von {room}, {by} mm weniger, als die Lamellen hoch sind',
  'finding.stack-room.expected': 'Lamellen, die hineingehen; suche eine zu viel oder eine falsche Tiefe',
  'finding.capacity-agrees.one-way.found': 'Angaben zum Halten an einem Freilauf',
  'finding.capacity-agrees.one-way.expected': 'das nur an Bremsen und Kupplungen',
  'finding.capacity-agrees.frictions.found': '{stated, number} Belaglamellen',
  'finding.capacity-agrees.frictions.expected': '{counted, number}, wie in Paket "{stack}"',
} as const;

const FITS = {
  'finding.fit-place.item.found': 'eine Lamelle, ohne dass ein Paket genannt ist',
  'finding.fit-place.item.expected': 'das Paket, in dem sie ist',
  'finding.fit-place.two.found': 'eine Lamelle und ein Einbauplatz',
  'finding.fit-place.two.expected': 'das eine, dessen Dicke gewählt wird',
  'finding.fit-place.stack.found': 'ein Lüftspiel, ohne dass ein Paket genannt ist',
  'finding.fit-place.stack.expected': 'das Paket, in dem es gemessen wird',
  'finding.fit-one-unit.found': '{length} in einem Einstellmaß, dessen Grenzen in {unit} stehen',
  'finding.fit-one-unit.expected': 'eine Maßeinheit im Einstellmaß: die, in der gemessen wird',
  'finding.aim-in-limits.found': 'ein Zielwert von {aim}',
  'finding.aim-in-limits.expected': 'ein Spiel von {low} bis {high}',
  'finding.selective-sorted.found': 'ein Teil mit {thickness} nach einem mit {before}',
  'finding.selective-sorted.expected': 'jedes Teil einmal, das dünnste zuerst',
  'finding.selective-listed.found':
    'eine Liste mit {parts}; was sie auswählt, ist mit {thickness} eingetragen',
  'finding.selective-listed.expected': 'diese Dicke auf der Liste, oder eine der Liste im Eintrag',
  'finding.clearance-in-limits.found':
    'Grenzen {low} bis {high}, aber die Lamellen von Paket "{stack}" lassen {clearance} mm',
  'finding.clearance-in-limits.expected': 'ein Lüftspiel in den Grenzen; prüfe Lamellen, Raum und Grenzen',
  'finding.readings-complete.missing.found': 'kein "{field}"',
  'finding.readings-complete.missing.expected': 'das: die Messart "{method}" braucht es',
  'finding.readings-complete.extra.found': '"{field}" in einer Messung der Messart "{method}"',
  'finding.readings-complete.extra.expected': 'nur, was die Messart braucht',
  'finding.readings-complete.bar.found': 'eine Tiefe, über eine Messbrücke gemessen',
  'finding.readings-complete.bar.expected': 'die Höhe der Messbrücke im Einstellmaß, als "bar"',
  'finding.readings-complete.half.found':
    'ein gewähltes Teil ohne Ergebnis, oder ein Ergebnis ohne gewähltes Teil',
  'finding.readings-complete.half.expected': '"chosen" und "result", oder keines von beiden',
  'finding.readings-possible.overlap.found': 'Tiefen, bei denen sich die Teile um {by} überschneiden',
  'finding.readings-possible.overlap.expected':
    'ein Sitz, der tiefer ist als das, was hineinragt; miss beides noch einmal',
  'finding.readings-possible.bar.found':
    'eine Tiefe, die kleiner ist als die Messbrücke, über die gemessen wurde',
  'finding.readings-possible.bar.expected': 'eine Tiefe, in der die Messbrücke steckt',
  'finding.readings-possible.below.found':
    'ein Spiel von {bare} ohne Auswahlteil, weniger als die Grenzen verlangen',
  'finding.readings-possible.below.expected': 'mehr: ein Teil kann nur davon wegnehmen. Miss noch einmal',
  'finding.readings-possible.above.found':
    'ein Spiel von {bare} ohne Auswahlteil, mehr als die Grenzen erlauben',
  'finding.readings-possible.above.expected': 'weniger: ein Teil kann nur dazugeben. Miss noch einmal',
  'finding.effect-proved.other-way.found':
    'ein Ergebnis von {result}, als täte ein dickeres Teil das Gegenteil',
  'finding.effect-proved.other-way.expected':
    '{play}, denn ein dickeres Teil macht das Spiel {effect, select, closes {kleiner} other {größer}}; prüfe "effect"',
  'finding.effect-proved.differs.found': 'ein Ergebnis von {result}',
  'finding.effect-proved.differs.expected': '{play} nach den anderen Zahlen der Messung',
  'finding.effect-proved.outside.found':
    'ein Ergebnis von {result}, außerhalb der Grenzen desselben Einstellmaßes',
  'finding.effect-proved.outside.expected': 'ein gewähltes Teil, das das Spiel in die Grenzen bringt',
} as const;

const WORK = {
  'finding.assembly-works.circle.found':
    'ein Zusammenbau, dessen Schritte im Kreis aufeinander warten: {circle}',
  'finding.assembly-works.circle.expected': 'Ausnahmen, die in irgendeiner Reihenfolge gehen',
  'finding.assembly-works.lifted-unknown.found':
    'eine aufgehobene Beziehung "{earlier}" vor "{later}", die der Zusammenbau nicht hat',
  'finding.assembly-works.lifted-unknown.expected':
    'die zwei Schritte in der Reihenfolge des Zusammenbaus, von denen beim Zerlegen einer direkt auf den anderen folgt',
  'finding.assembly-works.lifted-still-implied.found':
    'eine aufgehobene Beziehung "{earlier}" vor "{later}", die andere Beziehungen noch verlangen',
  'finding.assembly-works.lifted-still-implied.expected':
    'alle Beziehungen zwischen den beiden aufgehoben, oder keine',
  'finding.assembly-worded.missing.found':
    'kein "turned" bei Schritt "{id}", der auch beim Zusammenbau getan wird',
  'finding.assembly-worded.missing.expected': 'was dann getan wird, oder der Schritt unter "leftOut"',
  'finding.assembly-worded.extra.found': '"turned" bei Schritt "{id}", der beim Zusammenbau nicht getan wird',
  'finding.assembly-worded.extra.expected': 'dieses Feld nicht',
  'finding.checks-possible.never.found':
    'eine Kontrolle, die Schritt "{step}" braucht, der sie unmöglich macht',
  'finding.checks-possible.never.expected': 'eine Kontrolle, die irgendwann möglich ist',
  'finding.checks-possible.not-turned.found': 'eine Kontrolle beim Zusammenbau, aber kein "assembly"',
  'finding.checks-possible.not-turned.expected': 'ein "assembly" in der Arbeitsfolge, oder "during": "strip"',
  'finding.step-torque.found': 'ein eigenes Anzugsmoment und daneben "{tightens}"',
  'finding.step-torque.expected': 'eines von beiden',
  'finding.hazards-cautioned.found': 'die Gefahr {hazard} ohne Warnhinweis dazu',
  'finding.hazards-cautioned.expected': 'ein Warnhinweis zu dieser Gefahr, angehängt an "{ref}"',
} as const;

const WIRES = {
  'finding.solenoids-placed.outside.found':
    'ein Magnetventil in Reihe {row, number}, Spalte {column, number}',
  'finding.solenoids-placed.outside.expected':
    'ein Platz auf einer Fläche mit {rows, plural, one {einer Reihe} other {# Reihen}} und {columns, plural, one {einer Spalte} other {# Spalten}}',
  'finding.solenoids-placed.taken.found':
    'ein Magnetventil in Reihe {row, number}, Spalte {column, number}, wo schon "{other}" sitzt',
  'finding.solenoids-placed.taken.expected': 'ein eigener Platz',
  'finding.solenoids-placed.twice.found': 'ein zweiter Platz dafür',
  'finding.solenoids-placed.twice.expected': 'ein Platz',
  'finding.pins-placed.outside.found': 'ein Pin in Reihe {row, number}, Spalte {column, number}',
  'finding.pins-placed.outside.expected':
    'ein Platz auf einer Fläche mit {rows, plural, one {einer Reihe} other {# Reihen}} und {columns, plural, one {einer Spalte} other {# Spalten}}',
  'finding.pins-placed.taken.found':
    'ein Pin in Reihe {row, number}, Spalte {column, number}, wo schon Pin "{other}" sitzt',
  'finding.pins-placed.taken.expected': 'ein eigener Platz',
  'finding.pins-complete.found': 'kein Pin für "{what}"',
  'finding.pins-complete.expected': 'ein Pin dafür, oder der Stecker, an dem es herauskommt',
  'finding.pickup-kind.coil.found': 'eine Spule ohne Widerstand',
  'finding.pickup-kind.coil.expected': 'ihr Widerstand bei 20 °C, als "at20"',
  'finding.pickup-kind.hall.found': 'ein Hallsensor ohne Versorgung',
  'finding.pickup-kind.hall.expected': 'die Versorgung, die er braucht',
  'finding.pickup-kind.extra.found': '"{field}" an einem Sensor der Art {kind}',
  'finding.pickup-kind.extra.expected':
    '{kind, select, coil {eine Spule ohne Versorgung} other {kein Widerstand: ein Hallsensor hat keine messbare Wicklung}}',
  'finding.thermistor-sense.wrong-sense.found':
    'ein Widerstand bei {at}, der anders läuft als die übrigen, klar getrennt vom vorigen',
  'finding.thermistor-sense.wrong-sense.expected':
    'ein Widerstand, der mit der Wärme {sense, select, falls {fällt} other {steigt}}; suche einen Tippfehler',
  'finding.thermistor-sense.temperatures-equal.found': 'die Temperatur {at} ein zweites Mal',
  'finding.thermistor-sense.temperatures-equal.expected': 'jede Temperatur einmal',
  'finding.codes-watch.range.found': '"{ref}", überwacht von einem Code der Art {kind}',
  'finding.codes-watch.range.expected': 'ein Teil; Gänge werden von Codes der Art ratio überwacht',
  'finding.codes-watch.part.found': '"{ref}", überwacht von einem Code der Art {kind}',
  'finding.codes-watch.part.expected': 'Gänge: "range:3"',
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
