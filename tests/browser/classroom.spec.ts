/** A class without a server, in two real browsers: assign, take, drill, hand in, collect. */
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { answerOnce, attemptsIn, goOn, rowsOf } from './practice.ts';

/** What a download holds. */
async function downloaded(page: Page, press: () => Promise<void>): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), press()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks).toString('utf8');
}

const complaintsOf = (page: Page): string[] => {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return complaints;
};

const isoDay = (days: number) => new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

async function assign(page: Page, group: string) {
  await page.goto('/#/assign');
  await page.getByLabel('Name of the group').fill(group);
  await page.getByLabel('Day of class').fill(isoDay(3));
  await page.getByLabel(/^Names you expect/).fill('Ada\nBo');
}

test('a class without a server: assign, take, drill, flag, hand in, collect', async ({ page, browser }) => {
  const phone: BrowserContext = await browser.newContext({ viewport: { width: 360, height: 740 } });
  const learner = await phone.newPage();
  const complaints = [...complaintsOf(page), ...complaintsOf(learner)];

  const file = await test.step('the instructor makes an assignment and saves it as a file', async () => {
    await assign(page, 'bench 2');
    await page.getByRole('button', { name: 'Make the assignment' }).click();
    await expect(page.getByRole('heading', { name: 'Assignment of bench 2' })).toBeVisible();
    return downloaded(page, () => page.getByRole('button', { name: /^Save the file/ }).click());
  });

  await test.step('a learner takes the file in, and the drill asks it', async () => {
    await learner.goto('/#/take');
    await learner
      .getByLabel('Files or pictures of codes')
      .setInputFiles({ name: 'assignment.json', mimeType: 'application/json', buffer: Buffer.from(file) });
    await learner.getByRole('button', { name: 'Take it' }).click();
    await expect(learner.getByText('Taken in.')).toBeVisible();
    await learner.getByRole('link', { name: 'To the drill' }).click();
    await expect(learner.getByText(/^For bench 2: \d+ facts/)).toBeVisible();
    await expect(learner.getByText('days to class')).toBeVisible();
  });

  await test.step('one question is answered and flagged with no network', async () => {
    await learner.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await learner.getByRole('button', { name: 'Start' }).click();
    await expect(learner.getByRole('button', { name: /^Check/ })).toBeVisible();
    await answerOnce(learner, true);
    await phone.setOffline(true);
    await learner.getByText('Does the unit on the bench say otherwise?').click();
    await learner.getByLabel('What is wrong, in your words').fill('Mine has a red clip');
    await learner.getByRole('button', { name: 'Flag it' }).click();
    await expect(learner.getByText(/goes to your instructor with your next report/)).toBeVisible();
    await phone.setOffline(false);
    await goOn(learner);
    await learner.getByRole('button', { name: 'Stop' }).click();
  });

  const link = await test.step('the report goes as a link', async () => {
    await learner.getByRole('link', { name: 'Hand in a report' }).click();
    await expect(learner.getByText('One answer, one flag.')).toBeVisible();
    await learner.getByLabel(/^Your name/).fill('Ada');
    await learner.getByRole('button', { name: 'Make the report' }).click();
    return learner.getByLabel(/^The link/).inputValue();
  });

  await test.step('the instructor opens the link, and the board shows the answer and the flag', async () => {
    await page.goto('about:blank');
    await page.goto(link);
    await expect(page.getByText(/^Ada: one answer, one flag\. Taken in\. The seal is whole/)).toBeVisible();
    await page.getByRole('link', { name: 'Board and reports' }).click();
    await expect(page.getByText('Nothing came from Bo.')).toBeVisible();
    await expect(page.getByText('Mine has a red clip')).toBeVisible();
    const [report] = await rowsOf<{ text: string; learner: string }>(page, 'reports');
    const [answer] = await attemptsIn(learner);
    expect(report!.text).toContain(answer!.id);
    await page.getByText('Ada', { exact: true }).click();
    await expect(page.getByText(/^Sealed by one device: [0-9A-F]{4} [0-9A-F]{4}\.$/)).toBeVisible();
  });

  await test.step('a second report joins the first', async () => {
    await learner.goto('/#/');
    await learner.getByRole('button', { name: 'Go on' }).click();
    await expect(learner.getByRole('button', { name: /^Check/ })).toBeVisible();
    await answerOnce(learner, false);
    await learner.goto('/#/report');
    await expect(learner.getByText('2 answers, one flag.')).toBeVisible();
    await learner.getByRole('button', { name: 'Make the report' }).click();
    const again = await downloaded(learner, () =>
      learner.getByRole('button', { name: /^Save the file/ }).click(),
    );
    await page.getByText('Take in reports').click();
    await page
      .getByLabel('Files or pictures of codes')
      .setInputFiles({ name: 'report.json', mimeType: 'application/json', buffer: Buffer.from(again) });
    await expect(page.getByText(/^Ada: 2 answers, one flag\. Taken in/)).toBeVisible();
    await expect(page.getByText(/^2 answers on one day/)).toBeVisible();
  });
  expect(complaints).toEqual([]);
  await phone.close();
});

test('an assignment without its deck is one code, read off a picture by another device', async ({
  page,
  browser,
}) => {
  await assign(page, 'bench 3');
  await page.getByLabel('Put the deck in as well').uncheck();
  await page.getByRole('button', { name: 'Make the assignment' }).click();
  const code = page.getByRole('img', { name: 'Code 1 of 1' });
  await expect(code).toBeVisible();
  const picture = await code.screenshot();
  const other = await browser.newContext();
  const learner = await other.newPage();
  await learner.goto('/#/take');
  await learner
    .getByLabel('Files or pictures of codes')
    .setInputFiles({ name: 'code.png', mimeType: 'image/png', buffer: picture });
  await expect(learner.getByRole('heading', { name: 'An assignment for bench 3' })).toBeVisible();
  await other.close();
});
