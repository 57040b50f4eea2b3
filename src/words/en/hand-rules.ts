/** What the rules find in the data for the hands: seats, stacks, fits, steps, wires. See findings.ts. */
const NAMES = {
  'finding.things-exist.found': '"{ref}", which the deck does not have',
  'finding.things-exist.expected':
    'something of this deck, kind and id: "element:C1", "solenoid:S1", "sensor:output-speed"',
  'finding.records-exist.stack.found': 'a stack "{id}" that the deck does not have',
  'finding.records-exist.stack.expected': '{count, plural, =0 {a stack of that id} other {one of {known}}}',
  'finding.records-exist.plate.found': 'a plate "{id}" that this stack does not have',
  'finding.records-exist.plate.expected': 'one of {known}',
  'finding.records-exist.seat.found': 'a seat "{id}" that the deck does not have',
  'finding.records-exist.seat.expected': '{count, plural, =0 {a seat of that id} other {one of {known}}}',
  'finding.records-exist.part.found': 'a part "{id}" that is not on the list of this fit',
  'finding.records-exist.part.expected':
    '{count, plural, =0 {a list of selective parts} other {one of {known}}}',
  'finding.records-exist.solenoid.found': 'a solenoid "{id}" that the deck does not have',
  'finding.records-exist.solenoid.expected':
    '{count, plural, =0 {a solenoid of that id} other {one of {known}}}',
  'finding.records-exist.sensor.found': 'a sensor "{id}" that the deck does not have',
  'finding.records-exist.sensor.expected': '{count, plural, =0 {a sensor of that id} other {one of {known}}}',
  'finding.records-exist.supply.found': 'a supply "{id}" that the deck does not have',
  'finding.records-exist.supply.expected': '{count, plural, =0 {a supply of that id} other {one of {known}}}',
  'finding.records-exist.torque.found': 'a torque "{id}" that the deck does not list',
  'finding.records-exist.torque.expected': '{count, plural, =0 {a torque of that id} other {one of {known}}}',
  'finding.records-exist.fit.found': 'a fit "{id}" that the deck does not have',
  'finding.records-exist.fit.expected': '{count, plural, =0 {a fit of that id} other {one of {known}}}',
  'finding.aliases-clear.found': 'the name "{name}", which {other} has too',
  'finding.aliases-clear.expected': 'a name that means one thing',
} as const;

const AMOUNTS = {
  'finding.bands-ordered.found': 'a low end of {low} and a high end of {high}',
  'finding.bands-ordered.expected': 'a low end below the high end',
  'finding.inner-smaller.found': 'an inner diameter of {inner} and an outer one of {outer}',
  'finding.inner-smaller.expected': 'an inner diameter smaller than the outer one',
} as const;

const SEATS = {
  'finding.seats-touch.unknown.found': '"{id}", which is neither a part of the shaft line nor a seat',
  'finding.seats-touch.unknown.expected':
    '{count, plural, =0 {a shaft line to place it on} other {one of {known}, or another seat}}',
  'finding.seats-touch.itself.found': 'a seat that lies against itself',
  'finding.seats-touch.itself.expected': 'what this face lies against',
  'finding.seats-touch.both.found': 'both faces against "{id}"',
  'finding.seats-touch.both.expected': 'a different neighbour on each side',
  'finding.seats-touch.one-sided.found': 'seat "{id}", which does not lie against "{seat}" by its own record',
  'finding.seats-touch.one-sided.expected': 'two seats that lie against each other to say so both',
  'finding.seats-placed.found': 'place {place, number}, which seat "{other}" has already',
  'finding.seats-placed.expected': 'a number of its own, counted from the front',
  'finding.seats-in-line.found':
    'place {place, number} after seat "{other}", though it lies nearer to the front of the shaft line',
  'finding.seats-in-line.expected': 'places counted from front to rear; check its neighbours',
  'finding.seat-faces.one-mark.found': 'no mark on this face, but one on the other',
  'finding.seat-faces.one-mark.expected': 'a mark on both faces, or on neither where they are alike',
  'finding.seat-faces.same-mark.found': 'the same mark on both faces',
  'finding.seat-faces.same-mark.expected': 'marks that tell them apart, or none',
  'finding.seat-faces.alike.found': '"{field}" on a part whose faces have no marks',
  'finding.seat-faces.alike.expected': 'marks that tell the faces apart, or no such field',
  'finding.seat-faces.kind.found': '"{field}" on a {kind}',
  'finding.seat-faces.kind.expected': 'it on a {needed} only',
  'finding.seat-pilots.inner.found': 'a shoulder of {diameter} in a bore of {own}',
  'finding.seat-pilots.inner.expected': 'a shoulder no wider than the bore',
  'finding.seat-pilots.outer.found': 'a pocket of {diameter} for a part {own} wide',
  'finding.seat-pilots.outer.expected': 'a pocket no narrower than the part',
  'finding.seat-pilots.alike.found':
    'a part that does not go in turned round, though both sides pilot at {a}',
  'finding.seat-pilots.alike.expected':
    'two pilot diameters, or true: alike on both sides it goes in both ways',
  'finding.seat-pilots.differ.found':
    'a part that goes in turned round, though its sides pilot at {a} and {b}',
  'finding.seat-pilots.differ.expected': 'one pilot diameter, or false: it goes in one way only',
  'finding.lip-faces-pressure.found': 'a lip on face {lip} and pressure from face {pressure}',
  'finding.lip-faces-pressure.expected':
    'the lip where the pressure is; keep it if the unit is built so, with a note',
} as const;

