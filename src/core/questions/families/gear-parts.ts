/** What the gear families say alike: what an answer rests on, a working in words, numbers as they are shown. */
import { GEARSET_KINDS, type Gearset, type MEMBERS } from '../../gears/train.ts';
import type { Form, PutIn, Step, Working } from '../../gears/working.ts';
import { makeDecimal, type Rational } from '../../rational.ts';
import type { Range, Ref, Unit } from '../../unit/unit.ts';
import { type Phrase, type PhraseValue, say, thing } from '../phrase.ts';
import { elementInWords, sureRanges } from './chart-parts.ts';

/** Places a worked speed is shown with; reckoning goes on with the exact one. */
const PLACES = 4;

/** What the speeds in a range rest on: its row, every gearset, the elements that are on. */
export const speedRefs = (unit: Unit, range: Range): Ref[] => [
  range.ref,
  ...unit.deck.train.gearsets.map((set): Ref => `gearset:${set.id}`),
  ...range.applied.map((id): Ref => `element:${id}`),
];

/** Ranges whose speeds rest on nothing unverified. */
export const reckonableRanges = (unit: Unit): Range[] =>
  sureRanges(unit).filter((range) => speedRefs(unit, range).every((ref) => unit.sure(ref)));

/** With a true minus sign, for reading: "−1.80". */
export const decimalText = (value: Rational, places: number): string =>
  makeDecimal(value, places).replace('-', '−');

/** "0.3571", "0", "−1.25": no trailing zeros. */
export const speedText = (value: Rational): string => {
  const text = decimalText(value, PLACES);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/** "0.3571 + 0.6429x" */
function formText({ constant, terms }: Form): string {
  const parts = [...terms].map(([letter, share]) => {
    const size = speedText(share.abs());
    return { minus: share.compare(0n) < 0, text: size === '1' ? letter : size + letter };
  });
  if (constant.n !== 0n || parts.length === 0)
    parts.unshift({ minus: constant.compare(0n) < 0, text: speedText(constant.abs()) });
  return parts
    .map(({ minus, text }, place) => (place === 0 ? (minus ? '−' : '') : minus ? ' − ' : ' + ') + text)
    .join('');
}

/** A factor in an equation: the name of what is not known yet, else the number, in brackets where needed. */
function factorIn(set: Gearset, putIn: PutIn, member: (typeof MEMBERS)[number]): PhraseValue {
  const form = putIn[member];
  if (!form) return thing('shaft', set[member].shaft);
  const text = formText(form);
  return /[ −]/.test(text) ? `(${text})` : text;
}

function equation(set: Gearset, putIn: PutIn): Phrase {
  const [ring, sun] = [set.ring.teeth, set.sun.teeth];
  return say(`gears.equation-${set.kind}`, {
    gearset: thing('gearset', set.id),
    sunTeeth: sun,
    ringTeeth: ring,
    carrierTeeth: set.kind === 'simple' ? ring + sun : ring - sun,
    sun: factorIn(set, putIn, 'sun'),
    ring: factorIn(set, putIn, 'ring'),
    carrier: factorIn(set, putIn, 'carrier'),
  });
}

function stepInWords(step: Step): Phrase {
  switch (step.kind) {
    case 'call':
      return say('gears.step-call', { shaft: thing('shaft', step.shaft), letter: step.letter });
    case 'locks':
      return say('gears.step-locks', {
        gearset: thing('gearset', step.gearset.id),
        shaft: thing('shaft', step.shaft),
        speed: formText(step.result),
      });
    case 'solves':
      return say('gears.step-solves', {
        equation: equation(step.gearset, step.putIn),
        shaft: thing('shaft', step.shaft),
        speed: formText(step.result),
      });
    case 'closes':
      return say('gears.step-closes', {
        equation: equation(step.gearset, step.putIn),
        letter: step.letter,
        speed: formText(step.result),
      });
    case 'clashes':
      return say('gears.step-clashes', { equation: equation(step.gearset, step.putIn) });
  }
}

/** The equation each kind of set in these steps follows, told once. */
function rulesOf(steps: readonly Step[]): Phrase[] {
  const kinds = steps.flatMap((step) => (step.kind === 'call' ? [] : [step.gearset.kind]));
  return GEARSET_KINDS.filter((kind) => kinds.includes(kind)).map((kind) => say(`gears.rule-${kind}`));
}

/** What the elements do, the rule, and the steps with the numbers put in. */
export const stepsInWords = (unit: Unit, applied: readonly string[], steps: readonly Step[]): Phrase[] => [
  ...applied.map((id) => elementInWords(unit, id)),
  say('gears.start'),
  ...rulesOf(steps),
  ...steps.map(stepInWords),
];

export const workingInWords = (unit: Unit, range: Range, working: Working): Phrase[] =>
  stepsInWords(unit, range.applied, working.steps);

/** "B2 + B3 + C2": elements that are on together. */
export const together = (ids: readonly string[]): Phrase =>
  ids
    .map((id): Phrase => thing('element', id))
    .reduce((sum, element) => say('gears.together', { sum, element }));

/** forward: the way the input turns. */
export const wayOf = (speed: Rational): 'forward' | 'backward' | 'still' =>
  speed.n === 0n ? 'still' : speed.compare(0n) > 0 ? 'forward' : 'backward';
