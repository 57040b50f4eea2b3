// @vitest-environment jsdom
/** Screens by role and visible text, over a real store on an in-memory IndexedDB and a clock we hold. */
import { cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import type { Drill } from '../../src/core/memory/drill.ts';
import type { Question } from '../../src/core/questions/question.ts';
import { questionOf } from '../../src/core/questions/reopen.ts';
import { makeUnit, type Unit } from '../../src/core/unit/unit.ts';
import type { Store } from '../../src/storage/store.ts';
import { makeSay } from '../../src/words/words.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const unit: Unit = makeUnit(deck);
const say = makeSay(deck);

const onBench = () => bench(deck);

async function stored(store: Store): Promise<Drill> {
  const drill = await store.currentDrill();
  if (!drill.ok || !drill.value) throw new Error('no drill is stored');
  return drill.value;
}

async function atHand(store: Store): Promise<Question> {
  const drill = await stored(store);
  return questionOf(unit, drill.items[drill.index]!)!;
}

/** Starts the drill and waits until its first question is on the page. */
async function begin(user: ReturnType<typeof userEvent.setup>, { store }: Bench): Promise<Question> {
  await user.click(await screen.findByRole('button', { name: 'Start' }));
  const question = await waitFor(() => atHand(store));
  await screen.findByRole('heading', { name: say(question.prompt) });
  return question;
}

/** Ticks, taps or types something that fits the form. */
async function enterSomething(user: ReturnType<typeof userEvent.setup>, question: Question) {
  const main = within(screen.getByRole('main'));
  const { space } = question;
  if (space.form === 'set') await user.click(main.getAllByRole('checkbox')[0]!);
  else if (space.form === 'one') await user.click(main.getAllByRole('radio')[0]!);
  else if (space.form === 'number') await user.type(main.getByRole('textbox'), '12,5');
  else if (space.form === 'order')
    for (const item of space.items) await user.click(main.getByRole('button', { name: say(item.label) }));
  else
    for (const group of main.getAllByRole('group'))
      if (within(group).queryAllByRole('radio').length > 0)
        await user.click(within(group).getAllByRole('radio')[0]!);
}

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

describe('practice on screen', () => {
  test('opens on the next drill with minutes, questions and days to class, and starts it', async () => {
    const user = userEvent.setup();
    const place = await onBench();
    await place.store.setPractice(deck.id, { minutes: 7, classDate: '2026-03-05', daysAWeek: 7 });
    show(place);
    expect(await screen.findByRole('heading', { name: 'Next drill' })).toBeVisible();
    expect(screen.getByText('minutes').nextSibling).toHaveTextContent('7');
    expect(screen.getByText('days to class').nextSibling).toHaveTextContent('3');
    await begin(user, place);
    expect((await stored(place.store)).minutes).toBe(7);
  });

  test('Check waits for a whole answer, then judges once and stores one attempt with its seconds', async () => {
    const user = userEvent.setup();
    const place = await onBench();
    show(place);
    const question = await begin(user, place);
    await user.click(await screen.findByRole('button', { name: /Check/ }));
    expect(screen.queryByRole('status')).toBeNull();
    place.clock.at += 8_000;
    await enterSomething(user, question);
    const check = screen.getByRole('button', { name: 'Check' });
    await user.dblClick(check);
    expect(await screen.findByRole('status')).toHaveTextContent(/Right\.|Not right\./);
    const log = await place.store.attemptsOf(deck.id);
    expect(log.ok && log.value.attempts).toHaveLength(1);
    expect(log.ok && log.value.attempts[0]).toMatchObject({ seconds: 8, fact: question.fact, sequence: 1 });
  });

  test('the result says the row and the reason, and a caution shows before the answer', async () => {
    const user = userEvent.setup();
    const place = await onBench();
    const warned = makeUnit({
      ...deck,
      cautions: [
        {
          id: 'air',
          hazard: 'air',
          text: 'Glasses on before air goes in.',
          attachedTo: unit.ranges.map((range) => range.ref),
        },
      ],
    });
    show({ ...place, services: { ...place.services, unitOf: () => warned } });
    await user.click(await screen.findByRole('button', { name: 'Start' }));
    expect(await screen.findByRole('note')).toHaveTextContent('Glasses on before air goes in.');
    const drill = await stored(place.store);
    const question = questionOf(warned, drill.items[0]!)!;
    await enterSomething(user, question);
    await user.click(screen.getByRole('button', { name: 'Check' }));
    const status = await screen.findByRole('status');
    expect(status).toHaveTextContent(say(question.explanation.row));
    expect(status).toHaveTextContent(say(question.explanation.reason));
  });

  test('a drill left in the middle waits with its draft; stopping loses nothing', async () => {
    const user = userEvent.setup();
    const place = await onBench();
    show(place);
    const question = await begin(user, place);
    await enterSomething(user, question);
    await user.click(screen.getByRole('button', { name: 'Stop' }));
    expect(await screen.findByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
    cleanup();
    place.clock.at += 3_600_000;
    show(place);
    await user.click(await screen.findByRole('button', { name: 'Go on' }));
    await user.click(await screen.findByRole('button', { name: 'Check' }));
    await screen.findByRole('status');
    const log = await place.store.attemptsOf(deck.id);
    expect(log.ok && log.value.attempts[0]!.seconds).toBeLessThan(1);
  });

  test('storage that refuses an answer says so, and the answer can be checked again', async () => {
    const user = userEvent.setup();
    const place = await onBench();
    let full = true;
    const store: Store = {
      ...place.store,
      recordAttempt: (attempt, drill) =>
        full
          ? Promise.resolve({ ok: false, error: { code: 'full', detail: 'QuotaExceededError' } })
          : place.store.recordAttempt(attempt, drill),
    };
    show({ ...place, services: { ...place.services, store } });
    await enterSomething(user, await begin(user, place));
    await user.click(screen.getByRole('button', { name: 'Check' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('no room');
    expect(screen.queryByRole('status')).toBeNull();
    full = false;
    await user.click(screen.getByRole('button', { name: 'Check' }));
    expect(await screen.findByRole('status')).toBeVisible();
    expect(screen.queryByRole('alert')).toBeNull();
  });

  test('a faulty deck file is refused with every finding, and nothing is changed', async () => {
    const user = userEvent.setup();
    const place = await onBench();
    window.location.hash = '#/decks';
    show(place);
    const broken = { ...deck, chart: { ranges: [{ id: '1', applied: ['C9'] }] }, colour: 'red' };
    await user.upload(
      await screen.findByLabelText('Add a deck file'),
      new File([JSON.stringify(broken)], 'broken.json', { type: 'application/json' }),
    );
    expect(await screen.findByRole('status')).toHaveTextContent('nothing was changed');
    const decks = await place.store.decks();
    expect(decks.ok && decks.value.map(({ id }) => id)).toEqual([deck.id]);
  });
});
