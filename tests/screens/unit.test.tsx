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

test('another pack, with its clearance', async () => {
  const { user } = open(LEAN);
  const section = within(part('Packs'));
  // By hand: 30.10 − 27.00.
  expect(section.getByText('Room 30.10 mm, clearance 3.10 mm.')).toBeInTheDocument();
  await user.selectOptions(section.getByLabelText('Pack'), 'low brake pack');
  expect(section.getByRole('img', { name: /low brake pack/ })).toBeInTheDocument();
  expect(section.queryByText(/^Room /)).toBeNull();
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
