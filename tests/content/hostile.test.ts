/** Decks from anyone, beyond loading them (robust.test.ts): opened to be edited, drilled on, and as large as may be. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { questionInWords } from '../../src/cli/question-text.ts';
import { checkDraft } from '../../src/content/draft.ts';
import { MAX_VALUES, readJson } from '../../src/content/json.ts';
import { loadDeck, MAX_FINDINGS } from '../../src/content/load.ts';
import { openDraft } from '../../src/content/open-draft.ts';
import { deckFile } from '../../src/content/schema.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { applyEdit, type DeckDraft, type Edit } from '../../src/core/workshop/draft.ts';
import { finishDraft, writeDeck } from '../../src/core/workshop/finish.ts';
import { drawnLine } from '../../src/core/workshop/line.ts';
import { dropMentions, MENTIONED_KINDS, renameMentions } from '../../src/core/workshop/mentions.ts';
import { proveEffect } from '../../src/core/workshop/prove-effect.ts';
import { readRows } from '../../src/core/workshop/rows.ts';
import { assemblyOfDraft, stepsFromLines } from '../../src/core/workshop/steps.ts';
import { drawnTrain, shaftNames, shaftsOfDraft } from '../../src/core/workshop/train.ts';
import { makeSay } from '../../src/words/words.ts';
import { type Change, changed, changes, expectCleanPrototypes, NASTY, runs } from '../hostile.ts';
import { shippedDecks } from '../units.ts';
import { baseDeck, sentence } from './base.ts';

const base = baseDeck();
const manyChanges = (most: number) => fc.array(changes, { minLength: 1, maxLength: most });

/** The draft of a file with these changes, as the workshop opens it; null when it is no deck to it. */
function opened(list: readonly Change[]): DeckDraft | null {
  const json = readJson(JSON.stringify(changed(base, list)));
  if (!json.ok) return null;
  return openDraft(json.value.value)?.draft ?? null;
}

/** Everything the workshop reckons while somebody types. */
function reckon(draft: DeckDraft) {
  const { missing, found, deck } = checkDraft(draft);
  for (const finding of [...missing, ...found].slice(0, 20)) expect(sentence(finding)).not.toBe('');
  readRows(draft);
  drawnTrain(draft);
  drawnLine(draft);
  shaftNames(draft);
  shaftsOfDraft(draft);
  for (const sequence of draft.sequences ?? []) assemblyOfDraft(sequence);
  for (const fit of draft.fits ?? []) for (const reading of fit.readings ?? []) proveEffect(fit, reading);
  const text = writeDeck(finishDraft(draft));
  expect(loadDeck(text).ok).toBe(deck !== null);
}

describe('decks opened to be edited', () => {
  test('whatever was in the file, the workshop reckons with it and nothing throws', () => {
    let drafts = 0;
    fc.assert(
      fc.property(manyChanges(6), (list) => {
        const draft = opened(list);
        expectCleanPrototypes();
        if (!draft) return;
        drafts++;
        reckon(draft);
        expectCleanPrototypes();
      }),
      runs(60),
    );
    expect(drafts).toBeGreaterThan(20);
  });

  test('edits at any place, of any value, leave the draft before as it was', () => {
    const step = fc.oneof(fc.constantFrom('train', 'chart', 'ranges', 'gearsets', 'sun', ...NASTY.slice(0, 6)), fc.nat(3));
    const at = fc.array(step, { maxLength: 4 });
    const value = fc.oneof(fc.jsonValue({ maxDepth: 1 }), fc.constantFrom(...NASTY));
    const edit: fc.Arbitrary<Edit> = fc.oneof(
      fc.record({ kind: fc.constant('set' as const), at, value }),
      fc.record({ kind: fc.constant('insert' as const), at, value }),
      fc.record({ kind: fc.constant('remove' as const), at }),
      fc.record({ kind: fc.constant('move' as const), at, from: fc.integer(), to: fc.nat(3) }),
    );
    const before = JSON.stringify(base);
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 5 }), fc.constantFrom(...MENTIONED_KINDS), fc.constantFrom(...NASTY), (list, kind, name) => {
        const after = list.reduce((draft, one) => applyEdit(draft, one), base as DeckDraft);
        if (list.every((one) => one.kind !== 'all' && one.at.length > 0)) {
          const renamed = renameMentions(opened([]) ?? {}, kind, 'C1', name);
          dropMentions(renamed, kind, name);
        }
        expect(JSON.stringify(base)).toBe(before);
        expect(typeof JSON.stringify(after ?? null)).toBe('string');
        expectCleanPrototypes();
      }),
      runs(150),
    );
  }); // biome-ignore format: arbitraries

  test('lines pasted for steps: any, and very many alike', () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(fc.constantFrom(...NASTY, ' / ', '1. x / y'), fc.string())), (lines) => {
        const steps = stepsFromLines(lines.join('\n'), []);
        expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
        expectCleanPrototypes();
      }),
      runs(100),
    );
    const alike = stepsFromLines('Turn it.\n'.repeat(3000), []);
    expect(new Set(alike.map(({ id }) => id)).size).toBe(3000);
    const [blanks] = stepsFromLines(`a${' '.repeat(200_000)}b / c`, []);
    expect(blanks).toMatchObject({ text: 'a b', turned: 'c' });
  });
});

