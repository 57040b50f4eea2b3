import { refsOf } from '../../core/unit/refs.ts';
import type { Rule } from './rule.ts';

/** A caution is attached to things the deck has; otherwise it would never be shown. */
export const cautionsAttached: Rule = {
  id: 'cautions-attached',
  severity: 'error',
  check(deck) {
    const refs: ReadonlySet<string> = refsOf(deck);
    return (deck.cautions ?? []).flatMap((caution, index) =>
      caution.attachedTo.flatMap((ref, entry) =>
        refs.has(ref) ? [] : [{ at: ['cautions', index, 'attachedTo', entry], values: { ref } }],
      ),
    );
  },
};
