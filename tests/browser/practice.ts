/** Drives the built page the way a person does, and reads what it has stored. */
import { expect, type Page } from '@playwright/test';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import type { Drill } from '../../src/core/memory/drill.ts';
import { say as phrase } from '../../src/core/questions/phrase.ts';
import type { Answer, Question } from '../../src/core/questions/question.ts';
import { questionOf } from '../../src/core/questions/reopen.ts';
import { makeDecimal, parseRational } from '../../src/core/rational.ts';
import type { Deck } from '../../src/core/unit/deck.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { makeSay } from '../../src/words/words.ts';
import { shippedDecks } from '../units.ts';

/** Where the answers are of the one who has the device alone, or had it first. */
const FIRST = 'detent';

/** All rows of a table of one of the page's databases. */
export function rowsOf<T>(page: Page, table: string, database = FIRST): Promise<T[]> {
  return page.evaluate(
    ([name, from]) =>
      new Promise<T[]>((resolve, reject) => {
        const opening = indexedDB.open(from);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const db = opening.result;
          const reading = db.transaction(name).objectStore(name).getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            db.close();
            resolve(reading.result as T[]);
          };
        };
      }),
    [table, database] as const,
  );
}

export const attemptsIn = (page: Page, database = FIRST) => rowsOf<Attempt>(page, 'attempts', database);

export async function drillIn(page: Page, database = FIRST): Promise<Drill> {
  const [drill] = await rowsOf<Drill>(page, 'drills', database);
  if (!drill) throw new Error('no drill is stored');
  return drill;
}

/** Decks that were met on a page and are none of the shipped ones, by id. */
const met = new Map<string, Deck>();
const deckCalled = (id: string): Deck | undefined =>
  shippedDecks().find((deck) => deck.id === id) ?? met.get(id);

/** The question on the page, made again here from what the page stored. */
export async function questionIn(
  page: Page,
  database = FIRST,
): Promise<{ question: Question; drill: Drill }> {
  const drill = await drillIn(page, database);
  if (!deckCalled(drill.deck))
    for (const { id, text } of await rowsOf<{ id: string; text: string }>(page, 'decks', database))
      met.set(id, JSON.parse(text) as Deck);
  const deck = deckCalled(drill.deck);
  const question = deck && questionOf(makeUnit(deck), drill.items[drill.index]!);
  if (!question) throw new Error('the stored question cannot be made again');
  return { question, drill };
}

const speaker = (question: Question) => makeSay(deckCalled(question.deck.id)!);

/** Taps or types the answer, without checking it. */
export async function enter(page: Page, question: Question, answer: Answer) {
  const say = speaker(question);
  const { space } = question;
  const press = async (label: string, within = page.getByRole('main')) => {
    const kind = space.form === 'set' ? 'checkbox' : 'radio';
    await within.getByRole(kind, { name: label, exact: true }).click();
  };
  if (space.form === 'set' && answer.form === 'set')
    for (const option of space.options) if (answer.picks.includes(option.id)) await press(say(option.label));
  if (space.form === 'one' && answer.form === 'one')
    await press(say(space.options.find(({ id }) => id === answer.pick)!.label));
  if (space.form === 'order' && answer.form === 'order') {
    const taken: string[] = [];
    for (const id of answer.order) {
      const what = say(space.items.find((item) => item.id === id)!.label);
      const likes = space.alike?.find((ids) => ids.includes(id));
      const count = likes?.filter((like) => !taken.includes(like)).length ?? 0;
      const name = likes ? say(phrase('answer.several', { what, count })) : what;
      await page.getByRole('button', { name, exact: true }).click();
      taken.push(id);
    }
  }
  if (space.form === 'place' && answer.form === 'place') {
    const place = space.spots.findIndex(({ id }) => id === answer.spot);
    const number = String(place + 1);
    await press(say(phrase('answer.spot', { number, what: say(space.spots[place]!.label) })));
  }
  if (space.form === 'number' && answer.form === 'number') {
    // Typed with a comma, as half the world does.
    const typed = makeDecimal(parseRational(answer.value)!, space.decimals).replace('.', ',');
    await page.getByRole('textbox').fill(typed);
  }
  if (space.form === 'pair' && answer.form === 'pair')
    for (const left of space.left)
      await press(
        say(space.right.find(({ id }) => id === answer.pairs[left.id])!.label),
        page.getByRole('group', { name: say(left.label), exact: true }),
      );
  if (space.form === 'fill' && answer.form === 'fill')
    for (const cell of space.asked) {
      const [row, column] = cell.split('/');
      const names = {
        row: say(space.rows.find(({ id }) => id === row)!.label),
        column: say(space.columns.find(({ id }) => id === column)!.label),
      };
      await press(
        say(space.marks.find(({ id }) => id === answer.cells[cell])!.label),
        page.getByRole('group', {
          name: space.columns.length === 1 ? names.row : say(phrase('answer.cell', names)),
          exact: true,
        }),
      );
    }
}

export async function checkAnswer(page: Page) {
  await page.getByRole('button', { name: 'Check', exact: true }).click();
  await expect(page.getByRole('status')).toContainText(/Right\.|Not right\./);
}

/** Answers the question at hand, right or by its first slip-up, and checks it; true when it was right. */
export async function answerOnce(page: Page, right: boolean, database = FIRST): Promise<boolean> {
  const { question } = await questionIn(page, database);
  const lure = question.lures[0];
  const answer = right || !lure ? question.answers[0] : lure.answer;
  await enter(page, question, answer);
  await checkAnswer(page);
  return answer === question.answers[0];
}

/** To the next question, or to the end of the drill, which is read from the log first. */
export async function goOn(page: Page) {
  await page.getByRole('button', { name: /^(Next|Finish)$/ }).click();
  const end = page.getByRole('heading', { name: 'Done for now' });
  await expect(end.or(page.getByRole('button', { name: /^Check/ }))).toBeVisible();
}
