import type { Finish } from '$lib/answers/questions';
import { rangeOf, valueOf, type FigureId } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { profileFigureOf, type Demands } from './demands';
import { profileLeft } from './methods/judge';
import type { SettledSite, SettledZone, Target } from './types';

const moisture: Readonly<Record<Finish, Target['moisture']>> = {
  sealer: 'dry',
  'thin-film': 'dry',
  'build-coat': 'dry',
  'self-levelling': 'ask-maker',
  'thin-overlay': 'ask-maker',
  overlay: 'saturated-surface-dry',
  rebuild: 'saturated-surface-dry',
  undecided: 'ask-maker',
};

/** What a finish wants under it. Source: common practice, no published source. */
export const moistureOf = (finish: Finish): Target['moisture'] => moisture[finish];

/**
 * Clear space to leave behind a freed bar, mm.
 * @param aggregate largest aggregate of the repair material, mm; 0 where it is not known yet
 * Source: ICRI 310.1R and ACI PRC-364.6 (figures `bar.clear`, `bar.clear-over-aggregate`).
 */
export const clearBehindBar = (aggregate: number): number =>
  Math.max(valueOf('bar.clear'), aggregate + valueOf('bar.clear-over-aggregate'));

/** What the surface must be when preparation ends. */
export function targetOf(
  site: SettledSite,
  zone: SettledZone,
  demands: Demands,
  method: MethodId | null,
): Target {
  const figure = profileFigureOf(zone.finish);
  const figures: FigureId[] = ['open.limit'];
  if (figure) figures.push(figure);
  const freesBar = zone.steel === 'exposed' || zone.steel === 'corroded';
  if (freesBar) figures.push('bar.clear', 'bar.clear-over-aggregate');
  return {
    profile: figure && rangeOf(figure),
    leaves: method && profileLeft(method, demands.texture),
    bruisedSkin:
      zone.finish === 'sealer' ? 'may-stay' : site.freezeThaw === 'often' ? 'must-go' : 'should-go',
    moisture: moistureOf(zone.finish),
    ...(freesBar && { behindBar: clearBehindBar(0) }),
    figures,
  };
}
