// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { pinsShown, valveBodyShown } from '../../../src/core/questions/describe/harness.ts';
import type { Drawing } from '../../../src/core/questions/drawing.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import type { DeckConnector } from '../../../src/core/unit/electrical.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { layoutConnector } from '../../../src/ui/drawings/connector-layout.ts';
import { DrawingView, type Tapped } from '../../../src/ui/drawings/DrawingView.tsx';
import { layoutValveBody } from '../../../src/ui/drawings/valve-body-layout.ts';
import { makeSay } from '../../../src/words/words.ts';
import { BENCH } from './bench-deck.ts';
import { expectTappable, NARROW } from './clear.ts';

afterEach(cleanup);

const show = (drawing: Drawing, deck: Deck = BENCH, tapped?: Tapped) =>
  render(<DrawingView drawing={drawing} unit={makeUnit(deck)} say={makeSay(deck)} tapped={tapped} />)
    .container;
const told = () => screen.getAllByRole('listitem').map((line) => line.textContent);

const CASE: DeckConnector = BENCH.electrical!.connectors![0]!;
const laid = (more: Omit<Extract<Drawing, { kind: 'connector' }>, 'kind' | 'connector'> = {}) =>
  layoutConnector(CASE, pinsShown(CASE, { kind: 'connector', connector: 'case', ...more }), more.probes);
const pinOf = (layout: ReturnType<typeof laid>, id: string) =>
  layout.pins.find(({ pin }) => pin.pin.id === id)!;

