/* Serves the whole site from one cache a version. The build puts in VERSION and FILES (paths from the base, and their hashes). */
const VERSION = '__VERSION__';
const FILES = __FILES__;
const BASE = new URL('./', self.location).pathname;
const PREFIX = `ton-for-ton${BASE}-`;
const CACHE = PREFIX + VERSION;

/** A query carries what was typed, never another page: '/a/?x=1', '/a/' and '/a' are the file '/a/index.html'. */
const fileOf = (url) => url.pathname.replace(/\/$|(\/[^/.]+)$/, '$1/index.html');

/** Takes a file over from the last version when it has not changed, so that an update costs only what is new. */
async function keep(cache, file, hash) {
  const path = BASE + file;
  const old = await caches.match(path, { ignoreSearch: true });
  const response = old?.headers.get('x-hash') === hash ? old : await fetch(path, { cache: 'no-cache' });
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  const headers = new Headers(response.headers);
  headers.set('x-hash', hash);
  await cache.put(path, new Response(await response.blob(), { headers }));
}

async function install() {
  const cache = await caches.open(CACHE);
  await Promise.all(Object.entries(FILES).map(([file, hash]) => keep(cache, file, hash)));
  await cache.put(`${BASE}saved`, new Response(new Date().toISOString()));
}

async function activate() {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)),
  );
  await self.clients.claim();
}

async function respond(request) {
  const cache = await caches.open(CACHE);
  const kept = await cache.match(fileOf(new URL(request.url)));
  if (kept) return kept;
  try {
    return await fetch(request);
  } catch (error) {
    const missing = request.mode === 'navigate' && (await cache.match(`${BASE}404.html`));
    if (missing) return new Response(await missing.blob(), { status: 404, headers: missing.headers });
    throw error;
  }
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));
// A new version waits until the person asks for it: open pages still need the old version's files.
self.addEventListener('message', (event) => event.data === 'update' && self.skipWaiting());
self.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  if (method === 'GET' && new URL(url).origin === self.location.origin) event.respondWith(respond(event.request));
});
