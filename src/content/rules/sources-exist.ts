import type { Provenance } from '../../core/unit/deck.ts';
import type { Path } from '../finding.ts';
import { missing, type Reference } from './references.ts';
import { rowsOf } from './rows.ts';
import type { Rule } from './rule.ts';

/** A value's source is one of the deck's sources. */
export const sourcesExist: Rule = {
  id: 'sources-exist',
  severity: 'error',
  check(deck) {
    const references: Reference[] = [];
    const note = (at: Path, { source }: Provenance) => {
      if (source !== undefined) references.push({ at: [...at, 'source'], id: source });
    };
    const noteAll = (at: Path, records: readonly Provenance[] = []) => {
      for (const [index, record] of records.entries()) note([...at, index], record);
    };
    noteAll(['train', 'gearsets'], deck.train.gearsets);
    noteAll(['train', 'elements'], deck.train.elements);
    for (const { at, row } of rowsOf(deck)) note(at, row);
    noteAll(['solenoids'], deck.solenoids);
    noteAll(['lever', 'positions'], deck.lever?.positions);
    noteAll(['sensors'], deck.sensors);
    noteAll(['sequences'], deck.sequences);
    for (const [index, sequence] of (deck.sequences ?? []).entries())
      noteAll(['sequences', index, 'steps'], sequence.steps);
    return missing(
      references,
      (deck.sources ?? []).map((source) => source.id),
    );
  },
};
