import { describe, expect, it } from 'vitest';
import { facing, surfaceHere } from '$lib/advice/surface-here';
import type { ZoneAnswers } from '$lib/answers/answers';
import { methodIds } from '$shared/methods';
import { adviceOn, inLine, type SiteChange, type ZoneChange } from '../helpers/settled';

const scale: ZoneChange = { depth: '3-to-6', looseness: 'flaking' };
const spall: ZoneChange = { depth: '20-to-50', looseness: 'hollow' };
const told = (zone: ZoneChange, site: SiteChange = {}) => {
  const { rejections, reasons, ...advice } = adviceOn(zone, site);
  const against = Object.fromEntries(
    rejections.map((each) => [each.method, each.wouldDo ? `${inLine(each)}*` : inLine(each)]),
  );
  return { ...advice, against, reasons: reasons.map(inLine) };
};

// Trade page 5: stop, or find out first. Common practice, no published source.
describe('advice for one zone of which all is known', () => {
  it('prepared: the method, why, and why not the others', () => {
    const advice = told(scale);
    expect(advice).toMatchObject({
      verdict: 'prepare',
      method: 'scarify',
      underneath: 'scarify',
      beside: null,
      holds: [],
    });
    expect(advice.reasons.at(-1)).toBe('meets-all method=scarify');
    expect(Object.keys(advice.against).sort()).toEqual(
      methodIds.filter((id) => id !== 'scarify').sort(),
    );
    expect(Object.values(advice.against).join()).not.toContain('held');
    expect(advice.steps.map(({ id }) => id)).toContain('scarify');
  });
  it('along a bar: what the rest needs beside it', () => {
    expect(told({ ...scale, steel: 'exposed' })).toMatchObject({
      method: 'break-out',
      beside: 'scarify',
    });
    expect(told({ ...spall, steel: 'exposed' })).toMatchObject({
      method: 'break-out',
      beside: null,
    });
  });

  it('found out first: no method yet, its steps are told; what would do is told as that', () => {
    const advice = told(scale, { warnings: ['map-cracking'] });
    expect(advice).toMatchObject({
      verdict: 'find-out-first',
      method: null,
      underneath: 'scarify',
      beside: null,
      reasons: ['map-cracking'],
    });
    expect(advice.steps.map(({ id }) => id)).toContain('scarify');
    expect(advice.against).toMatchObject({
      scarify: 'held holds=map-cracking',
      shotblast: 'would-do-too method=shotblast*',
      'pressure-wash': 'leaves-loose looseness=flaking',
    });
  });
  it('stopped: no step, and whatever takes concrete off must wait', () => {
    const advice = told(scale, { warnings: ['tendons-possible', 'map-cracking'] });
    expect(advice).toMatchObject({
      verdict: 'stop',
      method: null,
      underneath: 'scarify',
      steps: [],
    });
    const held = 'held holds=tendons-before-depth+map-cracking';
    expect(advice.against).toMatchObject({
      scarify: held,
      shotblast: held,
      'break-out': held,
      'pressure-wash': 'leaves-loose looseness=flaking',
    });
  });
  it('where no surface method stands, all wait', () => {
    const advice = told({ ...scale, steel: 'exposed' }, { warnings: ['fire-or-chemical'] });
    expect(advice).toMatchObject({
      verdict: 'stop',
      method: null,
      underneath: null,
      beside: null,
      steps: [],
      reasons: ['fire-or-chemical'],
    });
    expect(advice.target.leaves).toBeNull();
    expect(new Set(Object.values(advice.against))).toEqual(
      new Set(['held holds=fire-or-chemical']),
    );
    expect(Object.keys(advice.against)).toHaveLength(methodIds.length);
  });
  it('where no method is left, each says how it failed', () => {
    const triedOut = methodIds.map((method) => ({
      method,
      because: 'too-much' as const,
      why: ['bruised'],
    }));
    const advice = told({ ...scale, triedOut });
    expect(advice).toMatchObject({ verdict: 'stop', underneath: null });
    expect(advice.against['scarify']).toBe('failed-on-patch why=bruised');
    expect(advice.against['shotblast']).toBe('failed-on-patch why=bruised');
    expect(advice.against['grind']).toMatch(/^past-its-reach/);
  });
});

it('a whole face is worked by all but washing, breaking out and the jet', () => {
  const others: readonly string[] = ['pressure-wash', 'break-out', 'water-jet'];
  expect([...facing].sort()).toEqual(methodIds.filter((id) => !others.includes(id)).sort());
});

// What the picture of the main step shows; a matter of this site, no source.
describe('what the main step meets', () => {
  const none = { yes: [], maybe: [] } as const;
  const zone: ZoneAnswers = { looseness: ['tight'], texture: ['sandy'], contamination: none };
  const painted = { yes: ['thin-coating'], maybe: [] } as const;
  it.each<[string, ZoneAnswers, readonly ('strip-coating' | 'grind')[], object | null]>([
    ['sound and clean', {}, ['grind'], { weak: false, coated: false, pitted: false }],
    ['weak', { looseness: ['powdery'] }, ['grind'], { weak: true, coated: false, pitted: false }],
    ['pits', { texture: ['pitted'] }, ['grind'], { weak: false, coated: false, pitted: true }],
    [
      'a coating',
      { contamination: painted },
      ['grind'],
      { weak: false, coated: true, pitted: false },
    ],
    [
      'one that was scraped off before',
      { contamination: painted },
      ['grind', 'strip-coating'],
      { weak: false, coated: false, pitted: false },
    ],
    [
      'growth that may be there is no coating',
      { contamination: { yes: [], maybe: ['growth'] } },
      ['grind'],
      { weak: false, coated: false, pitted: false },
    ],
    [
      'a coating that may be there',
      { contamination: { yes: [], maybe: ['thin-coating'] } },
      ['grind'],
      null,
    ],
    ['nobody has tapped it', { looseness: ['tight', 'hollow'] }, ['grind'], null],
    ['nobody has looked', { texture: ['sandy', 'pitted'] }, ['grind'], null],
  ])('%s', (_, change, steps, expected) => {
    expect(
      surfaceHere(
        { ...zone, ...change },
        steps.map((id) => ({ id })),
      ),
    ).toEqual(expected);
  });
  it.each(['looseness', 'texture', 'contamination'] as const)(
    'is not known without an answer: %s',
    (id) => {
      const { [id]: _, ...rest } = zone;
      expect(surfaceHere(rest, [])).toBeNull();
    },
  );
});
