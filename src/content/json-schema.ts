/** The deck schema for editors: JSON Schema 2020-12, made from the zod schema (`npm run schema`). */
import { deckFile } from './schema.ts';
import { z } from './zod.ts';

/** Text of public/deck.schema.json, line break at the end included. */
export function makeDeckSchema(): string {
  const { $schema, ...schema } = z.toJSONSchema(deckFile, { target: 'draft-2020-12', io: 'input' });
  return `${JSON.stringify({ $schema, $id: 'urn:detent:deck:1', ...schema }, null, 2)}\n`;
}
