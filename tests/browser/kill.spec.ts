/** No answer is lost when the browser is killed: a few kills here, hundreds by `npm run kills`. docs/safe-data.md */
import { expect, test } from '@playwright/test';
import { killAgainAndAgain } from '../kills/run.ts';

const KILLS = 20;

test('S1 the browser killed at random points: what was shown is stored, nothing twice', async ({
  baseURL,
}) => {
  test.setTimeout(600_000);
  const tally = await killAgainAndAgain({ origin: baseURL!.replace(/\/$/, ''), kills: KILLS, seed: 20 });
  expect(tally.faults).toEqual([]);
  expect(tally.kills).toBe(KILLS);
  expect(tally.stored).toBe(tally.shown + tally.unseen);
  // Kills during opening are meant to come before any answer; of the others most must not.
  expect(tally.early).toBeLessThan(KILLS / 2);
});
