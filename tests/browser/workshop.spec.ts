/**
 * An instructor writes the seven-range unit's train, chart and solenoids from nothing, by keyboard, taps and one
 * paste. What comes out is held against the shipped deck, which was written by hand as a file. How long a whole deck
 * takes is in workshop-hour.spec.ts.
 */
import { expect, test } from '@playwright/test';
import { loadDeck } from '../../src/content/load.ts';
import { makeRational } from '../../src/core/rational.ts';
import type { Deck } from '../../src/core/unit/deck.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { shippedDecks } from '../units.ts';
import { frame, writeUnit } from './hand.ts';
import { rowsOf } from './practice.ts';

const kestrel = () => shippedDecks().find(({ id }) => id === 'kestrel-7')!;

/** Chart, sets and elements by what they are and join, whatever their shafts are called. */
function essence(deck: Deck) {
  const unit = makeUnit(deck);
  return {
    ranges: unit.ranges.map(({ id, applied, ratio }) => [id, [...applied].sort(), makeRational(ratio)]),
    neutrals: unit.neutrals.map(({ id, applied }) => [id, applied]).sort(),
    elements: deck.train.elements.map(({ id, kind }) => [id, kind]),
    teeth: deck.train.gearsets.map(({ kind, sun, ring }) => [kind, sun.teeth, ring.teeth]),
    oil: (deck.solenoids ?? []).map(({ kind, feeds, whenUnplugged }) => [kind, feeds, whenUnplugged]),
  };
}

test('the seven-range unit’s train, chart and solenoids, typed from nothing', async ({
  page,
  context,
}, info) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  const hand = await writeUnit(page);

  await test.step('the train is drawn as it is described, and the lost X is told in plain words', async () => {
    await expect(page.getByRole('img', { name: /gear train/i })).toBeVisible();
    await expect(page.getByText('This cannot be right:')).toBeVisible();
    await expect(
      page.getByText('Range "5", applied: found a row that leaves the output free', { exact: false }),
    ).toBeVisible();
    await hand.go('Apply chart');
    await expect(page.getByText('7 of 8 rows drive as they should.')).toBeVisible();
    await expect(page.getByRole('row', { name: /no drive: output free/ })).toBeVisible();
  });

  await test.step('one tap mends it, and every row drives', async () => {
    await hand.tap(page.getByRole('button', { name: '5, C2' }));
    await expect(page.getByText('8 of 8 rows drive as they should.')).toBeVisible();
    await expect(
      page
        .getByText('Nothing contradicts itself so far.')
        .or(page.getByText('The deck is whole', { exact: false })),
    ).toBeVisible();
  });

  await test.step('solenoids by the pressure when unplugged', async () => {
    await hand.go('Solenoids');
    await hand.tap(page.getByRole('button', { name: 'Add one each for B1, B2, B3, C1, and C2' }));
    await hand.pick(page.getByLabel('All of them are'), 'pressure follows current');
    for (const [id, shows] of [['SA', 'full'], ['SB', 'no'], ['SC', 'no'], ['SD', 'no'], ['SE', 'full']])
      await hand.tap(frame(page, `Solenoid ${id}`).getByRole('radio', { name: `${shows} pressure` }));
  }); // biome-ignore format: pairs read across

  await test.step('it passes the checks and goes among the decks', async () => {
    await hand.go('Hand out');
    await hand.tap(page.getByRole('button', { name: 'Put it among the decks here' }));
    await expect(page.getByText('Heron 7, revision 1, is among the decks.')).toBeVisible();
    const decks = await rowsOf<{ id: string; text: string }>(page, 'decks');
    const stored = decks.find(({ id }) => id === 'heron-7')!;
    const loaded = loadDeck(stored.text);
    if (!loaded.ok) throw new Error('a published deck does not load');
    const { oil, ...written } = essence(loaded.value.deck);
    const { oil: all, ...shipped } = essence(kestrel());
    expect(written).toEqual(shipped);
    // The shipped deck has two solenoids more, for line pressure and the converter clutch.
    expect(oil).toEqual(all.slice(0, 5));
    expect(loaded.value.deck.chart.neutral?.find(({ id }) => id === 'P')?.unsureCells).toEqual(['B3']);
    const revisions = await rowsOf<{ deck: string; revision: number }>(page, 'revisions');
    expect(revisions).toMatchObject([{ deck: 'heron-7', revision: 1 }]);
  });

  await test.step('its questions can be tried at once', async () => {
    await page.getByRole('button', { name: 'Try its questions' }).click();
    await expect(page.getByRole('heading', { name: 'Try any question' })).toBeVisible();
    await expect(page.getByText('Heron 7').first()).toBeVisible();
  });

  console.log(`train, chart and solenoids of seven ranges: ${hand.keys} keys, ${hand.taps} taps`);
  info.annotations.push({ type: 'effort', description: `${hand.keys} keys, ${hand.taps} taps` });
  // At a second and a half a tap and a third of a second a key this is under three minutes of hands.
  expect(hand.keys).toBeLessThan(60);
  expect(hand.taps).toBeLessThan(100);
  expect(complaints).toEqual([]);
});

test('every key is kept: the page is closed in the middle of a word', async ({ page }) => {
  await page.goto('/#/workshop');
  await page.getByRole('button', { name: 'New deck' }).click();
  await page.getByLabel('Unit', { exact: true }).pressSequentially('Heron se');
  await expect(page.getByText('Kept on this device.')).toBeVisible();
  const address = page.url();
  await page.goto('about:blank');
  await page.goto(address);
  await expect(page.getByLabel('Unit', { exact: true })).toHaveValue('Heron se');
  await page.getByLabel('Unit', { exact: true }).press('End');
  await page.getByLabel('Unit', { exact: true }).pressSequentially('ven');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByLabel('Unit', { exact: true })).toHaveValue('Heron se');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect(page.getByLabel('Unit', { exact: true })).toHaveValue('Heron seven');
});
