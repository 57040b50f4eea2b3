/** What is on the screen first: a question that was kept, in the same words; and what is said when files do not come. */
import { expect, type Page, test } from '@playwright/test';
import { answerOnce, attemptsIn, enter, goOn, questionIn, rowsOf } from './practice.ts';

interface Kept {
  readonly key: string;
  readonly value: { readonly index: number };
}

/** Waits until the question at this place of the drill is kept for the next start. */
const kept = (page: Page, index: number) =>
  expect
    .poll(async () => {
      const settings = await rowsOf<Kept>(page, 'settings');
      return settings.find(({ key }) => key === 'question-at-hand')?.value.index;
    })
    .toBe(index);

/** Text of the page as it stands, and which files were asked for until then; noted in the page, as it is first seen. */
async function firstPicture(page: Page) {
  await page.addInitScript(() => {
    new MutationObserver((_, watching) => {
      if (!document.querySelector('h1.prompt')) return;
      watching.disconnect();
      const files = performance.getEntriesByType('resource').map((each) => each.name.split('/').pop());
      const text = document.getElementById('page')?.textContent;
      Object.assign(window, { firstPicture: { text, files } });
    }).observe(document, { childList: true, subtree: true });
  });
  await page.reload();
  await page.waitForFunction(() => 'firstPicture' in window);
  return page.evaluate(
    () => (window as unknown as { firstPicture: { text: string; files: readonly string[] } }).firstPicture,
  );
}

const WORDS = /^(drill|speak)-/;

test('a kept question opens in the same words, before the words are there, and the drill goes on', async ({
  page,
}) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Start' }).click();
  for (let index = 0; index < 4; index++) {
    await expect(page.getByRole('progressbar')).toHaveAttribute('value', String(index));
    await kept(page, index);
    // Drawings come in their own time: the page is told by its text.
    await page.waitForLoadState('networkidle');
    const before = await page.locator('#page').textContent();
    const { text, files } = await firstPicture(page);
    expect(text).toBe(before);
    expect(files.filter((file) => WORDS.test(file))).toEqual([]);
    await answerOnce(page, index !== 1);
    await goOn(page);
  }
});

test('in another language it is asked anew, in that language', async ({ page }) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Start' }).click();
  await kept(page, 0);
  await page.evaluate(() => localStorage.setItem('detent-language', 'de'));
  const { text, files } = await firstPicture(page);
  expect(text).toContain('Frage 1 von');
  expect(files.some((file) => WORDS.test(file))).toBe(true);
});

test.describe('where files do not come', () => {
  test.use({ serviceWorkers: 'block' });

  for (const [what, files] of [
    ['the words', '**/drill-*.js'],
    ['the page itself', '**/page-*.js'],
  ] as const)
    test(`without ${what} it says so, and opens once they are there`, async ({ page }) => {
      await page.route(files, (route) => route.abort());
      await page.goto('/');
      await expect(page.getByRole('alert')).toContainText('Detent could not load all its files.');
      await page.unroute(files);
      await page.getByRole('button', { name: 'Reload' }).click();
      await expect(page.getByRole('button', { name: 'Start' })).toBeVisible();
    });

  test('a kept question stands without them; the page says so when they are needed', async ({ page }) => {
    await page.goto('/');
    await page.getByRole('button', { name: 'Start' }).click();
    await kept(page, 0);
    await page.route('**/drill-*.js', (route) => route.abort());
    const refused = page.waitForEvent('requestfailed');
    await page.reload();
    await refused;
    // The store is open by then, too.
    await page.waitForTimeout(1000);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    await expect(page.getByRole('alert')).toHaveCount(0);
    const { question } = await questionIn(page);
    await enter(page, question, question.answers[0]);
    await page.getByRole('button', { name: 'Check', exact: true }).click();
    await expect(page.getByRole('alert')).toContainText('Detent could not load all its files.');
    expect(await attemptsIn(page)).toMatchObject([{ fact: question.fact, right: true }]);
    await page.unroute('**/drill-*.js');
    await page.getByRole('button', { name: 'Reload' }).click();
    await expect(page.getByRole('status')).toContainText('Right.');
  });
});
