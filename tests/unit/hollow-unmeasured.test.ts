import { describe, expect, it } from 'vitest';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledZone } from '$lib/advice/types';
import { choicesOf } from '$lib/answers/questions';
import { plainSite, plainZone } from '$lib/advice/completions';

/** Common practice, no published source: what hangs free and sounds hollow is an engineer's to look at. */
describe('a hollow that nobody has measured', () => {
  const holds = (element: (typeof plainSite)['element'], zone: Partial<SettledZone>) => {
    const found = adviseSettled(
      { ...plainSite, element, thickness: 300 },
      { ...plainZone, looseness: 'hollow', ...zone },
    );
    return found.holds.map(({ rule, who }) => `${rule}: ${who}`);
  };
  const engineer = 'hollow-unmeasured: engineer';

  it('holds the work for an engineer on a balcony, a stair in the air and a ceiling, at no depth for a floor or a wall', () => {
    const hang = choicesOf('element').filter((element) => holds(element, {}).includes(engineer));
    expect([...hang].sort()).toEqual(['soffit', 'suspended-slab', 'suspended-steps']);
    for (const depth of ['film', 'under-3', '3-to-6'] as const)
      expect(holds('suspended-slab', { depth })).toEqual([engineer]);
  });

  it('is cleared by a measured depth, and is another hold where concrete is taken away', () => {
    expect(holds('suspended-slab', { depth: '3-to-6', depthMm: 5 })).toEqual([]);
    expect(holds('suspended-slab', { depth: '20-to-50' })).toEqual([
      'structure-before-removal: engineer',
    ]);
    expect(holds('suspended-slab', { looseness: 'flaking' })).toEqual([]);
  });
});
