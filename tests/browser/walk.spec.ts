/**
 * Every screen, walked through as a learner and as an instructor, and looked over on the way (inspect.ts). Nothing
 * on the way breaks the page's policy or ends up in the console. docs/walked.md says what was walked by hand.
 */
import { expect, type Page, test } from '@playwright/test';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import type { Form, Question } from '../../src/core/questions/question.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { SECTION_IDS } from '../../src/screens/workshop/sections.ts';
import { shippedDecks } from '../units.ts';
import { inspect, lowContrasts, NARROW, unfold } from './inspect.ts';
import { answerOnce, enter, goOn } from './practice.ts';
import { violationsOf } from './violations.ts';

test.use({ viewport: NARROW });
// Looking over takes its time on a busy machine.
test.describe.configure({ timeout: 600_000 });

const FORMS: readonly Form[] = ['set', 'one', 'order', 'number', 'pair', 'fill', 'place'];
const unit = makeUnit(shippedDecks().find(({ id }) => id === 'kestrel-7')!);

/** The first question of each form, as "Try any question" shows it for seed 1. */
const firstOf = (form: Form): Question => {
  for (const family of FAMILIES) {
    const question = family.facts(unit).length > 0 && ask(unit, family, 1, undefined);
    if (question && question.space.form === form) return question;
  }
  throw new Error(`no question asks for ${form}`);
};

/** Opens a page that tells everything it complains of; call the result at the end. */
async function watched(page: Page): Promise<() => void> {
  const complaints = await violationsOf(page);
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return () => expect(complaints).toEqual([]);
}

/** The kinds of question on "Try any question", by their ids. */
const families = (page: Page) => page.locator('select').first();

async function open(page: Page, path: string) {
  await page.goto(`/#${path}`);
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible({ timeout: 30_000 });
}

const isoDay = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

async function downloaded(page: Page): Promise<string> {
  const saving = page.getByRole('button', { name: /^Save the file/ });
  const [download] = await Promise.all([page.waitForEvent('download'), saving.click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}

const hand = (page: Page, text: string) =>
  page
    .getByLabel('Files or pictures of codes')
    .setInputFiles({ name: 'message.json', mimeType: 'application/json', buffer: Buffer.from(text) });

test('words stand out from what they are on, seven to one, in both themes', async ({ page }) => {
  await open(page, '/decks');
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await lowContrasts(page), colorScheme).toEqual([]);
  }
});

for (const [name, forms] of [
  ['answers picked and put in order', FORMS.slice(0, 3)],
  ['answers typed, paired, filled in and placed', FORMS.slice(3)],
] as const)
  test(name, async ({ page }) => {
    const expectQuiet = await watched(page);
    await open(page, '/preview');
    for (const form of forms) {
      const question = firstOf(form);
      await families(page).selectOption(question.family);
      await inspect(page, `${form} open`);
      await enter(page, question, question.lures[0]?.answer ?? question.answers[0]);
      await inspect(page, `${form} answered`);
      await page.getByRole('button', { name: 'Check', exact: true }).click();
      await expect(page.getByRole('status')).toContainText(/Right\.|Not right\./);
      await unfold(page);
      await inspect(page, `${form} checked`);
    }
    expectQuiet();
  });

test('a drill from start to end, and how one stands', async ({ page }) => {
  const expectQuiet = await watched(page);
  await open(page, '/');
  await unfold(page);
  await page.getByLabel('Class date').fill(isoDay(5));
  await inspect(page, 'today');
  await page.getByRole('button', { name: 'Start' }).click();
  await expect(page.getByRole('button', { name: /^Check/ })).toBeVisible();
  const place = (await page.locator('.drill-foot .button.key').boundingBox())!;
  expect(place.y + place.height).toBeGreaterThan(0.85 * NARROW.height);
  for (
    let first = true;
    !(await page.getByRole('heading', { name: 'Done for now' }).isVisible());
    first = false
  ) {
    if (first) await inspect(page, 'drill');
    await answerOnce(page, !first);
    if (first) {
      await page.getByText('Does the unit on the bench say otherwise?').click();
      await inspect(page, 'flag');
    }
    await goOn(page);
    await expect(
      page.getByRole('heading', { name: 'Done for now' }).or(page.getByRole('button', { name: /^Check/ })),
    ).toBeVisible();
  }
  await inspect(page, 'end');
  await page.getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
  await expect(page.getByText(/^By class day about/)).toBeVisible({ timeout: 30_000 });
  await inspect(page, 'today with a plan');
  await open(page, '/progress');
  await expect(page.getByRole('img', { name: /^Expected on class day/ })).toBeVisible();
  await unfold(page);
  await inspect(page, 'progress');
  expectQuiet();
});

test('the look-up, the decks and a deck that is refused, this device and who uses it, paper', async ({
  page,
}) => {
  const expectQuiet = await watched(page);
  await open(page, '/unit');
  await unfold(page);
  await inspect(page, 'unit');
  await open(page, '/decks');
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'deck.json',
      mimeType: 'application/json',
      buffer: Buffer.from('{"detentDeck":1}'),
    });
  await expect(page.getByRole('status')).toBeVisible();
  await inspect(page, 'decks');
  for (const path of ['/device', '/learners']) {
    await open(page, path);
    await unfold(page);
    await inspect(page, path);
  }
  await open(page, '/print');
  for (const kind of ['Bench sheet', 'Work sheet']) {
    await page.getByRole('radio', { name: kind }).check();
    await expect(page.getByRole('article').first()).toBeVisible();
    await inspect(page, kind);
  }
  expectQuiet();
});

