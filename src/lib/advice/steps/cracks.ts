import type { SettledSite, SettledZone } from '$lib/advice/types';
import { call, type Situation, type Work } from './work';

/** Whether a crack is opened with a hammer along its whole length: then it is filled, as a hole is. */
export const chasesCrack = (
  { freezeThaw }: Pick<SettledSite, 'freezeThaw'>,
  { cracks, steel }: Pick<SettledZone, 'cracks' | 'steel'>,
): boolean =>
  cracks !== 'none' &&
  cracks !== 'moving' &&
  (steel !== 'none-seen' ||
    cracks === 'crumbling' ||
    (cracks === 'open' && freezeThaw === 'often'));

/**
 * What a crack asks for, whatever the rest of the surface needs. A moving crack is a hold, not a
 * step: see `holds.ts`. A crack with rust at it is opened to the bar, never sealed over it.
 * Source: common practice, no published source; groove sizes from figures `rout.*`.
 */
export function callCracks(work: Work, { site, zone }: Situation): void {
  const frost = site.freezeThaw === 'often';
  const { cracks } = zone;
  if (cracks === 'none' || cracks === 'moving') return;
  if (zone.steel !== 'none-seen') {
    call(work, 'chase-crack', { rule: 'rust-open-to-bar' });
    return;
  }
  if (cracks === 'crumbling') call(work, 'chase-crack', { rule: 'crumbling-chase' });
  else if (cracks === 'open' && frost) call(work, 'chase-crack', { rule: 'open-in-frost-chase' });
  else if (frost) call(work, 'tap-crack', { rule: 'hairline-tap-first' });
  else
    call(work, 'route-crack', {
      rule: cracks === 'open' ? 'open-rout-or-chase' : 'hairline-rout-or-bridge',
      figures: ['rout.width', 'rout.depth', 'seal.temperature'],
    });
}
