/** The services of a real device. */
import { localDay } from '../core/memory/day.ts';
import { namesOf } from '../core/questions/names.ts';
import type { Deck } from '../core/unit/deck.ts';
import { makeUnit, type Unit } from '../core/unit/unit.ts';
import type { Moment, Services } from '../screens/services.ts';
import type { Say } from '../words/speak.ts';
import { BUILD } from './build.ts';
import { keepLanguage } from './language.ts';
import type { Words } from './load-words.ts';
import { newVersion } from './new-version.ts';
import { openPlanner } from './planner.ts';
import { storeLater } from './store-later.ts';

/** Now. Zone and day take their time to find out, so that is done when they are asked for. */
function moment(): Moment {
  const at = Date.now();
  return {
    at,
    get zone() {
      return Intl.DateTimeFormat().resolvedOptions().timeZone;
    },
    get day() {
      return localDay(at, this.zone);
    },
  };
}

export function deviceServices({ language, sayWith, loadDrill }: Words): Services {
  const units = new Map<string, Unit>();
  const speakers = new WeakMap<object, Say>();
  const nobody = {};
  return {
    ...openPlanner(),
    store: storeLater(async () => (await import('../storage/store.ts')).openStore()),
    now: moment,
    build: BUILD,
    newId: () => crypto.randomUUID(),
    unitOf: (deckText) => {
      // Only decks that passed every check are stored, so the text is solved without checking it again.
      const unit = units.get(deckText) ?? makeUnit(JSON.parse(deckText) as Deck);
      units.set(deckText, unit);
      return unit;
    },
    sayFor: (unit) => {
      const key = unit ?? nobody;
      const say = speakers.get(key) ?? sayWith(unit && namesOf(unit.deck));
      speakers.set(key, say);
      return say;
    },
    loadWords: loadDrill,
    sayKept: ({ said, names }) => {
      const say = sayWith(names);
      return (phrase) => said[JSON.stringify(phrase)] ?? say(phrase);
    },
    newVersion,
    language,
    speak: (chosen) => {
      keepLanguage(chosen);
      window.location.reload();
    },
    familyOf: async (id) => (await import('./one-family.ts')).loadFamily(id),
  };
}
