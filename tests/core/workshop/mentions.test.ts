import { describe, expect, test } from 'vitest';
import { parseDeck } from '../../../src/content/load.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { applyEdit, type DeckDraft, type Place } from '../../../src/core/workshop/draft.ts';
import { writeDeck } from '../../../src/core/workshop/finish.ts';
import {
  dropMentions,
  MENTIONED_KINDS,
  type MentionedKind,
  renameMentions,
} from '../../../src/core/workshop/mentions.ts';
import { baseDeck } from '../../content/base.ts';
import { shippedDecks } from '../../units.ts';

/** Where the records of a kind are listed. */
const LISTS: Readonly<Record<MentionedKind, readonly Place[]>> = {
  source: [['sources']],
  shaft: [['train', 'shafts']],
  gearset: [['train', 'gearsets']],
  element: [['train', 'elements']],
  row: [['chart', 'ranges'], ['chart', 'neutral']],
  solenoid: [['solenoids']],
  sensor: [['sensors']],
  part: [['shaftLine']],
  seat: [['seats']],
  stack: [['stacks']],
  fit: [['fits']],
  position: [['lever', 'positions']],
  sequence: [['sequences']],
  supply: [['electrical', 'supplies']],
  thermistor: [['electrical', 'thermistors']],
  connector: [['electrical', 'connectors']],
  fluid: [['fluids']],
  torque: [['torques']],
  weight: [['weights']],
  code: [['codes']],
}; // biome-ignore format: a table reads across

type Listed = readonly { readonly id: string }[] | undefined;
const listAt = (deck: unknown, at: Place): Listed =>
  at.reduce<unknown>((value, step) => (value as Record<string, unknown> | undefined)?.[step], deck) as Listed;

const errorsOf = (deck: unknown) => {
  const parsed = parseDeck(writeDeck(deck));
  return (parsed.ok ? parsed.value.findings : parsed.error)
    .filter(({ severity }) => severity === 'error')
    .map(({ rule, place }) => `${rule} ${place.pointer}`);
};

/** Rules that say that something is named which is not there. */
const DANGLING = /^(sources|shafts|elements|rows|steps|things|records)-exist|^cautions-attached|^seats-touch/;

const decks: readonly Deck[] = [...shippedDecks(), baseDeck()];

describe('called otherwise', () => {
  test.each(MENTIONED_KINDS)('a %s takes all its mentions along: the checks find nothing', (kind) => {
    let renamed = 0;
    for (const deck of decks)
      for (const at of LISTS[kind]) {
        const list = listAt(deck, at) ?? [];
        // The first and the last of each list; every one would only be slower.
        for (const index of new Set([0, list.length - 1].filter((place) => place in list))) {
          const { id } = list[index]!;
          const apart = applyEdit(deck as DeckDraft, {
            kind: 'set',
            at: [...at, index, 'id'],
            value: 'new-id',
          });
          const made = renameMentions(apart, kind, id, 'new-id');
          expect(errorsOf(made)).toEqual([]);
          expect(renameMentions(made, kind, 'new-id', id)).toEqual(renameMentions(apart, kind, 'new-id', id));
          renamed++;
        }
      }
    expect(renamed).toBeGreaterThan(0);
  });

  test('a name that is nobody’s changes nothing, and shares everything', () => {
    for (const kind of MENTIONED_KINDS) {
      expect(renameMentions(decks[0] as DeckDraft, kind, 'nobody', 'x')).toBe(decks[0]);
      expect(renameMentions(decks[0] as DeckDraft, kind, '', 'x')).toBe(decks[0]);
    }
  });

  test('ids of another kind are left alone', () => {
    const draft: DeckDraft = {
      solenoids: [{ id: 'S1', feeds: ['B1', 'line-pressure'] }],
      stacks: [{ id: 'B1', element: 'B1' }],
      cautions: [
        { id: 'c', attachedTo: ['element:B1', 'stack:B1', 'cell:1/B1', 'cell:B1/C1', 'plate:B1/p'] },
      ],
    };
    expect(renameMentions(draft, 'element', 'B1', 'B9')).toEqual({
      solenoids: [{ id: 'S1', feeds: ['B9', 'line-pressure'] }],
      stacks: [{ id: 'B1', element: 'B9' }],
      cautions: [
        { id: 'c', attachedTo: ['element:B9', 'stack:B1', 'cell:1/B9', 'cell:B1/C1', 'plate:B1/p'] },
      ],
    });
  });
});

describe('taken away', () => {
  test.each(MENTIONED_KINDS)('nothing names a %s that is gone', (kind) => {
    for (const deck of decks)
      for (const at of LISTS[kind]) {
        const [record] = listAt(deck, at) ?? [];
        if (!record) continue;
        const apart = applyEdit(deck as DeckDraft, { kind: 'remove', at: [...at, 0] });
        const made = dropMentions(apart, kind, record.id);
        expect(errorsOf(made).filter((error) => DANGLING.test(error))).toEqual([]);
      }
  });

  test('what was only about it goes with it; a clutch keeps its two sides', () => {
    const draft: DeckDraft = {
      train: { input: 'a', elements: [{ id: 'C1', between: ['a', 'b'] }] },
      valveBody: { solenoids: [{ solenoid: 'SA', row: 1, column: 1 }, { solenoid: 'SB', row: 1, column: 2 }] },
      aliases: [{ of: 'solenoid:SA', names: ['A'] }],
    }; // biome-ignore format: a draft reads across
    expect(dropMentions(draft, 'solenoid', 'SA')).toMatchObject({
      valveBody: { solenoids: [{ solenoid: 'SB' }] },
      aliases: [],
    });
    expect(dropMentions(draft, 'shaft', 'b').train).toEqual({
      input: 'a',
      elements: [{ id: 'C1', between: ['a', ''] }],
    });
  });
});
