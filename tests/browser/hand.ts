/** Writes a deck in the workshop the way an instructor does, every press and tap counted. */
import { expect, type Locator, type Page } from '@playwright/test';

/** Longer words reach the field as one event: they are counted letter by letter all the same. */
const LETTER_BY_LETTER = 12;

/** Presses and taps, counted. */
export class Hand {
  keys = 0;
  taps = 0;
  /** Letters that came from a spreadsheet, where somebody typed them before. */
  pasted = 0;
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  async tap(target: Locator) {
    await target.click();
    this.taps++;
  }

  /** To another section; on a phone the list of them is folded out first. */
  async go(name: string) {
    const list = this.page.getByRole('button', { name: /^Sections: / });
    if ((await list.isVisible()) && (await list.getAttribute('aria-expanded')) === 'false')
      await this.tap(list);
    await this.tap(section(this.page, name));
    await expect(this.page.getByRole('heading', { level: 2, name })).toBeVisible();
  }

  async type(field: Locator, text: string) {
    await this.tap(field);
    await field.press('Control+a');
    if (text.length <= LETTER_BY_LETTER) await field.pressSequentially(text);
    else await this.page.keyboard.insertText(text);
    this.keys += text.length + 1;
  }

  /** Opens the list and picks: two taps. */
  async pick(field: Locator, label: string | RegExp) {
    await field.waitFor();
    const options = await field.locator('option').allTextContents();
    const found = options.find((option) =>
      typeof label === 'string' ? option === label : label.test(option),
    );
    if (found === undefined) throw new Error(`no ${label} among ${options.join(', ')}`);
    await field.selectOption({ label: found });
    this.taps += 2;
  }

  /** Copied in the spreadsheet, pasted here: one key. */
  async paste(field: Locator, text: string) {
    await this.tap(field);
    await this.page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
    await field.press('Control+v');
    this.keys++;
    this.pasted += text.length;
  }
}

/** The sheet as it lies in the shop's binder: ranges down, elements across. One X in row 5 is lost. */
const SHEET = [
  'Range\tB1\tB2\tB3\tC1\tC2\tRatio',
  '1\tX\t\tX\t\t\t3,480',
  '2\tX\tX\t\t\t\t2,573',
  '3\tX\t\t\t\tX\t2,105',
  '4\tX\t\t\tX\t\t1,465',
  '5\t\t\t\tX\t\t1,000',
  '6\t\tX\t\tX\t\t0,659',
  '7\t\t\tX\tX\t\t0,554',
  'R\t\t\tX\t\tX\t-1,800',
  'N\t\t\tX\t\t\t',
  'P\t\t\t?\t\t\t',
].join('\n');

const section = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Sections' }).getByRole('link', { name });
export const frame = (page: Page, name: string) => page.getByRole('group', { name });

/** Unit, chart, train: the seven-range unit with the X of its sheet still lost. */
export async function writeUnit(page: Page): Promise<Hand> {
  const hand = new Hand(page);
  await page.goto('/#/workshop');
  await hand.tap(page.getByRole('button', { name: 'New deck' }));
  await hand.type(page.getByLabel('Unit', { exact: true }), 'Heron 7');

  await hand.go('Apply chart');
  await hand.paste(page.getByLabel('Paste the chart from a spreadsheet', { exact: true }), SHEET);
  await expect(page.getByText('8 ranges and 2 neutral rows, elements B1, B2, B3, C1, and C2.')).toBeVisible();
  await hand.tap(page.getByRole('button', { name: 'Take this in' }));

  await hand.go('Gear train');
  const sets: readonly [string, string, string, [string, RegExp][]][] = [
    ['P1', '43', '109', []],
    ['P2', '40', '72', [['Sun sits with', /^input/], ['Carrier sits with', /P1 ring/]]],
    ['P3', '45', '87', [['Sun sits with', /P2 ring/], ['Carrier sits with', /P1 carrier/], ['Ring sits with', /^output/]]],
  ]; // biome-ignore format: a table reads across
  for (const [id, sun, ring, joints] of sets) {
    await hand.tap(page.getByRole('button', { name: 'Add a simple set' }));
    const set = frame(page, `Gearset ${id}`);
    await hand.type(set.getByLabel('Sun teeth'), sun);
    await hand.type(set.getByLabel('Ring teeth'), ring);
    await hand.type(set.getByLabel('Planets, how many'), '4');
    for (const [label, with_] of joints) await hand.pick(set.getByLabel(label), with_);
  }
  const holds: readonly [string, RegExp][] = [
    ['B1', /^P1 sun/],
    ['B2', /P2 ring/],
    ['B3', /P1 ring/],
  ];
  for (const [id, what] of holds)
    await hand.pick(frame(page, `Element ${id}`).getByLabel('Holds still'), what);
  const joins: readonly [string, RegExp, RegExp][] = [
    ['C1', /^input/, /P1 carrier/],
    ['C2', /P1 carrier/, /P2 ring/],
  ];
  for (const [id, one, other] of joins) {
    const element = frame(page, `Element ${id}`);
    await hand.pick(element.getByLabel('Joins'), one);
    await hand.pick(element.getByLabel('with', { exact: true }), other);
  }
  return hand;
}
