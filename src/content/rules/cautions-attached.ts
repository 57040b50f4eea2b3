import type { Deck, Named } from '../../core/unit/deck.ts';
import type { Ref, RefKind } from '../../core/unit/unit.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** Everything a caution can belong to. */
function everyRef(deck: Deck): Set<string> {
  const refs = (kind: RefKind, records: readonly Named[] = []): Ref[] =>
    records.map(({ id }): Ref => `${kind}:${id}`);
  const cells = rowsOf(deck).flatMap(({ row }) =>
    deck.train.elements.map((element): Ref => `cell:${row.id}/${element.id}`),
  );
  const steps = (deck.sequences ?? []).flatMap((sequence) =>
    sequence.steps.map((step): Ref => `step:${sequence.id}/${step.id}`),
  );
  return new Set([
    ...refs('range', deck.chart.ranges),
    ...refs('neutral', deck.chart.neutral),
    ...refs('element', deck.train.elements),
    ...refs('gearset', deck.train.gearsets),
    ...refs('solenoid', deck.solenoids),
    ...refs('position', deck.lever?.positions),
    ...refs('sensor', deck.sensors),
    ...cells,
    ...steps,
  ]);
}

/** A caution is attached to things the deck has; otherwise it would never be shown. */
export const cautionsAttached: Rule = {
  id: 'cautions-attached',
  severity: 'error',
  check(deck) {
    const refs = everyRef(deck);
    return (deck.cautions ?? []).flatMap((caution, index) =>
      caution.attachedTo.flatMap((ref, entry) =>
        refs.has(ref) ? [] : [{ at: ['cautions', index, 'attachedTo', entry], values: { ref } }],
      ),
    );
  },
};
