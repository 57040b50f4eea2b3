/** Screens that are loaded when they are first opened, together with the words they need. */
import { type ComponentType, lazy } from 'react';
import { words } from './words-in-use.ts';

export const later = <P>(load: () => Promise<ComponentType<P>>) =>
  lazy(async () => {
    const [component] = await Promise.all([load(), words.loadAll()]);
    return { default: component };
  });
