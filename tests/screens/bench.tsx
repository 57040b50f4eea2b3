/** A device for screen tests: a real store on an in-memory IndexedDB, a clock we hold, ids that count. */
import 'fake-indexeddb/auto';
import '@testing-library/jest-dom/vitest';
import { Blob as NodeBlob } from 'node:buffer';
import { configure, render } from '@testing-library/react';
import { App } from '../../src/app/App.tsx';
import { outlookOf } from '../../src/core/plan/outlook.ts';
import { FAMILIES } from '../../src/core/questions/families/index.ts';
import type { Deck } from '../../src/core/unit/deck.ts';
import { makeUnit } from '../../src/core/unit/unit.ts';
import { type Services, ServicesProvider } from '../../src/screens/services.ts';
import { openStore, type Store } from '../../src/storage/store.ts';
import { makeSay } from '../../src/words/words.ts';

// A screen is loaded when it is first opened, which takes its time on a busy machine.
configure({ asyncUtilTimeout: 10_000 });

// jsdom's own has no streams.
Object.assign(globalThis, { Blob: NodeBlob });

// jsdom lays nothing out, so it has nothing to scroll.
Element.prototype.scrollIntoView = () => {};

export interface Bench {
  readonly store: Store;
  readonly clock: { at: number };
  readonly services: Services;
}

let opened = 0;

/** A device with the deck on it, its clock at noon of 2026-03-02 UTC. */
export async function bench(deck: Deck, name = `screens-${++opened}`): Promise<Bench> {
  const store = openStore(name);
  const clock = { at: Date.UTC(2026, 2, 2, 12) };
  await store.saveDeck({ id: deck.id, revision: deck.revision, text: JSON.stringify(deck), loadedAt: 1 });
  await store.chooseDeck(deck.id);
  const unit = makeUnit(deck);
  const say = makeSay(deck);
  let ids = 0;
  const services: Services = {
    store,
    now: () => ({ at: clock.at, zone: 'UTC', day: Math.floor(clock.at / 86_400_000) }),
    newId: () => `${name}-${clock.at}-${++ids}`,
    unitOf: () => unit,
    sayFor: (spoken) => (spoken === unit ? say : makeSay(spoken?.deck ?? null)),
    newVersion: { isWaiting: () => false, subscribe: () => () => {}, take: async () => false },
    language: 'en',
    speak: () => {},
    build: 'test',
    loadWords: async () => {},
    sayKept: () => say,
    familyOf: async (id) => FAMILIES.find((family) => family.id === id),
    // The planner itself, a part at a turn, without a worker.
    planFor: (_course, request, tell) => {
      const parts = outlookOf(request);
      const goOn = () => {
        const { value, done } = parts.next();
        tell(done ? null : value);
        if (!done) setTimeout(goOn);
      };
      setTimeout(goOn);
    },
  };
  return { store, clock, services };
}

export const show = ({ services }: Pick<Bench, 'services'>) =>
  render(
    <ServicesProvider value={services}>
      <App />
    </ServicesProvider>,
  );
