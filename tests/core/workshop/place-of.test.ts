import { expect, test } from 'vitest';
import { type Ref, refsOf } from '../../../src/core/unit/refs.ts';
import { valueAt } from '../../../src/core/workshop/draft.ts';
import { placeOf } from '../../../src/core/workshop/place-of.ts';
import { baseDeck } from '../../content/base.ts';
import { shippedDecks } from '../../units.ts';

test.each([...shippedDecks(), baseDeck()].map((deck) => [deck.id, deck] as const))(
  'every reference of %s leads to a record that it names',
  (_, deck) => {
    for (const ref of refsOf(deck)) {
      const at = placeOf(deck, ref);
      expect(at, ref).not.toBeNull();
      const record = valueAt(deck, at!) as { id?: string; solenoid?: string; sensor?: string };
      const kind = ref.slice(0, ref.indexOf(':'));
      const names = ref.slice(kind.length + 1).split('/');
      if (kind === 'capacity' || kind === 'valve-body') expect(typeof record).toBe('object');
      else expect(names).toContain(record.id ?? record.solenoid ?? record.sensor);
    }
  },
);

test.each(['torque:none', 'plate:none/steel-1', 'step:strip/none', 'nothing:1', 'range:'])(
  'what is not there has no place: %s',
  (ref) => {
    expect(placeOf(shippedDecks()[0], ref as Ref)).toBeNull();
  },
);
