/**
 * Two units of one model, measured: which listed part does each get? The nearest to the play aimed at that is
 * within the limits. What a thicker part does is told. A tie, or a reading no part suits, is never asked.
 */
import { thicknessFor } from '../../../measure/play.ts';
import { type Fitted, fitPart, type Part } from '../../../measure/select.ts';
import type { Random } from '../../../random.ts';
import { makeDecimal, type Rational, ZERO } from '../../../rational.ts';
import { fitWith } from '../../../unit/fits.ts';
import type { Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { FactId, Family, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { distinctLures } from '../chart-parts.ts';
import {
  type AskedFit,
  askedFits,
  bareInWords,
  type Drawn,
  drawReading,
  exactText,
  fixed,
  floatPlay,
  HAIR,
  partLabel,
  readingInWords,
} from './fit-parts.ts';

const FEWEST_PARTS = 4;
/** As many of the list as are shown at once. */
const MOST_PARTS = 8;
const UNITS = ['one', 'two'] as const;

const factOf = ({ fit }: AskedFit): FactId => `fit:${fit.id}/select`;

const fitsWithList = (unit: Unit) => askedFits(unit).filter(({ parts }) => parts.length >= FEWEST_PARTS);

const TRIES = 6;

interface Case extends Drawn {
  readonly fitted: Fitted;
}

/** A reading with one part that is nearer than the next by more than a reading may be off. */
function drawCase(asked: AskedFit, random: Random): Case | undefined {
  for (let attempt = 0; attempt < TRIES; attempt++) {
    const drawn = drawReading(asked, random);
    if (!drawn) return undefined;
    const fitted = fitPart({ ...fitWith(asked.fit, drawn.reading), margin: asked.step.mul(2n) });
    if (fitted.ok) return { ...drawn, fitted: fitted.value };
  }
  return undefined;
}

/** A run of the list, as it is printed, with these parts in it; undefined when they lie too far apart. */
function runWith(parts: readonly Part[], chosen: readonly Part[], random: Random): Part[] | undefined {
  if (parts.length <= MOST_PARTS) return [...parts];
  const places = chosen.map(({ id }) => parts.findIndex((part) => part.id === id));
  const [first, last] = [Math.min(...places), Math.max(...places)];
  if (last - first >= MOST_PARTS) return undefined;
  const start = random.int(Math.max(0, last - MOST_PARTS + 1), Math.min(first, parts.length - MOST_PARTS));
  return parts.slice(start, start + MOST_PARTS);
}

/** The listed part nearest to a thickness; undefined on a tie, or where the list does not reach so far. */
function nearest(run: readonly Part[], thickness: Rational): Part | undefined {
  const gap = run[1]!.thickness.sub(run[0]!.thickness);
  const off = (part: Part) => part.thickness.sub(thickness).abs();
  const [best, next] = run.toSorted((a, b) => off(a).compare(off(b)));
  return best && off(best).lte(gap) && !(next && off(next).equals(off(best))) ? best : undefined;
}

/** For drawings: one place more than readings have, in which a middle can be told. */
const plain = ({ places }: AskedFit, value: Rational): string => makeDecimal(value, places + 1);

type Rule = (asked: AskedFit, drawn: Drawn) => Rational | undefined;

/** The thickness that each wrong rule aims at. */
const WRONG: readonly { readonly slipUp: SlipUp; readonly thickness: Rule }[] = [
  {
    slipUp: 'thicker-turned-round',
    thickness: ({ fit, aim }, { reading, present }) => {
      if (reading.method !== 'part-fitted' || !present) return undefined;
      const change = reading.play.sub(aim);
      return present.thickness.sub(fit.effect === 'closes' ? change : change.neg());
    },
  },
  {
    slipUp: 'aimed-at-limit',
    thickness: ({ fit, limits }, { bare }) => thicknessFor(bare, fit.effect, limits.low),
  },
  {
    slipUp: 'aimed-at-limit',
    thickness: ({ fit, limits }, { bare }) => thicknessFor(bare, fit.effect, limits.high),
  },
  { slipUp: 'aim-left-out', thickness: ({ fit }, { bare }) => thicknessFor(bare, fit.effect, ZERO).abs() },
  {
    slipUp: 'reading-as-thickness',
    thickness: (_, { reading }) => (reading.method === 'part-fitted' ? reading.play : undefined),
  },
  {
    slipUp: 'fitted-part-forgotten',
    thickness: ({ fit, aim }, { reading }) =>
      reading.method === 'part-fitted' ? thicknessFor(reading.play, fit.effect, aim).abs() : undefined,
  },
  {
    slipUp: 'gasket-left-out',
    thickness: ({ fit, aim }, { reading, bare }) =>
      reading.method === 'depths' && reading.gasket
        ? thicknessFor(bare.sub(reading.gasket), fit.effect, aim)
        : undefined,
  },
];

export const selectPart: Family = {
  id: 'select-part',
  level: 'reason',
  form: 'pair',
  facts: (unit) => fitsWithList(unit).map(factOf),
  pose(unit, fact, random) {
    const asked = fitsWithList(unit).find((candidate) => factOf(candidate) === fact);
    if (!asked) return undefined;
    const { fit, unit: length, limits, aim, parts } = asked;
    const cases = UNITS.map(() => drawCase(asked, random));
    const [one, two] = cases;
    if (!one || !two) return undefined;
    const run = runWith(parts, [one.fitted.part, two.fitted.part], random);
    if (!run) return undefined;
    const pairs = (choose: (drawn: Case) => Part | undefined): Lure['answer'] | undefined => {
      const [first, second] = [choose(one), choose(two)];
      return first && second ? { form: 'pair', pairs: { one: first.id, two: second.id } } : undefined;
    };
    const beside = (step: number) => (drawn: Case) =>
      run[run.findIndex(({ id }) => id === drawn.fitted.part.id) + step];
    const lures = [
      ...WRONG.map(({ slipUp, thickness }) => ({
        slipUp,
        answer: pairs((drawn) => {
          const wanted = thickness(asked, drawn);
          return wanted && nearest(run, wanted);
        }),
      })),
      ...[-1, 1].map((step) => ({ slipUp: 'next-part' as const, answer: pairs(beside(step)) })),
    ].flatMap(({ slipUp, answer }): Lure[] => (answer ? [{ slipUp, answer, fact }] : []));

    const worked = (drawn: Case): Phrase[] => [
      bareInWords(asked, drawn),
      say(`select-part.aim-${fit.effect}`, {
        bare: drawn.bare.lt(0n) ? `(${fixed(asked, drawn.bare)})` : fixed(asked, drawn.bare),
        aim: exactText(asked, aim),
        thickness: exactText(asked, thicknessFor(drawn.bare, fit.effect, aim)),
        unit: length,
      }),
      say('select-part.leaves', {
        part: partLabel(asked, drawn.fitted.part),
        play: fixed(asked, drawn.fitted.play),
        low: fixed(asked, limits.low),
        high: fixed(asked, limits.high),
        unit: length,
      }),
    ];
    const { window } = one.fitted;
    return {
      facts: [fact],
      uses: [asked.ref],
      prompt: say('select-part.prompt', {
        fit: thing('fit', fit.id),
        low: fixed(asked, limits.low),
        high: fixed(asked, limits.high),
        aim: exactText(asked, aim),
        aimed: fit.aim ? 'stated' : 'middle',
        effect: fit.effect,
        bar: fit.method === 'depths' && fit.bar ? fit.bar.value : 'none',
        gasket: fit.method === 'depths' && fit.gasket ? fit.gasket.value : 'none',
        unit: length,
      }),
      space: {
        form: 'pair',
        left: [one, two].map((drawn, index) => ({
          id: UNITS[index]!,
          label: readingInWords(asked, drawn),
        })),
        right: run.map((part) => ({ id: part.id, label: partLabel(asked, part) })),
      },
      answers: [{ form: 'pair', pairs: { one: one.fitted.part.id, two: two.fitted.part.id } }],
      lures: distinctLures(lures),
      explanation: {
        row: say('select-part.row', {
          first: partLabel(asked, one.fitted.part),
          second: partLabel(asked, two.fitted.part),
        }),
        reason: say(`select-part.reason-${fit.effect}`),
        more: [say('select-part.first'), ...worked(one), say('select-part.second'), ...worked(two)],
        drawing: {
          kind: 'window',
          unit: length,
          low: plain(asked, window.low.lt(0n) ? ZERO : window.low),
          high: plain(asked, window.high),
          aim: plain(asked, thicknessFor(one.bare, fit.effect, aim)),
          parts: run.map((part) => ({
            label: partLabel(asked, part),
            at: plain(asked, part.thickness),
            lit: part.id === one.fitted.part.id,
          })),
        },
      },
      // From the part to the play: within the limits, and no other listed part comes as near to the aim.
      isRight: (answer) => {
        if (answer.form !== 'pair') return false;
        const [low, high, goal] = [limits.low, limits.high, aim].map((value) => value.valueOf());
        return [one, two].every((drawn, index) => {
          const off = (part: Part) => Math.abs(floatPlay(asked, drawn, part) - goal!);
          const within = (part: Part) => {
            const play = floatPlay(asked, drawn, part);
            return play >= low! - HAIR && play <= high! + HAIR;
          };
          const given = parts.find(({ id }) => id === answer.pairs[UNITS[index]!]);
          return (
            !!given &&
            within(given) &&
            parts.every((part) => part === given || !within(part) || off(part) > off(given) + HAIR)
          );
        });
      },
    };
  },
};
