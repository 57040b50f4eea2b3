/** The whole way, in a real browser on the built page: load, drill, lose the network, come back tomorrow. */
import { expect, test } from '@playwright/test';
import { finishDraft } from '../../src/core/questions/draft.ts';
import { judge } from '../../src/core/questions/judge.ts';
import { answerOnce, attemptsIn, checkAnswer, drillIn, enter, goOn, questionIn } from './practice.ts';

const DAY = 24 * 60 * 60 * 1000;

test('an apprentice drills, is cut off, loses the network, and gets another drill tomorrow', async ({
  page,
  context,
}) => {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));

  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
  await page.getByRole('button', { name: 'Start' }).click();

  const outcomes: boolean[] = [];
  for (const right of [true, false, true, false]) {
    outcomes.push(await answerOnce(page, right));
    await expect(page.getByRole('status')).toContainText(outcomes.at(-1) ? 'Right.' : 'Not right.');
    await goOn(page);
  }
  const logged = await attemptsIn(page);
  expect(logged.sort((a, b) => a.sequence - b.sequence).map(({ right }) => right)).toEqual(outcomes);

  await test.step('a page killed in mid-question comes back to it, draft and all, its clock stopped', async () => {
    const { question, drill } = await questionIn(page);
    await enter(page, question, question.answers[0]);
    await expect
      .poll(async () => {
        const { draft } = await drillIn(page);
        const answer = draft && finishDraft(question.space, draft);
        return answer !== null && judge(question, answer).right;
      })
      .toBe(true);
    const before = (await drillIn(page)).draft;
    await page.goto('about:blank');
    await page.waitForTimeout(1500);
    await page.goto('/');
    await expect(page.getByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
    await page.getByRole('button', { name: 'Go on' }).click();
    const after = await drillIn(page);
    expect(after.index).toBe(drill.index);
    expect(after.draft).toEqual(before);
    await checkAnswer(page);
    await expect(page.getByRole('status')).toContainText('Right.');
    const attempts = await attemptsIn(page);
    expect(attempts).toHaveLength(5);
    await goOn(page);
  });

  await test.step('without a network the page opens again and finds the same state', async () => {
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await expect
      .poll(() =>
        page.evaluate(async () => {
          const names = await caches.keys();
          const lists = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
          return lists.flat().length;
        }),
      )
      .toBeGreaterThan(5);
    await context.setOffline(true);
    const before = { attempts: await attemptsIn(page), drill: await drillIn(page) };
    await page.reload();
    await page.goto('/#/');
    await page.getByRole('button', { name: 'Go on' }).click();
    expect(await attemptsIn(page)).toEqual(before.attempts);
    expect((await drillIn(page)).index).toBe(before.drill.index);
    while (!(await page.getByRole('heading', { name: 'Done for now' }).isVisible())) {
      await answerOnce(page, true);
      await goOn(page);
    }
    await expect(page.getByText(/right of \d+/)).toBeVisible();
    await page.getByRole('button', { name: 'Close' }).click();
    await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
  });

  await test.step('tomorrow’s drill differs because of today’s', async () => {
    const today = await attemptsIn(page);
    await page.clock.setFixedTime(Date.now() + DAY);
    await page.reload();
    await page.getByRole('button', { name: 'Start' }).click();
    const drill = await drillIn(page);
    const asked = new Set(today.map(({ fact }) => fact));
    const slipped = today.filter(({ right }) => !right).map(({ fact }) => fact);
    const facts = drill.items.map(({ fact }) => fact);
    expect(facts.some((fact) => !asked.has(fact))).toBe(true);
    expect(slipped.some((fact) => facts.includes(fact))).toBe(true);
    expect(drill.day).toBe(today[0]!.day + 1);
  });

  expect(complaints).toEqual([]);
});
