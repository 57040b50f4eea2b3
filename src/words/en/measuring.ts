/** Questions on measuring: reading instruments, plays and gaps, choosing the part, checking figures. */
export const MEASURING = {
  'measuring.part': '{part} ({thickness} {unit})',
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
    '{fit}: the dial was set to zero at one end of the travel and shows this at the other. One division is {division} {unit}. How far did it travel, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'dial-reading.prompt-moved':
    '{fit}: the dial was not set to zero. It showed the first face at one end of the travel and the second at the other. One division is {division} {unit}. How far did it travel, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
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

  'measuring.count': '{count}',
  'measuring.length': '{value} {unit}',
  'measuring.nothing': '–',
  'measuring.readings': '{readings} {unit}',
  'measuring.plates-apply': '{count, plural, one {apply plate} other {apply plates}}',
  'measuring.plates-friction': '{count, plural, one {friction} other {frictions}}',
  'measuring.plates-steel': '{count, plural, one {steel} other {steels}}',
  'measuring.plates-waved': '{count, plural, one {waved plate} other {waved plates}}',
  'measuring.plates-dished': '{count, plural, one {dished plate} other {dished plates}}',
  'measuring.plates-backing': '{count, plural, one {backing plate} other {backing plates}}',
  'measuring.plates-washer': '{count, plural, one {washer} other {washers}}',
  'measuring.plates-snap-ring': '{count, plural, one {snap ring} other {snap rings}}',

  'family.pack-clearance': 'Clearance of a pack',
  'pack-clearance.prompt':
    '{stack}: from the piston’s stop to the far face of the ring groove it measures {room} {unit} here. {waves, select, flat {Sprung plates count pressed flat. } free {Sprung plates count with no load on them. } other {}}How much clearance do these leave, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'pack-clearance.how-many': 'How many',
  'pack-clearance.each': 'Each',
  'pack-clearance.free': 'With no load',
  'pack-clearance.line': '{count} {kind} × {each} = {all} {unit}.',
  'pack-clearance.row': '{room} − {height} = {clearance} {unit}.',
  'pack-clearance.reason': 'The clearance is the room less every plate in it, ring included.',

  'family.impossible-reading': 'Figures that cannot be right',
  'impossible-reading.prompt':
    '{fit}: five notes from the bench. A thicker part takes play away, one for one; readings are good to {tolerance} {unit}. Which of these cannot be right?',
  'impossible-reading.note': 'Limits {low} to {high}. Read {reading}.',
  'impossible-reading.note-then':
    'Limits {low} to {high}. Read {reading}; then {play} {unit}, with {part} in.',
  'impossible-reading.row':
    'A note cannot be right when its own figures speak against each other, whatever the limits are.',
  'impossible-reading.reason':
    'Play and part together are the room, and the room stays the same; with none in there is at least as much play as with a part.',
  'impossible-reading.because-sound':
    'Note {number}: {first} + {was} − {put} = {expected}, as read. It can be.',
  'impossible-reading.because-out':
    'Note {number}: {first} + {was} − {put} = {expected}, as read. {play} is not within {low} to {high}, but it can be.',
  'impossible-reading.because-none-in':
    'Note {number}: {first} with none in leaves room for a part. It can be.',
  'impossible-reading.because-limits-swapped':
    'Note {number}: the low limit, {low}, is above the high one, {high}.',
  'impossible-reading.because-sum-disagrees':
    'Note {number}: {first} + {was} − {put} = {expected}, not {play}.',
  'impossible-reading.because-play-exceeds-depth':
    'Note {number}: {play} is more than all the room there is, {first} + {was} = {room}.',
  'impossible-reading.because-stack-exceeds-depth':
    'Note {number}: there is room for {first} + {was} = {room}; a part of {put} does not go in.',
  'impossible-reading.because-bare-below-limits':
    'Note {number}: {first} with none in is already below {low}, and a part would only take more. Something is not seated.',

  'family.mean-reading': 'Mean of several readings',
  'mean-reading.prompt':
    '{fit}: read four times, a quarter turn apart: {readings}. What is the mean, in {unit, select, in {inches} other {{unit}}}? Within {tolerance} is right.',
  'mean-reading.row': '{sum} = {total}; {total} ÷ {count} = {mean} {unit}.',
  'mean-reading.reason': 'All readings count alike, so a high one and a low one cancel.',

  'family.repeat-readings': 'Readings that agree or do not',
  'repeat-readings.prompt':
    '{fit}: limits {low} to {high} {unit}; readings may lie {spread} {unit} apart. Each line was read a quarter turn apart on one unit. What follows from each?',
  'repeat-readings.accept': 'good: within the limits',
  'repeat-readings.reseat': 'seat the parts and read again',
  'repeat-readings.out-of-limits': 'outside the limits: another part',
  'repeat-readings.row':
    'First the spread, highest less lowest: more than {spread} {unit} and nothing follows yet.',
  'repeat-readings.reason': 'Only then the mean, against the limits.',
  'repeat-readings.line-accept':
    '{highest} − {lowest} = {spread}, not more than {allowed}. ({sum}) ÷ {count} = {mean} {unit}, within the limits.',
  'repeat-readings.line-reseat':
    '{highest} − {lowest} = {spread} {unit}, more than {allowed}: not seated, or not the same each time.',
  'repeat-readings.line-out-of-limits':
    '{highest} − {lowest} = {spread}, not more than {allowed}. ({sum}) ÷ {count} = {mean} {unit}, outside the limits.',

  'family.unit-convert': 'One unit into another',
  'unit-convert.prompt':
    '{value} {unit}, {of}: what is that in {to, select, in {inches} other {{to}}}? {decimals, plural, =0 {Whole number} =1 {One decimal} =2 {Two decimals} =3 {Three decimals} other {# decimals}}; within {tolerance} is right. {rule}',
  'unit-convert.pressure-of': 'greatest apply pressure of {element}',
  'unit-convert.limit-of': 'a limit of {fit}',
  'unit-convert.fill-of': 'dry fill of {fluid}',
  'unit-convert.refill-of': 'fill of {fluid} after draining',
  'unit-convert.level-of': '{fluid} when its level is checked',
  'unit-convert.rule': '1 {large} {exact, select, yes {=} other {≈}} {factor} {small}.',
  'unit-convert.rule-none': '',
  'unit-convert.rule-temperature': '°F = °C × 9 ÷ 5 + 32.',
  'unit-convert.work-times': '{value} × {factor} = {shown} {unit}.',
  'unit-convert.work-over': '{value} ÷ {factor} = {shown} {unit}.',
  'unit-convert.work-fahrenheit': '{value} × 9 ÷ 5 + 32 = {shown} °F.',
  'unit-convert.work-celsius': '({value} − 32) × 5 ÷ 9 = {shown} °C.',
  'unit-convert.reason-size':
    '1 {from} is {more, select, yes {more than 1 {to}, so the figure grows.} other {less than 1 {to}, so the figure gets smaller.}}',
  'unit-convert.reason-zero':
    'The scales start at different zeros, so the 32 comes in once: after stretching to °F, before shrinking to °C.',
  'unit-convert.twelve': '1 lbf·ft is 12 lbf·in. A wrench set in the wrong one is twelve times off.',
  'unit-convert.quarts': 'A US quart is 0.946 L, an imperial quart 1.137 L: ask which one is meant.',

  'family.crowfoot-setting': 'Wrench with an adapter',
  'crowfoot-setting.prompt':
    '{torque}: {target} {unit}. An adapter {adapter} {length} long, drive to bolt, sits on a click wrench {lever} {length} from hand to drive, {angle, select, 0 {straight out} 90 {square across} 180 {folded straight back} 45 {slanted 45° off straight out (cosine 0.707)} other {slanted 135° off straight out (cosine −0.707)}}. What is the wrench set to? Within {tolerance} {unit} is right.',
  'crowfoot-setting.row': '{target} × {lever} ÷ {reach} = {setting} {unit}.',
  'crowfoot-setting.reason':
    '{angle, select, 90 {Square across, the bolt is no further from the hand: the setting is the torque itself.} other {The bolt gets the pull times the distance from hand to bolt; the wrench only knows the distance from hand to drive.}}',
  'crowfoot-setting.reach': 'Hand to bolt, in line: {lever} + {adapter} × {cosine} = {reach} {length}.',
} as const;
