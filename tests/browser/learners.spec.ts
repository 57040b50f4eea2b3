/** One tablet, two learners, in a real browser: names, PINs, two tabs at once, idle time, wiping. */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import type { StoredLearner } from '../../src/storage/learners/registry-rows.ts';
import { answerOnce, attemptsIn, goOn, rowsOf } from './practice.ts';

const databasesIn = (page: Page) =>
  page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name!).sort());

const learnersIn = (page: Page) => rowsOf<StoredLearner>(page, 'learners', 'detent-names');

const atTheNames = (page: Page) =>
  expect(page.getByRole('heading', { name: 'Who is practising?' })).toBeVisible();

const atTheDrill = (page: Page) =>
  expect(page.getByRole('button', { name: /^(Start|Go on)$/ })).toBeVisible({ timeout: 20_000 });

/** Anna, who has the device, lets Ben onto it. */
async function share(page: Page) {
  await page.getByRole('link', { name: 'Who uses this device' }).click();
  await page.getByLabel('Whose answers are here so far?').fill('Anna');
  await page.getByLabel('Who comes in addition?').fill('Ben');
  await page.getByRole('button', { name: 'Share this device' }).click();
  await expect(page.getByRole('heading', { name: 'Your place: Anna' })).toBeVisible();
}

function listen(page: Page): string[] {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return complaints;
}

test('two learners in two tabs, a PIN, idle time, no network, and the end of term', async ({
  page,
  context,
}) => {
  test.setTimeout(180_000);
  const complaints = listen(page);
  await page.goto('/');
  await atTheDrill(page);
  expect(await databasesIn(page)).toEqual(['detent']);
  await page.getByRole('button', { name: 'Start' }).click();
  await answerOnce(page, true);
  await goOn(page);
  await page.getByRole('button', { name: 'Stop' }).click();
  const before = await attemptsIn(page);
  expect(before).toHaveLength(1);
  const other = await context.newPage();
  const otherComplaints = listen(other);
  await other.goto('/');
  await atTheDrill(other);

  await test.step('with a second name the first learner keeps what was there; other tabs ask who', async () => {
    await share(page);
    await atTheNames(other);
    expect(await attemptsIn(page)).toEqual(before);
    expect((await learnersIn(page)).map(({ name, database }) => [name, database === 'detent'])).toEqual(
      expect.arrayContaining([
        ['Anna', true],
        ['Ben', false],
      ]),
    );
  });

  await test.step('a PIN is kept as a slow hash only', async () => {
    await page.getByLabel('New PIN, four to eight digits').first().fill('4711');
    await page.getByLabel('The same once more').first().fill('4711');
    await page.getByRole('button', { name: 'Set the PIN', exact: true }).click();
    await expect(page.getByText('The PIN is set. It is asked whenever your name is picked.')).toBeVisible();
    const lock = (await learnersIn(page)).find(({ name }) => name === 'Anna')!.lock!;
    expect(lock.pin.iterations).toBeGreaterThanOrEqual(600_000);
    expect(lock.pin.salt).toMatch(/^[0-9a-f]{32}$/);
    expect(JSON.stringify(await learnersIn(page))).not.toContain('4711"');
    await page.getByRole('button', { name: 'Leave' }).click();
    await atTheNames(page);
  });

  await test.step('Ben in another tab and Anna in this one answer by turns, and nothing mixes', async () => {
    await other.getByRole('button', { name: 'Ben' }).press('Enter');
    await other.getByRole('button', { name: 'Start' }).click();
    await page.getByRole('button', { name: 'Anna' }).click();
    await page.keyboard.type('0000');
    await page.keyboard.press('Enter');
    await expect(page.getByText('That is not the PIN.')).toBeVisible();
    await page.keyboard.type('4711');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Go on' }).click();
    await expect(page.getByText('Practising: Anna')).toBeVisible();
    await expect(other.getByText('Practising: Ben')).toBeVisible();
    const bens = (await learnersIn(page)).find(({ name }) => name === 'Ben')!.database;
    const answer = async (tab: Page, database: string) => {
      const count = (await attemptsIn(tab, database)).length;
      await answerOnce(tab, count % 2 === 0, database);
      await goOn(tab);
      expect(await attemptsIn(tab, database)).toHaveLength(count + 1);
    };
    for (let round = 0; round < 3; round++) {
      await answer(page, 'detent');
      await answer(other, bens);
    }
    const [annasLog, bensLog] = await Promise.all(
      ['detent', bens].map((database) => attemptsIn(page, database)),
    );
    expect(annasLog).toHaveLength(4);
    expect(bensLog).toHaveLength(3);
    expect(new Set(annasLog!.map(({ device }) => device)).size).toBe(1);
    expect(new Set(bensLog!.map(({ device }) => device)).size).toBe(1);
    expect(annasLog![0]!.device).not.toBe(bensLog![0]!.device);
    expect(annasLog!.map(({ sequence }) => sequence).sort()).toEqual([1, 2, 3, 4]);
    expect(bensLog!.map(({ sequence }) => sequence).sort()).toEqual([1, 2, 3]);
  });

  await test.step('each tab keeps its learner through a reload, without a network too', async () => {
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.reload();
    await context.setOffline(true);
    await page.reload();
    await expect(page.getByText('Practising: Anna')).toBeVisible();
    await other.reload();
    await expect(other.getByText('Practising: Ben')).toBeVisible();
    await context.setOffline(false);
  });

  await test.step('the end of term: a file each, a word, and nothing is left in any tab', async () => {
    await page.getByRole('button', { name: 'Leave' }).click();
    await page.getByRole('link', { name: 'Who uses this device' }).click();
    await page.getByText('End of term: wipe everything').click();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the answers of Ben' }).click();
    expect((await saving).suggestedFilename()).toMatch(/ben/);
    await page.getByLabel('To wipe, type WIPE here').fill('wipe');
    await page.getByRole('button', { name: 'Wipe 2 learners off this device' }).click();
    await expect(page.getByText('Everything was wiped.')).toBeVisible();
    await atTheDrill(page);
    await expect(other.getByText('Practising: Ben')).toBeHidden();
    await atTheDrill(other);
    expect(await databasesIn(page)).toEqual(['detent', 'detent-names']);
    expect(await attemptsIn(page)).toEqual([]);
    expect(await learnersIn(page)).toEqual([]);
  });

  expect([...complaints, ...otherComplaints]).toEqual([]);
});

