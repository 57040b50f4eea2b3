/** Writes public/deck.schema.json from the deck schema: `npm run schema`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { makeDeckSchema } from '../content/json-schema.ts';

const folder = new URL('../../public/', import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL('deck.schema.json', folder), makeDeckSchema());