const STACKS = {
  'finding.plates-measured.thickness.found': 'no thickness of a plate of kind {kind}',
  'finding.plates-measured.thickness.expected': 'its thickness: it takes room in the pack',
  'finding.plates-measured.free.found': 'no free height of a plate of kind {kind}',
  'finding.plates-measured.free.expected': 'its height with no load on it',
  'finding.plates-measured.flat.found': 'a free height on a plate of kind {kind}',
  'finding.plates-measured.flat.expected': 'it on waved and dished plates only',
  'finding.plates-measured.waves.found': 'no word on how waved and dished plates count',
  'finding.plates-measured.waves.expected': '"waves": "flat" or "free", as the clearance is measured',
  'finding.waves-higher.found': 'a free height of {free} on a plate {flat} thick when flat',
  'finding.waves-higher.expected': 'a free height above the flat one',
  'finding.identical-alike.alone.found': 'the word "{word}" on one plate only',
  'finding.identical-alike.alone.expected': 'it on every plate of the stack that is like this one',
  'finding.identical-alike.differ.found':
    'a plate identical to "{other}" that differs from it in "{property}"',
  'finding.identical-alike.differ.expected': 'plates that may change places, or another word',
  'finding.identical-marked.found': 'a plate that nothing tells from "{other}"',
  'finding.identical-marked.expected': 'one word in "identical" on both, or what tells them apart',
  'finding.frictions-faced.found': 'friction plate "{id}" with no plate to rub on at one side',
  'finding.frictions-faced.expected': 'a steel, apply or backing plate on both sides',
  'finding.stack-room.found': 'a room of {room}, {by} mm less than the plates are high',
  'finding.stack-room.expected': 'plates that go in; look for one too many, or a wrong depth',
  'finding.capacity-agrees.one-way.found': 'a capacity on a one-way',
  'finding.capacity-agrees.one-way.expected': 'it on brakes and clutches only',
  'finding.capacity-agrees.frictions.found': '{stated, number} friction plates',
  'finding.capacity-agrees.frictions.expected': '{counted, number}, as in stack "{stack}"',
} as const;

const FITS = {
  'finding.fit-place.item.found': 'a plate with no stack named',
  'finding.fit-place.item.expected': 'the stack that it is in',
  'finding.fit-place.two.found': 'a plate and a seat',
  'finding.fit-place.two.expected': 'the one whose thickness is chosen',
  'finding.fit-place.stack.found': 'a clutch clearance with no stack named',
  'finding.fit-place.stack.expected': 'the stack that it is measured in',
  'finding.fit-one-unit.found': '{length} in a fit whose limits are in {unit}',
  'finding.fit-one-unit.expected': 'one unit in a fit: the one it is measured in',
  'finding.aim-in-limits.found': 'an aim of {aim}',
  'finding.aim-in-limits.expected': 'a play from {low} to {high}',
  'finding.selective-sorted.found': 'a part of {thickness} after one of {before}',
  'finding.selective-sorted.expected': 'each part once, thinnest first',
  'finding.selective-listed.found': 'a list of {parts}; what it chooses is recorded with {thickness}',
  'finding.selective-listed.expected': 'that thickness on the list, or one of the list in the record',
  'finding.clearance-in-limits.found':
    'limits of {low} to {high}, but the plates of stack "{stack}" leave {clearance} mm',
  'finding.clearance-in-limits.expected': 'a clearance within the limits; check plates, room and limits',
  'finding.readings-complete.missing.found': 'no "{field}"',
  'finding.readings-complete.missing.expected': 'it: the method "{method}" needs it',
  'finding.readings-complete.extra.found': '"{field}" in a reading by the method "{method}"',
  'finding.readings-complete.extra.expected': 'only what the method needs',
  'finding.readings-complete.bar.found': 'a depth read over a bar',
  'finding.readings-complete.bar.expected': 'the height of the bar in the fit, as "bar"',
  'finding.readings-complete.half.found': 'a part chosen without a result, or a result with no part chosen',
  'finding.readings-complete.half.expected': 'both "chosen" and "result", or neither',
  'finding.readings-possible.overlap.found': 'depths by which the parts overlap by {by}',
  'finding.readings-possible.overlap.expected': 'a seat deeper than what stands into it; read both again',
  'finding.readings-possible.bar.found': 'a depth smaller than the bar it was read over',
  'finding.readings-possible.bar.expected': 'a depth that has the bar in it',
  'finding.readings-possible.below.found': 'a play of {bare} with no part in, less than the limits ask',
  'finding.readings-possible.below.expected': 'more: a part can only take from it. Read again',
  'finding.readings-possible.above.found': 'a play of {bare} with no part in, more than the limits allow',
  'finding.readings-possible.above.expected': 'less: a part can only add to it. Read again',
  'finding.effect-proved.other-way.found': 'a result of {result}, as if a thicker part did the opposite',
  'finding.effect-proved.other-way.expected':
    '{play}, since a thicker part {effect, select, closes {closes} other {opens}} the play; check "effect"',
  'finding.effect-proved.differs.found': 'a result of {result}',
  'finding.effect-proved.differs.expected': '{play} by the other figures of the reading',
  'finding.effect-proved.outside.found': 'a result of {result}, outside the limits of the same fit',
  'finding.effect-proved.outside.expected': 'a chosen part that brings the play within them',
} as const;

