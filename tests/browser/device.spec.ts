/** The page of this device, in a real browser: what it says about keeping, a backup, a new phone, an import cut off. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { backupFile, writeBackup } from '../../src/exchange/backup.ts';
import { anAttempt } from '../attempts.ts';
import { readStored, startBrowser } from '../kills/browser.ts';
import { answerOnce, attemptsIn, drillIn, goOn } from './practice.ts';

const onDevicePage = async (page: Page) => {
  await page.goto('/#/device');
  await expect(page.getByRole('heading', { name: 'This device' })).toBeVisible();
};

/** Saves a backup as a person would; where it lies. */
async function saved(page: Page): Promise<string> {
  await onDevicePage(page);
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup file' }).click();
  const download = await downloading;
  expect(download.suggestedFilename()).toMatch(/^detent-\d{4}-\d\d-\d\d\.json\.gz$/);
  return download.path();
}

const choose = async (page: Page, file: { name: string; mimeType: string; buffer: Buffer }) => {
  await onDevicePage(page);
  await page.locator('input[type=file]').setInputFiles(file);
};
const packed = (buffer: Buffer) => ({ name: 'detent.json.gz', mimeType: 'application/gzip', buffer });

test('B1 S6 asked to keep after the first drill; a backup file makes a new phone of another browser', async ({
  page,
  browser,
  baseURL,
}) => {
  test.setTimeout(300_000);
  await onDevicePage(page);
  await expect(page.getByText('The browser has not been asked yet')).toBeVisible();
  await page.goto('/');
  // A minute makes a short drill.
  await page.getByText('Minutes and class date').click();
  await page.getByRole('spinbutton').fill('1');
  await page.getByRole('button', { name: 'Start' }).click();
  while (!(await page.getByRole('heading', { name: 'Done for now' }).isVisible())) {
    await answerOnce(page, true);
    await goOn(page);
  }
  await page.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Start' }).click();
  await answerOnce(page, false);
  await onDevicePage(page);
  await expect(page.getByText(/The browser (has promised|was asked and has not promised)/)).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id }) => id)).toEqual([]);
  const before = { attempts: await attemptsIn(page), drill: await drillIn(page) };
  const file = readFileSync(await saved(page));

  const context = await browser.newContext({ baseURL: baseURL! });
  const phone = await context.newPage();
  await choose(phone, packed(file.subarray(0, file.length - 20)));
  await expect(phone.getByRole('alert')).toContainText('did not arrive whole');
  expect(await attemptsIn(phone)).toEqual([]);

  await choose(phone, packed(file));
  const { length } = before.attempts;
  await expect(phone.getByText(new RegExp(`with ${length} answers`))).toBeVisible();
  expect(await attemptsIn(phone)).toEqual([]);
  await phone.getByRole('button', { name: 'Put it in' }).click();
  await expect(phone.getByText(`${length} answers were added`)).toBeVisible();
  const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1);
  expect((await attemptsIn(phone)).sort(byId)).toEqual(before.attempts.sort(byId));
  expect(await drillIn(phone)).toEqual(before.drill);
  await phone.goto('/');
  await expect(phone.getByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
  await context.close();
});

test('B3 the browser killed while a backup is put in: all of its answers are there, or none', async ({
  baseURL,
}) => {
  test.setTimeout(300_000);
  const origin = baseURL!.replace(/\/$/, '');
  const folder = mkdtempSync(join(tmpdir(), 'detent-import-'));
  const count = 3000;
  const attempts = Array.from({ length: count }, (_, i) =>
    anAttempt({
      id: `old-${i}`,
      sequence: i + 1,
      deck: 'kestrel-7',
      device: 'old-phone',
      drill: `d${i >> 5}`,
    }),
  );
  const contents = {
    attempts, decks: [], drill: null, learner: null, chosenDeck: null, practices: [], plans: [], checks: null,
    case: null, assignments: [], reports: [], corrections: [], flags: [], revisions: [], sheets: [], drafts: [], writer: '',
  }; // biome-ignore format: a list
  const file = join(folder, 'detent.json.gz');
  writeFileSync(file, await backupFile(writeBackup(contents, 1_795_000_000_000)));
  const found: number[] = [];
  try {
    for (const delay of [10, 150, 400, 4000]) {
      const { page, kill } = await startBrowser(join(folder, `profile-${delay}`));
      await page.goto(`${origin}/#/device`);
      await page.locator('input[type=file]').setInputFiles(file);
      const put = page.getByRole('button', { name: 'Put it in' });
      await expect(put).toBeVisible({ timeout: 30_000 });
      await put.click();
      await new Promise((resolve) => setTimeout(resolve, delay));
      await kill();
      const again = await startBrowser(join(folder, `profile-${delay}`));
      found.push((await readStored(again.page, origin)).attempts.length);
      await again.kill();
    }
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
  for (const answers of found) expect([0, count]).toContain(answers);
});
