import { describe, expect, it } from 'vitest';
import { takenOff } from '$lib/advice/untested-coating';
import type { Contaminant } from '$lib/answers/questions';

// Common practice, no source: what may hold lead or asbestos is sampled wet by whoever is licensed;
// until then nobody takes any of it off for another test.
describe('what may be taken off while something is found out', () => {
  const site = (yes: boolean, maybe = false) => ({
    warnings: {
      yes: yes ? (['old-coating-or-adhesive'] as const) : [],
      maybe: maybe ? (['old-coating-or-adhesive'] as const) : [],
    },
  });
  const zone = (...yes: Contaminant[]) => ({ contamination: { yes, maybe: [] } });
  it('nothing where an old coating waits for its report, or may', () => {
    expect(takenOff(site(true), zone('thin-coating'))).toBe('nothing');
    expect(takenOff(site(false, true), zone())).toBe('nothing');
  });
  it('no coating where one lies on it, or nobody has looked', () => {
    expect(takenOff(site(false), zone('thick-coating'))).toBe('no-coating');
    expect(takenOff(site(false), {})).toBe('no-coating');
  });
  it('what a test needs where there is none', () => {
    expect(takenOff(site(false), zone('growth'))).toBe('little');
  });
});
