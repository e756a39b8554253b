import { showsBar } from '$lib/advice/demands';
import type { StepReason, StepReasons } from './work';

const bar = (reason: ReturnType<StepReason>): StepReason[] => [
  ({ zone }) => showsBar(zone) && reason,
];

/**
 * What steel asks for: a bar that shows is undercut, followed past the rust, and cleaned.
 * Source: ICRI 310.1R and ACI PRC-364.6 through figures `bar.*`; hammers from `hammer.*`.
 */
export const steelSteps: StepReasons = {
  'free-bar': [
    ...bar({
      rule: 'bar-undercut',
      figures: ['bar.clear', 'bar.clear-over-aggregate', 'bar.clear-military'],
    }),
    ...bar({ rule: 'bar-follow-rust', figures: ['bar.along'] }),
    ...bar({ rule: 'bar-light-hammer', figures: ['hammer.above-steel', 'hammer.at-steel'] }),
    ({ zone }) =>
      zone.steel === 'exposed' && { rule: 'bar-clean-may-stay', figures: ['bar.bonded-share'] },
    ({ zone }) =>
      zone.steel === 'corroded' &&
      !zone.barLoss && {
        rule: 'measure-the-bar',
        figures: ['bar.loss-one', 'bar.loss-neighbours'],
      },
  ],
  'clean-bar': bar({ rule: 'bar-cleaned-round' }),
};
