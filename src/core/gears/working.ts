/**
 * Works a speed out the way one does on paper: one gearset at a time, numbers put into its equation, a letter
 * for a speed that is not known yet. It gives the steps that lead to one shaft and leaves the others out.
 * Exact; the input turns at 1. The answers come from `solveSpeeds`; this says how they follow.
 * The rule that makes a gearset an equation can be changed, to see where a wrong rule leads.
 */
import { ONE, type Rational, ZERO } from '../rational.ts';
import {
  CASE,
  elementOf,
  type Gearset,
  MEMBERS,
  type Member,
  shaftsOf,
  type Train,
  willis,
} from './train.ts';

/** A speed so far: a number, and multiples of speeds that have a letter. */
export interface Form {
  readonly constant: Rational;
  readonly terms: ReadonlyMap<string, Rational>;
}

export type Coefficients = (set: Gearset) => Record<Member, bigint>;

/** The speeds put into a gearset's equation; null for the one it is solved for. */
export type PutIn = Readonly<Record<Member, Form | null>>;

/**
 * call: the shaft's speed gets a letter. solves: the equation gives the shaft's speed. locks: it does so because
 * two members turn alike. closes: it gives what a letter stands for. clashes: it cannot be true.
 */
export type Step =
  | { readonly kind: 'call'; readonly shaft: string; readonly letter: string }
  | {
      readonly kind: 'solves' | 'locks';
      readonly gearset: Gearset;
      readonly putIn: PutIn;
      readonly shaft: string;
      readonly result: Form;
    }
  | {
      readonly kind: 'closes';
      readonly gearset: Gearset;
      readonly putIn: PutIn;
      readonly letter: string;
      readonly result: Form;
    }
  | { readonly kind: 'clashes'; readonly gearset: Gearset; readonly putIn: PutIn };

export interface Working {
  readonly steps: readonly Step[];
  readonly speed: Rational;
}

const LETTERS = ['x', 'y', 'z', 'u', 'v', 'w'];

const number = (constant: Rational): Form => ({ constant, terms: new Map() });

/** a + factor × b */
function plus(a: Form, factor: Rational, b: Form): Form {
  const terms = new Map(a.terms);
  for (const [letter, share] of b.terms) {
    const sum = (terms.get(letter) ?? ZERO).add(share.mul(factor));
    if (sum.n === 0n) terms.delete(letter);
    else terms.set(letter, sum);
  }
  return { constant: a.constant.add(b.constant.mul(factor)), terms };
}

const scaled = (form: Form, factor: Rational): Form => plus(number(ZERO), factor, form);

const alike = (a: Form, b: Form) => {
  const rest = plus(a, ONE.neg(), b);
  return rest.constant.n === 0n && rest.terms.size === 0;
};

/** The name under which the shafts that turn as one are known: the case, the input, or the first of them. */
function groupsOf(train: Train, applied: readonly string[]): ReadonlyMap<string, string> {
  const groups = new Map([CASE, train.input, ...shaftsOf(train)].map((shaft) => [shaft, shaft]));
  const order = [...groups.keys()];
  for (const id of applied) {
    const [a, b] = elementOf(train, id).between.map((shaft) => groups.get(shaft)!) as [string, string];
    const [kept, gone] = order.indexOf(a) <= order.indexOf(b) ? [a, b] : [b, a];
    for (const [shaft, group] of groups) if (group === gone) groups.set(shaft, kept);
  }
  return groups;
}

/** One run on paper: what is known so far, and which earlier steps each step leans on. */
class Paper {
  readonly steps: { readonly step: Step; readonly leansOn: readonly number[] }[] = [];
  private readonly forms = new Map<string, Form>();
  private readonly letters = new Map<string, Form>();
  private readonly writtenAt = new Map<string, number>();
  private readonly groups: ReadonlyMap<string, string>;
  private readonly unused: Gearset[];

  constructor(
    train: Train,
    applied: readonly string[],
    private readonly rule: Coefficients,
  ) {
    this.groups = groupsOf(train, applied);
    this.unused = [...train.gearsets];
    this.forms.set(CASE, number(ZERO));
    const input = this.groups.get(train.input)!;
    if (input !== CASE) this.forms.set(input, number(ONE));
  }

  /** What is known of a shaft, with every letter that has been closed put in. */
  read(shaft: string): Form | null {
    const form = this.forms.get(this.groups.get(shaft)!);
    return form ? this.resolve(form) : null;
  }

  private resolve(form: Form): Form {
    let result = number(form.constant);
    for (const [letter, share] of form.terms) {
      const stands = this.letters.get(letter);
      result = plus(
        result,
        share,
        stands ? this.resolve(stands) : { constant: ZERO, terms: new Map([[letter, ONE]]) },
      );
    }
    return result;
  }

  /** The steps this shaft's speed comes from, itself not among them. */
  origins(shaft: string): number[] {
    const group = this.groups.get(shaft)!;
    const at = (symbol: string) => this.writtenAt.get(symbol) ?? [];
    const letters = [...(this.forms.get(group)?.terms.keys() ?? [])].map((letter) => `letter ${letter}`);
    return [`shaft ${group}`, ...letters].flatMap(at);
  }

