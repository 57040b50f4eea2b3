/**
 * A learner who runs inside the page and is as quick as the page lets him. He taps something that fits, checks,
 * waits for the verdict, tells the test what he saw, and goes on only when it has heard. Nothing of this file's
 * surroundings is known in the page: the function is sent there as text.
 */
import type { Shown } from './compare.ts';

declare global {
  interface Window {
    /** Given by the test: resolves when it has noted what was shown. */
    told(shown: Shown): Promise<void>;
  }
}

export async function practiseForEver(): Promise<never> {
  const page = document;
  const pause = () => new Promise((resolve) => setTimeout(resolve, 1));
  const button = (name: RegExp) =>
    [...page.querySelectorAll('button')].find((each) => name.test(each.textContent?.trim() ?? ''));
  const type = (box: HTMLInputElement, text: string) => {
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!.call(box, text);
    box.dispatchEvent(new Event('input', { bubbles: true }));
  };
  const verdict = () => page.querySelector('.verdict');
  const anyOf = <T>(all: readonly T[]): T => all[Date.now() % all.length]!;
  const tapSomething = () => {
    const main = page.querySelector('main')!;
    const box = main.querySelector<HTMLInputElement>('input[type=text]');
    const radios = [...main.querySelectorAll<HTMLInputElement>('.choice input[type=radio]')];
    const ticks = [...main.querySelectorAll<HTMLInputElement>('.choice input[type=checkbox]')];
    const keys = [...main.querySelectorAll<HTMLButtonElement>('button.choice:not(.take-back, :disabled)')];
    const answered = new Set(radios.filter(({ checked }) => checked).map(({ name }) => name));
    // One group at a time: the page draws what was tapped before the next tap.
    const open = radios.find(({ name }) => !answered.has(name))?.name;
    if (open !== undefined) anyOf(radios.filter(({ name }) => name === open)).click();
    else if (box) type(box, String(1 + (Date.now() % 9)));
    else if (ticks.length > 0) anyOf(ticks).click();
    else if (radios.length === 0 && keys.length > 0) anyOf(keys).click();
  };
  for (;;) {
    await pause();
    const place = Number(/\d+/.exec(page.querySelector('.drill-place')?.textContent ?? '')?.[0]);
    const shown = verdict();
    if (shown) {
      await window.told({ place, right: shown.classList.contains('right') });
      button(/^(Next|Finish)$/)?.click();
      while (verdict() === shown) await pause();
      continue;
    }
    const check = button(/^Check$/);
    if (check) {
      check.click();
      for (let waits = 0; waits < 200 && !verdict(); waits++) await pause();
    } else if (Number.isInteger(place)) tapSomething();
    else {
      const way = button(/^Go on$/) ?? button(/^Close$/) ?? button(/^Start$/);
      way?.click();
      // What follows takes its time; nobody presses on and on.
      for (let waits = 0; waits < 1000 && way?.isConnected; waits++) await pause();
    }
  }
}
