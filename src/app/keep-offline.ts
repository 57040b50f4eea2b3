/** Registers the worker that serves the page without a network. A new version waits until the page is opened anew. */
export function keepOffline() {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  window.addEventListener('load', () => {
    navigator.serviceWorker.register('./sw.js').catch((error: unknown) => {
      console.warn('Detent will not open without a network:', error);
    });
  });
}
