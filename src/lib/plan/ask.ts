import { tools } from '$shared/tools';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
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

interface Raising {
  readonly steps: ReadonlySet<string>;
  /** Whether something stands before the work. */
  readonly held: boolean;
  readonly stops: boolean;
  /** Whether it throws dust or makes a noise. */
  readonly bothers: boolean;
}
/** Source: common practice, no published source. */
function raisedBy({ steps, held, stops, bothers }: Raising): AskId[] {
  const raised: Readonly<Record<AskId, boolean>> = {
    find: steps.has('break-out') || held,
    far: steps.has('break-out'),
    method: true,
    bruise: hammers.some((step) => steps.has(step)),
    neighbours: bothers,
    tests: true,
    engineer: stops,
    closed: true,
  };
  return askIds.filter((id) => raised[id]);
}

type Held = Pick<ZoneAdvice, 'holds' | 'possibleHolds'>;
const mayStop = ({ holds, possibleHolds }: Held): boolean =>
  [...holds, ...possibleHolds].some(({ verdict }) => verdict === 'stop');

/** The questions that this job raises. */
export const askedHere = ({ zones, held, tasks }: Plan): AskId[] =>
  raisedBy({
    steps: new Set<string>(zones.flatMap((zone) => zone.steps)),
    held: held.length > 0,
    stops: [...zones, ...held].some(mayStop),
    bothers: tasks.some(({ tool: { tool } }) => tools[tool].dust || tools[tool].noise !== 'quiet'),
  });

/** The questions that one zone raises, in any way its open answers may turn out. */
export function askedInZone(
  advice: Held & Pick<ZoneAdvice, 'steps' | 'outcomes' | 'cautions'>,
): AskId[] {
  const { steps, outcomes, cautions } = advice;
  const ways = outcomes.flatMap(({ method, example }) => [
    ...(method ? [method] : []),
    ...example.steps.map(({ id }) => id),
  ]);
  return raisedBy({
    steps: new Set<string>([...steps.map(({ id }) => id), ...ways]),
    held: advice.holds.length > 0,
    stops: mayStop(advice),
    bothers: cautions.includes('silica') || cautions.includes('noise'),
  });
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
