/** Every shipped deck is in order, and every family that can ask has something to ask on it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadDeck } from '../src/content/load.ts';
import { behaviourOf } from '../src/core/faults/behaviour.ts';
import { unpluggedAt } from '../src/core/hydraulics/pressurised.ts';
import { fitPart } from '../src/core/measure/select.ts';
import { ask } from '../src/core/questions/ask.ts';
import { FAMILIES } from '../src/core/questions/families/index.ts';
import type { ThingKind } from '../src/core/questions/phrase.ts';
import { closingSteps } from '../src/core/sequence/last-chance.ts';
import { chainOf, countChains } from '../src/core/sequence/order.ts';
import type { Deck } from '../src/core/unit/deck.ts';
import { harnessOf } from '../src/core/unit/electrical.ts';
import { fitWith, readingOf } from '../src/core/unit/fits.ts';
import { limitsIn, type Named } from '../src/core/unit/record.ts';
import { unsureRefsOf } from '../src/core/unit/refs.ts';
import { assemblyPrecedenceOf, precedenceOf } from '../src/core/unit/sequences.ts';
import { clearanceMm } from '../src/core/unit/stacks.ts';
import { LANGUAGES } from '../src/words/figures.ts';
import { sentence } from './content/base.ts';
import { given } from './results.ts';

const folder = new URL('../decks/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
const textOf = (name: string) => readFileSync(new URL(name, folder), 'utf8');

function unitOf(name: string) {
  const loaded = loadDeck(textOf(name));
  if (!loaded.ok) throw new Error(loaded.error.map(sentence).join('\n'));
  return loaded.value;
}

/**
 * What a deck names, by kind of reference: all that pages speak of. No alias can be written for shafts,
 * which have no reference, nor for plates, many of which go by one word; steps and codes have a text and no name.
 */
const NAMED: Readonly<
  Record<Exclude<ThingKind, 'shaft'> | 'neutral', (deck: Deck) => readonly Named[] | undefined>
> = {
  element: ({ train }) => train.elements,
  gearset: ({ train }) => train.gearsets,
  range: ({ chart }) => chart.ranges,
  neutral: ({ chart }) => chart.neutral,
  solenoid: ({ solenoids }) => solenoids,
  position: ({ lever }) => lever?.positions,
  interlock: ({ interlocks }) => interlocks,
  sensor: ({ sensors }) => sensors,
  part: ({ shaftLine }) => shaftLine,
  seat: ({ seats }) => seats,
  stack: ({ stacks }) => stacks,
  fit: ({ fits }) => fits,
  sequence: ({ sequences }) => sequences,
  supply: ({ electrical }) => electrical?.supplies,
  thermistor: ({ electrical }) => electrical?.thermistors,
  connector: ({ electrical }) => electrical?.connectors,
  fluid: ({ fluids }) => fluids,
  torque: ({ torques }) => torques,
  weight: ({ weights }) => weights,
};

/** "B1" and "1m" are marks in every language; "input-speed" is two English words. */
const isWorded = ({ id, name = id }: Named): boolean => /\p{Ll}{3}/u.test(name);

