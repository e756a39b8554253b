import { tools } from '$shared/tools';
import type { Plan } from './plan';

/** What an owner asks a contractor, in the order of the work. */
export const askIds = [
  'find',
  'far',
  'method',
  'bruise',
  'neighbours',
  'tests',
  'engineer',
  'closed',
] as const;
export type AskId = (typeof askIds)[number];

const hammers: readonly string[] = [
  'break-out',
  'chase-crack',
  'free-bar',
  'needle-scale',
  'scarify',
];

/** The questions that this job raises. Source: common practice, no published source. */
export function askedHere({ zones, held, tasks }: Plan): AskId[] {
  const steps = new Set<string>(zones.flatMap((zone) => zone.steps));
  const stops = [...zones, ...held].some(({ holds, possibleHolds }) =>
    [...holds, ...possibleHolds].some(({ verdict }) => verdict === 'stop'),
  );
  const raised: Readonly<Record<AskId, boolean>> = {
    find: steps.has('break-out') || held.length > 0,
    far: steps.has('break-out'),
    method: true,
    bruise: hammers.some((step) => steps.has(step)),
    neighbours: tasks.some(
      ({ tool: { tool } }) => tools[tool].dust || tools[tool].noise !== 'quiet',
    ),
    tests: true,
    engineer: stops,
    closed: true,
  };
  return askIds.filter((id) => raised[id]);
}

/** What a sound offer contains. */
export const offerIds = ['drawing', 'depth', 'material', 'tests', 'waste', 'left-out'] as const;
export type OfferId = (typeof offerIds)[number];

/** The lines of an offer that bear on this job. Source: common practice, no published source. */
export function offeredHere({ zones, totals }: Plan): OfferId[] {
  const goesOn = zones.some(({ steps }) => steps.includes('cover'));
  const waste = totals['debris-mass'] !== null || totals['wash-water'] !== null;
  return offerIds.filter((id) => (id !== 'material' || goesOn) && (id !== 'waste' || waste));
}
