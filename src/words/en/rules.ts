/** What the rules of src/content/rules find in a deck. See findings.ts for how they are said. */
const NAMES = {
  'finding.ids-unique.found': 'the id "{id}" a second time',
  'finding.ids-unique.expected': 'another id: entry {first} has this one already',
  'finding.names-reserved.found': 'an element called "{id}"',
  'finding.names-reserved.expected': 'another id: {reserved} are kept for other things',
  'finding.listed-once.found': '"{id}" a second time in the list',
  'finding.listed-once.expected': 'it once',
  'finding.sources-exist.found': 'a source "{id}" that the deck does not list',
  'finding.sources-exist.expected':
    '{count, plural, =0 {a source of that id in "sources"} other {one of {known}}}',
  'finding.shafts-exist.unknown.found': 'a shaft "{id}" that no gearset or element sits on',
  'finding.shafts-exist.unknown.expected':
    '{count, plural, =0 {a shaft of the train} other {one of {known}}}',
  'finding.shafts-exist.case.found': 'the case, which does not turn',
  'finding.shafts-exist.case.expected': '{count, plural, =0 {a shaft of the train} other {one of {known}}}',
  'finding.elements-exist.found': 'an element "{id}" that the train does not have',
  'finding.elements-exist.expected': 'one of {known}',
  'finding.rows-exist.found': 'a row "{id}" that the chart does not have',
  'finding.rows-exist.expected': 'one of {known}',
  'finding.steps-exist.found': 'a step "{id}" that this sequence does not have',
  'finding.steps-exist.expected': 'one of {known}',
  'finding.cautions-attached.found': '"{ref}", which the deck does not have',
  'finding.cautions-attached.expected':
    'something of this deck, kind and id: "element:C1", "solenoid:S1", "seat:T5"; or with what it stands in: "step:strip/drain", "cell:4/C1", "plate:C1/steel-2"',
} as const;

const TRAIN = {
  'finding.input-output.found': '"{shaft}", which is the input too',
  'finding.input-output.expected': 'a different shaft: power goes in at one and out at another',
  'finding.gearset-members.found': 'shaft "{shaft}" twice in one gearset',
  'finding.gearset-members.expected': 'three different shafts for sun, ring and carrier',
  'finding.element-joins.itself.found': 'shaft "{shaft}" joined to itself',
  'finding.element-joins.itself.expected': 'two different shafts',
  'finding.element-joins.brake.found': 'a brake between "{first}" and "{second}"',
  'finding.element-joins.brake.expected': '"case" as one of the two, or the kind "clutch"',
  'finding.element-joins.clutch.found': 'a clutch between "{first}" and "{second}"',
  'finding.element-joins.clutch.expected': 'two shafts that turn, or the kind "brake"',
  'finding.element-joins.overruns.found': 'a free sense "{overruns}" on a {kind}',
  'finding.element-joins.overruns.expected': 'it on one-ways only',
  'finding.shafts-joined.found': 'shaft "{shaft}" nowhere else in the train',
  'finding.shafts-joined.expected':
    'at least one more gear or element on it; as it is it carries nothing. Is the name spelled alike everywhere?',
  'finding.planets-whole.none.found': 'a ring of {ring, number} teeth around a sun of {sun, number}',
  'finding.planets-whole.none.expected':
    'more teeth on the ring than on the sun, so that planets fit between',
  'finding.planets-whole.half.found':
    'ring {ring, number} and sun {sun, number}, which leave planets of {planet, number} teeth',
  'finding.planets-whole.half.expected': 'a whole number: ring = sun + 2 × planet. Count both gears again',
  'finding.planets-spaced.found': '{planets, number} planets; sun and ring have {sum, number} teeth together',
  'finding.planets-spaced.expected':
    'a sum that divides by the number of planets, or they cannot stand at even angles',
  'finding.one-ways-few.found': '{count, number} one-ways',
  'finding.one-ways-few.expected': 'at most {most, number}: every combination of them is tried',
} as const;

const CHART = {
  'hint.none': '',
  'hint.stated': '. The stated {ratio} comes with {elements}',
  'hint.add': '. It drives when one of these is added: {elements}',
  'hint.drop': '. It drives when one of these is left out: {elements}',
  'finding.range-drives.tied-up.found':
    'a row that ties up: with {count, plural, =0 {nothing} other {{elements}}} on, the input cannot turn',
  'finding.range-drives.tied-up.expected': 'elements that leave the output one speed, other than 0{hint}',
  'finding.range-drives.output-held.found':
    'a row that holds the output still: with {count, plural, =0 {nothing} other {{elements}}} on, it cannot turn',
  'finding.range-drives.output-held.expected': 'elements that leave the output one speed, other than 0{hint}',
  'finding.range-drives.free.found':
    'a row that leaves the output free: {count, plural, =0 {with nothing on, the gears do} one {{elements} alone does} other {{elements} do}} not settle its speed',
  'finding.range-drives.free.expected': 'elements that leave the output one speed, other than 0{hint}',
  'finding.ratio-agrees.found': 'a stated ratio of {stated}',
  'finding.ratio-agrees.expected': '{rounded}, which {elements} give in this train (solved: {exact}){hint}',
  'finding.ratio-cut.found': 'a stated ratio of {stated}, cut off and not rounded',
  'finding.ratio-cut.expected': '{rounded} (solved: {exact}), unless the source prints it so',
  'finding.ranges-distinct.found':
    'the same elements as range "{other}"{count, plural, =0 { (none)} other {: {elements}}}',
  'finding.ranges-distinct.expected': 'elements of its own',
  'finding.ratios-distinct.found': 'the same ratio as range "{other}", {ratio}, from other elements',
  'finding.ratios-distinct.expected': 'a ratio of its own; check both rows',
  'finding.one-way-holds.found': 'one-way "{id}" as holding, but the load pushes it the way it runs free',
  'finding.one-way-holds.expected':
    'it left out of this row, or its two shafts (or "overruns") the other way round',
  'finding.one-way-binds.found': 'one-way "{id}" not in the row, but turned the way it blocks: it would bind',
  'finding.one-way-binds.expected':
    'every one-way that is not listed at rest or running free; check its two shafts and "overruns"',
  'finding.one-way-idle.found': 'one-way "{id}" as holding, but it carries no load here',
  'finding.one-way-idle.expected': 'it left out of this row',
  'finding.neutral-stays.drives.found':
    'a neutral row that drives at {ratio} with {count, plural, =0 {nothing} other {{elements}}} on',
  'finding.neutral-stays.drives.expected': 'elements that leave the output free',
  'finding.neutral-stays.tied-up.found':
    'a neutral row that ties up with {count, plural, =0 {nothing} other {{elements}}} on',
  'finding.neutral-stays.tied-up.expected': 'elements that let the input turn',
  'finding.elements-used.found': 'element "{id}" in no range',
  'finding.elements-used.expected': 'at least one range that applies it',
  'finding.one-ways-used.found': 'one-way "{id}" in no range',
  'finding.one-ways-used.expected': 'it in the rows where it holds',
} as const;

