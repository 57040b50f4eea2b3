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
    if (deck.valveBody) note(['valveBody'], deck.valveBody);
    noteAll(['lever', 'positions'], deck.lever?.positions);
    noteAll(['sensors'], deck.sensors);
    for (const [index, { capacity }] of deck.train.elements.entries())
      if (capacity) note(['train', 'elements', index, 'capacity'], capacity);
    noteAll(['shaftLine'], deck.shaftLine);
    noteAll(['seats'], deck.seats);
    noteAll(['stacks'], deck.stacks);
    for (const [index, { items }] of (deck.stacks ?? []).entries())
      noteAll(['stacks', index, 'items'], items);
    noteAll(['fits'], deck.fits);
    for (const [index, { parts, readings }] of (deck.fits ?? []).entries()) {
      noteAll(['fits', index, 'parts'], parts);
      noteAll(['fits', index, 'readings'], readings);
    }
    noteAll(['sequences'], deck.sequences);
    for (const [index, { steps, assembly, checks }] of (deck.sequences ?? []).entries()) {
      noteAll(['sequences', index, 'steps'], steps);
      noteAll(['sequences', index, 'assembly', 'added'], assembly?.added);
      noteAll(['sequences', index, 'checks'], checks);
    }
    for (const part of ['supplies', 'windings', 'pickups', 'thermistors', 'connectors'] as const)
      noteAll(['electrical', part], deck.electrical?.[part]);
    for (const [index, { pins }] of (deck.electrical?.connectors ?? []).entries())
      noteAll(['electrical', 'connectors', index, 'pins'], pins);
    for (const part of ['fluids', 'torques', 'weights', 'codes'] as const) noteAll([part], deck[part]);
    return missing(
      references,
      (deck.sources ?? []).map((source) => source.id),
    );
  },
};
