/**
 * A small QTI response processor, written from the standard's meaning of each expression and sharing nothing with
 * the exporter. It knows just the expressions that items here may use, and throws on any other.
 */

export type Value = readonly string[] | null;
export type Responses = ReadonlyMap<string, Value>;

const children = (element: Element): Element[] => [...element.children];
const textOf = (element: Element) => element.textContent ?? '';

interface Typed {
  readonly value: Value;
  readonly kind: 'single' | 'multiple' | 'ordered' | 'boolean';
}
const truth = (value: boolean): Typed => ({ value: [String(value)], kind: 'boolean' });
const isTrue = ({ value }: Typed) => value?.[0] === 'true';

function sameBag(a: readonly string[], b: readonly string[]): boolean {
  return [...a].sort().join('\n') === [...b].sort().join('\n');
}

function evaluate(
  expression: Element,
  cardinality: (id: string) => Typed['kind'],
  responses: Responses,
): Typed {
  const inner = () => children(expression).map((child) => evaluate(child, cardinality, responses));
  switch (expression.localName) {
    case 'qti-variable': {
      const id = expression.getAttribute('identifier')!;
      const value = responses.get(id) ?? null;
      return { value: value?.length === 0 ? null : value, kind: cardinality(id) };
    }
    case 'qti-base-value':
      return { value: [textOf(expression).trim()], kind: 'single' };
    case 'qti-multiple':
      return { value: inner().flatMap(({ value }) => value ?? []), kind: 'multiple' };
    case 'qti-ordered':
      return { value: inner().flatMap(({ value }) => value ?? []), kind: 'ordered' };
    case 'qti-match': {
      const [a, b] = inner() as [Typed, Typed];
      if (a.value === null || b.value === null) return truth(false);
      if (a.kind !== b.kind) throw new Error(`qti-match of ${a.kind} and ${b.kind}`);
      return truth(
        a.kind === 'multiple' ? sameBag(a.value, b.value) : a.value.join('\n') === b.value.join('\n'),
      );
    }
    case 'qti-index': {
      const [list] = inner() as [Typed];
      const at = list.value?.[Number(expression.getAttribute('n')) - 1];
      return { value: at === undefined ? null : [at], kind: 'single' };
    }
    case 'qti-member': {
      const [one, list] = inner() as [Typed, Typed];
      return truth(one.value !== null && (list.value ?? []).includes(one.value[0]!));
    }
    case 'qti-equal': {
      if (expression.getAttribute('tolerance-mode') !== 'absolute') throw new Error('tolerance-mode');
      const [low, high] = expression.getAttribute('tolerance')!.split(' ').map(Number) as [number, number];
      const [x, y] = inner().map(({ value }) => (value ? Number(value[0]) : Number.NaN)) as [number, number];
      // The first expression is held to the window around it, both ends in it.
      return truth(y >= x - low && y <= x + high);
    }
    case 'qti-is-null':
      return truth(inner()[0]!.value === null);
    case 'qti-and':
      return truth(inner().every(isTrue));
    case 'qti-or':
      return truth(inner().some(isTrue));
    default:
      throw new Error(`an expression of another kind: ${expression.localName}`);
  }
}

/** The outcomes after processing one set of responses. */
export function process(item: Element, responses: Responses): ReadonlyMap<string, string> {
  const declarations = new Map(
    [...item.querySelectorAll('qti-response-declaration')].map((own) => [
      own.getAttribute('identifier')!,
      own.getAttribute('cardinality') as Typed['kind'],
    ]),
  );
  const cardinality = (id: string) => {
    const declared = declarations.get(id);
    if (!declared) throw new Error(`no response "${id}" is declared`);
    return declared;
  };
  const outcomes = new Map<string, string>();
  for (const declared of item.querySelectorAll('qti-outcome-declaration')) {
    const initial = declared.querySelector('qti-default-value qti-value');
    if (initial) outcomes.set(declared.getAttribute('identifier')!, textOf(initial));
  }
  const carryOut = (rules: readonly Element[]) => {
    for (const rule of rules) {
      if (rule.localName !== 'qti-set-outcome-value')
        throw new Error(`a rule of another kind: ${rule.localName}`);
      const { value } = evaluate(rule.children[0]!, cardinality, responses);
      outcomes.set(rule.getAttribute('identifier')!, value?.[0] ?? '');
    }
  };
  for (const condition of item.querySelector('qti-response-processing')!.children) {
    if (condition.localName !== 'qti-response-condition') throw new Error(condition.localName);
    for (const branch of condition.children) {
      const isElse = branch.localName === 'qti-response-else';
      const [test, ...rules] = children(branch);
      if (!isElse && !isTrue(evaluate(test!, cardinality, responses))) continue;
      carryOut(isElse ? children(branch) : rules);
      break;
    }
  }
  return outcomes;
}
