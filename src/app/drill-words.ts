/**
 * Files of src/words/<language> that a drill can need: they are loaded before the first question. All others come
 * with the screens that need them (load-words.ts); vite.config.ts makes one chunk of each lot.
 */
export const DRILL_WORDS: ReadonlySet<string> = new Set([
  'chart',
  'chart-work',
  'classroom',
  'codes',
  'diagnosis',
  'drawings',
  'electrical',
  'fault-effects',
  'faults',
  'gauge-drawings',
  'gears',
  'measuring',
  'oil',
  'one-ways',
  'orientation',
  'part-drawings',
  'pressure',
  'procedure',
  'safety',
  'screens',
  'shifts',
  'slip-ups',
  'solenoids',
  'stacks',
  'storage',
  'suspects',
  'tables',
  'torque',
]);
