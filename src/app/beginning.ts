/** What is looked up at once, while the page's own script is still on its way: names on this device, a drill under way. */
import { hasNames } from '../storage/learners/databases.ts';
import { type Peeked, peekDrill } from '../storage/peek.ts';
import { loadFamily } from './one-family.ts';

async function lookForDrill(): Promise<Peeked | undefined> {
  if (window.location.hash !== '#/drill') return undefined;
  const peeked = await peekDrill();
  const item = peeked?.drill.items[peeked.drill.index];
  if (item) void loadFamily(item.family).catch(() => {});
  return peeked;
}

export const drillUnderWay = lookForDrill();
export const namesHere = hasNames();
