/** Where a value comes from and whether it was verified, in one line; nothing when nothing is known. */
import { say as phrase } from '../../core/questions/phrase.ts';
import type { Provenance } from '../../core/unit/deck.ts';
import type { Unit } from '../../core/unit/unit.ts';
import type { Say } from '../../words/words.ts';

export function ProvenanceNote({ of, unit, say }: { of: Provenance; unit: Unit; say: Say }) {
  const source = unit.deck.sources?.find((candidate) => candidate.id === of.source);
  const parts = [
    of.unsure && say(phrase('unit.unsure')),
    of.verified && say(phrase('unit.verified', { by: of.verified.by, on: of.verified.on })),
    of.measuredBy && say(phrase('unit.measured', { by: of.measuredBy })),
    source && say(phrase('unit.source', { title: source.title })),
    of.note,
  ].filter(Boolean);
  return parts.length > 0 ? <span className="provenance">{parts.join('; ')}</span> : null;
}
