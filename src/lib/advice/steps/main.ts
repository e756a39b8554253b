import { mayFallDown } from '$lib/advice/cautions';
import { removalFacts, type Demands } from '$lib/advice/demands';
import { holeRange, makesHole } from '$lib/advice/hole';
import { isFloor, isSpot } from '$lib/advice/place';
import type { Reason } from '$lib/advice/types';
import type { Finish } from '$lib/answers/questions';
import { valueOf } from '$shared/figures';
import { methodIds, type MethodId } from '$shared/methods';
import { sounds } from './before';
import type { Situation, StepReason, StepReasons } from './work';

/**
 * The main method itself, and how it is to be done here; where bars lead, what the rest needs too.
 * Source: common practice, no published source, except where a reason names figures.
 */

const layers: ReadonlySet<Finish> = new Set<Finish>(['self-levelling', 'thin-overlay', 'overlay']);

/** What is told of every method. */
const always: readonly StepReason[] = [
  // Sound concrete has no step of its own for it, and what lies under a layer cannot be mended later.
  (situation) =>
    isFloor(situation.site.element) &&
    layers.has(situation.zone.finish) &&
    !sounds(situation) && { rule: 'sound-before-layer' },
  ({ demands }) => {
    const coatings = demands.contaminants.filter((each) => each.endsWith('-coating'));
    return coatings.length > 0 && { rule: 'coating-comes-off', facts: { contamination: coatings } };
  },
  ({ demands }) => ({ rule: 'does-the-removal', facts: removalFacts(demands) }),
];

/** Past the top third of a slab a partial-depth repair is doubtful: the reader should know before breaking. */
function depthDoubt({ site, zone }: Situation): Reason | false {
  if (site.thickness === 'unknown')
    return { rule: 'thickness-unknown', figures: ['depth.full-limit'] };
  const third = site.thickness * valueOf('depth.partial-limit');
  const [least, most] = holeRange(site.thickness, zone);
  return (
    most > third && {
      rule: 'depth-past-third',
      facts: { thickness: site.thickness, third, surely: least > third ? 'yes' : 'no' },
      figures: ['depth.partial-limit', 'depth.full-limit'],
    }
  );
}

const breakingOut: readonly StepReason[] = [
  ({ site, demands }) =>
    !isFloor(site.element) || demands.bar
      ? { rule: 'light-hammer-here', figures: ['hammer.above-steel', 'hammer.at-steel'] }
      : {
          rule: 'hammer-for-patch',
          figures: [demands.place === 'floor' ? 'hammer.large-patch' : 'hammer.small-patch'],
        },
  ({ zone }) => !isSpot(zone) && { rule: 'water-jet-alternative' },
  depthDoubt,
];

const washing: readonly StepReason[] = [
  ({ zone }) => zone.contamination.includes('growth') && { rule: 'growth-washed-off' },
  () => ({ rule: 'slurry-caught' }),
];

const jetting: readonly StepReason[] = [
  (situation) => makesHole('water-jet', situation.zone) && depthDoubt(situation),
];

const floorMachines: ReadonlySet<MethodId> = new Set<MethodId>(['grind', 'scarify', 'shotblast']);
const throwsGrit = (method: MethodId): boolean =>
  method === 'shotblast' || method === 'abrasive-blast';

/**
 * A floor machine leaves a strip only where something stands upright at the edge, and the hand tool
 * there has to reach the roughness of the rest: a plain hand grinder leaves it nearly smooth.
 * Source: common practice, no published source.
 */
const leavesBorder = (method: MethodId, { place }: Pick<Demands, 'place'>): boolean =>
  floorMachines.has(method) && place === 'floor';

/** What is told of a method that works a whole face. */
const facing = (method: MethodId): readonly StepReason[] => [
  ({ zone }) =>
    zone.looseness !== 'tight' &&
    zone.depth === '3-to-6' && { rule: 'several-passes', figures: ['depth.shallow'] },
  ({ zone }) => zone.looseness !== 'tight' && { rule: 'depth-each-pass' },
  // Under what carries, or over cables, what lies deeper is no crew's to break out by itself.
  ({ site, zone }) =>
    zone.looseness === 'hollow' && {
      rule: 'sound-what-is-under',
      facts: {
        deeper: mayFallDown(site) ? 'engineer' : 'break-out',
        ...(site.warnings.includes('buried-services') && { lines: 'yes' }),
      },
    },
  ({ demands }) => demands.profile !== null && { rule: 'profile-after-first-pass' },
  () => method === 'shotblast' && { rule: 'dry-before-shot' },
  () => throwsGrit(method) && { rule: 'spent-grit-away', facts: { method } },
  ({ zone, demands }) =>
    zone.border === undefined && leavesBorder(method, demands) && { rule: 'border-if-upright' },
];

function ownOf(method: MethodId): readonly StepReason[] {
  if (method === 'break-out') return breakingOut;
  if (method === 'pressure-wash') return washing;
  return method === 'water-jet' ? jetting : facing(method);
}

/** With what the strip along the edge is worked, where there is one. */
export function borderTool(situation: Situation): 'grinder' | 'bush-hammer' | null {
  const { zone, demands, method, rest } = situation;
  if (!zone.border) return null;
  const machine = [method, rest].find((each) => leavesBorder(each, demands));
  if (!machine) return null;
  return machine === 'grind' ? 'grinder' : 'bush-hammer';
}

const methodSteps: Partial<Record<MethodId, readonly StepReason[]>> = {};
for (const method of methodIds) methodSteps[method] = [...always, ...ownOf(method)];

export const mainSteps: StepReasons = {
  ...methodSteps,
  'edge-work': [
    (situation) => {
      const tool = borderTool(situation);
      return (
        tool !== null && {
          rule: tool === 'grinder' ? 'border-by-grinder' : 'border-by-bush-hammer',
          facts: { length: situation.zone.border ?? 0 },
        }
      );
    },
  ],
};
