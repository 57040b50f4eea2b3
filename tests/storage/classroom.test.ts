import 'fake-indexeddb/auto';
import { Dexie } from 'dexie';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { joinReports } from '../../src/core/assign/merge-reports.ts';
import { digestLog } from '../../src/core/group/digest.ts';
import type { Result } from '../../src/core/result.ts';
import { checkSeal, makeDeviceKey, publicKeyText, sealText } from '../../src/exchange/seal.ts';
import type { StoredAssignment, StoredReport, StoredSheet } from '../../src/storage/classroom-rows.ts';
import { Database } from '../../src/storage/database.ts';
import { openStore, type Store, type TakenIn } from '../../src/storage/store.ts';
import type { StoreTrouble } from '../../src/storage/trouble.ts';
import { anAttempt } from '../attempts.ts';
import { aCorrection, aFlag, aReport, sealed } from '../reports.ts';
import { fillUp } from './no-room.ts';

const opened: { close(): void }[] = [];
let count = 0;
const freshName = () => `classroom-${++count}`;
const open = (name = freshName()): Store => {
  const store = openStore(name);
  opened.push(store);
  return store;
};
const must = async <T>(told: Promise<Result<T, StoreTrouble>>): Promise<T> => {
  const result = await told;
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.detail}`);
  return result.value;
};
afterEach(() => {
  vi.restoreAllMocks();
  for (const store of opened.splice(0)) store.close();
});

const assignment = (changes: Partial<StoredAssignment> = {}): StoredAssignment => ({
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
const report = (changes: Partial<StoredReport> = {}): StoredReport => ({
  id: 'r1',
  assignment: 'a1',
  learner: 'ada',
  madeAt: 5,
  text: '{}',
  seal: { key: 'k', signature: 's' },
  savedAt: 10,
  ...changes,
});
const digestOf = (learner: string) =>
  digestLog({
    log: joinReports([sealed(aReport({ learner: { id: learner, name: learner } }))]).learners[0]!,
    voids: new Set(),
    classDay: 20_010,
    confusedIn: () => [],
  });

describe('assignments', () => {
  test('C1 a later issue takes the place of the earlier; an earlier one that comes late changes nothing', async () => {
    const { classroom } = open();
    await must(classroom.saveAssignment(assignment()));
    const second = assignment({ issue: 2, text: '{"b":2}' });
    expect(await must(classroom.saveAssignment(second))).toEqual(second);
    expect(await must(classroom.saveAssignment(assignment({ savedAt: 99 })))).toEqual(second);
    expect(await must(classroom.assignments())).toEqual([second]);
  });

  test('C1 the same issue can be saved again, with another list of names', async () => {
    const { classroom } = open();
    await must(classroom.saveAssignment(assignment()));
    await must(classroom.saveAssignment(assignment({ roster: ['Cy'], savedAt: 11 })));
    expect((await must(classroom.assignments()))[0]!.roster).toEqual(['Cy']);
  });

  test('C4 taken away, its reports and digests go; others, corrections and revisions stay', async () => {
    const { classroom } = open();
    for (const id of ['a1', 'a2']) {
      await must(classroom.saveAssignment(assignment({ id })));
      await must(classroom.keepReport(report({ id: `r-${id}`, assignment: id })));
      await must(
        classroom.saveDigest({ assignment: id, learner: 'ada', madeOf: '', digest: digestOf('ada') }),
      );
    }
    await must(classroom.keepCorrections([aCorrection()]));
    await must(classroom.removeAssignment('a1'));
    expect((await must(classroom.assignments())).map(({ id }) => id)).toEqual(['a2']);
    expect((await must(classroom.reportsOf('a1'))).reports).toEqual([]);
    expect(await must(classroom.digestsOf('a1'))).toEqual([]);
    expect((await must(classroom.reportsOf('a2'))).reports).toHaveLength(1);
    expect(await must(classroom.digestsOf('a2'))).toHaveLength(1);
    expect(await must(classroom.correctionsOf('demo'))).toEqual([aCorrection()]);
  });
});

describe('reports', () => {
  test('C2 the same report twice is kept once; the same id with other contents is kept beside it', async () => {
    const { classroom } = open();
    expect(await must(classroom.keepReport(report()))).toBe(true);
    expect(await must(classroom.keepReport(report({ savedAt: 99 })))).toBe(false);
    expect(await must(classroom.keepReport(report({ text: '{"changed":1}' })))).toBe(true);
    expect((await must(classroom.reportsOf('a1'))).reports.map(({ text }) => text)).toEqual([
      '{}',
      '{"changed":1}',
    ]);
  });

  test('C2 they come by assignment and learner, in the order they were kept', async () => {
    const { classroom } = open();
    for (const [id, learner, of] of [['r3', 'bo', 'a1'], ['r1', 'ada', 'a1'], ['r2', 'ada', 'a2'], ['r0', 'ada', 'a1']] as const)
      await must(classroom.keepReport(report({ id, learner, assignment: of })));
    const ids = async (...of: [string, string?]) => (await must(classroom.reportsOf(...of))).reports.map(({ id }) => id);
    expect(await ids('a1')).toEqual(['r3', 'r1', 'r0']);
    expect(await ids('a1', 'ada')).toEqual(['r1', 'r0']);
    expect(await ids('a3')).toEqual([]);
  }); // biome-ignore format: one report a row

  test('C9 reports are counted by learner, and those of other assignments are not', async () => {
    const { classroom } = open();
    const given = [['r1', 'a1', 'ada'], ['r2', 'a1', 'ada'], ['r3', 'a1', 'bo'], ['r4', 'a2', 'ada']] as const; // biome-ignore format: rows
    for (const [id, assignment, learner] of given)
      await must(classroom.keepReport(report({ id, assignment, learner, text: `{"id":"${id}"}` })));
    expect([...(await must(classroom.reportCounts('a1')))]).toEqual([['ada', 2], ['bo', 1]]); // biome-ignore format: pairs
    expect((await must(classroom.reportCounts('a3'))).size).toBe(0);
  });

  test('C4 a learner who is taken away is gone from every assignment', async () => {
    const { classroom } = open();
    for (const [id, learner, of] of [['r1', 'ada', 'a1'], ['r2', 'ada', 'a2'], ['r3', 'bo', 'a1']] as const) {
      await must(classroom.keepReport(report({ id, learner, assignment: of })));
      await must(classroom.saveDigest({ assignment: of, learner, madeOf: '', digest: digestOf(learner) }));
    }
    await must(classroom.removeLearner('ada'));
    expect((await must(classroom.reportsOf('a1'))).reports.map(({ learner }) => learner)).toEqual(['bo']);
    expect((await must(classroom.reportsOf('a2'))).reports).toEqual([]);
    expect((await must(classroom.digestsOf('a1'))).map(({ learner }) => learner)).toEqual(['bo']);
  }); // biome-ignore format: one report a row

  test('C3 a digest is put in the place of the last one, and comes back as it was', async () => {
    const { classroom } = open();
    const digest = digestOf('ada');
    await must(classroom.saveDigest({ assignment: 'a1', learner: 'ada', madeOf: 'old', digest }));
    await must(classroom.saveDigest({ assignment: 'a1', learner: 'ada', madeOf: 'new', digest }));
    expect(await must(classroom.digestsOf('a1'))).toEqual([
      { assignment: 'a1', learner: 'ada', madeOf: 'new', digest },
    ]);
  });

  test('C3 what is no digest is refused, and one that was spoilt counts as not there', async () => {
    const name = freshName();
    const { classroom } = open(name);
    const digest = digestOf('ada');
    const short = { ...digest, columns: { ...digest.columns, stability: [1] } };
    await expect(
      classroom.saveDigest({ assignment: 'a1', learner: 'ada', madeOf: '', digest: short }),
    ).rejects.toThrow();
    const db = new Database(name);
    await db.digests.put({ assignment: 'a1', learner: 'bo', madeOf: '', digest: { ...short, name: 5 } });
    await db.reports.add({ id: 'odd', assignment: 'a1' });
    db.close();
    expect(await must(classroom.digestsOf('a1'))).toEqual([]);
    expect(await must(classroom.reportsOf('a1'))).toEqual({ reports: [], unreadable: 1 });
  });
});

describe('corrections, flags and revisions', () => {
  test('C5 corrections are kept once, by deck', async () => {
    const { classroom } = open();
    await must(classroom.keepCorrections([aCorrection({ id: 'c2', revision: 3 }), aCorrection()]));
    await must(
      classroom.keepCorrections([aCorrection({ note: 'changed' }), aCorrection({ id: 'other', deck: 'x' })]),
    );
    expect(await must(classroom.correctionsOf('demo'))).toEqual([
      aCorrection(),
      aCorrection({ id: 'c2', revision: 3 }),
    ]);
  });

  test('C5 a flag can be raised and taken back', async () => {
    const { classroom } = open();
    await must(classroom.raiseFlag(aFlag({ id: 'f2', at: 9 })));
    await must(classroom.raiseFlag(aFlag({ at: 5 })));
    expect((await must(classroom.flagsOf('demo'))).map(({ id }) => id)).toEqual(['flag-1', 'f2']);
    await must(classroom.takeFlagBack('f2'));
    // A flag of the same id, from somebody else's report.
    await must(classroom.raiseFlag(aFlag({ note: 'nothing is wrong', deck: 'other' })));
    expect(await must(classroom.flagsOf('demo'))).toEqual([aFlag({ at: 5 })]);
    expect(await must(classroom.flagsOf('other'))).toEqual([]);
  });

  test('C6 a revision stands for one text for good', async () => {
    const { classroom } = open();
    const row = (revision: number, text: string) => ({ deck: 'demo', revision, text, savedAt: 5 });
    expect(await must(classroom.keepRevision(row(1, 'a')))).toBe(true);
    expect(await must(classroom.keepRevision(row(2, 'b')))).toBe(true);
    expect(await must(classroom.keepRevision(row(1, 'a')))).toBe(true);
    expect(await must(classroom.keepRevision(row(1, 'other')))).toBe(false);
    expect(await must(classroom.revisionsOf('demo'))).toEqual([row(2, 'b'), row(1, 'a')]);
  });
});

describe('this device and its person', () => {
  test('C7 a new name keeps the id', async () => {
    const name = freshName();
    const { classroom } = open(name);
    expect(await must(classroom.learner())).toBeUndefined();
    const first = await must(classroom.nameLearner('Ada'));
    const second = await must(open(name).classroom.nameLearner('A.'));
    expect(second).toEqual({ id: first.id, name: 'A.' });
    expect(await must(classroom.learner())).toEqual(second);
  });

  test('C7 the key is made once, survives a reopening, signs, and never shows its private half', async () => {
    const name = freshName();
    const store = open(name);
    const first = (await must(store.classroom.deviceKey(makeDeviceKey)))!;
    store.close();
    const again = (await must(
      open(name).classroom.deviceKey(() => Promise.reject(new Error('made twice'))),
    ))!;
    expect(await publicKeyText(again)).toBe(await publicKeyText(first));
    expect(await checkSeal('text', await sealText('text', again))).toBe('sound');
    expect(again.privateKey.extractable).toBe(false);
  });

  test('C7 two tabs that make a key at once keep the same one', async () => {
    const name = freshName();
    const keys = await Promise.all(
      [open(name), open(name)].map((store) => must(store.classroom.deviceKey(makeDeviceKey))),
    );
    expect(new Set(await Promise.all(keys.map((pair) => publicKeyText(pair!)))).size).toBe(1);
  });

  test('C7 where no key can be made there is none, and nothing is kept', async () => {
    const { classroom } = open();
    expect(await must(classroom.deviceKey(async () => null))).toBeNull();
    expect(await must(classroom.deviceKey(makeDeviceKey))).not.toBeNull();
  });
});

test('C10 codes read so far wait from one page to the next, until they are put away', async () => {
  const name = freshName();
  const store = open(name);
  expect(await must(store.classroom.pendingChain())).toBeUndefined();
  const chain = { chain: '0a1b2c3d', of: 3, pieces: { 2: 'middle' } };
  await must(store.classroom.keepChain(chain));
  store.close();
  const again = open(name).classroom;
  expect(await must(again.pendingChain())).toEqual(chain);
  await must(again.keepChain(null));
  expect(await must(again.pendingChain())).toBeUndefined();
});

test('C11 a printed sheet waits for its marks, and goes with its learner or its assignment', async () => {
  const { classroom } = open();
  const sheet = (id: string, changes: Partial<StoredSheet> = {}): StoredSheet => ({
    id, assignment: 'a1', learner: 'ada', name: 'Ada', deck: 'demo', revision: 1,
    items: [{ fact: 'range:1/elements', family: 'range-elements', seed: 3 }], madeAt: 5, markedAt: null, ...changes,
  }); // biome-ignore format: one record
  for (const one of [
    sheet('s1'),
    sheet('s2', { learner: 'bo', madeAt: 6 }),
    sheet('s3', { assignment: 'a10' }),
  ])
    await must(classroom.keepSheet(one));
  await must(classroom.keepSheet(sheet('s1', { markedAt: 9 })));
  const listed = async (of: string) =>
    (await must(classroom.sheetsOf(of))).map(({ id, markedAt }) => [id, markedAt]);
  expect(await listed('a1')).toEqual([['s2', null], ['s1', 9]]); // biome-ignore format: pairs
  await must(classroom.removeLearner('ada'));
  expect([await listed('a1'), await listed('a10')]).toEqual([[['s2', null]], []]);
  await must(classroom.removeAssignment('a1'));
  expect(await listed('a1')).toEqual([]);
});

test('C8 a database of the first version is taken over with everything in it', async () => {
  const name = freshName();
  const old = new Dexie(name);
  old
    .version(1)
    .stores({ decks: 'id', attempts: 'id, deck, [device+sequence]', drills: 'id', settings: 'key' });
  await old.table('attempts').add(anAttempt());
  await old.table('settings').put({ key: 'device', value: 'phone' });
  old.close();
  const store = open(name);
  expect((await must(store.attemptsOf('demo'))).attempts).toEqual([anAttempt()]);
  expect(await must(store.deviceId())).toBe('phone');
  expect(await must(store.classroom.assignments())).toEqual([]);
});

describe('C12 what comes with an assignment is taken in together', () => {
  const taken: TakenIn = {
    deckId: 'demo',
    deck: { id: 'demo', revision: 2, text: '{"id":"demo"}', loadedAt: 20 },
    assignment: assignment({ role: 'taken', roster: [] }),
    corrections: [aCorrection({ deck: 'demo' })],
    practice: { classDate: '2026-04-01', minutes: 12 },
  };
  const stateOf = async (store: Store) => ({
    decks: await must(store.decks()),
    assignments: await must(store.classroom.assignments()),
    corrections: await must(store.classroom.correctionsOf('demo')),
    chosen: await must(store.chosenDeck()),
    practice: await must(store.practiceOf('demo')),
  });

  test('all of it', async () => {
    const store = open();
    await must(store.takeIn(taken));
    expect(await stateOf(store)).toEqual({
      decks: [taken.deck],
      assignments: [taken.assignment],
      corrections: taken.corrections,
      chosen: 'demo',
      practice: { ...taken.practice, daysAWeek: 7 },
    });
  });

  test('days a week stay; where a later issue is here, so do class date and minutes', async () => {
    const store = open();
    await must(store.setPractice('demo', { classDate: null, minutes: 10, daysAWeek: 5 }));
    await must(store.takeIn(taken));
    expect(await must(store.practiceOf('demo'))).toEqual({ ...taken.practice, daysAWeek: 5 });
    const later = { ...taken.assignment!, issue: 3, text: '{"detentMessage":1,"later":true}' };
    await must(
      store.takeIn({ ...taken, assignment: later, practice: { classDate: '2026-05-02', minutes: 15 } }),
    );
    await must(store.takeIn(taken));
    expect(await must(store.practiceOf('demo'))).toMatchObject({ classDate: '2026-05-02', minutes: 15 });
    expect(await must(store.classroom.assignments())).toEqual([later]);
  });

  test('what is here stays where nothing comes in its place', async () => {
    const store = open();
    await must(store.takeIn(taken));
    const before = await stateOf(store);
    await must(store.takeIn({ ...taken, deck: null, assignment: null, practice: null, corrections: [] }));
    expect(await stateOf(store)).toEqual(before);
  });

  test.each(['decks', 'assignments', 'corrections', 'settings'])(
    'a write to %s that fails leaves the store as it was',
    async (table) => {
      const store = open();
      await must(store.saveDeck({ id: 'demo', revision: 1, text: '{}', loadedAt: 1 }));
      const before = await stateOf(store);
      fillUp(table);
      expect(await store.takeIn(taken)).toMatchObject({ ok: false, error: { code: 'full' } });
      vi.restoreAllMocks();
      expect(await stateOf(store)).toEqual(before);
    },
  );
});
