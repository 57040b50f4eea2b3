// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import type { Deck } from '../../src/core/unit/deck.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { UnitScreen } from '../../src/screens/unit/UnitScreen.tsx';
import { makeSay } from '../../src/words/words.ts';
import { BENCH } from '../ui/drawings/bench-deck.ts';
import { deckOf, PUBLISHED } from '../units.ts';

afterEach(cleanup);
// jsdom lays nothing out, so it has nothing to scroll.
Element.prototype.scrollIntoView = () => {};

const open = (deck: Deck) => {
  const { container } = render(<UnitScreen unit={makeUnit(deck)} say={makeSay(deck)} />);
  return { user: userEvent.setup(), container };
};
/** Without the long lists, which only cost time here. */
const LEAN: Deck = { ...BENCH, sequences: undefined, cautions: undefined, fits: undefined, codes: undefined };
const part = (name: string) => screen.getByRole('heading', { name }).closest('section')!;
const FIND = 'Bearing, washer or seal';

describe('look-up', () => {
  test('lists just the parts that the deck has', () => {
    const plain = deckOf(PUBLISHED[0]!);
    open({ ...plain, solenoids: undefined, lever: undefined, sensors: undefined });
    const parts = () =>
      within(screen.getByRole('navigation', { name: 'On this page' }))
        .getAllByRole('button')
        .map((button) => button.textContent);
    expect(parts()).toEqual(['Apply chart', 'Gear train', 'Elements']);
    cleanup();
    open(BENCH);
    expect(parts()).toEqual(
      expect.arrayContaining(['Shaft line', 'Packs', 'Fits', 'Wires', 'Work in steps']),
    );
    for (const name of parts()) expect(screen.getByRole('heading', { name: name! })).toBeInTheDocument();
  });

  test('jumping moves the keyboard along', async () => {
    const { user } = open(LEAN);
    await user.click(screen.getByRole('button', { name: 'Packs' }));
    expect(screen.getByRole('heading', { name: 'Packs' })).toHaveFocus();
  });
});

describe('one bearing’s face', () => {
  test('found by name: what it lies against, the end it was noted from, and what comes of a mistake', async () => {
    const { user } = open(LEAN);
    await user.selectOptions(screen.getByLabelText(FIND), 'T3');
    const section = within(part('Shaft line'));
    expect(section.getByText('To the front: needles seen, against clutch hub')).toBeInTheDocument();
    expect(
      section.getByText('To the rear: closed race, needles hidden, against front sun gear'),
    ).toBeInTheDocument();
    expect(section.getByText('Noted as seen from the front, where the converter sits.')).toBeInTheDocument();
    expect(section.getByText(/^Goes in the wrong way round as well\./)).toBeInTheDocument();
  });

  test('found by its number on the line', async () => {
    const { user, container } = open(LEAN);
    await user.click(container.querySelector('[data-spot="T5"]')!);
    expect(screen.getByLabelText(FIND)).toHaveValue('T5');
    expect(screen.getByText(/against front carrier$/)).toBeInTheDocument();
  });

  test('the same with the unit turned round: the other end is seen, the faces stay where they are', async () => {
    const { user } = open(LEAN);
    await user.selectOptions(screen.getByLabelText(FIND), 'T1');
    expect(screen.getByRole('img', { name: 'The face seen from the front' })).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: 'Turn the unit round' }));
    expect(screen.getByRole('img', { name: 'The face seen from the rear' })).toBeInTheDocument();
    expect(screen.getByText(/The front of the unit is at the right\./)).toBeInTheDocument();
    expect(
      screen.getByText('To the front: closed race, needles hidden, against pump body'),
    ).toBeInTheDocument();
  });
});

