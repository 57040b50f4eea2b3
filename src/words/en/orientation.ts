/** Questions about bearings, washers and seals along the shaft line, and which way they face. */
export const ORIENTATION = {
  'seat.front': 'the front',
  'seat.rear': 'the rear',
  'seat.face': '{seat}: {mark}',
  'seat.side': '{mark} against {touches}',
  'seat.plain-side': 'against {touches}',
  'seat.line': '{seat}: to the front: {front}; to the rear: {rear}. Noted as seen from {from}.',
  'seat.by-neighbour':
    'A face is told by its mark and by what it lies against. That holds from whichever end you look.',

  'family.seat-faces': 'Which way parts face',
  'seat-faces.prompt':
    'To which end of the unit does each of these faces look? The front, the converter end, is up on the drawing.',
  'seat.gap': 'between {front} and {rear}',
  'seat.kind-thrust-bearing': 'thrust bearing',
  'seat.kind-thrust-washer': 'thrust washer',
  'seat.kind-lip-seal': 'lip seal',
  'seat.kind-sealing-ring': 'sealing ring',

  'family.seat-view': 'The unit turned round',
  'seat-view.standing':
    'The drawing shows how the parts lie. Now the unit is stood up as each line says. The front is the converter end. Does the face look up or down?',
  'seat-view.looking':
    'The drawing shows how the parts lie. Now you look along the shaft as each line says. The front is the converter end. Is the face turned to you, or away?',
  'seat-view.standing-row': '{face}; up is {end}',
  'seat-view.looking-row': '{face}; looking from {end}',
  'seat-view.up': 'up',
  'seat-view.down': 'down',
  'seat-view.seen': 'turned to you',
  'seat-view.hidden': 'turned away',
  'seat-view.standing-rule': 'A face that looks to the end that is up looks up.',
  'seat-view.looking-rule': 'From an end you see the faces that look to that end.',
  'seat-view.reason': 'On the drawing: {faces}.',
  'seat-view.faces': '{face} (looks to {end})',

  'family.race-side': 'Side of the closed race',
  'race-side.prompt':
    'On which side of which gap does the closed race of {seat} lie? The front, the converter end, is up on the drawing.',
  'race-side.front': 'right behind {body}',
  'race-side.rear': 'right in front of {body}',

  'family.seat-pilot': 'What centres a bearing',
  'seat-pilot.prompt': 'Which side centres each of these, and at which rim? The front is the converter end.',
  'seat-pilot.by':
    '{end, select, front {front} other {rear}} side, {rim, select, inner {inner} other {outer}} rim',
  'seat-pilot.line':
    '{seat} is centred by {by}, to {end}, at its {rim, select, inner {inner} other {outer}} rim, {diameter} {unit}.',
  'seat-pilot.reason': 'Laid against the other part it is not centred, and runs out of true.',

  'family.seat-places': 'Parts to their gaps',
  'seat-places.prompt':
    'These lie on the bench. Where on the shaft line does each belong? The front, the converter end, is up on the drawing.',
  'seat-places.part': '{kind}, {inner} × {outer} × {thickness} {unit}',
  'seat-places.place': '{number}: {gap}',
  'seat-places.row': '{part} is {seat}, {gap}.',
  'seat-places.reason': 'Sizes are bore, outer diameter and thickness. Measure before you lay one in.',

  'family.seat-neighbours': 'What lies on either side',
  'seat-neighbours.prompt':
    'Between which two bodies does {seat} lie? The front is the converter end. Other seats in between do not count.',
  'seat-neighbours.side': 'towards {end}',
  'seat-neighbours.reason': 'From front to rear: {bodies}.',

  'family.seat-turned': 'A part the wrong way round',
  'seat-turned.prompt': 'Somebody tries to put {seat} in the wrong way round. What comes of it?',
  'seat-turned.nothing': 'Nothing. Both ways round do the same.',
  'seat-turned.keyed': 'It does not go in that way round.',
  'seat-turned.goes-in': '{seat} goes in either way. {effect}',
  'seat-turned.stays-out': '{seat} does not go in the wrong way round. {effect}',
  'seat-turned.other': '{seat} turned round: {effect}',

  'family.seal-lip': 'Which way a lip looks',
  'seal-lip.prompt':
    'Which way does the lip of {seat} look, and where does the pressure come from? The front, the converter end, is up on the drawing.',
  'seal-lip.pressure': 'towards {touches}, to where the pressure comes from',
  'seal-lip.away': 'towards {touches}, away from where the pressure comes from',
  'seal-lip.row': 'The lip of {seat} looks towards {touches}, to {lip}. Pressure comes from {pressure}.',
  'seal-lip.rule': 'Pressure in the lip presses it against the shaft, which makes it tight.',
  'seal-lip.exception': 'Here the record differs from the usual rule that a lip looks to the pressure.',
} as const;
