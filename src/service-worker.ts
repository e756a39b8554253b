/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
import { base, build, files, prerendered, version } from '$service-worker';
import type { OfflineNews, OfflineOrder } from './lib/keep/offline-copy';
import { filesOf, notKept, wholeSite } from './lib/keep/whole-site';

/**
 * The whole site on the device. One cache for each version of the site. A page orders it filled when
 * it stands and the browser is idle; what could not be had is fetched at the next visit. A new
 * version waits until it is whole and the reader takes it: a tab sends SKIP_WAITING only when it was
 * told to (`lib/keep/updates.ts`).
 */
const worker = globalThis as unknown as ServiceWorkerGlobalScope;
// The path stands before the space: no copy of the site at another path begins like it.
const prefix = `down-to-sound${base} `;
const cacheName = prefix + version;

/** Milliseconds after which a new version is fetched though no page gave the word: some run no script. */
const unbidden = 30_000;
/** Files fetched at a time; few, so that a page that wants something has room. */
const atOnce = 4;
/** After as many in a row that the network did not give, the others will not come either. */
const inVain = 6;

/** Named by what is in them: the same name is the same file in every version. */
const named = new Set(build);
const kept = new Set([
  ...build,
  ...[...files, ...prerendered].filter(
    (file) => !notKept.includes(file.slice(file.lastIndexOf('/') + 1)),
  ),
]);
const fallback = `${base}/404.html`;

async function missing(cache: Cache): Promise<string[]> {
  const there = new Set((await cache.keys()).map(({ url }) => new URL(url).pathname));
  return [...kept, fallback].filter((path) => !there.has(path));
}

/** What has the same name in a version that lies here already. */
async function bringOver(cache: Cache, paths: readonly string[]): Promise<void> {
  const names = (await caches.keys()).filter((name) => name.startsWith(prefix));
  const before = await Promise.all(
    names.filter((name) => name !== cacheName).map((name) => caches.open(name)),
  );
  for (const path of paths.filter((path) => named.has(path)))
    for (const one of before) {
      const found = await one.match(path);
      if (found) await cache.put(path, found);
    }
}

/** What a host says of a file's body; the rest of its headers is true of all files. */
const ofTheBody =
  /^(content-(length|encoding|type)|etag|last-modified|accept-ranges|vary|date|age)$/i;

/** The whole site in one file. What came before the line broke stays. */
async function unpack(cache: Cache, paths: readonly string[]): Promise<void> {
  const wanted = new Set(paths);
  const asked = new Request(`${base}/${wholeSite}`, {
    cache: 'no-store',
    priority: 'low',
  } as RequestInit);
  const came = keepable(await fetch(asked));
  if (!came?.body) return;
  const general = [...came.headers].filter(([name]) => !ofTheBody.test(name));
  for await (const { path, type, body } of filesOf(came.body, version)) {
    const address = `${base}/${path}`;
    if (!wanted.has(address)) continue;
    const headers = [...general, ...(type ? [['content-type', type] as [string, string]] : [])];
    await cache.put(address, new Response(body, { headers }));
  }
}

/** From the network; undefined where it cannot be had. */
async function obtain(path: string): Promise<Response | undefined> {
  const asked = new Request(path, {
    cache: named.has(path) ? 'default' : 'no-cache',
    priority: 'low',
  } as RequestInit);
  return keepable(await fetch(asked));
}
/** What came, when it is the file itself and not word of an error or of another place. */
const keepable = (answer: Response) => (answer.ok && !answer.redirected ? answer : undefined);

/** Whether the host still has this version: pages of a later one do not belong in this cache. */
async function isCurrent(): Promise<boolean> {
  const answer = await fetch(`${base}/_app/version.json`, { cache: 'no-store' });
  return ((await answer.json()) as { version: string }).version === version;
}

