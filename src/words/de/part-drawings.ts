/** What is said of parts that are drawn, in German: packs, seats, the shaft line, connectors, the valve body. */
export const PART_DRAWINGS = {
  'drawing.end.front': 'vorn',
  'drawing.end.rear': 'hinten',

  'drawing.stack.title': 'Halbschnitt des Pakets {stack}, Dicken maßstäblich',
  'drawing.stack.floor': 'Gezählt ab {floor} (am Getriebe {end}) bis zur Öffnung.',
  'drawing.stack.floor-caption': '{floor}, am Getriebe {end}',
  'drawing.stack.covered': 'verdeckt',
  'drawing.stack.free': '{flat} flach, {free} frei',
  'drawing.stack.plate':
    '{place, plural, =0 {Nr.} other {Stelle #: Nr.}} {position} vom Boden, {name}{sized, select, yes {, {size}} other {}}{looks, select, step {, Absatz} bevel {, Fase} dish {, hohl} lip {, Lippe} tab {, Nase} other {}}{looks, select, none {} other {{towards, select, floor { zum Boden} other { zur Öffnung}}}}{lit, select, yes {, markiert} other {}}.',

  'drawing.seat.title': 'Halbschnitt des Einbauplatzes {seat}',
  'drawing.seat.title-unnamed': 'Halbschnitt eines Einbauplatzes',
  'drawing.seat.face-title': 'Die Seite, von {end} gesehen',
  'drawing.seat.face-caption': 'Von {end} gesehen',
  'drawing.seat.no-scale': 'Nicht maßstäblich.',
  'drawing.seat.pressure': 'Druck',
  'drawing.seat.neighbour': 'der Nachbar',
  'drawing.seat.lies':
    'Halbschnitt entlang der Achse. Das Getriebe ist mit der vorderen Seite {front, select, left {links} right {rechts} up {oben} other {unten}} gezeichnet.',
  'drawing.seat.covered': 'Das Teil ist verdeckt.',
  'drawing.seat.kind-thrust-bearing': 'Das Teil ist ein Axiallager.',
  'drawing.seat.kind-thrust-washer': 'Das Teil ist eine Anlaufscheibe.',
  'drawing.seat.kind-lip-seal': 'Das Teil ist ein Wellendichtring.',
  'drawing.seat.kind-sealing-ring': 'Das Teil ist ein Rechteckdichtring.',
  'drawing.seat.size': 'Bohrung {inner}, Außendurchmesser {outer}, Dicke {thickness} {unit}.',
  'drawing.seat.side':
    '{place, plural, =0 {{end, select, front {Nach vorn} other {Nach hinten}}} other {Stelle #: {end, select, front {nach vorn} other {nach hinten}}}}, {touches}{rim, select, none {} inner {, zentriert das Teil am Innenrand, {diameter}} other {, zentriert das Teil am Außenrand, {diameter}}}{mark, select, none {} other {; die Seite, die hierher zeigt: {text}}}{race, select, yes {; die geschlossene Laufscheibe ist auf dieser Seite} other {}}{lip, select, yes {; die Dichtlippe zeigt hierher} other {}}{pressure, select, yes {; der Druck kommt von hier} other {}}.',
  'drawing.seat.face':
    '{marked, select, yes {Von {end} gesehen: {mark}.} other {Von {end} gesehen sieht das Teil aus wie vom anderen Ende.}}',
  'drawing.seat.note': '{end, select, front {Nach vorn} other {Nach hinten}}: {mark}',

  'drawing.line.title': 'Wellenstrang auseinandergezogen, nicht maßstäblich',
  'drawing.line.lies': 'Vorn am Getriebe ist {front, select, up {oben} other {unten}}. Von vorn nach hinten:',
  'drawing.line.a-seat': 'Ein Einbauplatz',
  'drawing.line.a-thrust-bearing': 'Ein Axiallager',
  'drawing.line.a-thrust-washer': 'Eine Anlaufscheibe',
  'drawing.line.a-lip-seal': 'Ein Wellendichtring',
  'drawing.line.a-sealing-ring': 'Ein Rechteckdichtring',
  'drawing.line.place':
    '{end, select, front {#{number}, die vordere Seite} rear {#{number}, die hintere Seite} other {#{number}}}',
  'drawing.line.body':
    '{body}{numbered, select, yes {, Stelle {places}} other {}}{lit, select, yes {, markiert} other {}}.',
  'drawing.line.side':
    '{mark, select, yes {{text}} other {{race, select, yes {geschlossene Laufscheibe} other {{lip, select, yes {Dichtlippe} other {glatte Seite}}}}}}{rim, select, none {} inner {, hier am Innenrand zentriert} other {, hier am Außenrand zentriert}}',
  'drawing.line.seat':
    '{name}{numbered, select, yes {, Stelle {places}} other {}}{covered, select, yes {, verdeckt} other {{sides, select, yes {: nach vorn {front}; nach hinten {rear}} other {}}}}{lit, select, yes {, markiert} other {}}.',

  'drawing.pin.ground': 'Masse',
  'drawing.pin.spare': 'frei',
  'drawing.connector.title': 'Steckseite: {connector}',
  'drawing.connector.side':
    '{seen, select, unit {Der Stecker am Getriebe, von außen gesehen.} other {Der Stecker des Kabelbaums, auf die Steckseite gesehen.}}',
  'drawing.connector.seen':
    '{seen, select, unit {Der Stecker am Getriebe, von außen gesehen} other {Der Stecker des Kabelbaums, auf die Steckseite gesehen}}: {rows, plural, one {eine Reihe} other {# Reihen}} zu {columns}.',
  'drawing.connector.row': 'Reihe {row}, von links: {pins}.',
  'drawing.connector.at': '{pin} in Spalte {column}',
  'drawing.connector.place': 'Stelle {number}',
  'drawing.connector.pin': 'ein Pin',
  'drawing.connector.probes': 'Die Messspitzen liegen an {from} und {to}.',
  'drawing.connector.lit': 'Markiert: {pins}.',

  'drawing.circuit': 'Stromkreis',
  'drawing.circuit.title': 'Stromkreis von {solenoid}',
  'drawing.circuit.supply': 'Versorgung',
  'drawing.circuit.ground': 'Masse',
  'drawing.circuit.pin': 'Pin des Steuergeräts',
  'drawing.circuit.winding': 'Wicklung von {solenoid}',
  'drawing.circuit.controller':
    'Schalter des Steuergeräts{driver, select, on {, geschlossen} off {, offen} other {}}',
  'drawing.circuit.low':
    'Die Wicklung von {solenoid} hängt an der Versorgung. Von ihr führt eine Leitung zum Pin des Steuergeräts, und hinter dem Pin führt der Schalter des Steuergeräts zur Masse.',
  'drawing.circuit.high':
    'Der Schalter des Steuergeräts führt von der Versorgung zum Pin des Steuergeräts. Vom Pin führt eine Leitung zur Wicklung von {solenoid}, die an Masse liegt.',
  'drawing.circuit.driver-on': 'Der Schalter ist geschlossen.',
  'drawing.circuit.driver-off': 'Der Schalter ist offen.',
  'drawing.circuit.open': 'Die Leitung zwischen Pin und Wicklung ist gebrochen.',
  'drawing.circuit.short-to-ground': 'Die Leitung zwischen Pin und Wicklung berührt Masse.',
  'drawing.circuit.short-to-supply': 'Die Leitung zwischen Pin und Wicklung berührt die Versorgung.',

  'drawing.valve-body.title': 'Magnetventile am Schieberkasten',
  'drawing.valve-body.names': 'Namen der Magnetventile',
  'drawing.valve-body.side': 'Blickrichtung: {from}.',
  'drawing.valve-body.seen':
    'Die Fläche, Blickrichtung {from}: {rows, plural, one {eine Reihe} other {# Reihen}} zu {columns}.',
  'drawing.valve-body.listed': 'In der Reihenfolge der Liste: der Datensatz sagt nicht, wo sie sitzen.',
  'drawing.valve-body.unnamed': 'ein Magnetventil',
  'drawing.valve-body.solenoid':
    '{place, plural, =0 {Reihe} other {Stelle #, Reihe}} {row}, Spalte {column}: {name}{state, select, on {, Strom an} off {, Strom aus} unplugged {, abgesteckt} other {}}{lit, select, yes {, markiert} other {}}.',
  'drawing.valve-body.on': 'an',
  'drawing.valve-body.off': 'aus',
  'drawing.valve-body.unplugged': 'abgesteckt',

  'drawing.window.aim-short': 'Ziel {aim}',

  'drawing.member.sun': 'Sonnenrad',
  'drawing.member.ring': 'Hohlrad',
  'drawing.member.carrier': 'Steg',
  'drawing.speeds.title': 'Drehzahlen in {range}, Hebel maßstäblich',
  'drawing.speeds.open': 'frei',
  'drawing.speeds.scale':
    'Drehzahlen in {range}, {rpm, plural, =0 {der Antrieb dreht mit 1} other {in U/min, der Antrieb dreht mit {rpm}}}. Plus dreht mit dem Antrieb.',
  'drawing.speeds.lever': '{set}: {nodes}.',
  'drawing.speeds.node':
    '{member} auf {shaft} {state, select, known {{speed}} covered {verdeckt} other {frei}}{lit, select, yes {, markiert} other {}}',

  'drawing.steps.done': 'getan',
} as const;
