/** With a fault in the unit, which codes set, which could, which cannot? */
import { CODE_STATES, type CodeState } from '../../../diagnosis/codes.ts';
import { faultPhrase } from '../../../diagnosis/say.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say } from '../../phrase.ts';
import type { Answer, Family } from '../../question.ts';
import { perUnit } from '../per-unit.ts';
import {
  type CodeRow,
  codeRefs,
  pickRows,
  ROWS,
  settledRows,
  stateByTests,
  tellingFaults,
} from './code-parts.ts';

const FACT = 'skill:codes-that-set';

const pairAnswer = (rows: readonly CodeRow[], stateOf: (row: CodeRow) => CodeState): Answer => ({
  form: 'pair',
  pairs: Object.fromEntries(rows.map((row) => [row.code.id, stateOf(row)])),
});

/** Faults that set a code for sure, with the codes that are settled. */
const setting = perUnit((unit: Unit) =>
  tellingFaults(unit)
    .map(({ fault, rows }) => ({ fault, rows: settledRows(rows) }))
    .filter(({ rows }) => rows.length >= ROWS && rows.some(({ state }) => state === 'sets')),
);

export const codesThatSet: Family = {
  id: 'codes-that-set',
  level: 'reason',
  form: 'pair',
  facts: (unit) => (setting(unit).length > 0 ? [FACT] : []),
  pose(unit, fact, random) {
    const { fault, rows: all } = random.pick(setting(unit));
    const rows = pickRows(all, random, ({ state }) => state);
    if (rows.length < ROWS || new Set(rows.map(({ state }) => state)).size < 2) return undefined;
    return {
      facts: [fact],
      uses: [...codeRefs(unit, fault), ...rows.map(({ code }) => `code:${code.id}` as const)],
      prompt: say('codes-that-set.prompt', { fault: faultPhrase(unit, fault) }),
      drawing: { kind: 'chart', showRatios: true },
      space: {
        form: 'pair',
        left: rows.map(({ code }) => ({
          id: code.id,
          label: say('codes.with-meaning', { code: code.id, meaning: say('text', { text: code.meaning }) }),
        })),
        right: CODE_STATES.map((id) => ({ id, label: say(`code-state.${id}`) })),
      },
      answers: [pairAnswer(rows, ({ state }) => state)],
      lures: [
        { answer: pairAnswer(rows, ({ own }) => (own ? 'sets' : 'cannot')), slipUp: 'only-its-own-code' },
        {
          answer: pairAnswer(rows, ({ state }) => (state === 'could' ? 'sets' : state)),
          slipUp: 'could-taken-for-sets',
        },
        { answer: pairAnswer(rows, () => 'sets'), slipUp: 'every-code-sets' },
      ],
      explanation: {
        row: say('codes-that-set.row', {
          fault: faultPhrase(unit, fault),
          codes: rows.filter(({ state }) => state === 'sets').map(({ code }) => code.id),
          count: rows.filter(({ state }) => state === 'sets').length,
        }),
        reason: say('codes-that-set.reason'),
        more: rows.map(({ code, state }) =>
          say(`codes-that-set.because-${code.kind === 'ratio' ? 'ratio' : 'circuit'}-${state}`, {
            code: code.id,
          }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        rows.every(({ code }) => stateByTests(unit, fault, code) === answer.pairs[code.id]),
    };
  },
};
