import { describe, expect, test } from 'vitest';
import { checkDraft } from '../../src/content/draft.ts';
import { openDraft } from '../../src/content/open-draft.ts';
import { randomFrom } from '../../src/core/random.ts';
import { usualUnit } from '../../src/core/workshop/amounts.ts';
import { type DeckDraft, valueAt } from '../../src/core/workshop/draft.ts';
import { drawnLine, seenFace } from '../../src/core/workshop/line.ts';
import { MENTIONED_KINDS, renameMentions } from '../../src/core/workshop/mentions.ts';
import { proveEffect } from '../../src/core/workshop/prove-effect.ts';
import { readRows } from '../../src/core/workshop/rows.ts';
import { assemblyOfDraft } from '../../src/core/workshop/steps.ts';
import { takeChart } from '../../src/core/workshop/take-chart.ts';
import { drawnTrain, freshShaft, membersOn, shaftNames } from '../../src/core/workshop/train.ts';
import { shippedDecks } from '../units.ts';
import { baseDeck } from './base.ts';

/** Everything that is done with a draft on the way to the screen. */
function work(draft: DeckDraft) {
  checkDraft(draft);
  drawnTrain(draft);
  freshShaft(draft);
  membersOn(draft, 'case');
  shaftNames(draft);
  readRows(draft);
  drawnLine(draft);
  (draft.seats ?? []).forEach((_, index) => void seenFace(draft, index));
  (draft.sequences ?? []).forEach((sequence) => void assemblyOfDraft(sequence));
  for (const fit of draft.fits ?? []) for (const reading of fit.readings ?? []) proveEffect(fit, reading);
  usualUnit(draft, ['mm', 'in']);
  for (const kind of MENTIONED_KINDS) renameMentions(draft, kind, 'B1', 'B9');
  takeChart(draft, { elements: [{ id: 'B1' }], ranges: [], neutral: [] });
}

describe('any JSON as a draft', () => {
  test.each([['null', null], ['a list', []], ['a text', 'deck'], ['another program’s', { version: 1 }], ['a newer deck', { detentDeck: 2 }]])(
    '%s is none', (_, value) => {
      expect(openDraft(value)).toBeNull();
    },
  ); // biome-ignore format: a table reads across

  test('a deck is opened as it is', () => {
    for (const deck of shippedDecks()) {
      const { $schema: _, ...plain } = JSON.parse(JSON.stringify(deck));
      expect(openDraft(deck)).toEqual({ draft: plain, dropped: 0 });
    }
  });

  test.each([
    ['an unfinished one too', { unit: 'K', train: { gearsets: [{ sun: { teeth: '4e' } }] } }, { unit: 'K', train: { gearsets: [{ sun: { teeth: '4e' } }] } }, 0],
    ['no object where a deck has one', { train: 5, unit: 'K' }, { unit: 'K' }, 1],
    ['no list where a deck has one', { solenoids: {}, seats: 'x' }, {}, 2],
    ['no object in a list: a blank one keeps its place', { solenoids: [null, { id: 'SA' }, 'x'] }, { solenoids: [{}, { id: 'SA' }, {}] }, 2],
    ['a number where a text is due becomes one', { unit: 7, chart: { ranges: [{ id: 1, ratio: 3.48 }] } }, { unit: '7', chart: { ranges: [{ id: '1', ratio: '3.48' }] } }, 0],
    ['what cannot be one goes', { unit: true, solenoids: [{ id: [], kind: {} }] }, { solenoids: [{}] }, 3],
    ['words that are none of the few stay to be told', { solenoids: [{ kind: 'sideways' }] }, { solenoids: [{ kind: 'sideways' }] }, 0],
  ])('%s', (_, value, draft, dropped) => {
    expect(openDraft({ detentDeck: 1, ...value })).toEqual({ draft: { detentDeck: 1, ...draft }, dropped });
  }); // biome-ignore format: a table reads across

  test('whatever stands anywhere in it, it can be worked on', () => {
    const random = randomFrom(7);
    const junk: readonly unknown[] = [null, 5, true, [], {}, '', 'x', [null], { id: 3 }, -1.5];
    const paths: (string | number)[][] = [];
    const walk = (value: unknown, path: (string | number)[]) => {
      if (path.length > 0) paths.push(path);
      if (Array.isArray(value)) value.forEach((entry, index) => { walk(entry, [...path, index]); });
      else if (typeof value === 'object' && value !== null) for (const [key, entry] of Object.entries(value)) walk(entry, [...path, key]);
    };
    const deck = baseDeck();
    walk(deck, []);
    for (let turn = 0; turn < 120; turn++) {
      const broken = structuredClone(deck);
      for (let count = 0; count < 3; count++) {
        const path = random.pick(paths);
        const holder = valueAt(broken, path.slice(0, -1));
        if (path[0] !== 'detentDeck' && typeof holder === 'object' && holder !== null && path.at(-1)! in holder)
          (holder as Record<string | number, unknown>)[path.at(-1)!] = random.pick(junk);
      }
      const opened = openDraft(broken);
      if (opened) work(opened.draft);
    }
  }); // biome-ignore format: a walk reads across
});
