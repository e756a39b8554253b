import { describe, expect, it } from 'vitest';
import { zoneNames } from '$words/zone-names';

describe('names of zones', () => {
  it('are their own, or their places, or both where two have the same', () => {
    const names = ['Ramp', '', 'Bay ', 'bay', '  '].map((name) => ({ name }));
    expect(zoneNames(names)).toEqual(['Ramp', 'Zone 2', 'Zone 3: Bay', 'Zone 4: bay', 'Zone 5']);
  });
});
