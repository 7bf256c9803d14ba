/// <reference lib="webworker" />
// A module of its own, in which `self` is the worker and not a window.
export {};

declare const self: ServiceWorkerGlobalScope;

/** Changes with every build: the page registers the worker under its own hash. */
const shelf = `reglow-${new URL(self.location.href).searchParams.get('build') ?? ''}`;
const page = '/index.html';

type Manifest = Record<string, { file: string; css?: string[]; assets?: string[] }>;

/** Keeps every built file, so that the wanted list opens where there is no connection. */
async function keepFiles(): Promise<void> {
  const cache = await caches.open(shelf);
  const manifest = (await (await fetch('/files.json')).json()) as Manifest;
  const files = Object.values(manifest).flatMap(({ file, css = [], assets = [] }) => [
    file,
    ...css,
    ...assets,
  ]);
  await cache.addAll([...new Set(files)].map((file) => `/${file}`));
  await cache.put(page, await fetch('/', { headers: { accept: 'text/html' } }));
}

async function dropOldShelves(): Promise<void> {
  for (const name of await caches.keys()) {
    if (name.startsWith('reglow-') && name !== shelf) await caches.delete(name);
  }
  await self.clients.claim();
}

/** The page as it is now; as it was kept when nothing answers. */
async function openPage(request: Request): Promise<Response> {
  try {
    return await fetch(request);
  } catch {
    return (await caches.match(page)) ?? Response.error();
  }
}

const openFile = async (request: Request): Promise<Response> =>
  (await caches.match(request)) ?? fetch(request);

self.addEventListener('install', (event) => {
  event.waitUntil(keepFiles().then(() => self.skipWaiting()));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(dropOldShelves());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const { pathname, origin } = new URL(request.url);
  if (request.method !== 'GET' || origin !== self.location.origin) return;
  if (request.mode === 'navigate') event.respondWith(openPage(request));
  else if (pathname.startsWith('/assets/') || pathname === '/lamp.svg') {
    event.respondWith(openFile(request));
  }
});
