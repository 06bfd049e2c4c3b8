// Keeps the files of this page, and nothing else, so that it opens without a connection. Answers of the door are never
// kept: what was counted has its own place.
interface WorkerEvent {
  readonly waitUntil: (work: Promise<unknown>) => void;
}
interface FetchEvent extends WorkerEvent {
  readonly request: Request;
  readonly respondWith: (answered: Promise<Response>) => void;
}
interface WorkerScope {
  readonly addEventListener: {
    (name: 'install' | 'activate', listener: (event: WorkerEvent) => void): void;
    (name: 'fetch', listener: (event: FetchEvent) => void): void;
  };
  readonly skipWaiting: () => Promise<void>;
  readonly clients: { readonly claim: () => Promise<void> };
}

const scope = globalThis as unknown as WorkerScope;
const cacheName = 'regang-count-page';

scope.addEventListener('install', (event) => event.waitUntil(keepPage().then(() => scope.skipWaiting())));
scope.addEventListener('activate', (event) => event.waitUntil(scope.clients.claim()));
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET') return;
  if (request.mode === 'navigate') event.respondWith(newestPage());
  else event.respondWith(keptFile(request));
});

/** The page, and the files that it names. */
async function keepPage(): Promise<void> {
  const cache = await caches.open(cacheName);
  const page = await fetch('./', { cache: 'no-store' });
  if (!page.ok) throw new Error(`The page was answered with ${page.status}.`);
  const text = await page.clone().text();
  const files = [...text.matchAll(/(?:src|href)="(\.\/[^"]+)"/gu)].map((match) => match[1] ?? './');
  await cache.put('./', page);
  await cache.addAll(files);
  const wanted = new Set(['./', ...files].map((file) => new URL(file, location.href).href));
  for (const kept of await cache.keys()) if (!wanted.has(kept.url)) await cache.delete(kept);
}

/** From the door where it answers, else as it was last; a newer one is kept with its files. */
async function newestPage(): Promise<Response> {
  try {
    const page = await fetch('./', { cache: 'no-store' });
    if (page.ok) keepPage().catch(() => undefined);
    return page;
  } catch {
    return (await caches.match('./', { cacheName })) ?? Response.error();
  }
}

async function keptFile(request: Request): Promise<Response> {
  return (await caches.match(request, { cacheName })) ?? fetch(request);
}
