/**
 * Looks a screen over as it stands: on a narrow phone in both themes, and with letters twice as large. What is
 * measured is what the page promises: every check of axe and body contrast of 7:1, answers of 56 px with 12 px
 * between them, no sideways scrolling, nothing cut off, nothing that moves, marks that are words as well as colours.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

export const NARROW = { width: 320, height: 640 };
/** A common phone; with letters twice as large it shows as much as one of 195 px. */
const COMMON = { width: 390, height: 844 };

/** Root size of letters as the page sets it, in px, and twice that. */
const TWICE = '34px';

const TARGET = 56;
const GAP = 12;

const axe = async (page: Page, rules?: string[]) => {
  const builder = new AxeBuilder({ page }).options({
    rules: { 'color-contrast-enhanced': { enabled: true } },
  });
  const { violations } = await (rules ? builder.withRules(rules) : builder).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 200)).join(' ')}`);
};

/** Drawings find out after they are laid out, in the page's own letters, whether they are wider than the page. */
async function settled(page: Page) {
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.waitForFunction(() =>
    [...document.querySelectorAll('.dr-scroll')].every(
      (frame) => frame.scrollWidth <= frame.clientWidth + 1 || frame.hasAttribute('tabindex'),
    ),
  );
}

/** What is too wide, cut off or spilling over, in words. */
const spills = (page: Page) =>
  page.evaluate(() => {
    const root = document.documentElement;
    const nameOf = (element: Element) =>
      `${element.tagName.toLowerCase()}.${element.getAttribute('class') ?? ''} "${element.textContent?.slice(0, 40)}"`;
    const seen = [...document.querySelectorAll<HTMLElement>('#page *')].filter(
      (element) =>
        element.checkVisibility() &&
        !element.closest('.unseen, .dr-unseen, svg, .dr-scroll, input, textarea') &&
        // Words for ears only stand in a single pixel.
        element.offsetWidth > 1,
    );
    const cut = seen.filter((element) => {
      const { overflowX, overflowY } = getComputedStyle(element);
      const hides = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
      return (
        (hides(overflowX) && element.scrollWidth > element.clientWidth + 1) ||
        (hides(overflowY) && element.scrollHeight > element.clientHeight + 1)
      );
    });
    const over = seen.filter(
      (element) =>
        element.matches('button, a, .button, .choice, .placed, summary, h1, h2, h3, dd, dt, label, p') &&
        getComputedStyle(element).display !== 'inline' &&
        element.clientWidth > 0 &&
        element.scrollWidth > element.clientWidth + 2,
    );
    return [
      ...(root.scrollWidth > root.clientWidth
        ? seen
            .filter((element) => element.getBoundingClientRect().right > root.clientWidth + 1)
            .slice(-3)
            .map((element) => `page ${root.scrollWidth} wide: ${nameOf(element)}`)
        : []),
      ...cut.map((element) => `cut off: ${nameOf(element)}`),
      ...over.map((element) => `spills over: ${nameOf(element)}`),
    ];
  });

/** Answers too small for a thumb in a glove, or too near each other. */
const misses = (page: Page) =>
  page.evaluate(
    ([target, gap]) => {
      const nameOf = (element: Element) => `${element.className} "${element.textContent?.slice(0, 30)}"`;
      const visible = (selector: string) =>
        // Forms of the workshop are for a desk.
        [...document.querySelectorAll<HTMLElement>(selector)].filter(
          (element) => element.checkVisibility() && !element.closest('.workshop'),
        );
      const small = visible(
        '.choice, .placed, .number input, .number .button, .button.key, .drill-foot .button',
      ).filter((element) => {
        const { width, height } = element.getBoundingClientRect();
        return height < target! - 0.5 || width < target! - 0.5;
      });
      const answers = visible('.choice, .placed, .number input, .number .button');
      const boxes = answers.map((element) => ({ element, box: element.getBoundingClientRect() }));
      const near: string[] = [];
      for (const [index, { element, box }] of boxes.entries())
        for (const { element: other, box: next } of boxes.slice(index + 1)) {
          const across = Math.max(next.left - box.right, box.left - next.right);
          const down = Math.max(next.top - box.bottom, box.top - next.bottom);
          if (Math.max(across, down) < gap! - 0.5) near.push(`${nameOf(element)} and ${nameOf(other)}`);
        }
      return [
        ...small.map(
          (element) => `small: ${nameOf(element)} ${Math.round(element.getBoundingClientRect().height)}`,
        ),
        ...near.map((pair) => `near: ${pair}`),
      ];
    },
    [TARGET, GAP],
  );

/** What moves though less motion is asked for. */
const moves = (page: Page) =>
  page.evaluate(() => [
    ...document.getAnimations().map((animation) => `animation ${animation.playState}`),
    ...[...document.querySelectorAll('*')].flatMap((element) => {
      const { transitionDuration, animationName, scrollBehavior } = getComputedStyle(element);
      const still =
        /^0s(, 0s)*$/.test(transitionDuration) && animationName === 'none' && scrollBehavior === 'auto';
      return still ? [] : [`${element.className}: ${transitionDuration} ${animationName} ${scrollBehavior}`];
    }),
  ]);

/** What is told by colour or hatching without a word or a sign beside it. */
const colourOnly = (page: Page) =>
  page.evaluate(() => {
    const bare = (selector: string, has: (element: Element) => boolean) =>
      [...document.querySelectorAll(selector)]
        .filter((element) => !has(element))
        .map((element) => `${selector}: ${element.textContent?.slice(0, 40)}`);
    const worded = (element: Element) => (element.querySelector('.choice-mark')?.textContent ?? '') !== '';
    return [
      ...bare('.choice.was-right, .choice.was-wrong, .place.was-wrong', worded),
      ...bare('.verdict', (element) => (element.querySelector('strong')?.textContent ?? '') !== ''),
      ...bare('.item-key.answered, .item-key.marked', (element) => element.hasAttribute('aria-label')),
      ...bare('[aria-invalid="true"]', (element) => element.hasAttribute('aria-describedby')),
    ];
  });

/** The colours that words have on what they stand on, as ratios (WCAG 2.2, contrast ratio). */
export const lowContrasts = (page: Page) =>
  page.evaluate(() => {
    const probe = document.createElement('i');
    document.body.append(probe);
    const light = (name: string) => {
      probe.style.color = `var(${name})`;
      const [r, g, b] = getComputedStyle(probe)
        .color.match(/[\d.]+/g)!
        .map((value) => {
          const part = Number(value) / 255;
          return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
        });
      return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
    };
    const low: string[] = [];
    for (const [ink, papers] of [
      ['--ink', ['--paper', '--paper-raised', '--dye-soft']],
      ['--ink-soft', ['--paper', '--paper-raised', '--dye-soft']],
      ['--dye', ['--paper', '--paper-raised']],
      ['--dye-ink', ['--dye']],
    ] as const)
      for (const paper of papers) {
        const [dark, bright] = [light(ink), light(paper)].sort((a, b) => a - b);
        const ratio = (bright! + 0.05) / (dark! + 0.05);
        if (ratio < 7) low.push(`${ink} on ${paper}: ${ratio.toFixed(2)}`);
      }
    probe.remove();
    return low;
  });

const COLOURS = ['color-contrast', 'color-contrast-enhanced', 'link-in-text-block'];

/** Looks the screen over and puts it back on the narrow phone, in the light. */
export async function inspect(page: Page, where: string): Promise<void> {
  await page.setViewportSize(NARROW);
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible({ timeout: 30_000 });
  await settled(page);
  const found: Record<string, readonly string[]> = {
    axe: await axe(page),
    narrow: await spills(page),
    thumbs: await misses(page),
    moving: await moves(page),
    'colour only': await colourOnly(page),
  };
  await page.emulateMedia({ colorScheme: 'dark', reducedMotion: 'reduce' });
  found.dark = await axe(page, COLOURS);
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.setViewportSize(COMMON);
  await page.evaluate((size) => {
    document.documentElement.style.fontSize = size;
  }, TWICE);
  await settled(page);
  found['twice as large'] = await spills(page);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '';
  });
  await page.setViewportSize(NARROW);
  const wrong = Object.entries(found).flatMap(([what, list]) => list.map((one) => `${what}: ${one}`));
  expect.soft(wrong, where).toEqual([]);
}

/** Everything that folds, unfolded. */
export const unfold = (page: Page) =>
  page.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
