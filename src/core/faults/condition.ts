/** What a fault makes of a row: the train that is left and the brakes and clutches that hold in it. */
import { type Element, elementOf, type Train } from '../gears/train.ts';
import type { Unit } from '../unit/unit.ts';
import type { Fault } from './fault.ts';
import { type FaultRow, pressuresWith } from './pressure.ts';

export interface Condition {
  readonly train: Train;
  /** Brakes and clutches that are on, in the order of the train. */
  readonly friction: readonly string[];
}

/** The train with the fault in it. */
export function trainWith(train: Train, fault: Fault | null): Train {
  const change = (id: string, made: (element: Element) => Element[]): Train => {
    const found = elementOf(train, id);
    return found.kind === 'one-way'
      ? { ...train, elements: train.elements.flatMap((other) => (other === found ? made(other) : [other])) }
      : train;
  };
  switch (fault?.kind) {
    case 'element-fails':
      return change(fault.element, () => []);
    case 'element-stuck':
      return change(fault.element, ({ id, between }) => [{ id, kind: 'clutch', between }]);
    case 'one-way-reversed':
      return change(fault.element, (element) => [
        { ...element, overruns: element.overruns === 'backward' ? 'forward' : 'backward' },
      ]);
    case 'gearset-stripped': {
      const gearsets = train.gearsets.filter(({ id }) => id !== fault.gearset);
      if (gearsets.length === train.gearsets.length)
        throw new Error(`no gearset "${fault.gearset}" in this train`);
      return { ...train, gearsets };
    }
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
