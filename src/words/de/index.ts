/** German: every message the project can say, by key. One file per subject, as in English. */
import { DRILL } from './drill.ts';
import { REST } from './rest.ts';

export const DE: Readonly<Record<string, string>> = Object.assign({}, ...DRILL, ...REST);
