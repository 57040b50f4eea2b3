/**
 * By keyboard alone: every form of answer, and a drill from start to end. Only Tab, arrows, Space, Enter and what
 * is typed are pressed; what has the keyboard is read from the page, as a screen reader is told it.
 */
import { expect, type Locator, type Page, test } from '@playwright/test';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { say as phrase } from '../../src/core/questions/phrase.ts';
import type { Answer, Form, Option, Question } from '../../src/core/questions/question.ts';
import { makeDecimal, parseRational } from '../../src/core/rational.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { makeSay } from '../../src/words/words.ts';
import { shippedDecks } from '../units.ts';
import { questionIn } from './practice.ts';

const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
const unit = makeUnit(deck);
const say = makeSay(deck);

const has = (target: Locator) => target.evaluate((element) => element === document.activeElement);

/** Tab until it is there; a page has fewer stops than this. */
async function tabTo(page: Page, target: Locator) {
  for (let presses = 0; presses < 150; presses++) {
    if (await has(target)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not come to ${target}`);
}

/** Into the radios, then by arrows to the one that is wanted. */
async function choose(page: Page, radios: Locator, wanted: number) {
  await tabTo(page, radios.first());
  await page.keyboard.press('Space');
  for (let step = 0; step < wanted; step++) await page.keyboard.press('ArrowDown');
  await expect(radios.nth(wanted)).toBeChecked();
}

const placeOf = (options: readonly Option[], id: string | undefined) =>
  options.findIndex((one) => one.id === id);

async function enterByKeys(page: Page, question: Question, answer: Answer) {
  const { space } = question;
  const main = page.getByRole('main');
  const group = (name: string) => page.getByRole('group', { name, exact: true }).getByRole('radio');
  if (space.form === 'set' && answer.form === 'set')
    for (const [index, option] of space.options.entries()) {
      if (!answer.picks.includes(option.id)) continue;
      await tabTo(page, main.getByRole('checkbox', { name: say(option.label), exact: true }));
      await page.keyboard.press('Space');
      await expect(main.getByRole('checkbox').nth(index)).toBeChecked();
    }
  if (space.form === 'one' && answer.form === 'one')
    await choose(page, page.locator('.answer').getByRole('radio'), placeOf(space.options, answer.pick));
  if (space.form === 'place' && answer.form === 'place')
    await choose(page, page.locator('.answer').getByRole('radio'), placeOf(space.spots, answer.spot));
  if (space.form === 'order' && answer.form === 'order') {
    const taken: string[] = [];
    for (const id of answer.order) {
      const what = say(space.items.find((item) => item.id === id)!.label);
      const likes = space.alike?.find((ids) => ids.includes(id));
      const count = likes?.filter((like) => !taken.includes(like)).length ?? 0;
      const name = likes ? say(phrase('answer.several', { what, count })) : what;
      await tabTo(page, page.getByRole('button', { name, exact: true }));
      await page.keyboard.press('Space');
      taken.push(id);
    }
  }
  if (space.form === 'number' && answer.form === 'number') {
    await tabTo(page, page.locator('.number').getByRole('textbox'));
    await page.keyboard.type(makeDecimal(parseRational(answer.value)!, space.decimals));
  }
  if (space.form === 'pair' && answer.form === 'pair')
    for (const { id, label } of space.left)
      await choose(page, group(say(label)), placeOf(space.right, answer.pairs[id]));
  if (space.form === 'fill' && answer.form === 'fill')
    for (const cell of space.asked) {
      const [row, column] = cell.split('/');
      const named = (options: readonly Option[], id: string | undefined) =>
        say(options[placeOf(options, id)]!.label);
      const names = { row: named(space.rows, row), column: named(space.columns, column) };
      const name = space.columns.length === 1 ? names.row : say(phrase('answer.cell', names));
      await choose(page, group(name), placeOf(space.marks, answer.cells[cell]));
    }
}

async function checkByKeys(page: Page, told: string) {
  await tabTo(page, page.getByRole('button', { name: 'Check', exact: true }));
  await page.keyboard.press('Enter');
  const verdict = page.getByRole('status').filter({ hasText: told });
  await expect(verdict).toBeVisible();
  // Read out from its start: the verdict has the keyboard, and stands before what was answered.
  await expect.poll(() => has(verdict)).toBe(true);
}

for (const form of ['set', 'one', 'order', 'number', 'pair', 'fill', 'place'] as const satisfies Form[])
  test(`an answer of the form "${form}"`, async ({ page }) => {
    const question = FAMILIES.flatMap((family) =>
      family.facts(unit).length > 0 ? [ask(unit, family, 1)] : [],
    ).find((one) => one?.space.form === form)!;
    await page.goto('/#/preview');
    await page.locator('select').first().selectOption(question.family);
    await expect(page.getByRole('heading', { name: say(question.prompt) })).toBeFocused();
    await enterByKeys(page, question, question.answers[0]);
    await checkByKeys(page, 'Right.');
  });

test('a drill from start to end', async ({ page }) => {
  await page.goto('/');
  await tabTo(page, page.getByText('Minutes and class date'));
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByLabel('Minutes for one drill'));
  await page.keyboard.press('Control+a');
  await page.keyboard.type('2');
  await tabTo(page, page.getByRole('button', { name: 'Start' }));
  await page.keyboard.press('Enter');
  const done = page.getByRole('heading', { name: 'Done for now' });
  const check = page.getByRole('button', { name: /^Check/ });
  let answered = 0;
  for (await expect(check).toBeVisible(); !(await done.isVisible()); answered++) {
    const { question } = await questionIn(page);
    await expect(page.getByRole('heading', { name: say(question.prompt) })).toBeFocused();
    await enterByKeys(page, question, question.answers[0]);
    await checkByKeys(page, 'Right.');
    await page.keyboard.press('Enter');
    await expect(done.or(check)).toBeVisible();
  }
  expect(answered).toBeGreaterThan(1);
  await tabTo(page, page.getByRole('button', { name: 'Close' }));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
});

test('keys 1 to 9 pick, and Enter checks and goes on', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Start' }).click();
  await expect(page.getByRole('button', { name: /^Check/ })).toBeVisible();
  const { question } = await questionIn(page);
  const { space } = question;
  if (space.form !== 'set' && space.form !== 'one')
    throw new Error('the first question is picked from a list');
  const [answer] = question.answers;
  const picks = answer.form === 'set' ? answer.picks : answer.form === 'one' ? [answer.pick] : [];
  for (const id of picks) await page.keyboard.press(String(placeOf(space.options, id) + 1));
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status')).toContainText('Right.');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status')).toHaveCount(0);
});
