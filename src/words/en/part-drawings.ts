/** What is said of parts that are drawn: packs, seats, the shaft line, connectors and the valve body. */
export const PART_DRAWINGS = {
  'drawing.end.front': 'front',
  'drawing.end.rear': 'rear',

  'drawing.stack.title': 'Half section of the pack {stack}, thickness to scale',
  'drawing.stack.floor': 'Counted from the {floor}, which is at the {end} of the unit, up to the opening.',
  'drawing.stack.floor-caption': '{floor}, at the {end} of the unit',
  'drawing.stack.covered': 'covered',
  'drawing.stack.free': '{flat} flat, {free} free',
  'drawing.stack.plate':
    '{place, plural, =0 {No.} other {Place #: no.}} {position} from the floor, {name}{sized, select, yes {, {size}} other {}}{looks, select, step {, step} bevel {, bevel} dish {, hollow} lip {, lip} tab {, tab} other {}}{looks, select, none {} other {{towards, select, floor { towards the floor} other { towards the opening}}}}{lit, select, yes {, marked} other {}}.',

  'drawing.seat.title': 'Half section of seat {seat}',
  'drawing.seat.title-unnamed': 'Half section of a seat',
  'drawing.seat.face-title': 'The face seen from the {end}',
  'drawing.seat.face-caption': 'Seen from the {end}',
  'drawing.seat.no-scale': 'Not to scale.',
  'drawing.seat.pressure': 'pressure',
  'drawing.seat.neighbour': 'the neighbour',
  'drawing.seat.lies':
    'Half section along the axis. The front of the unit is {front, select, left {at the left} right {at the right} up {up} other {down}}.',
  'drawing.seat.covered': 'The part is covered.',
  'drawing.seat.kind-thrust-bearing': 'The part is a thrust bearing.',
  'drawing.seat.kind-thrust-washer': 'The part is a thrust washer.',
  'drawing.seat.kind-lip-seal': 'The part is a lip seal.',
  'drawing.seat.kind-sealing-ring': 'The part is a sealing ring.',
  'drawing.seat.size': 'Bore {inner}, outer diameter {outer}, thickness {thickness} {unit}.',
  'drawing.seat.side':
    '{place, plural, =0 {{end, select, front {To the front} other {To the rear}}} other {Place #: {end, select, front {to the front} other {to the rear}}}}, {touches}{rim, select, none {} inner {, which centres the part at its inner rim, {diameter}} other {, which centres the part at its outer rim, {diameter}}}{mark, select, none {} other {; the face that looks here: {text}}}{race, select, yes {; the closed race is on this side} other {}}{lip, select, yes {; the lip looks here} other {}}{pressure, select, yes {; pressure comes from here} other {}}.',
  'drawing.seat.face':
    '{marked, select, yes {Seen from the {end}: {mark}.} other {Seen from the {end} the part looks as from the other end.}}',
  'drawing.seat.note': '{end, select, front {To the front} other {To the rear}}: {mark}',

  'drawing.line.title': 'Shaft line pulled apart, not to scale',
  'drawing.line.lies': 'The front of the unit is {front, select, up {up} other {down}}. From front to rear:',
  'drawing.line.a-seat': 'A seat',
  'drawing.line.a-thrust-bearing': 'A thrust bearing',
  'drawing.line.a-thrust-washer': 'A thrust washer',
  'drawing.line.a-lip-seal': 'A lip seal',
  'drawing.line.a-sealing-ring': 'A sealing ring',
  'drawing.line.place':
    '{end, select, front {#{number}, its front side} rear {#{number}, its rear side} other {#{number}}}',
  'drawing.line.body':
    '{body}{numbered, select, yes {, place {places}} other {}}{lit, select, yes {, marked} other {}}.',
  'drawing.line.side':
    '{mark, select, yes {{text}} other {{race, select, yes {closed race} other {{lip, select, yes {lip} other {plain face}}}}}}{rim, select, none {} inner {, centred here at the inner rim} other {, centred here at the outer rim}}',
  'drawing.line.seat':
    '{name}{numbered, select, yes {, place {places}} other {}}{covered, select, yes {, covered} other {{sides, select, yes {: to the front {front}; to the rear {rear}} other {}}}}{lit, select, yes {, marked} other {}}.',

  'drawing.pin.ground': 'ground',
  'drawing.pin.spare': 'spare',
  'drawing.connector.title': 'Face of the {connector}',
  'drawing.connector.side':
    '{seen, select, unit {The connector on the unit, seen from outside.} other {The plug of the harness, seen into its face.}}',
  'drawing.connector.seen':
    '{seen, select, unit {The connector on the unit, seen from outside} other {The plug of the harness, seen into its face}}: {rows, plural, one {one row} other {# rows}} of {columns}.',
  'drawing.connector.row': 'Row {row}, from the left: {pins}.',
  'drawing.connector.at': '{pin} in column {column}',
  'drawing.connector.place': 'place {number}',
  'drawing.connector.pin': 'a pin',
  'drawing.connector.probes': 'The leads of the meter are on {from} and {to}.',
  'drawing.connector.lit': 'Marked: {pins}.',

  'drawing.circuit': 'Circuit',
  'drawing.circuit.title': 'Circuit of {solenoid}',
  'drawing.circuit.supply': 'supply',
  'drawing.circuit.ground': 'ground',
  'drawing.circuit.pin': 'pin of the controller',
  'drawing.circuit.winding': 'winding of {solenoid}',
  'drawing.circuit.controller': 'controller’s switch{driver, select, on {, closed} off {, open} other {}}',
  'drawing.circuit.low':
    'The winding of {solenoid} hangs on the supply. From it a wire runs to the controller’s pin, and behind the pin the controller’s switch leads to ground.',
  'drawing.circuit.high':
    'The controller’s switch leads from the supply to the controller’s pin. From the pin a wire runs to the winding of {solenoid}, which goes to ground.',
  'drawing.circuit.driver-on': 'The switch is closed.',
  'drawing.circuit.driver-off': 'The switch is open.',
  'drawing.circuit.open': 'The wire between pin and winding is broken.',
  'drawing.circuit.short-to-ground': 'The wire between pin and winding touches ground.',
  'drawing.circuit.short-to-supply': 'The wire between pin and winding touches the supply.',

  'drawing.valve-body.title': 'Solenoids of the valve body',
  'drawing.valve-body.names': 'Solenoid names',
  'drawing.valve-body.side': 'Seen {from}.',
  'drawing.valve-body.seen':
    'The face seen {from}: {rows, plural, one {one row} other {# rows}} of {columns}.',
  'drawing.valve-body.listed': 'In the order of the list: the deck does not say where they sit.',
  'drawing.valve-body.unnamed': 'a solenoid',
  'drawing.valve-body.solenoid':
    '{place, plural, =0 {Row} other {Place #, row}} {row}, column {column}: {name}{state, select, on {, current on} off {, current off} unplugged {, unplugged} other {}}{lit, select, yes {, marked} other {}}.',
  'drawing.valve-body.on': 'on',
  'drawing.valve-body.off': 'off',
  'drawing.valve-body.unplugged': 'unplugged',

  'drawing.window.aim-short': 'aim {aim}',

  'drawing.member.sun': 'sun',
  'drawing.member.ring': 'ring',
  'drawing.member.carrier': 'carrier',
  'drawing.speeds.title': 'Speeds in {range}, levers to scale',
  'drawing.speeds.open': 'open',
  'drawing.speeds.scale':
    'Speeds in {range}, {rpm, plural, =0 {the input turning at 1} other {in rpm, the input turning at {rpm}}}. Plus turns with the input.',
  'drawing.speeds.lever': '{set}: {nodes}.',
  'drawing.speeds.node':
    '{member} on {shaft} {state, select, known {{speed}} covered {covered} other {left open}}{lit, select, yes {, marked} other {}}',

  'drawing.steps.done': 'done',
} as const;
