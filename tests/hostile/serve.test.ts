import { rmSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { anyRequest, sendRaw } from '../helpers/raw-http';
import { serveProcess } from '../helpers/serve-process';
import { smallFiles, smallSite } from '../helpers/small-site';
import { rounds } from '../helpers/rounds';

/**
 * Requests made to break the server that `npm run serve` starts, as bytes on a socket of this
 * machine, from a fixed seed. Whatever comes: an answer that HTTP knows, never a fault of the
 * server, nothing that is not to be had; and the next reader is served as if nothing had been.
 */
const tries = rounds(1500, 10_000);
const seed = 20_241_126;
const atOnce = 50;
/** 505: a version of HTTP it does not speak. */
const known = [100, 200, 206, 301, 304, 400, 403, 404, 405, 412, 413, 414, 416, 417, 426, 431, 505];

it(`survives ${tries} malformed requests`, async () => {
  const folder = smallSite();
  const server = await serveProcess(folder);
  const began = performance.now();
  const statuses = new Map<number, number>();
  try {
    const requests = fc.sample(anyRequest, { seed, numRuns: tries });
    const one = async (request: string) => {
      const answer = await sendRaw(server.port, request).catch((problem: Error) => {
        throw new Error(
          `${problem.message} after ${JSON.stringify(request)}: ${server.complaints()}`,
        );
      });
      // Several answers may come to one packet; the first tells. None: it hung up on nonsense.
      const status = Number(/^HTTP\/1\.1 (\d{3}) /.exec(answer)?.[1] ?? 0);
      statuses.set(status, (statuses.get(status) ?? 0) + 1);
      if (status && !known.includes(status))
        throw new Error(`${status} to ${JSON.stringify(request)}`);
      expect(answer).not.toContain(smallFiles._headers);
      expect(answer).not.toMatch(/\r\n\r\nno$|root:x:|^location: (?!\/(?![/\\]))/im);
    };
    const left = requests.values();
    const oneByOne = async () => {
      for (const request of left) await one(request);
    };
    await Promise.all(Array.from({ length: atOnce }, oneByOne));
    expect(server.complaints()).toBe('');
    expect(await (await fetch(server.site)).text()).toBe(smallFiles['index.html']);
  } finally {
    await server.end().catch(() => undefined);
    rmSync(folder, { recursive: true, force: true });
  }
  const seconds = (performance.now() - began) / 1000;
  const told = [...statuses].sort().map(([status, count]) => `${count} × ${status || 'hung up'}`);
  console.log(`${tries} malformed requests in ${seconds.toFixed(1)} s: ${told.join(', ')}`);
  // What was tried reached every kind of answer.
  for (const status of [200, 206, 301, 400, 404, 405, 416])
    expect(statuses.get(status) ?? 0, String(status)).toBeGreaterThan(rounds(0, 10));
});
