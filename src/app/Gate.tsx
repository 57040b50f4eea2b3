/**
 * Looks whether this device has names before anything of anybody's is shown. Where it has none, which is every
 * phone of one's own, nothing more of them is loaded.
 */
import { type ReactNode, Suspense, useCallback, useEffect, useMemo, useState } from 'react';
import { type Sharing, SharingProvider } from '../screens/learners/sharing.ts';
import { type Services, ServicesProvider } from '../screens/services.ts';
import { onNamesChanged } from '../storage/learners/changes.ts';
import { hasNames } from '../storage/learners/databases.ts';
import type { Registry } from '../storage/learners/registry.ts';
import type { Told } from '../storage/trouble.ts';
import { later } from './later.ts';
import { keepTabLearner } from './tab-learner.ts';

const SharedDevice = later(async () => (await import('./SharedDevice.tsx')).SharedDevice);

let registry: Promise<Registry> | undefined;

/** One for the tab. */
const loadRegistry = (): Promise<Registry> => {
  registry ??= import('../storage/learners/registry.ts').then(({ openRegistry }) => openRegistry());
  return registry;
};

type Found = Awaited<Told<boolean>>;

/**
 * Once there were names, the pages for names go on, also when none is left. And a look that fails later on is no
 * reason to take away what is on the page.
 */
const after = (before: Found | undefined, told: Found): Found =>
  before?.ok && (before.value || !told.ok || !told.value) ? before : told;

interface Props {
  /** Those of the one who has the device alone, or had it first. */
  readonly services: Services;
  /** The first look, or what it found. */
  readonly names: Found | Told<boolean>;
  readonly children: ReactNode;
}

export function Gate({ services, names, children }: Props) {
  const [found, setFound] = useState(names instanceof Promise ? undefined : names);
  const look = useCallback(
    () => void hasNames().then((told) => setFound((before) => after(before, told))),
    [],
  );
  useEffect(() => {
    let wanted = true;
    void Promise.resolve(names).then((told) => wanted && setFound((before) => before ?? told));
    const onShown = () => {
      if (!document.hidden) look();
    };
    document.addEventListener('visibilitychange', onShown);
    const stopListening = onNamesChanged(look);
    return () => {
      wanted = false;
      document.removeEventListener('visibilitychange', onShown);
      stopListening();
    };
  }, [names, look]);
  const alone = useMemo(
    (): Sharing => ({
      learner: null,
      listing: null,
      registry: loadRegistry,
      enter: (id) => keepTabLearner({ id, at: services.now().at }),
      leave: () => {},
    }),
    [services],
  );
  if (!found) return null;
  if (found.ok && !found.value)
    return (
      <SharingProvider value={alone}>
        <ServicesProvider value={services}>{children}</ServicesProvider>
      </SharingProvider>
    );
  return (
    <Suspense fallback={null}>
      <SharedDevice
        services={services}
        trouble={found.ok ? null : found.error}
        onAgain={look}
        loadRegistry={loadRegistry}
      >
        {children}
      </SharedDevice>
    </Suspense>
  );
}