describe.each(files)('decks/%s', (name) => {
  test('has neither errors nor warnings', () => {
    expect(unitOf(name).warnings.map(sentence)).toEqual([]);
  });

  test('is named as its file, and points editors at the schema', () => {
    expect(unitOf(name).deck.id).toBe(name.replace(/\.json$/, ''));
    expect(JSON.parse(textOf(name)).$schema).toBe('../public/deck.schema.json');
  });

  test('every family with facts here asks about them', () => {
    const { unit } = unitOf(name);
    for (const family of FAMILIES) {
      if (family.facts(unit).length === 0) continue;
      const asked = [1, 2, 3, 4, 5].filter((seed) => ask(unit, family, seed));
      expect([family.id, asked.length]).toEqual([family.id, 5]);
    }
  });

  test('says where its values come from, and leaves some unsure', () => {
    const { deck } = unitOf(name).unit;
    const values = [...deck.train.gearsets, ...deck.train.elements, ...deck.chart.ranges, ...deck.solenoids!];
    expect(values.filter((value) => value.source === undefined)).toEqual([]);
    expect(JSON.stringify(deck)).toMatch(/"unsure"|"unsureCells"/);
  });

  test.each(Object.entries(NAMED))(
    'every %s has a name in each other language of the page',
    (kind, listed) => {
      const { deck } = unitOf(name);
      const others = LANGUAGES.filter((language) => language !== deck.language);
      const called = new Set(deck.aliases!.map((alias) => `${alias.of} in ${alias.language}`));
      const wanted = (listed(deck) ?? [])
        .filter(isWorded)
        .flatMap(({ id }) => others.map((language) => `${kind}:${id} in ${language}`));
      expect(wanted.filter((each) => !called.has(each))).toEqual([]);
    },
  );

  test('every caution is reviewed', () => {
    const cautions = unitOf(name).deck.cautions ?? [];
    expect(cautions.length).toBeGreaterThan(0);
    expect(cautions.filter((caution) => caution.reviewed === undefined)).toEqual([]);
  });
});

test('each family has facts in a shipped deck', () => {
  const units = files.map((name) => unitOf(name).unit);
  const idle = FAMILIES.filter((family) => units.every((unit) => family.facts(unit).length === 0));
  expect(idle.map((family) => family.id)).toEqual([]);
});

/** What each unit does with its connector off, worked by hand from chart, solenoids and valve. */
describe('connector off', () => {
  test.each([
    // full when unplugged: A (B1) and E (C2); R feeds B3 by hand; L closes C2
    ['kestrel-7.json', 'D', '3'],
    ['kestrel-7.json', 'R', 'R'],
    ['kestrel-7.json', 'N', null],
    ['kestrel-7.json', 'P', null],
    ['kestrel-7.json', 'L', null],
    // full when unplugged: 2 (C2) and 3 (B1), the neutral row, wherever the lever is
    ['dunlin-9.json', 'D', null],
    ['dunlin-9.json', 'R', null],
    // full when unplugged: 1 (C1), 4 (B3), 5 (C3). In D, B3 holds the race and its one-way the large sun; in
    // "2" only C1 is left and the low one-way holds; R, N and L feed B2 by hand
    ['plover-4.json', 'D', '2'],
    ['plover-4.json', '2', '1'],
    ['plover-4.json', 'L', '1m'],
    ['plover-4.json', 'R', 'R'],
    ['plover-4.json', 'N', null],
  ])('%s in %s: range %s', (name, position, range) => {
    const { unit, deck } = unitOf(name);
    const behaviour = behaviourOf(unit, unpluggedAt(deck, position)!);
    expect(behaviour.does === 'drives' ? behaviour.range : null).toBe(range);
  });
});

