import type { Spot } from '../finding.ts';
import type { Rule } from './rule.ts';

/** With a manual valve each position says what it opens; with none there is nothing to open. */
export const leverValve: Rule = {
  id: 'lever-valve',
  severity: 'error',
  check: ({ lever }) =>
    (lever?.positions ?? []).flatMap((position, index): Spot[] => {
      const at = ['lever', 'positions', index];
      if (lever!.valve === 'manual') return position.opens ? [] : [{ at: [...at, 'opens'], case: 'manual' }];
      return (['opens', 'feeds'] as const)
        .filter((field) => position[field] !== undefined)
        .map((field) => ({ at: [...at, field], case: 'none' }));
    }),
};
