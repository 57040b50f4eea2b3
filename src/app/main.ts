/**
 * The entry. It is small, so that it runs while React and the page are still on their way: what is stored is looked
 * up, and the words are fetched meanwhile.
 */
import './beginning.ts';
import '@fontsource/barlow-semi-condensed/latin-500.css';
import '@fontsource/barlow-semi-condensed/latin-700.css';
import '../ui/look.css';
import './new-version.ts';
import { words } from './words-in-use.ts';

async function open() {
  const [{ openPage }] = await Promise.all([import('./page.tsx'), words.loadDrill()]);
  await openPage();
}

void open();
document.documentElement.lang = words.language;
