// @vitest-environment jsdom
import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, describe, expect, test } from 'vitest';
import { type Lever, leversOf } from '../../../src/core/questions/describe/speeds.ts';
import type { Drawing, WindowDrawing } from '../../../src/core/questions/drawing.ts';
import { say as phrase } from '../../../src/core/questions/phrase.ts';
import type { Deck } from '../../../src/core/unit/deck.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { DrawingView } from '../../../src/ui/drawings/DrawingView.tsx';
import { layoutSpeeds, type NodeShape } from '../../../src/ui/drawings/speeds-layout.ts';
import { layoutWindow } from '../../../src/ui/drawings/window-layout.ts';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, PUBLISHED, shippedDecks } from '../../units.ts';
import { boxOf, expectClear, NARROW } from './clear.ts';

afterEach(cleanup);

const show = (drawing: Drawing, deck: Deck) =>
  render(<DrawingView drawing={drawing} unit={makeUnit(deck)} say={makeSay(deck)} />).container;
const told = () => screen.getAllByRole('listitem').map((line) => line.textContent);
const label = (text: string) => phrase('text', { text });

describe('a band of limits', () => {
  // The window of a published worked case, reckoned by hand: 3.44 to 3.64, of 3.0 to 3.8 only 3.6 lies in it.
  const drawing: WindowDrawing = {
    kind: 'window',
    unit: 'mm',
    low: '3.44',
    high: '3.64',
    aim: '3.54',
    parts: ['3.0', '3.2', '3.4', '3.6', '3.8'].map((at) => ({ label: label(at), at, lit: at === '3.6' })),
  };
  const layout = layoutWindow(
    drawing,
    drawing.parts.map(({ at }) => [at]),
  );

  test('only what lies in it is drawn in it, all on one scale', () => {
    const within = layout.rows.map(({ x }) => x >= layout.low && x <= layout.high);
    expect(within).toEqual([false, false, false, true, false]);
    const perMm = (layout.high - layout.low) / 0.2;
    expect((layout.rows[4]!.x - layout.rows[0]!.x) / perMm).toBeCloseTo(0.8, 9);
    expect((layout.aim! - layout.low) / perMm).toBeCloseTo(0.1, 9);
  });

  test('a value on a limit is drawn on it', () => {
    const edge = layoutWindow({ ...drawing, high: '3.8' }, [[''], [''], [''], [''], ['']]);
    expect(edge.rows[4]!.x).toBeCloseTo(edge.high, 9);
  });

  test('rows stay apart and on the page', () => {
    expect(layout.width).toBeLessThanOrEqual(NARROW + 0.5);
    for (const [index, { y, x }] of layout.rows.entries()) {
      expect(x).toBeGreaterThanOrEqual(layout.left);
      expect(x).toBeLessThanOrEqual(layout.right);
      if (index > 0) expect(y - layout.rows[index - 1]!.y).toBeGreaterThanOrEqual(20);
    }
  });

  test('in words: the limits, the aim and each value, without a verdict', () => {
    show(drawing, shippedDecks()[0]!);
    expect(told()).toEqual([
      'Limits: 3.44 to 3.64 mm.',
      'Aimed at: 3.54 mm.',
      '3.0: 3.0 mm.',
      '3.2: 3.2 mm.',
      '3.4: 3.4 mm.',
      '3.6: 3.6 mm, marked.',
      '3.8: 3.8 mm.',
    ]);
  });
});

const DECKS: (readonly [string, Deck])[] = [
  ...PUBLISHED.map((train) => [train.id, deckOf(train)] as const),
  ...shippedDecks().map((deck) => [deck.id, deck] as const),
];
const laid = (levers: readonly Lever[]) => layoutSpeeds(levers, ({ member, shaft }) => [member, shaft]);

/** One set that drives, its ring braked in range 1; an idle second set where it is wanted. */
const twoRanges = (idle: boolean): Deck => ({
  detentDeck: 1,
  id: 'bench-2',
  title: 'Two ranges',
  unit: 'Bench model 2',
  revision: 1,
  train: {
    input: 'turbine',
    output: 'tail',
    gearsets: [
      {
        id: 'P1',
        kind: 'simple',
        sun: { shaft: 'turbine', teeth: 30 },
        ring: { shaft: 'ring', teeth: 70 },
        carrier: { shaft: 'tail' },
      },
      ...(idle
        ? [
            {
              id: 'P2',
              kind: 'simple' as const,
              sun: { shaft: 'small', teeth: 40 },
              ring: { shaft: 'large', teeth: 80 },
              carrier: { shaft: 'tail' },
            },
          ]
        : []),
    ],
    elements: [
      { id: 'B1', kind: 'brake', between: ['ring', 'case'] },
      { id: 'C1', kind: 'clutch', between: ['turbine', 'ring'] },
    ],
  },
  chart: { ranges: [{ id: '1', applied: ['B1'] }] },
});

