/** Questions on pressure, force and the torque that packs hold. */
export const PRESSURE = {
  'pressure.area':
    '{inner, select, none {π ÷ 4 × {outer}²} other {π ÷ 4 × ({outer}² − {inner}²)}} = {area} {unit}² of piston.',
  'pressure.units-mm': 'kPa on mm² are thousandths of a newton; N times mm are thousandths of N·m.',
  'pressure.units-in': 'psi on in² are lbf; lbf times in are lbf·in, twelve to the lbf·ft.',

  'family.piston-force': 'Force of a piston',
  'piston-force.prompt':
    '{element}: apply piston {outer} across{inner, select, none {} other {, its hole {inner}}}, return spring {spring}. The gauge shows {gauge} {gaugeUnit}. How hard does the piston press the plates, in {unit}? Oil that spins along is left out. Within {tolerance} is right.',
  'piston-force.reason':
    'Pressure times that is {open} {unit}; less the spring, {spring}, leaves {force} {unit}.',

  'family.clutch-torque': 'Torque a pack holds',
  'clutch-torque.prompt':
    '{element}: apply piston {outer} across{inner, select, none {} other {, its hole {inner}}}, return spring {spring}; {frictions} frictions, lining {liningOuter} outside and {liningInner} inside across, coefficient {friction}. The gauge shows {gauge} {gaugeUnit}. How much torque does it hold, in {unit}? Take the friction at the middle of the lining, spinning oil left out. Within {tolerance} is right.',
  'clutch-torque.row':
    '{faces} faces × {friction} × {force} {forceUnit} × {radius} {length} = {torque} {unit}.',
  'clutch-torque.reason': '{frictions} frictions have {faces} faces between them, and each face holds alike.',
  'clutch-torque.force': 'Pressure times that, less the spring {spring}: {force} {unit} on the plates.',
  'clutch-torque.radius': 'Middle of the lining: ({outer} + {inner}) ÷ 4 = {radius} {unit} from the centre.',

  'family.pressure-needed': 'Pressure an element needs',
  'pressure-needed.prompt':
    'In range {range}, {element} carries {torque} {torqueUnit}. Apply piston {outer} across{inner, select, none {} other {, its hole {inner}}}, return spring {spring}; {frictions} frictions, lining {liningOuter} outside and {liningInner} inside across, coefficient {friction}. What pressure does it need so as not to slip, in {unit}? Take the friction at the middle of the lining, spinning oil left out. Within {tolerance} is right.',
  'pressure-needed.row':
    '{torque} {torqueUnit} over {faces} faces, {friction} and the middle of the lining asks for {force} {forceUnit}.',
  'pressure-needed.reason':
    '{force} for the plates and {spring} for the spring are {sum} {forceUnit}; over the area that is {pressure} {unit}.',
  'pressure-needed.input':
    'It carries that with {input} {unit} on the input: {torque} {unit}, from the teeth.',

  'family.tap-pressures': 'What the gauges show',
  'tap-pressures.prompt':
    'Range {range} is commanded{lever, select, yes { with the lever in {position}} other {}}, and the plug of {solenoid} is off. What does a gauge show at the tap of each element?',
  'tap-pressures.gauge': 'Gauge',
  'tap-pressures.shows-full': 'line pressure',
  'tap-pressures.shows-none': 'nothing',
  'tap-pressures.reason': '{solenoid} feeds {elements}; everything else stays as the row has it.',
  'tap-pressures.line-charted':
    '{element}: {pressure, select, full {on in range {range}, so line pressure} other {off in range {range}, so nothing}}.',
  'tap-pressures.line-dead':
    '{element}: fed by {solenoid}, which gives {pressure, select, full {line pressure} other {nothing}} with no current.',
  'tap-pressures.line-valve':
    '{element}: {pressure, select, full {fed by the manual valve itself in {position}} other {cut off by the manual valve in {position}}}.',
} as const;
