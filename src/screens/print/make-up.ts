/**
 * Make-up sheets: questions for one learner on paper, kept so that the marks can be typed in when it comes back.
 * What is typed in becomes a report of its own, sealed by this device, and joins the learner's log like any other.
 */
import { MAKE_UP_FACTS, type MakeUp, type Person } from '../../core/group/board.ts';
import { type Attempt, draftAttempt } from '../../core/memory/attempt.ts';
import type { Fact } from '../../core/questions/facts.ts';
import { judge } from '../../core/questions/judge.ts';
import type { Answer, AnswerSpace, Question } from '../../core/questions/question.ts';
import { questionOf } from '../../core/questions/reopen.ts';
import { seedOf } from '../../core/random.ts';
import { pass, type Result } from '../../core/result.ts';
import { drawFacts, makeSheet } from '../../core/sheet/sheet.ts';
import type { Unit } from '../../core/unit/unit.ts';
import { sealReport, writeReport } from '../../exchange/message.ts';
import { readIncoming } from '../../exchange/read.ts';
import { makeDeviceKey } from '../../exchange/seal.ts';
import type { StoredSheet } from '../../storage/classroom-rows.ts';
import type { StoreTrouble } from '../../storage/trouble.ts';
import { collectReport } from '../group/collect.ts';
import type { OpenedGroup } from '../group/open-group.ts';
import type { Services } from '../services.ts';

/** What somebody is asked from whom nothing came: facts with a caution first, then some from every area. */
export function absentMakeUp(facts: readonly Fact[], seed: number): MakeUp {
  const drawn = drawFacts(facts, facts.length, seed);
  const ordered = [...drawn.filter((fact) => fact.cautioned), ...drawn.filter((fact) => !fact.cautioned)];
  return { reason: 'nothing-answered', facts: ordered.slice(0, MAKE_UP_FACTS).map(({ id }) => id) };
}

/** Short enough to be written on paper and read out: "K3Q9". */
const sheetNumber = (id: string): string =>
  (seedOf('sheet', id) >>> 0).toString(36).toUpperCase().padStart(4, '0').slice(-4);

/** A new sheet of the facts the person needs; it is not kept yet. */
export function newSheet(
  { now, newId }: Services,
  { assignment, unit, facts }: Pick<OpenedGroup, 'assignment' | 'unit' | 'facts'>,
  person: Pick<Person, 'learner' | 'name'>,
  makeUp: MakeUp,
): StoredSheet {
  const id = sheetNumber(newId());
  const wanted = makeUp.facts.flatMap((fact) => facts.find((one) => one.id === fact) ?? []);
  return {
    id,
    assignment: assignment.id,
    learner: person.learner,
    name: person.name,
    deck: unit.deck.id,
    revision: unit.deck.revision,
    items: makeSheet(unit, wanted, seedOf(id, assignment.id, person.learner)),
    madeAt: now().at,
    markedAt: null,
  };
}

/** The questions of a sheet; undefined when the deck has another revision, or one cannot be made again. */
export function questionsOf(unit: Unit, { revision, items }: StoredSheet): Question[] | undefined {
  if (revision !== unit.deck.revision) return undefined;
  const questions = items.flatMap((item) => questionOf(unit, item) ?? []);
  return questions.length === items.length ? questions : undefined;
}

/** What stands on the paper: nothing, the right answer, one that a slip-up gives, or another one. */
export type Mark =
  | { readonly kind: 'open' }
  | { readonly kind: 'right' }
  | { readonly kind: 'lure'; readonly answer: Answer }
  | { readonly kind: 'other' };

/** An answer that is none: stands for a wrong one that nobody typed in. */
function unwritten({ form }: AnswerSpace): Answer {
  switch (form) {
    case 'set':
      return { form, picks: [] };
    case 'one':
      return { form, pick: '' };
    case 'order':
      return { form, order: [] };
    case 'number':
      return { form, value: '' };
    case 'pair':
      return { form, pairs: {} };
    case 'fill':
      return { form, cells: {} };
    case 'place':
      return { form, spot: '' };
  }
}

function answerFor(question: Question, mark: Mark): Answer | null {
  if (mark.kind === 'open') return null;
  if (mark.kind === 'right') return question.answers[0];
  return mark.kind === 'lure' ? mark.answer : unwritten(question.space);
}

/** Marks as attempts, in the order of the sheet; what was left open gives none. */
export function attemptsOf(
  sheet: StoredSheet,
  questions: readonly Question[],
  marks: readonly Mark[],
  now: { readonly at: number; readonly zone: string },
): Attempt[] {
  return questions.flatMap((question, place) => {
    const mark = marks[place] ?? { kind: 'open' };
    const answer = answerFor(question, mark);
    if (!answer) return [];
    const verdict =
      mark.kind === 'other' ? { right: false, slipUps: [], missed: [] } : judge(question, answer);
    const device = `paper-${sheet.assignment}-${sheet.id}`.slice(0, 80);
    const draft = draftAttempt({
      id: `${sheet.id}-${place + 1}-${sheet.assignment}`.slice(0, 80),
      question,
      answer,
      verdict,
      // How long somebody took on paper is not known.
      seconds: 0,
      at: now.at + place,
      zone: now.zone,
      drill: `paper-${sheet.id}`,
    });
    return [{ ...draft, device, sequence: place + 1 }];
  });
}

/** Keeps the marks as a report, and the sheet as marked. */
export async function keepMarks(
  services: Services,
  sheet: StoredSheet,
  attempts: readonly Attempt[],
): Promise<Result<void, StoreTrouble>> {
  const { store, now, newId } = services;
  const pair = await store.classroom.deviceKey(makeDeviceKey);
  if (!pair.ok) return pair;
  const { at } = now();
  const sealed = await sealReport(
    {
      id: newId(),
      assignment: sheet.assignment,
      deck: sheet.deck,
      learner: { id: sheet.learner, name: sheet.name },
      madeAt: at,
      attempts,
      flags: [],
      corrections: [],
    },
    pair.value,
  );
  // In by the same door as every other report.
  const read = await readIncoming(writeReport(sealed));
  if (!read.ok || read.value.kind !== 'report') throw new Error('marks made a report that cannot be read');
  const collected = await collectReport(services, read.value);
  if (!collected.ok) return collected;
  const kept = await store.classroom.keepSheet({ ...sheet, markedAt: at });
  return kept.ok ? pass(undefined) : kept;
}
