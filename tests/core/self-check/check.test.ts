import { describe, expect, test } from 'vitest';
import { FAMILIES } from '../../../src/core/questions/families/index.ts';
import { USUAL_BLUEPRINT } from '../../../src/core/self-check/blueprint.ts';
import { compareWithLast, EMPTY_BOOK, noteOutcome, recentFacts } from '../../../src/core/self-check/book.ts';
import {
  advance,
  type CheckEvent,
  leftAt,
  type SelfCheck,
  spentAt,
} from '../../../src/core/self-check/check.ts';
import { drawForm, openItem } from '../../../src/core/self-check/form.ts';
import { outcomeOf } from '../../../src/core/self-check/outcome.ts';
import { makeUnit } from '../../../src/core/unit/unit.ts';
import { deckOf, PUBLISHED } from '../../units.ts';

const unit = makeUnit(deckOf(PUBLISHED.find(({ id }) => id === 'lepelletier-6-a')!));
const source = { unit, families: FAMILIES, unseenUnit: () => undefined };
const blueprint = { ...USUAL_BLUEPRINT, questions: 20, minutes: 10 };
const items = drawForm({ ...source, blueprint, recent: new Set(), seed: 1 });

const begun: SelfCheck = {
  id: 'one',
  deck: unit.deck.id,
  revision: 1,
  blueprint,
  seed: 1,
  items,
  startedAt: 0,
  index: 0,
  drafts: {},
  marked: [],
  sure: {},
  spentMs: 0,
  shownAt: 0,
  finishedAt: null,
};
const run = (check: SelfCheck, ...events: CheckEvent[]) => events.reduce(advance, check);
const MINUTE = 60_000;

describe('the clock', () => {
  test('stands while hidden, and after a kill, where that was chosen', () => {
    const check = run(begun, { kind: 'went-to', index: 1, at: MINUTE }, { kind: 'hidden', at: 2 * MINUTE });
    expect(spentAt(check, 9 * MINUTE)).toBe(2 * MINUTE);
    const back = run(check, { kind: 'shown', at: 30 * MINUTE });
    expect(leftAt(back, 31 * MINUTE)).toBe(7 * MINUTE);
    const killed = run(begun, { kind: 'went-to', index: 1, at: MINUTE });
    expect(leftAt(run(killed, { kind: 'shown', at: 90 * MINUTE }), 90 * MINUTE)).toBe(9 * MINUTE);
  });

  test('goes on while hidden, and after a kill, where that was chosen', () => {
    const going = { ...begun, blueprint: { ...blueprint, pauses: false } };
    const check = run(going, { kind: 'hidden', at: 2 * MINUTE }, { kind: 'shown', at: 5 * MINUTE });
    expect(leftAt(check, 5 * MINUTE)).toBe(5 * MINUTE);
    const killed = run(going, { kind: 'went-to', index: 1, at: MINUTE }, { kind: 'shown', at: 90 * MINUTE });
    expect(killed.finishedAt).toBe(90 * MINUTE);
  });

  test('out of time the check ends, and what comes later changes nothing', () => {
    const late = run(begun, { kind: 'went-to', index: 3, at: 11 * MINUTE });
    expect(late).toMatchObject({ finishedAt: 11 * MINUTE, index: 0 });
    expect(run(late, { kind: 'marked', at: 12 * MINUTE })).toBe(late);
  });

  test('no limit, no end; a clock set back counts nothing', () => {
    const free = { ...begun, blueprint: { ...blueprint, minutes: null } };
    expect(leftAt(free, 1e9)).toBeNull();
    expect(run(free, { kind: 'marked', at: 1e9 }).finishedAt).toBeNull();
    expect(spentAt(begun, -5 * MINUTE)).toBe(0);
  });
});

test('back and forth keeps every entry; marks come and go; places outside are refused', () => {
  const draft = { form: 'set', picks: ['A'] } as const;
  const check = run(
    begun,
    { kind: 'entered', draft, at: 1 },
    { kind: 'marked', at: 2 },
    { kind: 'went-to', index: 5, at: 3 },
    { kind: 'marked', at: 4 },
    { kind: 'marked', at: 5 },
    { kind: 'went-to', index: 99, at: 6 },
    { kind: 'went-to', index: 0, at: 7 },
  );
  expect(check).toMatchObject({ index: 0, drafts: { 0: draft }, marked: [0] });
  expect(JSON.parse(JSON.stringify(check))).toEqual(check);
});

describe('the outcome', () => {
  const open = (index: number) => openItem(source, items[index]!);
  const draftsWith = (right: (index: number) => boolean): SelfCheck['drafts'] =>
    Object.fromEntries(
      items.flatMap((_, index) => {
        const { question } = open(index)!;
        const answer = right(index) ? question.answers[0] : question.lures[0]?.answer;
        if (!answer) return [];
        return [[index, answer.form === 'number' ? { form: 'number', text: answer.value } : answer]];
      }),
    );
  const finish = (check: SelfCheck) => ({ ...check, finishedAt: 5 });

  test('counts right of asked in all and by area; what was left open is not right', () => {
    const outcome = outcomeOf(finish({ ...begun, drafts: draftsWith((index) => index % 2 === 0) }), open);
    expect(outcome).toMatchObject({ asked: items.length, right: Math.ceil(items.length / 2) });
    expect(outcome.areas.reduce((sum, { asked }) => sum + asked, 0)).toBe(items.length);
    expect(outcomeOf(finish(begun), open)).toMatchObject({ right: 0, asked: items.length });
    expect(outcomeOf(finish({ ...begun, drafts: draftsWith(() => true) }), open).right).toBe(items.length);
  });

  test('gives no verdict on an area of fewer than ten', () => {
    for (const area of outcomeOf(finish(begun), open).areas) expect(area.enough).toBe(area.asked >= 10);
  });

  test('shows slip-ups with their evidence, and sure-and-wrong apart', () => {
    const drafts = draftsWith(() => false);
    const outcome = outcomeOf(finish({ ...begun, drafts, sure: { 0: true, 1: false } }), open);
    expect(outcome.slipUps.length).toBeGreaterThan(0);
    for (const { slipUp, evidence } of outcome.slipUps)
      for (const { verdict } of evidence) expect(verdict!.slipUps).toContain(slipUp);
    expect(outcome.sureAndWrong.map(({ index }) => index)).toEqual([0]);
  });

  test('the book keeps scores once, compares with the last check of the deck, and knows recent facts', () => {
    const bad = finish({ ...begun, drafts: draftsWith((index) => index < 4) });
    const good = finish({ ...begun, id: 'two', drafts: draftsWith(() => true) });
    const book = noteOutcome(EMPTY_BOOK, bad, outcomeOf(bad, open));
    expect(noteOutcome(book, bad, outcomeOf(bad, open))).toBe(book);
    expect(compareWithLast(EMPTY_BOOK, bad, outcomeOf(bad, open))).toBeNull();
    expect(compareWithLast(book, good, outcomeOf(good, open))).toMatchObject({ beyondError: true });
    expect(recentFacts(book, unit.deck.id)).toEqual(new Set(items.map(({ fact }) => fact)));
    expect(recentFacts(book, 'another')).toEqual(new Set());
  });
});
