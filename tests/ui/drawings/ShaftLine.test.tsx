// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { lineShown, placesAt } from '../../../src/core/questions/describe/seats.ts';
import type { ShaftLineDrawing } from '../../../src/core/questions/drawing.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { DrawingView, type Tapped } from '../../../src/ui/drawings/DrawingView.tsx';
import { type LineRow, layoutLine } from '../../../src/ui/drawings/line-layout.ts';
import { makeSay } from '../../../src/words/words.ts';
import { BENCH } from './bench-deck.ts';
import { boxOf, expectClear, expectTappable, NARROW } from './clear.ts';

afterEach(cleanup);

const laid = (drawing: Omit<ShaftLineDrawing, 'kind'> = {}) => {
  const whole: ShaftLineDrawing = { kind: 'shaft-line', ...drawing };
  return layoutLine(lineShown(BENCH, whole), whole.front ?? 'up', {
    nameOf: (entry) => (entry.is === 'body' ? (entry.body.name ?? entry.body.id) : entry.seat.id),
    placesOf: (id) => placesAt(whole, id),
  });
};
const ids = (rows: readonly LineRow[]) => rows.map(({ id }) => id);

/** By hand from the deck: every seat between the two bodies that it touches. */
const FRONT_TO_REAR = [
  'pump',
  'T1',
  'drum',
  'T2',
  'hub',
  'T3',
  'p1-sun',
  'T4',
  'p1-carrier',
  'T5',
  'p2-ring',
  'T6',
  'p2-carrier',
  'T7',
  'case',
];

describe('the order down the page', () => {
  test('front up, and the other way when the unit is turned round', () => {
    expect(ids(laid().rows)).toEqual(FRONT_TO_REAR);
    expect(ids(laid({ front: 'down' }).rows)).toEqual(FRONT_TO_REAR.toReversed());
    expect(laid({ front: 'down' }).head).toBe('rear');
  });

  test('a part of the line ends with the bodies named', () => {
    expect(ids(laid({ from: 'hub', to: 'p1-carrier' }).rows)).toEqual([
      'hub',
      'T3',
      'p1-sun',
      'T4',
      'p1-carrier',
    ]);
  });

  test('rows do not overlap and stay on the page', () => {
    const { rows, height, width } = laid();
    expect(width).toBeLessThanOrEqual(NARROW + 0.5);
    for (const [index, row] of rows.entries()) {
      expect(row.top).toBeLessThan(row.bottom);
      if (index > 0) expect(row.top).toBeGreaterThanOrEqual(rows[index - 1]!.bottom);
    }
    expect(rows.at(-1)!.bottom).toBeLessThan(height - 20);
  });

  test('a seat lying against another seat finds its gap through it', () => {
    const extra = {
      ...BENCH.seats![1]!,
      id: 'T2b',
      place: 3,
      faces: { A: { touches: 'T2' }, B: { touches: 'hub' } },
    };
    const seats = BENCH.seats!.map((seat) =>
      seat.id === 'T2'
        ? { ...seat, faces: { A: seat.faces.A, B: { touches: 'T2b' } } }
        : seat.place > 2
          ? { ...seat, place: seat.place + 1 }
          : seat,
    );
    const deck = { ...BENCH, seats: [...seats, extra] };
    const shown = lineShown(deck, { kind: 'shaft-line', to: 'hub' });
    expect(shown.map((entry) => (entry.is === 'body' ? entry.body.id : entry.seat.id))).toEqual([
      'pump',
      'T1',
      'drum',
      'T2',
      'T2b',
      'hub',
    ]);
  });
});

