/**
 * What an answer is called in QTI, and the expression that is true for just that answer. Several answers can be
 * right, and a wrong one is told by its slip-up, so items carry their own conditions instead of a template.
 */

import type { Answer, AnswerSpace } from '../../core/questions/question.ts';
import { parseRational } from '../../core/rational.ts';
import { el, type XmlElement } from '../xml.ts';
import { optionNames } from './names.ts';

export interface Declared {
  readonly identifier: string;
  readonly cardinality: 'single' | 'multiple' | 'ordered';
  readonly baseType: 'identifier' | 'directedPair' | 'float';
  readonly values: readonly string[];
}

export const RESPONSE = 'RESPONSE';

/** The response variable of each cell to fill. */
export const cellResponse = (place: number): string => `${RESPONSE}_${place + 1}`;

/** Names of the options of a space; `left` and `right` differ for pairs only. */
export function namesOf(space: AnswerSpace): {
  left: ReadonlyMap<string, string>;
  right: ReadonlyMap<string, string>;
} {
  switch (space.form) {
    case 'set':
    case 'one':
      return same(optionNames(space.options, 'A'));
    case 'place':
      return same(optionNames(space.spots, 'A'));
    case 'order':
      return same(optionNames(space.items, 'A'));
    case 'pair':
      return { left: optionNames(space.left, 'L'), right: optionNames(space.right, 'R') };
    case 'fill':
      return same(optionNames(space.marks, 'M'));
    case 'number':
      return same(new Map());
  }
}

const same = (names: ReadonlyMap<string, string>) => ({ left: names, right: names });

/** A fraction or decimal text as a decimal that a float holds to its last digit that counts. */
export function decimal(text: string): string {
  const value = parseRational(text);
  if (!value) throw new Error(`no number: ${text}`);
  return String(value.valueOf());
}

/** The response that an answer is, one entry for each variable. */
export function declaredFor(space: AnswerSpace, answer: Answer): Declared[] {
  const { left, right } = namesOf(space);
  const single = (value: string): Declared[] => [
    { identifier: RESPONSE, cardinality: 'single', baseType: 'identifier', values: [value] },
  ];
  switch (answer.form) {
    case 'one':
      return single(left.get(answer.pick)!);
    case 'place':
      return single(left.get(answer.spot)!);
    case 'set': {
      const values = answer.picks.map((pick) => left.get(pick)!).sort();
      return [{ identifier: RESPONSE, cardinality: 'multiple', baseType: 'identifier', values }];
    }
    case 'order': {
      const values = answer.order.map((item) => left.get(item)!);
      return [{ identifier: RESPONSE, cardinality: 'ordered', baseType: 'identifier', values }];
    }
    case 'number':
      return [
        { identifier: RESPONSE, cardinality: 'single', baseType: 'float', values: [decimal(answer.value)] },
      ];
    case 'pair': {
      const values = Object.entries(answer.pairs).map(([from, to]) => `${left.get(from)!} ${right.get(to)!}`);
      return [
        { identifier: RESPONSE, cardinality: 'multiple', baseType: 'directedPair', values: values.sort() },
      ];
    }
    case 'fill':
      if (space.form !== 'fill') throw new Error('cells of another form');
      return space.asked.map((cell, place) => ({
        identifier: cellResponse(place),
        cardinality: 'single',
        baseType: 'identifier',
        values: [left.get(answer.cells[cell]!)!],
      }));
  }
}

const base = (type: Declared['baseType'], value: string) =>
  el('qti-base-value', { 'base-type': type }, value);
const variable = (identifier: string) => el('qti-variable', { identifier });

/** True when the response is this answer, numbers within the tolerance the question states. */
export function conditionFor(space: AnswerSpace, answer: Answer): XmlElement {
  const declared = declaredFor(space, answer);
  const conditions = declared.map(({ identifier, cardinality, baseType, values }): XmlElement => {
    if (space.form === 'number') {
      const tolerance = decimal(space.tolerance);
      return el(
        'qti-equal',
        { 'tolerance-mode': 'absolute', tolerance: `${tolerance} ${tolerance}` },
        variable(identifier),
        base(baseType, values[0]!),
      );
    }
    if (cardinality === 'single')
      return el('qti-match', {}, variable(identifier), base(baseType, values[0]!));
    if (values.length === 0) return el('qti-is-null', {}, variable(identifier));
    if (space.form === 'order' && space.alike && space.alike.length > 0)
      return alikeOrder(space, values, identifier);
    const container = cardinality === 'ordered' ? 'qti-ordered' : 'qti-multiple';
    return el(
      'qti-match',
      {},
      variable(identifier),
      el(container, {}, ...values.map((value) => base(baseType, value))),
    );
  });
  return conditions.length === 1 ? conditions[0]! : el('qti-and', {}, ...conditions);
}

/** Place by place: the item itself, or any of those that nobody can tell from it. */
function alikeOrder(
  space: Extract<AnswerSpace, { form: 'order' }>,
  values: readonly string[],
  identifier: string,
): XmlElement {
  const names = optionNames(space.items, 'A');
  const groups = (space.alike ?? []).map((group) => group.map((id) => names.get(id)!));
  return el(
    'qti-and',
    {},
    ...values.map((value, place) => {
      const at = el('qti-index', { n: place + 1 }, variable(identifier));
      const group = groups.find((names) => names.includes(value));
      return group
        ? el('qti-member', {}, at, el('qti-multiple', {}, ...group.map((name) => base('identifier', name))))
        : el('qti-match', {}, at, base('identifier', value));
    }),
  );
}

/** True for every order in which each first item of a pair comes before its second. */
export function precedenceCondition(
  space: Extract<AnswerSpace, { form: 'order' }>,
  pairs: readonly (readonly [string, string])[],
): XmlElement {
  const names = optionNames(space.items, 'A');
  const count = space.items.length;
  const at = (id: string, place: number) =>
    el(
      'qti-match',
      {},
      el('qti-index', { n: place }, variable(RESPONSE)),
      base('identifier', names.get(id)!),
    );
  const before = ([earlier, later]: readonly [string, string]) => {
    const places: XmlElement[] = [];
    for (let first = 1; first < count; first++)
      for (let second = first + 1; second <= count; second++)
        places.push(el('qti-and', {}, at(earlier, first), at(later, second)));
    return el('qti-or', {}, ...places);
  };
  return el('qti-and', {}, ...pairs.filter((pair) => pair.every((id) => names.has(id))).map(before));
}
