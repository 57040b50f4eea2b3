/**
 * The entry. It is small, so that it runs while React and the page are still on their way: what is stored is looked
 * up, and the words are fetched meanwhile.
 */
import '@fontsource/barlow-semi-condensed/latin-500.css';
import '@fontsource/barlow-semi-condensed/latin-700.css';
import '../ui/look.css';
import { UNLOADED } from '../words/unloaded.ts';
import { drillUnderWay } from './beginning.ts';
import { newVersion } from './new-version.ts';
import { words } from './words-in-use.ts';

/** A question that was kept has its sentences with it, as long as nothing is entered: the words come once it is seen. */
async function loadFirstWords() {
  const under = await drillUnderWay;
  if (!under?.atHand || under.drill.draft) await words.loadDrill();
}

async function open() {
  const [{ openPage }] = await Promise.all([import('./page.tsx'), loadFirstWords()]);
  await openPage();
}

/** Without React, which may be what is missing. */
function tellUnloaded() {
  const { note, again } = UNLOADED[words.language];
  const part = (tag: string, className: string, text: string) =>
    Object.assign(document.createElement(tag), { className, textContent: text });
  const sheet = part('div', 'sheet', '');
  const reload = part('button', 'button key', again);
  reload.addEventListener('click', () => window.location.reload());
  sheet.append(part('p', 'note', note), reload);
  sheet.setAttribute('role', 'alert');
  document.getElementById('page')!.replaceChildren(sheet);
}

document.documentElement.lang = words.language;
open().catch((error: unknown) => {
  tellUnloaded();
  newVersion.begin();
  throw error;
});