describe('looked for', () => {
  const named: Deck = {
    ...LEAN,
    aliases: [{ of: 'seat:T3', names: ['sun bearing'] }],
    cautions: [
      { id: 'edge', hazard: 'handling', text: 'The edge cuts.', attachedTo: ['seat:T3'] },
      { id: 'air', hazard: 'air', text: 'Glasses on.', attachedTo: ['seat:T5'] },
    ],
    sources: [{ id: 'bench', title: 'Bench sheet 4' }],
    seats: LEAN.seats!.map((seat) => ({ ...seat, source: 'bench' })),
  };
  const look = async (deck: Deck, text: string) => {
    const { user, container } = open(deck);
    await user.type(screen.getByRole('searchbox'), text);
    return { user, container };
  };
  const parts = () => screen.getAllByRole('heading', { level: 2 }).map((heading) => heading.textContent);

  test('one bearing by its id: faces, mark, viewing end and source at once, nothing else on the page', async () => {
    await look(named, 't3');
    expect(screen.getByText('One thing is called that.')).toBeInTheDocument();
    expect(parts()).toEqual(['Shaft line']);
    const section = within(part('Shaft line'));
    expect(section.getByLabelText(FIND)).toHaveValue('T3');
    expect(section.getByText('To the front: needles seen, against clutch hub')).toBeInTheDocument();
    expect(
      section.getByText('To the rear: closed race, needles hidden, against front sun gear'),
    ).toBeInTheDocument();
    expect(section.getByText('Noted as seen from the front, where the converter sits.')).toBeInTheDocument();
    expect(section.getByText(/from Bench sheet 4/, { selector: '.provenance' })).toBeInTheDocument();
    expect(screen.getByText('The edge cuts.')).toBeInTheDocument();
    expect(screen.queryByText('Glasses on.')).toBeNull();
  });

  test('by another name, which the list of hits tells', async () => {
    const { user } = await look(named, 'sun bear');
    await user.click(screen.getByRole('button', { name: 'Shaft line: T3, also called sun bearing' }));
    expect(screen.getByRole('heading', { name: 'Shaft line' })).toHaveFocus();
    expect(screen.getByLabelText(FIND)).toHaveValue('T3');
  });

  test('by what it lies against, and from there to another on the line', async () => {
    const { user, container } = await look(named, 'pump body');
    expect(screen.getByLabelText(FIND)).toHaveValue('T1');
    await user.click(container.querySelector('[data-spot="T5"]')!);
    expect(screen.getByLabelText(FIND)).toHaveValue('T5');
  });

  test('a list is narrowed to what answers; Enter jumps to the first', async () => {
    const { user } = await look(LEAN, 'B1');
    const heads = within(part('Elements'))
      .getAllByRole('rowheader')
      .map((head) => head.textContent);
    expect(heads).toEqual(['B1']);
    await user.keyboard('{Enter}');
    expect(screen.getByRole('heading', { name: 'Elements' })).toHaveFocus();
  });

  test('a step stands alone with its caution and the number it has in its sequence', async () => {
    const steps = ['Drain it.', 'Drop the pan.', 'Draw the filter.'].map((text, n) => ({
      id: `s${n}`,
      text,
    }));
    const cautions = [
      { id: 'hot', hazard: 'hot-fluid', text: 'It is hot.', attachedTo: ['step:strip/s2'] },
    ] as const;
    await look({ ...LEAN, cautions, sequences: [{ id: 'strip', steps }] }, 'filter');
    const section = within(part('Work in steps'));
    expect(section.getByText('strip: 3 steps').closest('details')).toHaveAttribute('open');
    const items = section.getAllByRole('listitem') as HTMLLIElement[];
    expect(items.map((item) => [item.value, item.textContent])).toEqual([[3, 'It is hot.Draw the filter.']]);
    expect(screen.getAllByText('It is hot.')).toHaveLength(1);
  });

  test('plates that are alike are one entry, told with their pack', async () => {
    await look(LEAN, 'friction');
    const entries = screen.getAllByRole('button', { name: /^Packs: friction/ });
    expect(new Set(entries.map((entry) => entry.textContent)).size).toBe(entries.length);
    expect(entries[0]).toHaveTextContent(/, .* pack$/);
  });

  test('what nobody is called leaves the page empty and says so; cleared, all is back', async () => {
    const { user } = await look(LEAN, 'gudgeon');
    expect(screen.getByText('Nothing on this page is called that.')).toBeInTheDocument();
    expect(screen.queryAllByRole('heading', { level: 2 })).toEqual([]);
    await user.clear(screen.getByRole('searchbox'));
    expect(parts()).toContain('Apply chart');
    expect(screen.getByLabelText(FIND)).toHaveValue('');
  });
});

