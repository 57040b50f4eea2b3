/**
 * Words stay outside core: a phrase is a message key and its values, and src/words makes the sentence.
 * Lists are shown as lists; a nested phrase is rendered first.
 */
export type PhraseValue = string | number | Phrase | readonly (string | Phrase)[];

export interface Phrase {
  readonly key: string;
  readonly values?: Readonly<Record<string, PhraseValue>>;
}

/** say('range-elements.prompt', { range: '4' }) */
export function say(key: string, values?: Readonly<Record<string, PhraseValue>>): Phrase {
  return values ? { key, values } : { key };
}

/** Names the deck's own thing; words looks the shop's name up and falls back to the id. */
export type ThingKind =
  | 'element'
  | 'range'
  | 'gearset'
  | 'shaft'
  | 'solenoid'
  | 'position'
  | 'interlock'
  | 'sensor'
  | 'part'
  | 'seat'
  | 'sequence'
  | 'stack'
  | 'fit'
  | 'supply'
  | 'thermistor'
  | 'connector'
  | 'fluid'
  | 'torque'
  | 'weight';

/** A thing of the deck as a phrase: thing('element', 'C1'). */
export function thing(kind: ThingKind, id: string): Phrase {
  return { key: 'thing', values: { kind, id } };
}

/** Its name alone, for where the id stands beside it already. */
export function nameAlone(kind: ThingKind, id: string): Phrase {
  return { key: 'thing', values: { kind, id, alone: 'yes' } };
}
