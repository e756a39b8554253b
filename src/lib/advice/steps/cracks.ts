import { call, type Situation, type Work } from './work';

/**
 * What a crack asks for. A moving crack is a hold, not a step: see `holds.ts`.
 * Source: common practice, no published source; groove sizes from figures `rout.*`.
 */
export function callCracks(work: Work, { site, zone }: Situation): void {
  const frost = site.freezeThaw === 'often';
  if (zone.cracks === 'hairline') {
    if (frost) call(work, 'tap-crack', { rule: 'hairline-tap-first' });
    else
      call(work, 'route-crack', {
        rule: 'hairline-rout-or-bridge',
        figures: ['rout.width', 'rout.depth', 'seal.temperature'],
      });
  }
  if (zone.cracks === 'open') {
    if (frost) call(work, 'chase-crack', { rule: 'open-in-frost-chase' });
    else
      call(work, 'route-crack', {
        rule: 'open-rout-or-chase',
        figures: ['rout.width', 'rout.depth', 'seal.temperature'],
      });
  }
  if (zone.cracks === 'crumbling') call(work, 'chase-crack', { rule: 'crumbling-chase' });
}
