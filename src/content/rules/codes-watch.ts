import type { Rule } from './rule.ts';

/** A ratio code watches ranges, and codes of other kinds watch parts. */
export const codesWatch: Rule = {
  id: 'codes-watch',
  severity: 'error',
  check: (deck) =>
    (deck.codes ?? []).flatMap(({ kind, watches }, index) =>
      watches.flatMap((ref, entry) => {
        const isRange = ref.startsWith('range:');
        return isRange === (kind === 'ratio')
          ? []
          : [
              {
                at: ['codes', index, 'watches', entry],
                case: isRange ? 'range' : 'part',
                values: { ref, kind },
              },
            ];
      }),
    ),
};
