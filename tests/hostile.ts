/**
 * What strangers may hand over: texts cut, doubled and mixed, values exchanged and put where they do not belong, keys
 * that reach for prototypes. Runs are few, and the same each time, so that the suite stays quick and its verdict that of
 * the code; HOSTILE=50 npx vitest run hostile has fifty times as many, other ones each time.
 */
import fc from 'fast-check';
import { expect } from 'vitest';

/** `few` runs of one seed, or times HOSTILE of any. */
export const runs = (few: number): { numRuns: number; seed?: number } =>
  process.env.HOSTILE
    ? { numRuns: few * Math.max(1, Number(process.env.HOSTILE)) }
    : { numRuns: few, seed: 1 };

// biome-ignore lint/suspicious/noExplicitAny: anything may stand anywhere
export type Anything = any;

const PROTOTYPES = [Object, Array, String, Number, Function, Map, Set].map(({ prototype }) => prototype);
const namesOf = () => PROTOTYPES.map((prototype) => Object.getOwnPropertyNames(prototype).sort());
const CLEAN = namesOf();

/** Nothing that every object has was added to, taken away or written over. */
export function expectCleanPrototypes(): void {
  expect(namesOf()).toEqual(CLEAN);
  const fresh = {} as Record<string, unknown>;
  expect([fresh.admin, fresh.polluted, fresh.length]).toEqual([undefined, undefined, undefined]);
  expect(fresh.toString).toBe(Object.prototype.toString);
  expect(fresh.constructor).toBe(Object);
}

/** Texts that mean something to something: prototypes, markup, formulas, message formats, marks that turn lines round. */
export const NASTY: readonly string[] = [
  '__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', '', ' ', '\u0000', '\ud800', '\u202eabc',
  '<img src=x onerror="globalThis.hit=1">', '"><script>globalThis.hit=1</script>', "javascript:globalThis.hit=1//",
  '{x, plural, other {#}}', "{'", '=1+1', '=HYPERLINK("x")', '-0', '1e999', 'NaN', '../../x', '%00', 'a'.repeat(3000),
  'case', 'floor', 'line-pressure', '🔧',
]; // biome-ignore format: a list of texts

/** Changes to a text: at a place, cut so many letters, put these in. */
export type Edits = readonly (readonly [at: number, cut: number, put: string])[];

export const edits: fc.Arbitrary<Edits> = fc.array(
  fc.tuple(
    fc.nat(),
    fc.oneof({ arbitrary: fc.nat(12), weight: 9 }, { arbitrary: fc.nat(4000), weight: 1 }),
    fc.oneof(
      fc.constantFrom('', '"', '{', '}', '[', ']', ',', ':', '0', '-1', '1e999', 'null', '\\', '.', '\n', '\t', ';'),
      fc.constantFrom('"__proto__":{"admin":true},', '"constructor":{"prototype":{"admin":true}},'),
      fc.constantFrom(...NASTY),
      fc.string({ maxLength: 4 }),
    ),
  ),
  { minLength: 1, maxLength: 6 },
); // biome-ignore format: a list of letters

export const edited = (text: string, list: Edits): string =>
  list.reduce((now, [at, cut, put]) => {
    const place = at % (now.length + 1);
    return now.slice(0, place) + put + now.slice(place + cut);
  }, text);

/** Changes to bytes: one written over, a stretch doubled, the end cut off. */
export const byteEdits = fc.array(fc.tuple(fc.constantFrom('set', 'double', 'cut'), fc.nat(), fc.nat(255)), {
  minLength: 1,
  maxLength: 5,
});

export const editedBytes = (bytes: Uint8Array, list: readonly (readonly [string, number, number])[]) =>
  list.reduce((now, [kind, at, value]) => {
    if (now.length === 0) return now;
    const place = at % now.length;
    if (kind === 'set') return now.with(place, value);
    if (kind === 'cut') return now.slice(0, place);
    return Uint8Array.from([...now.slice(0, place), ...now.slice(place, place + value), ...now.slice(place)]);
  }, Uint8Array.from(bytes));

/** Every place in a value, as the object that holds it and the key in it. */
export function placesIn(value: Anything): [Anything, string][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((key) => [[value, key] as [Anything, string], ...placesIn(value[key])]);
}

/** Strings that stand somewhere in a value: swapping them makes wrong references of the right shape. */
const textsIn = (value: Anything): string[] => [
  ...new Set(
    placesIn(value)
      .map(([holder, key]) => holder[key])
      .filter((held) => typeof held === 'string'),
  ),
];

export type Change =
  | { readonly kind: 'drop' | 'double' | 'reverse'; readonly at: number }
  | { readonly kind: 'put'; readonly at: number; readonly value: Anything }
  | { readonly kind: 'key'; readonly at: number; readonly key: string; readonly value: Anything }
  | { readonly kind: 'swap'; readonly at: number; readonly text: number };

export const swaps = fc.record({ kind: fc.constant('swap' as const), at: fc.nat(), text: fc.nat() });

export const changes: fc.Arbitrary<Change> = fc.oneof(
  fc.record({ kind: fc.constantFrom('drop' as const, 'double' as const, 'reverse' as const), at: fc.nat() }),
  fc.record({ kind: fc.constant('put' as const), at: fc.nat(), value: fc.jsonValue({ maxDepth: 2 }) }),
  fc.record({
    kind: fc.constant('put' as const),
    at: fc.nat(),
    value: fc.oneof(
      fc.integer({ min: -2, max: 1100 }),
      fc.constantFrom(...NASTY, [], {}, null, 2 ** 53, -0.5),
    ),
  }),
  fc.record({
    kind: fc.constant('key' as const),
    at: fc.nat(),
    key: fc.constantFrom(
      '__proto__',
      'constructor',
      'prototype',
      'toString',
      'length',
      'then',
      'toJSON',
      '0',
    ),
    value: fc.constantFrom<Anything>({ admin: true }, { prototype: { admin: true } }, null, 'x', 7),
  }),
  swaps,
);

const write = (holder: Anything, key: string, value: Anything) =>
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });

/** Changes the value where it stands. Keys are written as its own, as JSON.parse would. */
export function apply(value: Anything, change: Change): void {
  const places = placesIn(value);
  if (places.length === 0) return;
  const [holder, key] = places[change.at % places.length]!;
  const texts = textsIn(value);
  if (change.kind === 'drop') Array.isArray(holder) ? holder.splice(Number(key), 1) : delete holder[key];
  else if (change.kind === 'double' && Array.isArray(holder))
    holder.push(structuredClone(holder[Number(key)]));
  else if (change.kind === 'reverse' && Array.isArray(holder)) holder.reverse();
  else if (change.kind === 'put') write(holder, key, structuredClone(change.value));
  else if (change.kind === 'key')
    write(Array.isArray(holder) ? value : holder, change.key, structuredClone(change.value));
  else if (change.kind === 'swap' && typeof holder[key] === 'string' && texts.length > 0)
    holder[key] = texts[change.text % texts.length];
}

/** A copy with the changes. */
export function changed<T>(value: T, list: readonly Change[]): T {
  const copy = structuredClone(value);
  for (const change of list) apply(copy, change);
  return copy;
}
