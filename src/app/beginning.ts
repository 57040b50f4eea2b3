/** What is looked up at once, while the page's own script is still on its way: names on this device, a drill under way. */
import { hasNames } from '../storage/learners/databases.ts';
import { type Peeked, peekDrill } from '../storage/peek.ts';
import { BUILD } from './build.ts';
import { words } from './words-in-use.ts';

export const drillUnderWay: Promise<Peeked | undefined> =
  window.location.hash === '#/drill'
    ? peekDrill({ build: BUILD, language: words.language })
    : Promise.resolve(undefined);
export const namesHere = hasNames();
