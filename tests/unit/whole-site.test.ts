import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { filesOf, type KeptFile } from '$lib/keep/whole-site';

/** What `src/whole-site.js` writes, put together here on its own. */
const files = [
  ['', 'text/html; charset=utf-8', '<h1>Start\n</h1>'],
  ['learn/', 'text/html; charset=utf-8', 'é, –, 漢'],
  ['learn/empty.css', 'text/css; charset=utf-8', ''],
  ['learn/search.packed', '', '\n\n'],
] as const;
const bytes = (text: string) => new TextEncoder().encode(text);
const whole = bytes(
  `${JSON.stringify({
    version: 'this',
    files: files.map(([path, type, text]) => [path, bytes(text).length, type]),
  })}\n${files.map(([, , text]) => text).join('')}`,
);

/** Sent in pieces that end at these places. */
const sent = (all: Uint8Array, cuts: readonly number[]) =>
  new ReadableStream<Uint8Array<ArrayBuffer>>({
    start(control) {
      const ends = [...new Set([...cuts, all.length])].sort((a, b) => a - b);
      ends.forEach((end, at) => control.enqueue(all.slice(at ? ends[at - 1] : 0, end)));
      control.close();
    },
  });
async function had(stream: ReadableStream<Uint8Array<ArrayBuffer>>, version = 'this') {
  const got: KeptFile[] = [];
  let fault: unknown;
  try {
    for await (const file of filesOf(stream, version)) got.push(file);
  } catch (error) {
    fault = error;
  }
  return {
    fault,
    files: got.map(({ path, type, body }) => [path, type, new TextDecoder().decode(body)]),
  };
}

describe('the whole site in one file', () => {
  it('comes out as it went in, wherever the network cuts it', () =>
    fc.assert(
      fc.asyncProperty(fc.array(fc.integer({ min: 1, max: whole.length })), async (cuts) => {
        expect(await had(sent(whole, cuts))).toEqual({ fault: undefined, files });
      }),
    ));

  it('gives what came whole before the line broke, and says that it broke', () =>
    fc.assert(
      fc.asyncProperty(fc.integer({ min: 0, max: whole.length - 1 }), async (end) => {
        const { fault, files: got } = await had(sent(whole.slice(0, end), []));
        expect(fault).toBeInstanceOf(Error);
        expect(got).toEqual(files.slice(0, got.length));
        expect(got.length).toBeLessThan(files.length);
      }),
    ));

  it('gives nothing of another version, and does not fetch it to its end', async () => {
    let cancelled = false;
    const stream = new ReadableStream<Uint8Array<ArrayBuffer>>({
      pull: (control) => control.enqueue(whole.slice(0, whole.indexOf(10) + 1)),
      cancel: () => void (cancelled = true),
    });
    expect(await had(stream, 'another')).toEqual({ fault: undefined, files: [] });
    expect(cancelled).toBe(true);
  });

  it('says what is missing of it', async () => {
    expect((await had(sent(bytes('{"version":"this"'), []))).fault).toEqual(
      new Error('no first line'),
    );
    expect((await had(sent(whole.slice(0, whole.length - 1), []))).fault).toEqual(
      new Error('ends in the middle of learn/search.packed'),
    );
  });

  it('takes the page of a host in trouble for what it is', async () => {
    const { fault, files: got } = await had(sent(bytes('<!doctype html>\n<p>Not now.'), []));
    expect(fault).toBeInstanceOf(Error);
    expect(got).toEqual([]);
  });
});
