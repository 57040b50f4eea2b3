/** The planner in a real browser: its worker plans under the page's policy, without a network too. */
import { expect, type Page, test } from '@playwright/test';
import { drillIn, rowsOf } from './practice.ts';

const DAY = 24 * 60 * 60 * 1000;

async function setClass(page: Page, days: number) {
  const zone = await page.evaluate(() => new Date().getTimezoneOffset() * 60_000);
  const date = new Date(Date.now() - zone + days * DAY).toISOString().slice(0, 10);
  await page.getByLabel('Class date').fill(date);
}

const storedPlan = async (page: Page) =>
  (
    await rowsOf<{ key: string; value: { prices: [number, number][]; ceilings: unknown } }>(page, 'settings')
  ).find(({ key }) => key.startsWith('plan:'))?.value;

test('with a class date the worker plans, offline as well, and nothing breaks the policy', async ({
  page,
  context,
}) => {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));

  await page.goto('/');
  await page.getByText('Minutes and class date').click();
  expect(page.workers()).toHaveLength(0);
  await setClass(page, 5);
  await expect(page.getByText(/^By class day about \d+\s%, likely \d+ to \d+\s%\.$/)).toBeVisible({
    timeout: 30_000,
  });
  await expect(
    page.getByText(/^With 10 minutes a day at most \d+\s%; with 20 at most \d+\s%\.$/),
  ).toBeVisible({
    timeout: 30_000,
  });
  const own = page.workers().filter((worker) => worker.url().includes('plan-worker'));
  expect(own.map((worker) => new URL(worker.url()).origin)).toEqual([new URL(page.url()).origin]);
  await expect.poll(async () => (await storedPlan(page))?.prices.length).toBe(5);
  await expect.poll(async () => (await storedPlan(page))?.ceilings).not.toBeNull();

  await test.step('without a network the next plan is made as well', async () => {
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await expect
      .poll(() =>
        page.evaluate(async () => {
          const names = await caches.keys();
          const lists = await Promise.all(names.map(async (name) => (await caches.open(name)).keys()));
          return lists.flat().filter(({ url }) => url.includes('plan-worker')).length;
        }),
      )
      .toBe(1);
    await page.reload();
    await context.setOffline(true);
    await page.reload();
    await page.getByText('Minutes and class date').click();
    await page.getByLabel('Days a week with practice').selectOption('4');
    await expect(page.getByText(/if you practise 10 minutes 4 days a week\.$/)).toBeVisible();
    await expect(page.getByText(/^By class day about \d+\s%/)).toBeVisible({ timeout: 30_000 });
  });

  await test.step('the drill starts', async () => {
    await page.getByRole('button', { name: 'Start' }).click();
    await expect(page.getByRole('button', { name: /Check/ })).toBeVisible();
    const { items } = await drillIn(page);
    expect(items.length).toBeGreaterThan(3);
    expect(new Set(items.map(({ fact }) => fact)).size).toBe(items.length);
  });

  expect(complaints).toEqual([]);
});

test('where no worker can start, the drill is ready all the same and the page says so', async ({ page }) => {
  await page.addInitScript(() => {
    Object.assign(window, { Worker: undefined });
  });
  await page.goto('/');
  await page.getByText('Minutes and class date').click();
  await setClass(page, 5);
  await expect(page.getByText(/cannot work it out/)).toBeVisible();
  await page.getByRole('button', { name: 'Start' }).click();
  await expect(page.getByRole('button', { name: /Check/ })).toBeVisible();
});