describe('DR3 which way seats face', () => {
  const seat = (id: string, drawing: Omit<ShaftLineDrawing, 'kind'> = {}) => {
    const row = laid(drawing).rows.find((candidate) => candidate.id === id);
    if (row?.is !== 'seat') throw new Error(`no seat ${id}`);
    return row;
  };

  test('the race is at the front of T1 and at the rear of T3, whichever end is up', () => {
    expect([seat('T1').up.isRace, seat('T1').down.isRace]).toEqual([true, false]);
    expect([seat('T3').up.isRace, seat('T3').down.isRace]).toEqual([false, true]);
    expect([seat('T1', { front: 'down' }).up.isRace, seat('T1', { front: 'down' }).down.isRace]).toEqual([
      false,
      true,
    ]);
  });

  test('turned round it swaps faces and keeps what centres it', () => {
    const row = seat('T2', { turned: ['T2'] });
    expect([row.up.isRace, row.down.isRace]).toEqual([false, true]);
    expect([row.up.pilot?.at, row.down.pilot]).toEqual(['outer', undefined]);
  });

  test('diameters compare; a covered seat shows none', () => {
    expect(seat('T3').outer / seat('T1').outer).toBeCloseTo(48 / 64, 9);
    expect(seat('T3').inner / seat('T3').outer).toBeCloseTo(30 / 48, 9);
    const covered = laid({ covered: ['T1', 'T3'] }).rows.filter(({ id }) => id === 'T1' || id === 'T3');
    expect(new Set(covered.map((row) => row.is === 'seat' && row.outer)).size).toBe(1);
  });
});

test('DR8 names and numbered places stay clear of each other', () => {
  const all = [
    ...BENCH.shaftLine!.map(({ id }) => id),
    ...BENCH.seats!.flatMap(({ id }) => [id, `${id}/front`, `${id}/rear`]),
  ];
  fc.assert(
    fc.property(fc.subarray(all), fc.constantFrom('up' as const, 'down' as const), (places, front) => {
      const layout = laid({ places, front });
      expect(layout.spots.map(({ id }) => id).sort()).toEqual([...places].sort());
      expectTappable(layout.spots, layout);
      expectClear(
        layout.rows.flatMap(({ lines, top, bottom }) =>
          lines.map((line, index) =>
            boxOf(line, layout.names, (top + bottom) / 2 + (index - (lines.length - 1) / 2) * 13, 'start'),
          ),
        ),
        layout,
      );
    }),
    { numRuns: 40, seed: 9 },
  );
});

test('the front side of a seat is numbered nearer the front', () => {
  for (const front of ['up', 'down'] as const) {
    const { spots } = laid({ front, places: ['T3/rear', 'T3/front'] });
    const at = (id: string) => spots.find((spot) => spot.id === id)!;
    expect(Math.sign(at('T3/rear').y - at('T3/front').y)).toBe(front === 'up' ? 1 : -1);
    expect(Math.sign(at('T3/rear').at!.y - at('T3/front').at!.y)).toBe(front === 'up' ? 1 : -1);
  }
});

const show = (drawing: Omit<ShaftLineDrawing, 'kind'>, tapped?: Tapped) =>
  render(
    <DrawingView
      drawing={{ kind: 'shaft-line', ...drawing }}
      unit={makeUnit(BENCH)}
      say={makeSay(BENCH)}
      tapped={tapped}
    />,
  ).container;
const told = () => screen.getAllByRole('listitem').map((line) => line.textContent);

describe('in words', () => {
  test('from front to rear, with the face that looks to each end', () => {
    show({ from: 'pump', to: 'hub', lit: ['T2'] });
    expect(told()).toEqual([
      'The front of the unit is up. From front to rear:',
      'Pump body.',
      'T1: to the front closed race, needles hidden, centred here at the inner rim; to the rear needles seen.',
      'Input drum.',
      'T2: to the front closed race, needles hidden, centred here at the outer rim; to the rear needles seen, marked.',
      'Clutch hub.',
    ]);
  });

  test('DR6 a covered seat keeps its name and nothing else, or not even that', () => {
    show({ from: 'pump', to: 'drum', covered: ['T1'] });
    expect(told()[2]).toBe('T1, covered.');
    cleanup();
    const container = show({
      from: 'pump',
      to: 'drum',
      covered: ['T1'],
      hideSeatNames: true,
      places: ['T1/rear', 'T1/front'],
    });
    expect(told()[2]).toBe('A seat, place #1, its rear side and #2, its front side, covered.');
    expect(container.textContent).not.toContain('T1');
  });
});

test('a place is picked by a tap and lit', () => {
  const onPick = vi.fn();
  const container = show(
    { covered: ['T1', 'T3'], hideSeatNames: true, places: ['T1', 'T3'] },
    { picked: 'T3', right: null, onPick },
  );
  fireEvent.click(container.querySelector('[data-spot="T1"]')!);
  expect(onPick).toHaveBeenCalledExactlyOnceWith('T1');
  expect(container.querySelector('.dr-spot-picked')!.textContent).toBe('2');
});
