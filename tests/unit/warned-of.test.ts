import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mayBeThere, warnedOf } from '$lib/answers/answers';

const sourcesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true }).flatMap((entry) =>
    entry.isFile() && entry.name.endsWith('.ts') ? [join(entry.parentPath, entry.name)] : [],
  );

// What may be there is treated as there, and a question that nobody asked is not one with no sign.
describe('warning signs that are there, or may be', () => {
  it('are those ticked and those not sure; none is known where nobody was asked', () => {
    const warnings = { yes: ['map-cracking'], maybe: ['buried-services'] } as const;
    expect(warnedOf({ warnings })).toEqual(['map-cracking', 'buried-services']);
    expect(mayBeThere(warnings)).toEqual(['map-cracking', 'buried-services']);
    expect(warnedOf({ warnings: { yes: [], maybe: [] } })).toEqual([]);
    expect(warnedOf({})).toBeNull();
  });

  it('are put together in one place alone', () => {
    const elsewhere = ['advice', 'readiness', 'safety', 'plan']
      .flatMap((part) => sourcesBelow(join('src/lib', part)))
      .filter((file) =>
        /\.\.\.\(?[\w.?]*warnings\??\.yes[^\]]*\.maybe/.test(readFileSync(file, 'utf8')),
      );
    expect(elsewhere).toEqual([]);
  });
});
