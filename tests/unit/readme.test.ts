import { readFileSync, statSync } from 'node:fs';
import { expect, it } from 'vitest';

it('the README shows two pictures that are there, small, and kept beside the test that takes them', () => {
  const pictures = [
    ...readFileSync('README.md', 'utf8').matchAll(/<img src="([^"]+)"[^>]*alt="([^"]+)"/g),
  ];
  expect(pictures.length).toBe(2);
  for (const [, path = '', alt = ''] of pictures) {
    expect(path).toMatch(/^tests\/browser\/looks\/[a-z]+-phone\.png$/);
    expect(statSync(path).size).toBeLessThan(150_000);
    expect(alt.length).toBeGreaterThan(20);
    const shown = /([a-z]+)-phone/.exec(path)?.[1] ?? '';
    expect(readFileSync('tests/browser/looks.spec.ts', 'utf8')).toContain(`'${shown}'`);
  }
});
