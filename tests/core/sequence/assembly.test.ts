import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AssemblyExceptions, assemblyOf, assemblyOrder } from '../../../src/core/sequence/assembly.ts';
import { closingSteps, lastChance } from '../../../src/core/sequence/last-chance.ts';
import { checkOrder, nextSteps } from '../../../src/core/sequence/order.ts';
import { checkPrecedence, mustPrecede, type Step } from '../../../src/core/sequence/precedence.ts';
import { given, refusal } from '../../results.ts';

const step = (id: string, ...after: string[]): Step => ({
  id,
  after: after.map((earlier) => ({ step: earlier })),
});

/** Stripping, made up: drain, pan, then pump and ring, then drum; the sensor comes out before the drum. */
const STRIP = given(
  checkPrecedence([
    step('drain'),
    step('pan', 'drain'),
    step('pump', 'pan'),
    step('sensor', 'drain'),
    step('ring', 'pump'),
    step('drum', 'ring', 'sensor'),
  ]),
);
const ORDER = ['drain', 'pan', 'sensor', 'pump', 'ring', 'drum'];

/** Measure once the drum is in and before the ring; the sensor may wait; nothing is drained. */
const EXCEPTIONS: AssemblyExceptions = {
  leftOut: ['drain'],
  added: [step('measure', 'drum')],
  imposed: [{ earlier: 'measure', later: 'ring' }],
  lifted: [],
};

describe('assembly from stripping (by hand)', () => {
  test('with no exceptions it is the strip turned round', () => {
    const assembly = given(assemblyOf(STRIP));
    expect(refusal(checkOrder(assembly, ORDER.toReversed()))).toBeNull();
    expect(assemblyOrder(assembly, ORDER)).toEqual(ORDER.toReversed());
    for (const a of STRIP.ids)
      for (const b of STRIP.ids) expect(mustPrecede(assembly, a, b)).toBe(mustPrecede(STRIP, b, a));
  });

  test('with its exceptions it is not', () => {
    const assembly = given(assemblyOf(STRIP, EXCEPTIONS));
    expect(assemblyOrder(assembly, ORDER)).toEqual(['drum', 'measure', 'ring', 'pump', 'sensor', 'pan']);
    const blind = ORDER.filter((id) => id !== 'drain').toReversed();
    expect(refusal(checkOrder(assembly, blind))).toBe('too-early');
  });

  test('of several added steps that may come next, the first listed does', () => {
    const added = [step('measure', 'drum'), step('mark', 'drum')];
    const order = assemblyOrder(given(assemblyOf(STRIP, { added })), ORDER);
    expect(order.slice(0, 3)).toEqual(['drum', 'measure', 'mark']);
  });

  test('a step left out still keeps apart what it kept apart', () => {
    const chain = given(checkPrecedence([step('a'), step('x', 'a'), step('b', 'x')]));
    const assembly = given(assemblyOf(chain, { leftOut: ['x'] }));
    expect(assembly.ids).toEqual(['b', 'a']);
    expect(mustPrecede(assembly, 'b', 'a')).toBe(true);
  });

  test('a lifted relation no longer holds', () => {
    const lifted = [{ earlier: 'drum', later: 'sensor' }];
    const assembly = given(assemblyOf(STRIP, { ...EXCEPTIONS, lifted }));
    expect(nextSteps(assembly, [])).toContain('sensor');
    expect(nextSteps(given(assemblyOf(STRIP, EXCEPTIONS)), [])).not.toContain('sensor');
  });

  test.each<[title: string, exceptions: AssemblyExceptions, code: string]>([
    ['leaves out a step there is not', { leftOut: ['cooler'] }, 'left-out-unknown'],
    ['lifts a relation there is not', { lifted: [{ earlier: 'pan', later: 'drum' }] }, 'lifted-unknown'],
    ['imposes on a step there is not', { imposed: [{ earlier: 'pan', later: 'cooler' }] }, 'step-unknown'],
    ['imposes a step there is not', { imposed: [{ earlier: 'cooler', later: 'pan' }] }, 'step-unknown'],
    [
      'imposes what was left out',
      { leftOut: ['drain'], imposed: [{ earlier: 'drain', later: 'pan' }] },
      'step-unknown',
    ],
    ['adds a step that is there', { added: [step('pan')] }, 'step-twice'],
    ['imposes the strip’s own direction', { imposed: [{ earlier: 'pan', later: 'pump' }] }, 'circle'],
  ])('refused when it %s', (_, exceptions, code) => {
    expect(refusal(assemblyOf(STRIP, exceptions))).toBe(code);
  });

  test('refused when a lifted relation still follows from others', () => {
    const twice = given(checkPrecedence([step('a'), step('b', 'a'), step('c', 'a', 'b')]));
    expect(refusal(assemblyOf(twice, { lifted: [{ earlier: 'c', later: 'a' }] }))).toBe(
      'lifted-still-implied',
    );
  });

  test('turned round twice it is itself, and its order is always legal', () => {
    const anySteps = fc
      .integer({ min: 1, max: 9 })
      .chain((n) =>
        fc
          .array(fc.tuple(fc.nat(n - 1), fc.nat(n - 1)), { maxLength: 2 * n })
          .map((pairs) =>
            Array.from({ length: n }, (_, id) =>
              step(
                `s${id}`,
                ...pairs
                  .filter(([a, b]) => Math.max(a, b) === id && a !== b)
                  .map(([a, b]) => `s${Math.min(a, b)}`),
              ),
            ),
          ),
      );
    fc.assert(
      fc.property(anySteps, fc.nat(), (steps, at) => {
        const strip = given(checkPrecedence(steps));
        const assembly = given(assemblyOf(strip));
        const again = given(assemblyOf(assembly));
        for (const a of strip.ids)
          for (const b of strip.ids) expect(mustPrecede(again, a, b)).toBe(mustPrecede(strip, a, b));
        const measured = given(
          assemblyOf(strip, { added: [step('measure', strip.ids[at % strip.ids.length]!)] }),
        );
        expect(refusal(checkOrder(measured, assemblyOrder(measured, strip.ids)))).toBeNull();
      }),
    );
  });
});