describe('a connector’s face', () => {
  test('pins stand in their rows and columns, empty places between', () => {
    const layout = laid();
    expect(pinOf(layout, '1').y).toBe(pinOf(layout, '6').y);
    expect(pinOf(layout, '7').x).toBe(pinOf(layout, '1').x);
    expect(pinOf(layout, '9').x).toBe(pinOf(layout, '4').x);
    expect(pinOf(layout, '1').x).toBeLessThan(pinOf(layout, '2').x);
    // 12 places, 10 pins.
    expect(layout.blanks).toHaveLength(2);
    expect(layout.width).toBeLessThanOrEqual(NARROW + 0.5);
  });

  test('from the other side it is mirrored left to right and not up and down', () => {
    const [own, mirrored] = [laid(), laid({ mirrored: true })];
    for (const { pin, x, y } of own.pins) {
      const other = pinOf(mirrored, pin.pin.id);
      expect(other.x).toBeCloseTo(own.width - x, 9);
      expect(other.y).toBe(y);
    }
  });

  test('a face of eight columns still fits a narrow page, its pins apart', () => {
    const pins = Array.from({ length: 8 }, (_, index) => ({
      id: String(index + 1),
      row: 1,
      column: index + 1,
      serves: 'spare',
    }));
    const wide = { ...CASE, rows: 1, columns: 8, pins };
    const layout = layoutConnector(
      wide,
      pinsShown(wide, { kind: 'connector', connector: 'case' }),
      undefined,
    );
    expect(layout.width).toBeLessThanOrEqual(NARROW + 0.5);
    const [first, second] = layout.pins;
    expect(second!.x - first!.x).toBeGreaterThan(2 * layout.radius + 5);
  });

  test('DR8 six pins in a row can be tapped on a narrow page', () => {
    const layout = laid({ places: CASE.pins.map(({ id }) => id) });
    expect(layout.width).toBeLessThanOrEqual(NARROW + 0.5);
    expect(layout.spots).toHaveLength(CASE.pins.length);
    expectTappable(
      layout.spots.map((spot) => ({ ...spot, x: spot.x + 3, y: spot.y + 22 })),
      { width: layout.width + 6, height: layout.height + 44 },
    );
  });

  /** Corners of a path of M, H and V. */
  const cornersOf = (path: string) => {
    let at = { x: 0, y: 0 };
    return [...path.matchAll(/([MHV])(-?[\d.]+)(?: (-?[\d.]+))?/g)].map(([, command, first, second]) => {
      if (command === 'M') at = { x: Number(first), y: Number(second) };
      else at = command === 'H' ? { ...at, x: Number(first) } : { ...at, y: Number(first) };
      return at;
    });
  };

  test('each lead ends at its pin and touches no other', () => {
    const ids = CASE.pins.map(({ id }) => id);
    fc.assert(
      fc.property(fc.constantFrom(...ids), fc.constantFrom(...ids), fc.boolean(), (from, to, mirrored) => {
        fc.pre(from !== to);
        const layout = laid({ probes: [from, to], mirrored });
        const ends = layout.leads.map((path) => cornersOf(path).at(-1)!);
        const hit = ends.map(
          (end) =>
            layout.pins.find(({ x, y }) => Math.abs(Math.hypot(x - end.x, y - end.y) - layout.radius) < 2)
              ?.pin,
        );
        expect(hit.map((pin) => pin?.pin.id).sort()).toEqual([from, to].sort());
        for (const path of layout.leads) {
          const corners = cornersOf(path);
          for (const [index, corner] of corners.slice(1, -1).entries()) {
            const before = corners[index]!;
            for (const { x, y } of layout.pins) {
              const dx = Math.max(Math.min(before.x, corner.x) - x, 0, x - Math.max(before.x, corner.x));
              const dy = Math.max(Math.min(before.y, corner.y) - y, 0, y - Math.max(before.y, corner.y));
              expect(Math.hypot(dx, dy)).toBeGreaterThanOrEqual(layout.radius);
            }
          }
        }
      }),
      { numRuns: 60, seed: 4 },
    );
  });

  test('in words: from which side, row by row, and where the meter is', () => {
    show({ kind: 'connector', connector: 'case', probes: ['2', '6'], litPins: ['6'], mirrored: true });
    const pins = 'in column 1, 5 in column 2, 4 in column 3, 3 in column 4, 2 in column 5, and 1 in column 6';
    expect(told()).toEqual([
      'The plug of the harness, seen into its face: 2 rows of 6.',
      `Row 1, from the left: 6 ${pins}.`,
      'Row 2, from the left: 10 in column 1, 9 in column 3, 8 in column 5, and 7 in column 6.',
      'The leads of the meter are on 2 and 6.',
      'Marked: 6.',
    ]);
  });

  test('what pins serve is listed by the shop’s names, and only when asked for', () => {
    const container = show({ kind: 'connector', connector: 'case', showServes: true });
    const list = container.querySelector<HTMLElement>('.dr-serves')!;
    expect(
      within(list)
        .getAllByRole('term')
        .map((term) => term.textContent),
    ).toEqual(CASE.pins.map(({ id }) => id));
    expect(list.textContent).toContain('solenoid supply');
    expect(list.textContent).toContain('fluid temperature');
    cleanup();
    expect(show({ kind: 'connector', connector: 'case' }).textContent).not.toContain('fluid temperature');
  });

  test('places are picked by a tap; their own numbers are not printed beside the pins’', () => {
    const onPick = vi.fn();
    const container = show({ kind: 'connector', connector: 'case', places: ['6', '8'] }, BENCH, {
      picked: null,
      right: null,
      onPick,
    });
    fireEvent.click(container.querySelector('[data-spot="8"]')!);
    expect(onPick).toHaveBeenCalledExactlyOnceWith('8');
    expect([...container.querySelectorAll('.dr-pin-hole')].map((pin) => pin.textContent)).toEqual(
      Array.from({ length: 8 }, () => ''),
    );
  });
});

