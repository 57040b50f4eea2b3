/** What a fact is called in a list: the kind of question it is first asked in, and the thing it is about. */
import type { Deck } from '../unit/deck.ts';
import type { Fact } from './facts.ts';
import { type Phrase, say, type ThingKind, thing } from './phrase.ts';

/** What the first word of a fact's id ("stack:B1/order") names in the deck; other ids are shown as they are. */
const NAMED: Readonly<Record<string, ThingKind>> = {
  element: 'element',
  range: 'range',
  neutral: 'range',
  gearset: 'gearset',
  solenoid: 'solenoid',
  position: 'position',
  sensor: 'sensor',
  seat: 'seat',
  sequence: 'sequence',
  stack: 'stack',
  plate: 'stack',
  fit: 'fit',
  supply: 'supply',
  thermistor: 'thermistor',
  weight: 'weight',
};

const text = (words: string): Phrase => say('text', { text: words });

function subjectOf({ sequences }: Deck, id: string): Phrase | null {
  const [, kind, name, rest] = /^([a-z]+):([^/]+)(?:\/(.+))?$/.exec(id) ?? [];
  if (!kind || !name || kind === 'skill') return null;
  if (kind === 'step' || kind === 'check') {
    const sequence = sequences?.find((each) => each.id === name);
    const own = rest?.split('/')[0];
    const among = kind === 'step' ? sequence?.steps : sequence?.checks;
    const found = among?.find((each) => each.id === own);
    if (found) return text(found.text);
  }
  const known = NAMED[kind];
  return known ? thing(known, name) : text(name);
}

/** "Elements of a range: 3rd", "Reading a micrometer". */
export function factPhrase(deck: Deck, { id, families }: Pick<Fact, 'id' | 'families'>): Phrase {
  const kind = say(`family.${families[0]!}`);
  const what = subjectOf(deck, id);
  return what ? say('fact.named', { kind, what }) : kind;
}
