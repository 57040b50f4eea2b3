/** Decks with one value marked unsure, by its reference (src/core/unit/refs.ts). */
import type { Deck, DeckRow } from '../src/core/unit/deck.ts';
import type { Ref } from '../src/core/unit/unit.ts';

interface Value {
  readonly unsure?: true | undefined;
}

type List<T> = readonly T[] | undefined;

/** The list with the record of this id replaced. */
const change = <T extends { readonly id: string }>(list: List<T>, id: string, to: (record: T) => T) =>
  list?.map((record) => (record.id === id ? to(record) : record));

const doubt = <T extends Value>(record: T): T => ({ ...record, unsure: true });

const mark = <T extends Value & { readonly id: string }>(list: List<T>, id: string) =>
  change(list, id, doubt);

/** The deck with the value that the reference names marked unsure; kinds it does not know throw. */
export function withUnsure(deck: Deck, ref: Ref): Deck {
  const [kind, ...rest] = ref.split(':');
  const id = rest.join(':');
  const [holder = '', part = ''] = id.split('/');
  const { train, chart, lever, electrical } = deck;
  switch (kind) {
    case 'gearset':
      return { ...deck, train: { ...train, gearsets: mark(train.gearsets, id)! } };
    case 'element':
      return { ...deck, train: { ...train, elements: mark(train.elements, id)! } };
    case 'capacity':
      return {
        ...deck,
        train: {
          ...train,
          elements: change(train.elements, id, (element) => ({
            ...element,
            capacity: element.capacity && doubt(element.capacity),
          }))!,
        },
      };
    case 'range':
      return { ...deck, chart: { ...chart, ranges: mark(chart.ranges, id)! } };
    case 'neutral':
      return { ...deck, chart: { ...chart, neutral: mark(chart.neutral, id) } };
    case 'cell': {
      const open = <T extends DeckRow>(rows: List<T>) =>
        change(rows, holder, (row) => ({ ...row, unsureCells: [...(row.unsureCells ?? []), part] }));
      return { ...deck, chart: { ranges: open(chart.ranges)!, neutral: open(chart.neutral) } };
    }
    case 'solenoid':
      return { ...deck, solenoids: mark(deck.solenoids, id) };
    case 'position':
      return { ...deck, lever: lever && { ...lever, positions: mark(lever.positions, id)! } };
    case 'sensor':
      return { ...deck, sensors: mark(deck.sensors, id) };
    case 'part':
      return { ...deck, shaftLine: mark(deck.shaftLine, id) };
    case 'interlock':
      return { ...deck, interlocks: mark(deck.interlocks, id) };
    case 'seat':
      return { ...deck, seats: mark(deck.seats, id) };
    case 'stack':
      return { ...deck, stacks: mark(deck.stacks, id) };
    case 'plate':
      return {
        ...deck,
        stacks: change(deck.stacks, holder, (stack) => ({ ...stack, items: mark(stack.items, part)! })),
      };
    case 'fit':
      return { ...deck, fits: mark(deck.fits, id) };
    case 'sequence':
      return { ...deck, sequences: mark(deck.sequences, id) };
    case 'step':
      return {
        ...deck,
        sequences: change(deck.sequences, holder, (sequence) => ({
          ...sequence,
          steps: mark(sequence.steps, part)!,
          assembly: sequence.assembly && {
            ...sequence.assembly,
            added: mark(sequence.assembly.added, part),
          },
        })),
      };
    case 'check':
      return {
        ...deck,
        sequences: change(deck.sequences, holder, (sequence) => ({
          ...sequence,
          checks: mark(sequence.checks, part),
        })),
      };
    case 'supply':
      return { ...deck, electrical: { ...electrical, supplies: mark(electrical?.supplies, id) } };
    case 'winding':
      return {
        ...deck,
        electrical: {
          ...electrical,
          windings: electrical?.windings?.map((winding) =>
            winding.solenoid === id ? doubt(winding) : winding,
          ),
        },
      };
    case 'pickup':
      return {
        ...deck,
        electrical: {
          ...electrical,
          pickups: electrical?.pickups?.map((pickup) => (pickup.sensor === id ? doubt(pickup) : pickup)),
        },
      };
    case 'thermistor':
      return { ...deck, electrical: { ...electrical, thermistors: mark(electrical?.thermistors, id) } };
    case 'connector':
      return { ...deck, electrical: { ...electrical, connectors: mark(electrical?.connectors, id) } };
    case 'pin':
      return {
        ...deck,
        electrical: {
          ...electrical,
          connectors: change(electrical?.connectors, holder, (connector) => ({
            ...connector,
            pins: mark(connector.pins, part)!,
          })),
        },
      };
    case 'fluid':
      return { ...deck, fluids: mark(deck.fluids, id) };
    case 'torque':
      return { ...deck, torques: mark(deck.torques, id) };
    case 'weight':
      return { ...deck, weights: mark(deck.weights, id) };
    case 'code':
      return { ...deck, codes: mark(deck.codes, id) };
    default:
      throw new Error(`no way to mark ${ref} unsure`);
  }
}
