/** Which solenoid does a code mean in this unit? The standard gives letters; the maker gives the letters parts. */
import type { DeckCode } from '../../../unit/service.ts';
import type { Unit } from '../../../unit/unit.ts';
import { say, thing } from '../../phrase.ts';
import type { Answer, Family } from '../../question.ts';
import { perUnit } from '../per-unit.ts';

/** Codes asked at once. */
const ROWS = 4;

interface Lettered {
  readonly code: DeckCode;
  readonly letter: string;
  readonly solenoid: string;
}

/** Verified codes with a letter that watch one solenoid, one code for each solenoid kept apart by `sample`. */
const letteredCodes = perUnit((unit: Unit): Lettered[] =>
  (unit.deck.codes ?? []).flatMap((code) => {
    const [watched, ...others] = code.watches;
    if (code.letter === undefined || others.length > 0 || !watched?.startsWith('solenoid:')) return [];
    const solenoid = watched.slice('solenoid:'.length);
    if (!unit.sure(`code:${code.id}`) || !unit.sure(`solenoid:${solenoid}`)) return [];
    return [{ code, letter: code.letter, solenoid }];
  }),
);

const factOf = ({ code }: Lettered) => `code:${code.id}/watches`;

const pairAnswer = (rows: readonly Lettered[], solenoidOf: (row: Lettered) => string): Answer => ({
  form: 'pair',
  pairs: Object.fromEntries(rows.map((row) => [row.code.id, solenoidOf(row)])),
});

export const codeWatches: Family = {
  id: 'code-watches',
  level: 'read',
  form: 'pair',
  facts(unit) {
    const lettered = letteredCodes(unit);
    const parts = new Set(lettered.map(({ solenoid }) => solenoid));
    return parts.size >= ROWS ? lettered.map(factOf) : [];
  },
  pose(unit, fact, random) {
    const lettered = letteredCodes(unit);
    const asked = lettered.find((row) => factOf(row) === fact);
    if (!asked) return undefined;
    const rows = [asked];
    for (const row of random.shuffle(lettered))
      if (rows.length < ROWS && rows.every(({ solenoid }) => solenoid !== row.solenoid)) rows.push(row);
    if (rows.length < ROWS) return undefined;
    rows.sort((a, b) => (a.code.id < b.code.id ? -1 : 1));
    const solenoids = unit.deck.solenoids!;
    // Letters taken in the order in which the solenoids happen to be listed.
    const byPlace = ({ letter, solenoid }: Lettered) =>
      solenoids[letter.toUpperCase().charCodeAt(0) - 65]?.id ?? solenoid;
    const shifted = (row: Lettered) => rows[(rows.indexOf(row) + 1) % rows.length]!.solenoid;
    const shown = solenoids.filter(({ id }) =>
      rows.some((row) => row.solenoid === id || byPlace(row) === id),
    );
    return {
      facts: [fact, ...rows.filter((row) => row !== asked).map(factOf)],
      uses: rows.flatMap(({ code, solenoid }) => [
        `code:${code.id}` as const,
        `solenoid:${solenoid}` as const,
      ]),
      prompt: say('code-watches.prompt'),
      space: {
        form: 'pair',
        left: rows.map(({ code, letter }) => ({
          id: code.id,
          label: say('codes.lettered', { code: code.id, letter, kind: say(`code-kind.${code.kind}`) }),
        })),
        right: shown.map(({ id }) => ({ id, label: thing('solenoid', id) })),
      },
      answers: [pairAnswer(rows, ({ solenoid }) => solenoid)],
      lures: [
        { answer: pairAnswer(rows, byPlace), slipUp: 'letter-by-place' },
        { answer: pairAnswer(rows, shifted), slipUp: 'neighbour-code' },
      ],
      explanation: {
        row: say('codes.watches', { code: asked.code.id, part: thing('solenoid', asked.solenoid) }),
        reason: say('code-watches.reason'),
        more: rows.map(({ code, solenoid }) =>
          say('codes.watches-meaning', {
            code: code.id,
            part: thing('solenoid', solenoid),
            meaning: say('text', { text: code.meaning }),
          }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        rows.every(({ code }) =>
          unit.deck.codes!.some(
            (raw) => raw.id === code.id && raw.watches.includes(`solenoid:${answer.pairs[code.id]}`),
          ),
        ),
    };
  },
};