describe('levers', () => {
  test('a set by hand: sun 30, ring 70, sun driving, ring held: the carrier turns at 0.3', () => {
    const deck = twoRanges(false);
    const unit = makeUnit(deck);
    const [lever] = leversOf(unit, { kind: 'speeds', range: '1' });
    expect(lever!.nodes.map(({ member, text }) => [member, text])).toEqual([
      ['ring', '0'],
      ['carrier', '0.300'],
      ['sun', '1.000'],
    ]);
    // The carrier is nearer the ring, as 30 is to 70.
    expect(lever!.nodes.map(({ along }) => along)).toEqual([1, 0.7, 0]);
    const inRpm = leversOf(unit, { kind: 'speeds', range: '1', inputRpm: 2500 });
    expect(inRpm[0]!.nodes.map(({ text }) => text)).toEqual(['0', '750', '2500']);
  });

  test.each(DECKS)('DR5 %s: the ends of the speeds of each set lie on one line', (_, deck) => {
    const unit = makeUnit(deck);
    for (const { id } of unit.ranges) {
      const layout = laid(leversOf(unit, { kind: 'speeds', range: id }));
      for (const { nodes, line } of layout.levers) {
        if (!line) continue;
        for (const { tip } of nodes) {
          const part = (tip!.y - line.y1) / (line.y2 - line.y1);
          expect(tip!.x).toBeCloseTo(line.x1 + part * (line.x2 - line.x1), 6);
        }
      }
    }
  });

  test.each(DECKS)('DR5 %s: a shaft turns at one speed in every set it is in, to scale', (_, deck) => {
    const unit = makeUnit(deck);
    for (const { id, solution } of unit.ranges) {
      const layout = laid(leversOf(unit, { kind: 'speeds', range: id }));
      const perTurn = layout.input - layout.zero;
      for (const { node, tip } of layout.levers.flatMap(({ nodes }) => nodes)) {
        if (!tip) continue;
        const speed = node.shaft === 'case' ? 0 : solution.speeds.get(node.shaft)!.valueOf();
        expect((tip.x - layout.zero) / perTurn).toBeCloseTo(speed, 6);
      }
    }
  });

  const textOf = ({ node }: NodeShape) => node.text ?? '?';

  test.each(DECKS)('%s: words stay on the page and clear of each other', (_, deck) => {
    const unit = makeUnit(deck);
    for (const { id } of unit.ranges) {
      const layout = laid(leversOf(unit, { kind: 'speeds', range: id }));
      expect(layout.width).toBeLessThanOrEqual(NARROW + 0.5);
      const nodes = layout.levers.flatMap((lever) => lever.nodes);
      expectClear(
        [
          ...nodes.flatMap(({ label: { lines, y } }) =>
            lines.map((line, index) =>
              boxOf(line, layout.names, y + (index - (lines.length - 1) / 2) * 13, 'start'),
            ),
          ),
          ...layout.levers.map(({ set, top }) => boxOf(set, layout.names, top - 26, 'start')),
        ],
        layout,
      );
      expectClear(
        nodes.map((node) => boxOf(textOf(node), node.value.x, node.value.y, node.value.anchor)),
        layout,
      );
    }
  });

  test('DR6 a covered speed is neither written nor drawn nor said', () => {
    const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
    const unit = makeUnit(deck);
    const { output } = deck.train;
    const ratio = unit.ranges[3]!.ratio;
    const written = (1 / ratio.valueOf()).toFixed(3);
    const range = unit.ranges[3]!.id;
    expect(show({ kind: 'speeds', range }, deck).textContent).toContain(written);
    cleanup();
    const container = show({ kind: 'speeds', range, covered: [output] }, deck);
    expect(container.textContent).not.toContain(written);
    const layout = laid(leversOf(unit, { kind: 'speeds', range, covered: [output] }));
    const hidden = layout.levers.flatMap(({ nodes }) => nodes).filter(({ node }) => node.shaft === output);
    expect(hidden.length).toBeGreaterThan(0);
    expect(hidden.every(({ tip }) => tip === null)).toBe(true);
  });

  test('members that may turn as they like have no speed', () => {
    const unit = makeUnit(twoRanges(true));
    const [, idle] = leversOf(unit, { kind: 'speeds', range: '1' });
    expect(idle!.nodes.map(({ member, text }) => [member, text])).toEqual([
      ['ring', null],
      ['carrier', '0.300'],
      ['sun', null],
    ]);
    expect(laid([idle!]).levers[0]!.line).toBeNull();
    show({ kind: 'speeds', range: '1' }, twoRanges(true));
    expect(told()[2]).toBe('P2: ring on large left open, carrier on tail 0.300, and sun on small left open.');
  });
});

describe('steps', () => {
  const deck: Deck = {
    ...shippedDecks()[0]!,
    sequences: [
      {
        id: 'strip',
        steps: [
          { id: 'pan', text: 'Take the pan off.', turned: 'Set the pan on.' },
          { id: 'pump', text: 'Draw the pump.' },
        ],
        assembly: { added: [{ id: 'measure', text: 'Measure end play.' }] },
      },
    ],
  };

  test('in the order given, ticked where done', () => {
    show({ kind: 'steps', sequence: 'strip', work: 'strip', steps: ['pump', 'pan'], done: ['pan'] }, deck);
    expect(told()).toEqual(['Draw the pump.', 'Take the pan off., done']);
  });

  test('putting together has its own words and its own steps', () => {
    show(
      {
        kind: 'steps',
        sequence: 'strip',
        work: 'assembly',
        steps: ['pump', 'measure', 'pan'],
        lit: ['measure'],
      },
      deck,
    );
    expect(told()).toEqual(['Draw the pump.', 'Measure end play., marked', 'Set the pan on.']);
  });
});
