import { describe, expect, it } from 'vitest';
import type { StepId } from '$shared/methods';
import { situationOn, toldOf, type SiteChange, type ZoneChange } from '../helpers/settled';

// Common practice, no source; sizes of the groove from `rout.*`.
describe('what a crack asks for', () => {
  const groove = 'rout.width rout.depth seal.temperature';
  it.each<[ZoneChange, SiteChange['freezeThaw'], StepId | null, string?]>([
    [{ cracks: 'none' }, 'often', null],
    [{ cracks: 'moving' }, 'often', null],
    [{ cracks: 'moving', steel: 'rust-stain' }, 'some', null],
    [{ cracks: 'none', steel: 'exposed' }, 'some', null],
    [{ cracks: 'hairline' }, 'rare', 'route-crack', `hairline-rout-or-bridge ${groove}`],
    [{ cracks: 'hairline' }, 'some', 'route-crack', `hairline-rout-or-bridge ${groove}`],
    [{ cracks: 'hairline' }, 'often', 'tap-crack', 'hairline-tap-first'],
    [{ cracks: 'open' }, 'some', 'route-crack', `open-rout-or-chase ${groove}`],
    [{ cracks: 'open' }, 'often', 'chase-crack', 'open-in-frost-chase'],
    [{ cracks: 'crumbling' }, 'rare', 'chase-crack', 'crumbling-chase'],
    [{ cracks: 'crumbling' }, 'often', 'chase-crack', 'crumbling-chase'],
    [{ cracks: 'hairline', steel: 'rust-stain' }, 'rare', 'chase-crack', 'rust-open-to-bar'],
    [{ cracks: 'open', steel: 'corroded' }, 'rare', 'chase-crack', 'rust-open-to-bar'],
    [{ cracks: 'crumbling', steel: 'exposed' }, 'often', 'chase-crack', 'rust-open-to-bar'],
  ])('%o, frost %s: %s', (zone, freezeThaw, step, why) => {
    const situation = situationOn(zone, { freezeThaw: freezeThaw ?? 'some' });
    for (const id of ['tap-crack', 'chase-crack', 'route-crack'] as const)
      expect(toldOf(id, situation), id).toEqual(id === step ? [why] : null);
  });
});

// ICRI 310.1R and ACI PRC-364.6 (figures `bar.*`); loss of section: UFGS 03 93.
describe('what a bar asks for', () => {
  const freed = [
    'bar-undercut bar.clear bar.clear-over-aggregate bar.clear-military',
    'bar-follow-rust bar.along',
    'bar-light-hammer hammer.above-steel hammer.at-steel',
  ];
  it.each<[string, ZoneChange, readonly string[] | null]>([
    [
      'bare and clean, it may stay',
      { steel: 'exposed' },
      [...freed, 'bar-clean-may-stay bar.bonded-share'],
    ],
    [
      'rusted, it is measured',
      { steel: 'corroded' },
      [...freed, 'measure-the-bar bar.loss-one bar.loss-neighbours'],
    ],
    ['rusted and measured', { steel: 'corroded', barLoss: 'within-limit' }, freed],
    ['a stain frees none', { steel: 'rust-stain' }, null],
    ['none seen', {}, null],
  ])('%s', (_, zone, expected) => {
    const situation = situationOn(zone);
    expect(toldOf('free-bar', situation)).toEqual(expected);
    expect(toldOf('clean-bar', situation)).toEqual(expected && ['bar-cleaned-round']);
  });
});