const WORK = {
  'finding.assembly-works.circle.found': 'an assembly whose steps wait for each other in a circle: {circle}',
  'finding.assembly-works.circle.expected': 'exceptions that some order can keep',
  'finding.assembly-works.lifted-unknown.found':
    'a lifted relation "{earlier}" before "{later}" that the assembly does not have',
  'finding.assembly-works.lifted-unknown.expected':
    'the two steps in the order of the assembly, of which one directly follows the other when stripping',
  'finding.assembly-works.lifted-still-implied.found':
    'a lifted relation "{earlier}" before "{later}" that other relations ask for still',
  'finding.assembly-works.lifted-still-implied.expected': 'all relations between the two lifted, or none',
  'finding.assembly-worded.missing.found': 'no "turned" on step "{id}", which is done when assembling too',
  'finding.assembly-worded.missing.expected': 'what is done then, or the step among "leftOut"',
  'finding.assembly-worded.extra.found': '"turned" on step "{id}", which is not done when assembling',
  'finding.assembly-worded.extra.expected': 'no such field',
  'finding.checks-possible.never.found': 'a check that needs step "{step}", which makes it impossible',
  'finding.checks-possible.never.expected': 'a check that can be made at some point',
  'finding.checks-possible.not-turned.found': 'a check of the assembly, but no "assembly"',
  'finding.checks-possible.not-turned.expected': 'an "assembly" on the sequence, or "during": "strip"',
  'finding.step-torque.found': 'a torque of its own and "{tightens}" beside it',
  'finding.step-torque.expected': 'one of the two',
  'finding.hazards-cautioned.found': 'the hazard {hazard} with no caution about it',
  'finding.hazards-cautioned.expected': 'a caution of that hazard, attached to "{ref}"',
} as const;

const WIRES = {
  'finding.solenoids-placed.outside.found': 'a solenoid in row {row, number}, column {column, number}',
  'finding.solenoids-placed.outside.expected':
    'a place on a face of {rows, plural, one {one row} other {# rows}} and {columns, plural, one {one column} other {# columns}}',
  'finding.solenoids-placed.taken.found':
    'a solenoid in row {row, number}, column {column, number}, where "{other}" is',
  'finding.solenoids-placed.taken.expected': 'a place of its own',
  'finding.solenoids-placed.twice.found': 'a second place for it',
  'finding.solenoids-placed.twice.expected': 'one place',
  'finding.pins-placed.outside.found': 'a pin in row {row, number}, column {column, number}',
  'finding.pins-placed.outside.expected':
    'a place on a face of {rows, plural, one {one row} other {# rows}} and {columns, plural, one {one column} other {# columns}}',
  'finding.pins-placed.taken.found':
    'a pin in row {row, number}, column {column, number}, where pin "{other}" is',
  'finding.pins-placed.taken.expected': 'a place of its own',
  'finding.pins-complete.found': 'no pin for "{what}"',
  'finding.pins-complete.expected': 'a pin that serves it, or the connector it comes out at',
  'finding.pickup-kind.coil.found': 'a coil with no resistance',
  'finding.pickup-kind.coil.expected': 'its resistance at 20 °C, as "at20"',
  'finding.pickup-kind.hall.found': 'a hall sensor with no supply',
  'finding.pickup-kind.hall.expected': 'the supply it needs',
  'finding.pickup-kind.extra.found': '"{field}" on a sensor of kind {kind}',
  'finding.pickup-kind.extra.expected':
    '{kind, select, coil {a coil without a supply} other {no resistance: a hall sensor has no winding to measure}}',
  'finding.thermistor-sense.wrong-sense.found':
    'a resistance at {at} that does not go the way the others go, clear of the one before',
  'finding.thermistor-sense.wrong-sense.expected':
    'a resistance that {sense, select, falls {falls} other {rises}} with heat; look for a misprint',
  'finding.thermistor-sense.temperatures-equal.found': 'the temperature {at} a second time',
  'finding.thermistor-sense.temperatures-equal.expected': 'each temperature once',
  'finding.codes-watch.range.found': '"{ref}" watched by a code of kind {kind}',
  'finding.codes-watch.range.expected': 'a part; ranges are watched by codes of kind ratio',
  'finding.codes-watch.part.found': '"{ref}" watched by a code of kind {kind}',
  'finding.codes-watch.part.expected': 'ranges: "range:3"',
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
