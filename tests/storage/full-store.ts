/** Something of every kind that a store keeps, put in by its own verbs. */
import type { Result } from '../../src/core/result.ts';
import type { StoredAssignment, StoredReport, StoredSheet } from '../../src/storage/classroom-rows.ts';
import type { StoredPlan } from '../../src/storage/rows.ts';
import type { Store } from '../../src/storage/store.ts';
import { aDrill, anAttempt, putAttempt } from '../attempts.ts';
import { aCorrection, aFlag } from '../reports.ts';

export const anAssignmentRow = (changes: Partial<StoredAssignment> = {}): StoredAssignment => ({
  id: 'a1',
  issue: 1,
  madeAt: 5,
  deck: 'demo',
  role: 'made',
  text: '{"detentMessage":1}',
  roster: ['Ada', 'Bo'],
  savedAt: 10,
  ...changes,
});

export const aReportRow = (changes: Partial<StoredReport> = {}): StoredReport => ({
  id: 'r1',
  assignment: 'a1',
  learner: 'ada',
  madeAt: 5,
  text: '{}',
  seal: { key: 'k', signature: 's' },
  savedAt: 10,
  ...changes,
});

const sheet: StoredSheet = {
  id: 's1',
  assignment: 'a1',
  learner: 'ada',
  name: 'Ada',
  deck: 'demo',
  revision: 1,
  items: [{ fact: 'range:1/elements', family: 'range-elements', seed: 3 }],
  madeAt: 7,
  markedAt: null,
};

const plan: StoredPlan = {
  classDay: 20_030,
  prices: [[20_010, 0.25]],
  ceilings: { madeFor: 'x', each: [{ minutes: 10, atMost: 0.8 }] },
  scale: { day: 20_010, adopted: { first: -0.1, growth: 0.05 } },
};

/** `from` is a word in every id, so that two stores differ where they should. */
export async function fill(store: Store, from = 'here'): Promise<void> {
  const told: Result<unknown, { readonly code: string }>[] = [];
  const add = async (result: Promise<Result<unknown, { readonly code: string }>>) => told.push(await result);
  const { classroom, workshop } = store;
  for (const sequence of [1, 2, 3]) {
    const {
      device: _,
      sequence: __,
      ...rest
    } = anAttempt({ sequence, id: `${from}-${sequence}`, right: sequence !== 2 });
    await putAttempt(store, rest);
  }
  await add(store.saveDeck({ id: 'demo', revision: 1, text: '{"id":"demo"}', loadedAt: 5 }));
  await add(store.beginDrill(aDrill({ id: `drill-${from}`, draft: { form: 'number', text: '3,4' } })));
  await add(store.setPractice('demo', { classDate: '2026-03-01', minutes: 5, daysAWeek: 4 }));
  await add(store.keepPlan('demo', plan));
  await add(store.chooseDeck('demo'));
  await add(classroom.nameLearner(`Ada ${from}`));
  await add(
    store.saveCheckBook({
      current: null,
      past: [
        {
          id: `check-${from}`,
          deck: 'demo',
          finishedAt: 9,
          areas: [{ area: 'power-flow', right: 3, asked: 5 }],
          facts: ['range:1/elements'],
        },
      ],
    }),
  );
  await add(store.saveCase({ deck: 'demo', revision: 1, seed: 7, asked: ['line'], named: null }));
  await add(classroom.saveAssignment(anAssignmentRow()));
  await add(classroom.keepReport(aReportRow({ id: `report-${from}` })));
  await add(classroom.keepCorrections([aCorrection({ id: `correction-${from}`, facts: ['other'] })]));
  await add(classroom.raiseFlag(aFlag({ id: `flag-${from}` })));
  await add(classroom.keepRevision({ deck: 'demo', revision: 1, text: '{}', savedAt: 5 }));
  await add(classroom.keepSheet(sheet));
  await add(workshop.keep({ id: `draft-${from}`, unit: 'Kestrel', text: '{"detentDeck":1}', savedAt: 6 }));
  await add(
    workshop.keepNote({
      id: `note-${from}`,
      unit: 'Kestrel',
      part: 'washer',
      seenFrom: 'rear',
      text: 'tabs up',
      thickness: { value: '1.78', unit: 'mm' },
      photo: 'data:image/jpeg;base64,/9j/2Q==',
      usedIn: { draft: `draft-${from}`, record: 'seats:T1' },
      madeAt: 6,
    }),
  );
  await add(workshop.nameWriter('Ada'));
  for (const result of told) if (!result.ok) throw new Error(result.error.code);
}
