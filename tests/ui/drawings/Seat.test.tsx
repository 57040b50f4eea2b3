// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { seatOf, seatShown } from '../../../src/core/questions/describe/seats.ts';
import type { FrontAt, SeatDrawing } from '../../../src/core/questions/drawing.ts';
import { ENDS, type End } from '../../../src/core/unit/record.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { DrawingView, type Tapped } from '../../../src/ui/drawings/DrawingView.tsx';
import { isToScale, layoutSeat } from '../../../src/ui/drawings/seat-layout.ts';
import { piecesOf } from '../../../src/ui/drawings/seat-shapes.ts';
import { makeSay } from '../../../src/words/words.ts';
import { BENCH } from './bench-deck.ts';
import { expectTappable, NARROW } from './clear.ts';

afterEach(cleanup);

const laid = (id: string, front: FrontAt = 'left', how: Parameters<typeof seatShown>[2] = {}) => {
  const shown = seatShown(BENCH, seatOf(BENCH, id), how);
  const layout = layoutSeat(
    shown,
    front,
    ENDS.map((end, index) => ({ end, number: index + 1 })),
  );
  return { shown, layout, pieces: piecesOf(shown, layout.part) };
};
type Laid = ReturnType<typeof laid>;

/** Where the middle of some points lies on the page. */
const middleOf = ({ layout }: Laid, points: readonly { a: number; r: number }[]) => {
  const placed = points.map(layout.place);
  const mean = (of: (point: { x: number; y: number }) => number) =>
    placed.reduce((sum, point) => sum + of(point), 0) / placed.length;
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) };
};
const solid = ({ pieces }: Laid) =>
  pieces.filter(({ look }) => look === 'solid').map(({ outline }) => outline);
const partMiddle = (of: Laid) => middleOf(of, [of.layout.part.from, of.layout.part.to]);
/** How far the race lies from the part's middle towards the front of the unit, on the page. */
const raceTowardsFront = (of: Laid, front: FrontAt) => {
  const [race] = solid(of);
  const [at, middle] = [middleOf(of, race!), partMiddle(of)];
  return { left: middle.x - at.x, right: at.x - middle.x, up: middle.y - at.y, down: at.y - middle.y }[front];
};
const FRONTS = ['left', 'right', 'up', 'down'] as const;

describe('DR3 which way the race looks, however the unit lies', () => {
  // From the deck: T1 has its race against the pump, at its front; T3 against the sun, at its rear.
  test.each(FRONTS)('front %s', (front) => {
    expect(raceTowardsFront(laid('T1', front), front)).toBeGreaterThan(5);
    expect(raceTowardsFront(laid('T3', front), front)).toBeLessThan(-5);
  });

  test.each(FRONTS)('front %s, the part turned round', (front) => {
    expect(raceTowardsFront(laid('T1', front, { turned: true }), front)).toBeLessThan(-5);
    expect(raceTowardsFront(laid('T3', front, { turned: true }), front)).toBeGreaterThan(5);
  });

  test.each(FRONTS)('front %s: the front body lies at the front', (front) => {
    const of = laid('T1', front);
    const body = (end: End) => middleOf(of, of.layout.blocks[end]);
    const ahead = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] }[front] as [number, number];
    const [front_, rear] = [body('front'), body('rear')];
    expect((front_.x - rear.x) * ahead[0] + (front_.y - rear.y) * ahead[1]).toBeGreaterThan(60);
  });
});

describe('the pocket', () => {
  /** Which body reaches over or under the part, and at which rim. */
  const shoulder = ({ layout }: Laid) => {
    const { from, to } = layout.part;
    for (const end of ENDS) {
      const inside = layout.blocks[end].filter(({ a }) => a > from.a && a < to.a);
      if (inside.length > 0) return [end, inside.every(({ r }) => r <= from.r) ? 'inner' : 'outer'];
    }
    return null;
  };

  // From the deck: T2 is centred by the drum in front of it at its outer rim, T3 by the sun behind it, inside.
  test.each([
    ['T1', ['front', 'inner']],
    ['T2', ['front', 'outer']],
    ['T3', ['rear', 'inner']],
    ['T6', null],
  ])('%s is centred where the deck says', (id, expected) => {
    expect(shoulder(laid(id))).toEqual(expected);
  });

  test('what centres it stays when the part is turned round', () => {
    expect(shoulder(laid('T2', 'left', { turned: true }))).toEqual(['front', 'outer']);
  });

  test('no body runs into the part', () => {
    for (const { id } of BENCH.seats!) {
      const { layout } = laid(id);
      const { from, to } = layout.part;
      for (const end of ENDS)
        for (const { a, r } of layout.blocks[end])
          expect(a > from.a && a < to.a && r > from.r && r < to.r).toBe(false);
    }
  });
});

test('thickness and radial width are to one scale', () => {
  // T3: 48 − 30 mm in diameter, so 9 mm in radius, 3.6 mm thick.
  const { part, perMm } = laid('T3').layout;
  expect((part.to.r - part.from.r) / perMm!).toBeCloseTo(9, 9);
  expect((part.to.a - part.from.a) / perMm!).toBeCloseTo(3.6, 9);
});

