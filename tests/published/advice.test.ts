import { describe, expect, it } from 'vitest';
import { adviseSettled } from '$lib/advice/settle';
import { clearBehindBar } from '$lib/advice/hole';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { bandOf } from '$lib/answers/depth';
import { rangeOf, valueOf, type FigureId } from '$shared/figures';

const inch = 25.4;
const site = (over: Partial<SettledSite> = {}): SettledSite => ({
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'some',
  thickness: 150,
  warnings: [],
  ...over,
});
const zone = (over: Partial<SettledZone> = {}): SettledZone => ({
  depth: 'film',
  looseness: 'tight',
  contamination: [],
  texture: 'smooth',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'undecided',
  area: 10,
  ...over,
});
const stepsOf = (s: SettledSite, z: SettledZone) => adviseSettled(s, z).steps.map(({ id }) => id);

describe('surface profiles', () => {
  // ICRI Guideline 310.2R-2013, concrete surface profile by method; from memory but for
  // abrasive blasting, which is as reported.
  it.each([
    ['csp.grind', 1, 2],
    ['csp.needle-scale', 2, 4],
    ['csp.abrasive-blast', 2, 7],
    ['csp.shotblast', 2, 9],
    ['csp.scarify', 4, 7],
    ['csp.break-out', 7, 10],
    ['csp.water-jet', 3, 10],
  ] as [FigureId, number, number][])('%s leaves CSP %d to %d', (id, low, high) => {
    expect(rangeOf(id)).toEqual([low, high]);
  });

  // ICRI Guideline 310.2R-2013, profile by finish; upper ends as reported, lower ends from memory.
  it.each([
    ['csp.needs.sealer', 1, 2],
    ['csp.needs.thin-film', 1, 3],
    ['csp.needs.build-coat', 3, 5],
    ['csp.needs.self-levelling', 4, 6],
    ['csp.needs.thin-overlay', 5, 9],
    ['csp.needs.overlay', 5, 10],
  ] as [FigureId, number, number][])('%s is CSP %d to %d', (id, low, high) => {
    expect(rangeOf(id)).toEqual([low, high]);
  });
});

describe('bars', () => {
  // ICRI 310.1R and ACI PRC-364.6-22: 3/4 in, or largest aggregate + 1/4 in, whichever is greater.
  it('are cleared behind by the greater of 3/4 in and the aggregate plus 1/4 in', () => {
    expect(clearBehindBar(0)).toBeCloseTo(0.75 * inch, 0);
    expect(clearBehindBar(0.375 * inch)).toBeCloseTo(0.75 * inch, 0);
    expect(clearBehindBar(1 * inch)).toBeCloseTo(1.25 * inch, 0);
  });
  // ACI PRC-364.6-22: at least 6 in along the bar.
  it('are followed at least 6 in', () => expect(valueOf('bar.along')).toBeCloseTo(6 * inch, -1));
  // UFGS 03931: 25 % of one bar, 20 % of two or more neighbours.
  it('go to an engineer past the published loss of section', () => {
    expect(valueOf('bar.loss-one')).toBe(0.25);
    expect(valueOf('bar.loss-neighbours')).toBe(0.2);
    const worn = zone({ steel: 'corroded', barLoss: 'one-bar' });
    expect(adviseSettled(site(), worn).verdict).toBe('stop');
    expect(adviseSettled(site(), worn).holds[0]?.rule).toBe('bar-section-loss');
    const sound = zone({ steel: 'corroded', barLoss: 'within-limit' });
    expect(adviseSettled(site(), sound).verdict).toBe('prepare');
  });
  // UFGS 03931, 3.1.8: 30 lb above the steel, 15 lb around it.
  it('are freed with hammers of the published classes', () => {
    const pound = 0.45359237;
    expect(valueOf('hammer.above-steel')).toBeCloseTo(30 * pound, 0);
    expect(valueOf('hammer.at-steel')).toBeCloseTo(15 * pound, 0);
  });
});

