import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Random, randomFrom } from '../../../src/core/random.ts';
import { countOrders } from '../../../src/core/sequence/count.ts';
import {
  chainOf,
  chains,
  checkBeginning,
  checkOrder,
  countChains,
  nextSteps,
} from '../../../src/core/sequence/order.ts';
import {
  checkPrecedence,
  comparable,
  mustPrecede,
  type Precedence,
  type Step,
} from '../../../src/core/sequence/precedence.ts';
import { given, refusal } from '../../results.ts';
import { shippedDecks } from '../../units.ts';

/** From pairs "a<b", and lone steps. */
const steps = (text: string): Step[] => {
  const pairs = text
    .split(' ')
    .filter(Boolean)
    .map((word) => word.split('<'));
  const ids = [...new Set(pairs.flat())];
  return ids.map((id) => ({
    id,
    after: pairs.filter(([, later]) => later === id).map(([earlier]) => ({ step: earlier! })),
  }));
};
const precedence = (text: string): Precedence => given(checkPrecedence(steps(text)));
const lone = (n: number) => Array.from({ length: n }, (_, i) => `s${i}`).join(' ');
const line = (n: number, prefix = 'c') =>
  n === 1
    ? `${prefix}0`
    : Array.from({ length: n - 1 }, (_, i) => `${prefix}${i}<${prefix}${i + 1}`).join(' ');
/** Up, down, up, down … between neighbours. */
const fence = (n: number) =>
  n === 1
    ? 'f0'
    : Array.from({ length: n - 1 }, (_, i) => (i % 2 === 0 ? `f${i}<f${i + 1}` : `f${i + 1}<f${i}`)).join(
        ' ',
      );
/** Subsets of n things, by inclusion. */
const lattice = (n: number) =>
  Array.from({ length: 2 ** n }, (_, set) =>
    Array.from({ length: n }, (_, bit) => 1 << bit)
      .filter((bit) => (set & bit) === 0)
      .map((bit) => `b${set}<b${set | bit}`),
  )
    .flat()
    .join(' ') || 'b0';
const grid = (rows: number, columns: number) =>
  Array.from({ length: rows * columns }, (_, cell) => {
    const [r, c] = [Math.floor(cell / columns), cell % columns];
    return [
      ...(c + 1 < columns ? [`g${r}.${c}<g${r}.${c + 1}`] : []),
      ...(r + 1 < rows ? [`g${r}.${c}<g${r + 1}.${c}`] : []),
    ];
  })
    .flat()
    .join(' ');
/** A binary heap: each before its two children. */
const heap = (n: number) =>
  n === 1 ? 'h1' : Array.from({ length: n - 1 }, (_, i) => `h${Math.floor((i + 2) / 2)}<h${i + 2}`).join(' ');

function* permutations(items: readonly string[]): Generator<string[]> {
  if (items.length === 0) yield [];
  for (const [index, item] of items.entries())
    for (const tail of permutations(items.toSpliced(index, 1))) yield [item, ...tail];
}

/** Relations at random among n steps, always from the lower number to the higher. */
const anyPoset = (largest: number) =>
  fc.integer({ min: 1, max: largest }).chain((n) =>
    fc.array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 2 * n }).map((pairs) =>
      given(
        checkPrecedence(
          Array.from({ length: n }, (_, id) => ({
            id: `s${id}`,
            after: pairs
              .filter(([a, b]) => Math.max(a, b) === id && a !== b)
              .map(([a, b]) => ({ step: `s${Math.min(a, b)}` })),
          })),
        ),
      ),
    ),
  );

/** A legal order drawn step by step. */
function drawOrder(poset: Precedence, random: Random): string[] {
  const done: string[] = [];
  while (done.length < poset.ids.length) done.push(random.pick(nextSteps(poset, done)));
  return done;
}

