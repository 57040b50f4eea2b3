/** Chromium on a profile of its own, as a process that can be killed outright, and read past the app afterwards. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { type Browser, chromium, type Page } from '@playwright/test';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import type { Drill } from '../../src/core/memory/drill.ts';
import { ensureChromium } from '../browser/chromium.ts';
import type { Stored } from './compare.ts';

const ARGS = [
  '--headless=new',
  '--remote-debugging-port=0',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // Chromium refuses its sandbox to the superuser.
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

export interface Running {
  readonly page: Page;
  /** SIGKILL to every process of the browser at once. */
  kill(): Promise<void>;
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Whether any process of the group is left. */
function isThere(group: number): boolean {
  try {
    process.kill(-group, 0);
    return true;
  } catch {
    return false;
  }
}

async function addressOf(child: ChildProcess): Promise<string> {
  let said = '';
  for await (const chunk of child.stderr!) {
    said += chunk;
    const found = /DevTools listening on (\S+)/.exec(said);
    if (found) return found[1]!;
  }
  throw new Error(`Chromium did not start: ${said}`);
}

export async function startBrowser(profile: string): Promise<Running> {
  // A group of its own, so that the kill takes its helper processes along.
  const child = spawn(ensureChromium(), [...ARGS, `--user-data-dir=${profile}`, 'about:blank'], {
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const gone = once(child, 'exit');
  let browser: Browser | undefined;
  const kill = async () => {
    try {
      process.kill(-child.pid!, 'SIGKILL');
    } catch {
      // It is gone already.
    }
    await gone;
    // Its helpers hold the database's files until the last of them is gone as well.
    for (let waits = 0; waits < 1000 && isThere(child.pid!); waits++) await pause(10);
    await browser?.close().catch(() => {});
  };
  try {
    browser = await chromium.connectOverCDP(await addressOf(child));
    const [context] = browser.contexts();
    const page = context!.pages()[0] ?? (await context!.newPage());
    // The name keeper that some runners put into functions, which are sent to the page as they are.
    await page.addInitScript({ content: 'globalThis.__name ??= (named) => named;' });
    return { page, kill };
  } catch (error) {
    await kill();
    throw error;
  }
}

/** What the store holds, read without the app: a page of the same origin that runs none of it. */
export async function readStored(page: Page, origin: string): Promise<Stored> {
  for (let tries = 1; ; tries++)
    try {
      return await readOnce(page, origin);
    } catch (error) {
      // On a busy machine the killed one's hold on the files may outlast it; files that are spoilt stay so.
      if (tries === 5 || !String(error).includes('backing store')) throw error;
      await pause(1000);
    }
}

async function readOnce(page: Page, origin: string): Promise<Stored> {
  await page.goto(`${origin}/detent.svg`);
  const [attempts, drills] = await page.evaluate(async () => {
    const known = (await indexedDB.databases()).some(({ name }) => name === 'detent');
    if (!known) return [[], []];
    const result = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await result(indexedDB.open('detent'));
    const rows = ['attempts', 'drills'].map((table) =>
      db.objectStoreNames.contains(table)
        ? result(db.transaction(table).objectStore(table).getAll())
        : Promise.resolve([]),
    );
    const read = await Promise.all(rows);
    db.close();
    return read;
  });
  return { attempts: attempts as Attempt[], drill: (drills as Drill[])[0] };
}