describe('patches and depth', () => {
  // FHWA, Partial-depth repairs, 4.2, in inches.
  it.each([
    ['patch.min-length', 12],
    ['patch.min-width', 4],
    ['patch.merge', 12],
    ['patch.skip-length', 6],
    ['patch.skip-width', 1.5],
  ] as [FigureId, number][])('%s is %d in', (id, inches) => {
    expect(Math.abs(valueOf(id) - inches * inch)).toBeLessThan(5);
  });
  it('reach 3 to 4 in past the damage, 4 in where it freezes often', () => {
    expect(rangeOf('patch.past-damage')[0]).toBeCloseTo(75, 0);
    expect(rangeOf('patch.past-damage')[1]).toBeCloseTo(100, 0);
    expect(valueOf('patch.past-damage-frost')).toBe(100);
  });
  // UFC 3-270-04, 4.2.6: a spall to half the slab or deeper is replaced full depth. What counts is the
  // finished hole: UFC 3-270-03, 15.4, has it 1/2 in (13 mm) into sound concrete.
  it('go full depth once the finished hole reaches half the slab', () => {
    const at = (depthMm: number) =>
      adviseSettled(site({ thickness: 100 }), {
        ...zone({ looseness: 'fractured', depth: bandOf(depthMm, 100) }),
        depthMm,
      });
    expect(at(50 - 13 - 1).verdict).toBe('prepare');
    expect(at(50 - 13).verdict).toBe('stop');
    expect(at(50 - 13).holds[0]?.rule).toBe('full-depth');
    expect(at(50).verdict).toBe('stop');
  });
  // FHWA checklist 9: below the top third, partial depth is doubtful. A third is 50 mm here, and the
  // hole goes 1/2 in (13 mm) past the damage.
  it('are doubtful past the top third', () => {
    const rules = (depthMm: number) =>
      adviseSettled(site({ thickness: 150 }), {
        ...zone({ looseness: 'hollow', depth: bandOf(depthMm, 150) }),
        depthMm,
      }).steps.flatMap(({ why }) => why.map(({ rule }) => rule));
    expect(rules(50 - 13 - 1)).not.toContain('depth-past-third');
    expect(rules(50 - 13 + 1)).toContain('depth-past-third');
    expect(rules(55)).toContain('depth-past-third');
  });
  // UFC 3-270-03, 3.1: covered within 24 h or cleaned again.
  it('stay open no longer than a day', () => expect(valueOf('open.limit')).toBe(24));
});

describe('cracks', () => {
  // ACI 224R Table 4.1, guide widths in mm, as reported.
  it.each([
    ['crack.width.dry-air', 0.41],
    ['crack.width.humid', 0.3],
    ['crack.width.de-icing', 0.18],
    ['crack.width.sea', 0.15],
    ['crack.width.water-retaining', 0.1],
  ] as [FigureId, number][])('%s is %d mm', (id, width) => expect(valueOf(id)).toBe(width));
  // ACI 201.1R, as reported.
  it('are fine below 1 mm and wide above 2 mm', () => {
    expect(valueOf('crack.fine')).toBe(1);
    expect(valueOf('crack.wide')).toBe(2);
  });
  // UFGS 03931, 3.8: routed at least 1/4 in wide; depth as reported.
  it('are routed at least 6 mm wide', () => {
    expect(valueOf('rout.width')).toBe(6);
    expect(rangeOf('rout.depth')).toEqual([6, 25]);
  });
});

