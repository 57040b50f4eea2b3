/**
 * Which of these figures may be used as noted, and which must be looked up first? Made on purpose from a value
 * that is not verified: its figure is never the answer, only that nobody has checked it.
 */
import type { Provenance } from '../../../unit/record.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, Family } from '../../question.ts';
import { perUnit } from '../per-unit.ts';

const FACT = 'skill:look-up-first';

const ROWS = 4;

interface Figure {
  readonly ref: Ref;
  readonly name: Phrase;
  readonly figure: string;
  readonly of: Provenance;
}

const figures = perUnit((unit: Unit): Figure[] => [
  ...(unit.deck.torques ?? []).map(
    (torque): Figure => ({
      ref: `torque:${torque.id}`,
      name: say('look-up-first.torque', { name: thing('torque', torque.id) }),
      figure: `${torque.torque.value} ${torque.torque.unit}`,
      of: torque,
    }),
  ),
  ...(unit.deck.fits ?? []).map(
    (fit): Figure => ({
      ref: `fit:${fit.id}`,
      name: thing('fit', fit.id),
      figure: `${fit.limits.low.value}–${fit.limits.high.value} ${fit.limits.low.unit}`,
      of: fit,
    }),
  ),
]);

/** A figure is ready for use when somebody has checked it and nothing about it is marked unsure. */
const isReady = ({ of }: Figure) => of.unsure !== true && of.verified !== undefined;

const pairAnswer = (rows: readonly Figure[], ready: (row: Figure) => boolean): Answer => ({
  form: 'pair',
  pairs: Object.fromEntries(rows.map((row) => [row.ref, ready(row) ? 'as-noted' : 'look-up'])),
});

export const lookUpFirst: Family = {
  id: 'look-up-first',
  level: 'apply',
  form: 'pair',
  facts(unit) {
    const all = figures(unit);
    return all.some((figure) => !isReady(figure)) && all.filter(isReady).length >= 2 ? [FACT] : [];
  },
  pose(unit, fact, random) {
    const all = random.shuffle(figures(unit));
    const doubtful = all.filter((figure) => !isReady(figure)).slice(0, random.int(1, 2));
    const ready = all
      .filter((figure) => isReady(figure) && unit.sure(figure.ref))
      .slice(0, ROWS - doubtful.length);
    const rows = random.shuffle([...doubtful, ...ready]);
    if (rows.length < ROWS) return undefined;
    const sourceOf = ({ of }: Figure) => unit.deck.sources?.find(({ id }) => id === of.source)?.title ?? '–';
    const hasSource = ({ of }: Figure) => of.source !== undefined;
    return {
      facts: [fact],
      uses: ready.map(({ ref }) => ref),
      prompt: say('look-up-first.prompt'),
      drawing: {
        kind: 'table',
        columns: [say('look-up-first.figure'), say('look-up-first.source'), say('look-up-first.verified')],
        rows: rows.map((row) => ({
          head: row.name,
          cells: [
            say('text', { text: row.figure }),
            say('text', { text: sourceOf(row) }),
            row.of.verified && row.of.unsure !== true
              ? say('look-up-first.by', { by: row.of.verified.by, on: row.of.verified.on })
              : say('look-up-first.nobody'),
          ],
        })),
      },
      space: {
        form: 'pair',
        left: rows.map(({ ref, name }) => ({ id: ref, label: name })),
        right: ['as-noted', 'look-up'].map((id) => ({ id, label: say(`look-up-first.${id}`) })),
      },
      answers: [pairAnswer(rows, isReady)],
      lures: [
        { answer: pairAnswer(rows, () => true), slipUp: 'unverified-trusted' },
        { answer: pairAnswer(rows, hasSource), slipUp: 'source-taken-for-check' },
        { answer: pairAnswer(rows, (row) => !isReady(row)), slipUp: 'checked-thought-doubtful' },
      ],
      explanation: {
        row: say('look-up-first.row', {
          names: doubtful.map(({ name }) => name),
          count: doubtful.length,
        }),
        reason: say('look-up-first.reason'),
        more: [say('look-up-first.maker-wins')],
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        rows.every(({ ref }) => {
          const [kind, id] = ref.split(':');
          const raw: readonly (Provenance & { readonly id: string })[] =
            (kind === 'fit' ? unit.deck.fits : unit.deck.torques) ?? [];
          const record = raw.find((one) => one.id === id)!;
          const checked = record.verified !== undefined && !record.unsure;
          return answer.pairs[ref] === (checked ? 'as-noted' : 'look-up');
        }),
    };
  },
};
