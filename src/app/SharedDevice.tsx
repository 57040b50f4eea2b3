/**
 * A device with names: the names to pick from, then the pages of the one who was picked, on his own store, until he
 * leaves or nobody touches them any more. Every tab has its own learner.
 */
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Route, Router, Switch } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { say as phrase } from '../core/questions/phrase.ts';
import type { Result } from '../core/result.ts';
import { LearnersScreen } from '../screens/learners/LearnersScreen.tsx';
import { NamePick } from '../screens/learners/NamePick.tsx';
import { NamesTrouble } from '../screens/learners/NamesTrouble.tsx';
import { asksWho, type Sharing, SharingProvider } from '../screens/learners/sharing.ts';
import { WhoBar } from '../screens/learners/WhoBar.tsx';
import { type Services, ServicesProvider } from '../screens/services.ts';
import { onNamesChanged } from '../storage/learners/changes.ts';
import type { Listing, Registry } from '../storage/learners/registry.ts';
import { openStore, type Store } from '../storage/store.ts';
import type { StoreTrouble } from '../storage/trouble.ts';
import { isStillThere, keepTabLearner, tabLearner } from './tab-learner.ts';

interface Names {
  readonly registry: Registry;
  readonly listing: Result<Listing, StoreTrouble>;
}

/** The names, read again whenever they change in any tab, and when asked to. */
function useNames(loadRegistry: () => Promise<Registry>) {
  const [names, setNames] = useState<Names>();
  const [error, setError] = useState<unknown>();
  const read = useCallback(async () => {
    try {
      const registry = await loadRegistry();
      let listing = await registry.listing();
      if (listing.ok && listing.value.leaving > 0) {
        await registry.finishRemovals();
        listing = await registry.listing();
      }
      setNames({ registry, listing });
    } catch (mistake) {
      setError(mistake);
    }
  }, [loadRegistry]);
  useEffect(() => {
    void read();
    return onNamesChanged(() => void read());
  }, [read]);
  if (error !== undefined) throw error;
  return { names, again: () => void read() };
}

/** The store of one learner; undefined until it is open, null when he is no longer there. */
function useStoreOf(registry: Registry, id: string) {
  const [opened, setOpened] = useState<{ id: string; store: Result<Store | null, StoreTrouble> }>();
  const [tries, setTries] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: tried again when asked to
  useEffect(() => {
    let wanted = true;
    void registry.storeOf(id).then((store) => wanted && setOpened({ id, store }));
    return () => {
      wanted = false;
    };
  }, [registry, id, tries]);
  return { store: opened?.id === id ? opened.store : undefined, again: () => setTries(tries + 1) };
}

interface PagesProps {
  readonly id: string;
  readonly name: string;
  readonly onLeave: () => void;
  readonly registry: Registry;
  readonly services: Services;
  /** Above the pages, on his services. */
  readonly bar: ReactNode;
  readonly children: ReactNode;
}

/** The pages of one learner. */
function PagesOf({ id, name, registry, services, bar, onLeave, children }: PagesProps) {
  const { store, again } = useStoreOf(registry, id);
  const own = useMemo(
    (): Services | null =>
      store?.ok && store.value
        ? {
            ...services,
            store: store.value,
            // One learner's plan is never the start of another's.
            planFor: (course, request, tell) => services.planFor(`${id} ${course}`, request, tell),
          }
        : null,
    [store, services, id],
  );
  if (store && !store.ok)
    return (
      <ServicesProvider value={services}>
        <NamesTrouble
          trouble={store.error}
          about={phrase('names.trouble-own', { name })}
          onAgain={again}
          other={{ label: phrase('names.other'), note: phrase('names.other-note'), go: onLeave }}
        />
      </ServicesProvider>
    );
  if (!own) return null;
  return (
    <ServicesProvider value={own}>
      {bar}
      {children}
    </ServicesProvider>
  );
}

/** No name is left: whoever comes has the device alone, on a new first database. */
function Afresh({ services, wiped, children }: { services: Services; wiped: boolean; children: ReactNode }) {
  const own = useMemo(() => ({ ...services, store: openStore() }), [services]);
  return (
    <ServicesProvider value={own}>
      {wiped && (
        <p className="note wiped" role="status">
          {services.sayFor(null)(phrase('shop.wiped'))}
        </p>
      )}
      {children}
    </ServicesProvider>
  );
}

