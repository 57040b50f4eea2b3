/** What screens need of this folder. */
export { sentenceOf } from './finding.ts';
export { textOfFile } from './json.ts';
export { type Loaded, loadDeck } from './load.ts';
