import { rmSync } from 'node:fs';
import { request as ask, type IncomingHttpHeaders } from 'node:http';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { sendRaw } from '../helpers/raw-http';
import { serveProcess } from '../helpers/serve-process';
import { hostHeaders, smallFiles, smallSite } from '../helpers/small-site';

/** What `npm run serve` answers, in the terms of RFC 9110 (HTTP Semantics). */
let folder: string;
let server: Awaited<ReturnType<typeof serveProcess>>;
beforeAll(async () => {
  folder = smallSite();
  server = await serveProcess(folder);
});
afterAll(async () => {
  await server.end();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
}
/** Asks for exactly this path: `fetch` would tidy it and unpack what comes. */
const get = (path: string, headers: Record<string, string> = {}, method = 'GET') =>
  new Promise<Answer>((resolve, reject) => {
    ask({ port: server.port, host: '127.0.0.1', path, method, headers }, (answer) => {
      const chunks: Buffer[] = [];
      answer.on('data', (chunk: Buffer) => chunks.push(chunk));
      answer.on('end', () =>
        resolve({
          status: answer.statusCode ?? 0,
          headers: answer.headers,
          body: Buffer.concat(chunks),
        }),
      );
    })
      .on('error', reject)
      .end();
  });
const start = smallFiles['index.html'];
const named = '/_app/immutable/entry/start.abc.js';

describe('npm run serve', () => {
  it.each(['/', '/assess/depth/', named, '/nowhere/', '/manifest.webmanifest'])(
    'sends the headers of the file for static hosts with %s',
    async (path) => {
      const { headers } = await get(path);
      expect(hostHeaders.size).toBeGreaterThanOrEqual(5);
      for (const [name, value] of hostHeaders) expect(headers[name], name).toBe(value);
    },
  );

  it.each([
    ['nothing', {}, undefined],
    ['brotli', { 'accept-encoding': 'gzip, deflate, br' }, 'br'],
    ['gzip', { 'accept-encoding': 'gzip' }, 'gzip'],
    ['gzip, brotli refused', { 'accept-encoding': 'gzip, br;q=0' }, 'gzip'],
    ['gzip rather than brotli', { 'accept-encoding': 'br;q=0.1, gzip' }, 'gzip'],
    ['both refused', { 'accept-encoding': 'br;q=0, gzip;q=0' }, undefined],
    ['a name that only begins so', { 'accept-encoding': 'brown, gzipped' }, undefined],
  ])('hands out the copy packed at build: %s', async (_name, asked, packed) => {
    const { status, headers, body } = await get('/', asked);
    expect([status, headers['content-encoding'], headers.vary]).toEqual([
      200,
      packed,
      'Accept-Encoding',
    ]);
    expect(headers['content-type']).toBe('text/html; charset=utf-8');
    const unpacked =
      packed === 'br' ? brotliDecompressSync(body) : packed ? gunzipSync(body) : body;
    expect(unpacked.toString()).toBe(start);
  });

  it('answers 404 with the page for what is not there, and tells no secrets', async () => {
    for (const path of ['/nowhere', '/nowhere/', '/_headers', '/.secret', '/assess/../.secret']) {
      const { status, headers, body } = await get(path, { range: 'bytes=0-3' });
      expect([path, status, body.toString()]).toEqual([path, 404, smallFiles['404.html']]);
      expect(headers['cache-control']).toBe('no-cache');
    }
    // A link to a folder is completed; one to another host is not made of it.
    const moved = await get('/assess/depth?zone=a');
    expect([moved.status, moved.headers.location]).toEqual([301, '/assess/depth/?zone=a']);
    for (const path of ['//assess/depth', '/%2fassess/depth', '/\\assess/depth'])
      expect((await get(path)).status, path).toBe(404);
  });

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH', 'TRACE', 'PROPFIND'])(
    'answers %s with 405 and names what it knows',
    async (method) => {
      for (const path of ['/', '/nowhere'])
        expect(await get(path, {}, method)).toMatchObject({
          status: 405,
          headers: { allow: 'GET, HEAD' },
        });
    },
  );

  it('answers CONNECT, which is no request for a page, with 405 too', async () => {
    const answer = await sendRaw(server.port, 'CONNECT x:80 HTTP/1.1\r\nHost: x:80\r\n\r\n');
    expect(answer).toMatch(/^HTTP\/1\.1 405 .*\r\nallow: GET, HEAD\r\n/is);
  });

  it('says the head alone for HEAD', async () => {
    const { status, headers, body } = await get('/', {}, 'HEAD');
    expect([status, Number(headers['content-length']), body.length]).toEqual([
      200,
      start.length,
      0,
    ]);
  });

  it.each([
    ['bytes=2-5', 206, start.slice(2, 6)],
    ['bytes=-3', 206, start.slice(-3)],
    ['bytes=0-0', 206, start.slice(0, 1)],
    // RFC 9110, 14.1.1: a range that ends before it begins is invalid; 14.2: it may be ignored or refused.
    ['bytes=5-2', 416, undefined],
    ['bytes=99999-', 416, undefined],
    ['lines=1-2', 200, start],
    ['nonsense', 200, start],
  ])('answers the range %s with %i', async (range, status, content) => {
    const answer = await get('/', { range });
    if (content !== undefined) expect(answer.body.toString()).toBe(content);
    expect([200, status]).toContain(answer.status);
    expect((await get('/')).status).toBe(200);
  });

  it('keeps named files for good, asks for the others anew, and knows what has not changed', async () => {
    expect((await get(named)).headers['cache-control']).toBe('public, max-age=31536000, immutable');
    for (const path of ['/', '/service-worker.js', '/manifest.webmanifest'])
      expect((await get(path)).headers['cache-control'], path).toBe('no-cache');
    const { headers } = await get('/');
    expect((await get('/', { 'if-none-match': headers.etag ?? '' })).status).toBe(304);
    expect((await get('/manifest.webmanifest')).headers['content-type']).toMatch(
      /^application\/manifest\+json/,
    );
  });

  it('answers what is no HTTP with 400', async () => {
    for (const bytes of [
      'x\r\n\r\n',
      'GET http://[ HTTP/1.1\r\nHost: x\r\n\r\n',
      'GET /%zz HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n',
    ])
      expect(await sendRaw(server.port, bytes)).toMatch(/^HTTP\/1\.1 400 /);
  });

  it('goes on when a file it has handed out is gone, as after another build', async () => {
    expect((await get(named)).status).toBe(200);
    for (const ending of ['', '.br', '.gz']) rmSync(join(folder, named + ending));
    const gone = await get(named, { 'accept-encoding': 'br' });
    expect([gone.status, gone.headers['cache-control']]).toEqual([404, 'no-cache']);
    expect((await get('/')).status).toBe(200);
    expect([server.alive(), server.complaints()]).toEqual([true, '']);
  });
});