/** The two units that are recorded whole: enough of everything for somebody who takes one apart. */
describe.each(['kestrel-7.json', 'dunlin-9.json'])('decks/%s is a whole unit', (name) => {
  const { unit, deck } = unitOf(name);
  const elements = deck.train.elements.map(({ id }) => id);

  test('ten thrust bearings and washers, a pack and a capacity for each element, six fits', () => {
    const thrust = (deck.seats ?? []).filter(({ kind }) => kind.startsWith('thrust-'));
    expect(thrust.length).toBeGreaterThanOrEqual(10);
    expect((deck.stacks ?? []).map(({ element }) => element).sort()).toEqual([...elements].sort());
    expect(deck.train.elements.filter(({ capacity }) => !capacity)).toEqual([]);
    expect((deck.fits ?? []).length).toBeGreaterThanOrEqual(6);
  });

  test('plates and fits bear each other out: nominal clearance in the middle half of its limits', () => {
    const clearances = deck.fits!.filter(({ kind }) => kind === 'clutch-clearance');
    expect(clearances).toHaveLength(elements.length);
    for (const fit of clearances) {
      const clearance = given(clearanceMm(deck.stacks!.find(({ id }) => id === fit.stack)!)!);
      const { low, high } = limitsIn(fit.limits, 'mm');
      expect([fit.id, clearance.sub(low.add(high).div(2n)).abs().lte(high.sub(low).div(4n))]).toEqual([
        fit.id,
        true,
      ]);
    }
  });

  test('the reading of each fit leads to the part that the bench chose', () => {
    const readings = deck.fits!.flatMap((fit) => (fit.readings ?? []).map((reading) => ({ fit, reading })));
    expect(readings.length).toBeGreaterThanOrEqual(6);
    for (const { fit, reading } of readings) {
      const fitted = given(fitPart(fitWith(fit, readingOf(fit, reading)!)));
      expect([fit.id, fitted.part.id]).toEqual([fit.id, reading.chosen]);
    }
  });

  test('some parts go in turned round and some do not, seen from both ends', () => {
    const turned = deck.seats!.flatMap((seat) => (seat.turned ? [seat.turned.goesIn] : []));
    expect(turned.filter((goesIn) => goesIn).length).toBeGreaterThanOrEqual(3);
    expect(turned.filter((goesIn) => !goesIn).length).toBeGreaterThanOrEqual(3);
    expect(deck.seats!.some(({ viewedFrom }) => viewedFrom === 'rear')).toBe(true);
  });

  test('forty steps and more each way, with reasons, and no fixed order of all of them', () => {
    const strip = deck.sequences!.find(({ id }) => id === 'strip')!;
    const ways = [given(precedenceOf(strip)), given(assemblyPrecedenceOf(strip))];
    for (const way of ways) {
      expect(way.ids.length).toBeGreaterThanOrEqual(40);
      expect(chainOf(way, way.ids)).toBeNull();
      expect(countChains(way, 4)).toBeGreaterThan(100n);
    }
    expect(ways[1]!.ids).not.toContain(strip.assembly!.leftOut![0]!.step);
    expect(strip.checks!.map(({ during }) => during)).toContain('assembly');
    for (const check of strip.checks!) {
      const way = ways[check.during === 'strip' ? 0 : 1]!;
      expect([check.id, given(closingSteps(way, check)).length]).toEqual([check.id, 1]);
    }
  });

  test('every solenoid has a winding, a pin and a name that is not its id', () => {
    const { windings = [], connectors = [] } = deck.electrical!;
    const served = connectors.flatMap(({ pins }) => pins.map(({ serves }) => serves));
    for (const { id, name } of deck.solenoids!) {
      expect(windings.map(({ solenoid }) => solenoid)).toContain(id);
      expect(served).toContain(`solenoid:${id}`);
      expect(name).toMatch(/solenoid$/);
    }
    expect(deck.electrical!.supplies!.some(({ id }) => harnessOf(deck.electrical!, id))).toBe(true);
  });

  test('fluid, torques, weights, codes and other names', () => {
    expect(deck.fluids).toHaveLength(1);
    expect(deck.torques!.length).toBeGreaterThanOrEqual(8);
    expect(deck.weights!.length).toBeGreaterThanOrEqual(2);
    expect(deck.codes!.length).toBeGreaterThanOrEqual(15);
    expect(deck.aliases!.length).toBeGreaterThanOrEqual(10);
  });

  test('a few values are not sure, and some were entered in inches and pounds', () => {
    const unsure = [...unsureRefsOf(deck)];
    const kinds = new Set(unsure.map((ref) => ref.split(':')[0]));
    for (const kind of ['seat', 'torque', 'winding', 'sensor', 'step']) expect([...kinds]).toContain(kind);
    expect(unsure.some((ref) => unit.sure(ref))).toBe(false);
    const text = textOf(name);
    expect(text.match(/"unit": "in"/g)!.length).toBeGreaterThanOrEqual(2);
    expect(text).toMatch(/"unit": "(lbf·in|lbf·ft)"/);
  });

  test('no caution says what the page says itself', () => {
    expect(deck.cautions!.filter(({ text }) => /service information comes first/i.test(text))).toEqual([]);
  });
});
