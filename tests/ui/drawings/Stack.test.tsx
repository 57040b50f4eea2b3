// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { platesShown } from '../../../src/core/questions/describe/stack.ts';
import type { StackDrawing } from '../../../src/core/questions/drawing.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { type DeckStack, type DeckStackItem, STACK_KINDS } from '../../../src/core/unit/stacks.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { DrawingView, type Tapped } from '../../../src/ui/drawings/DrawingView.tsx';
import { layoutStack, type PlateShape } from '../../../src/ui/drawings/stack-layout.ts';
import { dishedPath, platePath, wavedPath } from '../../../src/ui/drawings/stack-shapes.ts';
import { makeSay } from '../../../src/words/words.ts';
import { BENCH } from './bench-deck.ts';
import { boxOf, expectClear, expectTappable, NARROW } from './clear.ts';

afterEach(cleanup);

const WORDS = { beside: (plate: { id: string }) => plate.id, under: () => '', floor: 'drum floor' };

const laid = (drawing: StackDrawing, deck: Deck = BENCH) => {
  const stack = deck.stacks!.find(({ id }) => id === drawing.stack)!;
  return layoutStack(stack, platesShown(deck, drawing), WORDS);
};
const shapeOf = (shapes: readonly PlateShape[], id: string) => shapes.find(({ plate }) => plate.id === id)!;
const heightOf = ({ top, bottom }: PlateShape) => bottom - top;

describe('DR1 to scale', () => {
  const { plates, perMm } = laid({ kind: 'stack', stack: 'C1' });

  // Thicknesses as entered; the dished plate stands free.
  test.each([
    ['friction-1', 1.6],
    ['steel-4', 1.8],
    ['backing', 5.2],
    ['dish', 2.6],
    ['ring', 1.6],
  ])('%s is %d mm high', (id, mm) => {
    expect(heightOf(shapeOf(plates, id)) / perMm).toBeCloseTo(mm, 9);
  });

  test('DR2 the metal of a plate that stands free keeps its own thickness', () => {
    expect(shapeOf(plates, 'dish').metal / perMm).toBeCloseTo(1.5, 9);
  });

  test('from the piston to the far face of the snap ring is the room, the clearance left open', () => {
    const stop = shapeOf(plates, 'spring').top;
    expect((stop - shapeOf(plates, 'ring').top) / perMm).toBeCloseTo(30.1, 9);
    // By hand: 30.10 − (2.60 + 2.40 + 5 × 1.60 + 4 × 1.80 + 5.20 + 1.60) = 3.10.
    expect((shapeOf(plates, 'backing').top - shapeOf(plates, 'ring').bottom) / perMm).toBeCloseTo(3.1, 9);
  });

  test('what has no thickness is marked as not to scale', () => {
    expect(plates.filter(({ isToScale }) => !isToScale).map(({ plate }) => plate.id)).toEqual([
      'piston',
      'spring',
    ]);
  });

  test('the rule is as long as it says', () => {
    const { rule } = laid({ kind: 'stack', stack: 'C1' });
    expect(rule.text).toBe('5 mm');
    expect(rule.length).toBeCloseTo(5 * perMm, 9);
  });
});

test('a covered plate has one height, whichever it is, and is no longer to scale', () => {
  const covered = ['friction-2', 'steel-3', 'backing'].map((id) =>
    shapeOf(laid({ kind: 'stack', stack: 'C1', covered: [id] }).plates, id),
  );
  expect(new Set(covered.map(heightOf)).size).toBe(1);
  expect(covered.every(({ isToScale }) => !isToScale)).toBe(true);
  expect(new Set(covered.map(({ left, right }) => `${left} ${right}`)).size).toBe(1);
});

test('separators lie beside the frictions and take no height', () => {
  const { plates } = laid({ kind: 'stack', stack: 'B2' });
  const [separator, friction] = [shapeOf(plates, 'sep-1'), shapeOf(plates, 'friction-1')];
  expect([separator.top, separator.bottom]).toEqual([friction.top, friction.bottom]);
  expect(separator.left).toBeGreaterThan(friction.right);
  expect(shapeOf(plates, 'steel-2').bottom).toBeCloseTo(friction.top, 9);
});

test('frictions reach further in, the others out to the drum', () => {
  const { plates, drum } = laid({ kind: 'stack', stack: 'C1' });
  const [friction, steel] = [shapeOf(plates, 'friction-1'), shapeOf(plates, 'steel-1')];
  expect(friction.left).toBeLessThan(steel.left);
  expect(friction.right).toBeLessThan(drum.wall);
  expect(steel.right).toBe(drum.wall);
});

