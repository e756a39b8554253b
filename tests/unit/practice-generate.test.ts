import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { holdRules } from '$lib/advice/rules';
import { neverPractised } from '$lib/practice/strata';
import { authored } from '$lib/practice/authored';
import { adviceOn, answersOf } from '$lib/practice/case';
import {
  drawing,
  generate,
  generatedId,
  lastSeed,
  seedIn,
  stratumOf,
} from '$lib/practice/generate';
import { levelOf, levels } from '$lib/practice/level';
import { findCase, nextCase } from '$lib/practice/next';
import { nonsense, nonsenseIn } from '$lib/practice/nonsense';
import { standingOf, withResult, type Progress } from '$lib/practice/progress';
import { isOf, round, sheetDecides } from '$lib/practice/strata';

const rounds = 12;
const cases = Array.from({ length: rounds * round.length }, (_, seed) => generate(seed));
const advices = cases.map(adviceOn);

const count = <T extends string>(all: readonly T[]) => {
  const counts = new Map<T, number>();
  for (const each of all) counts.set(each, (counts.get(each) ?? 0) + 1);
  return counts;
};

describe('generated cases', () => {
  it('are spread over all methods that can be advised, all verdicts and all holds', () => {
    const methods = count(advices.flatMap(({ method }) => method ?? []));
    expect([...methods.keys()].sort()).toEqual(
      [
        'pressure-wash',
        'grind',
        'abrasive-blast',
        'needle-scale',
        'scarify',
        'shotblast',
        'break-out',
      ].sort(),
    );
    for (const [method, times] of methods) expect(times, method).toBeGreaterThanOrEqual(3 * rounds);
    cases.forEach((one, seed) => expect(isOf(one, stratumOf(seed)), one.id).toBe(true));
    const holds = count(advices.flatMap((advice) => advice.holds[0]?.rule ?? []));
    expect([...holds.keys()].sort()).toEqual(
      holdRules.filter((id) => !(neverPractised as readonly string[]).includes(id)).sort(),
    );
    for (const [hold, times] of holds) expect(times, hold).toBe(rounds);
    const verdicts = count(advices.map(({ verdict }) => verdict));
    for (const verdict of ['prepare', 'find-out-first', 'stop'] as const)
      expect((verdicts.get(verdict) ?? 0) / cases.length, verdict).toBeGreaterThan(0.1);
  });

  // Common practice, no source: spots by hand under 1 m2, nobody grinds over 10 m2 off floors; the
  // maker's sheet counts for more than the usual table.
  it('hold spots and wide areas, sheets that decide, borders, and steps somebody can fall from', () => {
    const has = (test: (one: (typeof cases)[number]) => boolean) => cases.filter(test).length;
    const area = ({ zone }: (typeof cases)[number]) => zone.area as number;
    const off = ['steps', 'suspended-steps', 'wall', 'soffit'];
    expect(has((one) => area(one) < 1)).toBeGreaterThan(rounds);
    expect(has((one) => area(one) > 10 && off.includes(one.site.element))).toBeGreaterThan(rounds);
    expect(has((one) => one.site.element === 'suspended-steps')).toBeGreaterThan(rounds);
    expect(has((one) => sheetDecides(one, adviceOn(one)))).toBeGreaterThanOrEqual(rounds);
    expect(has(({ zone }) => (zone.border ?? 0) > 0)).toBeGreaterThan(rounds);
    expect(has((one) => adviceOn(one).beside !== null)).toBeGreaterThanOrEqual(rounds);
  });

  it('are consistent, and no rule of consistency is idle', () => {
    for (const one of cases) expect(nonsenseIn(one.site, one.zone), one.id).toEqual([]);
    const plain = cases[0] as (typeof cases)[number];
    // Some combination breaks each rule, so each can say no.
    const broken = new Set<string>();
    const some = cases.slice(0, 90);
    for (const one of some)
      for (const other of some)
        for (const name of nonsenseIn(one.site, other.zone)) broken.add(name);
    for (const zone of [
      { depth: 'film', looseness: 'rotten', texture: 'smooth', steel: 'corroded' },
      { depth: '6-to-20', looseness: 'flaking', texture: 'smooth', finish: 'sealer' },
      { depth: 'film', looseness: 'hollow', finish: 'rebuild', texture: 'smooth' },
      { depth: 'through', looseness: 'tight', texture: 'sandy' },
      { depth: '20-to-50', looseness: 'fractured', texture: 'smooth', steel: 'exposed' },
      { contamination: ['thin-coating', 'thick-coating'], steel: 'none-seen', barLoss: 'one-bar' },
      { contamination: ['thin-coating', 'growth'] },
      { depth: 'under-3', looseness: 'tight' },
      { depth: 'over-50', looseness: 'rotten', finish: 'build-coat' },
    ] as const)
      for (const name of nonsenseIn(plain.site, { ...plain.zone, ...zone })) broken.add(name);
    for (const site of [
      { setting: 'indoors', freezeThaw: 'often' },
      { element: 'soffit', setting: 'open', salts: 'de-icing', warnings: ['settled-or-rocking'] },
      { element: 'wall', warnings: ['tendons-possible', 'holds-something-up'] },
    ] as const)
      for (const name of nonsenseIn({ ...plain.site, ...site }, plain.zone)) broken.add(name);
    expect(Object.keys(nonsense).filter((name) => !broken.has(name))).toEqual([]);
  });

  it('come back the same from the same seed, and differ between seeds', () => {
    for (const seed of [0, 17, 31_000, lastSeed]) expect(generate(seed)).toEqual(generate(seed));
    const truths = new Set(cases.map(({ site, zone }) => JSON.stringify([site, zone])));
    expect(truths.size).toBeGreaterThan(cases.length * 0.99);
  });

  // What ids have come to mean once may not change: links and kept results name them.
  it('mean what they meant', () => {
    expect(generate(7)).toEqual({
      id: 'g3-7',
      site: {
        element: 'steps',
        freezeThaw: 'some',
        salts: 'none',
        setting: 'indoors',
        thickness: 'unknown',
        warnings: [],
      },
      zone: {
        area: 0.2,
        contamination: [],
        cracks: 'none',
        depth: '3-to-6',
        depthMm: 5,
        finish: 'sealer',
        looseness: 'fractured',
        steel: 'none-seen',
        texture: 'sandy',
      },
    });
  });

  it('are found far along the seeds too', () => {
    for (let seed = lastSeed - 60; seed <= lastSeed; seed += 1)
      expect(generate(seed).id).toBe(generatedId(seed));
  });

  it('are found again by their id, and nothing else is', () => {
    expect(seedIn(generatedId(42))).toBe(42);
    for (const id of [
      `${drawing}-`,
      `${drawing}-01`,
      `${drawing}--1`,
      `${drawing}-2147483648`,
      'g0-1',
      'g999-1',
      `${drawing}-1e3`,
      ` ${drawing}-1`,
      'x',
    ])
      expect(seedIn(id), id).toBeNull();
  });

  it('come in every level', () => {
    const found = count(cases.map((one) => String(levelOf(one))));
    for (const level of levels) expect(found.get(String(level)) ?? 0).toBeGreaterThan(20);
  });

  it('get from their answers what their truth gets', () => {
    for (const one of cases.slice(0, 60)) {
      const { site, zone } = answersOf(one);
      const advice = adviseZone(site, zone);
      const settled = adviceOn(one);
      expect([advice.verdict, advice.method], one.id).toEqual([settled.verdict, settled.method]);
      expect(advice.steps.map(({ id }) => id)).toEqual(settled.steps.map(({ id }) => id));
    }
  });
});

