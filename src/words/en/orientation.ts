/** Questions about bearings, washers and seals along the shaft line, and which way they face. */
export const ORIENTATION = {
  'seat.front': 'the front, where the converter sits',
  'seat.rear': 'the rear',
  'seat.face': '{seat}: {mark}',
  'seat.side': '{mark} against {touches}',
  'seat.plain-side': '{touches}',
  'seat.line': '{seat}: to the front {front}, to the rear {rear}. Noted as seen from {from}.',
  'seat.by-neighbour':
    'A face is told by its mark and by what it lies against. That holds from whichever end you look.',

  'family.seat-faces': 'Which way parts face',
  'seat-faces.prompt':
    'The unit lies with its front up on the drawing. To which end does each of these faces look?',
} as const;
