/** Faults that codes can tell of, and codes that are settled with them, found by two routes. */
import { type CodeState, codesWith } from '../../../diagnosis/codes.ts';
import { isBroken, predict } from '../../../diagnosis/predict.ts';
import { circuitCodes } from '../../../diagnosis/test.ts';
import { type Fault, partOf } from '../../../faults/fault.ts';
import { usualPosition } from '../../../faults/pressure.ts';
import { faultSpace } from '../../../faults/space.ts';
import type { Random } from '../../../random.ts';
import type { DeckCode } from '../../../unit/service.ts';
import type { Ref, Unit } from '../../../unit/unit.ts';
import { trainRefs } from '../../../unit/unit.ts';
import { perUnit } from '../per-unit.ts';

const KINDS = [
  'element-fails',
  'gearset-stripped',
  'solenoid-unplugged',
  'supply-lost',
  'connector-off',
  'sensor-lost',
] as const;

/** Kinds of code whose state the deck settles; guesses of the controller are left out. */
const SETTLED: readonly DeckCode['kind'][] = ['circuit', 'electrical', 'ratio'];

/** Codes asked at once. */
export const ROWS = 4;

export interface CodeRow {
  readonly code: DeckCode;
  readonly state: CodeState;
  readonly own: boolean;
}

const sureCodes = (unit: Unit) => (unit.deck.codes ?? []).filter(({ id }) => unit.sure(`code:${id}`));

/** The rows whose state is sets or cannot, or could where the record itself leaves it open. */
export const settledRows = (rows: readonly CodeRow[]) =>
  rows.filter(({ code }) => SETTLED.includes(code.kind));

/** Faults of verified parts with every verified code; those with which no code can come are left out. */
export const tellingFaults = perUnit((unit: Unit): { fault: Fault; rows: CodeRow[] }[] => {
  if (sureCodes(unit).length < ROWS || ![...trainRefs(unit.deck)].every((ref) => unit.sure(ref))) return [];
  if (!unit.ranges.every((range) => unit.sure(range.ref))) return [];
  const wanted = new Set(sureCodes(unit));
  return faultSpace(unit, KINDS).flatMap((fault) => {
    if (!partRefs(fault).every((ref) => unit.sure(ref))) return [];
    const rows = codesWith(unit, fault).filter(({ code }) => wanted.has(code));
    return rows.some(({ state }) => state !== 'cannot') ? [{ fault, rows }] : [];
  });
});

export function partRefs(fault: Fault): Ref[] {
  const part = partOf(fault);
  if ('element' in fault) return [`element:${part}`];
  if ('gearset' in fault) return [`gearset:${part}`];
  if ('solenoid' in fault) return [`solenoid:${part}`];
  if ('supply' in fault) return [`supply:${part}`];
  return 'sensor' in fault ? [`sensor:${part}`] : [];
}

/** Everything the state of codes rests on, beside the codes. */
export const codeRefs = (unit: Unit, fault: Fault): Ref[] => [
  ...partRefs(fault),
  ...trainRefs(unit.deck),
  ...unit.ranges.map(({ ref }) => ref),
];

/** Some codes for a question, of as many states as there are; the code of the part itself is always among them. */
export function pickRows(
  rows: readonly CodeRow[],
  random: Random,
  kindOf: (row: CodeRow) => string,
): CodeRow[] {
  const piles = new Map<string, CodeRow[]>();
  for (const row of random.shuffle(rows)) piles.set(kindOf(row), [...(piles.get(kindOf(row)) ?? []), row]);
  const picked: CodeRow[] = [];
  for (let turn = 0; picked.length < ROWS && turn < ROWS; turn++)
    for (const pile of piles.values()) {
      const row = pile[turn];
      if (row && picked.length < ROWS) picked.push(row);
    }
  return picked.sort((a, b) => (a.code.id < b.code.id ? -1 : 1));
}

/** Whether a gauge at anything the solenoid feeds reads otherwise than in a sound unit, in any row. */
function feedsOtherwise(unit: Unit, fault: Fault, solenoid: string): boolean {
  const fed = unit.deck.solenoids?.find(({ id }) => id === solenoid)?.feeds ?? [];
  if ('element' in fault && fed.includes(fault.element)) return true;
  const rows = [...unit.ranges, ...unit.neutrals];
  return unit.deck.train.elements
    .filter(({ id }) => fed.includes(id))
    .some(({ id: element }) =>
      rows.some((row) => {
        const test = {
          kind: 'gauge',
          element,
          row: row.id,
          position: usualPosition(unit.deck, row),
        } as const;
        return predict(unit, fault, test) !== predict(unit, null, test);
      }),
    );
}

/** The state of a code by what tests show: circuit codes read out, ranges driven. Not by `codesWith`. */
export function stateByTests(unit: Unit, fault: Fault, code: DeckCode): CodeState | null {
  if (!SETTLED.includes(code.kind)) {
    const [watched] = code.watches;
    if (!watched?.startsWith('solenoid:')) return null;
    const solenoid = watched.slice('solenoid:'.length);
    const dead = isBroken(unit.deck, fault, watched) === true;
    return dead || feedsOtherwise(unit, fault, solenoid) ? 'could' : 'cannot';
  }
  if (code.kind !== 'ratio') {
    const reading = predict(unit, fault, { kind: 'codes' });
    if (reading === null || !circuitCodes(unit.deck).includes(code)) return null;
    return reading.slice('codes:'.length).split('+').includes(code.id) ? 'sets' : 'cannot';
  }
  const sensors = unit.deck.sensors ?? [];
  const heard = (shaft: string) =>
    sensors.some(
      ({ id, reads }) => reads === shaft && predict(unit, fault, { kind: 'signal', sensor: id }) === 'signal',
    );
  if (!heard(unit.deck.train.input) || !heard(unit.deck.train.output)) return 'cannot';
  const readings = code.watches.map((watched) => {
    const row = watched.slice('range:'.length);
    const range = unit.ranges.find(({ id }) => id === row);
    return (
      range && predict(unit, fault, { kind: 'road', row, position: usualPosition(unit.deck, { id: row }) })
    );
  });
  if (readings.some((reading) => reading === undefined)) return null;
  const away = (reading: (typeof readings)[number]) =>
    reading === 'other-ratio' || reading?.startsWith('range:') === true;
  if (readings.some(away)) return 'sets';
  return readings.every((reading) => reading === 'works') ? 'cannot' : 'could';
}
