/**
 * Never-seen units: a train, a chart and all that a deck can say of oil, torque and current, made from a seed, for
 * questions that cannot be answered from memory. Gearsets are drawn at random; sets of elements are then gone
 * through on them for the chart with the most ranges (docs/spec/transfer.md). The same seed gives the same unit.
 */

import { solveSpeeds } from '../gears/solve.ts';
import { randomFrom, seedOf } from '../random.ts';
import { makeDecimal } from '../rational.ts';
import type { Deck, DeckRange } from '../unit/deck.ts';
import { makeUnit, type Unit } from '../unit/unit.ts';
import { findLayout } from './layout.ts';
import { unitName } from './names.ts';
import { drawOil, neutralRows } from './oil.ts';
import { drawElectrical, SENSORS, withCapacities } from './records.ts';
import { drawSkeleton } from './skeleton.ts';
import { chartTrain, withOneWay } from './train.ts';

/** Gearsets, freedoms (one more than the elements that are on in a range), elements. */
const SHAPES = [
  { sets: 2, freedoms: 3, elements: 5 },
  { sets: 3, freedoms: 3, elements: 5 },
  { sets: 3, freedoms: 3, elements: 6 },
  { sets: 3, freedoms: 4, elements: 6 },
  { sets: 4, freedoms: 4, elements: 5 },
  { sets: 4, freedoms: 4, elements: 6 },
] as const;

/** Draws of gearsets before giving up; one in some hundreds makes a unit. */
const MOST_DRAWS = 200_000;
const PLACES = 3;

/** The deck of the never-seen unit of this seed, a 32-bit whole number. */
export function makeUnseenDeck(seed: number): Deck {
  const random = randomFrom(seedOf('unseen', seed));
  const shape = random.pick(SHAPES);
  const wantsOneWay = random.int(0, 1) === 0;
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const skeleton = drawSkeleton(random, shape.sets, shape.freedoms);
    const layout = skeleton && findLayout(skeleton, shape.elements, random);
    const plain = layout && chartTrain(skeleton, layout);
    if (!plain) continue;
    const charted = (wantsOneWay && withOneWay(plain)) || plain;
    const { train, chart } = charted;
    const { solenoids, lever } = drawOil(charted, random);
    const stated = (row: (typeof chart.forward)[number]): DeckRange => ({
      ...row,
      ratio: makeDecimal(solveSpeeds(train, row.applied).ratio!, PLACES),
    });
    const name = unitName(random, layout.forward.length);
    return {
      detentDeck: 1,
      id: `unseen-${seed >>> 0}`,
      title: name,
      unit: name,
      revision: 1,
      train: { ...train, elements: withCapacities(charted, random) },
      chart: { ranges: [...chart.forward, chart.reverse].map(stated), neutral: neutralRows(chart) },
      solenoids,
      lever,
      sensors: SENSORS,
      electrical: drawElectrical(solenoids, random),
    };
  }
  throw new Error(`no unit from seed ${seed}`);
}

/** The never-seen unit of this seed, solved. */
export const makeUnseenUnit = (seed: number): Unit => makeUnit(makeUnseenDeck(seed));
