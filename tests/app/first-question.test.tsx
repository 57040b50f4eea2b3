// @vitest-environment jsdom
/** The drill under way from what was kept of its question, before the store is open. */
import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { App } from '../../src/app/App.tsx';
import { firstQuestion } from '../../src/app/first-question.ts';
import { startDrill } from '../../src/core/memory/drill.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { namesOf } from '../../src/core/questions/names.ts';
import type { Question } from '../../src/core/questions/question.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { ServicesProvider } from '../../src/screens/services.ts';
import type { Peeked } from '../../src/storage/peek.ts';
import { makeSay } from '../../src/words/words.ts';
import { type Bench, bench } from '../screens/bench.tsx';
import { shippedDecks } from '../units.ts';

const deck = shippedDecks()[0]!;
const unit = makeUnit(deck);
const say = makeSay(deck);
const choosing = FAMILIES.filter(({ form }) => form === 'one').flatMap(
  (family) => ask(unit, family, 5) ?? [],
);
const [first, second] = choosing.filter(({ drawing }) => !drawing) as [Question, Question];

/** The store as it stands with this question kept, and what the look ahead finds. */
async function peekedOn({ store }: Bench, question: Question): Promise<Peeked> {
  const items = [first, second].map(({ family, fact, seed }) => ({ family, fact, seed }));
  const drill = startDrill({ id: 'drill-1', deck, day: 20_514, minutes: 10, items, at: 1 });
  await store.beginDrill(drill);
  const atHand = {
    build: 'test',
    language: 'en',
    drill: drill.id,
    index: 0,
    question,
    said: {},
    names: namesOf(deck),
  };
  return structuredClone({ drill, atHand, deckText: undefined });
}

/** A page on which the first question stands while the store is still being opened; `open` lets it open. */
async function opening(question: Question) {
  const place = await bench(deck);
  let open = () => {};
  const isOpen = new Promise<void>((resolve) => {
    open = resolve;
  });
  const slow = { ...place.store, decks: () => isOpen.then(() => place.store.decks()) };
  const services = { ...place.services, store: slow };
  const found = await firstQuestion(services, await peekedOn(place, question));
  expect(found).toMatchObject({ asked: { question } });
  window.location.hash = '#/drill';
  render(
    <ServicesProvider value={services}>
      <App first={found} />
    </ServicesProvider>,
  );
  return { ...place, open, slow };
}

const right = (question: Question) => {
  const [answer] = question.answers;
  if (answer.form !== 'one' || question.space.form !== 'one') throw new Error('not a choice');
  return say(question.space.options.find(({ id }) => id === answer.pick)!.label);
};

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

test('every question can be kept: it comes back the same', () => {
  let kept = 0;
  for (const each of shippedDecks().map(makeUnit))
    for (const family of FAMILIES) {
      const question = ask(each, family, 2);
      if (!question) continue;
      expect(structuredClone(question)).toStrictEqual(question);
      kept++;
    }
  expect(kept).toBeGreaterThan(FAMILIES.length);
});

describe('while the store is being opened', () => {
  test('the question is answered and judged, and a press on Next is kept until the deck is there', async () => {
    const user = userEvent.setup();
    const { open, store } = await opening(first);
    expect(screen.getByRole('heading', { name: say(first.prompt) })).toBeVisible();
    await user.click(within(screen.getByRole('main')).getByRole('radio', { name: right(first) }));
    await user.click(screen.getByRole('button', { name: 'Check' }));
    expect(await screen.findByRole('status')).toHaveTextContent(say(first.explanation.row));
    await user.click(screen.getByRole('button', { name: /Next/ }));
    expect(screen.queryByRole('heading', { name: say(second.prompt) })).toBeNull();
    open();
    expect(await screen.findByRole('heading', { name: say(second.prompt) })).toBeVisible();
    const log = await store.attemptsOf(deck.id);
    expect(log.ok && log.value.attempts).toMatchObject([{ fact: first.fact, right: true }]);
    expect(await store.currentDrill()).toMatchObject({ ok: true, value: { index: 1, answered: 1 } });
  });

  test('what was entered stays when it is open', async () => {
    const user = userEvent.setup();
    const { open, store } = await opening(first);
    await user.click(screen.getByRole('radio', { name: right(first) }));
    open();
    await screen.findByRole('button', { name: 'Check' });
    await expect
      .poll(async () => (await store.currentDrill()) as object)
      .toMatchObject({ value: { draft: {} } });
    expect(screen.getByRole('radio', { name: right(first) })).toBeChecked();
  });
});

test('nobody changes an answer that is being stored', async () => {
  const user = userEvent.setup();
  const place = await opening(first);
  let store = () => {};
  const isStored = new Promise<void>((resolve) => {
    store = resolve;
  });
  const { recordAttempt } = place.store;
  place.slow.recordAttempt = async (...given) => {
    await isStored;
    return recordAttempt(...given);
  };
  await user.click(screen.getByRole('radio', { name: right(first) }));
  await user.click(screen.getByRole('button', { name: 'Check' }));
  await user.click(screen.getAllByRole('radio').find((radio) => !(radio as HTMLInputElement).checked)!);
  store();
  expect(await screen.findByRole('status')).toHaveTextContent('Right.');
  expect(screen.queryByRole('button', { name: 'Go on here' })).toBeNull();
  expect(await place.store.currentDrill()).toMatchObject({ value: { verdict: { right: true } } });
});

test('what was entered for a kept question that is another by now is not taken over', async () => {
  const user = userEvent.setup();
  const { open } = await opening({
    ...first,
    prompt: { key: 'text', values: { text: 'As it was asked before.' } },
  });
  await user.click(screen.getByRole('radio', { name: right(first) }));
  open();
  await screen.findByRole('heading', { name: say(first.prompt) });
  expect(screen.getByRole('radio', { name: right(first) })).not.toBeChecked();
});

test('a kept question that is another by now makes room for the one of the deck', async () => {
  const { open } = await opening({
    ...first,
    prompt: { key: 'text', values: { text: 'As it was asked before.' } },
  });
  expect(screen.getByRole('heading', { name: 'As it was asked before.' })).toBeVisible();
  open();
  expect(await screen.findByRole('heading', { name: say(first.prompt) })).toBeVisible();
  expect(screen.queryByRole('heading', { name: 'As it was asked before.' })).toBeNull();
});
