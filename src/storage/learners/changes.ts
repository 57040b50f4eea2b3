/** Tells every tab of this device that the names changed, this one too. */

const CHANNEL = 'detent-names';
const listeners = new Set<() => void>();
let channel: BroadcastChannel | null | undefined;

const hear = () => {
  for (const listener of listeners) listener();
};

/** Null where the browser has no such channels: then other tabs notice when they are next looked at. */
function open(): BroadcastChannel | null {
  if (channel === undefined) {
    channel = globalThis.BroadcastChannel ? new BroadcastChannel(CHANNEL) : null;
    if (channel) channel.onmessage = hear;
  }
  return channel;
}

export function tellNamesChanged(): void {
  open()?.postMessage('changed');
  hear();
}

/** Gives back what ends it. */
export function onNamesChanged(listener: () => void): () => void {
  open();
  listeners.add(listener);
  return () => listeners.delete(listener);
}
