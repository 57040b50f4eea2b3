/**
 * Codes seen by a camera. Chromium plays a film in the camera's place: the codes that one device shows, turned,
 * shaded and grainy as off a greasy screen, one after the other, over and over. The same as a photo from a file.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, type Page, test } from '@playwright/test';

/** A film's frame: width and height are even, as 4:2:0 colour wants. */
const WIDTH = 960;
const HEIGHT = 720;

/** Brightness of a picture of the code as a phone would see it, row by row, and the same as a JPEG. */
async function photographed(page: Page, picture: Buffer, tilt: number) {
  const { grey, jpeg } = await page.evaluate(
    async ({ png, width, height, degrees }) => {
      const bytes = Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0));
      const code = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [width, height];
      const draw = canvas.getContext('2d')!;
      draw.fillStyle = '#6b6a63';
      draw.fillRect(0, 0, width, height);
      draw.translate(width / 2, height / 2);
      draw.rotate((degrees * Math.PI) / 180);
      draw.transform(1, 0.05, 0, 0.95, 0, 0);
      const side = height * 0.78;
      draw.drawImage(code, -side / 2, -side / 2, side, side);
      draw.resetTransform();
      const shade = draw.createLinearGradient(0, 0, width, height);
      shade.addColorStop(0, 'rgb(0 0 0 / 0%)');
      shade.addColorStop(1, 'rgb(0 0 0 / 45%)');
      draw.fillStyle = shade;
      draw.fillRect(0, 0, width, height);
      const image = draw.getImageData(0, 0, width, height);
      let seed = 1;
      const light: number[] = [];
      for (let at = 0; at < image.data.length; at += 4) {
        seed = (seed * 48271) % 2147483647;
        const grain = (seed % 31) - 15;
        const level = Math.max(16, Math.min(235, image.data[at]! + grain));
        image.data.fill(level, at, at + 3);
        light.push(level);
      }
      draw.putImageData(image, 0, 0);
      const text = (all: readonly number[]) => {
        let letters = '';
        for (const one of all) letters += String.fromCharCode(one);
        return btoa(letters);
      };
      return { grey: text(light), jpeg: canvas.toDataURL('image/jpeg', 0.6).split(',')[1]! };
    },
    { png: picture.toString('base64'), width: WIDTH, height: HEIGHT, degrees: tilt },
  );
  return { grey: Buffer.from(grey, 'base64'), jpeg: Buffer.from(jpeg, 'base64') };
}

/** A YUV4MPEG2 film, each picture for a second. */
function film(pictures: readonly Buffer[]): Buffer {
  const colour = Buffer.alloc((WIDTH * HEIGHT) / 2, 128);
  const frame = (grey: Buffer) => [Buffer.from('FRAME\n'), grey, colour];
  return Buffer.concat([
    Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F5:1 Ip A1:1 C420jpeg\n`),
    ...pictures.flatMap((grey) => Array.from({ length: 5 }, () => frame(grey)).flat()),
  ]);
}

// The density of a phone's screen.
test.use({ deviceScaleFactor: 3 });

test('an assignment with its deck is a chain of codes: a camera reads them all, a photo reads one', async ({
  page,
  baseURL,
}) => {
  await page.goto('/#/decks');
  await page.getByRole('button', { name: /^Use .*Plover/ }).click();
  await page.goto('/#/assign');
  await page.getByLabel('Name of the group').fill('bench 5');
  await page.getByLabel('Day of class').fill('2030-03-04');
  await page.getByRole('button', { name: 'Make the assignment' }).click();
  const first = page.getByRole('img', { name: /^Code 1 of \d+$/ });
  await expect(first).toBeVisible();
  const of = Number(/\d+$/.exec((await first.getAttribute('aria-label')) ?? '')?.[0]);
  expect(of).toBeGreaterThan(1);

  const photos: Awaited<ReturnType<typeof photographed>>[] = [];
  for (let number = 1; number <= of; number++) {
    const code = page.getByRole('img', { name: `Code ${number} of ${of}` });
    await expect(code.locator('path')).toHaveCount(1);
    photos.push(await photographed(page, await code.screenshot(), number % 2 === 0 ? 9 : -7));
    await page.getByRole('button', { name: 'Next code' }).click();
  }

  const folder = mkdtempSync(join(tmpdir(), 'detent-camera-'));
  const reel = join(folder, 'codes.y4m');
  writeFileSync(reel, film(photos.map(({ grey }) => grey)));
  const { launchOptions } = test.info().project.use;
  const phone = await chromium.launch({
    ...launchOptions,
    args: [
      ...(launchOptions?.args ?? []),
      '--use-fake-device-for-media-stream',
      '--use-fake-ui-for-media-stream',
      `--use-file-for-fake-video-capture=${reel}`,
    ],
  });
  try {
    const learner = await (await phone.newContext({ baseURL: baseURL!, permissions: ['camera'] })).newPage();
    await learner.goto('/#/take');
    await learner.getByRole('button', { name: 'Use the camera' }).click();

    await expect(learner.getByRole('heading', { name: 'An assignment for bench 5' })).toBeVisible({
      timeout: 45_000,
    });

    const other = await (await phone.newContext({ baseURL: baseURL! })).newPage();
    await other.goto('/#/take');
    await other
      .getByLabel('Files or pictures of codes')
      .setInputFiles({ name: 'photo.jpg', mimeType: 'image/jpeg', buffer: photos[0]!.jpeg });
    await expect(other.getByText(`1 code of ${of} read. Still to be read:`)).toBeVisible();
  } finally {
    await phone.close();
    rmSync(folder, { recursive: true, force: true });
  }
});
