/** English: every message the project can say, by key. One file per subject. */
import { CHART } from './chart.ts';
import { SLIP_UP_WORDS } from './slip-ups.ts';

export const EN: Readonly<Record<string, string>> = { ...CHART, ...SLIP_UP_WORDS };
