// @vitest-environment jsdom
/** Practising for an assignment, flagging wrong data, handing in: by what is on the page, stored and handed over. */
import { cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import type { Assignment } from '../../src/core/assign/assignment.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { factsOf } from '../../src/core/questions/facts.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { writeAssignment } from '../../src/exchange/message.ts';
import { readIncoming } from '../../src/exchange/read.ts';
import { FlagForm } from '../../src/screens/drill/FlagForm.tsx';
import { ServicesProvider } from '../../src/screens/services.ts';
import { makeSay } from '../../src/words/words.ts';
import { anAttempt, putAttempt } from '../attempts.ts';
import { aCorrection, aFlag, anAssignment } from '../reports.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const unit = makeUnit(deck);
const facts = factsOf(unit).map(({ id }) => id);
const [asked, other] = [facts.slice(0, 3), facts.at(-1)!];
const must = async <T,>(
  told: Promise<{ ok: true; value: T } | { ok: false; error: unknown }>,
): Promise<T> => {
  const result = await told;
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
};

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

const about = (changes: Partial<Assignment> = {}): Assignment =>
  anAssignment({
    deck: { id: deck.id, revision: deck.revision },
    scope: { kind: 'facts', facts: asked },
    classAt: { date: '2026-03-10', time: '08:00', zone: 'UTC' },
    ...changes,
  });

async function withAssignment(assignment = about()): Promise<Bench> {
  const place = await bench(deck);
  const { id, issue, madeAt } = assignment;
  await place.store.classroom.saveAssignment({
    id, issue, madeAt, deck: deck.id, role: 'taken', text: writeAssignment(assignment, null), roster: [], savedAt: 5,
  }); // biome-ignore format: one record
  return place;
}

const record = (place: Bench, sequence: number, fact: string, changes = {}) => {
  const attempt = anAttempt({ deck: deck.id, revision: deck.revision, sequence, fact, ...changes });
  return putAttempt(place.store, attempt);
};

const at = (place: Bench, hash: string) => {
  window.location.hash = hash;
  show(place);
  return userEvent.setup();
};

describe('practising for an assignment', () => {
  test('the drill asks what was assigned and nothing else', async () => {
    const place = await withAssignment();
    const user = at(place, '');
    expect(await screen.findByText(/^For second year, bench 2: 3 facts\./)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Start' }));
    const drill = await waitFor(async () => {
      const stored = await must(place.store.currentDrill());
      expect(stored).toBeDefined();
      return stored!;
    });
    expect(drill.items.map(({ fact }) => fact).toSorted()).toEqual(asked.toSorted());
  });

  test('an answer on a value that was wrong counts no more', async () => {
    const place = await withAssignment();
    await record(place, 1, asked[0]!);
    const tried = async () => {
      show(place);
      const text = (await screen.findByText(/^\d+ not tried/)).textContent!;
      cleanup();
      return Number(/\d+/.exec(text)![0]);
    };
    expect(await tried()).toBe(2);
    await must(
      place.store.classroom.keepCorrections([
        aCorrection({ deck: deck.id, revision: deck.revision + 1, facts: [asked[0]!] }),
      ]),
    );
    expect(await tried()).toBe(3);
  });
});

describe('the flag', () => {
  test('is kept with the question and the note, and can be taken back', async () => {
    const place = await bench(deck);
    const family = FAMILIES.find(({ id }) => id === 'range-elements')!;
    const question = ask(unit, family, 7)!;
    const user = userEvent.setup();
    render(
      <ServicesProvider value={place.services}>
        <FlagForm question={question} say={makeSay(deck)} />
      </ServicesProvider>,
    );
    await user.click(screen.getByRole('button', { name: 'Flag it' }));
    expect(await must(place.store.classroom.flagsOf(deck.id))).toEqual([]);
    await user.type(screen.getByLabelText('What is wrong, in your words'), 'Red clip on mine');
    await user.click(screen.getByRole('button', { name: 'Flag it' }));
    expect(await screen.findByText(/goes to your instructor with your next report/)).toBeVisible();
    const [flag] = await must(place.store.classroom.flagsOf(deck.id));
    expect(flag).toMatchObject({
      deck: deck.id, revision: deck.revision, family: 'range-elements', fact: question.fact, seed: 7,
      note: 'Red clip on mine', at: place.clock.at,
    }); // biome-ignore format: one record
    await user.click(screen.getByRole('button', { name: 'Take it back' }));
    await waitFor(async () => expect(await must(place.store.classroom.flagsOf(deck.id))).toEqual([]));
  });
});

describe('handing in', () => {
  test('a name is needed; the sealed report holds the answers on the assignment, the flags, and nothing else', async () => {
    const place = await withAssignment();
    await record(place, 1, asked[0]!);
    await record(place, 2, other);
    await must(place.store.classroom.raiseFlag(aFlag({ deck: deck.id })));
    const user = at(place, '#/report');
    expect(await screen.findByText('One answer, one flag.')).toBeVisible();
    expect(screen.getByText(/shows your instructor this name, each answer/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Make the report' }));
    expect(screen.getByRole('alert')).toHaveTextContent('Type the name');
    await user.type(screen.getByLabelText(/^Your name/), ' Ada ');
    await user.click(screen.getByRole('button', { name: 'Make the report' }));
    const region = within(await screen.findByRole('region', { name: 'Report of Ada' }));
    const link = await region.findByLabelText<HTMLInputElement>(/^The link, \d/);
    const read = await must(readIncoming(link.value));
    if (read.kind !== 'report') throw new Error(read.kind);
    expect(read.proof).toBe('sound');
    const { report } = read.sealed;
    expect(report).toMatchObject({ assignment: about().id, deck: deck.id, learner: { name: 'Ada' } });
    expect(report.attempts.map(({ fact }) => fact)).toEqual([asked[0]]);
    expect(report.flags.map(({ note }) => note)).toEqual([aFlag().note]);
    expect(screen.getByText(/^The key of this device: [0-9A-F]{4} [0-9A-F]{4}\./)).toBeVisible();
    expect(screen.getByText(/It does not show who held the device/)).toBeVisible();
    expect(await must(place.store.classroom.learner())).toMatchObject({ name: 'Ada' });
  });

  test('the short one holds the last seven days', async () => {
    const place = await withAssignment();
    const dayMs = 86_400_000;
    await record(place, 1, asked[0]!, { at: place.clock.at - 8 * dayMs });
    await record(place, 2, asked[1]!, { at: place.clock.at - 6 * dayMs });
    const user = at(place, '#/report');
    expect(await screen.findByText(/^2 answers/)).toBeVisible();
    await user.click(screen.getByRole('radio', { name: /^the last 7 days/ }));
    expect(await screen.findByText(/^One answer/)).toBeVisible();
  });

  test('with nothing taken in it says so; an assignment is put away after a second tap', async () => {
    const place = await withAssignment();
    const user = at(place, '#/report');
    await user.click(await screen.findByRole('button', { name: 'Put this assignment away' }));
    expect(screen.getByText(/Your answers, the deck and what you flagged stay/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Yes, put it away' }));
    expect(await screen.findByText(/^No assignment on .* was taken in/)).toBeVisible();
    expect(await must(place.store.classroom.assignments())).toEqual([]);
  });
});
