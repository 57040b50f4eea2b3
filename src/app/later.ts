/** Screens that are loaded when they are first opened, together with the words they need. */
import { type ComponentType, lazy } from 'react';
import { languageInUse } from './language.ts';
import { openWords } from './load-words.ts';

/** Those of this page. */
export const words = openWords(languageInUse());

export const later = <P>(load: () => Promise<ComponentType<P>>) =>
  lazy(async () => {
    const [component] = await Promise.all([load(), words.loadAll()]);
    return { default: component };
  });