describe('how many legal orders', () => {
  test.each<[title: string, poset: string, orders: string]>([
    ['nothing fixed, 1 step: 1!', lone(1), '1'],
    ['nothing fixed, 5 steps: 5!', lone(5), '120'],
    ['nothing fixed, 20 steps: 20!', lone(20), '2432902008176640000'],
    ['one line of 30', line(30), '1'],
    ['two lines of 3 and 4: 7 over 3', `${line(3, 'a')} ${line(4, 'b')}`, '35'],
    ['two lines of 20: 40 over 20', `${line(20, 'a')} ${line(20, 'b')}`, '137846528820'],
    ['three lines of 2: 6! / 2!³', `${line(2, 'a')} ${line(2, 'b')} ${line(2, 'c')}`, '90'],
    // zigzag numbers, OEIS A000111, from memory
    ['fence of 2', fence(2), '1'],
    ['fence of 3', fence(3), '2'],
    ['fence of 4', fence(4), '5'],
    ['fence of 5', fence(5), '16'],
    ['fence of 6', fence(6), '61'],
    ['fence of 7', fence(7), '272'],
    ['fence of 8', fence(8), '1385'],
    ['fence of 9', fence(9), '7936'],
    // lattice of subsets, OEIS A046873, from memory
    ['subsets of 1 thing', lattice(1), '1'],
    ['subsets of 2 things', lattice(2), '2'],
    ['subsets of 3 things', lattice(3), '48'],
    ['subsets of 4 things', lattice(4), '1680384'],
    ['subsets of 5 things', lattice(5), '14807804035657359360'],
    // two rows: Catalan numbers; three by three and by four: hook lengths, OEIS A005789, from memory
    ['2 by 4', grid(2, 4), '14'],
    ['2 by 10', grid(2, 10), '16796'],
    ['3 by 3', grid(3, 3), '42'],
    ['3 by 4', grid(3, 4), '462'],
    // heaps, OEIS A056971, from memory
    ['heap of 5', heap(5), '8'],
    ['heap of 7', heap(7), '80'],
    ['heap of 10', heap(10), '3360'],
  ])('%s', (_, poset, orders) => {
    expect(given(countOrders(precedence(poset))).toString()).toBe(orders);
  });

  test('as many as trying every order finds', () => {
    fc.assert(
      fc.property(anyPoset(6), (poset) => {
        const legal = [...permutations(poset.ids)].filter((order) => checkOrder(poset, order).ok);
        return given(countOrders(poset)) === BigInt(legal.length);
      }),
    );
  });

  test('too much free to move is refused, not waited for', () => {
    const wide = precedence(Array.from({ length: 40 }, (_, i) => `first<s${i}`).join(' '));
    expect(countOrders(wide, 10_000)).toEqual({ ok: false, error: { code: 'too-wide', limit: 10_000 } });
  });
});

describe('which orders are legal', () => {
  // worked by hand: pan off before filter, filter before body; harness any time before body
  const body = precedence('pan<filter filter<body harness<body body<pump');

  test.each<[order: string, code: string | null, step: string | null]>([
    ['pan filter harness body pump', null, null],
    ['harness pan filter body pump', null, null],
    ['pan harness filter body pump', null, null],
    ['filter pan harness body pump', 'too-early', 'filter'],
    ['pan filter body harness pump', 'too-early', 'body'],
    ['pan filter harness pump body', 'too-early', 'pump'],
    ['pan pan filter harness body', 'step-twice', 'pan'],
    ['pan filter harness body cooler', 'step-unknown', 'cooler'],
    ['pan filter harness body', 'steps-missing', null],
  ])('%s: %s', (order, code, step) => {
    const result = checkOrder(body, order.split(' '));
    expect(refusal(result)).toBe(code);
    expect(!result.ok && 'step' in result.error ? result.error.step : null).toBe(step);
  });

  test('what is done too early is told with all it lacks, and what is missing is named', () => {
    expect(checkOrder(body, ['harness', 'body'])).toEqual({
      ok: false,
      error: { code: 'too-early', step: 'body', needs: ['filter', 'pan'] },
    });
    expect(checkOrder(body, ['harness', 'pan'])).toEqual({
      ok: false,
      error: { code: 'steps-missing', steps: ['filter', 'body', 'pump'] },
    });
    expect(given(checkBeginning(body, ['harness', 'pan']))).toEqual(new Set(['harness', 'pan']));
  });

  test.each<[done: string, next: string]>([
    ['', 'pan harness'],
    ['pan', 'filter harness'],
    ['harness', 'pan'],
    ['filter pan', 'harness'],
    ['pan filter harness', 'body'],
    ['pan filter harness body pump', ''],
  ])('with "%s" done, next may be "%s"', (done, next) => {
    expect(nextSteps(body, done.split(' ').filter(Boolean)).join(' ')).toBe(next);
  });

  test('an order drawn from the next legal steps is always accepted', () => {
    fc.assert(
      fc.property(anyPoset(14), fc.integer(), (poset, seed) => {
        expect(refusal(checkOrder(poset, drawOrder(poset, randomFrom(seed))))).toBeNull();
      }),
    );
  });

  test('two neighbours that change places are refused exactly when their order is fixed', () => {
    fc.assert(
      fc.property(anyPoset(10), fc.integer(), fc.nat(), (poset, seed, at) => {
        const order = drawOrder(poset, randomFrom(seed));
        if (order.length < 2) return;
        const i = at % (order.length - 1);
        const swapped = order.toSpliced(i, 2, order[i + 1]!, order[i]!);
        const fixed = comparable(poset, order[i]!, order[i + 1]!);
        expect(refusal(checkOrder(poset, swapped))).toBe(fixed ? 'too-early' : null);
      }),
    );
  });

  test('one step must come before another exactly when it does in every legal order', () => {
    fc.assert(
      fc.property(anyPoset(5), (poset) => {
        const legal = [...permutations(poset.ids)].filter((order) => checkOrder(poset, order).ok);
        for (const a of poset.ids)
          for (const b of poset.ids)
            expect(mustPrecede(poset, a, b)).toBe(
              a !== b && legal.every((order) => order.indexOf(a) < order.indexOf(b)),
            );
      }),
    );
  });
});

