/** The page about the format keeps up with the format. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { loadDeck } from '../../src/content/load.ts';
import { RULES } from '../../src/content/rules/index.ts';
import { deckFile } from '../../src/content/schema.ts';
import { z } from '../../src/content/zod.ts';
import { HAZARDS } from '../../src/core/unit/deck.ts';
import { type Loose, sentence } from './base.ts';

const page = readFileSync(new URL('../../docs/deck-format.md', import.meta.url), 'utf8');
const [, example] = /```json\n([\s\S]*?)```/.exec(page)!;
const prose = page.replace(/```json[\s\S]*?```/, '');

function keysOf(schema: Loose): string[] {
  return [
    ...Object.entries<Loose>(schema.properties ?? {}).flatMap(([key, field]) => [key, ...keysOf(field)]),
    ...(schema.items ? keysOf(schema.items) : []),
    ...Object.values<Loose>(schema.$defs ?? {}).flatMap(keysOf),
    ...(schema.enum ?? []),
  ];
}

describe('docs/deck-format.md', () => {
  test('its small deck is in order', () => {
    const loaded = loadDeck(example!);
    const findings = loaded.ok ? loaded.value.warnings : loaded.error;
    expect(findings.map(sentence)).toEqual([]);
  });

  test('names every field and every choice', () => {
    const keys = [...new Set(keysOf(z.toJSONSchema(deckFile)))];
    expect(keys.length).toBeGreaterThan(60);
    expect(keys.filter((key) => !prose.includes(`\`${key}\``))).toEqual([]);
  });

  test('lists every rule with its severity, and every hazard', () => {
    for (const { id, severity } of RULES)
      expect(prose).toMatch(
        new RegExp(`\\n\\| (\`[a-z-]+\`, )*\`${id}\`(, \`[a-z-]+\`)* \\| ${severity} \\|`),
      );
    for (const hazard of HAZARDS) expect(prose).toContain(`\`${hazard}\``);
  });
});
