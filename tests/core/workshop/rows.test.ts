import { describe, expect, test } from 'vitest';
import { makeDecimal } from '../../../src/core/rational.ts';
import { applyEdit, type DeckDraft } from '../../../src/core/workshop/draft.ts';
import { readRows } from '../../../src/core/workshop/rows.ts';
import {
  countOf,
  drawnTrain,
  freshShaft,
  membersOn,
  shaftsOfDraft,
  solvableTrain,
} from '../../../src/core/workshop/train.ts';
import { layoutTrain } from '../../../src/ui/drawings/train-layout.ts';
import { deckOf, PUBLISHED } from '../../units.ts';

const WORDS = { input: 'in', output: 'out' };
const drafts = PUBLISHED.map((train) => deckOf(train) as DeckDraft);

/** The draft as somebody types it: set after set, gear after gear, then element after element. */
function* asTyped({ train }: DeckDraft): Generator<DeckDraft> {
  const { input, output, gearsets = [], elements = [] } = train!;
  yield { train: { input, output } };
  for (const [count, set] of gearsets.entries()) {
    const before = gearsets.slice(0, count);
    const { sun, ring, ...bare } = set;
    yield { train: { input, output, gearsets: [...before, { id: bare.id, kind: bare.kind }] } };
    yield { train: { input, output, gearsets: [...before, { ...bare, sun: { shaft: sun?.shaft } }] } };
    yield { train: { input, output, gearsets: [...before, { ...bare, sun, ring: { shaft: ring?.shaft, teeth: '4e' } }] } };
  }
  for (const count of elements.keys()) {
    const before = elements.slice(0, count);
    const { id, kind, between = [] } = elements[count]!;
    yield { train: { input, output, gearsets, elements: [...before, { id, kind }] } };
    yield { train: { input, output, gearsets, elements: [...before, { id, kind, between: [between[0] ?? '', ''] }] } };
    yield { train: { input, output, gearsets, elements: elements.slice(0, count + 1) } };
  }
} // biome-ignore format: drafts read across

describe('the train as far as it stands', () => {
  test('every state on the way to a published train can be drawn, or is not drawn at all', () => {
    // Laying out takes a while: one train of each make.
    for (const id of ['four-range-two-crossed-sets', 'ravigneaux-4-a', 'lepelletier-6-a'])
      for (const state of asTyped(drafts[PUBLISHED.findIndex((train) => train.id === id)]!)) {
        const train = drawnTrain(state);
        if (!train) continue;
        const { width, height, sets } = layoutTrain(train, WORDS);
        expect(Number.isFinite(width) && Number.isFinite(height)).toBe(true);
        expect(sets).toHaveLength(state.train?.gearsets?.length ?? 0);
      }
  });

  test('the whole of it is the train itself', () => {
    for (const [index, draft] of drafts.entries()) {
      const { gearsets, elements } = solvableTrain(draft)!;
      const published = PUBLISHED[index]!;
      expect(gearsets).toEqual(published.gearsets.map(({ id, kind, sun, ring, carrier }) => ({ id, kind, sun, ring, carrier })));
      expect(elements.map(({ id, kind, between }) => [id, kind, between])).toEqual(published.elements.map(({ id, kind, between }) => [id, kind, between]));
    } // biome-ignore format: comparisons read across
  });

  const whole = drafts[0]!;
  test.each<[string, DeckDraft]>([
    ['no set', { train: { input: 'a', output: 'b' } }],
    ['two sets of one id', { ...whole, train: { ...whole.train, gearsets: [whole.train!.gearsets![0]!, whole.train!.gearsets![0]!] } }],
    ['the same shaft in and out', { ...whole, train: { ...whole.train, output: whole.train!.input } }],
    ['a set on one shaft only', { train: { gearsets: [{ id: 'P', kind: 'simple', sun: { shaft: 'a' }, ring: { shaft: 'a' }, carrier: { shaft: 'b' } }] } }],
  ])('%s is not drawn', (_, draft) => {
    expect(drawnTrain(draft)).toBeNull();
  }); // biome-ignore format: a table reads across

  test('a train with a gear that nobody counted is drawn, and not solved', () => {
    const open = applyEdit(whole, { kind: 'set', at: ['train', 'gearsets', 0, 'ring', 'teeth'], value: '' });
    expect(drawnTrain(open)).not.toBeNull();
    expect(solvableTrain(open)).toBeNull();
  });

  test.each([['43', 43], [43, 43], [' 7 ', 7], ['', null], ['4e', null], ['0', null], ['-3', null], ['1000', null], [undefined, null]])(
    'a count typed as %j is %j', (typed, count) => {
      expect(countOf(typed)).toBe(count);
    },
  ); // biome-ignore format: a table reads across

  test('shafts by first mention, a fresh one beside them, and what sits on one', () => {
    const draft: DeckDraft = {
      train: { input: 'in', output: 'out', gearsets: [{ id: 'P1', sun: { shaft: 's1' }, ring: { shaft: 'out' }, carrier: { shaft: '' } }], elements: [{ between: ['s3', 'case'] }] },
    }; // biome-ignore format: a draft reads across
    expect(shaftsOfDraft(draft)).toEqual(['in', 'out', 's1', 's3']);
    expect(freshShaft(draft)).toBe('s2');
    expect(membersOn(draft, 'out')).toEqual([{ set: 'P1', index: 0, member: 'ring' }]);
  });
});