describe('last chance for a check (by hand)', () => {
  const assembly = given(assemblyOf(STRIP, EXCEPTIONS));
  const endPlay = { needs: ['drum'], closedBy: ['ring', 'pan'] };

  test('of several steps that close it, the one that must come first is the point of no return', () => {
    expect(given(closingSteps(assembly, endPlay))).toEqual(['ring']);
    expect(given(closingSteps(assembly, { needs: [], closedBy: ['sensor', 'pump'] }))).toEqual([
      'sensor',
      'pump',
    ]);
    expect(given(closingSteps(assembly, { needs: [], closedBy: [] }))).toEqual([]);
  });

  test.each<
    [
      order: string,
      check: { needs: string[]; closedBy: string[] },
      opens: string | null,
      last: string | null,
      closes: string | null,
    ]
  >([
    ['drum measure ring pump sensor pan', endPlay, 'drum', 'measure', 'ring'],
    ['drum sensor measure ring pump pan', { needs: ['drum'], closedBy: ['pump'] }, 'drum', 'ring', 'pump'],
    [
      'drum sensor measure ring pump pan',
      { needs: ['sensor', 'drum'], closedBy: ['measure'] },
      'sensor',
      'sensor',
      'measure',
    ],
    ['drum measure ring pump sensor pan', { needs: [], closedBy: [] }, null, 'pan', null],
    ['drum measure ring pump sensor pan', { needs: [], closedBy: ['drum'] }, null, null, 'drum'],
  ])('%s, %o', (order, check, opens, last, closes) => {
    expect(lastChance(assembly, order.split(' '), check)).toEqual({
      ok: true,
      value: { opens, last, closes },
    });
  });

  test.each<[title: string, order: string, check: { needs: string[]; closedBy: string[] }, code: string]>([
    [
      'closed before it opens',
      'drum measure ring pump sensor pan',
      { needs: ['pump'], closedBy: ['sensor', 'ring'] },
      'never-possible',
    ],
    [
      'closed by what it needs',
      'drum measure ring pump sensor pan',
      { needs: ['pump'], closedBy: ['pump'] },
      'never-possible',
    ],
    [
      'a step there is not',
      'drum measure ring pump sensor pan',
      { needs: ['cooler'], closedBy: ['pump'] },
      'step-unknown',
    ],
    ['an order that is not legal', 'drum ring measure pump sensor pan', endPlay, 'too-early'],
  ])('refused: %s', (_, order, check, code) => {
    expect(refusal(lastChance(assembly, order.split(' '), check))).toBe(code);
  });

  test('refused for every order where what it needs comes only after what closes it', () => {
    expect(closingSteps(assembly, { needs: ['pump'], closedBy: ['ring'] })).toEqual({
      ok: false,
      error: { code: 'never-possible', step: 'ring' },
    });
    expect(refusal(closingSteps(assembly, { needs: ['cooler'], closedBy: [] }))).toBe('step-unknown');
  });

  test('in every legal order the closing step is one of those named, and all of those named occur', () => {
    const orders = (done: string[]): string[][] =>
      done.length === assembly.ids.length
        ? [done]
        : nextSteps(assembly, done).flatMap((id) => orders([...done, id]));
    const check = { needs: [], closedBy: ['sensor', 'pump', 'pan'] };
    const seen = new Set(orders([]).map((order) => given(lastChance(assembly, order, check)).closes));
    expect([...seen].sort()).toEqual(given(closingSteps(assembly, check)).toSorted());
  });
});