describe('chains: steps with only one order', () => {
  const body = precedence('pan<filter filter<body harness<body body<pump');

  test.each<[chosen: string, chain: string | null]>([
    ['pump pan body', 'pan body pump'],
    ['body harness', 'harness body'],
    ['pump filter pan body', 'pan filter body pump'],
    ['harness pan', null],
    ['pump harness filter', null],
    ['pump', 'pump'],
  ])('%s: %s (by hand)', (chosen, chain) => {
    expect(chainOf(body, chosen.split(' '))?.join(' ') ?? null).toBe(chain);
  });

  test.each<[title: string, poset: string, size: number, count: bigint]>([
    // a line of n has n over k chains; a fence has a chain of two for each rail; by hand for the rest
    ['line of 10, of 4', line(10), 4, 210n],
    ['fence of 7, of 2', fence(7), 2, 6n],
    ['fence of 7, of 3', fence(7), 3, 0n],
    ['five apart, of 1', lone(5), 1, 5n],
    ['five apart, of 2', lone(5), 2, 0n],
    ['any, of none', lone(5), 0, 1n],
    ['subsets of 3 things, from bottom to top', lattice(3), 4, 6n],
  ])('%s: %d long, %d of them', (_, poset, size, count) => {
    expect(countChains(precedence(poset), size)).toBe(count);
  });

  test('listed and counted alike, and each listed one keeps its order in every legal order', () => {
    fc.assert(
      fc.property(anyPoset(7), fc.integer({ min: 0, max: 5 }), fc.integer(), (poset, size, seed) => {
        const listed = [...chains(poset, size)];
        expect(BigInt(listed.length)).toBe(countChains(poset, size));
        expect(new Set(listed.map(String)).size).toBe(listed.length);
        const order = drawOrder(poset, randomFrom(seed));
        for (const chain of listed) {
          expect(chain.toSorted((a, b) => order.indexOf(a) - order.indexOf(b))).toEqual(chain);
          expect(chainOf(poset, chain.toReversed())).toEqual(chain);
        }
      }),
    );
  });
});

describe('refused', () => {
  test('a circle is named, each step before the next', () => {
    const result = checkPrecedence(steps('a<b b<c c<d d<b e<a'));
    expect(refusal(result)).toBe('circle');
    const circle = result.ok || result.error.code !== 'circle' ? [] : result.error.circle;
    expect(circle).toHaveLength(3);
    const around = [...circle, circle[0]!].join('<');
    expect('b<c<d<b<c<d<b').toContain(around);
  });

  test('a step that waits for itself is a circle of one', () => {
    expect(checkPrecedence([{ id: 'a', after: [{ step: 'a' }] }])).toEqual({
      ok: false,
      error: { code: 'circle', circle: ['a'] },
    });
  });

  test('relations put round at random: a circle is found exactly when no order is legal', () => {
    const ids = ['a', 'b', 'c', 'd', 'e'];
    const pair = fc.tuple(fc.constantFrom(...ids), fc.constantFrom(...ids));
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 8 }), (pairs) => {
        const list = ids.map((id) => ({
          id,
          after: pairs.filter(([, later]) => later === id).map(([step]) => ({ step })),
        }));
        const result = checkPrecedence(list);
        const possible = [...permutations(ids)].some((order) =>
          pairs.every(([earlier, later]) => order.indexOf(earlier) < order.indexOf(later)),
        );
        expect(result.ok).toBe(possible);
        if (result.ok || result.error.code !== 'circle') return;
        const { circle } = result.error;
        circle.forEach((step, index) => {
          const next = circle[(index + 1) % circle.length];
          expect(pairs.some(([earlier, later]) => earlier === step && later === next)).toBe(true);
        });
      }),
    );
  });

  test('steps twice, and steps that do not exist', () => {
    expect(refusal(checkPrecedence([{ id: 'a' }, { id: 'a' }]))).toBe('step-twice');
    expect(checkPrecedence([{ id: 'a', after: [{ step: 'x' }] }])).toEqual({
      ok: false,
      error: { code: 'step-unknown', step: 'a', after: 'x' },
    });
    expect(() => mustPrecede(precedence('a<b'), 'a', 'x')).toThrow();
  });
});

test('every sequence of the shipped decks is a precedence, and its own listing a legal order of it', () => {
  const sequences = shippedDecks().flatMap((deck) => deck.sequences ?? []);
  expect(sequences.length).toBeGreaterThan(0);
  for (const { steps: listed } of sequences) {
    const checked = given(checkPrecedence(listed));
    expect(
      refusal(
        checkOrder(
          checked,
          listed.map((item) => item.id),
        ),
      ),
    ).toBeNull();
  }
});
