import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { joinReports } from '../../src/core/assign/merge-reports.ts';
import { openBoard } from '../../src/core/group/board.ts';
import { digestLog } from '../../src/core/group/digest.ts';
import type { Attempt } from '../../src/core/memory/attempt.ts';
import type { Answer } from '../../src/core/questions/question.ts';
import { answerText, writeAnswers, writeBoard } from '../../src/exchange/csv/results.ts';
import { makeStatements, responseOf, type Statement } from '../../src/exchange/xapi.ts';
import { anAttempt } from '../attempts.ts';
import { anAssignment, aReport, sealed } from '../reports.ts';

const logsOf = (attempts: readonly Attempt[], name = 'Ada') =>
  joinReports([sealed(aReport({ learner: { id: 'learner-1', name }, attempts }))]).learners;
const parse = (text: string) =>
  Papa.parse<Record<string, string>>(text.replace('\uFEFF', ''), { header: true, skipEmptyLines: true }).data;

/** Answers as one cell, and as an xAPI response (delimiters as in the 1.0.3 text, from memory). */
const ANSWERS: readonly [Answer, cell: string, response: string][] = [
  [{ form: 'one', pick: '4' }, '4', '4'],
  [{ form: 'set', picks: ['C1', 'B1'] }, 'B1 C1', 'C1[,]B1'],
  [{ form: 'order', order: ['b', 'a'] }, 'b a', 'b[,]a'],
  [{ form: 'number', value: '-1.8' }, '-1.8', '-1.8'],
  [{ form: 'number', value: '87/25' }, '87/25', '3.48'],
  [{ form: 'pair', pairs: { C1: 'off', B1: 'on' } }, 'B1=on C1=off', 'C1[.]off[,]B1[.]on'],
  [{ form: 'fill', cells: { '1/B1': 'x' } }, '1/B1=x', '1/B1[.]x'],
  [{ form: 'place', spot: 'T5' }, 'T5', 'T5'],
];

test.each(ANSWERS)('X1 %j is "%s" in a cell and "%s" as a response', (answer, cell, response) => {
  expect(answerText(answer)).toBe(cell);
  expect(responseOf(answer)).toBe(response);
});

describe('results as tables', () => {
  test('X2 a line an answer, voided ones marked, in the order of their times', () => {
    const attempts = [
      anAttempt({ sequence: 2, right: false, slipUps: ['neighbour-range', 'subset-range'], seconds: 12.5 }),
      anAttempt({ sequence: 1, answer: { form: 'number', value: '-1.8' }, form: 'number', at: Date.UTC(2026, 11, 3, 7, 0, 1), day: 20_790 }),
    ]; // biome-ignore format: an attempt a line
    const rows = parse(writeAnswers(logsOf(attempts), new Set(['phone-2'])));
    expect(rows.map(({ attempt, voided }) => [attempt, voided])).toEqual([['phone-2', 'true'], ['phone-1', 'false']]);
    expect(rows[0]).toMatchObject({ name: 'Ada', right: 'false', slipUps: 'neighbour-range subset-range', seconds: '12.5', fact: 'range:1/elements' });
    expect(rows[1]).toMatchObject({ time: '2026-12-03T07:00:01.000Z', day: '2026-12-03', answer: '-1.8' });
  }); // biome-ignore format: pairs

  test('X2 what somebody wrote is no formula, a number keeps its minus', () => {
    const hostile = "=cmd|' /C calc'!A0";
    const [row] = parse(
      writeAnswers(
        logsOf([anAttempt({ answer: { form: 'number', value: '-2' }, form: 'number' })], hostile),
        new Set(),
      ),
    );
    expect(row!.name).toBe(`'${hostile}`);
    expect(row!.answer).toBe('-2');
    fc.assert(
      fc.property(fc.string(), fc.string(), (name, fact) => {
        const text = writeAnswers(
          logsOf([anAttempt({ fact: `${fact}x`, facts: [`${fact}x`] })], name),
          new Set(),
        );
        for (const cell of Object.values(parse(text)[0]!)) expect(cell).not.toMatch(/^[=+@\t\r]/);
        expect(parse(text)).toHaveLength(1);
      }),
    );
  });

  test('X2 a line a person, with what stands behind the readiness', () => {
    const [log] = logsOf([anAttempt(), anAttempt({ sequence: 2, fact: 'range:2/elements', right: false })]);
    const digest = digestLog({ log: log!, voids: new Set(), classDay: 20_010, confusedIn: () => [] });
    const facts = ['range:1/elements', 'range:2/elements', 'range:3/elements', 'range:4/elements'].map((id) => ({ id, families: ['range-elements'], level: 'read' as const, cautioned: false }));
    const board = openBoard({ assignment: anAssignment(), facts, digests: [digest], today: 20_001, classDay: 20_010 });
    expect(parse(writeBoard(board))[0]).toMatchObject({
      name: 'Ada', answers: '2', days: '1', lastDay: '2024-10-04', tried: '2', right: '1', facts: '4', readiness: '0.4', likely: 'open',
    });
  }); // biome-ignore format: a row
});

