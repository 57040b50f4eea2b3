// @vitest-environment jsdom
/** Make-up sheets on paper: printed for somebody, and their marks typed in when they come back. */
import { cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, expect, test } from 'vitest';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { questionOf } from '../../src/core/questions/reopen.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { writeAssignment } from '../../src/exchange/message.ts';
import { joinPile } from '../../src/exchange/pile.ts';
import { answerInWords } from '../../src/words/answer-in-words.ts';
import { makeSay } from '../../src/words/words.ts';
import { anAssignment } from '../reports.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const unit = makeUnit(deck);
const say = makeSay(deck);
const facts = FAMILIES.find(({ id }) => id === 'row-ratio')!
  .facts(unit)
  .slice(0, 4);
const assignment = anAssignment({
  deck: { id: deck.id, revision: deck.revision },
  scope: { kind: 'facts', facts },
  classAt: { date: '2026-03-04', time: '08:00', zone: 'UTC' },
});
const must = async <T,>(
  told: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>,
): Promise<T> => {
  const result = await told;
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

async function withRoster(): Promise<Bench> {
  const place = await bench(deck);
  const { id, issue, madeAt } = assignment;
  await place.store.classroom.saveAssignment({
    id, issue, madeAt, deck: deck.id, role: 'made', text: writeAssignment(assignment, null), savedAt: 5,
    roster: ['Bo'],
  }); // biome-ignore format: one record
  return place;
}

test('somebody from whom nothing came gets a sheet and a key; its marks join the board, once', async () => {
  const place = await withRoster();
  const user = userEvent.setup();
  window.location.hash = '#/group';
  show(place);
  await user.click(await screen.findByText('Make-up sheets on paper for them'));
  await user.click(screen.getByRole('link', { name: 'A sheet for Bo' }));
  await user.click(await screen.findByRole('button', { name: 'Keep this sheet, to print it' }));
  await screen.findByText(/^Kept\./);
  const [sheet] = await must(place.store.classroom.sheetsOf(assignment.id));
  expect(sheet).toMatchObject({ name: 'Bo', markedAt: null, revision: deck.revision });
  expect(sheet!.items.map(({ fact }) => fact).toSorted()).toEqual(facts.toSorted());
  const questions = sheet!.items.map((item) => questionOf(unit, item)!);
  const paper = within(screen.getByRole('article', { name: `Make-up sheet, Name: Bo · sheet ${sheet!.id}` }));
  const key = within(screen.getByRole('article', { name: /^Key: Make-up sheet/ }));
  for (const [place, question] of questions.entries()) {
    expect(paper.getByRole('heading', { name: `${place + 1}. ${say(question.prompt)}` })).toBeVisible();
    const right = answerInWords(question.space, question.answers[0], say);
    expect(key.getAllByText((_, node) => node?.tagName === 'STRONG' && node.textContent!.includes(right)).length)
      .toBeGreaterThan(0); // biome-ignore format: one condition
  }

  await user.click(screen.getByRole('link', { name: 'Back' }));
  await user.click(
    await screen.findByRole('link', { name: new RegExp(`^Type in the marks of sheet ${sheet!.id}`) }),
  );
  const fields = await screen.findAllByRole('combobox');
  expect(fields).toHaveLength(questions.length);
  // First right, second by its first slip-up, third something else, the last one left open.
  const lure = questions[1]!.lures[0]!;
  const choose = (field: number, text: string) =>
    user.selectOptions(
      fields[field]!,
      within(fields[field]!)
        .getAllByRole('option')
        .find((option) => option.textContent!.startsWith(text))!,
    );
  await choose(0, 'right: ');
  await choose(1, `not right: ${answerInWords(questions[1]!.space, lure.answer, say)}`);
  await choose(2, 'not right: another answer');
  await user.click(screen.getByRole('button', { name: 'Keep 3 marks' }));
  expect(await screen.findByText(/^1 right of 3 asked, 4 in all/)).toBeVisible();

  const { reports } = await must(place.store.classroom.reportsOf(assignment.id));
  const { joined } = await joinPile(reports);
  const attempts = joined.learners[0]!.attempts.toSorted((a, b) => a.sequence - b.sequence);
  expect(attempts.map(({ fact }) => fact)).toEqual(questions.slice(0, 3).map(({ fact }) => fact));
  expect(attempts.map(({ right }) => right)).toEqual([true, false, false]);
  expect(attempts[1]!.slipUps).toContain(lure.slipUp);
  expect(attempts[2]!.slipUps).toEqual([]);
  expect(await screen.findByText(new RegExp(`Sheet ${sheet!.id}: marks typed in 2026-03-02`))).toBeVisible();

  cleanup();
  window.location.hash = `#/marks/${assignment.id}/${sheet!.id}`;
  show(place);
  expect(await screen.findByText('The marks of this sheet were typed in already.')).toBeVisible();
});

test('a sheet of a deck that has changed since says so instead of asking other questions', async () => {
  const place = await withRoster();
  await must(
    place.store.classroom.keepSheet({
      id: 'K3Q9', assignment: assignment.id, learner: 'x', name: 'Bo', deck: deck.id, revision: deck.revision + 1,
      items: [], madeAt: 1, markedAt: null,
    }),
  ); // biome-ignore format: one record
  window.location.hash = `#/marks/${assignment.id}/K3Q9`;
  show(place);
  await waitFor(() => expect(screen.getByText(/the deck has changed since it was printed/)).toBeVisible());
});
