/** What comes out on paper: Chromium's own PDF, read back page by page. */
import { expect, type Page, test } from '@playwright/test';
import { extractText, getDocumentProxy } from 'unpdf';
import { say as phrase } from '../../src/core/questions/phrase.ts';
import { parseReference } from '../../src/core/questions/reference.ts';
import { questionOf } from '../../src/core/questions/reopen.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { answerInWords } from '../../src/words/answer-in-words.ts';
import { makeSay } from '../../src/words/words.ts';
import { shippedDecks } from '../units.ts';

const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
const unit = makeUnit(deck);
const say = makeSay(deck);

interface Printed {
  readonly pages: readonly string[];
  /** Width and height in points, of every page. */
  readonly sizes: readonly (readonly number[])[];
}

const plain = (text: string) => text.replace(/\s+/g, ' ').trim();

/** Text is compared without its spaces: where a line breaks is the printer's business. */
const tight = (text: string) => text.replace(/\s+/g, '');

async function printed(page: Page): Promise<Printed> {
  const bytes = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const pdf = await getDocumentProxy(new Uint8Array(bytes));
  const { text } = await extractText(pdf);
  const sizes = await Promise.all(
    text.map(async (_, index) => (await pdf.getPage(index + 1)).view.slice(2).map(Math.round)),
  );
  return { pages: text.map(plain), sizes };
}

async function open(page: Page) {
  await page.goto('/#/print');
  await expect(page.getByRole('article', { name: 'Bench sheet' })).toBeVisible();
}

// ISO 216 and ANSI: A4 is 210 mm × 297 mm, Letter 8.5 in × 11 in, at 72 points an inch.
const SIZES = [
  ['A4', 595, 842],
  ['Letter', 612, 792],
] as const;

for (const [paper, width, height] of SIZES)
  test(`the bench sheet on ${paper}: cautions first, every value with its source, nothing of the page around`, async ({
    page,
  }) => {
    await open(page);
    await page.getByRole('radio', { name: paper }).check();
    const { pages, sizes } = await printed(page);
    for (const size of sizes) expect(size).toEqual([width, height]);
    const all = tight(pages.join(' '));
    const place = (text: string) => {
      const at = all.indexOf(tight(text));
      expect(at, text).toBeGreaterThanOrEqual(0);
      return at;
    };
    const chart = place('Apply chart');
    for (const { text } of deck.cautions!) expect(place(text)).toBeLessThan(chart);
    place('The maker’s service information comes first.');
    for (const row of deck.chart.ranges) if (row.ratio) place(row.ratio.replace('-', '−'));
    for (const seat of deck.seats!) place(say(phrase('unit.noted-from', { end: seat.viewedFrom })));
    for (const { title, on } of deck.sources!) place([title, on].join(' ').slice(0, title.length));
    for (const { limits } of deck.fits!) place(`Limits ${limits.low.value} ${limits.low.unit}`);
    place(`${deck.title}, revision ${deck.revision}`);
    // The page's own controls stay on the screen.
    expect(all).not.toContain(tight('What stands on it'));
    expect(all).not.toContain('A4Letter');
  });

test('work sheets: a page for each person first, other questions on the same facts, keys last and right', async ({
  page,
}) => {
  await open(page);
  await page.getByRole('radio', { name: 'Work sheet' }).check();
  await page.getByLabel(/^Names/).fill('Ada\nBo');
  await page.getByLabel(/^Questions/).fill('6');
  await expect(page.getByRole('article', { name: /^Key: Work sheet, Name: Bo/ })).toBeVisible();
  const { pages } = await printed(page);
  const firsts = pages.flatMap((text, index) =>
    /^(Key: )?Work sheet Name: (Ada|Bo)/.test(text) ? [index] : [],
  );
  const starts = firsts.map((index) => /^(Key: )?Work sheet Name: (Ada|Bo)/.exec(pages[index]!)!.slice(1, 3));
  expect(starts).toEqual([[undefined, 'Ada'], [undefined, 'Bo'], ['Key: ', 'Ada'], ['Key: ', 'Bo']]); // biome-ignore format: pairs
  const parts = firsts.map((from, index) => pages.slice(from, firsts[index + 1]).join(' '));
  const questionsOf = (key: string) =>
    [...key.matchAll(/kestrel-7 r\d+ [a-z-]+ \S+ -?\d+/g)].map(
      ([reference]) => questionOf(unit, parseReference(reference)!)!,
    );
  const [ada, bo] = [questionsOf(parts[2]!), questionsOf(parts[3]!)];
  expect([ada.length, bo.length]).toEqual([6, 6]);
  expect(ada.map(({ fact }) => fact).toSorted()).toEqual(bo.map(({ fact }) => fact).toSorted());
  expect(ada.map(({ seed }) => seed)).not.toEqual(bo.map(({ seed }) => seed));
  for (const [questions, sheet, key] of [[ada, parts[0]!, parts[2]!], [bo, parts[1]!, parts[3]!]] as const) // biome-ignore format: pairs
    for (const question of questions) {
      expect(tight(sheet)).toContain(tight(say(question.prompt)));
      for (const caution of question.cautions) expect(tight(sheet)).toContain(tight(caution));
      for (const answer of question.answers)
        expect(tight(key)).toContain(tight(answerInWords(question.space, answer, say)));
      // The sheet does not hold the reason.
      expect(tight(sheet)).not.toContain(tight(say(question.explanation.reason)));
    }
});

test('paper is black on white in the dark, too', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark', media: 'print' });
  await open(page);
  const colours = await page.getByRole('article').evaluate((paper) => {
    const own = getComputedStyle(paper);
    return [own.color, own.backgroundColor, getComputedStyle(document.documentElement).backgroundColor];
  });
  expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)', 'rgb(255, 255, 255)']);
});