  private write(step: Step, symbol: string | null, leansOn: readonly number[]) {
    if (symbol) this.writtenAt.set(symbol, this.steps.length);
    this.steps.push({ step, leansOn });
  }

  /** Shafts of the set that turn as one share a coefficient; those without speed yet are unknown. */
  private unknownsOf(set: Gearset): Map<string, bigint> {
    const unknowns = new Map<string, bigint>();
    for (const member of MEMBERS) {
      const group = this.groups.get(set[member].shaft)!;
      if (!this.forms.has(group)) unknowns.set(group, (unknowns.get(group) ?? 0n) + this.rule(set)[member]);
    }
    for (const [group, coefficient] of unknowns) if (coefficient === 0n) unknowns.delete(group);
    return unknowns;
  }

  /** Does the next step. False when nothing is left to do; a clash is the last step there can be. */
  advance(): boolean {
    if (this.steps.at(-1)?.step.kind === 'clashes') return false;
    const ready = this.unused.find((set) => this.unknownsOf(set).size <= 1);
    if (!ready) return this.callNext();
    this.unused.splice(this.unused.indexOf(ready), 1);
    const putIn: PutIn = {
      sun: this.read(ready.sun.shaft),
      ring: this.read(ready.ring.shaft),
      carrier: this.read(ready.carrier.shaft),
    };
    const coefficients = this.rule(ready);
    let rest = number(ZERO);
    for (const member of MEMBERS) {
      const form = putIn[member];
      if (form) rest = plus(rest, ONE.mul(coefficients[member]), form);
    }
    const leansOn = MEMBERS.flatMap((member) => this.origins(ready[member].shaft));
    const [unknown] = this.unknownsOf(ready);
    if (unknown) {
      const [group, coefficient] = unknown;
      const result = scaled(rest, ONE.neg().div(coefficient));
      const known = MEMBERS.map((member) => putIn[member]).filter((form) => form !== null);
      const kind = known.every((form) => alike(form, result)) ? 'locks' : 'solves';
      const member = MEMBERS.find((m) => this.groups.get(ready[m].shaft) === group)!;
      this.forms.set(group, result);
      this.write(
        { kind, gearset: ready, putIn, shaft: ready[member].shaft, result },
        `shaft ${group}`,
        leansOn,
      );
      return true;
    }
    const [first] = rest.terms;
    if (first) {
      const [letter, share] = first;
      const others = { constant: rest.constant, terms: new Map([...rest.terms].slice(1)) };
      const result = scaled(others, share.inverse().neg());
      this.letters.set(letter, result);
      this.write({ kind: 'closes', gearset: ready, putIn, letter, result }, `letter ${letter}`, leansOn);
    } else if (rest.constant.n !== 0n) {
      this.write({ kind: 'clashes', gearset: ready, putIn }, null, leansOn);
    }
    return true;
  }

  /** No set has one unknown only: the shaft that most of them share gets a letter. */
  private callNext(): boolean {
    const [set] = this.unused.toSorted((a, b) => this.unknownsOf(a).size - this.unknownsOf(b).size);
    const letter = LETTERS.find((free) => !this.writtenAt.has(`called ${free}`));
    if (!set || !letter) return false;
    const shared = (group: string) => this.unused.filter((other) => this.unknownsOf(other).has(group)).length;
    const [group] = [...this.unknownsOf(set).keys()].sort((a, b) => shared(b) - shared(a));
    const member = MEMBERS.find((m) => this.groups.get(set[m].shaft) === group)!;
    this.forms.set(group!, { constant: ZERO, terms: new Map([[letter, ONE]]) });
    this.writtenAt.set(`called ${letter}`, this.steps.length);
    this.write({ kind: 'call', shaft: set[member].shaft, letter }, `shaft ${group}`, []);
    return true;
  }

  /** The steps that these lean on, and those that they lean on in turn, in order. */
  trace(from: readonly number[]): Step[] {
    const needed = new Set<number>();
    const visit = (index: number) => {
      if (needed.has(index)) return;
      needed.add(index);
      this.steps[index]!.leansOn.forEach(visit);
    };
    from.forEach(visit);
    return this.steps.filter((_, index) => needed.has(index)).map(({ step }) => step);
  }
}

/**
 * The speed of a shaft per turn of the input and the steps to it. Null when the train leaves it open, or when
 * the equations clash on the way.
 */
export function workOut(
  train: Train,
  applied: readonly string[],
  shaft: string,
  rule: Coefficients = willis,
): Working | null {
  const paper = new Paper(train, applied, rule);
  const settled = () => {
    const form = paper.read(shaft);
    return form && form.terms.size === 0 ? form.constant : null;
  };
  while (!settled() && paper.advance());
  const speed = settled();
  return speed && { speed, steps: paper.trace(paper.origins(shaft)) };
}

/** The steps to an equation that cannot be true with the input turning; null when there is none. */
export function workOutClash(train: Train, applied: readonly string[]): readonly Step[] | null {
  const paper = new Paper(train, applied, willis);
  while (paper.advance());
  const last = paper.steps.length - 1;
  return paper.steps[last]?.step.kind === 'clashes' ? paper.trace([last]) : null;
}
