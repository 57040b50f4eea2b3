/**
 * A deck without findings that the tests of src/content break in one place or another: the published
 * Ravigneaux four-speed (tests/published) with its printed ratios, and made-up oil, sequence, cautions and data
 * for the hands (hand-data.ts).
 */
import type { Finding } from '../../src/content/finding.ts';
import { whereOf } from '../../src/content/finding.ts';
import { makeSay } from '../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { addHandData } from './hand-data.ts';

const train = PUBLISHED.find((candidate) => candidate.id === 'ravigneaux-4-a')!;

// biome-ignore lint/suspicious/noExplicitAny: tests put anything anywhere in a deck
export type Loose = any;

/** A fresh copy that may be broken at will. */
export function baseDeck(): Loose {
  const deck: Loose = structuredClone(deckOf(train));
  for (const [index, row] of train.chart.entries())
    deck.chart.ranges[index].ratio = row.publishedRatio.toFixed(row.decimals);
  deck.sources = [{ id: 'manual', title: 'Service manual' }];
  deck.sequences = [
    {
      id: 'strip',
      steps: [
        { id: 'drain', text: 'Drain the fluid.' },
        { id: 'pan-off', text: 'Take the pan off.', after: [{ step: 'drain', reason: 'It spills.' }] },
        {
          id: 'filter-off',
          text: 'Take the filter off.',
          after: [{ step: 'pan-off', reason: 'It hides it.' }],
        },
      ],
    },
  ];
  deck.cautions = [
    { id: 'hot', hazard: 'hot-fluid', text: 'Let it cool.', attachedTo: ['step:strip/drain', 'cell:1/C1'] },
  ];
  addHandData(deck);
  return deck;
}

const say = makeSay(null);

/** "error rule /pointer: found …; expected …" */
export function told({ severity, rule, place, found, expected }: Finding): string {
  return `${severity} ${rule} ${place.pointer}: found ${say(found)}; expected ${say(expected)}`;
}

export function sentence({ place, found, expected }: Finding): string {
  return say({ key: 'finding.sentence', values: { where: whereOf(place), found, expected } });
}
