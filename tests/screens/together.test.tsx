// @vitest-environment jsdom
/** Decks brought together in the workshop: a colleague's changes, and a variant that shares facts. */
import { cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
// Loaded before the clock of a test runs: the screen is large.
import '../../src/screens/workshop/WorkshopScreen.tsx';
import { afterEach, describe, expect, test } from 'vitest';
import type { Deck } from '../../src/core/unit/deck.ts';
import { shippedDecks } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const { $schema: _, ...deck } = shippedDecks().find(({ id }) => id === 'kestrel-7')! as Deck & {
  $schema?: unknown;
};

// biome-ignore lint/suspicious/noExplicitAny: an edit reaches anywhere into a copy
const edited = (edit: (copy: any) => void): Deck => {
  const copy = structuredClone(deck);
  edit(copy);
  return copy;
};

const fileOf = (value: unknown, name: string) => {
  const text = JSON.stringify(value);
  return Object.assign(new File([text], name, { type: 'application/json' }), { text: async () => text });
};

async function open(place: Bench, draft: unknown, section: string) {
  await place.store.workshop.keep({ id: 'd1', unit: 'Kestrel 7', text: JSON.stringify(draft), savedAt: 1 });
  window.location.hash = `#/workshop/d1/${section}`;
  show(place);
}

const stored = async ({ store }: Bench): Promise<Deck> => {
  const draft = await store.workshop.draft('d1');
  if (!draft.ok || !draft.value) throw new Error('no draft');
  return JSON.parse(draft.value.text) as Deck;
};

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

const fitOf = ({ fits }: Deck) => fits!.find(({ id }) => id === 'front-end-play')!;
const torqueOf = ({ torques }: Deck) => torques!.find(({ id }) => id === 'pan')!;

describe('a colleague’s changes', () => {
  const mine = edited((copy) => {
    copy.fits[0].limits.high.value = '0.50';
  });
  const theirs = edited((copy) => {
    copy.fits[0].limits.high.value = '0.40';
    copy.torques[0].torque.value = '12';
  });

  test('what only one side changed comes over; the other is shown by fact, chosen, and then taken', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    await open(place, mine, 'together');
    const input = await screen.findByLabelText('Open the colleague’s deck file');
    await user.upload(input, fileOf(theirs, 'from-mila.json'));
    expect(await screen.findByText('One change comes over from from-mila.json')).toBeVisible();
    expect(screen.getByText('torque "pan", torque: 11 N·m → 12 N·m')).toBeVisible();
    const take = screen.getByRole('button', { name: 'Take this into the draft' });
    expect(take).toHaveAttribute('aria-disabled', 'true');
    const heading = await screen.findByText(/^In doubt until you choose/);
    expect(heading).toHaveTextContent('fit:front-end-play');
    await user.click(screen.getByRole('radio', { name: /^from-mila\.json: 0\.20 mm to 0\.40 mm/ }));
    expect(screen.getByText('All is chosen.')).toBeVisible();
    await user.click(take);
    await waitFor(async () => expect(torqueOf(await stored(place)).torque.value).toBe('12'));
    const merged = await stored(place);
    expect(fitOf(merged).limits.high.value).toBe('0.40');
    // Ines had checked 0.45: nobody has checked the chosen one.
    expect(fitOf(merged)).toMatchObject({ unsure: true });
    expect(fitOf(merged).verified).toBeUndefined();
    expect(merged.revision).toBe(deck.revision);
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    await waitFor(async () => expect(fitOf(await stored(place)).limits.high.value).toBe('0.50'));
  });

  test('another deck is refused, and a file that is none', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    await open(place, mine, 'together');
    const input = await screen.findByLabelText('Open the colleague’s deck file');
    await user.upload(input, fileOf({ ...deck, id: 'heron-7' }, 'heron.json'));
    expect(await screen.findByText(/^This file is the deck “heron-7”/)).toBeVisible();
    await user.upload(input, fileOf({ detentDeck: 1 }, 'half.json'));
    expect((await screen.findByRole('alert')).children.length).toBeGreaterThan(2);
    expect(await stored(place)).toEqual(mine);
  });
});

test('a variant: its own facts are marked, and a correction of the deck it is from comes over', async () => {
  const user = userEvent.setup();
  const corrected = {
    ...edited((copy) => {
      copy.torques[0].torque.value = '12';
      copy.revision = deck.revision + 1;
    }),
  };
  const place = await bench(corrected);
  await place.store.classroom.keepRevision({
    deck: deck.id,
    revision: deck.revision,
    text: JSON.stringify(deck),
    savedAt: 1,
  });
  const variant = {
    ...edited((copy) => {
      copy.fits[0].limits.high.value = '0.50';
    }),
    id: 'kestrel-7b',
    title: 'Kestrel 7b',
    unit: 'Kestrel 7b',
    variantOf: { deck: deck.id, revision: deck.revision },
  };
  await open(place, variant, 'revisions');
  expect(await screen.findByText(/^2 things are not as in/)).toBeVisible();
  const list = screen.getAllByRole('list').find((one) => within(one).queryByText(/front-end-play/))!;
  expect(within(list).getByText(/fit "front-end-play", limits/)).toBeVisible();
  await user.click(screen.getByRole('button', { name: /^Bring over what changed/ }));
  expect(await screen.findByText('All is chosen.')).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Take this into the draft' }));
  await waitFor(async () => expect(torqueOf(await stored(place)).torque.value).toBe('12'));
  const brought = await stored(place);
  expect(fitOf(brought).limits.high.value).toBe('0.50');
  expect(brought).toMatchObject({
    id: 'kestrel-7b',
    title: 'Kestrel 7b',
    variantOf: { deck: deck.id, revision: deck.revision + 1 },
  });
  expect(await screen.findByText(/^One thing is not as in/)).toBeVisible();
});