describe('a circuit', () => {
  const solenoid = BENCH.solenoids![0]!.id;

  test.each([
    ['low', 'hangs on the supply'],
    ['high', 'leads from the supply to the controller’s pin'],
  ] as const)('switched on the %s side', (switched, words) => {
    const container = show({ kind: 'circuit', solenoid, switched });
    expect(told()).toHaveLength(1);
    expect(told()[0]).toContain(words);
    const level = (selector: string) =>
      Number(container.querySelector(selector)!.getAttribute(selector === '.dr-terminal' ? 'cy' : 'y'));
    // The winding is above the controller's pin where the controller pulls to ground.
    expect(Math.sign(level('.dr-terminal') - level('.dr-winding'))).toBe(switched === 'low' ? 1 : -1);
  });

  test('a driver and a fault are told where they are shown', () => {
    show({ kind: 'circuit', solenoid, switched: 'low', driver: 'off', circuit: 'short-to-ground' });
    expect(told().slice(1)).toEqual([
      'The switch is open.',
      'The wire between pin and winding touches ground.',
    ]);
  });
});

describe('the valve body', () => {
  const ids = BENCH.solenoids!.map(({ id }) => id);
  const sitting: Deck = {
    ...BENCH,
    valveBody: {
      rows: 2,
      columns: 4,
      seenFrom: 'from below, pan off',
      source: 'sheet-12',
      solenoids: ids.map((solenoid, index) => ({
        solenoid,
        row: index < 4 ? 1 : 2,
        column: index < 4 ? 4 - index : index - 3,
      })),
    },
  };

  test('solenoids stand where the deck says they sit', () => {
    const shown = valveBodyShown(sitting, { kind: 'valve-body' });
    const { at, width } = layoutValveBody(shown);
    const place = (id: string) => at(shown.solenoids.find((solenoid) => solenoid.id === id)!);
    expect(place(ids[0]!).x).toBeGreaterThan(place(ids[1]!).x);
    expect(place(ids[4]!).y).toBeGreaterThan(place(ids[0]!).y);
    expect(place(ids[4]!).x).toBe(place(ids[3]!).x);
    expect(width).toBeLessThanOrEqual(NARROW + 0.5);
  });

  test('DR10 where the deck does not say, the drawing does not claim it', () => {
    const container = show({ kind: 'valve-body' }, { ...BENCH, valveBody: undefined });
    expect(told()[0]).toBe('In the order of the list: the deck does not say where they sit.');
    expect(container.querySelector('.dr-shell')).toBeNull();
    cleanup();
    expect(show({ kind: 'valve-body' }, sitting).querySelector('.dr-shell')).not.toBeNull();
    expect(told()[0]).toBe('The face seen from below, pan off: 2 rows of 4.');
  });

  test('currents and plugs are told in words as well as by fill', () => {
    const [first, second, third] = ids;
    const container = show(
      { kind: 'valve-body', currents: { [first!]: 'on', [second!]: 'off' }, unplugged: [third!] },
      sitting,
    );
    expect(container.querySelectorAll('.dr-energised')).toHaveLength(1);
    const line = (id: string) => told().find((text) => text.includes(id))!;
    expect(line(first!)).toMatch(/^Row 1, column 4: .*, current on\.$/);
    expect(line(second!)).toMatch(/, current off\.$/);
    expect(line(third!)).toMatch(/, unplugged\.$/);
  });

  test('numbered solenoids are not named anywhere', () => {
    const container = show({ kind: 'valve-body', places: ids }, sitting, {
      picked: ids[0]!,
      right: null,
      onPick: () => {},
    });
    const drawn = container.textContent.replace(/Source.*/, '');
    for (const { name } of BENCH.solenoids!) expect(drawn).not.toContain(name);
    expect(told()).toContain(`Place 1, row 1, column 4: a solenoid.`);
    const { solenoids, ...grid } = valveBodyShown(sitting, { kind: 'valve-body', places: ids });
    const layout = layoutValveBody(grid);
    expectTappable(
      solenoids.map((solenoid) => ({ id: solenoid.id, label: '', ...layout.at(solenoid) })),
      layout,
    );
  });
});
