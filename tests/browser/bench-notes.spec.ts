/** Notes at the bench, on a phone without a network: kept at once, the photo without its place, then a deck's entry. */
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import type { Deck } from '../../src/core/unit/deck.ts';
import type { StoredNote } from '../../src/storage/workshop.ts';
import { Hand } from './hand.ts';
import { rowsOf } from './practice.ts';

/** Where the photo was taken, as a phone writes it: 48° 8′ 14″ N, 11° 34′ 31″ E. */
function gpsSegment(): Buffer {
  const tiff = Buffer.alloc(128);
  tiff.write('II*\0', 0, 'latin1');
  tiff.writeUInt32LE(8, 4);
  const entry = (at: number, tag: number, type: number, count: number, value: number | string) => {
    tiff.writeUInt16LE(tag, at);
    tiff.writeUInt16LE(type, at + 2);
    tiff.writeUInt32LE(count, at + 4);
    if (typeof value === 'string') tiff.write(value, at + 8, 'latin1');
    else tiff.writeUInt32LE(value, at + 8);
  };
  // The first directory points to that of the place.
  tiff.writeUInt16LE(1, 8);
  entry(10, 0x8825, 4, 1, 26);
  tiff.writeUInt16LE(4, 26);
  entry(28, 1, 2, 2, 'N\0');
  entry(40, 2, 5, 3, 80);
  entry(52, 3, 2, 2, 'E\0');
  entry(64, 4, 5, 3, 104);
  for (const [index, number] of [48, 8, 14, 11, 34, 31].entries()) {
    tiff.writeUInt32LE(number, 80 + index * 8);
    tiff.writeUInt32LE(1, 84 + index * 8);
  }
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([head, body]);
}

/** Markers of the segments before the picture itself: ITU T.81, annex B. */
function segmentsOf(jpeg: Buffer): number[] {
  expect(jpeg.readUInt16BE(0)).toBe(0xffd8);
  const markers: number[] = [];
  for (let at = 2; at < jpeg.length; at += 2 + jpeg.readUInt16BE(at + 2)) {
    expect(jpeg[at]).toBe(0xff);
    markers.push(jpeg[at + 1]!);
    if (jpeg[at + 1] === 0xda) break;
  }
  return markers;
}

const APP1 = 0xe1;
const APP2 = 0xe2;

async function photo(page: Page): Promise<Buffer> {
  const url = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [2400, 1800];
    const context = canvas.getContext('2d')!;
    for (let row = 0; row < 18; row++) {
      context.fillStyle = `hsl(${row * 20} 60% 50%)`;
      context.fillRect(0, row * 100, 2400, 100);
    }
    return canvas.toDataURL('image/jpeg', 0.9);
  });
  const plain = Buffer.from(url.slice(url.indexOf(',') + 1), 'base64');
  return Buffer.concat([plain.subarray(0, 2), gpsSegment(), plain.subarray(2)]);
}

const notesIn = async (page: Page): Promise<StoredNote[]> =>
  (await rowsOf<{ key: string; value: StoredNote }>(page, 'settings'))
    .filter(({ key }) => key.startsWith('bench-note:'))
    .map(({ value }) => value);