describe('any pack', () => {
  const anyItem = fc.record({
    kind: fc.constantFrom(...STACK_KINDS),
    hundredths: fc.integer({ min: 50, max: 900 }),
    over: fc.integer({ min: 0, max: 200 }),
    unit: fc.constantFrom('mm' as const, 'in' as const),
  });
  const anyStack = fc.array(anyItem, { minLength: 1, maxLength: 16 }).map((items): DeckStack => {
    const text = (hundredths: number, unit: 'mm' | 'in') =>
      ({ value: (hundredths / (unit === 'in' ? 2540 : 100)).toFixed(4), unit }) as const;
    return {
      id: 'X',
      floor: 'floor',
      floorAt: 'rear',
      items: items.map(({ kind, hundredths, over, unit }, index): DeckStackItem => {
        const springs = kind === 'waved' || kind === 'dished';
        return {
          id: `p${index}`,
          kind,
          ...(kind === 'piston' ? {} : { thickness: text(hundredths, unit) }),
          ...(springs ? { free: text(hundredths + over, unit) } : {}),
        };
      }),
    };
  });
  const deckWith = (stack: DeckStack): Deck => ({ ...BENCH, stacks: [stack] });

  test('plates lie on each other in order, all by one scale, on a narrow page', () => {
    fc.assert(
      fc.property(anyStack, (stack) => {
        const layout = laid({ kind: 'stack', stack: 'X' }, deckWith(stack));
        expect(layout.width).toBeLessThanOrEqual(NARROW + 0.5);
        const lying = layout.plates.filter(({ shape }) => shape !== 'separator');
        for (const [index, plate] of lying.entries()) {
          expect(heightOf(plate)).toBeGreaterThan(0);
          const below = lying[index - 1];
          if (below) expect(plate.bottom).toBeLessThanOrEqual(below.top + 1e-9);
        }
        const ratios = lying
          .filter(({ isToScale }) => isToScale)
          .map((plate) => {
            const { thickness, free } = plate.plate.item;
            const { value, unit } = free ?? thickness!;
            return heightOf(plate) / (Number(value) * (unit === 'in' ? 25.4 : 1));
          });
        for (const ratio of ratios) expect(ratio).toBeCloseTo(layout.perMm, 6);
      }),
      { numRuns: 60, seed: 5 },
    );
  });

  test('DR8 words and numbered places stay clear of each other', () => {
    fc.assert(
      fc.property(anyStack, (stack) => {
        const named = laid({ kind: 'stack', stack: 'X' }, deckWith(stack));
        expectClear(
          named.labels.flatMap(({ lines, x, y }) =>
            lines.map((line, index) => boxOf(line, x, y + (index - (lines.length - 1) / 2) * 13, 'start')),
          ),
          named,
        );
        const numbered = laid(
          { kind: 'stack', stack: 'X', places: stack.items.map(({ id }) => id) },
          deckWith(stack),
        );
        expect(numbered.spots).toHaveLength(stack.items.length);
        expectTappable(numbered.spots, numbered);
      }),
      { numRuns: 60, seed: 6 },
    );
  });
});

/** Corners of a path of absolute M and L commands. */
const cornersOf = (path: string) =>
  [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }));

describe('outlines', () => {
  const box = { left: 10, right: 100, top: 20, bottom: 40 };

  test('a waved plate fills its free height and keeps its metal', () => {
    const points = cornersOf(wavedPath(box, 12));
    const ys = points.map(({ y }) => y);
    expect(Math.min(...ys)).toBeCloseTo(20, 1);
    expect(Math.max(...ys)).toBeCloseTo(40, 1);
    const half = points.length / 2;
    for (let index = 0; index < half; index++)
      expect(points.at(-1 - index)!.y - points[index]!.y).toBeCloseTo(12, 1);
  });

  test('a hollow that looks up has its outer rim higher', () => {
    const [inner, outer] = cornersOf(dishedPath(box, 5, 'up'));
    expect(outer!.y).toBeLessThan(inner!.y);
    const [innerDown, outerDown] = cornersOf(dishedPath(box, 5, 'down'));
    expect(outerDown!.y).toBeGreaterThan(innerDown!.y);
  });

  test.each(['bevel', 'step'] as const)('a %s cuts the face that it is on, at the free end', (feature) => {
    const corners = (towards: 'floor' | 'opening', end: 'left' | 'right') =>
      cornersOf(platePath(box, { feature, towards }, end));
    const missing = (points: readonly { x: number; y: number }[], x: number, y: number) =>
      !points.some((point) => Math.hypot(point.x - x, point.y - y) < 1);
    expect(missing(corners('opening', 'right'), 100, 20)).toBe(true);
    expect(missing(corners('opening', 'right'), 100, 40)).toBe(false);
    expect(missing(corners('floor', 'right'), 100, 40)).toBe(true);
    expect(missing(corners('floor', 'left'), 10, 40)).toBe(true);
    expect(missing(corners('floor', 'left'), 100, 40)).toBe(false);
  });

  test.each(['lip', 'tab'] as const)('a %s stands out beyond its face', (feature) => {
    const ys = (towards: 'floor' | 'opening') =>
      cornersOf(platePath(box, { feature, towards }, 'right')).map(({ y }) => y);
    expect(Math.min(...ys('opening'))).toBeLessThan(20);
    expect(Math.max(...ys('floor'))).toBeGreaterThan(40);
  });
});

