/**
 * Markup in every text that others write (decks, names, notes, addresses) stays text, on every screen; and the
 * page's policy lets nothing in that the page does not bring itself.
 */
import { expect, type Page, test } from '@playwright/test';
import { loadDeck } from '../../src/content/load.ts';
import { writeAssignment } from '../../src/exchange/message.ts';
import { packText } from '../../src/exchange/packet.ts';
import { SECTION_IDS } from '../../src/screens/workshop/sections.ts';
import { anAssignment } from '../reports.ts';
import { shippedDecks } from '../units.ts';
import { violationsOf } from './violations.ts';

const MARKUP = '<img src=x onerror=hit()> "><svg onload=hit()> <script>hit()</script> javascript:hit() {hit}';

/** The richest deck with markup in each field that takes any words. */
function hostileDeck(): { readonly text: string; readonly fields: readonly string[] } {
  const fields: string[] = [];
  let text = JSON.stringify(shippedDecks().find(({ id }) => id === 'kestrel-7'));
  const names = new Set<string>();
  JSON.parse(text, (key, value) => {
    if (typeof value === 'string') names.add(key);
    return value;
  });
  // A change that the checks refuse is not made: that field takes no words.
  for (const name of [...names, 'names']) {
    const changed = JSON.stringify(
      JSON.parse(text, (key, value) =>
        key !== name || value === MARKUP
          ? value
          : Array.isArray(value)
            ? value.map((_, index) => `${MARKUP} ${index}`)
            : typeof value === 'string'
              ? MARKUP
              : value,
      ),
    );
    if (!loadDeck(changed).ok) continue;
    text = changed;
    fields.push(name);
  }
  // Lengths have a field "unit" as well.
  text = JSON.stringify({ ...JSON.parse(text), unit: MARKUP });
  if (loadDeck(text).ok) fields.push('unit');
  return { text, fields };
}

interface Watched {
  readonly hits: string[];
  readonly expectHarmless: (where: string) => Promise<void>;
}

async function watch(page: Page): Promise<Watched> {
  const hits: string[] = [];
  const violations = await violationsOf(page);
  await page.exposeFunction('hit', () => hits.push('a script ran'));
  page.on('dialog', (dialog) => {
    hits.push(`a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('pageerror', (error) => hits.push(error.message));
  return {
    hits,
    expectHarmless: async (where) => {
      const made = await page.evaluate(() =>
        [
          ...document.querySelectorAll(
            '[onerror],[onload],script:not([src]),img[src="x"],a[href^="javascript:"]',
          ),
        ].map(({ outerHTML }) => outerHTML.slice(0, 80)),
      );
      expect({ where, made, hits, violations }).toEqual({ where, made: [], hits: [], violations: [] });
    },
  };
}

test('markup in every text of a deck is shown as text on every screen', async ({ page }) => {
  test.slow();
  const { text, fields } = hostileDeck();
  expect(fields).toEqual(
    expect.arrayContaining(['title', 'unit', 'name', 'note', 'text', 'where', 'reason', 'tool', 'meaning', 'names']),
  );
  const { expectHarmless } = await watch(page);
  await page.goto('/#/decks');
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({ name: `${MARKUP.slice(0, 20)}.json`, mimeType: 'application/json', buffer: Buffer.from(text) });
  await expect(page.getByRole('status')).toContainText('<img src=x');
  await expectHarmless('decks');

  const openAll = () =>
    page.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
  for (const path of ['/', '/unit', '/print', '/progress', '/case', '/self-check', '/preview', '/report', '/assign', '/workshop']) {
    await page.goto(`/#${path}`);
    await expect(page.getByText('<img src=x').or(page.getByRole('heading')).first()).toBeVisible();
    await openAll();
    await expectHarmless(path);
  }

  await test.step('every kind of question, asked and answered', async () => {
    await page.goto('/#/preview');
    const families = page.getByRole('combobox').first();
    for (const value of await families.locator('option').evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value))) {
      await families.selectOption(value);
      await openAll();
    }
    await expectHarmless('questions');
  });

  await test.step('every section of the workshop', async () => {
    await page.goto('/#/workshop');
    await page.getByRole('button', { name: /^Change / }).first().click();
    await expect(page).toHaveURL(/workshop\/[^/]+/);
    const draft = /workshop\/([^/]+)/.exec(page.url())![1]!;
    for (const section of SECTION_IDS) {
      await page.goto(`/#/workshop/${draft}/${section}`);
      await expect(page.getByRole('heading', { level: 2 }).first()).toBeVisible();
      await openAll();
    }
    await expectHarmless('workshop');
  });
}); // biome-ignore format: lists