describe('rows solved while they are typed', () => {
  test('every published row gives the published ratio, and agrees with it as stated', () => {
    for (const [index, { chart, tolerance }] of PUBLISHED.entries()) {
      const ranges = chart.map(({ range, applied, publishedRatio, decimals }) => ({ id: range, applied, ratio: publishedRatio.toFixed(decimals) }));
      const readings = readRows({ ...drafts[index], chart: { ranges } }).ranges;
      for (const [row, { state, ratio, agrees }] of readings.entries()) {
        expect(state).toBe('drives');
        const { publishedRatio, decimals } = chart[row]!;
        const off = Math.abs(Number(makeDecimal(ratio!, 9)) - publishedRatio);
        expect(off).toBeLessThanOrEqual(10 ** -decimals);
        // A source that is only true to a whole unit of its last digit may round otherwise.
        if (tolerance !== 'one unit of the last decimal') expect(agrees).toBe(true);
      }
    } // biome-ignore format: a row reads across
  });

  // Two crossed simple sets: sun of each braked or driven; by hand, ring held: (sun + ring) / sun.
  const one: DeckDraft = {
    train: {
      input: 'in',
      output: 'out',
      gearsets: [{ id: 'P1', kind: 'simple', sun: { shaft: 'in', teeth: '30' }, ring: { shaft: 'r', teeth: '70' }, carrier: { shaft: 'out' } }],
      elements: [{ id: 'B1', kind: 'brake', between: ['r', 'case'] }, { id: 'C1', kind: 'clutch', between: ['in', 'r'] }],
    },
  }; // biome-ignore format: a draft reads across

  test.each([
    [['B1'], '3.333', 'drives', true],
    [['B1'], '3,33', 'drives', true],
    [['B1'], '3.34', 'drives', false],
    [['B1'], '-3.333', 'drives', false],
    [['B1'], '', 'drives', null],
    [['B1'], '3.x', 'drives', null],
    [['C1'], '1', 'drives', true],
    [[], '1.000', 'free', null],
    [['B1', 'C1'], '', 'tied-up', null],
    [['B9'], '3.333', 'waits', null],
  ])('with %j on and %j stated: %s, agrees %s', (applied, ratio, state, agrees) => {
    const [reading] = readRows({ ...one, chart: { ranges: [{ id: '1', applied, ratio }] } }).ranges;
    expect(reading).toMatchObject({ state, agrees });
  });

  test('a ratio that is cut off and not rounded agrees: 20/3 stated as 6.66', () => {
    const draft = applyEdit(one, { kind: 'set', at: ['train', 'gearsets', 0, 'ring', 'teeth'], value: '170' });
    const rows = ['6.66', '6.67', '6.65'].map((ratio) => ({ applied: ['B1'], ratio }));
    expect(readRows({ ...draft, chart: { ranges: rows } }).ranges.map(({ agrees }) => agrees)).toEqual([true, true, false]);
  }); // biome-ignore format: three rows

  test('neutral rows let one-ways act by themselves', () => {
    const draft: DeckDraft = { ...one, train: { ...one.train, elements: [{ id: 'F1', kind: 'one-way', between: ['r', 'case'] }] } };
    const { ranges, neutral } = readRows({ ...draft, chart: { ranges: [{ id: '1', applied: [] }], neutral: [{ id: 'N', applied: [] }] } });
    expect(ranges[0]?.state).toBe('free');
    expect(neutral[0]?.state).toBe('drives');
  }); // biome-ignore format: drafts read across
});
