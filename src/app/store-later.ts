/** A store that is opened with its first verb: the database's code is then not in the way of the first question. */
import type { Store } from '../storage/store.ts';

type Verb = (...given: unknown[]) => unknown;

/** Stands for what `load` gives: its properties are such stand-ins too, and called it does as the loaded would. */
function standIn(load: () => Promise<unknown>): object {
  const inner = new Map<PropertyKey, object>();
  return new Proxy(() => {}, {
    get(_, name) {
      // Nothing awaits the store itself.
      if (name === 'then') return undefined;
      let part = inner.get(name);
      if (!part) {
        part = standIn(async () => ((await load()) as Record<PropertyKey, unknown>)[name]);
        inner.set(name, part);
      }
      return part;
    },
    apply: async (_, __, given) => ((await load()) as Verb)(...given),
  });
}

/** Every verb of a store gives a promise, so none shows whether the store is there yet. */
export function storeLater(load: () => Promise<Store>): Store {
  let loading: Promise<Store> | undefined;
  return standIn(() => {
    loading ??= load();
    return loading;
  }) as Store;
}
