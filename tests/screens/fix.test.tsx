// @vitest-environment jsdom
/** A wrong value: flagged by a learner, put right once, handed out again as a correction, and voided where it was learnt. */
import { cleanup, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
// Loaded before the clock of a test runs: the screen is large.
import '../../src/screens/workshop/WorkshopScreen.tsx';
import { afterEach, expect, test } from 'vitest';
import { USUAL_THRESHOLD } from '../../src/core/assign/assignment.ts';
import { noticesFor } from '../../src/core/assign/corrections.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import type { Deck } from '../../src/core/unit/deck.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { readMessage, writeAssignment } from '../../src/exchange/message.ts';
import { anAttempt } from '../attempts.ts';
import { shippedDecks } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

/** Gears, chart and weights of a shipped deck: the rest would only make its checks slower here. */
const whole = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
const { detentDeck, id, title, unit: model, revision, sources, train, chart, weights } = whole;
const deck: Deck = { detentDeck, id, title, unit: model, revision, sources, train, chart, weights };
const unit = makeUnit(deck);

/** A question that rests on the weight of the unit, as the learner met it. */
const question = ask(unit, FAMILIES.find(({ id }) => id === 'sling-load')!, 3, 'weight:unit/sling')!;

async function classroom(place: Bench) {
  const { classroom: room } = place.store;
  const text = JSON.stringify(deck);
  await room.keepRevision({ deck: deck.id, revision: deck.revision, text, savedAt: 1 });
  const assignment = {
    id: 'a1',
    issue: 1,
    deck: { id: deck.id, revision: deck.revision },
    scope: { kind: 'deck' as const },
    group: 'Second years',
    classAt: { date: '2026-03-12', time: '08:00', zone: 'UTC' },
    minutes: 10,
    threshold: USUAL_THRESHOLD,
    note: null,
    corrections: [],
    madeAt: 1,
  };
  await room.saveAssignment({
    id: 'a1',
    issue: 1,
    madeAt: 1,
    deck: deck.id,
    role: 'made',
    text: writeAssignment(assignment, text),
    roster: ['Mila'],
    savedAt: 1,
  });
}

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

test('from the flag to the correction, in one go', async () => {
  const user = userEvent.setup();
  const opened = await bench(deck);
  const place: Bench = {
    ...opened,
    services: { ...opened.services, unitOf: (text) => makeUnit(JSON.parse(text) as Deck) },
  };
  await classroom(place);
  await place.store.classroom.raiseFlag({
    id: 'f1',
    deck: deck.id,
    revision: deck.revision,
    family: question.family,
    fact: question.fact,
    seed: question.seed,
    note: 'The scales say 80.',
    at: 1,
  });
  window.location.hash = `#/workshop/fix/${deck.id}/${encodeURIComponent('flag:f1')}`;
  show(place);
  expect(
    await screen.findByText('A learner flagged: “The scales say 80.”', {}, { timeout: 40_000 }),
  ).toBeVisible();
  expect(screen.getByRole('heading', { level: 2 })).toHaveTextContent('Fluid, torques, weights');
  const value = screen
    .getByRole('group', { name: /^Weight unit / })
    .querySelector('input[inputmode=decimal]')!;
  await user.clear(value);
  await user.type(value, '80');
  await user.click(screen.getAllByRole('link', { name: 'Hand out' })[0]!);
  await user.click(await screen.findByRole('button', { name: 'Put it among the decks here' }));
  expect(await screen.findByText(/revision 4, is among the decks/)).toBeVisible();
  expect(await screen.findByText(/^Second years has an earlier revision than 4/)).toBeVisible();
  await user.type(screen.getByLabelText('What was wrong, in a sentence'), 'It weighs 80 kg, not 76.');
  await user.click(screen.getByRole('button', { name: 'Make the correction' }));
  expect(await screen.findByText(/one assignment goes out again/)).toBeVisible();

  const corrections = await place.store.classroom.correctionsOf(deck.id);
  if (!corrections.ok) throw new Error('no corrections');
  expect(corrections.value).toMatchObject([
    { revision: 4, refs: ['weight:unit'], note: 'It weighs 80 kg, not 76.' },
  ]);
  const [correction] = corrections.value;
  expect(correction!.facts).toContain(question.fact);
  // What goes out carries deck and correction, and tells the learner who had answered it.
  const made = await place.store.classroom.assignments();
  if (!made.ok) throw new Error('no assignments');
  const read = await readMessage(made.value[0]!.text);
  if (!read.ok || read.value.kind !== 'assignment') throw new Error('no assignment');
  expect(read.value.assignment).toMatchObject({
    issue: 2,
    deck: { revision: 4 },
    corrections: [{ note: 'It weighs 80 kg, not 76.' }],
  });
  expect(JSON.parse(read.value.deckText!).weights[0].mass.value).toBe('80');
  const given = anAttempt({ deck: deck.id, revision: deck.revision, facts: [question.fact] });
  expect(noticesFor([given], read.value.assignment.corrections)).toHaveLength(1);
});

test('from the look-up: the record stands open in its section', async () => {
  const place = await bench(deck);
  window.location.hash = `#/workshop/fix/${deck.id}/${encodeURIComponent('weight:pump')}`;
  show(place);
  expect(await screen.findByText('To be put right:')).toBeVisible();
  const weight = screen.getByRole('group', { name: /^Weight pump / });
  await waitFor(() => expect(weight.querySelector('details')).toHaveAttribute('open'));
  expect(screen.getByRole('group', { name: /^Weight unit / }).querySelector('details')).not.toHaveAttribute(
    'open',
  );
});

test('a deck that is not here is told', async () => {
  const place = await bench(deck);
  window.location.hash = '#/workshop/fix/none-1/torque%3Apan';
  show(place);
  await waitFor(() => expect(screen.getByText('The deck “none-1” is not on this device.')).toBeVisible());
});
