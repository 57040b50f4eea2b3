// @vitest-environment jsdom
/** Assigning on one device and taking it on another, by what is on the page and what is stored. */
import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import type { Deck } from '../../src/core/unit/deck.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { cutPacket } from '../../src/exchange/chain.ts';
import { readMessage, writeAssignment } from '../../src/exchange/message.ts';
import { packText } from '../../src/exchange/packet.ts';
import { anAttempt, putAttempt } from '../attempts.ts';
import { aCorrection, anAssignment } from '../reports.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck: Deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
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

const at = (place: Bench, hash: string) => {
  window.location.hash = hash;
  show(place);
  return userEvent.setup();
};

const onTuesday = anAssignment({
  deck: { id: deck.id, revision: deck.revision },
  classAt: { date: '2026-03-10', time: '08:00', zone: 'Europe/Berlin' },
  minutes: 8,
  note: 'Bring gloves.',
});

/** A device that has another deck only. */
const elsewhere = () => bench({ ...deck, id: 'other', title: 'Another deck' });
const pasteIn = (text: string) => {
  fireEvent.change(screen.getByLabelText('Or paste a link here'), { target: { value: text } });
  fireEvent.click(screen.getByRole('button', { name: 'Read it' }));
};

describe('assigning', () => {
  test('says all that is missing, then makes an assignment that can be read, deck and all', async () => {
    const place = await bench(deck);
    const user = at(place, '#/assign');
    await user.click(await screen.findByRole('button', { name: 'Make the assignment' }));
    expect(screen.getByRole('alert')).toHaveTextContent(/Give the group a name.*State the day of class/);
    expect(await must(place.store.classroom.assignments())).toEqual([]);

    await user.type(screen.getByLabelText('Name of the group'), 'bench 2');
    fireEvent.change(screen.getByLabelText('Day of class'), { target: { value: '2026-03-10' } });
    await user.click(screen.getByRole('radio', { name: 'some areas of it' }));
    await user.click(screen.getByRole('button', { name: 'Make the assignment' }));
    expect(screen.getByRole('alert')).toHaveTextContent('Choose at least one area');
    await user.click(screen.getByRole('checkbox', { name: 'Power flow and shifts' }));
    await user.type(screen.getByLabelText(/^Names you expect/), 'Ada{enter} {enter}Bo ');
    await user.click(screen.getByRole('button', { name: 'Make the assignment' }));

    expect(await screen.findByRole('heading', { name: 'Assignment of bench 2' })).toBeVisible();
    const [stored] = await must(place.store.classroom.assignments());
    expect(stored).toMatchObject({ role: 'made', issue: 1, roster: ['Ada', 'Bo'], deck: deck.id });
    const read = await must(readMessage(stored!.text));
    if (read.kind !== 'assignment') throw new Error(read.kind);
    expect(read.assignment).toMatchObject({
      group: 'bench 2',
      scope: { kind: 'areas', areas: ['power-flow'] },
      classAt: { date: '2026-03-10', time: '08:00', zone: 'UTC' },
      minutes: 10,
      threshold: { share: 0.85, cautioned: true },
    });
    expect(JSON.parse(read.deckText!)).toEqual(JSON.parse(JSON.stringify(deck)));
    // The names stay here.
    expect(stored!.text).not.toContain('Ada');
    expect((await must(place.store.classroom.revisionsOf(deck.id)))[0]?.revision).toBe(deck.revision);
  });

  test('areas can count double or half; what is no longer asked is left out', async () => {
    const place = await bench(deck);
    const user = at(place, '#/assign');
    await user.type(await screen.findByLabelText('Name of the group'), 'bench 3');
    fireEvent.change(screen.getByLabelText('Day of class'), { target: { value: '2026-03-10' } });
    await user.click(screen.getByText('What counts more, what less'));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Hydraulics' }), 'double');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Diagnosis' }), 'half');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Power flow and shifts' }), 'half');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Power flow and shifts' }), 'as usual');
    await user.click(screen.getByRole('radio', { name: 'some areas of it' }));
    for (const area of ['Hydraulics', 'Power flow and shifts'])
      await user.click(screen.getByRole('checkbox', { name: area }));
    await user.click(screen.getByRole('button', { name: 'Make the assignment' }));
    await screen.findByRole('heading', { name: 'Assignment of bench 3' });
    const [stored] = await must(place.store.classroom.assignments());
    const read = await must(readMessage(stored!.text));
    expect(read).toMatchObject({ kind: 'assignment', assignment: { counting: { hydraulics: 'double' } } });
    expect(stored!.text).not.toContain('half');
  });

  test('handed out again with a mended deck it carries the correction, and counts its issue up', async () => {
    const place = await bench(deck);
    const wrong: Deck = JSON.parse(JSON.stringify(deck));
    const [first] = wrong.train.gearsets;
    Object.assign(first!.sun, { teeth: first!.sun.teeth! + 2 });
    for (const row of wrong.chart.ranges) Object.assign(row, { ratio: undefined });
    const wrongText = JSON.stringify(wrong);
    const mended: Deck = { ...deck, revision: deck.revision + 1 };
    await place.store.saveDeck({
      id: deck.id,
      revision: mended.revision,
      text: JSON.stringify(mended),
      loadedAt: 2,
    });
    await place.store.classroom.keepRevision({
      deck: deck.id,
      revision: deck.revision,
      text: wrongText,
      savedAt: 1,
    });
    const made = { ...onTuesday, group: 'bench 2' };
    await place.store.classroom.saveAssignment({
      id: made.id, issue: 1, madeAt: made.madeAt, deck: deck.id, role: 'made', roster: ['Ada'], savedAt: 3,
      text: writeAssignment(made, wrongText),
    }); // biome-ignore format: one record
    const unit = makeUnit(mended);
    const user = at(
      {
        ...place,
        services: {
          ...place.services,
          unitOf: (text) => (text === wrongText ? makeUnit(wrong) : unit),
        },
      },
      '#/assign',
    );
    await user.click(await screen.findByRole('button', { name: 'Change it' }));
    await user.type(screen.getByLabelText(/^What was wrong/), 'The sun was counted twice.');
    await user.click(screen.getByRole('button', { name: 'Make issue 2' }));
    expect(await screen.findByText(/facts come out otherwise/)).toBeVisible();
    const [stored] = await must(place.store.classroom.assignments());
    const read = await must(readMessage(stored!.text));
    if (read.kind !== 'assignment') throw new Error(read.kind);
    expect(read.assignment).toMatchObject({ id: made.id, issue: 2, deck: { revision: mended.revision } });
    const [correction] = read.assignment.corrections;
    expect(correction).toMatchObject({ note: 'The sun was counted twice.', revision: mended.revision });
    expect(correction!.facts.length).toBeGreaterThan(0);
    expect(await must(place.store.classroom.correctionsOf(deck.id))).toHaveLength(1);
  });

  test('a revision that was handed out with other contents is not assigned', async () => {
    const place = await bench(deck);
    const { id, revision } = deck;
    await place.store.classroom.keepRevision({ deck: id, revision, text: '{}', savedAt: 1 });
    const user = at(place, '#/assign');
    await user.type(await screen.findByLabelText('Name of the group'), 'bench 2');
    fireEvent.change(screen.getByLabelText('Day of class'), { target: { value: '2026-03-10' } });
    await user.click(screen.getByRole('button', { name: 'Make the assignment' }));
    expect(await screen.findByText(/next revision number/)).toBeVisible();
    expect(await must(place.store.classroom.assignments())).toEqual([]);
  });

  test('is removed only after a second tap', async () => {
    const place = await bench(deck);
    await place.store.classroom.saveAssignment({
      id: onTuesday.id, issue: 1, madeAt: 1, deck: deck.id, role: 'made', roster: [], savedAt: 3,
      text: writeAssignment(onTuesday, null),
    }); // biome-ignore format: one record
    const user = at(place, '#/assign');
    await user.click(await screen.findByRole('button', { name: /^Remove it/ }));
    await user.click(screen.getByRole('button', { name: 'Keep it' }));
    await user.click(screen.getByRole('button', { name: /^Remove it/ }));
    expect(await must(place.store.classroom.assignments())).toHaveLength(1);
    await user.click(screen.getByRole('button', { name: /^Yes, remove it/ }));
    await waitFor(() => expect(screen.queryByRole('heading', { name: onTuesday.group })).toBeNull());
    expect(await must(place.store.classroom.assignments())).toEqual([]);
  });
});

