/**
 * Kills Chromium again and again while a learner answers, and compares after each restart. One profile all along,
 * so what an earlier run stored has to stay as well. The page's day moves on with each run: there is always something to ask.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { randomFrom } from '../../src/core/random.ts';
import { readStored, startBrowser } from './browser.ts';
import { compare, type Shown, type Stored } from './compare.ts';
import { practiseForEver } from './learner.ts';

const DAY_MS = 86_400_000;
/** One kill in so many comes while the page opens, the others after the first verdict of their run. */
const OPENING_EVERY = 5;
const LATEST_MS = { opening: 3000, answering: 1000 };
/** For a machine that is busy: a run without an answer by then is killed as it stands. */
const PATIENCE_MS = 30_000;

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

export interface Tally {
  kills: number;
  /** Answers whose verdict was shown. */
  shown: number;
  stored: number;
  /** Kills after which the last answer was stored and had not been shown. */
  unseen: number;
  /** Kills that came before the first answer of their run. */
  early: number;
  faults: string[];
}

interface Run {
  readonly origin: string;
  readonly kills: number;
  readonly seed: number;
  /** Told after each kill. */
  readonly watch?: (tally: Tally) => void;
}

export async function killAgainAndAgain({ origin, kills, seed, watch }: Run): Promise<Tally> {
  const random = randomFrom(seed);
  const profile = mkdtempSync(join(tmpdir(), 'detent-kills-'));
  const tally: Tally = { kills: 0, shown: 0, stored: 0, unseen: 0, early: 0, faults: [] };
  let before: Stored = { attempts: [], drill: undefined };
  let seen: Shown[] = [];
  const look = (after: Stored) => {
    const { faults, shown, unseen } = compare(before, seen, after);
    const places = seen.map(({ place }) => place).join(' ');
    tally.faults.push(...faults.map((fault) => `kill ${tally.kills}: ${fault} (shown: ${places})`));
    tally.shown += shown;
    tally.stored = after.attempts.length;
    if (unseen) tally.unseen++;
    if (tally.kills > 0 && shown === 0) tally.early++;
    before = after;
    seen = [];
  };
  try {
    for (let run = 0; run <= kills; run++) {
      const { page, kill } = await startBrowser(profile);
      try {
        look(await readStored(page, origin));
        if (run === kills) break;
        const noted = seen;
        let first = () => {};
        const answered = new Promise<void>((resolve) => {
          first = resolve;
        });
        await page.exposeFunction('told', (shown: Shown) => {
          noted.push(shown);
          first();
        });
        await page.addInitScript((shift) => {
          const now = Date.now;
          Date.now = () => now() + shift;
        }, run * DAY_MS);
        page
          .goto(origin)
          .then(() => page.evaluate(practiseForEver))
          .catch(() => {});
        if (run % OPENING_EVERY !== 0) await Promise.race([answered, wait(PATIENCE_MS)]);
        await wait(random.int(0, run % OPENING_EVERY === 0 ? LATEST_MS.opening : LATEST_MS.answering));
      } finally {
        await kill();
      }
      tally.kills++;
      watch?.(tally);
    }
  } finally {
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
  return tally;
}
