// @vitest-environment jsdom
/** Collecting and the board: reports as they are handed in, by what is on the page and what is kept. */
import { cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { makeReport, type Report } from '../../src/core/assign/report.ts';
import { type Attempt, draftAttempt } from '../../src/core/memory/attempt.ts';
import { ask } from '../../src/core/questions/ask.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import { judge } from '../../src/core/questions/judge.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { makeLink } from '../../src/exchange/link.ts';
import { sealReport, writeAssignment, writeReport } from '../../src/exchange/message.ts';
import { packText } from '../../src/exchange/packet.ts';
import { makeDeviceKey } from '../../src/exchange/seal.ts';
import { aFlag, anAssignment } from '../reports.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);
const unit = makeUnit(deck);
const family = FAMILIES.find(({ id }) => id === 'row-ratio')!;
const facts = family.facts(unit);
const assignment = anAssignment({
  deck: { id: deck.id, revision: deck.revision },
  scope: { kind: 'facts', facts },
  classAt: { date: '2026-03-04', time: '08:00', zone: 'UTC' },
  threshold: { share: 0.4, cautioned: true },
});
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

/** Each fact once, right, or by its first lure where `wrong` says so. */
const answersOf = (
  person: string,
  some: readonly string[],
  wrong: readonly string[],
  at: number,
): Attempt[] =>
  some.map((fact, index) => {
    const question = ask(unit, family, index, fact)!;
    const answer = wrong.includes(fact) ? question.lures[0]!.answer : question.answers[0];
    const id = `${person}-${index}`;
    const verdict = judge(question, answer);
    return {
      ...draftAttempt({ id, question, answer, verdict, seconds: 9, at: at + index, zone: 'UTC', drill: 'd' }),
      device: person,
      sequence: index + 1,
    };
  });

const reportOf = (name: string, attempts: readonly Attempt[], more: Partial<Report> = {}): Report => ({
  ...makeReport({
    id: `report-${name}`, assignment, facts: new Set(facts), learner: { id: `id-${name}`, name }, attempts,
    flags: [], corrections: [], madeAt: 5,
  }),
  ...more,
}); // biome-ignore format: one record

const written = async (report: Report) => writeReport(await sealReport(report, await makeDeviceKey()));

async function collecting(): Promise<Bench> {
  const place = await bench(deck);
  const { id, issue, madeAt } = assignment;
  await place.store.classroom.saveAssignment({
    id, issue, madeAt, deck: deck.id, role: 'made', text: writeAssignment(assignment, null), savedAt: 5,
    roster: ['Ada', 'Bo', 'Cy'],
  }); // biome-ignore format: one record
  return place;
}

const at = (place: Bench, hash: string) => {
  window.location.hash = hash;
  show(place);
  return userEvent.setup();
};
const part = (name: string) => within(screen.getByRole('heading', { level: 2, name }).closest('section')!);

async function handIn(texts: readonly string[]) {
  const user = userEvent.setup();
  const input = await screen.findByLabelText('Files or pictures of codes');
  await user.upload(
    input,
    texts.map((text, index) => new File([text], `report-${index}.json`, { type: 'application/json' })),
  );
}

describe('collecting', () => {
  test('several files at once; the board says who stands where with the number behind it', async () => {
    const place = await collecting();
    const yesterday = place.clock.at - 86_400_000;
    at(place, '#/group');
    expect(await screen.findByText(/^Nothing came from Ada, Bo, and Cy/)).toBeVisible();
    await handIn([
      await written(reportOf('Ada', answersOf('ada', facts, [], yesterday))),
      await written(reportOf('Bo', answersOf('bo', facts.slice(0, 1), facts.slice(0, 1), yesterday))),
      'not a report',
    ]);
    expect(await screen.findByText(/^Ada: .* Taken in\. The seal is whole/)).toBeVisible();
    expect(await screen.findByText(/^Bo: one answer\. Taken in\./)).toBeVisible();
    expect(screen.getByRole('alert')).toHaveTextContent(
      'report-2.json: This is no file, link or code of Detent',
    );
    expect(await screen.findByText('Nothing came from Cy.')).toBeVisible();
    expect(screen.getByText('started of 3').nextSibling).toHaveTextContent('2');

    const people = part('Who stands where');
    const rows = people.getAllByRole('listitem');
    // All right of so few: Wilson's low end for n of n at 95 % is n / (n + z²).
    const low = Math.round((100 * facts.length) / (facts.length + 1.96 ** 2));
    expect(low).toBeGreaterThanOrEqual(40);
    expect(rows[0]).toHaveTextContent(
      `Adalikely ready${facts.length} right of ${facts.length} asked, ${facts.length} in all. That puts what is known between ${low} % and 100 %.`,
    );
    expect(rows[1]).toHaveTextContent(/^Botoo little to say, needs a make-up drill0 right of 1 asked/);
    expect(part('What nobody holds').getAllByRole('listitem').length).toBeGreaterThan(0);
    expect(part('What gets mixed up').getAllByText(/\(one person, once\)$/).length).toBeGreaterThan(0);
  });

  test('the same report again does no harm; one changed on its way is refused', async () => {
    const place = await collecting();
    const text = await written(reportOf('Ada', answersOf('ada', facts, [], place.clock.at)));
    at(place, '#/group');
    await handIn([text, text, text.replace('"name":"Ada"', '"name":"Eve"')]);
    expect(
      await screen.findByText(
        'Ada: this report was here already. The seal is whole: this is just as the device made it, and nobody changed it on the way.',
      ),
    ).toBeVisible();
    expect(await screen.findByText(/^Eve: the seal does not fit/)).toBeVisible();
    expect((await must(place.store.classroom.reportsOf(assignment.id))).reports).toHaveLength(1);
  });

  test('a report on an assignment made elsewhere is told and not kept', async () => {
    const place = await collecting();
    at(place, '#/group');
    await handIn([await written(reportOf('Ada', [], { assignment: 'another' }))]);
    expect(
      await screen.findByText(/^Ada: this report answers an assignment that was not made on this device/),
    ).toBeVisible();
    expect((await must(place.store.classroom.reportsOf('another'))).reports).toEqual([]);
  });

  test('a link to a report is taken in where it is opened, and leads to the board', async () => {
    const place = await collecting();
    const packet = await packText(
      await written(reportOf('Ada', answersOf('ada', facts, [], place.clock.at))),
    );
    const link = await must(Promise.resolve(makeLink('https://shop.example/', packet)));
    const user = at(place, link.slice(link.indexOf('#')));
    expect(await screen.findByText(/^Ada: .*Taken in/)).toBeVisible();
    await user.click(screen.getByRole('link', { name: 'Board and reports' }));
    expect(await screen.findByText('Nothing came from Bo and Cy.')).toBeVisible();
  });
});

describe('the board', () => {
  test('one learner: mix-ups, the key behind the report, the make-up drill; gone after a second tap', async () => {
    const place = await collecting();
    at(place, '#/group');
    await handIn([await written(reportOf('Bo', answersOf('bo', facts, facts.slice(0, 2), place.clock.at)))]);
    const row = await screen.findByText('Bo');
    const details = row.closest('details')!;
    // jsdom opens details, but a toggle is told by hand.
    details.open = true;
    fireEvent(details, new Event('toggle'));
    const own = within(details);
    expect(await own.findByText(/^Sealed by one device: [0-9A-F]{4} [0-9A-F]{4}\.$/)).toBeVisible();
    expect(
      own.getByText(new RegExp(`^${facts.length} answers on one day, last on 2026-03-02`)),
    ).toBeVisible();
    expect(own.getAllByText(/\(2 times\)|\(once\)/).length).toBeGreaterThan(0);
    const user = userEvent.setup();
    await user.click(own.getByRole('button', { name: /^Remove this person/ }));
    await user.click(own.getByRole('button', { name: /^Yes, remove Bo/ }));
    await waitFor(() => expect(screen.queryByText('Bo')).toBeNull());
    expect((await must(place.store.classroom.reportsOf(assignment.id))).reports).toEqual([]);
  });

  test('what was flagged comes with the report, and shows the question it is about', async () => {
    const place = await collecting();
    const [fact] = facts;
    const flag = aFlag({ deck: deck.id, revision: deck.revision, family: 'row-ratio', fact: fact!, seed: 0 });
    at(place, '#/group');
    await handIn([
      await written(reportOf('Ada', answersOf('ada', facts, [], place.clock.at), { flags: [flag] })),
    ]);
    expect(await screen.findByText(flag.note)).toBeVisible();
    const question = ask(unit, family, 0, fact)!;
    const { sayFor } = place.services;
    expect(screen.getByText(sayFor(place.services.unitOf(''))(question.prompt))).toBeVisible();
  });

  test('a correction made later voids answers when the board is opened again', async () => {
    const place = await collecting();
    at(place, '#/group');
    await handIn([await written(reportOf('Ada', answersOf('ada', facts, [], place.clock.at)))]);
    await screen.findByText(new RegExp(`^${facts.length} right of ${facts.length} asked`));
    cleanup();
    await must(
      place.store.classroom.keepCorrections([
        {
          id: 'c',
          deck: deck.id,
          revision: deck.revision + 1,
          refs: [],
          facts: [facts[0]!],
          note: 'n',
          at: 1,
        },
      ]),
    );
    at(place, '#/group');
    const left = facts.length - 1;
    expect(
      await screen.findByText(new RegExp(`^${left} right of ${left} asked, ${facts.length} in all`)),
    ).toBeVisible();
  });

  test('with no assignment made here it says where to make one', async () => {
    at(await bench(deck), '#/group');
    expect(await screen.findByText(/^No assignment was made on this device/)).toBeVisible();
  });

  test('how well the questions measure: nothing on few answers, figures on enough', async () => {
    const place = await collecting();
    const user = at(place, '#/group');
    await handIn([await written(reportOf('Ada', answersOf('Ada', facts, [], 7)))]);
    const open = async () => {
      await screen.findByRole('heading', { level: 2, name: 'How well the questions measure' });
      return part('How well the questions measure');
    };
    await user.click((await open()).getByRole('button', { name: 'Work it out from the reports' }));
    expect(await (await open()).findByText(/30 first answers from 10 people/)).toBeVisible();
    cleanup();
    show(place);
    const others = Array.from({ length: 11 }, (_, n) => `P${n}`);
    await handIn(
      await Promise.all(
        others.map(async (name, n) =>
          written(reportOf(name, answersOf(name, facts, n % 2 === 0 ? facts : [], 7))),
        ),
      ),
    );
    await screen.findByText(/^P10: /);
    await user.click((await open()).getByRole('button', { name: 'Work it out from the reports' }));
    expect(await (await open()).findByText(/% not right, 72 answers from 12 people/)).toBeVisible();
  });
});
