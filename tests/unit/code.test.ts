import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { codeOf, type Code } from '$lib/keep/code';
import { demoIds, demoJob } from '$lib/keep/demos';
import { readShareLink, shareLink } from '$lib/keep/share-link';

/** Draws a code at so many pixels a module and reads it as a camera would, by another library. */
function read({ size, quiet, path }: Code, pixels = 4): string | undefined {
  const side = (size + 2 * quiet) * pixels;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, run] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let row = Number(y) * pixels; row < (Number(y) + 1) * pixels; row += 1)
      for (
        let column = Number(x) * pixels;
        column < (Number(x) + Number(run)) * pixels;
        column += 1
      )
        data.fill(0, (row * side + column) * 4, (row * side + column) * 4 + 3);
  return jsQR(data, side, side)?.data;
}
const page = 'https://site.invalid/jobs/';

describe('a code of a link', () => {
  test.each(demoIds.filter((id) => id !== 'larch-row'))('of %s opens the same job', async (id) => {
    const job = demoJob(id);
    const made = await shareLink(job, page);
    const code = made.ok ? await codeOf(made.link) : null;
    expect(code).not.toBeNull();
    const text = read(code as Code);
    const opened = await readShareLink(new URL(text ?? '').hash);
    expect(opened).toEqual({ ok: true, value: job });
  });

  // ISO/IEC 18004, table of capacities (value from memory): version 18 with level L holds 718 bytes.
  test('version 18 is the finest', async () => {
    const most = await codeOf(`${page}#${'x'.repeat(718 - page.length - 1)}`);
    expect(most?.size).toBe(89);
    expect(read(most as Code)).toHaveLength(718);
    expect(await codeOf('x'.repeat(719))).toBeNull();
    // Letters that take two bytes count as two.
    expect(await codeOf('é'.repeat(360))).toBeNull();
  });

  test('has each run of dark modules in a row as one bar', async () => {
    const { path } = (await codeOf(page)) as Code;
    const bars = [...path.matchAll(/M(\d+) (\d+)h(\d+)v1h-(\d+)z/g)];
    expect(bars.map(([all]) => all).join('')).toBe(path);
    const starts = new Set(bars.map(([, x, y]) => `${String(x)} ${String(y)}`));
    for (const [, x, y, run, back] of bars) {
      expect(back).toBe(run);
      expect(starts.has(`${Number(x) + Number(run)} ${String(y)}`)).toBe(false);
    }
    // A finder pattern begins with seven dark modules.
    expect(path.startsWith('M4 4h7v1h-7z')).toBe(true);
  });

  test('four modules stay light on every side', async () => {
    const { size, quiet, path } = (await codeOf(page)) as Code;
    expect(quiet).toBe(4);
    const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)/g)].map((found) => found.map(Number));
    for (const [, x = 0, y = 0, run = 0] of runs) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(quiet);
      expect(Math.max(x + run, y + 1)).toBeLessThanOrEqual(quiet + size);
    }
  });
});