test('a case and a self-check', async ({ page }) => {
  const expectQuiet = await watched(page);
  await open(page, '/case');
  await expect(page.getByRole('heading', { name: 'Work order' })).toBeVisible();
  await unfold(page);
  await inspect(page, 'case');
  await page.locator('details .choice').first().click();
  await unfold(page);
  await inspect(page, 'case asked');
  const causes = page.getByLabel('The cause is');
  await causes.selectOption({ index: (await causes.locator('option').count()) - 1 });
  await page.getByRole('button', { name: 'Name it' }).click();
  await expect(page.getByRole('status').first()).toContainText(/Right\.|Not right\./);
  await unfold(page);
  await inspect(page, 'case named');

  await open(page, '/self-check');
  await unfold(page);
  await inspect(page, 'self-check');
  await page.getByLabel('Questions').fill('5');
  await page.getByRole('button', { name: 'Start' }).click();
  await expect(page.getByRole('timer')).toBeVisible();
  await page.getByRole('button', { name: 'Mark' }).click();
  await inspect(page, 'self-check running');
  await page.getByRole('button', { name: /^Question 5/ }).click();
  await page.getByRole('button', { name: 'Finish' }).click();
  await page.getByRole('button', { name: 'Finish' }).first().click();
  await expect(page.getByText(/^0 of 5 answers right/)).toBeVisible();
  await unfold(page);
  await inspect(page, 'self-check told');
  expectQuiet();
});

test('a class: assign, hand over, take, hand in, the board, sheets', async ({ browser }) => {
  const context = () => browser.newContext({ viewport: NARROW, reducedMotion: 'reduce' });
  const [instructor, learner] = [await (await context()).newPage(), await (await context()).newPage()];
  const quiet = [await watched(instructor), await watched(learner)];
  await open(instructor, '/group');
  await inspect(instructor, 'no board');
  await open(instructor, '/assign');
  await instructor.getByRole('button', { name: 'Make the assignment' }).click();
  await expect(instructor.getByRole('alert')).toBeVisible();
  await inspect(instructor, 'assign, with what is missing');
  await instructor.getByLabel('Name of the group').fill('bench 4');
  await instructor.getByLabel('Day of class').fill(isoDay(3));
  await instructor.getByLabel(/^Names you expect/).fill('Ada\nBo');
  await instructor.getByRole('button', { name: 'Make the assignment' }).click();
  await instructor.getByRole('button', { name: 'All codes for paper' }).click();
  await inspect(instructor, 'hand over');
  const assignment = await downloaded(instructor);

  await open(learner, '/take');
  await inspect(learner, 'take');
  await hand(learner, assignment);
  await expect(learner.getByRole('button', { name: 'Take it' })).toBeVisible();
  await inspect(learner, 'offered');
  await learner.getByRole('button', { name: 'Take it' }).click();
  await expect(learner.getByText('Taken in.')).toBeVisible();
  await inspect(learner, 'taken');
  await learner.getByRole('link', { name: 'To the drill' }).click();
  await learner.getByRole('button', { name: 'Start' }).click();
  await expect(learner.getByRole('button', { name: /^Check/ })).toBeVisible();
  await answerOnce(learner, false);
  await open(learner, '/report');
  await learner.getByLabel(/^Your name/).fill('Ada');
  await learner.getByRole('button', { name: 'Make the report' }).click();
  await inspect(learner, 'report');

  await open(instructor, '/group');
  await hand(instructor, await downloaded(learner));
  await instructor.getByText('Ada', { exact: true }).click();
  await expect(instructor.getByText(/^Sealed by one device/)).toBeVisible();
  await unfold(instructor);
  await inspect(instructor, 'board');
  await instructor.getByRole('link', { name: 'A sheet for Bo' }).click();
  await instructor.getByRole('button', { name: 'Keep this sheet, to print it' }).click();
  await expect(instructor.getByText(/^Kept\./)).toBeVisible();
  await inspect(instructor, 'make-up sheet');
  await instructor.getByRole('link', { name: 'Back' }).click();
  await instructor.getByRole('link', { name: /^Type in the marks of sheet/ }).click();
  await expect(instructor.getByRole('combobox').first()).toBeVisible();
  await inspect(instructor, 'marks');
  for (const expectQuiet of quiet) expectQuiet();
  await Promise.all([instructor, learner].map((page) => page.context().close()));
});

for (const [half, keep] of [
  ['first', (index: number, all: number) => index < all / 2],
  ['second', (index: number, all: number) => index >= all / 2],
] as const)
  test(`the workshop’s ${half} sections`, async ({ page }) => {
    const expectQuiet = await watched(page);
    await open(page, '/workshop');
    if (half === 'first') {
      await inspect(page, 'workshop');
      await open(page, '/workshop/bench');
      await page.getByRole('button', { name: 'New note' }).click();
      await page.getByLabel('What it is').fill('thrust washer');
      await inspect(page, 'bench notes');
      await open(page, '/workshop');
    }
    await page.getByRole('button', { name: 'Change Kestrel 7, before the rebuild class' }).click();
    await expect(page).toHaveURL(/workshop\/[^/]+\/?/);
    const draft = /workshop\/([^/]+)/.exec(page.url())![1]!;
    for (const section of SECTION_IDS.filter((_, index, all) => keep(index, all.length))) {
      await open(page, `/workshop/${draft}/${section}`);
      await inspect(page, `workshop, ${section}`);
    }
    expectQuiet();
  });
