/** Every family, by subject. Adding one: a file, its test, a line here, its words (docs/families.md). */
import type { Family } from '../question.ts';
import { rangeElements } from './range-elements.ts';

export const FAMILIES: readonly Family[] = [rangeElements];
