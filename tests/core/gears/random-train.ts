/** Trains made up at random: mostly nonsense as transmissions, which is the point. */
import {
  CASE,
  ELEMENT_KINDS,
  type Element,
  GEARSET_KINDS,
  type Gearset,
  type Train,
} from '../../../src/core/gears/train.ts';
import type { Random } from '../../../src/core/random.ts';
import { PUBLISHED } from '../../units.ts';

export interface Case {
  readonly train: Train;
  readonly applied: readonly string[];
}

/** One to four gearsets over a few shafts, gears now and then on the case, and two to five elements. */
export function randomTrain(random: Random, kinds: readonly Element['kind'][] = ELEMENT_KINDS): Train {
  const sets = random.int(1, 4);
  const inner = Array.from({ length: random.int(1, sets + 2) }, (_, index) => `s${index}`);
  const shafts = ['in', 'out', ...inner];
  const gearsets = Array.from({ length: sets }, (_, index): Gearset => {
    const [sun, ring, carrier] = random.sample(random.int(0, 7) === 0 ? [...shafts, CASE] : shafts, 3);
    const teeth = random.int(17, 60);
    return {
      id: `P${index}`,
      kind: random.pick(GEARSET_KINDS),
      sun: { shaft: sun!, teeth },
      ring: { shaft: ring!, teeth: teeth + random.int(13, 60) },
      carrier: { shaft: carrier! },
    };
  });
  const elements = Array.from({ length: random.int(2, 5) }, (_, index): Element => {
    const kind = random.pick(kinds);
    const first = random.pick(shafts);
    const other = random.pick(shafts.filter((shaft) => shaft !== first));
    const toCase = kind === 'brake' || (kind === 'one-way' && random.int(0, 1) === 0);
    return {
      id: `E${index}`,
      kind,
      between: [first, toCase ? CASE : other],
      ...(kind === 'one-way' && random.int(0, 1) === 0 ? { overruns: 'backward' as const } : {}),
    };
  });
  return { input: 'in', output: 'out', gearsets, elements };
}

/** A random train with a random choice of its elements applied. */
export function randomCase(random: Random): Case {
  const train = randomTrain(random);
  const ids = train.elements.map((element) => element.id);
  return { train, applied: random.sample(ids, random.int(0, Math.min(4, ids.length))) };
}

/** Every range of every published train, then as many random choices of elements on the same trains. */
export function publishedCases(random: Random): Case[] {
  return PUBLISHED.flatMap((train) =>
    train.chart.flatMap(({ applied }) => {
      const ids = train.elements.map((element) => element.id);
      return [
        { train, applied },
        { train, applied: random.sample(ids, random.int(0, 4)) },
      ];
    }),
  );
}