const show = (drawing: StackDrawing, tapped?: Tapped) => {
  const { container } = render(
    <DrawingView drawing={drawing} unit={makeUnit(BENCH)} say={makeSay(BENCH)} tapped={tapped} />,
  );
  return container;
};
const told = () => screen.getAllByRole('listitem').map((line) => line.textContent);

describe('in words', () => {
  test('from the floor up, with thickness, feature and which way it looks', () => {
    show({ kind: 'stack', stack: 'C1', showThickness: true });
    expect(told().slice(0, 6)).toEqual([
      'Counted from the drum floor, which is at the front of the unit, up to the opening.',
      'No. 1 from the floor, piston.',
      'No. 2 from the floor, return spring.',
      'No. 3 from the floor, dished plate, 1.50 mm flat, 2.60 mm free, hollow towards the opening.',
      'No. 4 from the floor, apply plate, 2.40 mm, step towards the floor.',
      'No. 5 from the floor, friction plate, 1.60 mm.',
    ]);
  });

  test('DR6 a covered plate gives nothing away', () => {
    const container = show({
      kind: 'stack',
      stack: 'C1',
      showThickness: true,
      covered: ['apply', 'backing'],
    });
    expect(told()[4]).toBe('No. 4 from the floor, covered.');
    expect(container.textContent).not.toMatch(/2\.40|5\.20|selective|apply|bevel/);
  });

  test('a plate turned over looks the other way', () => {
    show({ kind: 'stack', stack: 'C1', turned: ['apply'], lit: ['apply'] });
    expect(told()[4]).toBe('No. 4 from the floor, apply plate, step towards the opening, marked.');
  });

  test('plates of another pack, in an order of their own', () => {
    show({ kind: 'stack', stack: 'B2', items: ['backing', 'C1/friction-1'], showThickness: true });
    expect(told().slice(1)).toEqual([
      'No. 1 from the floor, backing plate, 4.00 mm, lip towards the floor.',
      'No. 2 from the floor, friction plate, 1.60 mm.',
    ]);
  });

  test('the drawing has a name, and its source in the title block', () => {
    show({ kind: 'stack', stack: 'C1' });
    expect(
      screen.getByRole('img', { name: 'Half section of the pack direct clutch pack, thickness to scale' }),
    ).toBeTruthy();
    expect(screen.getByText('Bench sheet 12')).toBeTruthy();
  });
});

describe('numbered places', () => {
  const places = ['backing', 'steel-2', 'apply', 'dish'];
  const ring = (container: HTMLElement, id: string) => container.querySelector(`[data-spot="${id}"]`)!;

  test('are numbered in the order given and named by number alone', () => {
    const container = show({ kind: 'stack', stack: 'C1', places });
    expect(places.map((id) => ring(container, id).textContent)).toEqual(['1', '2', '3', '4']);
    expect(container.querySelector('button')).toBeNull();
    expect(told()[4]).toMatch(/^Place 3: no\. 4 from the floor/);
  });

  test('stand over the thickness where it is shown, as in a pack that holds a wrong plate', () => {
    const container = show({ kind: 'stack', stack: 'C1', places, covered: ['dish'], showThickness: true });
    expect([...container.querySelectorAll('.dr-under-ring')].map((text) => text.textContent)).toEqual(
      // From the opening down, left side first; none for the covered plate.
      expect.arrayContaining(['5.20', '1.80', '2.40']),
    );
    expect(container.querySelectorAll('.dr-under-ring')).toHaveLength(3);
    expect(container.textContent).not.toContain('1.50');
  });

  test('a tap picks one, the picked one is lit', () => {
    const onPick = vi.fn();
    const container = show({ kind: 'stack', stack: 'C1', places }, { picked: 'apply', right: null, onPick });
    fireEvent.click(ring(container, 'steel-2'));
    expect(onPick).toHaveBeenCalledExactlyOnceWith('steel-2');
    expect(ring(container, 'apply').classList.contains('dr-spot-picked')).toBe(true);
    expect(ring(container, 'steel-2').classList.contains('dr-spot-picked')).toBe(false);
  });

  test('once checked they are read only, the right one ringed', () => {
    const container = show(
      { kind: 'stack', stack: 'C1', places },
      { picked: 'apply', right: 'dish', onPick: undefined },
    );
    expect(container.querySelector('button')).toBeNull();
    expect(ring(container, 'dish').classList.contains('dr-spot-right')).toBe(true);
  });
});