interface Props {
  readonly services: Services;
  /** What looking for names met. */
  readonly trouble: StoreTrouble | null;
  readonly onAgain: () => void;
  readonly loadRegistry: () => Promise<Registry>;
  readonly children: ReactNode;
}

interface NamedProps {
  readonly services: Services;
  readonly loadRegistry: () => Promise<Registry>;
  /** What is shown when the names cannot be opened. */
  readonly unable: (trouble: StoreTrouble, again: () => void) => ReactNode;
  readonly children: ReactNode;
}

function Named({ services, loadRegistry, unable, children }: NamedProps) {
  const { names, again } = useNames(loadRegistry);
  const { now } = services;
  const listing = names?.listing.ok ? names.listing.value : undefined;
  const [picked, setPicked] = useState<string | null>();
  const [reason, setReason] = useState<'idle' | 'gone' | null>(null);
  const justPicked = useRef(false);
  const hadNames = useRef(false);
  if (listing && listing.learners.length > 0) hadNames.current = true;

  const kept = listing && picked === undefined ? tabLearner() : null;
  if (listing && picked === undefined)
    setPicked(kept && isStillThere(kept, now().at, listing.idleMinutes) ? kept.id : null);
  const isShared = listing !== undefined && asksWho(listing);
  const id = isShared ? picked : listing?.learners[0]?.id;
  const learner = listing?.learners.find((each) => each.id === id);

  const enter = useCallback(
    (chosen: string) => {
      keepTabLearner({ id: chosen, at: now().at });
      justPicked.current = true;
      setReason(null);
      setPicked(chosen);
    },
    [now],
  );
  const leave = useCallback((why: 'idle' | 'gone' | null = null) => {
    keepTabLearner(null);
    setReason(why);
    setPicked(null);
    // The next one does not land on this one's page.
    window.location.hash = '#/';
  }, []);
  const gone = isShared && !!picked && !learner;
  const emptied = listing !== undefined && hadNames.current && listing.learners.length === 0;
  useEffect(() => {
    if (gone || emptied) leave('gone');
  }, [gone, emptied, leave]);

  const sharing = useMemo(
    (): Sharing => ({
      learner: learner ?? null,
      listing: listing ?? null,
      registry: loadRegistry,
      enter,
      leave: () => leave(),
    }),
    [learner, listing, loadRegistry, enter, leave],
  );
  if (!names) return null;
  const { registry } = names;
  if (!names.listing.ok) return unable(names.listing.error, again);
  if (!listing) return null;
  const content = () => {
    if (learner)
      return (
        <PagesOf
          key={learner.id}
          id={learner.id}
          name={learner.name}
          registry={registry}
          services={services}
          onLeave={() => leave()}
          bar={
            isShared && (
              <WhoBar
                learner={learner}
                registry={registry}
                justPicked={justPicked.current}
                idleMinutes={listing.idleMinutes}
                onTouched={(at) => keepTabLearner({ id: learner.id, at })}
                onLeave={leave}
              />
            )
          }
        >
          {children}
        </PagesOf>
      );
    if (!isShared && listing.leaving === 0)
      return (
        <Afresh services={services} wiped={emptied}>
          {children}
        </Afresh>
      );
    return (
      <ServicesProvider value={services}>
        <Router hook={useHashLocation}>
          <Switch>
            <Route path="/learners">
              <LearnersScreen />
            </Route>
            <Route>
              <NamePick
                listing={listing}
                registry={registry}
                reason={reason}
                onPick={enter}
                onAgain={again}
              />
            </Route>
          </Switch>
        </Router>
      </ServicesProvider>
    );
  };
  return <SharingProvider value={sharing}>{content()}</SharingProvider>;
}

export function SharedDevice({ services, trouble, onAgain, loadRegistry, children }: Props) {
  const [goesOn, setGoesOn] = useState(false);
  if (goesOn) return <ServicesProvider value={services}>{children}</ServicesProvider>;
  const unable = (met: StoreTrouble, again: () => void) => (
    <ServicesProvider value={services}>
      <NamesTrouble
        trouble={met}
        about={phrase('names.trouble')}
        onAgain={again}
        other={{
          label: phrase('names.go-on'),
          note: phrase('names.go-on-note'),
          go: () => setGoesOn(true),
        }}
      />
    </ServicesProvider>
  );
  if (trouble) return unable(trouble, onAgain);
  return (
    <Named services={services} loadRegistry={loadRegistry} unable={unable}>
      {children}
    </Named>
  );
}