describe('taking', () => {
  test('what counts double and what half is told to whoever takes it', async () => {
    const place = await elsewhere();
    const counted = { ...onTuesday, counting: { hydraulics: 'double', measuring: 'half' } } as const;
    at(place, `#/take/${await packText(writeAssignment(counted, JSON.stringify(deck)))}`);
    const offer = within(await screen.findByRole('region', { name: /An assignment for second year/ }));
    expect(offer.getByText('Counts double: Hydraulics')).toBeVisible();
    expect(offer.getByText(/^Counts half: /)).toBeVisible();
  });

  test('a link shows what it asks and who sees what; only a tap takes it, and sets class date and minutes', async () => {
    const place = await elsewhere();
    const user = at(place, `#/take/${await packText(writeAssignment(onTuesday, JSON.stringify(deck)))}`);
    const offer = within(await screen.findByRole('region', { name: /An assignment for second year/ }));
    expect(offer.getByText(/Tuesday,? 10 March 2026 at 07:00/)).toBeVisible();
    expect(offer.getByText(/2026-03-10, 08:00 \(Europe\/Berlin\)/)).toBeVisible();
    expect(offer.getByText(/8 days to class\. 8 minutes a day/)).toBeVisible();
    expect(offer.getByText(/Bring gloves/)).toBeVisible();
    expect(offer.getByText(/stay on this phone until you hand in/)).toBeVisible();
    expect((await must(place.store.decks())).map(({ id }) => id)).toEqual(['other']);

    await user.click(offer.getByRole('button', { name: 'Take it' }));
    expect(await screen.findByText('Taken in.')).toBeVisible();
    expect(await must(place.store.chosenDeck())).toBe(deck.id);
    expect(await must(place.store.practiceOf(deck.id))).toMatchObject({
      classDate: '2026-03-10',
      minutes: 8,
    });
    expect((await must(place.store.classroom.assignments()))[0]).toMatchObject({
      id: onTuesday.id,
      role: 'taken',
    });
  });

  test('codes are pieced together in any order, over a page that was closed in between', async () => {
    const place = await elsewhere();
    const packet = await packText(writeAssignment(onTuesday, JSON.stringify(deck)));
    const codes = await must(Promise.resolve(cutPacket(packet, Math.ceil(packet.length / 3))));
    expect(codes).toHaveLength(3);
    at(place, `#/take/${codes[2]}`);
    expect(await screen.findByText(/^1 code of 3 read\. Still to be read: 1 and 2/)).toBeVisible();
    await waitFor(async () => expect(await must(place.store.classroom.pendingChain())).toBeDefined());
    cleanup();
    at(place, `#/take/${codes[0]}`);
    expect(await screen.findByText(/^2 codes of 3 read/)).toBeVisible();
    pasteIn(`https://shop.example/#/take/${codes[1]}`);
    expect(await screen.findByRole('region', { name: /An assignment for/ })).toBeVisible();
    await waitFor(async () => expect(await must(place.store.classroom.pendingChain())).toBeUndefined());
  });

  test('a file is taken in as it is, and files that are none are each told', async () => {
    const place = await elsewhere();
    const user = at(place, '#/take');
    const input = await screen.findByLabelText('Files or pictures of codes');
    await user.upload(input, [
      new File(['hello'], 'note.txt', { type: 'text/plain' }),
      new File([writeAssignment(onTuesday, JSON.stringify(deck))], 'assignment.json', {
        type: 'application/json',
      }),
    ]);
    expect(await screen.findByRole('region', { name: /An assignment for/ })).toBeVisible();
    expect(screen.getByRole('alert')).toHaveTextContent('note.txt: This is no file, link or code of Detent');
  });

  test('without the deck it says which one is needed, and takes nothing', async () => {
    const place = await elsewhere();
    at(place, `#/take/${await packText(writeAssignment(onTuesday, null))}`);
    expect(await screen.findByRole('alert')).toHaveTextContent(
      `The deck “${deck.id}”, revision ${deck.revision}`,
    );
    expect(screen.queryByRole('button', { name: 'Take it' })).toBeNull();
  });

  test('a deck that does not pass its checks is refused with what is to be mended', async () => {
    const place = await elsewhere();
    const broken = {
      ...deck,
      chart: { ranges: deck.chart.ranges.map((row) => ({ ...row, applied: ['XX'] })) },
    };
    at(place, `#/take/${await packText(writeAssignment(onTuesday, JSON.stringify(broken)))}`);
    expect(await screen.findByRole('alert')).toHaveTextContent(/nothing was taken in.*XX/s);
    expect((await must(place.store.decks())).map(({ id }) => id)).toEqual(['other']);
  });

  test('corrections are told to whoever had answered on them', async () => {
    const place = await bench(deck);
    const fact = 'range:1/elements';
    const correction = aCorrection({
      deck: deck.id,
      revision: deck.revision + 1,
      facts: [fact],
      note: 'C1, not B1.',
    });
    const old = { id: 'old', deck: deck.id, revision: deck.revision, fact, facts: [fact] };
    await putAttempt(place.store, anAttempt(old));
    const next = {
      ...onTuesday,
      deck: { id: deck.id, revision: deck.revision + 1 },
      corrections: [correction],
    };
    const text = writeAssignment(next, JSON.stringify({ ...deck, revision: deck.revision + 1 }));
    const user = at(place, `#/take/${await packText(text)}`);
    await user.click(await screen.findByRole('button', { name: 'Take it' }));
    expect(await screen.findByText(/C1, not B1\. You had answered once on it/)).toBeVisible();
    expect(await must(place.store.classroom.correctionsOf(deck.id))).toEqual([correction]);
  });

  test('where there is no camera it says what to do instead', async () => {
    const user = at(await elsewhere(), '#/take');
    await user.click(await screen.findByRole('button', { name: 'Use the camera' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('Take a photo of the code');
    await user.click(screen.getByRole('button', { name: 'Close the camera' }));
    expect(screen.queryByRole('alert')).toBeNull();
  });
});