describe('a learner who is right in everything', () => {
  const start = Date.UTC(2026, 0, 5, 9);
  const ids = authored.map(({ id }) => id);
  it('decides which cases are new, authored ones first, and they never run out', () => {
    let progress: Progress = [];
    const met: number[] = [];
    for (let turn = 0; turn < ids.length + 20; turn += 1) {
      const standing = standingOf(progress);
      // A minute each, all right: what is known comes back only days later.
      const next = nextCase(standing, start + turn * 1000, turn);
      expect(next.why).toBe('new');
      expect(standing.known.has(next.id)).toBe(false);
      const one = findCase(next.id);
      if (!one) throw new Error(next.id);
      met.push(levelOf(one));
      expect(levelOf(one)).toBeLessThanOrEqual(standing.level);
      progress = withResult(progress, {
        ...{ case: next.id, rating: 'good' },
        at: start + turn * 1000,
      });
    }
    expect(met.slice(0, 3)).toEqual([1, 1, 1]);
    expect(Math.max(...met)).toBe(4);
    expect(progress.filter(({ case: id }) => ids.includes(id))).toHaveLength(ids.length);
    expect(nextCase(standingOf([]), start, 5)).toEqual(nextCase(standingOf([]), start, 5));
  });

  it('may be chosen: then all cases are of that level, also those that come back', () => {
    const missed = authored.find((one) => levelOf(one) === 1)?.id ?? '';
    for (const level of levels) {
      let progress: Progress = [{ case: missed, at: start, rating: 'again' }];
      for (let turn = 1; turn <= 8; turn += 1) {
        const at = start + turn * 120_000;
        const next = nextCase(standingOf(progress), at, turn, {
          level,
          after: progress.at(-1)?.case,
        });
        const one = findCase(next.id);
        expect(one && levelOf(one)).toBe(level);
        progress = withResult(progress, { case: next.id, at, rating: 'good' });
      }
    }
  });
});
