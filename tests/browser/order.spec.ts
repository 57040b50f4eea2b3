/** Orders by dragging, with a mouse and with a finger; taps and scrolling stay what they are. */
import { type CDPSession, expect, type Locator, type Page, test } from '@playwright/test';
import { ask } from '../../src/core/questions/ask.ts';
import { ratioOrder } from '../../src/core/questions/families/ratio-order.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { makeSay } from '../../src/words/words.ts';
import { shippedDecks } from '../units.ts';

const SEED = 3;

/** The order question on the page, its labels in the right order. */
async function openOrder(page: Page): Promise<string[]> {
  await page.goto('/');
  await expect(page.getByRole('heading', { name: 'Next drill' })).toBeVisible();
  await page.goto('/#/preview');
  await page.getByLabel('Kind of question').selectOption(ratioOrder.id);
  await page.getByRole('spinbutton', { name: 'Seed' }).fill(String(SEED));
  await expect(page.getByText('Tap the next one, or drag it to its place.')).toBeVisible();
  const name = await page.locator('.title-block').first().textContent();
  const deck = shippedDecks().find(({ unit }) => name?.includes(unit))!;
  const { space, answers } = ask(makeUnit(deck), ratioOrder, SEED)!;
  const [answer] = answers;
  if (space.form !== 'order' || answer.form !== 'order') throw new Error('no order');
  const say = makeSay(deck);
  return answer.order.map((id) => say(space.items.find((item) => item.id === id)!.label));
}

const placesOn = (page: Page) => page.getByRole('list', { name: 'Your order' }).getByRole('listitem');
const placed = (page: Page) =>
  placesOn(page)
    .allTextContents()
    .then((texts) =>
      texts
        .map((text) => text.replace(/^\d+/, '').replace(', take it back', ''))
        .filter((text) => text !== '…'),
    );
const key = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

async function middleOf(target: Locator) {
  await target.scrollIntoViewIfNeeded();
  const box = (await target.boundingBox())!;
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Both must be in view together: the page does not scroll on the way. */
async function dragTo(page: Page, from: Locator, to: Locator) {
  await middleOf(to);
  const [start, end] = [await middleOf(from), await middleOf(to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 10, start.y, { steps: 2 });
  await page.mouse.move(end.x, end.y, { steps: 8 });
  // What lies beneath is found between frames: let go sooner, the key falls where it was a moment before.
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))),
  );
  await page.mouse.up();
}

/**
 * The drag, until the order is as wanted. Where the machine was too busy the page met the button already up, and
 * nothing moved: only then is it dragged again.
 */
async function dragged(page: Page, from: Locator, to: Locator, wanted: readonly string[], why: string) {
  const before = await placed(page);
  await expect(async () => {
    if (String(await placed(page)) === String(before)) await dragTo(page, from, to);
    await expect.poll(() => placed(page), { message: why, timeout: 3000 }).toEqual(wanted);
  }).toPass({ timeout: 30_000 });
}

test.describe('with a mouse', () => {
  test.use({ viewport: { width: 1280, height: 1000 } });

  test('keys are dragged to places, moved among them and back, and the answer counts', async ({ page }) => {
    const complaints: string[] = [];
    page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
    const right = await openOrder(page);
    const [a, b, c] = right as [string, string, string, ...string[]];
    await dragged(page, key(page, b), placesOn(page).nth(2), [b], 'an open place is the next one');
    await dragged(page, key(page, a), placesOn(page).nth(0), [a, b], 'a taken place makes room');
    await expect(page.locator('[aria-live=assertive]')).toHaveText(`${a}: now in place 1.`);
    // The click that ends a drag is swallowed for a moment; a busy machine makes that moment long.
    await expect(async () => {
      if ((await placed(page)).length < 3) await key(page, c).click({ timeout: 1000 });
      expect(await placed(page), 'a tap still takes the next').toEqual([a, b, c]);
    }).toPass();
    await dragged(page, placesOn(page).nth(0), placesOn(page).nth(2), [b, c, a], 'moved down');
    await dragged(page, placesOn(page).nth(2), placesOn(page).nth(0), [a, b, c], 'and up again');
    await dragged(
      page,
      placesOn(page).nth(1),
      page.getByRole('button', { name: 'Take one back' }),
      [a, c],
      'and off to the keys',
    );
    await dragged(page, key(page, b), placesOn(page).nth(1), [a, b, c], 'and back between them');
    await dragged(
      page,
      placesOn(page).nth(1),
      page.getByRole('heading', { level: 1 }).first(),
      [a, b, c],
      'let go nowhere',
    );
    for (const [place, label] of [...right.entries()].slice(3))
      await dragged(page, key(page, label), placesOn(page).last(), right.slice(0, place + 1), 'to the end');
    await expect(async () => {
      const check = page.getByRole('button', { name: 'Check', exact: true });
      if (await check.isVisible()) await check.click({ timeout: 1000 });
      await expect(page.getByRole('status')).toContainText('Right.', { timeout: 1000 });
    }).toPass();
    expect(complaints).toEqual([]);
  });
});

test.describe('with a finger', () => {
  test.use({ viewport: { width: 390, height: 1000 }, hasTouch: true, isMobile: true });

  const touch = (
    cdp: CDPSession,
    type: 'touchStart' | 'touchMove' | 'touchEnd',
    at?: { x: number; y: number },
  ) => cdp.send('Input.dispatchTouchEvent', { type, touchPoints: at ? [at] : [] });

  test('held, a key is dragged; swiped, the page scrolls; tapped, it takes the next place', async ({
    page,
    context,
  }) => {
    const [a, b] = await openOrder(page);
    const cdp = await context.newCDPSession(page);
    await key(page, b!).tap();
    await expect.poll(() => placed(page)).toEqual([b]);

    const [start, end] = [await middleOf(key(page, a!)), await middleOf(placesOn(page).nth(0))];
    await touch(cdp, 'touchStart', start);
    await page.waitForTimeout(400);
    for (let step = 1; step <= 8; step++)
      await touch(cdp, 'touchMove', {
        x: start.x + ((end.x - start.x) * step) / 8,
        y: start.y + ((end.y - start.y) * step) / 8,
      });
    await touch(cdp, 'touchEnd');
    await expect.poll(() => placed(page)).toEqual([a, b]);

    const before = await page.evaluate(() => window.scrollY);
    const from = await middleOf(page.getByRole('button', { name: 'Take one back' }));
    await touch(cdp, 'touchStart', from);
    for (let step = 1; step <= 6; step++) await touch(cdp, 'touchMove', { x: from.x, y: from.y + 30 * step });
    await touch(cdp, 'touchEnd');
    await expect.poll(() => page.evaluate(() => window.scrollY)).toBeLessThan(before);
    expect(await placed(page)).toEqual([a, b]);
  });
});
