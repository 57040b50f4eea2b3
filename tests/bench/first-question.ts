/**
 * From the address to the question on the screen, beside a page of React that shows one line, built by the same
 * settings: both in one real browser whose processor is slowed four times, by turns, each opened before and kept
 * offline. The drill is stored, its deck checked, and its question was seen before. Times come and go with the machine; only the ratio is claimed.
 */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium } from '@playwright/test';
import { build } from 'vite';
import { ensureChromium } from '../browser/chromium.ts';
import { serve } from '../browser/serve.ts';

const ROUNDS = 21;
const WARM_UPS = 3;
const SLOWED = 4;
export const MOST_TIMES = 1.5;

export interface Opening {
  /** Milliseconds, medians. */
  readonly empty: number;
  readonly question: number;
  /** The empty page's share of the other's time within one round, the median of all rounds. */
  readonly share: number;
}

const root = fileURLToPath(new URL('../../', import.meta.url));

async function built(page: string): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'detent-bench-'));
  const configFile = join(root, 'vite.config.ts');
  await build({
    root: join(root, page),
    configFile,
    logLevel: 'error',
    build: { outDir, emptyOutDir: true },
  });
  return outDir;
}

/** Runs in the page: notes when the line that both pages show has been painted. */
function noteWhenShown() {
  new MutationObserver((_, observer) => {
    if (!document.querySelector('h1.prompt')) return;
    observer.disconnect();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => performance.mark('shown');
      port2.postMessage(null);
    });
  }).observe(document, { childList: true, subtree: true });
}

/** Runs in the page: whether the question on the screen is kept for the next start, as it is once it was seen. */
const isKept = () =>
  new Promise<boolean>((resolve) => {
    const request = indexedDB.open('detent');
    request.onsuccess = () => {
      const db = request.result;
      const reading = db.transaction('settings').objectStore('settings').getKey('question-at-hand');
      reading.onsuccess = () => {
        db.close();
        resolve(reading.result !== undefined);
      };
    };
  });

async function millisecondsTo(context: BrowserContext, url: string): Promise<number> {
  const page = await context.newPage();
  await page.addInitScript(noteWhenShown);
  const devtools = await context.newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.goto(url, { waitUntil: 'commit' });
  await page.waitForFunction(() => performance.getEntriesByName('shown').length > 0, null, { polling: 50 });
  const at = await page.evaluate(() => performance.getEntriesByName('shown')[0]!.startTime);
  // What a page does once it is seen, keeping its code for the next time included.
  await page.waitForTimeout(500);
  await page.close();
  return at;
}

const median = (times: readonly number[]) => times.toSorted((a, b) => a - b)[times.length >> 1]!;

export async function measureOpening(): Promise<Opening> {
  const sites = [await serve(await built('tests/bench/empty-page')), await serve(await built('.'))] as const;
  const browser = await chromium.launch({ executablePath: ensureChromium(), args: ['--disable-gpu'] });
  try {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
    const [empty, detent] = sites.map(({ url }) => url) as [string, string];
    for (const url of [empty, detent]) {
      const page = await context.newPage();
      await page.goto(url);
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      if (url === detent) {
        await page.getByRole('button', { name: 'Start' }).click();
        await page.locator('h1.prompt').waitFor();
        await page.waitForFunction(isKept);
      }
      await page.close();
    }
    const times: { readonly empty: number; readonly question: number }[] = [];
    for (let round = 0; round < WARM_UPS + ROUNDS; round++)
      times.push({
        empty: await millisecondsTo(context, empty),
        question: await millisecondsTo(context, `${detent}#/drill`),
      });
    const counted = times.slice(WARM_UPS);
    return {
      empty: median(counted.map((time) => time.empty)),
      question: median(counted.map((time) => time.question)),
      share: median(counted.map(({ empty: least, question }) => least / question)),
    };
  } finally {
    await browser.close();
    await Promise.all(sites.map((site) => site.close()));
  }
}
