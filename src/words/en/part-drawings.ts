/** What is said of parts that are drawn: packs, seats, the shaft line, connectors and the valve body. */
export const PART_DRAWINGS = {
  'drawing.end.front': 'front',
  'drawing.end.rear': 'rear',

  'drawing.plate.piston': 'piston',
  'drawing.plate.return-spring': 'return spring',
  'drawing.plate.apply': 'apply plate',
  'drawing.plate.friction': 'friction',
  'drawing.plate.steel': 'steel',
  'drawing.plate.waved': 'waved plate',
  'drawing.plate.dished': 'dished plate',
  'drawing.plate.separator': 'waved separator',
  'drawing.plate.backing': 'backing plate',
  'drawing.plate.washer': 'washer',
  'drawing.plate.snap-ring': 'snap ring',

  'drawing.stack.title': 'Half section of the pack {stack}, thickness to scale',
  'drawing.stack.floor': 'Counted from the {floor}, which is at the {end} of the unit, up to the opening.',
  'drawing.stack.floor-caption': '{floor}, at the {end} of the unit',
  'drawing.stack.covered': 'covered',
  'drawing.stack.free': '{flat} flat, {free} free',
  'drawing.stack.plate':
    '{place, plural, =0 {No.} other {Place #: no.}} {position} from the floor, {name}{sized, select, yes {, {size}} other {}}{looks, select, step {, step} bevel {, bevel} dish {, hollow} lip {, lip} tab {, tab} other {}}{looks, select, none {} other {{towards, select, floor { towards the floor} other { towards the opening}}}}{lit, select, yes {, marked} other {}}.',
} as const;
