import { isFirmHollow } from '$lib/advice/demands';
import { goesOverAll } from '$lib/advice/hidden-lines';
import { makesHole } from '$lib/advice/hole';
import { bearsLoad, reachOf } from '$lib/advice/holds';
import { isFloor } from '$lib/advice/place';
import { sawDepth } from '$lib/advice/saw-depth';
import type { Reason } from '$lib/advice/types';
import type { Warning } from '$lib/answers/questions';
import { chasesCrack } from './cracks';
import { uses, type Situation, type StepReason, type StepReasons } from './work';

/** What was ticked at the site and touches this work: a wash reaches no cable, and takes no prop away. */
function warned({ site, zone, method }: Situation): Reason | false {
  const { warnings } = site;
  if (!warnings.length) return false;
  const reach = reachOf(site, zone, method);
  const touched: Readonly<Partial<Record<Warning, boolean>>> = {
    'holds-something-up': reach.removes,
    'tendons-possible': reach.deep,
    'buried-services': reach.cuts,
  };
  const found = warnings.filter((warning) => touched[warning] ?? true);
  return found.length > 0 && { rule: 'warnings-first', facts: { warnings: found } };
}

/**
 * Nothing goes into the concrete, and no machine goes over cables or pipes that were found: none is
 * marked for it. A jet of water reaches none.
 */
const nothingCut: StepReason = ({ site, zone, method }) =>
  !reachOf(site, zone, method).deep &&
  !(site.warnings.includes('buried-services') && goesOverAll(method)) && { rule: 'nothing-cut' };

/** Damage on a floor begins with sounding the whole slab, not the part that is known to be bad. */
function soundsFor({ site, zone, demands, method }: Situation): Reason | false {
  const cuts = () => makesHole(method, zone) || demands.bar || chasesCrack(site, zone);
  if (isFloor(site.element))
    return (
      (zone.looseness !== 'tight' || isFirmHollow(zone) || cuts()) && { rule: 'sound-whole-slab' }
    );
  return (zone.looseness === 'hollow' || cuts()) && { rule: 'sound-before-cutting' };
}

const stained: StepReason = ({ site, zone }) =>
  zone.steel === 'rust-stain' && {
    rule: 'stain-look-beneath',
    facts: { who: bearsLoad(site) ? 'engineer' : 'crew' },
  };

export const sounds = (situation: Situation): boolean =>
  !!soundsFor(situation) || !!stained(situation);

/** A hole gets a square sawn edge, and so does a firm hollow that is filled. */
const sawn = ({ method, zone }: Situation): boolean =>
  makesHole(method, zone) || isFirmHollow(zone);

/**
 * What has to be done before the main method: make safe, take off what would be driven in or
 * hide the concrete, find the edge of the damage.
 * Source: common practice, no published source, except where a reason names figures.
 */
export const stepsBefore: StepReasons = {
  'make-safe': [
    () => ({ rule: 'make-safe-first' }),
    ({ site }) => site.setting !== 'open' && { rule: 'engine-outside' },
    warned,
    nothingCut,
  ],
  degrease: [
    ({ demands }) => demands.oil && { rule: 'oil-before-anything' },
    ({ demands }) => demands.oil && { rule: 'soaked-oil-must-go' },
  ],
  'strip-growth': [
    (situation) =>
      situation.zone.contamination.includes('growth') &&
      !uses(situation, 'pressure-wash') && { rule: 'growth-first' },
  ],
  'strip-coating': [({ demands }) => demands.stripped && { rule: 'coating-by-scraper' }],
  'sound-and-mark': [soundsFor, stained],
  // A square sawn edge, past the damage; never a feather edge, never into steel.
  'saw-cut': [
    (situation) => sawn(situation) && { rule: 'square-edge', figures: ['patch.min-corner'] },
    (situation) => sawn(situation) && sawDepth(situation.site, situation.zone),
    ({ site, zone, method }) =>
      makesHole(method, zone)
        ? {
            rule: 'past-the-damage',
            facts: { frost: site.freezeThaw },
            figures: [
              site.freezeThaw === 'often' ? 'patch.past-damage-frost' : 'patch.past-damage',
            ],
          }
        : isFirmHollow(zone) && { rule: 'no-feather-edge' },
    ({ zone, method }) => makesHole(method, zone) && { rule: 'slurry-caught' },
    ({ zone, method }) =>
      makesHole(method, zone) &&
      zone.steel !== 'none-seen' &&
      zone.barCover === undefined && { rule: 'shallow-edge-unsawn' },
  ],
};