test('markup in the names and notes of a class, and in addresses, is shown as text', async ({ page }) => {
  const { expectHarmless } = await watch(page);
  await page.goto('/#/assign');
  const today = new Date(Date.now() + 3 * 86_400_000).toISOString().slice(0, 10);
  await page.getByLabel('Name of the group').fill(MARKUP);
  await page.getByLabel('Day of class').fill(today);
  await page.getByLabel(/^Names you expect/).fill(`${MARKUP}\nBo`);
  await page.getByRole('button', { name: 'Make the assignment' }).click();
  await expect(page.getByRole('heading', { name: /^Assignment of <img/ })).toBeVisible();
  await expectHarmless('assignment made');

  const [deck] = shippedDecks();
  const handed = anAssignment({ id: MARKUP.slice(0, 60), group: MARKUP, note: MARKUP, deck: { id: deck!.id, revision: deck!.revision } });
  const packet = await packText(writeAssignment(handed, JSON.stringify(deck)));
  await page.goto('about:blank');
  await page.goto(`/#/take/${packet}`);
  await page.getByRole('button', { name: 'Take it' }).click();
  await expect(page.getByText('Taken in.')).toBeVisible();
  await expectHarmless('assignment taken');
  await page.goto('/#/');
  await expect(page.getByText(/For <img src=x/)).toBeVisible();
  await expectHarmless('today');

  await test.step('a report under such a name, on the board', async () => {
    await page.goto('/#/report');
    await page.getByLabel(/^Your name/).fill(MARKUP);
    await page.getByRole('button', { name: 'Make the report' }).click();
    await expectHarmless('report');
    await page.goto('/#/group');
    await expect(page.getByText(/<img src=x/).first()).toBeVisible();
    await expectHarmless('group');
  });

  for (const address of [
    '/#/group/%E0%A4%A', '/#/group/<img src=x onerror=hit()>', '/#/take/<svg onload=hit()>', '/#/take/%',
    '/#/take/javascript:hit()', '/#/workshop/%3Cimg%20src=x%20onerror=hit()%3E', '/#/print/make-up/%/%',
    '/#/workshop/fix/%/%',
    '/#/workshop/a/unit/%E0', '/#/marks/%E0/%',
    '/#/print/make-up/__proto__/constructor', '/#/<script>hit()</script>', `/#/${'a/'.repeat(5000)}`, '/?x=<script>hit()</script>#/',
    '/#//evil.example/', '/#javascript:hit()',
  ]) {
    await page.goto(address);
    await expect(page.locator('.sheet').first(), address.slice(0, 60)).toBeVisible();
    await expectHarmless(address.slice(0, 60));
  }
}); // biome-ignore format: lists

test('the policy has no hole for text that runs, and what it refuses is told', async ({ page, request }) => {
  const violations = await violationsOf(page);
  const html = await (await request.get('/')).text();
  const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html)![1]!.replaceAll('&#39;', "'");
  expect(policy).not.toMatch(/unsafe-|\*|https?:|data:|strict-dynamic|nonce-|sha\d/);
  const rules = new Map(policy.split('; ').map((rule) => rule.split(/ (.*)/s).slice(0, 2) as [string, string]));
  expect(rules.get('default-src')).toBe("'none'");
  for (const rule of ['script-src', 'style-src', 'font-src', 'connect-src', 'worker-src', 'manifest-src'])
    expect(rules.get(rule), rule).toBe("'self'");
  // It stands before anything that it is about.
  expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.search(/<script|<link|<style/));
  expect(html).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\son\w+=/);

  await page.goto('/');
  await expect(page.getByRole('heading').first()).toBeVisible();
  expect(violations).toEqual([]);
  const ran = await page.evaluate(async () => {
    const marks = window as unknown as { ran?: string[] };
    marks.ran = [];
    const script = document.createElement('script');
    script.textContent = 'window.ran.push("inline")';
    document.body.append(script);
    document.body.insertAdjacentHTML('beforeend', '<img src="/none" onerror="window.ran.push(\'handler\')">');
    document.body.insertAdjacentHTML('beforeend', '<p id="styled" style="color: rgb(1, 2, 3)">x</p>');
    // Not here: what a test evaluates is let through.
    setTimeout(() => new Function('window.ran.push("eval")')());
    await fetch('https://shop.example/').catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, 200));
    if (getComputedStyle(document.getElementById('styled')!).color === 'rgb(1, 2, 3)') marks.ran.push('style');
    return marks.ran;
  });
  expect(ran).toEqual([]);
  const refused = violations.map((told) => told.split(' ').slice(0, 2).join(' '));
  expect(refused).toEqual(
    expect.arrayContaining(['script-src-elem inline', 'script-src-attr inline', 'style-src-attr inline', 'script-src eval']),
  );
  expect(refused.some((told) => /^connect-src https:\/\/shop\.example/.test(told))).toBe(true);
}); // biome-ignore format: lists
