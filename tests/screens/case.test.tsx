// @vitest-environment jsdom
/** A case run on screen: asked, named, explained, and there again after a kill. */
import { cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { makeCase } from '../../src/core/diagnosis/case.ts';
import { bestWay } from '../../src/core/diagnosis/case-result.ts';
import { faultPhrase, testPhrase } from '../../src/core/diagnosis/say.ts';
import { faultId } from '../../src/core/faults/fault.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { makeSay } from '../../src/words/words.ts';
import { shippedDecks } from '../units.ts';
import { type Bench, bench, show } from './bench.tsx';

const deck = shippedDecks().find(({ id }) => id === 'kestrel-7')!;
const unit = makeUnit(deck);
const say = makeSay(deck);

async function open(place: Bench) {
  window.location.hash = '#/case';
  show(place);
  await screen.findByRole('heading', { name: 'Work order' });
  return waitFor(async () => {
    const stored = await place.store.storedCase();
    if (!stored.ok || !stored.value) throw new Error('no case is stored');
    return makeCase(unit, stored.value.seed)!;
  });
}

async function askFor(user: ReturnType<typeof userEvent.setup>, name: string) {
  const key = screen.getByText(name, { selector: 'button' });
  await user.click(key);
}

afterEach(() => {
  cleanup();
  window.location.hash = '';
});

describe('a case to solve', () => {
  test('what can hurt in a test stands before it, and defers to the maker', async () => {
    await open(await bench(deck));
    const kinds = screen.getAllByRole('group').filter((group) => group.tagName === 'DETAILS');
    const cautioned = kinds.filter((kind) => within(kind).queryByRole('note'));
    expect(cautioned.length).toBeGreaterThanOrEqual(3);
    const road = kinds.find((kind) => within(kind).queryByText(/The driver drives; somebody else reads/))!;
    const gauge = kinds.find((kind) => within(kind).queryByText(/scalds through cloth/))!;
    for (const kind of [road, gauge]) {
      const note = within(kind).getByRole('note');
      expect(note).toHaveTextContent('The maker’s service information comes first.');
      const first = within(kind).getAllByRole('button')[0]!;
      expect(note.compareDocumentPosition(first) & Node.DOCUMENT_POSITION_FOLLOWING).not.toBe(0);
    }
  });

  test('the best way asked test by test finds the cause with the effort it says', async () => {
    const user = userEvent.setup();
    const run = await open(await bench(deck));
    expect(screen.getByText(say(run.complaint))).toBeVisible();
    for (const { test: next } of bestWay(run)) await askFor(user, say(testPhrase(unit, next)));
    await user.selectOptions(screen.getByLabelText('The cause is'), faultId(run.cause));
    await user.click(screen.getByRole('button', { name: 'Name it' }));
    const verdict = await screen.findByRole('status');
    expect(verdict).toHaveTextContent('Right.');
    expect(verdict).toHaveTextContent(say(faultPhrase(unit, run.cause)));
    expect(screen.queryByText(/More would have been told/)).toBeNull();
  });

  test('a cause that does not fit is told so, with what contradicts it and every suspect struck out', async () => {
    const user = userEvent.setup();
    const run = await open(await bench(deck));
    const wrong = run.table.suspects.find((suspect) => !run.suspects.includes(suspect))!;
    await user.selectOptions(screen.getByLabelText('The cause is'), faultId(wrong));
    await user.click(screen.getByRole('button', { name: 'Name it' }));
    const verdict = await screen.findByRole('status');
    expect(verdict).toHaveTextContent('Not right.');
    expect(verdict).toHaveTextContent('does not fit this');
    expect(verdict).toHaveTextContent(say(faultPhrase(unit, run.cause)));
  });

  test('nothing is told of suspects before a cause is named', async () => {
    await open(await bench(deck));
    expect(screen.queryByText(/fit the work order/)).toBeNull();
    expect(screen.queryByRole('status')).toBeNull();
  });

  test('a killed page comes back to the same case with the same tests asked', async () => {
    const user = userEvent.setup();
    const place = await bench(deck);
    const run = await open(place);
    const first = run.table.tests[0]!;
    await askFor(user, say(testPhrase(unit, first)));
    cleanup();
    const again = await open(place);
    expect(again.seed).toBe(run.seed);
    const found = await screen.findByRole('heading', { name: /What the tests show/ });
    const section = found.closest('section')!;
    expect(within(section).getAllByRole('listitem')).toHaveLength(1);
    expect(screen.getByText(say(testPhrase(unit, first)), { selector: 'button' })).toBeDisabled();
  });
});