test('left alone, it goes back to the names, and the drill waits for its learner', async ({ page }) => {
  await page.clock.install();
  await page.goto('/');
  await atTheDrill(page);
  await share(page);
  await page.getByRole('radio', { name: '1 minute', exact: true }).click();
  await page.getByRole('link', { name: 'Back', exact: true }).click();
  await page.getByRole('button', { name: 'Start' }).click();
  await answerOnce(page, true);
  await goOn(page);
  // The page scrolls and moves the focus after a tap: that is over before the time goes by.
  await page.waitForTimeout(1000);
  await page.clock.fastForward(35_000);
  await expect(page.getByRole('alert')).toContainText('The answers of Anna are kept.');
  await page.keyboard.press('Shift');
  await expect(page.getByRole('alert')).toBeEmpty();
  await page.clock.fastForward(62_000);
  await atTheNames(page);
  await expect(page.getByRole('status')).toContainText('All answers are kept.');
  await page.getByRole('button', { name: 'Anna' }).click();
  await expect(page.getByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
  expect(await attemptsIn(page)).toHaveLength(1);
});

for (const colorScheme of ['light', 'dark'] as const)
  test(`axe finds nothing, targets are 56 px high, and a small phone holds it (${colorScheme})`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await page.setViewportSize({ width: 320, height: 640 });
    const audit = async () => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`)).toEqual(
        [],
      );
      const overflow = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(overflow).toBe(0);
      const low = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>('main button, main input, main summary, .who-bar button')]
          .map((target) => (target.matches('[type="radio"]') ? target.closest('label')! : target))
          .filter((target) => target.offsetHeight > 0 && target.offsetHeight < 56)
          .map((target) => `${target.offsetHeight} ${target.textContent}`),
      );
      expect(low).toEqual([]);
    };
    await page.goto('/#/learners');
    await expect(page.getByLabel('Who comes in addition?')).toBeVisible();
    await audit();
    await page.goto('/#/');
    await share(page);
    await page.locator('summary', { hasText: 'Ben' }).click();
    await page.getByRole('button', { name: 'Take Ben off this device' }).click();
    await page.getByText('End of term: wipe everything').click();
    await audit();
    await page.getByLabel('New PIN, four to eight digits').first().fill('4711');
    await page.getByLabel('The same once more').first().fill('4711');
    await page.getByRole('button', { name: 'Set the PIN', exact: true }).click();
    await expect(page.getByText('You have one.')).toBeVisible();
    await audit();
    await page.getByRole('button', { name: 'Leave' }).click();
    await atTheNames(page);
    await audit();
    await page.getByRole('button', { name: 'Anna with PIN' }).click();
    await page.keyboard.type('1234');
    await page.keyboard.press('Enter');
    await expect(page.getByText('That is not the PIN.')).toBeVisible();
    await audit();
    await page.getByRole('button', { name: 'Other name' }).click();
    await page.getByRole('button', { name: 'Ben' }).click();
    await expect(page.getByRole('button', { name: 'Start' })).toBeVisible();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
  });
