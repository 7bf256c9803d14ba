/**
 * Lets the pages open without a connection. Browsers allow it on this machine and over HTTPS; over
 * plain HTTP from another machine a page that is open stays usable, and no more.
 */
export function keepForOffline(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const build = new URL(import.meta.url).pathname.replace(/^.*[/-]([\w-]+)\.js$/, '$1');
  navigator.serviceWorker.register(`/offline-worker.js?build=${build}`).catch(() => undefined);
}
