import { CASE } from '../../core/gears/train.ts';
import type { Rule } from './rule.ts';

/** Power goes in at one shaft and out at another. */
export const inputOutput: Rule = {
  id: 'input-output',
  severity: 'error',
  check: ({ train: { input, output } }) =>
    input === output && input !== CASE ? [{ at: ['train', 'output'], values: { shaft: input } }] : [],
};
