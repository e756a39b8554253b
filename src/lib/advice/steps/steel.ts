import { showsBar } from '$lib/advice/demands';
import { moistureOf } from '$lib/advice/sheet';
import { tooRough } from './after';
import { call, washOf, type Situation, type Work } from './work';

/**
 * What steel asks for: a bar that shows is undercut, followed past the rust, and cleaned.
 * Source: ICRI 310.1R and ACI PRC-364.6 through figures `bar.*`; hammers from `hammer.*`.
 */
export function callSteel(work: Work, situation: Situation): void {
  const { site, zone } = situation;
  const salts = zone.steel !== 'none-seen' && site.salts !== 'none';
  if (showsBar(zone)) {
    call(
      work,
      'free-bar',
      {
        rule: 'bar-undercut',
        figures: ['bar.clear', 'bar.clear-over-aggregate', 'bar.clear-military'],
      },
      { rule: 'bar-follow-rust', figures: ['bar.along'] },
      { rule: 'bar-light-hammer', figures: ['hammer.above-steel', 'hammer.at-steel'] },
    );
    if (zone.steel === 'exposed')
      call(work, 'free-bar', { rule: 'bar-clean-may-stay', figures: ['bar.bonded-share'] });
    if (zone.steel === 'corroded' && !zone.barLoss)
      call(work, 'free-bar', {
        rule: 'measure-the-bar',
        figures: ['bar.loss-one', 'bar.loss-neighbours'],
      });
    call(work, 'clean-bar', { rule: 'bar-cleaned-round' });
  }
  // Under a finish that wants it dry nothing is washed last: what salt is there shows in the test.
  // A fill that comes between is mortar, on a damp surface.
  if (salts && (moistureOf(zone) !== 'dry' || tooRough(situation)))
    call(work, washOf(work), { rule: 'salts-at-steel', facts: { salts: site.salts } });
}
