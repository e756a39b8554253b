import { describe, expect, it } from 'vitest';
import type { ReadinessRecord } from '$lib/answers/readiness-record';
import { takenBefore, takenUnder, underNow } from '$lib/readiness/taken';

const blasted = underNow('shotblast', { depth: 4, looseness: ['flaking'] });
const broken = underNow('break-out', { depth: 40, looseness: ['hollow'] });
const empty: ReadinessRecord = { seed: 1, results: {} };
const typed: ReadinessRecord = {
  ...empty,
  results: { sounding: { readings: ['clear'] }, chloride: { readings: [0.1] } },
  pullOff: { tests: [{ stress: 2, shares: { base: 100 } }] },
};

// Common practice, no source: a result proves the surface it was taken on, and no other.
describe('results of a surface that is no more', () => {
  const record = takenUnder(undefined, typed, blasted);
  it('are from before once another method, depth or looseness is worked', () => {
    expect(takenBefore(record, 'sounding', blasted)).toBe(false);
    for (const now of [
      broken,
      underNow('shotblast', { depth: 6, looseness: ['flaking'] }),
      underNow('shotblast', { depth: 4, looseness: ['powdery'] }),
    ])
      for (const check of ['sounding', 'pull-off'] as const)
        expect(takenBefore(record, check, now), check).toBe(true);
  });
  it('do not go for samples from deeper in, nor for results that say nothing of it', () => {
    expect(takenBefore(record, 'chloride', broken)).toBe(false);
    expect(takenBefore(typed, 'sounding', broken)).toBe(false);
    expect(takenBefore(typed, 'pull-off', broken)).toBe(false);
    expect(takenBefore(empty, 'profile', broken)).toBe(false);
    expect(takenBefore(record, 'sounding')).toBe(false);
  });
  it('stay from before where only what they are judged by is changed', () => {
    const results = { sounding: { ...record.results.sounding, given: { air: 12 } } };
    const pullOff = { ...record.pullOff, requirement: { id: 'overlay-control' } };
    const judged = takenUnder(record, { ...record, results, pullOff } as ReadinessRecord, broken);
    for (const check of ['sounding', 'pull-off'] as const)
      expect(takenBefore(judged, check, broken), check).toBe(true);
  });
  it('count again when taken anew, each for itself', () => {
    const again = takenUnder(
      record,
      { ...record, results: { ...record.results, sounding: { readings: ['clear'] } } },
      broken,
    );
    expect(takenBefore(again, 'sounding', broken)).toBe(false);
    expect(again.pullOff?.under).toEqual(blasted);
    expect(again.results.chloride?.under).toEqual(blasted);
    const pulled = takenUnder(again, { ...again, pullOff: { tests: [] } }, broken);
    expect(pulled.pullOff?.under).toEqual(broken);
  });
});
