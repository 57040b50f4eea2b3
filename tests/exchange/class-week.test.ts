import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { loadDeck } from '../../src/content/load.ts';
import { assignedFacts } from '../../src/core/assign/assignment.ts';
import {
  correctionBetween,
  joinCorrections,
  noticesFor,
  voidsOf,
} from '../../src/core/assign/corrections.ts';
import { dueDay } from '../../src/core/assign/due.ts';
import { whomToTell } from '../../src/core/assign/merge-reports.ts';
import { makeReport, type SealedReport } from '../../src/core/assign/report.ts';
import { openBoard } from '../../src/core/group/board.ts';
import { confusionsIn } from '../../src/core/group/confusions.ts';
import { digestLog } from '../../src/core/group/digest.ts';
import { type Attempt, draftAttempt } from '../../src/core/memory/attempt.ts';
import { foldAttempts } from '../../src/core/memory/fold.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { judge } from '../../src/core/questions/judge.ts';
import type { Answer } from '../../src/core/questions/question.ts';
import { questionOf } from '../../src/core/questions/reopen.ts';
import { makeUnit, type Unit } from '../../src/core/unit/unit.ts';
import { addPiece, type Chain, cutPacket, joinChain } from '../../src/exchange/chain.ts';
import { makeLink } from '../../src/exchange/link.ts';
import { sealReport, writeAssignment, writeReport } from '../../src/exchange/message.ts';
import { packText } from '../../src/exchange/packet.ts';
import { joinPile } from '../../src/exchange/pile.ts';
import { readIncoming, readPacket } from '../../src/exchange/read.ts';
import { makeDeviceKey } from '../../src/exchange/seal.ts';
import { openStore } from '../../src/storage/store.ts';
import { anAssignment } from '../reports.ts';
import { shippedDecks } from '../units.ts';

const must = <T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

/** A drill of one learner: each of the facts once, answered right, or with the first lure where he gets it wrong. */
function practise(
  unit: Unit,
  facts: readonly string[],
  given: { device: string; at: number; wrong: (fact: string) => boolean; from: number },
): Attempt[] {
  const family = FAMILIES.find(({ id }) => id === 'row-ratio')!;
  return facts.map((fact, index) => {
    const question = ask(unit, family, index, fact)!;
    const answer: Answer = given.wrong(fact) ? question.lures[0]!.answer : question.answers[0];
    const draft = draftAttempt({
      id: `${given.device}-${given.from + index}`, question, answer, verdict: judge(question, answer),
      seconds: 9, at: given.at + index * 10_000, zone: 'Europe/Berlin', drill: 'd',
    }); // biome-ignore format: one record
    return { ...draft, device: given.device, sequence: given.from + index };
  });
}

