// @vitest-environment jsdom
/** One device, several learners: by role and visible text, over real stores on an in-memory IndexedDB. */
import 'fake-indexeddb/auto';
import { act, cleanup, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { App } from '../../src/app/App.tsx';
import { Gate } from '../../src/app/Gate.tsx';
import type { Result } from '../../src/core/result.ts';
import { hasNames } from '../../src/storage/learners/databases.ts';
import { openRegistry, type Registry } from '../../src/storage/learners/registry.ts';
import { RegistryDatabase } from '../../src/storage/learners/registry-database.ts';
import type { Store } from '../../src/storage/store.ts';
import type { StoreTrouble } from '../../src/storage/trouble.ts';
import { deckOf, PUBLISHED } from '../units.ts';
import { type Bench, bench } from './bench.tsx';

// Each hash takes a while on purpose; here it is not the time that is tested.
vi.mock('../../src/storage/learners/pin.ts', async (original) => ({
  ...(await original<typeof import('../../src/storage/learners/pin.ts')>()),
  measureIterations: async () => 1000,
}));

const deck = deckOf(PUBLISHED.find((train) => train.id === 'ravigneaux-4-a')!);

const must = async <T,>(told: Promise<Result<T, StoreTrouble>>): Promise<T> => {
  const result = await told;
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.detail}`);
  return result.value;
};

/** Looked at from another tab. */
let registry: Registry;
let place: Bench;

const open = () =>
  render(
    <Gate services={place.services} names={hasNames()}>
      <App />
    </Gate>,
  );

/** Anna, who had the device, and Ben; each has the deck. */
async function foundTwo() {
  const ids = (await must(registry.found('Anna', 'Ben', 1)))!;
  const bens = (await must(registry.storeOf(ids.second)))!;
  await giveDeck(bens);
  return { ...ids, bens };
}

async function giveDeck(store: Store) {
  await must(
    store.saveDeck({ id: deck.id, revision: deck.revision, text: JSON.stringify(deck), loadedAt: 1 }),
  );
  await must(store.chooseDeck(deck.id));
}

const atTheNames = () => screen.findByRole('heading', { name: 'Who is practising?' });
const atTheDrill = () => screen.findByRole('heading', { name: 'Next drill' });

beforeEach(async () => {
  vi.spyOn(console, 'warn').mockImplementation(() => {});
  sessionStorage.clear();
  place = await bench(deck, 'detent');
  registry = openRegistry();
});

afterEach(async () => {
  cleanup();
  window.location.hash = '';
  vi.restoreAllMocks();
  vi.useRealTimers();
  await registry.wipe();
  registry.close();
  const names = new RegistryDatabase();
  await names.settings.clear();
  names.close();
});

describe('a phone of one’s own', () => {
  test('N1 shows nothing of names but the one link, and names are founded behind it', async () => {
    const user = userEvent.setup();
    open();
    await atTheDrill();
    expect(screen.queryByRole('region', { name: 'Who is practising' })).toBeNull();
    await user.click(screen.getByRole('link', { name: 'Who uses this device' }));
    await user.type(await screen.findByLabelText('Whose answers are here so far?'), 'Anna');
    await user.click(screen.getByRole('button', { name: 'Share this device' }));
    expect(screen.getByRole('status')).toHaveTextContent('A name is missing.');
    await user.type(screen.getByLabelText('Who comes in addition?'), ' anna ');
    await user.click(screen.getByRole('button', { name: 'Share this device' }));
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent('already'));
    expect(await must(hasNames())).toBe(false);
    await user.clear(screen.getByLabelText('Who comes in addition?'));
    await user.type(screen.getByLabelText('Who comes in addition?'), 'Ben');
    await user.click(screen.getByRole('button', { name: 'Share this device' }));
    // Anna stays in, on the same page.
    expect(await screen.findByRole('heading', { name: 'Your place: Anna' })).toBeVisible();
    expect(screen.getByRole('region', { name: 'Who is practising' })).toHaveTextContent('Practising: Anna');
  });
});

describe('picking a name', () => {
  test('N5 each finds his own drill as he left it, and the page tells whose it is', async () => {
    const user = userEvent.setup();
    const { bens } = await foundTwo();
    open();
    await user.click(await screen.findByRole('button', { name: 'Anna' }));
    await user.click(await screen.findByRole('button', { name: 'Start' }));
    await screen.findByRole('button', { name: 'Stop' });
    await user.click(screen.getByRole('button', { name: 'Leave' }));
    await atTheNames();
    expect(window.location.hash).toBe('#/');
    await user.click(screen.getByRole('button', { name: 'Ben' }));
    await atTheDrill();
    expect(screen.getByText('Practising: Ben')).toBeVisible();
    expect(await must(bens.currentDrill())).toBeUndefined();
    await user.click(screen.getByRole('button', { name: 'Leave' }));
    await user.click(await screen.findByRole('button', { name: 'Anna' }));
    expect(await screen.findByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
    expect(await must(place.store.currentDrill())).toBeDefined();
  });

  test('N6 a reload of the tab stays with its learner, unless it was idle too long', async () => {
    const user = userEvent.setup();
    await foundTwo();
    open();
    await user.click(await screen.findByRole('button', { name: 'Ben' }));
    await atTheDrill();
    cleanup();
    place.clock.at += 4 * 60_000;
    open();
    expect(await screen.findByText('Practising: Ben')).toBeVisible();
    cleanup();
    place.clock.at += 6 * 60_000;
    open();
    await atTheNames();
  });

  test('N11 a PIN is asked for; wrong ones wait; a right one opens', async () => {
    const user = userEvent.setup();
    const { second } = await foundTwo();
    await must(registry.setPin(second, '4711'));
    open();
    await user.click(await screen.findByRole('button', { name: 'Ben with PIN' }));
    const field = await screen.findByLabelText('PIN');
    expect(field).toHaveFocus();
    const enter = async (pin: string) => {
      await user.type(field, `${pin}{Enter}`);
      await waitFor(() =>
        expect(screen.getByRole('button', { name: 'Open' })).not.toHaveAttribute('aria-disabled', 'true'),
      );
    };
    for (const pin of ['0000', '1111']) {
      await enter(pin);
      await waitFor(() =>
        expect(screen.getByRole('status')).toHaveTextContent('That is not the PIN. Nothing was changed.'),
      );
      expect(field).toHaveValue('');
    }
    await enter('2222');
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent('15 seconds'));
    place.clock.at += 5000;
    await enter('4711');
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent('10 seconds'));
    place.clock.at += 10_000;
    await user.type(field, '4711{Enter}');
    await atTheDrill();
    expect(screen.getByText('Practising: Ben')).toBeVisible();
  });
});

describe('left alone', () => {
  test('N7 after the chosen time it goes back to the names, said half a minute before; the drill is kept', async () => {
    vi.useFakeTimers({ shouldAdvanceTime: true, toFake: ['setInterval', 'clearInterval', 'performance'] });
    const user = userEvent.setup();
    await foundTwo();
    await must(registry.setIdleMinutes(1));
    open();
    await user.click(await screen.findByRole('button', { name: 'Anna' }));
    await user.click(await screen.findByRole('button', { name: 'Start' }));
    await screen.findByRole('button', { name: 'Stop' });
    // Seen by then: the question has the focus.
    await waitFor(() => expect(screen.getByRole('heading', { level: 1 })).toHaveFocus());
    const pass = async (ms: number) => {
      place.clock.at += ms;
      await act(() => vi.advanceTimersByTime(1000));
    };
    await pass(31_000);
    expect(await screen.findByRole('alert')).toHaveTextContent('The answers of Anna are kept.');
    await user.click(screen.getByRole('button', { name: 'Stay' }));
    expect(screen.getByRole('alert')).toBeEmptyDOMElement();
    await pass(40_000);
    await pass(21_000);
    await atTheNames();
    expect(screen.getByRole('status')).toHaveTextContent('All answers are kept.');
    expect(await must(place.store.currentDrill())).toBeDefined();
    await user.click(screen.getByRole('button', { name: 'Anna' }));
    expect(await screen.findByRole('heading', { name: 'Your drill is waiting' })).toBeVisible();
  });
});

describe('for everybody', () => {
  const manage = async (user: ReturnType<typeof userEvent.setup>) => {
    open();
    await atTheNames();
    await user.click(screen.getByRole('link', { name: 'Who uses this device' }));
    await screen.findByRole('heading', { name: 'For everybody on this device' });
  };

  test('N3 N8 names are added and changed, and the idle time chosen', async () => {
    const user = userEvent.setup();
    await foundTwo();
    await manage(user);
    await user.type(screen.getByLabelText('Another name'), 'ben');
    await user.click(screen.getByRole('button', { name: 'Add the name' }));
    expect(await screen.findByText(/Somebody of that name is here already/)).toBeVisible();
    await user.clear(screen.getByLabelText('Another name'));
    await user.type(screen.getByLabelText('Another name'), 'Cem{Enter}');
    expect(await screen.findByText('Cem was added.')).toBeVisible();
    await user.click(screen.getByText('Ben', { selector: 'summary' }));
    const names = screen.getAllByLabelText('Name');
    await user.clear(names[1]!);
    await user.type(names[1]!, 'Benjamin{Enter}');
    expect(await screen.findByText('The name is Benjamin now.')).toBeVisible();
    await user.click(screen.getByRole('radio', { name: 'never by itself' }));
    await waitFor(async () => expect((await must(registry.listing())).idleMinutes).toBeNull());
    expect((await must(registry.listing())).learners.map(({ name }) => name)).toEqual([
      'Anna',
      'Benjamin',
      'Cem',
    ]);
  });

  test('N14 with the shop’s PIN the page asks for it first', async () => {
    const user = userEvent.setup();
    await foundTwo();
    await must(registry.setShopPin('987654'));
    open();
    await atTheNames();
    await user.click(screen.getByRole('link', { name: 'Who uses this device' }));
    const field = await screen.findByLabelText('PIN');
    expect(screen.queryByLabelText('Another name')).toBeNull();
    await user.type(field, '987654{Enter}');
    expect(await screen.findByLabelText('Another name')).toBeVisible();
  });

  test('N16 one learner is taken off after a second press, and told in the tab that was his', async () => {
    const user = userEvent.setup();
    const { second } = await foundTwo();
    await must(registry.add('Cem', 5));
    open();
    await user.click(await screen.findByRole('button', { name: 'Ben' }));
    await atTheDrill();
    await act(async () => void (await must(registry.remove(second))));
    await atTheNames();
    expect(await screen.findByRole('status')).toHaveTextContent('has been taken off this device');
    expect(screen.queryByRole('button', { name: 'Ben' })).toBeNull();
    await user.click(screen.getByRole('link', { name: 'Who uses this device' }));
    await user.click(await screen.findByText('Cem', { selector: 'summary' }));
    await user.click(screen.getByRole('button', { name: 'Take Cem off this device' }));
    expect((await must(registry.listing())).learners).toHaveLength(2);
    await user.click(screen.getByRole('button', { name: 'Yes, take Cem off' }));
    await waitFor(async () => expect((await must(registry.listing())).learners).toHaveLength(1));
    // Anna has the device alone again.
    expect(await screen.findByRole('heading', { name: 'For everybody on this device' })).toBeVisible();
    expect(screen.queryByRole('region', { name: 'Who is practising' })).toBeNull();
  });

  test('N18 wiping needs the word; then the device starts afresh', async () => {
    const user = userEvent.setup();
    const { bens } = await foundTwo();
    await must(bens.setPractice(deck.id, { minutes: 33, classDate: null, daysAWeek: 7 }));
    await manage(user);
    await user.click(screen.getByText('End of term: wipe everything'));
    const form = screen.getByLabelText('To wipe, type WIPE here').closest('form')!;
    expect(within(form).getAllByRole('button', { name: /^Save the answers of/ })).toHaveLength(2);
    await user.type(screen.getByLabelText('To wipe, type WIPE here'), 'yes{Enter}');
    expect(await within(form).findByText(/Nothing was wiped/)).toBeVisible();
    expect((await must(registry.listing())).learners).toHaveLength(2);
    await user.clear(screen.getByLabelText('To wipe, type WIPE here'));
    await user.type(screen.getByLabelText('To wipe, type WIPE here'), 'wipe{Enter}');
    expect(await screen.findByText(/Everything was wiped/)).toBeVisible();
    expect((await must(registry.listing())).learners).toEqual([]);
    expect(await place.store.deviceId()).toMatchObject({ ok: false, error: { code: 'deleted' } });
    await atTheDrill();
  });
});

describe('one’s own place', () => {
  test('N9 N13 a PIN is set with plain words on what it does, and one that was taken off is told', async () => {
    const user = userEvent.setup();
    const { first } = await foundTwo();
    open();
    await user.click(await screen.findByRole('button', { name: 'Anna' }));
    await atTheDrill();
    await user.click(screen.getByRole('link', { name: 'Who uses this device' }));
    expect(await screen.findByText(/It does not encrypt your answers/)).toBeVisible();
    const own = within(screen.getByRole('heading', { name: 'Your place: Anna' }).closest('section')!);
    await user.type(own.getByLabelText('New PIN, four to eight digits'), '4711');
    await user.type(own.getByLabelText('The same once more'), '4712{Enter}');
    expect(own.getByText('The two are not the same.')).toBeVisible();
    await user.clear(own.getByLabelText('The same once more'));
    await user.type(own.getByLabelText('The same once more'), '4711{Enter}');
    expect(await own.findByText(/The PIN is set/)).toBeVisible();
    expect((await must(registry.tryPin(first, '4711', 1))).kind).toBe('right');
    await act(async () => void (await must(registry.takePinOff(first, place.clock.at))));
    expect(await screen.findByText(/On 2026-03-02 your PIN was taken off/)).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'I have read it' }));
    await waitFor(() => expect(screen.queryByText(/your PIN was taken off/)).toBeNull());
  });
});

describe('troubles', () => {
  test('N15 names that cannot be opened are told, with a way on that is asked for', async () => {
    const user = userEvent.setup();
    const real = indexedDB.open.bind(indexedDB);
    const opening = vi.spyOn(indexedDB, 'open').mockImplementation((name, version) => {
      if (name === 'detent-names') throw new DOMException('broken', 'UnknownError');
      return real(name, version);
    });
    open();
    expect(await screen.findByRole('alert')).toHaveTextContent('no place to store');
    expect(screen.queryByRole('heading', { name: 'Next drill' })).toBeNull();
    opening.mockRestore();
    await user.click(screen.getByRole('button', { name: 'Try again' }));
    await atTheDrill();
  });

  test('N15 without the names the first learner’s answers are opened, and nobody else’s', async () => {
    const user = userEvent.setup();
    await foundTwo();
    await must(place.store.setPractice(deck.id, { minutes: 33, classDate: null, daysAWeek: 7 }));
    const real = indexedDB.open.bind(indexedDB);
    vi.spyOn(indexedDB, 'open').mockImplementation((name, version) => {
      if (name === 'detent-names') throw new DOMException('broken', 'UnknownError');
      return real(name, version);
    });
    open();
    await user.click(await screen.findByRole('button', { name: 'Practise without the names' }));
    await atTheDrill();
    expect(screen.getByText('minutes').nextSibling).toHaveTextContent('33');
  });
});
