import { workOrder } from '$lib/advice/steps/work';
import type { StepId } from '$shared/methods';

/** Why one step comes before another. The sentences are in `words/`. */
export const orderRules = [
  'safe-first',
  'oil-driven-in',
  'hides-concrete',
  'mark-before-cutting',
  'mark-before-machines',
  'tap-before-cutting',
  'edge-before-breaking',
  'bars-once-they-show',
  'slurry-before-cleaning',
  'sound-what-is-left',
  'wet-before-dry',
  'dull-off-first',
  'dirty-before-clean',
  'edges-with-the-machine',
  'cut-before-blasting',
  'bruises-off-last',
  'bars-after-blasting',
  'dust-at-one-go',
  'dust-before-water',
  'seal-clean-crack',
  'seal-before-wash',
  'wash-last',
  'prove-what-is-clean',
  'cover-what-is-proven',
  'level-what-is-ready',
  'measure-what-has-dried',
  'clean-right-before',
  'cover-last',
] as const;
export type OrderRule = (typeof orderRules)[number];

const breaking: readonly StepId[] = ['break-out', 'chase-crack', 'free-bar'];
const cutting: readonly StepId[] = ['scarify', 'grind', 'needle-scale'];
const blasting: readonly StepId[] = ['shotblast', 'abrasive-blast', 'blast-clean'];
const mechanical: readonly StepId[] = [
  'saw-cut',
  ...breaking,
  ...cutting,
  'edge-work',
  ...blasting,
];
const dusty: readonly StepId[] = [...mechanical, 're-sound', 'clean-bar'];
const washing: readonly StepId[] = ['pressure-wash', 'final-wash'];
/** A crack is routed and sealed on one day: nothing may foul or strike it between, or after. */
const beforeSealing: readonly StepId[] = [...dusty, 'vacuum', 'pressure-wash'];

/** Which steps come before which, and why. Source: common practice, no published source. */
export const precedence: readonly {
  readonly before: readonly StepId[];
  readonly after: readonly StepId[];
  readonly why: OrderRule;
}[] = [
  { before: ['make-safe'], after: workOrder.filter((id) => id !== 'make-safe'), why: 'safe-first' },
  {
    before: ['degrease'],
    after: [...mechanical, 'route-crack', 'pressure-wash', 'strip-coating'],
    why: 'oil-driven-in',
  },
  {
    before: ['strip-growth', 'strip-coating'],
    after: ['sound-and-mark', 'tap-crack', ...mechanical, 'route-crack'],
    why: 'hides-concrete',
  },
  {
    before: ['sound-and-mark'],
    after: ['saw-cut', ...breaking, 'route-crack'],
    why: 'mark-before-cutting',
  },
  {
    before: ['sound-and-mark'],
    after: [...cutting, 'edge-work', ...blasting],
    why: 'mark-before-machines',
  },
  {
    before: ['tap-crack'],
    after: ['chase-crack', 'route-crack', ...cutting, ...blasting],
    why: 'tap-before-cutting',
  },
  {
    before: ['saw-cut'],
    after: ['break-out', 'water-jet', 'free-bar'],
    why: 'edge-before-breaking',
  },
  { before: ['saw-cut', ...breaking, 'water-jet'], after: blasting, why: 'wet-before-dry' },
  {
    before: ['saw-cut'],
    after: [...cutting, 'edge-work', 'pressure-wash'],
    why: 'slurry-before-cleaning',
  },
  { before: breaking, after: ['pressure-wash'], why: 'slurry-before-cleaning' },
  { before: ['break-out'], after: ['free-bar'], why: 'bars-once-they-show' },
  { before: [...breaking, 'water-jet'], after: ['re-sound'], why: 'sound-what-is-left' },
  { before: ['re-sound'], after: [...cutting, 'edge-work', ...blasting], why: 'dull-off-first' },
  {
    before: [...breaking, 'water-jet'],
    after: [...cutting, 'edge-work'],
    why: 'dirty-before-clean',
  },
  { before: ['scarify', 'grind'], after: ['edge-work'], why: 'edges-with-the-machine' },
  { before: [...cutting, 'edge-work'], after: blasting, why: 'cut-before-blasting' },
  { before: ['shotblast', 'abrasive-blast'], after: ['blast-clean'], why: 'bruises-off-last' },
  { before: [...blasting, ...breaking], after: ['clean-bar'], why: 'bars-after-blasting' },
  { before: dusty, after: ['vacuum'], why: 'dust-at-one-go' },
  { before: ['vacuum'], after: washing, why: 'dust-before-water' },
  { before: beforeSealing, after: ['route-crack'], why: 'seal-clean-crack' },
  { before: ['route-crack'], after: ['final-wash'], why: 'seal-before-wash' },
  {
    before: [...dusty, 'degrease', 'pressure-wash', 'strip-growth'],
    after: ['final-wash'],
    why: 'wash-last',
  },
  {
    before: ['vacuum', ...washing, 'route-crack'],
    after: ['check-ready'],
    why: 'prove-what-is-clean',
  },
  { before: ['check-ready'], after: ['fill-level', 'wet-or-dry'], why: 'cover-what-is-proven' },
  { before: ['fill-level'], after: ['fill-cure'], why: 'level-what-is-ready' },
  { before: ['fill-cure'], after: ['wet-or-dry'], why: 'level-what-is-ready' },
  { before: ['wet-or-dry'], after: ['moisture-test'], why: 'measure-what-has-dried' },
  { before: ['wet-or-dry', 'moisture-test'], after: ['last-clean'], why: 'clean-right-before' },
  { before: ['last-clean'], after: ['cover', 'cure'], why: 'cover-last' },
  { before: ['cover'], after: ['cure'], why: 'cover-last' },
];

/**
 * Steps that leave the surface wet: hammers are worked with water at the point (figure
 * `water.at-hammer`). Source: common practice, no published source.
 */
export const wets: readonly StepId[] = [
  'degrease',
  'strip-growth',
  'saw-cut',
  ...breaking,
  'pressure-wash',
  'final-wash',
  'water-jet',
];
/**
 * Work that needs the surface dry: shot and grit, tools whose dust is drawn off dry, and a sealant in
 * its groove. Source: common practice, no published source.
 */
export const needsDry: readonly StepId[] = [
  ...blasting,
  'grind',
  'scarify',
  'edge-work',
  'route-crack',
];