test('a class week: assign, practise, collect, look, correct a wrong tooth count, practise again', async () => {
  // The instructor's deck has a tooth too many on the rear sun, and no ratios to tell it by.
  const right = shippedDecks().find((deck) => deck.id === 'kestrel-7')!;
  const wrong = JSON.parse(JSON.stringify(right)) as typeof right;
  Object.assign(wrong.train.gearsets[2]!.sun, { teeth: 46 });
  for (const row of wrong.chart.ranges) Object.assign(row, { ratio: undefined });
  const monday = Date.parse('2026-11-30T12:10:00+01:00');
  const assignment = anAssignment({
    deck: { id: wrong.id, revision: wrong.revision },
    scope: {
      kind: 'facts',
      facts: ['range:1/ratio', 'range:3/ratio', 'range:4/ratio', 'range:5/ratio'],
    },
    classAt: { date: '2026-12-03', time: '08:00', zone: 'Europe/Berlin' },
    threshold: { share: 0.5, cautioned: false },
  });
  const facts = assignment.scope.kind === 'facts' ? assignment.scope.facts : [];

  // Handed out as a chain of codes, deck and all: no network anywhere.
  const text = writeAssignment(assignment, JSON.stringify(wrong));
  let chain: Chain | null = null;
  for (const code of must(cutPacket(await packText(text))).toReversed()) {
    const read = must(await readIncoming(`https://shop.example/#/take/${code}`));
    if (read.kind !== 'piece') throw new Error(read.kind);
    chain = must(addPiece(chain, read.piece));
  }
  const taken = must(await readPacket(must(joinChain(chain!))));
  if (taken.kind !== 'assignment') throw new Error(taken.kind);
  expect(taken.assignment).toEqual(assignment);
  const learnt = must(loadDeck(taken.deckText!)).unit;

  // Ada and Bo practise on their phones and hand back links. Bo misses range 3.
  const people = [
    { id: 'ada', wrong: () => false },
    { id: 'bo', wrong: (fact: string) => fact === 'range:3/ratio' },
  ];
  const store = openStore('class-week');
  const { classroom } = store;
  const handIn = async (sealed: SealedReport) => {
    const link = must(makeLink('https://shop.example/', await packText(writeReport(sealed))));
    const read = must(await readIncoming(link));
    if (read.kind !== 'report') throw new Error(read.kind);
    expect(read.proof).toBe('sound');
    const { report, seal } = read.sealed;
    const { id, assignment: of, learner, madeAt } = report;
    return must(
      await classroom.keepReport({
        id,
        assignment: of,
        learner: learner.id,
        madeAt,
        text: read.text,
        seal,
        savedAt: madeAt,
      }),
    );
  };
  const logs = new Map<string, Attempt[]>();
  const keys = new Map<string, CryptoKeyPair>();
  for (const { id, wrong: misses } of people) {
    logs.set(id, practise(learnt, facts, { device: id, at: monday, wrong: misses, from: 1 }));
    keys.set(id, (await makeDeviceKey())!);
  }
  const reportOf = (id: string, number: number, corrections: readonly string[]) =>
    sealReport(
      makeReport({
        id: `report-${id}-${number}`, assignment, facts: new Set(facts), learner: { id, name: id }, attempts: logs.get(id)!,
        flags: [], corrections, madeAt: monday + number * 86_400_000,
      }),
      keys.get(id)!,
    ); // biome-ignore format: one record
  for (const { id } of people) expect(await handIn(await reportOf(id, 1, []))).toBe(true);
  expect(await handIn(await reportOf('ada', 1, []))).toBe(true); // Sealed anew: another signature, the same contents.

  // The board, from what is kept.
  const lookAt = async (unit: Unit, corrections: Parameters<typeof voidsOf>[1]) => {
    const pile = await joinPile(must(await classroom.reportsOf(assignment.id)).reports);
    expect([pile.broken, pile.unreadable, pile.joined.disputed]).toEqual([0, 0, []]);
    for (const log of pile.joined.learners) {
      const digest = digestLog({
        log,
        voids: voidsOf(log.attempts, corrections),
        classDay: dueDay(assignment.classAt),
        confusedIn: (attempt) => {
          const question = questionOf(learnt, attempt);
          return question ? confusionsIn(question, attempt.answer) : [];
        },
      });
      must(
        await classroom.saveDigest({
          assignment: assignment.id,
          learner: log.learner,
          madeOf: `${corrections.length}`,
          digest,
        }),
      );
    }
    const digests = must(await classroom.digestsOf(assignment.id)).map(({ digest }) => digest);
    const board = openBoard({
      assignment, digests, today: dueDay(assignment.classAt) - 2, classDay: dueDay(assignment.classAt), roster: ['Ada', 'Bo', 'Cy'],
      facts: assignedFacts(assignment, factsOf(unit)).facts,
    }); // biome-ignore format: one record
    return { board, logs: pile.joined.learners };
  };
  const first = await lookAt(learnt, []);
  expect(first.board.people.map(({ name, answers, readiness }) => [name, answers, readiness.right])).toEqual([
    ['ada', 4, 4],
    ['bo', 4, 3],
  ]);
  expect(first.board.notHeardFrom).toEqual(['Cy']);
  expect(first.board.slipUps.map(({ people: count }) => count)).toEqual(first.board.slipUps.map(() => 1));

  // The tooth is put right. In ranges 3 and 5 the rear set turns as one, so those ratios were right all along;
  // everybody who answered on 1 and 4 is to be told and asked again.
  const mended = makeUnit({ ...right, revision: right.revision + 1 });
  const correction = correctionBetween(learnt, mended, {
    id: 'c1',
    note: 'The rear sun has 45 teeth.',
    at: monday + 86_400_000,
  });
  expect(facts.filter((fact) => correction.facts.includes(fact))).toEqual(['range:1/ratio', 'range:4/ratio']);
  expect(whomToTell(correction, first.logs).map(({ name, answers, told }) => [name, answers, told])).toEqual([
    ['ada', 2, false],
    ['bo', 2, false],
  ]);
  const second = await lookAt(mended, [correction]);
  expect(second.board.people.map(({ answers, voided }) => [answers, voided])).toEqual([[2, 2], [2, 2]]); // biome-ignore format: pairs

  // The correction travels with the next issue; Ada's phone tells her and asks ranges 1 and 4 again.
  const next = {
    ...assignment,
    issue: 2,
    deck: { id: right.id, revision: right.revision + 1 },
    corrections: [correction],
  };
  const received = must(await readIncoming(await packText(writeAssignment(next, null))));
  if (received.kind !== 'assignment') throw new Error(received.kind);
  const known = joinCorrections([], received.assignment.corrections);
  const own = logs.get('ada')!;
  expect(noticesFor(own, known).flatMap((notice) => notice.facts)).toContainEqual({
    fact: 'range:1/ratio',
    answers: 1,
  });
  expect(foldAttempts(own, voidsOf(own, known)).has('range:1/ratio')).toBe(false);
  logs.set('ada', [
    ...own,
    ...practise(mended, ['range:1/ratio', 'range:4/ratio'], {
      device: 'ada',
      at: monday + 90_000_000,
      wrong: () => false,
      from: 5,
    }),
  ]);
  expect(await handIn(await reportOf('ada', 2, ['c1']))).toBe(true);
  const third = await lookAt(mended, [correction]);
  expect(third.board.people[0]).toMatchObject({
    name: 'ada',
    answers: 4,
    voided: 2,
    readiness: { right: 4, of: 4 },
  });
  expect(whomToTell(correction, third.logs).map(({ name, told }) => [name, told])).toEqual([['bo', false], ['ada', true]]); // biome-ignore format: pairs
  store.close();
});
