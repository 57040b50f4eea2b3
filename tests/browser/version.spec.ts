/** Two versions, put up one after the other: a drill is never disturbed, and the old one goes on without a network. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { build } from 'vite';
import { answerOnce, goOn } from './practice.ts';
import { type Site, serve } from './serve.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
const later = mkdtempSync(join(tmpdir(), 'detent-later-'));
let site: Site;

test.beforeAll(async () => {
  // The same program under other names of files, which is what a new version looks like to a browser.
  await build({
    root,
    logLevel: 'error',
    build: {
      outDir: later,
      emptyOutDir: true,
      rolldownOptions: { output: { entryFileNames: 'assets/later-[hash].js' } },
    },
  });
});

test.beforeEach(async () => {
  site = await serve(join(root, 'dist'));
});

test.afterEach(() => site.close());

/** One in the later version's page. */
const laterScript = (page: Page) => page.locator('script[src*="/later-"]');

const offer = (page: Page) => page.getByRole('button', { name: 'Use the new version' });

/** Opens the page and waits until it would open without a network. */
async function installed(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto(site.url);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
  expect(await page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
  return page;
}

/** Has the browser look for a new version, and waits until one is fetched. */
const fetchNew = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update();
    while (!registration.waiting) await new Promise((resolve) => setTimeout(resolve, 50));
  });

async function startDrill(page: Page) {
  await page.getByRole('button', { name: 'Start' }).click();
  await expect(page.getByRole('button', { name: /^Check/ })).toBeVisible();
}

test('a new version waits for the end of a drill, then is offered and taken', async ({ context }) => {
  const page = await installed(context);
  await startDrill(page);
  await page.evaluate(() => Object.assign(window, { untouched: true }));
  const untouched = () => page.evaluate(() => 'untouched' in window);

  site.folder = later;
  await fetchNew(page);
  await answerOnce(page, true);
  await goOn(page);
  await expect(page.getByRole('button', { name: /^Check/ })).toBeVisible();
  await expect(offer(page)).toHaveCount(0);
  expect(await untouched()).toBe(true);
  await expect(laterScript(page)).toHaveCount(0);

  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
  expect(await untouched()).toBe(true);
  await offer(page).click();
  await expect(laterScript(page)).toHaveCount(1);
  await expect(page.getByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
  await expect(offer(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Go on' }).click();
  await expect(page.getByText(/^Question 2 of/)).toBeVisible();
});

test('while another tab is in a drill it is not taken', async ({ context }) => {
  const page = await installed(context);
  const other = await context.newPage();
  await other.goto(site.url);
  await startDrill(other);
  site.folder = later;
  await fetchNew(page);
  await offer(page).click();
  await expect(page.getByText(/^A drill is open in another tab/)).toBeVisible();
  await expect(laterScript(page)).toHaveCount(0);

  await other.getByRole('button', { name: 'Stop' }).click();
  await offer(page).click();
  await expect(laterScript(page)).toHaveCount(1);
});

test('without a network the old version goes on, the new one waiting beside it', async ({ context }) => {
  const page = await installed(context);
  site.folder = later;
  await fetchNew(page);
  await site.close();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
  await expect(laterScript(page)).toHaveCount(0);
  await startDrill(page);
  await answerOnce(page, false);
  await goOn(page);
  await page.goto(`${site.url}#/unit`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});