describe('xAPI statements', () => {
  const uuid = 'e3b0c442-98fc-4c14-9afb-f4c8996fb924';
  const request = {
    voids: new Set<string>(),
    home: 'https://shop.example/detent',
    madeAt: Date.UTC(2026, 11, 4),
  };
  const make = (attempts: readonly Attempt[], voids: readonly string[] = []) =>
    makeStatements({ ...request, logs: logsOf(attempts), voids: new Set(voids) });

  test('X3 one answered statement an attempt, with nothing personal in it', async () => {
    const [statement] = await make([
      anAttempt({ id: uuid, seconds: 8.4, right: false, slipUps: ['neighbour-range'] }),
    ]);
    expect(statement).toEqual({
      id: uuid,
      version: '1.0.3',
      actor: {
        objectType: 'Agent',
        account: { homePage: 'https://shop.example/detent/', name: 'learner-1' },
      },
      verb: { id: 'http://adlnet.gov/expapi/verbs/answered', display: { en: 'answered' } },
      object: {
        objectType: 'Activity',
        id: 'https://shop.example/detent/question/demo/r1/range-elements/range%3A1%2Felements/7',
        definition: {
          type: 'http://adlnet.gov/expapi/activities/cmi.interaction',
          interactionType: 'choice',
        },
      },
      result: { success: false, completion: true, score: { scaled: 0 }, response: 'C1', duration: 'PT8.4S' },
      context: {
        extensions: expect.objectContaining({
          'https://shop.example/detent/xapi/slip-ups': ['neighbour-range'],
        }),
      },
      timestamp: '2024-10-04T12:00:01.000Z',
    });
    expect(JSON.stringify(statement)).not.toContain('Ada');
  });

  test('X3 a voided attempt keeps its statement and gets one that voids it', async () => {
    const statements = await make([anAttempt({ id: uuid }), anAttempt({ sequence: 2 })], [uuid]);
    expect(statements.map(({ verb }) => verb.id.split('/').at(-1))).toEqual([
      'answered',
      'voided',
      'answered',
    ]);
    expect(statements[1]!.object).toEqual({ objectType: 'StatementRef', id: uuid });
    expect(statements[1]!.result).toBeUndefined();
  });

  test('X3 ids are uuids, each once, and the same when exported again', async () => {
    const attempts = Array.from({ length: 30 }, (_, index) => anAttempt({ sequence: index + 1 }));
    const [once, again] = await Promise.all([make(attempts, ['phone-3']), make(attempts, ['phone-3'])]);
    expect(again).toEqual(once);
    const ids = once.map(({ id }: Statement) => id);
    expect(new Set(ids).size).toBe(31);
    for (const id of ids)
      expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });

  test('X3 every form has its interaction type', async () => {
    const types = await Promise.all(
      ANSWERS.map(async ([answer]) => {
        const [statement] = await make([anAttempt({ form: answer.form, answer })]);
        return [answer.form, (statement!.object as { definition: { interactionType: string } }).definition.interactionType];
      }),
    );
    expect(Object.fromEntries(types)).toEqual({
      one: 'choice', set: 'choice', place: 'choice', order: 'sequencing', number: 'numeric', pair: 'matching', fill: 'matching',
    });
  }); // biome-ignore format: a table

  test.each(['', 'shop', 'ftp://shop.example/', 'mailto:a@b.example'])(
    'a home like "%s" is refused',
    async (home) => {
      await expect(makeStatements({ ...request, home, logs: [] })).rejects.toThrow();
    },
  );
});