// Rules of thumb of the trade: common practice, no source.
describe('what every foreman would say', () => {
  it('washes sound, uncontaminated concrete', () => {
    expect(adviseSettled(site(), zone()).method).toBe('pressure-wash');
    expect(adviseSettled(site(), zone({ contamination: ['growth'] })).method).toBe('pressure-wash');
  });
  it('grinds weak skin under 1/8 in off a smooth floor', () => {
    const weak = zone({ depth: 'under-3', looseness: 'flaking', finish: 'thin-film' });
    expect(adviseSettled(site(), weak).method).toBe('grind');
  });
  it('scarifies or shotblasts between 1/8 and 1/4 in', () => {
    const broken = zone({ depth: '3-to-6', looseness: 'fractured', finish: 'overlay' });
    expect(adviseSettled(site(), broken).method).toBe('scarify');
    expect(adviseSettled(site(), { ...broken, texture: 'pitted' }).method).toBe('shotblast');
    expect(adviseSettled(site(), { ...broken, cracks: 'open' }).method).toBe('shotblast');
  });
  it('breaks out what is rotten at any depth, and what is loose or hollow past 1/4 in', () => {
    expect(adviseSettled(site(), zone({ looseness: 'rotten' })).method).toBe('break-out');
    const hollow = zone({ looseness: 'hollow', depth: '6-to-20' });
    expect(adviseSettled(site(), hollow).method).toBe('break-out');
    const deep = zone({ looseness: 'fractured', depth: '6-to-20' });
    expect(adviseSettled(site(), deep).method).toBe('break-out');
  });
  // NRMCA CIP 20: a floor trowelled too early lets go of its top 3 to 6 mm (1/8 to 1/4 in).
  it('takes a trowelled skin that let go off without a breaker, and sounds what is under it', () => {
    const skin = zone({ looseness: 'hollow', depth: '3-to-6', texture: 'smooth' });
    expect(adviseSettled(site(), skin).method).toBe('scarify');
    // Sounded once the skin is off, as part of taking it off.
    const { steps } = adviseSettled(site(), skin);
    const rules = steps.find(({ id }) => id === 'scarify')?.why.map(({ rule }) => rule);
    expect(rules).toContain('sound-what-is-under');
    expect(steps.map(({ id }) => id)).not.toContain('re-sound');
    expect(adviseSettled(site(), { ...skin, texture: 'pitted' }).method).toBe('shotblast');
    expect(adviseSettled(site(), { ...skin, area: 0.5 }).method).toBe('needle-scale');
    expect(adviseSettled(site({ element: 'wall' }), { ...skin, area: 20 }).method).toBe(
      'abrasive-blast',
    );
  });
  it('chases crumbling cracks, and any open crack where it freezes often', () => {
    const frost = site({ freezeThaw: 'often' });
    expect(stepsOf(frost, zone({ cracks: 'crumbling' }))).toContain('chase-crack');
    expect(stepsOf(frost, zone({ cracks: 'open' }))).toContain('chase-crack');
    expect(stepsOf(site(), zone({ cracks: 'open' }))).toContain('route-crack');
    expect(stepsOf(frost, zone({ cracks: 'hairline' }))).toContain('tap-crack');
  });
  it('undercuts bars that show', () => {
    expect(stepsOf(site(), zone({ steel: 'exposed' }))).toContain('free-bar');
    expect(stepsOf(site(), zone({ steel: 'corroded' }))).toContain('free-bar');
    expect(stepsOf(site(), zone())).not.toContain('free-bar');
  });
  it('leaves a firm hollow as a form to fill', () => {
    const oldSpall = zone({ depth: '20-to-50', texture: 'pitted', finish: 'overlay' });
    expect(adviseSettled(site(), oldSpall).method).toBe('pressure-wash');
  });
  it('does not bruise sound concrete for the sake of roughness', () => {
    const sound = zone({ finish: 'overlay' });
    const advice = adviseSettled(site(), sound);
    expect(advice.method).toBe('shotblast');
    expect(advice.rejections.find(({ method }) => method === 'scarify')?.rule).toBe(
      'would-bruise-sound-concrete',
    );
  });
  it('does not skip the blast-cleaning of a bruised skin where it freezes often', () => {
    const small = zone({ looseness: 'hollow', depth: '6-to-20', finish: 'overlay', area: 0.5 });
    expect(stepsOf(site({ freezeThaw: 'often' }), small)).toContain('blast-clean');
    expect(stepsOf(site({ freezeThaw: 'rare' }), small)).not.toContain('blast-clean');
    expect(stepsOf(site({ freezeThaw: 'rare' }), { ...small, area: 5 })).toContain('blast-clean');
  });
});
