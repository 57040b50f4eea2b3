/**
 * Air is let into the passages of four elements, one after the other: what is heard and felt, and so where is the
 * trouble? A piston that moves is a thud; air that finds another way hisses on. Common practice, no source.
 */
import type { Random } from '../../../random.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { type Phrase, say, thing } from '../../phrase.ts';
import type { Answer, Family, Lure } from '../../question.ts';
import type { SlipUp } from '../../slip-ups.ts';
import { frictionIds } from '../chart-parts.ts';

const FACT = 'skill:air-check';
const PASSAGES = 4;

const VERDICTS = ['sound', 'blocked', 'seal', 'crosses'] as const;
type Verdict = (typeof VERDICTS)[number];

/** What is noticed: which pistons move, and where air goes on hissing. */
interface Passage {
  readonly element: string;
  readonly verdict: Verdict;
  readonly other: string;
  readonly moves: readonly string[];
  readonly hisses: string | null;
}

const usable = (unit: Unit): string[] => frictionIds(unit).filter((id) => unit.sure(`element:${id}`));

function passageOf(element: string, other: string, verdict: Verdict): Passage {
  const moves = verdict === 'sound' ? [element] : verdict === 'crosses' ? [element, other] : [];
  const hisses = verdict === 'seal' ? element : verdict === 'crosses' ? other : null;
  return { element, verdict, other, moves, hisses };
}

function draw(unit: Unit, random: Random): Passage[] {
  const drawn = random.sample(usable(unit), PASSAGES);
  const elements = usable(unit).filter((id) => drawn.includes(id));
  // Three different verdicts at least.
  const verdicts = random.shuffle([...random.sample(VERDICTS, 3), random.pick(VERDICTS)]);
  return elements.map((element, place) =>
    passageOf(element, random.pick(usable(unit).filter((id) => id !== element)), verdicts[place]!),
  );
}

const noticed = ({ element, moves, hisses }: Passage): Phrase => {
  const [first, second] = moves;
  if (second !== undefined)
    return say('air-check.two', {
      element: thing('element', element),
      other: thing('element', second),
    });
  if (first !== undefined) return say('air-check.thud');
  return hisses === null
    ? say('air-check.nothing')
    : say('air-check.hiss', { element: thing('element', hisses) });
};

/** Where the trouble is by what was noticed alone. */
function heard({ element, moves, hisses }: Passage): Verdict {
  if (moves.some((id) => id !== element) || (hisses !== null && hisses !== element)) return 'crosses';
  if (hisses === element) return 'seal';
  return moves.includes(element) ? 'sound' : 'blocked';
}

export const airCheck: Family = {
  id: 'air-check',
  level: 'apply',
  form: 'pair',
  facts: (unit) => (usable(unit).length >= PASSAGES ? [FACT] : []),
  pose(unit, fact, random) {
    if (fact !== FACT || usable(unit).length < PASSAGES) return undefined;
    const passages = draw(unit, random);
    const told = (rule: (verdict: Verdict) => Verdict): Answer => ({
      form: 'pair',
      pairs: Object.fromEntries(passages.map(({ element, verdict }) => [element, rule(verdict)])),
    });
    const instead = (from: Verdict, to: Verdict) => (verdict: Verdict) => (verdict === from ? to : verdict);
    const lures: readonly (readonly [SlipUp, (verdict: Verdict) => Verdict])[] = [
      ['hiss-means-own-seal', instead('crosses', 'seal')],
      ['thud-means-sound', instead('crosses', 'sound')],
      ['silence-means-sound', instead('blocked', 'sound')],
      ['no-thud-means-blocked', instead('seal', 'blocked')],
    ];
    return {
      facts: [fact],
      uses: [
        ...new Set(
          passages.flatMap(({ element, other }): Ref[] => [`element:${element}`, `element:${other}`]),
        ),
      ],
      prompt: say('air-check.prompt'),
      space: {
        form: 'pair',
        left: passages.map((passage) => ({
          id: passage.element,
          label: say('air-check.passage', {
            element: thing('element', passage.element),
            noticed: noticed(passage),
          }),
        })),
        right: VERDICTS.map((id) => ({ id, label: say(`air-check.${id}`) })),
      },
      answers: [told((verdict) => verdict)],
      lures: lures.map(([slipUp, rule]): Lure => ({ answer: told(rule), slipUp, fact })),
      explanation: {
        row: say('air-check.row'),
        reason: say('air-check.reason'),
        more: passages.map((passage) =>
          say('air-check.line', {
            element: thing('element', passage.element),
            noticed: noticed(passage),
            verdict: say(`air-check.${passage.verdict}`),
          }),
        ),
      },
      isRight: (answer) =>
        answer.form === 'pair' &&
        passages.every((passage) => answer.pairs[passage.element] === heard(passage)),
    };
  },
};
