import type { RuleId } from '$lib/advice/rules';
import { isFloor } from '$lib/advice/place';
import { adviceOn, type Case } from './case';
import { sheetDecides } from './strata';

/**
 * Something that makes a case harder to read, and how much: 1 where it stands out once looked for,
 * 2 where two answers have to be seen together. A judgement of this site's own, not of the trade.
 */
const weights = {
  'off-floor': 1,
  oil: 1,
  coating: 1,
  'growth-or-bloom': 1,
  steel: 1,
  'firm-hollow': 1,
  'stands-before': 1,
  'harmless-sign': 1,
  crack: 2,
  'salts-at-steel': 2,
  'frost-on-bruise': 2,
  'low-spots': 2,
  'finish-steps-up': 2,
  'too-rough': 2,
  'size-decides': 1,
  sheet: 2,
} as const;
export type Twist = keyof typeof weights;
export const twists = Object.keys(weights) as Twist[];

/** Holds that a warning sign raises; a sign beyond their number holds nothing up here. */
const raised = new Set<RuleId>([
  'structure-before-removal',
  'tendons-before-depth',
  'settled-or-rocking',
  'fire-or-chemical',
  'map-cracking',
  'old-coating',
  'buried-services',
]);

/** What a learner has to notice about a case beyond how deep and how loose it is. */
export function twistsOf(one: Case): readonly Twist[] {
  const { site, zone } = one;
  const advice = adviceOn(one);
  const has = (contaminant: string) =>
    (zone.contamination as readonly string[]).includes(contaminant);
  const because = (rule: string) => advice.reasons.some((reason) => reason.rule === rule);
  const called = (rule: string) =>
    advice.steps.some(({ why }) => why.some((reason) => reason.rule === rule));
  const met: Readonly<Record<Twist, boolean>> = {
    'off-floor': !isFloor(site.element),
    oil: has('oil'),
    coating: zone.contamination.some((each) => each.endsWith('-coating')),
    'growth-or-bloom': has('growth') || has('salt-bloom'),
    crack: zone.cracks !== 'none',
    steel: zone.steel !== 'none-seen',
    'salts-at-steel': zone.steel !== 'none-seen' && site.salts !== 'none',
    'frost-on-bruise': called('bruised-skin-must-go') || called('open-in-frost-chase'),
    'low-spots': because('reaches-into-pits') || because('lifts-coating-then-pits'),
    'firm-hollow': zone.looseness === 'tight' && zone.depth !== 'film',
    'finish-steps-up': because('steps-up-for-profile') || because('profile-without-bruises'),
    'too-rough': called('too-rough-fill-first') || called('hole-filled-first'),
    'size-decides': advice.rejections.some(
      ({ rule }) => rule === 'too-small-for-machine' || rule === 'too-large-by-hand',
    ),
    sheet: sheetDecides(one, advice),
    'stands-before': advice.holds.length > 0,
    'harmless-sign':
      site.warnings.length > advice.holds.filter(({ rule }) => raised.has(rule)).length,
  };
  return twists.filter((twist) => met[twist]);
}

/** How hard a case is: from one that shows all there is to it to one where much comes together. */
export const levels = [1, 2, 3, 4] as const;
export type Level = (typeof levels)[number];

/** The most that twists may weigh together at each level but the last. */
const limits = [1, 2, 4] as const;

const capped = (level: number): Level => Math.max(1, Math.min(4, level)) as Level;

/** The level of a case, by what its twists weigh together. */
export function levelOf(one: Case): Level {
  const weight = twistsOf(one).reduce((sum, twist) => sum + weights[twist], 0);
  return capped(1 + limits.filter((limit) => weight > limit).length);
}

/** The level above or below, if there is one. */
export const stepLevel = (level: Level, by: 1 | -1): Level => capped(level + by);

/** What is asked beside the method: nothing at first, then the work around it, then the dangers too. */
export const askedAt: Readonly<
  Record<Level, { readonly steps: boolean; readonly hazards: boolean }>
> = {
  1: { steps: false, hazards: false },
  2: { steps: true, hazards: false },
  3: { steps: true, hazards: true },
  4: { steps: true, hazards: true },
};
