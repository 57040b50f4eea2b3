/** What a fault makes of a row: the train that is left and the brakes and clutches that hold in it. */
import { type Element, elementOf, type Train } from '../gears/train.ts';
import type { Deck } from '../unit/deck.ts';
import type { Unit } from '../unit/unit.ts';
import { type Fault, faultId } from './fault.ts';
import { type FaultRow, pressuresWith } from './pressure.ts';

export interface Condition {
  readonly train: Train;
  /** Brakes and clutches that are on, in the order of the train. */
  readonly friction: readonly string[];
}

/** A fault names parts that the unit has; any other is a mistake of the caller. */
function checkParts({ train, solenoids = [], sensors = [], electrical }: Deck, fault: Fault | null): void {
  if (!fault) return;
  const has = (kind: string, records: readonly { readonly id: string }[], id: string) => {
    if (!records.some((record) => record.id === id)) throw new Error(`no ${kind} "${id}" in this unit`);
  };
  if ('element' in fault) has('element', train.elements, fault.element);
  if ('gearset' in fault) has('gearset', train.gearsets, fault.gearset);
  if ('solenoid' in fault) has('solenoid', solenoids, fault.solenoid);
  if ('sensor' in fault) has('sensor', sensors, fault.sensor);
  if ('supply' in fault) has('supply', electrical?.supplies ?? [], fault.supply);
  if (fault.kind === 'low-pressure' && !(fault.percent >= 1 && fault.percent <= 99))
    throw new Error(`${fault.percent} percent is no low pressure`);
}

const changed = new WeakMap<Train, Map<string, Train>>();

/** The train with the fault in it; the same one each time, so that what is solved of it can be kept. */
export function trainWith(train: Train, fault: Fault | null): Train {
  if (!fault) return train;
  const known = changed.get(train) ?? new Map<string, Train>();
  changed.set(train, known);
  const made = known.get(faultId(fault)) ?? changedBy(train, fault);
  known.set(faultId(fault), made);
  return made;
}

function changedBy(train: Train, fault: Fault): Train {
  const change = (id: string, made: (element: Element) => Element[]): Train => {
    const found = elementOf(train, id);
    return found.kind === 'one-way'
      ? { ...train, elements: train.elements.flatMap((other) => (other === found ? made(other) : [other])) }
      : train;
  };
  switch (fault.kind) {
    case 'element-fails':
      return change(fault.element, () => []);
    case 'element-stuck':
      return change(fault.element, ({ id, between }) => [{ id, kind: 'clutch', between }]);
    case 'one-way-reversed':
      return change(fault.element, (element) => [
        { ...element, overruns: element.overruns === 'backward' ? 'forward' : 'backward' },
      ]);
    case 'gearset-stripped':
      return { ...train, gearsets: train.gearsets.filter(({ id }) => id !== fault.gearset) };
    default:
      return train;
  }
}

/** Null where the deck does not settle which elements have pressure. An unknown part throws. */
export function conditionWith(
  unit: Unit,
  fault: Fault | null,
  row: FaultRow,
  position?: string | null,
): Condition | null {
  checkParts(unit.deck, fault);
  const pressures = pressuresWith(unit.deck, fault, row, position);
  if ([...pressures.values()].includes(null)) return null;
  const train = trainWith(unit.deck.train, fault);
  const friction = train.elements.flatMap(({ id, kind }) => {
    if (kind === 'one-way') return [];
    const itself = fault && 'element' in fault && fault.element === id ? fault.kind : null;
    if (itself === 'element-stuck') return [id];
    return itself === 'element-fails' || (pressures.get(id) ?? 'none') === 'none' ? [] : [id];
  });
  return { train, friction };
}
