/** English: every message the project can say, by key. One file per subject. */
import { DRILL } from './drill.ts';
import { REST } from './rest.ts';

export const EN: Readonly<Record<string, string>> = Object.assign({}, ...DRILL, ...REST);