describe('not to scale', () => {
  const thin = (thickness: string) => {
    const size = { ...seatOf(BENCH, 'T4').size!, thickness: { value: thickness, unit: 'mm' as const } };
    return seatShown(BENCH, { ...seatOf(BENCH, 'T4'), size }, {});
  };

  test('a part too thin to be seen is drawn thicker', () => {
    expect(isToScale(thin('1.8'))).toBe(true);
    expect(isToScale(thin('0.5'))).toBe(false);
    const { part } = layoutSeat(thin('0.5'), 'left', []);
    expect(part.to.a - part.from.a).toBeGreaterThanOrEqual(14);
  });

  test('the drawing says so', () => {
    show({ kind: 'seat', seat: 'T6' });
    expect(screen.getByText('Not to scale.')).toBeTruthy();
    cleanup();
    show({ kind: 'seat', seat: 'T4' });
    expect(screen.queryByText('Not to scale.')).toBeNull();
  });
});

describe('a lip seal', () => {
  const lipMiddle = (of: Laid) => middleOf(of, [solid(of)[0]![2]!, solid(of)[0]![3]!]);

  test('its lip looks where the deck says', () => {
    const of = laid('T7');
    expect(lipMiddle(of).x).toBeLessThan(partMiddle(of).x);
    const turned = laid('T7', 'left', { turned: true });
    expect(lipMiddle(turned).x).toBeGreaterThan(partMiddle(turned).x);
  });
});

test('fits a narrow page, its places a thumb apart', () => {
  for (const { id } of BENCH.seats!)
    for (const front of FRONTS) {
      const { layout } = laid(id, front);
      expect(layout.width).toBeLessThanOrEqual(NARROW + 0.5);
      expectTappable(layout.spots, layout);
    }
});

function show(drawing: SeatDrawing, tapped?: Tapped) {
  return render(<DrawingView drawing={drawing} unit={makeUnit(BENCH)} say={makeSay(BENCH)} tapped={tapped} />)
    .container;
}
const told = () => screen.getAllByRole('listitem').map((line) => line.textContent);

describe('in words', () => {
  test('which end is where, what lies on each side, and which face looks there', () => {
    show({ kind: 'seat', seat: 'T3', front: 'right', seenFrom: 'rear' });
    expect(told()).toEqual([
      'Half section along the axis. The front of the unit is at the right.',
      'The part is a thrust bearing.',
      'Bore 30.0, outer diameter 48.0, thickness 3.6 mm.',
      'To the front, clutch hub; the face that looks here: needles seen.',
      'To the rear, front sun gear, which centres the part at its inner rim, 30.0 mm; the face that looks here: closed race, needles hidden; the closed race is on this side.',
      'Seen from the rear: closed race, needles hidden.',
    ]);
    expect(screen.getByRole('img', { name: 'The face seen from the rear' })).toBeTruthy();
  });

  test('DR6 a covered part keeps its pocket and says nothing of its faces', () => {
    const container = show({ kind: 'seat', seat: 'T7', covered: true, seenFrom: 'front' });
    expect(told().slice(1)).toEqual([
      'The part is covered.',
      'To the front, rear carrier; pressure comes from here.',
      'To the rear, rear of the case.',
    ]);
    expect(container.textContent).not.toMatch(/lip with spring|flat shell/);
    expect(screen.queryByRole('img', { name: /face seen/ })).toBeNull();
  });

  test('the neighbours can be left unnamed', () => {
    const container = show({ kind: 'seat', seat: 'T1', hideNames: true });
    expect(container.textContent).not.toMatch(/pump body|input drum/);
  });
});

describe('seen from an end', () => {
  const needles = (drawing: SeatDrawing) => show(drawing).querySelectorAll('.dr-needle').length;

  test('needles are bare on the face away from the race, and only there', () => {
    expect(needles({ kind: 'seat', seat: 'T1', seenFrom: 'front' })).toBe(0);
    expect(needles({ kind: 'seat', seat: 'T1', seenFrom: 'rear' })).toBeGreaterThan(12);
    expect(needles({ kind: 'seat', seat: 'T1', seenFrom: 'front', turned: true })).toBeGreaterThan(12);
  });

  test('lying the other way round changes nothing about the face seen from an end', () => {
    expect(needles({ kind: 'seat', seat: 'T3', seenFrom: 'front', front: 'down' })).toBeGreaterThan(12);
  });
});

test('its two sides can be tapped', () => {
  const onPick = vi.fn();
  const container = show(
    { kind: 'seat', seat: 'T1', covered: true, places: ['rear', 'front'] },
    { picked: 'front', right: null, onPick },
  );
  const rings = [...container.querySelectorAll('[data-spot]')];
  expect(rings.map((ring) => [ring.getAttribute('data-spot'), ring.textContent])).toEqual([
    ['rear', '1'],
    ['front', '2'],
  ]);
  fireEvent.click(rings[0]!);
  expect(onPick).toHaveBeenCalledExactlyOnceWith('rear');
  expect(told()[2]).toMatch(/^Place 2: to the front/);
});
