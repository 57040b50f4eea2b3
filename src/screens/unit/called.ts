/** What a thing of the deck is called on the page, by its reference. */
import { type Phrase, say as phrase, type ThingKind, thing } from '../../core/questions/phrase.ts';
import type { Ref, RefKind } from '../../core/unit/refs.ts';
import { kindOf } from './found.ts';

/** Kinds with a name of the shop; a winding is called as its solenoid. */
const NAMED: Readonly<Partial<Record<RefKind, ThingKind>>> = {
  seat: 'seat',
  element: 'element',
  solenoid: 'solenoid',
  winding: 'solenoid',
  interlock: 'interlock',
  stack: 'stack',
  fit: 'fit',
  part: 'part',
  gearset: 'gearset',
  range: 'range',
  neutral: 'range',
  position: 'position',
  sensor: 'sensor',
  pickup: 'sensor',
  thermistor: 'thermistor',
  connector: 'connector',
  supply: 'supply',
  sequence: 'sequence',
  fluid: 'fluid',
  torque: 'torque',
};

/** `name`: what the deck says where the kind has no names. */
export function calledAs(ref: Ref, name: string): Phrase {
  const kind = NAMED[kindOf(ref)];
  return kind ? thing(kind, ref.slice(ref.indexOf(':') + 1)) : phrase('text', { text: name });
}
