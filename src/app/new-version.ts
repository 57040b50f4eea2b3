/**
 * Keeps the page without a network, and takes a new version only when somebody says so and no tab is in a drill.
 * A version that was fetched waits; the one in use goes on, without a network too. Taken, it serves all tabs: the
 * one it was taken in opens anew at once, the others when they next go to another page.
 */

import type { NewVersion } from '../screens/services.ts';

/** Held by every tab as long as a drill is open in it. */
const IN_DRILL = 'detent-drill';

/** Holds the lock until `release` is called; browsers without locks have nothing to hold. */
function holdDrillLock(): () => void {
  let release = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  void navigator.locks?.request(IN_DRILL, { mode: 'shared' }, () => held);
  return release;
}

const isDrillOpen = () => window.location.hash === '#/drill';

interface KeptOffline extends NewVersion {
  /** Has the page kept for opening without a network; called when there is nothing more urgent. */
  begin(): void;
}

function keepOffline(): KeptOffline {
  const listeners = new Set<() => void>();
  let registration: ServiceWorkerRegistration | undefined;
  let taking = false;
  let isOld = false;
  let releaseDrill: (() => void) | null = null;

  const change = () => {
    for (const listener of listeners) listener();
  };
  const watch = (found: ServiceWorkerRegistration) => {
    registration = found;
    const worker = found.installing;
    worker?.addEventListener('statechange', change);
    found.addEventListener('updatefound', () => found.installing?.addEventListener('statechange', change));
    change();
  };
  const noteDrill = () => {
    if (isDrillOpen()) {
      releaseDrill ??= holdDrillLock();
      return;
    }
    releaseDrill?.();
    releaseDrill = null;
    if (isOld) window.location.reload();
    else void registration?.update().catch(() => {});
  };

  const canKeep = import.meta.env.PROD && 'serviceWorker' in navigator;
  if (canKeep) {
    const { serviceWorker } = navigator;
    const hadOne = serviceWorker.controller !== null;
    serviceWorker.addEventListener('controllerchange', () => {
      if (taking) window.location.reload();
      else isOld = hadOne;
    });
    window.addEventListener('hashchange', noteDrill);
    noteDrill();
  }
  const begin = () => {
    if (!canKeep) return;
    navigator.serviceWorker.register('./sw.js').then(watch, (error: unknown) => {
      console.warn('Detent will not open without a network:', error);
    });
  };

  return {
    begin,
    // A first worker waits for nobody: only beside one in use is it a new version.
    isWaiting: () => Boolean(registration?.waiting && registration.active),
    subscribe(listener) {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    async take() {
      const waiting = registration?.waiting;
      if (!waiting) return false;
      const switchOver = () => {
        taking = true;
        waiting.postMessage({ type: 'SKIP_WAITING' });
      };
      if (!navigator.locks) {
        if (isDrillOpen()) return false;
        switchOver();
        return true;
      }
      return navigator.locks.request(IN_DRILL, { ifAvailable: true }, (lock) => {
        if (lock) switchOver();
        return lock !== null;
      });
    },
  };
}

/** That of this tab. */
export const newVersion = keepOffline();