const OIL = {
  'finding.solenoid-feeds.found': 'a solenoid that feeds nothing',
  'finding.solenoid-feeds.expected':
    'an element, or one of "line-pressure", "converter-clutch" and "lubrication"',
  'finding.one-ways-unfed.found': 'oil for one-way "{id}"',
  'finding.one-ways-unfed.expected': 'a brake or clutch: a one-way holds by itself',
  'finding.solenoid-demands.found':
    'one solenoid for {on} and {off}, but row "{row}" has {on} on and {off} off',
  'finding.solenoid-demands.expected':
    'a solenoid for each, or a lever position that closes one of the feeds',
  'finding.feeds-recorded.found': 'nothing that feeds "{id}"',
  'finding.feeds-recorded.expected':
    'a solenoid or a lever position that feeds it; until then nothing is asked about its oil',
  'finding.feeds-single.found': 'element "{id}" fed by {solenoids}',
  'finding.feeds-single.expected':
    'one solenoid for each element: a deck cannot say which of two wins, so nothing is asked about it',
  'finding.feeds-agree.found':
    'element "{id}" with pressure and with none when unplugged: {first} and {second} differ',
  'finding.feeds-agree.expected': 'one solenoid for the element, or two that give the same',
  'finding.lever-valve.manual.found': 'nothing',
  'finding.lever-valve.manual.expected':
    'the elements whose feed the manual valve leaves open here; an empty list when there are none',
  'finding.lever-valve.none.found': 'feeds of a manual valve on a lever that has none',
  'finding.lever-valve.none.expected': 'no such field, or "valve": "manual"',
  'finding.rows-reached.found': 'row "{id}" in no lever position',
  'finding.rows-reached.expected': 'a position that commands it',
  'finding.interlocks-allow.found': 'row "{row}", in which it would keep pressure from {elements}',
  'finding.interlocks-allow.expected':
    'no row that has all of "whenApplied" on and something of "blocks" too',
  'finding.interlocks-settle.found': 'a circle of interlocks: {circle}',
  'finding.interlocks-settle.expected':
    'no element that keeps pressure, by way of others, from itself: whether it acts could not be told',
  'finding.positions-allow.closed.found': 'row "{row}", but the feed of {elements} is closed here',
  'finding.positions-allow.closed.expected':
    'an open feed for every element of the row, or the row elsewhere',
  'finding.positions-allow.forced.found':
    'row "{row}", but {elements} is fed by hand here and not in the row',
  'finding.positions-allow.forced.expected': 'in each row of this position what the valve feeds by hand',
  'finding.unplugged-safe.tied-up.found':
    'a unit that ties up when unplugged: {count, plural, =0 {nothing has} one {{elements} has} other {{elements} have}} pressure',
  'finding.unplugged-safe.tied-up.expected':
    'a unit that can turn; check the pressure when unplugged and what the valve opens',
  'finding.unplugged-safe.drives.found':
    'a unit that drives at {ratio} here when unplugged: {count, plural, =0 {nothing has} one {{elements} has} other {{elements} have}} pressure',
  'finding.unplugged-safe.drives.expected':
    'no drive in a position with no driving row; check the pressure when unplugged and what the valve opens',
  'finding.unplugged-safe.turned.found':
    'a unit that drives at {ratio} here when unplugged, the other way round: {count, plural, =0 {nothing has} one {{elements} has} other {{elements} have}} pressure',
  'finding.unplugged-safe.turned.expected':
    'the way its rows drive, or no drive; check the pressure when unplugged and what the valve opens',
} as const;

const WORK = {
  'finding.sequence-acyclic.found': 'steps that wait for each other in a circle: {circle}',
  'finding.sequence-acyclic.expected': 'relations that some order can keep',
  'finding.sequence-order.found': 'step "{step}" listed before "{before}", which it must follow',
  'finding.sequence-order.expected': 'the steps in an order that works',
} as const;

export const RULE_WORDS = { ...NAMES, ...TRAIN, ...CHART, ...OIL, ...WORK } as const;
