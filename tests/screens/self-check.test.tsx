// @vitest-environment jsdom
/** The self-check on screen: no help while it runs, nothing lost, the truth at the end, and nothing left after. */
import { cleanup, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { shippedDecks } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;

async function start(place: Bench, user: ReturnType<typeof userEvent.setup>, questions = '5') {
  window.location.hash = '#/self-check';
  show(place);
  const field = await screen.findByLabelText('Questions');
  await user.clear(field);
  await user.type(field, questions);
  await user.click(screen.getByRole('button', { name: 'Start' }));
}

const stored = async ({ store }: Bench) => {
  const book = await store.checkBook();
  if (!book.ok) throw new Error(book.error.detail);
  return book.value;
};

const finish = async (user: ReturnType<typeof userEvent.setup>) => {
  await user.click(screen.getByRole('button', { name: /^Question 5/ }));
  await user.click(screen.getByRole('button', { name: 'Finish' }));
  await user.click(screen.getAllByRole('button', { name: 'Finish' })[0]!);
};

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

describe('a self-check', () => {
  test('every fault of the set-up is told at once, and nothing starts', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    await start(place, user, '2');
    expect(screen.getByRole('alert')).toHaveTextContent('from 5 to 200');
    expect((await stored(place)).current).toBeNull();
  });

  test('runs without a verdict, back and forth, and a killed page is where it was', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    await start(place, user);
    expect(await screen.findByRole('timer')).toHaveTextContent('40 minutes left');
    await user.click(screen.getByRole('button', { name: 'Next' }));
    await user.click(screen.getByRole('button', { name: 'Mark' }));
    await user.click(screen.getByLabelText('sure'));
    await waitFor(async () => expect((await stored(place)).current?.sure).toEqual({ 1: true }));
    expect(screen.queryByRole('status')).toBeNull();
    cleanup();
    place.clock.at += 3_600_000;
    show(place);
    expect(await screen.findByText('Question 2 of 5')).toBeVisible();
    expect(screen.getByRole('button', { name: 'Question 2, open, marked' })).toHaveAttribute(
      'aria-current',
      'step',
    );
    expect(screen.getByRole('timer')).toHaveTextContent('40 minutes left');
  });

  test('tells what was right of what was asked, gives no verdict on few, and leaves nothing after a wipe', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    await start(place, user);
    await screen.findByRole('timer');
    await finish(user);
    expect(await screen.findByText(/^0 of 5 answers right on these questions, on 2026-03-02/)).toBeVisible();
    expect(screen.getAllByText('Fewer than 10 questions: no verdict.').length).toBeGreaterThan(0);
    expect(document.body.textContent).not.toMatch(/certified|competent|passed|failed/i);
    await user.click(screen.getByRole('button', { name: /^Wipe all/ }));
    expect(await screen.findByLabelText('Questions')).toBeVisible();
    await waitFor(async () => expect(await stored(place)).toEqual({ current: null, past: [] }));
    const log = await place.store.attemptsOf(deck.id);
    expect(log.ok && log.value.attempts).toEqual([]);
  });

  test('a second check is held against the first', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    for (const round of [1, 2]) {
      await start(place, user);
      await screen.findByRole('timer');
      await finish(user);
      await screen.findByText(/answers right on these questions/);
      if (round === 2) expect(screen.getByText(/Last time 0 of 5, now 0 of 5/)).toBeVisible();
      await user.click(screen.getByRole('button', { name: /^Keep the figures/ }));
      await waitFor(async () => expect((await stored(place)).past).toHaveLength(round));
      cleanup();
    }
    const [first, second] = (await stored(place)).past;
    expect(second!.facts.filter((fact) => first!.facts.includes(fact)).length).toBeLessThan(4);
  });
});
