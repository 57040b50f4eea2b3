/**
 * The shapes of a question: what is asked, in which form it is answered, which answers are right, which wrong
 * answers tell of a known slip-up, and why. All of it is plain JSON, computed from a unit.
 */
import type { Random } from '../random.ts';
import type { Ref, Unit } from '../unit/unit.ts';
import type { Drawing } from './drawing.ts';
import type { Phrase } from './phrase.ts';
import type { SlipUp } from './slip-ups.ts';

export type { Drawing } from './drawing.ts';

export const LEVELS = ['read', 'apply', 'reason', 'transfer'] as const;
export type Level = (typeof LEVELS)[number];

/** One thing to hold in memory or one skill to keep, by a stable id within its deck: "range:4/elements". */
export type FactId = string;

export interface Option {
  readonly id: string;
  readonly label: Phrase;
}

/**
 * set: tick all. one: pick of four or more. order: all items in order. pair: one right for each left. place: one
 * of the numbered places on the drawing.
 */
export type AnswerSpace =
  | { readonly form: 'set'; readonly options: readonly Option[] }
  | { readonly form: 'one'; readonly options: readonly Option[] }
  | {
      readonly form: 'order';
      readonly items: readonly Option[];
      readonly first: Phrase;
      readonly last: Phrase;
      /** Groups of items that nobody can tell apart: any of a group may take the place of another. */
      readonly alike?: readonly (readonly string[])[];
    }
  | {
      readonly form: 'number';
      /** Unit shown beside the entry: "rpm", or null for a bare ratio. */
      readonly unit: string | null;
      /** Half-width of what is accepted, a decimal text in the same unit. */
      readonly tolerance: string;
      /** True when a minus sign may be part of the answer. */
      readonly signed: boolean;
      /** Decimals the answer is shown with. */
      readonly decimals: number;
    }
  | { readonly form: 'pair'; readonly left: readonly Option[]; readonly right: readonly Option[] }
  | {
      readonly form: 'fill';
      readonly rows: readonly Option[];
      readonly columns: readonly Option[];
      /** What a cell may hold. */
      readonly marks: readonly Option[];
      /** Cells to fill, "row/column"; the others are shown as given. */
      readonly asked: readonly string[];
      readonly given: Readonly<Record<string, string>>;
    }
  | {
      readonly form: 'place';
      /** In the order of the drawing's `places`, which have these ids. */
      readonly spots: readonly Option[];
    };

export type Form = AnswerSpace['form'];

/** What a person answered, or what is right: option ids, or an exact decimal or fraction text. */
export type Answer =
  | { readonly form: 'set'; readonly picks: readonly string[] }
  | { readonly form: 'one'; readonly pick: string }
  | { readonly form: 'order'; readonly order: readonly string[] }
  | { readonly form: 'number'; readonly value: string }
  | { readonly form: 'pair'; readonly pairs: Readonly<Record<string, string>> }
  | { readonly form: 'fill'; readonly cells: Readonly<Record<string, string>> }
  | { readonly form: 'place'; readonly spot: string };

/** Orders that are as right as the one declared: those that put the first of each pair before the second. */
export interface Accepts {
  readonly rule: 'precedence';
  /** [earlier, later], relations through items that are not asked included. */
  readonly pairs: readonly (readonly [string, string])[];
}

/** A wrong answer that a named wrong rule gives on the same data. */
export interface Lure {
  readonly answer: Answer;
  readonly slipUp: SlipUp;
  /** The fact this mistake shows to be missing, when it names one. */
  readonly fact?: FactId;
}

/** The answer's proof: the row, the reason, and more on tap. */
export interface Explanation {
  readonly row: Phrase;
  readonly reason: Phrase;
  readonly more: readonly Phrase[];
  readonly drawing?: Drawing;
}

/** What a family computes; the engine adds identity, cautions and the guess rate, and checks it. */
export interface Posed {
  /** What must be known to answer: the first is what the question was asked for. */
  readonly facts: readonly FactId[];
  /** Every deck value that prompt, drawing and answer rest on. */
  readonly uses: readonly Ref[];
  readonly prompt: Phrase;
  readonly drawing?: Drawing;
  readonly space: AnswerSpace;
  /** All right answers; more than one only where several are equally right. */
  readonly answers: readonly [Answer, ...Answer[]];
  /** Makes further orders right, where there are too many to declare. */
  readonly accepts?: Accepts;
  /** Outputs of the slip-ups, in any order; the engine drops those that are not wrong. */
  readonly lures: readonly Lure[];
  readonly explanation: Explanation;
  /**
   * Judges an answer from the raw unit, by another route than the one that made `answers`. The engine runs it
   * over the whole answer space.
   */
  readonly isRight: (answer: Answer) => boolean;
}

export interface Question extends Omit<Posed, 'isRight'> {
  readonly deck: { readonly id: string; readonly revision: number };
  readonly family: string;
  readonly fact: FactId;
  readonly seed: number;
  readonly level: Level;
  /** Chance of a right answer by blind guessing within the form, 0 to 1. */
  readonly guessRate: number;
  readonly cautions: readonly string[];
}

/** A way of asking: one file, one object (docs/families.md). */
export interface Family {
  /** Lower-kebab, stable for ever. */
  readonly id: string;
  readonly level: Level;
  readonly form: Form;
  /** Facts of this unit that the family can ask about, unverified ones left out. */
  facts(unit: Unit): FactId[];
  /** One question about the fact; undefined when this draw gives no fair question. Chance only from `random`. */
  pose(unit: Unit, fact: FactId, random: Random): Posed | undefined;
}
