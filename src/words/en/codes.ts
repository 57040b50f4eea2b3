/** Questions on trouble codes. */
export const CODES = {
  'code-kind.circuit': 'circuit',
  'code-kind.performance': 'performance',
  'code-kind.stuck-off': 'stuck off',
  'code-kind.stuck-on': 'stuck on',
  'code-kind.electrical': 'electrical',
  'code-kind.intermittent': 'comes and goes',
  'code-kind.ratio': 'wrong ratio',
  'codes.lettered': '{code}: solenoid {letter}, {kind}',
  'codes.with-meaning': '{code}: {meaning}',
  'codes.watches': '{code} watches {part} in this unit.',
  'codes.watches-meaning': '{code} watches {part}. {meaning}',

  'family.code-watches': 'Which part a code means',
  'code-watches.prompt':
    'Each of these codes names a solenoid by a letter. Which solenoid is it in this unit?',
  'code-watches.reason':
    'The standard only says “solenoid B”. Which one that is, each maker lays down: take it from the record, never from the order of the letters.',

  'family.codes-that-set': 'Codes a fault sets',
  'codes-that-set.prompt':
    'Suppose {fault}. Everything else is sound, and every range is driven. Does each of these codes set?',
  'code-state.sets': 'sets',
  'code-state.could': 'could set',
  'code-state.cannot': 'cannot set',
  'codes-that-set.row':
    'Suppose {fault}: {count, plural, =0 {none of these sets for sure} one {{codes} sets} other {{codes} set}}.',
  'codes-that-set.reason':
    'A circuit code sets where its own circuit is dead. A wrong-ratio code needs both speeds and a range that drives at another ratio.',
  'codes-that-set.because-circuit-sets': '{code}: its circuit is dead, so it sets.',
  'codes-that-set.because-circuit-could': '{code}: the record does not settle its circuit, so it could set.',
  'codes-that-set.because-circuit-cannot': '{code}: its circuit is sound, so it cannot set.',
  'codes-that-set.because-ratio-sets':
    '{code}: its range drives at another ratio, and both speeds are heard.',
  'codes-that-set.because-ratio-could':
    '{code}: its range does not drive as it should, but no other ratio comes out steadily. It could set.',
  'codes-that-set.because-ratio-cannot':
    '{code}: its range drives as charted, or a speed is missing, so there is no wrong ratio to see.',

  'family.code-roots': 'Cause and consequence among codes',
  'code-roots.prompt': 'Suppose {fault}. What has each of these codes to do with that fault?',
  'code-role.root': 'points at the part',
  'code-role.follows': 'only follows',
  'code-role.cannot': 'cannot come of it',
  'code-roots.row':
    '{count, plural, =0 {None of these points at the part itself.} one {{codes} points at the part itself.} other {{codes} point at the part itself.}}',
  'code-roots.reason':
    'A code that watches the very part comes first; wrong-ratio codes follow from what that part no longer does.',
  'code-roots.because-root': '{code} watches the very part at fault.',
  'code-roots.because-follows': '{code} watches something else, which goes wrong because of the fault.',
  'code-roots.because-cannot': '{code} watches something that the fault leaves alone.',
} as const;
