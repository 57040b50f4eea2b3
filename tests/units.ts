/** Units the tests run on: the shipped decks, and decks built on the published trains (tests/published). */
import { readdirSync, readFileSync } from 'node:fs';
import type { Train } from '../src/core/gears/train.ts';
import type { Deck, DeckSolenoid } from '../src/core/unit/deck.ts';
import { makeUnit, type Unit } from '../src/core/unit/unit.ts';
import { benchData, withCapacity } from './bench-data.ts';
import published from './published/trains.json' with { type: 'json' };
import { handsOf } from './shop-data.ts';

export interface PublishedTrain extends Train {
  readonly id: string;
  readonly title: string;
  readonly source: string;
  /** How we have it on the whole: seen in the source, recalled, or worked back from the ratios. */
  readonly provenance: 'read' | 'memory' | 'inferred';
  /** The same for its parts, where they differ. */
  readonly provenanceDetail?: Readonly<Record<'topology' | 'teeth' | 'chart' | 'ratios', string>>;
  readonly note?: string;
  /** How far a solved ratio may be from the published one; half a unit of the last decimal if not said. */
  readonly tolerance?: 'half a unit of the last decimal' | 'one unit of the last decimal';
  readonly chart: readonly {
    readonly range: string;
    readonly applied: readonly string[];
    readonly publishedRatio: number;
    readonly decimals: number;
  }[];
}

export const PUBLISHED = published as unknown as readonly PublishedTrain[];

const decksFolder = `${import.meta.dirname}/../decks`;

export const shippedDecks = (): Deck[] =>
  readdirSync(decksFolder)
    .filter((name) => name.endsWith('.json'))
    .map((name) => JSON.parse(readFileSync(`${decksFolder}/${name}`, 'utf8')) as Deck);

/** Trains that the bench has measured, and in which unit of length. */
const BENCHED: Readonly<Record<string, 'mm' | 'in'>> = {
  'four-range-two-crossed-sets': 'mm',
  'ravigneaux-4-a': 'in',
  'lepelletier-6-a': 'mm',
};

const frictionOf = (train: PublishedTrain) => train.elements.filter(({ kind }) => kind !== 'one-way');

const solenoidsOf = (train: PublishedTrain): DeckSolenoid[] =>
  frictionOf(train).map((element, index) => ({
    id: `S${index + 1}`,
    kind: 'linear',
    feeds: [element.id],
    whenUnplugged: index % 2 === 0 ? 'none' : 'full',
  }));

/**
 * A deck on a published train. The train and chart are as published; solenoids, lever and sensors are made up
 * here so that every family has something to ask: one solenoid for each friction element, every second one
 * full when unplugged, and a manual valve that opens all feeds in D. Some have shop data too (shop-data.ts). What the bench measures is made up in
 * bench-data.ts, for the trains in BENCHED.
 */
export function deckOf(train: PublishedTrain): Deck {
  const solenoids = solenoidsOf(train);
  const metric = BENCHED[train.id];
  const bench = metric === undefined ? undefined : benchData(solenoids, metric === 'mm');
  const friction = frictionOf(train);
  const forward = train.chart.filter((row) => row.publishedRatio > 0);
  const reverse = train.chart.filter((row) => row.publishedRatio < 0);
  const used = (rows: typeof forward) => [
    ...new Set(
      rows.flatMap((row) => row.applied).filter((id) => friction.some((element) => element.id === id)),
    ),
  ];
  return {
    detentDeck: 1,
    id: train.id,
    title: train.title,
    unit: train.title,
    revision: 1,
    train: {
      input: train.input,
      output: train.output,
      gearsets: train.gearsets,
      elements: bench ? withCapacity(train.elements, metric === 'mm') : train.elements,
    },
    chart: {
      ranges: train.chart.map((row) => ({ id: row.range, applied: row.applied })),
      neutral: [{ id: 'N', applied: [] }],
    },
    solenoids,
    lever: {
      valve: 'manual',
      positions: [
        { id: 'D', rows: forward.map((row) => row.range), opens: used(forward) },
        { id: 'N', rows: ['N'], opens: [] },
        ...(reverse.length > 0
          ? [{ id: 'R', rows: reverse.map((row) => row.range), opens: used(reverse) }]
          : []),
      ],
    },
    sensors: [
      { id: 'input-speed', reads: train.input, teeth: 30 },
      { id: 'output-speed', reads: train.output, teeth: 45 },
    ],
    ...handsOf(train),
    ...(bench
      ? {
          fits: bench.fits,
          stacks: bench.packs,
          electrical: bench.electrical,
          torques: bench.torques,
          fluids: bench.fluids,
        }
      : {}),
  };
}

export const publishedUnits = (): Unit[] => PUBLISHED.map((train) => makeUnit(deckOf(train)));

/** One of them gets an interlock, made up: its top range keeps off the clutch that would tie it up. */
const withInterlock = (deck: Deck): Deck =>
  deck.id === 'ravigneaux-4-a'
    ? { ...deck, interlocks: [{ id: 'X1', whenApplied: ['C2', 'B1'], blocks: ['C1'] }] }
    : deck;

/** Every unit that family properties run on. */
export const everyUnit = (): Unit[] => [
  ...shippedDecks().map(makeUnit),
  ...PUBLISHED.map((train) => makeUnit(withInterlock(deckOf(train)))),
];
