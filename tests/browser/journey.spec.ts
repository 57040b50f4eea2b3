/** The whole way, in a real browser on the built page: load, drill, lose the network, come back tomorrow. */
import { AxeBuilder } from '@axe-core/playwright';
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

for (const colorScheme of ['light', 'dark'] as const)
  test(`axe finds nothing on any screen (${colorScheme})`, async ({ page }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    const audit = async () => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`)).toEqual(
        [],
      );
    };
    await page.goto('/');
    await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
    await audit();
    await page.getByRole('button', { name: 'Start' }).click();
    const forms = new Set<string>();
    while (!(await page.getByRole('heading', { name: 'Done for now' }).isVisible())) {
      const { question } = await questionIn(page);
      const fresh = !forms.has(question.space.form);
      forms.add(question.space.form);
      if (fresh) await audit();
      await answerOnce(page, forms.size % 2 === 0);
      if (fresh) await audit();
      await goOn(page);
    }
    await audit();
    for (const path of ['/#/unit', '/#/decks']) {
      await page.goto(path);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      await audit();
    }
  });

test('no page is wider than a 320 px phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  const overflow = () =>
    page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
  expect(await overflow()).toBe(0);
  await page.getByRole('button', { name: 'Start' }).click();
  while (!(await page.getByRole('heading', { name: 'Done for now' }).isVisible())) {
    const { question } = await questionIn(page);
    expect(await overflow(), `${question.family} ${question.fact} before`).toBe(0);
    const small = await page
      .locator('.choice, .button.key')
      .evaluateAll((keys) =>
        keys.map((key) => key.getBoundingClientRect().height).filter((height) => height < 56),
      );
    expect(small, `${question.family}: targets under 56 px`).toEqual([]);
    await answerOnce(page, true);
    expect(await overflow(), `${question.family} ${question.fact} after`).toBe(0);
    await goOn(page);
  }
  for (const path of ['/#/unit', '/#/decks']) {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    expect(await overflow(), path).toBe(0);
  }
});

test('the whole drill can be done with the keyboard alone', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Start' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /Check/ })).toBeVisible();
  let pressed = 0;
  for (let turn = 0; turn < 6 && pressed < 2; turn++) {
    const { question } = await questionIn(page);
    const { space } = question;
    const answer = question.answers[0];
    if (space.form === 'set' && answer.form === 'set') {
      for (const [index, option] of space.options.entries())
        if (answer.picks.includes(option.id)) await page.keyboard.press(String(index + 1));
      pressed++;
    } else if (space.form === 'one' && answer.form === 'one') {
      await page.keyboard.press(String(space.options.findIndex(({ id }) => id === answer.pick) + 1));
      pressed++;
    } else await enter(page, question, answer);
    await page.keyboard.press('Enter');
    await expect(page.getByRole('status')).toContainText('Right.');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('status')).toHaveCount(0);
  }
  expect(pressed).toBeGreaterThan(0);
});
