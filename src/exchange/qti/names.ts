/** Identifiers of QTI: NCNames, made so that different things never share one. */
import type { Option, Question } from '../../core/questions/question.ts';
import { crc32, utf8 } from '../bytes.ts';

/** A text as part of an identifier: readable, and told apart by a checksum where letters had to go. */
export function namePart(text: string): string {
  const plain = text.replace(/[^A-Za-z0-9-]/g, '_').slice(0, 40);
  return plain === text ? plain : `${plain}.${crc32(utf8(text))}`;
}

/** "q-kestrel-7-r2-range-elements-range_4_elements.1a2b3c4d-s17": a frozen question, its seed in its name. */
export function itemName({
  deck,
  family,
  fact,
  seed,
}: Pick<Question, 'deck' | 'family' | 'fact' | 'seed'>): string {
  return `q-${namePart(deck.id)}-r${deck.revision}-${namePart(family)}-${namePart(fact)}-s${seed}`;
}

/** "A1", "A2"…: options by their place. */
export const optionNames = (options: readonly Option[], letter: string): ReadonlyMap<string, string> =>
  new Map(options.map(({ id }, place) => [id, `${letter}${place + 1}`]));
