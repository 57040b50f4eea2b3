/** Why a typed name cannot be taken. */
import { type Phrase, say as phrase } from '../../core/questions/phrase.ts';

export const nameFault = (typed: string): Phrase =>
  phrase(typed.trim() === '' ? 'shop.fault.empty' : 'shop.fault.long');
