/** Families on trouble codes. */
import type { Family } from '../../question.ts';
import { codeRoots } from './code-roots.ts';
import { codeWatches } from './code-watches.ts';
import { codesThatSet } from './codes-that-set.ts';

export const ABOUT_CODES: readonly Family[] = [codeWatches, codesThatSet, codeRoots];
