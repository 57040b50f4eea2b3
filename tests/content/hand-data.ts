/** A little of everything that a deck can hold for the hands, without findings. Made up, figures by hand. */

// biome-ignore lint/suspicious/noExplicitAny: tests put anything anywhere in a deck
type Loose = any;

const mm = (value: string) => ({ value, unit: 'mm' });
const ohms = (value: string) => ({ value, unit: 'Ω' });
const celsius = (value: string) => ({ value, unit: '°C' });

export function addHandData(deck: Loose): void {
  // Radii, forces: made up. Two frictions, as in the stack below.
  deck.train.elements[0].capacity = {
    piston: { outer: mm('140'), inner: mm('80') },
    spring: { value: '900', unit: 'N' },
    frictions: 2,
    lining: { outer: mm('145'), inner: mm('115') },
    friction: '0.13',
    pressure: { value: '1000', unit: 'kPa' },
  };
  deck.shaftLine = [
    { id: 'pump' },
    { id: 'drum', belongsTo: ['element:C1'] },
    { id: 'carrier', belongsTo: ['gearset:Psmall'] },
  ];
  const bearing = { kind: 'thrust-bearing', viewedFrom: 'front' };
  deck.seats = [
    {
      ...bearing,
      id: 'T1',
      place: 1,
      faces: {
        A: { touches: 'pump', mark: 'closed race', pilot: { at: 'inner', diameter: mm('44.8') } },
        B: { touches: 'W2', mark: 'needles seen', pilot: { at: 'inner', diameter: mm('44.8') } },
      },
      race: 'A',
      turned: { goesIn: true, effect: 'The needles run on the pump.' },
      size: { inner: mm('45'), outer: mm('62'), thickness: mm('3.2') },
    },
    {
      id: 'W2',
      kind: 'thrust-washer',
      viewedFrom: 'front',
      place: 2,
      faces: { A: { touches: 'T1' }, B: { touches: 'drum' } },
      size: { inner: mm('45'), outer: mm('62'), thickness: mm('1.20') },
    },
    {
      id: 'L3',
      kind: 'lip-seal',
      viewedFrom: 'rear',
      place: 3,
      faces: {
        A: { touches: 'drum', mark: 'spring seen' },
        B: { touches: 'carrier', mark: 'flat', pilot: { at: 'outer', diameter: mm('70') } },
      },
      lip: 'A',
      pressure: 'A',
      size: { inner: mm('50'), outer: mm('70'), thickness: mm('8') },
    },
  ];
  // Height 0.9 + 2 × 1.8 + 2 × 1.6 + 5 + 1.6 = 14.3, so a room of 15.1 leaves 0.8.
  deck.stacks = [
    {
      id: 'clutch',
      element: 'C1',
      floor: 'drum floor',
      floorAt: 'rear',
      room: mm('15.1'),
      waves: 'flat',
      items: [
        { id: 'piston', kind: 'piston' },
        { id: 'cushion', kind: 'waved', thickness: mm('0.9'), free: mm('1.4') },
        { id: 'steel-1', kind: 'steel', thickness: mm('1.8'), identical: 'steel' },
        { id: 'friction-1', kind: 'friction', thickness: mm('1.6'), identical: 'friction' },
        { id: 'steel-2', kind: 'steel', thickness: mm('1.8'), identical: 'steel' },
        { id: 'friction-2', kind: 'friction', thickness: mm('1.6'), identical: 'friction' },
        { id: 'backing', kind: 'backing', thickness: mm('5.0') },
        { id: 'ring', kind: 'snap-ring', thickness: mm('1.6') },
      ],
    },
  ];
  deck.fits = [
    {
      id: 'end-play',
      kind: 'end-play',
      where: 'input shaft',
      method: 'depths',
      instrument: 'depth-gauge',
      limits: { low: mm('0.25'), high: mm('0.55') },
      aim: mm('0.40'),
      effect: 'closes',
      bar: mm('25.00'),
      gasket: mm('0.35'),
      seat: 'W2',
      parts: [
        { id: 'a', thickness: mm('0.60') },
        { id: 'b', thickness: mm('1.20') },
      ],
      // 38.42 - 37.81 + 0.35 = 0.96; with 0.60 in 0.36
      readings: [
        {
          id: 'bench',
          seat: { reading: mm('63.42'), overBar: true },
          standOff: { reading: mm('62.81'), overBar: true },
          chosen: 'a',
          result: mm('0.36'),
        },
      ],
    },
    {
      id: 'clearance',
      kind: 'clutch-clearance',
      where: 'under the snap ring',
      method: 'part-fitted',
      instrument: 'feeler',
      limits: { low: mm('0.6'), high: mm('1.0') },
      effect: 'closes',
      spread: mm('0.1'),
      stack: 'clutch',
      item: 'backing',
      parts: [
        { id: '48', thickness: mm('4.8') },
        { id: '50', thickness: mm('5.0') },
        { id: '52', thickness: mm('5.2') },
      ],
      // 1.1 with 5.0 in; 5.2 leaves 0.9
      readings: [{ id: 'bench', play: mm('1.1'), fitted: '50', chosen: '52', result: mm('0.9') }],
    },
  ];
  deck.sequences.push({
    id: 'drum',
    steps: [
      { id: 'ring-out', text: 'Ring out.', turned: 'Ring in.', tightens: 'pan', hazards: ['stored-energy'] },
      {
        id: 'plates-out',
        text: 'Plates out.',
        turned: 'Plates in.',
        after: [{ step: 'ring-out', reason: 'It holds them.' }],
      },
      {
        id: 'count',
        text: 'Count the plates.',
        after: [{ step: 'plates-out', reason: 'They must be out.' }],
      },
    ],
    assembly: {
      leftOut: [{ step: 'count', reason: 'They are known.' }],
      added: [{ id: 'measure', text: 'Measure.', after: [{ step: 'ring-out', reason: 'It closes it.' }] }],
    },
    checks: [
      {
        id: 'clearance',
        text: 'Clearance.',
        during: 'assembly',
        fit: 'clearance',
        needs: ['ring-out'],
        closedBy: [],
      },
    ],
  });
  deck.cautions.push({
    id: 'ring',
    hazard: 'stored-energy',
    text: 'Glasses on.',
    attachedTo: ['step:drum/ring-out', 'plate:clutch/ring'],
  });
  deck.valveBody = {
    rows: 1,
    columns: 3,
    seenFrom: 'from below, pan off',
    solenoids: [
      { solenoid: 'S1', row: 1, column: 1 },
      { solenoid: 'S2', row: 1, column: 3 },
    ],
  };
  deck.electrical = {
    supplies: [{ id: 'main' }],
    windings: [
      { solenoid: 'S1', at20: { low: ohms('5.0'), high: ohms('5.6') }, supply: 'main', switched: 'low' },
      { solenoid: 'S2', at20: { low: ohms('11'), high: ohms('15') }, supply: 'main', switched: 'low' },
    ],
    pickups: [
      { sensor: 'input-speed', kind: 'hall', supply: 'main' },
      { sensor: 'output-speed', kind: 'coil', at20: { low: ohms('560'), high: ohms('680') } },
    ],
    thermistors: [
      {
        id: 'oil',
        sense: 'falls',
        points: [
          { at: celsius('10'), ohms: { low: ohms('5587'), high: ohms('7303') } },
          { at: celsius('40'), ohms: { low: ohms('1800'), high: ohms('2200') } },
          { at: celsius('80'), ohms: { low: ohms('450'), high: ohms('550') } },
        ],
      },
    ],
    connectors: [
      {
        id: 'case',
        rows: 2,
        columns: 3,
        seenFrom: 'unit',
        pins: [
          { id: '1', row: 1, column: 1, serves: 'supply:main' },
          { id: '2', row: 1, column: 2, serves: 'solenoid:S1' },
          { id: '3', row: 1, column: 3, serves: 'solenoid:S2' },
          { id: '4', row: 2, column: 1, serves: 'sensor:input-speed' },
          { id: '5', row: 2, column: 2, serves: 'sensor:output-speed' },
          { id: '6', row: 2, column: 3, serves: 'thermistor:oil' },
        ],
      },
    ],
  };
  deck.fluids = [
    {
      id: 'oil',
      type: 'the approved fluid',
      dryFill: { value: '9.5', unit: 'L' },
      levelAt: { low: celsius('30'), high: celsius('50') },
    },
  ];
  deck.torques = [{ id: 'pan', torque: { value: '11', unit: 'N·m' }, count: 13 }];
  deck.weights = [{ id: 'unit', mass: { value: '78', unit: 'kg' } }];
  deck.codes = [
    { id: 'P0752', kind: 'stuck-on', letter: 'A', watches: ['solenoid:S1'], meaning: 'Stays on.' },
    { id: 'P0733', kind: 'ratio', watches: ['range:3'], meaning: 'Range 3 has another ratio.' },
  ];
  deck.aliases = [{ of: 'element:C1', names: ['K1', 'forward pack'] }];
}
