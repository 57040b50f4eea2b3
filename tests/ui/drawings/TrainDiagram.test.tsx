// @vitest-environment jsdom
import { cleanup, render, screen } from '@testing-library/react';
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, describe, expect, test } from 'vitest';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { type StickDrawing, TrainDiagram } from '../../../src/ui/drawings/TrainDiagram.tsx';
import { makeSay } from '../../../src/words/words.ts';
import { deckOf, everyUnit, PUBLISHED } from '../../units.ts';

afterEach(cleanup);

const unit = makeUnit(deckOf(PUBLISHED.find((train) => train.id === 'lepelletier-6-a')!));
const say = makeSay(unit.deck);
const draw = (drawing: Partial<StickDrawing>, of = unit) => (
  <TrainDiagram drawing={{ kind: 'train', ...drawing }} unit={of} say={makeSay(of.deck)} />
);
const inWords = () =>
  [...screen.getByText('In words').closest('details')!.querySelectorAll('li')].map(
    (line) => line.textContent,
  );

describe('in words', () => {
  // Lepelletier: front sun on the case, ring driven, carrier to two clutches (tests/published).
  test('tells what every part is on, and no more', () => {
    render(draw({}));
    expect(screen.getByRole('img', { name: /^Stick drawing of the gear train of Lepelletier/ })).toBeTruthy();
    expect(inWords()).toEqual([
      'Input: in. Output: out.',
      'Gearset P1: sun on the case, ring on in, carrier on c1.',
      'Gearset Psmall, double-pinion: sun on s2, ring on out, carrier on c.',
      'Gearset Plarge: sun on s3, ring on out, carrier on c.',
      'A: clutch between c1 and s2.',
      'B: clutch between c1 and s3.',
      'E: clutch between in and c.',
      'C: brake between s3 and the case.',
      'D: brake between c and the case.',
    ]);
    expect(screen.queryByText(/Filled|Nothing is on|Thick/)).toBeNull();
  });

  test('tooth counts only when the drawing shows them', () => {
    render(draw({ showTeeth: true }));
    expect(inWords()).toContain('Teeth of P1: sun 37, ring 71.');
    const texts = [...document.querySelectorAll('svg text')].map((text) => text.textContent);
    expect(texts).toEqual(expect.arrayContaining(['ring 71', 'sun 37', 'ring 85', 'sun 31', 'sun 38']));
    cleanup();
    const { container } = render(draw({}));
    expect(container.textContent).not.toMatch(/71|37|85/);
  });

  test('what is on, when it is given', () => {
    render(draw({ applied: ['A', 'D'] }));
    expect(screen.getByText('Filled, on: A and D.')).toBeTruthy();
    cleanup();
    render(draw({ applied: [] }));
    expect(screen.getByText('Nothing is on.')).toBeTruthy();
  });

  test('one thick line is named, several are numbered in the drawing and beneath it', () => {
    const { container } = render(draw({ litShafts: ['c1'] }));
    expect(screen.getByText('Thick line: c1.')).toBeTruthy();
    expect(container.querySelectorAll('.dr-tag')).toHaveLength(0);
    cleanup();
    const two = render(draw({ litShafts: ['c1', 'out'] }));
    expect(screen.getByText('Thick lines: 1: c1 and 2: out.')).toBeTruthy();
    expect([...two.container.querySelectorAll('.dr-tag text')].map((tag) => tag.textContent)).toEqual([
      '1',
      '2',
    ]);
  });
});

describe('the drawing', () => {
  test('labels every gearset and element once', () => {
    for (const one of everyUnit()) {
      const { container } = render(draw({}, one));
      const texts = [...container.querySelectorAll('svg text')].map((text) => text.textContent);
      const { gearsets, elements } = one.deck.train;
      const ids = [...gearsets, ...elements].map(({ id }) => id);
      expect([...texts].sort()).toEqual([...ids, 'in', 'out'].sort());
      cleanup();
    }
  });

  test('fills what is on and leaves the rest open', () => {
    const { container } = render(draw({ applied: ['A', 'D'] }));
    const labelsOn = [...container.querySelectorAll('.dr-on text')].map((text) => text.textContent);
    expect(labelsOn).toEqual(['A', 'D']);
    expect(container.querySelectorAll('.dr-fill')).toHaveLength(2);
  });

  test('nothing tells what is on unless it is given', () => {
    const pages = unit.ranges.map((range) =>
      renderToStaticMarkup(
        <TrainDiagram
          drawing={{ kind: 'train' }}
          unit={{ ...unit, ranges: [range], deck: { ...unit.deck, chart: { ranges: [] } } }}
          say={say}
        />,
      ),
    );
    expect(new Set(pages).size).toBe(1);
    expect(pages[0]).not.toContain('dr-on');
  });

  test('a lit shaft is lit from end to end: its lines, gears and bars', () => {
    const { container } = render(draw({ litShafts: ['s3'] }));
    // s3 carries one sun, one bar of clutch B and one bar of brake C.
    expect(container.querySelectorAll('.dr-gear.dr-lit')).toHaveLength(1);
    expect(container.querySelectorAll('.dr-bar.dr-lit')).toHaveLength(2);
    expect(container.querySelectorAll('g.dr-shaft.dr-lit')).toHaveLength(1);
    cleanup();
    const still = render(draw({ litShafts: ['case'] }));
    // The housing and the ground of the front sun.
    expect(still.container.querySelectorAll('.dr-case.dr-lit')).toHaveLength(2);
  });

  test('text is never set smaller than 11 px: a wide train scrolls instead', () => {
    const { container } = render(draw({}));
    const svg = container.querySelector('svg')!;
    const width = Number(svg.getAttribute('viewBox')!.split(' ')[2]);
    expect((12 * Number.parseFloat(svg.style.minWidth)) / width).toBeGreaterThanOrEqual(11);
  });
});
