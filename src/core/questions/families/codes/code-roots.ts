/** Several codes, one fault: which code points at the part, which only follows, which cannot come of it? */
import { faultPhrase } from '../../../diagnosis/say.ts';
import { partOf } from '../../../faults/fault.ts';
import { say } from '../../phrase.ts';
import type { Answer, Family } from '../../question.ts';
import {
  type CodeRow,
  codeRefs,
  partRefs,
  pickRows,
  ROWS,
  stateByTests,
  tellingFaults,
} from './code-parts.ts';

const FACT = 'skill:code-roots';

const ROLES = ['root', 'follows', 'cannot'] as const;
type Role = (typeof ROLES)[number];

const roleOf = ({ own, state }: CodeRow): Role => (state === 'cannot' ? 'cannot' : own ? 'root' : 'follows');

const pairAnswer = (rows: readonly CodeRow[], role: (row: CodeRow) => Role): Answer => ({
  form: 'pair',
  pairs: Object.fromEntries(rows.map((row) => [row.code.id, role(row)])),
});

export const codeRoots: Family = {
  id: 'code-roots',
  level: 'reason',
  form: 'pair',
  facts: (unit) =>
    tellingFaults(unit).some(({ rows }) => new Set(rows.map(roleOf)).size === ROLES.length) ? [FACT] : [],
  pose(unit, fact, random) {
    const mixed = tellingFaults(unit).filter(({ rows }) => new Set(rows.map(roleOf)).size === ROLES.length);
    const { fault, rows: all } = random.pick(mixed);
    const rows = pickRows(all, random, roleOf);
    if (rows.length < ROWS) return undefined;
    const [part] = partRefs(fault);
    const swapped: Record<Role, Role> = { root: 'follows', follows: 'root', cannot: 'cannot' };
    return {
      facts: [fact],
      uses: [...codeRefs(unit, fault), ...rows.map(({ code }) => `code:${code.id}` as const)],
      prompt: say('code-roots.prompt', { fault: faultPhrase(unit, fault) }),
      drawing: { kind: 'chart', showRatios: true },
      space: {
        form: 'pair',
        left: rows.map(({ code }) => ({
          id: code.id,
          label: say('codes.with-meaning', { code: code.id, meaning: say('text', { text: code.meaning }) }),
        })),
        right: ROLES.map((id) => ({ id, label: say(`code-role.${id}`) })),
      },
      answers: [pairAnswer(rows, roleOf)],
      lures: [
        { answer: pairAnswer(rows, (row) => swapped[roleOf(row)]), slipUp: 'result-taken-for-cause' },
        {
          answer: pairAnswer(rows, (row) => (roleOf(row) === 'follows' ? 'cannot' : roleOf(row))),
          slipUp: 'only-its-own-code',
        },
        {
          answer: pairAnswer(rows, (row) => (roleOf(row) === 'cannot' ? 'follows' : roleOf(row))),
          slipUp: 'every-code-sets',
        },
      ],
      explanation: {
        row: say('code-roots.row', {
          codes: rows.filter((row) => roleOf(row) === 'root').map(({ code }) => code.id),
          count: rows.filter((row) => roleOf(row) === 'root').length,
        }),
        reason: say('code-roots.reason'),
        more: rows.map((row) => say(`code-roots.because-${roleOf(row)}`, { code: row.code.id })),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        partOf(fault) !== undefined &&
        rows.every(({ code }) => {
          const given = answer.pairs[code.id];
          const impossible = stateByTests(unit, fault, code) === 'cannot';
          const watchesIt = part !== undefined && code.watches.includes(part);
          return given === (impossible ? 'cannot' : watchesIt ? 'root' : 'follows');
        }),
    };
  },
};
