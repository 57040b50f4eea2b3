/** Where a deck has what a reference points at (src/core/unit/refs.ts), so that its form can be opened there. */
import type { Ref, RefKind } from '../unit/refs.ts';
import { type Place, valueAt } from './draft.ts';

/** The list of the records of a kind, and the field that names one there. */
const LISTS: Readonly<Partial<Record<RefKind, readonly [at: Place, by: string]>>> = {
  range: [['chart', 'ranges'], 'id'],
  neutral: [['chart', 'neutral'], 'id'],
  element: [['train', 'elements'], 'id'],
  gearset: [['train', 'gearsets'], 'id'],
  solenoid: [['solenoids'], 'id'],
  position: [['lever', 'positions'], 'id'],
  interlock: [['interlocks'], 'id'],
  sensor: [['sensors'], 'id'],
  part: [['shaftLine'], 'id'],
  seat: [['seats'], 'id'],
  stack: [['stacks'], 'id'],
  fit: [['fits'], 'id'],
  sequence: [['sequences'], 'id'],
  supply: [['electrical', 'supplies'], 'id'],
  winding: [['electrical', 'windings'], 'solenoid'],
  pickup: [['electrical', 'pickups'], 'sensor'],
  thermistor: [['electrical', 'thermistors'], 'id'],
  connector: [['electrical', 'connectors'], 'id'],
  fluid: [['fluids'], 'id'],
  torque: [['torques'], 'id'],
  weight: [['weights'], 'id'],
  code: [['codes'], 'id'],
};

/** Kinds named together with what holds them: the kind of that, and the lists in it that may have them. */
const WITHIN: Readonly<Partial<Record<RefKind, readonly [RefKind, readonly Place[]]>>> = {
  plate: ['stack', [['items']]],
  reading: ['fit', [['readings']]],
  step: ['sequence', [['steps'], ['assembly', 'added']]],
  check: ['sequence', [['checks']]],
  pin: ['connector', [['pins']]],
};

function among(deck: unknown, at: Place, by: string, id: string): Place | null {
  const list = valueAt(deck, at);
  const index = Array.isArray(list)
    ? list.findIndex((record) => (record as Record<string, unknown> | null)?.[by] === id)
    : -1;
  return index < 0 ? null : [...at, index];
}

/** placeOf(deck, 'plate:B1/steel-2') → ['stacks', 0, 'items', 4]; null for what the deck does not have. */
export function placeOf(deck: unknown, ref: Ref): Place | null {
  const kind = ref.slice(0, ref.indexOf(':')) as RefKind;
  const [first = '', second = ''] = ref.slice(kind.length + 1).split('/');
  if (kind === 'valve-body') return valueAt(deck, ['valveBody']) === undefined ? null : ['valveBody'];
  if (kind === 'cell') return placeOf(deck, `range:${first}`) ?? placeOf(deck, `neutral:${first}`);
  if (kind === 'capacity') {
    const element = placeOf(deck, `element:${first}`);
    return element && [...element, 'capacity'];
  }
  const within = WITHIN[kind];
  if (within) {
    const [holder, lists] = within;
    const at = placeOf(deck, `${holder}:${first}`);
    if (!at) return null;
    for (const list of lists) {
      const found = among(deck, [...at, ...list], 'id', second);
      if (found) return found;
    }
    return null;
  }
  const list = LISTS[kind];
  return list ? among(deck, list[0], list[1], first) : null;
}