test('taken offline with a photo, kept through a kill, and made a seat with its photo beside it', async ({
  page,
  context,
}) => {
  test.setTimeout(120_000);
  await page.goto('/#/workshop');
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.reload();
  const taken = await photo(page);
  await context.setOffline(true);
  await page.getByRole('link', { name: 'Bench notes' }).click();
  await expect(page.getByRole('heading', { name: 'Bench notes' })).toBeVisible();
  await page.getByRole('button', { name: 'New note' }).click();
  await page.getByLabel('What it is').fill('thrust washer W2');
  await page.getByRole('radio', { name: 'the rear' }).click();
  await page.getByLabel('What you see, or do').pressSequentially('three ta');
  await page.getByLabel('Thickness, or what you read', { exact: true }).fill('1,78');
  await page.getByLabel('Of which unit').fill('Heron 7');
  // Where no browser can listen on the device, the keyboard's own microphone is named, and what it may do.
  await expect(page.getByText(/use the microphone on your phone’s keyboard/)).toBeVisible();

  await test.step('the photo is small, upright, and knows no place', async () => {
    expect(segmentsOf(taken)).toContain(APP1);
    expect(taken.includes('Exif')).toBe(true);
    await page
      .getByLabel('Take a photo')
      .setInputFiles({ name: 'washer.jpg', mimeType: 'image/jpeg', buffer: taken });
    await expect(page.getByRole('img', { name: 'Photo: thrust washer W2' })).toBeVisible();
    await expect.poll(async () => (await notesIn(page))[0]?.photo ?? null).not.toBeNull();
    const [note] = await notesIn(page);
    const kept = Buffer.from(note!.photo!.slice(note!.photo!.indexOf(',') + 1), 'base64');
    const markers = segmentsOf(kept);
    // JFIF's own header and the screen's colours (APP2) are all that the browser writes; EXIF, XMP and IPTC have others.
    expect(markers.filter((marker) => marker >= APP1 && marker <= 0xef && marker !== APP2)).toEqual([]);
    expect(markers.includes(APP2)).toBe(kept.includes('ICC_PROFILE'));
    expect(markers).not.toContain(0xfe);
    expect(kept.includes('Exif')).toBe(false);
    expect(kept.length).toBeLessThan(taken.length);
    const size = await page
      .getByRole('img', { name: 'Photo: thrust washer W2' })
      .evaluate(async (img: HTMLImageElement) => {
        await img.decode();
        return [img.naturalWidth, img.naturalHeight];
      });
    expect(size).toEqual([1280, 960]);
  });

  await test.step('the page is killed in the middle of a word, and nothing is lost', async () => {
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    const address = page.url();
    await page.goto('about:blank');
    await page.goto(address);
    await expect(page.getByText(/three ta; 1,78 mm; Heron 7/)).toBeVisible();
    await page.getByRole('button', { name: 'Change thrust washer W2' }).click();
    await page.getByLabel('What you see, or do').press('End');
    await page.getByLabel('What you see, or do').pressSequentially('bs');
    await expect.poll(async () => (await notesIn(page))[0]?.text).toBe('three tabs');
  });

  await test.step('at the desk it becomes a seat', async () => {
    await page.goto('/#/workshop');
    await page.getByRole('button', { name: 'New deck' }).click();
    await page.getByLabel('Unit', { exact: true }).fill('Heron 7');
    const hand = new Hand(page);
    await hand.go('Bench notes');
    await expect(page.getByText('One note waits.')).toBeVisible();
    await hand.pick(page.getByLabel('Make it'), 'a bearing, washer or seal');
    await expect(page.getByText('thrust washer W2 is in the deck now: Bearings and seals.')).toBeVisible();
    await hand.go('Bearings and seals');
    const seat = page.getByRole('group', { name: /^Seat T1/ });
    await expect(seat.getByLabel('What the shop calls it').first()).toHaveValue('thrust washer W2');
    await expect(seat.getByRole('radio', { name: 'the rear' })).toBeChecked();
    await expect(seat.getByLabel(/^What tells it/)).toHaveValue('three tabs');
    await seat.getByText(/one bench note/).click();
    await expect(seat.getByRole('img', { name: 'Photo: thrust washer W2' })).toBeVisible();
    const settings = await rowsOf<{ key: string; value: { text: string } }>(page, 'settings');
    const draft = settings.find(({ key }) => key.startsWith('workshop-draft:'))!;
    const deck = JSON.parse(draft.value.text) as Deck;
    expect(deck.seats?.[0]).toMatchObject({
      viewedFrom: 'rear',
      size: { thickness: { value: '1.78', unit: 'mm' } },
    });
    // The photo stays on the device: a deck file is small enough for codes.
    expect(draft.value.text).not.toContain('base64');
  });
});