describe('decks that pass the checks', () => {
  test('are drilled on without a fault, whatever is written in them', () => {
    let asked = 0;
    const [smallest] = shippedDecks().sort((a, b) => JSON.stringify(a).length - JSON.stringify(b).length);
    fc.assert(
      fc.property(fc.nat(1), manyChanges(2), fc.nat(), (which, list, seed) => {
        const loaded = loadDeck(JSON.stringify(changed(which ? base : smallest, list)));
        if (!loaded.ok) return;
        const { deck, unit } = loaded.value;
        const say = makeSay(deck);
        // A fourth of the families at a time.
        for (const family of FAMILIES.filter((_, index) => (index + seed) % 4 === 0)) {
          const facts = family.facts(unit);
          if (facts.length === 0) continue;
          const question = ask(unit, family, seed, facts[seed % facts.length]);
          if (!question) continue;
          asked++;
          expect(questionInWords(question, unit, say)).not.toContain('undefined');
        }
        expectCleanPrototypes();
      }),
      runs(40),
    );
    expect(asked).toBeGreaterThan(10);
  });
});

describe('decks as large as may be', () => {
  /** Lists of empty records, as deep as the shape goes: every one lacks what it needs. */
  const filled = (levels: readonly (readonly [string, number])[]): unknown => {
    const [[field, count] = ['', 0], ...rest] = levels;
    if (count === 0) return {};
    return { [field]: Array.from({ length: count }, () => filled(rest)) };
  };

  test.each([
    [[['sequences', 40], ['steps', 60], ['after', 7]]],
    [[['stacks', 40], ['items', 60], ['looks', 7]]],
    [[['fits', 60], ['parts', 60], ['thickness', 4]]],
    [[['fits', 60], ['readings', 40], ['x', 7]]],
    [[['cautions', 200], ['attachedTo', 60]]],
  ] as [string, number][][][])('%j full of empty records are refused, and some hundreds of findings told', (levels) => {
    const text = JSON.stringify({ detentDeck: 1, ...(filled(levels) as object) });
    const loaded = loadDeck(text);
    expect(!loaded.ok && loaded.error.length).toBeLessThanOrEqual(MAX_FINDINGS + 1);
    const json = readJson(text);
    if (json.ok) expect(openDraft(json.value.value)).not.toBeNull();
  }); // biome-ignore format: a table

  test('no shape finds more faults than the stack of a browser has room for', () => {
    // 65,536 arguments are the fewest that a browser's engine takes in one call; faults are handed on as such.
    let most = 0;
    for (const levels of [
      [['sequences', 9], ['steps', 200], ['after', 4]],
      [['sequences', 40], ['steps', 200]],
      [['fits', 60], ['parts', 60]],
      [['fits', 60], ['readings', 60]],
    ] as [string, number][][]) {
      const text = JSON.stringify({ detentDeck: 1, ...(filled(levels) as object) });
      const json = readJson(text);
      if (!json.ok) throw new Error('refused before its shape is looked at');
      most = Math.max(most, deckFile.safeParse(json.value.value).error!.issues.length);
    }
    expect(most).toBeGreaterThan(15_000);
    expect(most).toBeLessThan(65_536);
    expect(MAX_VALUES * 3).toBeLessThan(65_536);
  }); // biome-ignore format: a table
});
