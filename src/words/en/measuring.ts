/** Questions on measuring: reading instruments, plays and gaps, choosing the part, checking figures. */
export const MEASURING = {
  'measuring.part': '{part}, {thickness} {unit}',
  'measuring.place-low': 'too little',
  'measuring.place-in': 'within the limits',
  'measuring.place-high': 'too much',
  'measuring.read-bare': '{play} {unit}, with none in',
  'measuring.read-part': '{play} {unit}, with {part} in',
  'measuring.read-depths':
    'seat {seat} {unit}{seatBar, select, yes { over the bar} other {}}, stand-off {standOff} {unit}{standOffBar, select, yes { over the bar} other {}}',
  'measuring.bare-read': 'With none in, the play is {bare} {unit}, as read.',
  'measuring.bare-closes': 'Play with none in: {play} + {part} = {bare} {unit}.',
  'measuring.bare-opens': 'Play with none in: {play} − {part} = {bare} {unit}.',
  'measuring.bare-depths': 'Play with none in: {seat} − {standOff}{gasket} = {bare} {unit}.',

  'family.dial-reading': 'Reading a dial indicator',
  'dial-reading.prompt-zeroed':
    '{fit}: with no selective part in, the dial was set to zero at one end of the travel and shows this at the other. One division is {division} {unit}. How far did it travel, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'dial-reading.prompt-moved':
    '{fit}: with no selective part in, the dial was not set to zero. It showed the first face at one end of the travel and the second at the other. One division is {division} {unit}. How far did it travel, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'dial-reading.face': '{steps} × {turn} + {divisions} × {division} = {shown} {unit} on the dial.',
  'dial-reading.reason-zeroed': 'It started at zero, so it travelled {travel} {unit}.',
  'dial-reading.reason-moved': '{to} − {from} = {travel} {unit}.',
  'dial-reading.small-hand':
    'The small hand has passed as many numbers as the large one has made whole turns, {turn} {unit} each.',

  'family.micrometer-reading': 'Reading a micrometer',
  'micrometer-reading.prompt':
    '{fit}: a part from the box is measured. One division of the thimble is {division} {unit}. What does it measure, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'micrometer-reading.sleeve':
    'Sleeve: {steps} {steps, plural, one {line} other {lines}} × {line} = {sleeve} {unit}.',
  'micrometer-reading.sum':
    'Thimble: {divisions} × {division} = {fine} {unit}. {sleeve} + {fine} = {value} {unit}.',
  'micrometer-reading.lines-mm':
    'The lines on the other side of the datum are the half millimetres: two lines of the sleeve to a millimetre.',
  'micrometer-reading.lines-in': 'Four lines of the sleeve, 0.025 in each, to a number.',

  'family.depth-gauge-reading': 'Reading a depth gauge',
  'depth-gauge-reading.prompt':
    '{fit}: the depth of the seat below the face is measured{bar, select, none {} other {, the gauge standing on a bar of {bar} {unit} laid across the face}}. One line of the vernier is {division} {unit}. How deep is the seat below the face, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'depth-gauge-reading.scales':
    'Main scale {main}, vernier {divisions} × {division} = {fine}: together {shown} {unit}.',
  'depth-gauge-reading.bar': 'Less the bar: {shown} − {bar} = {depth} {unit}.',
  'depth-gauge-reading.no-bar': 'The gauge stands on the face itself, so that is the depth: {depth} {unit}.',
  'depth-gauge-reading.vernier':
    'The zero of the vernier tells the main line; the vernier line that meets any main line tells the rest, {division} {unit} each.',

  'family.depth-gap': 'Play from two depths',
  'depth-gap.prompt':
    '{fit}: from the face down to the seat the gauge reads {seat} {unit}{seatBar, select, yes { over the bar} other {}}. The part above stands off its own face by a reading of {standOff} {unit}{standOffBar, select, yes { over the bar} other {}}.{bar, select, none {} other { The bar is {bar} {unit}.}}{gasket, select, none {} other { The gasket between the faces is {gasket} {unit} pressed down.}} How much play is there with no selective part in, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'depth-gap.reason': 'How deep the seat lies, less how far the part reaches down to it, leaves the gap.',
  'depth-gap.bar': 'A reading over the bar has the bar in it: {bar} {unit} comes off.',
  'depth-gap.gasket': 'The gasket holds the faces {gasket} {unit} apart, so it adds to the gap.',

  'family.select-part': 'Choosing the selective part',
  'select-part.prompt':
    '{fit}: limits {low} to {high} {unit}, aim at {aim}{aimed, select, middle {, the middle} other {}}. A thicker part {effect, select, closes {takes play away} other {adds play}}, one for one. Two units were measured.{bar, select, none {} other { The bar is {bar} {unit}.}}{gasket, select, none {} other { The gasket adds {gasket} {unit}.}} Give each the listed part that brings it nearest to the aim and within the limits.',
  'select-part.row': 'First unit: {first}. Second unit: {second}.',
  'select-part.reason-closes':
    'The play with none in, less the play to be left, is how thick the part has to be.',
  'select-part.reason-opens':
    'The play to be left, less the play with none in, is how thick the part has to be.',
  'select-part.first': 'First unit.',
  'select-part.second': 'Second unit.',
  'select-part.aim-closes': 'To leave {aim}: {bare} − {aim} = {thickness} {unit}.',
  'select-part.aim-opens': 'To reach {aim}: {aim} − {bare} = {thickness} {unit}.',
  'select-part.leaves': 'Nearest in the list: {part}. It leaves {play} {unit}, within {low} to {high}.',

  'family.play-after': 'Play with another part in',
  'play-after.prompt':
    '{fit}: limits {low} to {high} {unit}. It reads {reading}. What would the play be with each of these in instead?',
  'play-after.reason-closes': 'Here the part lies in what the play closes: a thicker one takes play away.',
  'play-after.reason-opens': 'Here the part holds the play open: a thicker one adds play.',
  'play-after.line-closes': '{part}: {bare} − {thickness} = {play} {unit}, {place}.',
  'play-after.line-opens': '{part}: {bare} + {thickness} = {play} {unit}, {place}.',
  'play-after.line-none': '{part}: {bare} is less than {thickness}, so nothing is left: {place}.',
} as const;
