/// <reference no-default-lib="true"/>
/// <reference lib="esnext" />
/// <reference lib="webworker" />
/// <reference types="@sveltejs/kit" />
import { base, build, files, prerendered, version } from '$service-worker';

/**
 * The whole site on the device. One cache for each version of the site; it is filled before the
 * version may start and never changed after. A new version waits until the reader takes it: a tab
 * sends SKIP_WAITING only when it was told to (`lib/keep/updates.ts`).
 */
const worker = globalThis as unknown as ServiceWorkerGlobalScope;
const prefix = 'down-to-sound ';
const cacheName = prefix + version;

/**
 * Instructions to the host, the description of the job file for other programs, data of pages that
 * are never taken over, and the icon the device takes when it installs: no page asks for them.
 */
const notKept = ['_headers', 'job.schema.json', '__data.json', 'icon-512.png'];
const kept = [...files, ...prerendered].filter(
  (file) => !notKept.includes(file.slice(file.lastIndexOf('/') + 1)),
);
const fallback = `${base}/404.html`;

async function fill(): Promise<void> {
  const cache = await caches.open(cacheName);
  // Files of the build carry their content in their name; the others are asked for anew.
  await cache.addAll(build);
  await cache.addAll(kept.map((path) => new Request(path, { cache: 'no-cache' })));
  // A host may refuse to serve its error page as a page; the site works without it.
  await cache.add(fallback).catch(() => undefined);
}

async function removeOld(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names
      .filter((name) => name.startsWith(prefix) && name !== cacheName)
      .map((name) => caches.delete(name)),
  );
}

async function answer(request: Request): Promise<Response> {
  const cache = await caches.open(cacheName);
  const url = new URL(request.url);
  const found = await cache.match(url.pathname);
  if (found) return found;
  const withSlash = `${url.pathname}/`;
  if (request.mode === 'navigate' && (await cache.match(withSlash)))
    return Response.redirect(withSlash + url.search, 302);
  try {
    return await fetch(request);
  } catch (error) {
    const page = request.mode === 'navigate' ? await cache.match(fallback) : undefined;
    if (page) return new Response(page.body, { status: 404, headers: page.headers });
    throw error;
  }
}

worker.addEventListener('install', (event) =>
  event.waitUntil(
    fill().catch(async (error: unknown) => {
      // Half a version is of no use to anybody; the one before goes on.
      await caches.delete(cacheName);
      throw error;
    }),
  ),
);
worker.addEventListener('activate', (event) =>
  event.waitUntil(removeOld().then(() => worker.clients.claim())),
);
worker.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== worker.location.origin) return;
  event.respondWith(answer(request));
});
worker.addEventListener('message', ({ data }) => {
  if (data === 'SKIP_WAITING') void worker.skipWaiting();
});