test('another pack, with its clearance', async () => {
  const { user } = open(LEAN);
  const section = within(part('Packs'));
  // By hand: 30.10 − 27.00.
  expect(section.getByText('Room 30.10 mm, clearance 3.10 mm.')).toBeInTheDocument();
  await user.selectOptions(section.getByLabelText('Pack'), 'low brake pack');
  expect(section.getByRole('img', { name: /low brake pack/ })).toBeInTheDocument();
  expect(section.queryByText(/^Room /)).toBeNull();
});

test('fluid, torques, weights and codes, as they were written', () => {
  const solenoid = LEAN.solenoids![0]!;
  const deck: Deck = {
    ...LEAN,
    sources: [{ id: 'maker', title: 'Maker’s sheet' }],
    fluids: [
      {
        id: 'atf',
        name: 'fluid',
        type: 'as on the label',
        dryFill: { value: '9.40', unit: 'L' },
        levelAt: { low: { value: '-5', unit: '°C' }, high: { value: '45', unit: '°C' } },
        source: 'maker',
      },
    ],
    torques: [{ id: 'pan', name: 'pan bolts', torque: { value: '11', unit: 'N·m' }, count: 14 }],
    weights: [{ id: 'unit', mass: { value: '168', unit: 'lb' } }],
    codes: [{ id: 'P0753', kind: 'electrical', watches: [`solenoid:${solenoid.id}`], meaning: 'Open.' }],
  };
  open(deck);
  const lines = (name: string) =>
    within(part(name))
      .getAllByRole('row')
      .map((row) => row.textContent);
  expect(lines('Fluid, torques, weights')).toEqual([
    'fluidas on the label; 9.40 L after a rebuild, converter and cooler empty; level checked between −5 °C and 45 °Cfrom Maker’s sheet',
    'pan bolts11 N·m, 14 bolts or nuts',
    'unit168 lb',
  ]);
  expect(lines('Trouble codes')).toEqual([`P0753Open. It watches ${solenoid.name} ${solenoid.id}.`]);
});

test('a range put into the train shows its speeds as well', async () => {
  const { user } = open(LEAN);
  expect(screen.queryByRole('img', { name: /^Speeds in/ })).toBeNull();
  await user.selectOptions(screen.getByLabelText('Show a range in the train'), BENCH.chart.ranges[1]!.id);
  expect(screen.getByRole('img', { name: /^Speeds in/ })).toBeInTheDocument();
});

test('a step’s caution stands before it, its torque and reasons after', async () => {
  const deck: Deck = {
    ...LEAN,
    cautions: [{ id: 'lift', hazard: 'lift', text: 'Never alone.', attachedTo: ['step:strip/pump'] }],
    sequences: [
      {
        id: 'strip',
        name: 'stripping',
        steps: [
          { id: 'bolts', text: 'Undo the bolts.', tool: '13 mm socket' },
          {
            id: 'pump',
            text: 'Draw the pump.',
            torque: { value: '24', unit: 'N·m' },
            after: [{ step: 'bolts', reason: 'It is bolted down.' }],
          },
        ],
      },
    ],
  };
  open(deck);
  const [, pump] = within(part('Work in steps')).getAllByRole('listitem');
  expect(pump).toHaveTextContent(/^Never alone\.Draw the pump\.24 N·m · after 1: It is bolted down\.$/);
});
