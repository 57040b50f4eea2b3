/**
 * Where storage goes wrong, in a real browser on the built page: two tabs, no room, no database, another version,
 * clocks and zones. Each is told in plain words, and nothing that was acknowledged is lost.
 */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, type Page, test } from '@playwright/test';
import { ensureChromium } from './chromium.ts';
import { answerOnce, attemptsIn, checkAnswer, drillIn, enter, goOn, questionIn } from './practice.ts';

const begin = async (page: Page) => {
  await page.goto('/');
  await page.getByRole('button', { name: 'Start' }).click();
  await expect(page.getByRole('button', { name: /Check/ })).toBeVisible();
};
const alert = (page: Page) => page.getByRole('alert');

test('S2 two tabs on one drill: the one behind is told, goes on where the other is, and nothing is doubled', async ({
  page: first,
  context,
}) => {
  await begin(first);
  const second = await context.newPage();
  await second.goto('/');
  await second.getByRole('button', { name: 'Go on' }).click();
  await expect(second.getByRole('button', { name: /Check/ })).toBeVisible();
  const { question } = await questionIn(second);

  await answerOnce(first, true);
  await goOn(first);
  await expect.poll(async () => (await drillIn(first)).index).toBe(1);
  await enter(second, question, question.answers[0]);
  await expect(alert(second)).toContainText('went on in another tab');
  await second.getByRole('button', { name: /^Check$/ }).click();
  await expect(alert(second)).toContainText('Your answers are safe');
  expect(await attemptsIn(first)).toHaveLength(1);

  await second.getByRole('button', { name: 'Go on here' }).click();
  await expect(second.getByText(/Question 2 of/)).toBeVisible();
  await answerOnce(second, false);
  await goOn(second);
  await answerOnce(second, true);
  const log = (await attemptsIn(second)).sort((a, b) => a.sequence - b.sequence);
  const { items, answered } = await drillIn(second);
  expect(log.map(({ sequence }) => sequence)).toEqual([1, 2, 3]);
  expect(log.map(({ fact, seed }) => [fact, seed])).toEqual(
    items.slice(0, 3).map(({ fact, seed }) => [fact, seed]),
  );
  expect(answered).toBe(3);
});

/** How Chromium says it: the requests succeed, and the transaction is aborted when it is to be written out. */
const ROOM: readonly [name: string, message: string, told: string][] = [
  ['QuotaExceededError', 'Encountered disk full while committing transaction.', 'no room for more'],
  ['UnknownError', 'Internal error committing transaction.', 'may have no room left'],
];
for (const [name, message, told] of ROOM)
  test(`S3 no room (${name}): the answer is not taken for stored, and the same press works once there is room`, async ({
    page,
  }) => {
    await page.addInitScript(
      (error) => {
        const put = IDBObjectStore.prototype.put;
        IDBObjectStore.prototype.put = function (...row) {
          const { transaction } = this;
          const request = put.apply(this, row);
          if ('full' in window && this.name === 'drills')
            request.addEventListener('success', () => {
              Object.defineProperty(transaction, 'error', {
                value: new DOMException(error.message, error.name),
              });
              transaction.abort();
            });
          return request;
        };
      },
      { name, message },
    );
    await begin(page);
    await answerOnce(page, true);
    await goOn(page);
    const { question } = await questionIn(page);
    await page.evaluate(() => Object.assign(window, { full: true }));
    await enter(page, question, question.answers[0]);
    await expect(alert(page)).toContainText(told);
    await page.getByRole('button', { name: /^Check$/ }).click();
    await expect(alert(page)).toContainText(told);
    await expect(page.locator('.verdict')).toHaveCount(0);
    expect(await attemptsIn(page)).toHaveLength(1);
    await page.evaluate(() => Reflect.deleteProperty(window, 'full'));
    await checkAnswer(page);
    await expect(alert(page)).toHaveCount(0);
    expect(await attemptsIn(page)).toHaveLength(2);
  });