/** Fetches what is missing. Never fails: what does not come is missing still. */
async function fetchMissing(): Promise<void> {
  const cache = await caches.open(cacheName);
  let left = await missing(cache);
  if (!left.length || !(await isCurrent().catch(() => false))) return;
  await bringOver(cache, left).catch(() => undefined);
  left = await missing(cache);
  // A little is fetched file by file: a new version leaves most of what is here as it was.
  if (left.length > kept.size / 2) {
    await unpack(cache, left).catch(() => undefined);
    left = await missing(cache);
  }
  const wanted = left.values();
  let failed = 0;
  const one = async () => {
    for (const path of wanted) {
      if (failed >= inVain) return;
      try {
        const answer = await obtain(path);
        if (answer) await cache.put(path, answer);
        failed = 0;
      } catch {
        failed += 1;
      }
    }
  };
  await Promise.all(Array.from({ length: atOnce }, one));
}

/** One at a time: two tabs ask for it together. */
let filling: Promise<void> | undefined;
const fill = () => (filling ??= fetchMissing().finally(() => (filling = undefined)));

async function news(): Promise<OfflineNews> {
  const left = await missing(await caches.open(cacheName));
  // A host may refuse to serve its error page as a page; the site works without it.
  return { offline: left.every((path) => path === fallback) ? 'whole' : 'partly' };
}

let bid: () => void;
const bidden = new Promise<void>((resolve) => (bid = resolve));
const savesData = () =>
  (navigator as { connection?: { saveData?: boolean } }).connection?.saveData === true;

async function install(): Promise<void> {
  const replaces = worker.registration.active !== null;
  const waited = new Promise<'waited'>((done) => setTimeout(() => done('waited'), unbidden));
  if ((await Promise.race([bidden, waited])) === 'waited' && savesData())
    throw new Error('not fetched: the device saves data');
  await fill();
  // What came stays for the next try; until it is whole the version before goes on.
  if (replaces && (await news()).offline !== 'whole') throw new Error('not whole yet');
}

async function activate(): Promise<void> {
  for (const name of await caches.keys())
    if (name.startsWith(prefix) && name !== cacheName) await caches.delete(name);
  await worker.clients.claim();
  const told = await news();
  for (const client of await worker.clients.matchAll()) client.postMessage(told);
}

async function answer(event: FetchEvent): Promise<Response> {
  const { request } = event;
  const cache = await caches.open(cacheName);
  const url = new URL(request.url);
  const found = await cache.match(url.pathname);
  if (found) return found;
  const withSlash = `${url.pathname}/`;
  if (request.mode === 'navigate' && (await cache.match(withSlash)))
    return Response.redirect(withSlash + url.search, 302);
  try {
    const came = await fetch(request);
    if (named.has(url.pathname) && keepable(came))
      event.waitUntil(cache.put(url.pathname, came.clone()).catch(() => undefined));
    return came;
  } catch (error) {
    const page = request.mode === 'navigate' ? await cache.match(fallback) : undefined;
    if (page) return new Response(page.body, { status: 404, headers: page.headers });
    throw error;
  }
}

/** Whether this version was installed just now and has not taken over. */
let coming = false;
worker.addEventListener('install', (event) => {
  coming = true;
  event.waitUntil(install());
});
worker.addEventListener('activate', (event) => {
  coming = false;
  event.waitUntil(activate());
});
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  // At the root, other sites on this host lie below; what is not ours goes its own way.
  if (request.method !== 'GET' || origin !== worker.location.origin) return;
  if (!pathname.startsWith(`${base}/`)) return;
  event.respondWith(answer(event));
});
worker.addEventListener('message', (event) => {
  const order = event.data as OfflineOrder | 'SKIP_WAITING';
  if (order === 'SKIP_WAITING') return void worker.skipWaiting();
  if (order === 'FILL') bid();
  // One that is still to come tells of itself when it takes over.
  if (coming) return;
  const filled = order === 'FILL' ? fill() : Promise.resolve();
  event.waitUntil(filled.then(news).then((told) => event.source?.postMessage(told)));
});
