/** Questions about packs of plates: their order, what is in them, how high they are. */
export const STACKS = {
  'plate.piston': 'piston',
  'plate.return-spring': 'return spring',
  'plate.apply': 'apply plate',
  'plate.friction': 'friction plate',
  'plate.steel': 'steel plate',
  'plate.waved': 'waved plate',
  'plate.dished': 'dished plate',
  'plate.separator': 'waved separator',
  'plate.backing': 'backing plate',
  'plate.washer': 'washer',
  'plate.snap-ring': 'snap ring',
  'plate.thick': '{what} {thickness} {unit}',

  'stack.floor': '{floor}, at the {end, select, front {front} other {rear}}',
  'stack.line': '{stack}, from the floor ({floor}) up: {plates}.',
  'stack.run': '{times, number} times {first} and on it {second}',
  'stack.belongs': 'The {plate} belongs to {stack}.',
  'stack.length': '{value} {unit}',
  'stack.no-length': 'none',
  'stack.count': '{count, number}',
  'stack.column-count': 'how many',
  'stack.column-thickness': 'thickness',
  'stack.column-free': 'height, no load',

  'family.stack-order': 'A pack in order',
  'stack-order.prompt': '{stack}: put all its parts in order, from the floor ({floor}) up.',
  'stack-order.part':
    '{stack}: these lie next to one another. Put them in order, from the floor ({floor}) up.',
  'stack-order.first': 'On the floor: {floor}',
  'stack-order.lower': 'Towards the floor',
  'stack-order.last': 'Towards the opening',
  'stack-order.reason': 'Each kind as it is first met: {kinds}.',
  'stack-order.step': 'On the {lower} lies the {upper}.',

  'family.stack-gap': 'A plate covered',
  'stack-gap.prompt':
    '{stack}: what is the covered part? The floor is the {floor}; it is down on the drawing.',
  'stack-gap.reason': 'Number {place} from the floor is the {plate}.',

  'family.stack-stranger': 'A plate of another pack',
  'stack-stranger.prompt':
    '{stack} is laid out, but one part belongs to another pack. Which? The floor is the {floor}; it is down on the drawing.',
  'stack-stranger.reason': 'In its place belongs the {plate}.',

  'family.stack-count': 'How many plates',
  'stack-count.prompt':
    'How many {kind, select, friction {friction plates} other {steel plates}} are there in {stack}? Apply and backing plates do not count.',
  'stack-count.kit':
    'How many {kind, select, friction {friction plates} other {steel plates}} does a kit need for all packs of the unit? Apply and backing plates do not count.',
  'stack-count.sum': '{counts}: {total, number} in all.',
  'stack-count.one': '{stack} {count, number}',
  'stack-count.reason':
    'Count the {kind, select, friction {lined plates} other {plain plates between the lined ones}} one by one as you lay them out.',

  'family.stack-height': 'Height of a pack',
  'stack-height.prompt':
    'How high is {stack}, all parts of the table on one another{ring, select, yes {, the snap ring too} other {}}{waves, select, flat {, sprung plates pressed flat} free {, sprung plates with no load} other {}}?',
  'stack-height.row': '{stack} is {height} {unit} high.',
  'stack-height.reason':
    '{waves, select, flat {Pressed flat, a sprung plate counts with its thickness.} free {With no load, a sprung plate counts with its free height.} other {Every part counts with its thickness.}}',
  'stack-height.step': '{plate}: {count, number} × {each} = {sum} {unit}',

  'family.stack-slip': 'A pack too high or too low',
  'stack-slip.prompt':
    '{stack} should be {right} {unit} high. Assembled it measures {measured} {unit}, to within ± {tolerance} {unit}. One plate is too many or missing. Which?',
  'stack-slip.doubled': 'one {plate}, too many',
  'stack-slip.left-out': 'one {plate}, missing',
  'stack-slip.row': 'It is {difference} {unit} {sense, select, doubled {too high} other {too low}}.',
  'stack-slip.reason': 'That is the height of one {plate}: {height} {unit}.',
  'stack-slip.other': 'One {plate} makes {height} {unit}.',

  'family.plate-neighbours': 'What a plate lies between',
  'plate-neighbours.prompt':
    '{stack}, floor: {floor}. What lies directly below and above the {plate}? Below is towards the floor.',
  'plate-neighbours.below': 'below it, towards the floor',
  'plate-neighbours.above': 'above it, towards the opening',
  'plate-neighbours.row': 'Below the {plate} lies the {below}, above it the {above}.',

  'family.plate-faces': 'Which way plates lie',
  'plate-faces.prompt': 'Which way do these lie, seen from the pack itself: to its floor or to its opening?',
  'plate-faces.plate':
    '{stack}, {plate}: {feature, select, step {step} bevel {bevel} dish {hollow side} lip {lip} other {tab}}',
  'plate-faces.floor': 'to the floor',
  'plate-faces.opening': 'to the opening',
  'plate-faces.line':
    '{stack}, {plate}: the {feature, select, step {step} bevel {bevel} dish {hollow side} lip {lip} other {tab}} looks to the {towards, select, floor {floor} other {opening}}. Floor: {floor}.',
  'plate-faces.reason': 'Floor and opening belong to the pack, so this holds whichever way the unit lies.',
} as const;