test('S4 a browser that keeps no site data says so, and how to go on', async ({ baseURL }) => {
  const profile = mkdtempSync(join(tmpdir(), 'detent-blocked-'));
  mkdirSync(join(profile, 'Default'));
  // What "block all site data" in the browser's settings writes.
  const settings = { profile: { default_content_setting_values: { cookies: 2 } } };
  writeFileSync(join(profile, 'Default', 'Preferences'), JSON.stringify(settings));
  const context = await chromium.launchPersistentContext(profile, { executablePath: ensureChromium() });
  try {
    const page = await context.newPage();
    await page.goto(baseURL!);
    await expect(alert(page)).toContainText('no place to store answers');
  } finally {
    await context.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
});

test('S4 a browser without a database at all says the same', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
  await page.goto('/');
  await expect(alert(page)).toContainText('no place to store answers');
});

/** Opens the database in the page's own way, past the app; it stays open and lets nobody else in. */
const hold = (page: Page, version?: number) =>
  page.evaluate(
    (wanted) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('detent', wanted);
        opening.onsuccess = () => {
          Object.assign(window, { held: opening.result });
          resolve();
        };
        opening.onerror = () => reject(opening.error);
      }),
    version,
  );

test('S4 an older version open in another tab: told which tab to close; closed, it works', async ({
  page,
  context,
}) => {
  const older = await context.newPage();
  await older.goto('/detent.svg');
  await hold(older, 10);
  await page.goto('/');
  await expect(alert(page)).toContainText('close that tab');
  await older.close();
  // A closed tab lets go of the database in its own time: pressed too early, the page says the same once more.
  await expect(async () => {
    await page.getByRole('button', { name: 'Reload' }).click({ timeout: 1000 });
    await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible({ timeout: 4000 });
  }).toPass({ timeout: 40_000 });
});

test('S4 taken over by a newer version while open: told, and every answer still there', async ({
  page,
  context,
}) => {
  await begin(page);
  await answerOnce(page, true);
  await goOn(page);
  const { question } = await questionIn(page);
  const newer = await context.newPage();
  await newer.goto('/detent.svg');
  await hold(newer, 9990);
  await enter(page, question, question.answers[0]);
  await expect(alert(page)).toContainText('A newer Detent has taken them over');
  expect(await attemptsIn(newer)).toHaveLength(1);
});

test('S5 a clock that is behind is told, and so is another zone; days already counted stay', async ({
  baseURL,
}) => {
  const profile = mkdtempSync(join(tmpdir(), 'detent-zones-'));
  /** A page on the same profile, in a zone and at a time. */
  const pageIn = async (timezoneId: string, time: string) => {
    const context = await chromium.launchPersistentContext(profile, {
      executablePath: ensureChromium(),
      timezoneId,
      ...(baseURL ? { baseURL } : {}),
    });
    const page = await context.newPage();
    await page.clock.install({ time: new Date(time) });
    return { page, close: () => context.close() };
  };
  try {
    const evening = await pageIn('Europe/Berlin', '2026-03-02T23:30:00+01:00');
    await begin(evening.page);
    await answerOnce(evening.page, true);
    await goOn(evening.page);
    await evening.close();

    const wrong = await pageIn('Europe/Berlin', '2026-02-20T12:00:00+01:00');
    await wrong.page.goto('/');
    await expect(wrong.page.getByText('The clock of this device is behind your last answer')).toBeVisible();
    await wrong.page.getByRole('button', { name: 'Go on' }).click();
    await answerOnce(wrong.page, true);
    await goOn(wrong.page);
    await wrong.close();

    const away = await pageIn('America/Denver', '2026-03-03T09:00:00-07:00');
    await away.page.goto('/');
    await expect(away.page.getByText('You last practised by the clock of Europe/Berlin')).toBeVisible();
    await away.page.getByRole('button', { name: 'Go on' }).click();
    await answerOnce(away.page, true);
    const log = (await attemptsIn(away.page)).sort((a, b) => a.sequence - b.sequence);
    expect(log.map(({ zone, day }) => [zone, day])).toEqual([
      ['Europe/Berlin', 20_514],
      ['Europe/Berlin', 20_504],
      ['America/Denver', 20_515],
    ]);
    await away.close();
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
});
