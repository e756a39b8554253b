import { rangeOf } from '$shared/figures';
import type { Job } from './job';

/** What the zones leave of the whole surface. */
export type Rest =
  /** m2 */
  | { readonly id: 'left'; readonly area: number }
  /** The zones come to more than the whole, by this many m2. */
  | { readonly id: 'over'; readonly area: number }
  /** They come to the whole. */
  | { readonly id: 'nothing' }
  /** The whole has not been said. */
  | { readonly id: 'no-total' }
  /** The area of these zones has not been said. */
  | { readonly id: 'no-area'; readonly zones: readonly string[] };

/** Decimals of a m2 that count: subtracting leaves dust behind them, the more the larger the whole. */
const decimals = 9;

const rounded = (area: number): number => Number(area.toFixed(decimals));
const sumOf = (zones: Job['zones']): number =>
  rounded(zones.reduce((sum, { answers }) => sum + Number(answers.area), 0));
const withoutArea = (zones: Job['zones']): Job['zones'] =>
  zones.filter(({ answers }) => typeof answers.area !== 'number');

/** What all zones come to, m2; null where there is none, or one whose area has not been said. */
export const zonesTogether = ({ zones }: Pick<Job, 'zones'>): number | null =>
  zones.length && !withoutArea(zones).length ? sumOf(zones) : null;

/** What the zones other than the rest itself leave of the whole. */
export function restOf({ zones, totalArea, rest }: Job): Rest {
  if (totalArea === undefined) return { id: 'no-total' };
  const others = zones.filter(({ id }) => id !== rest);
  const unknown = withoutArea(others);
  if (unknown.length) return { id: 'no-area', zones: unknown.map(({ id }) => id) };
  const area = rounded(totalArea - sumOf(others));
  if (Math.abs(area) < rangeOf('limit.area')[0]) return { id: 'nothing' };
  return area > 0 ? { id: 'left', area } : { id: 'over', area: -area };
}

/** The job with the area of its rest as the other zones leave it; unknown while they do not tell. */
export function withRest(job: Job): Job {
  const zone = job.zones.find(({ id }) => id === job.rest);
  if (!zone) return job;
  const rest = restOf(job);
  const area = rest.id === 'left' ? rest.area : 'unknown';
  if (zone.answers.area === area) return job;
  const answers = { ...zone.answers, area } as typeof zone.answers;
  return {
    ...job,
    zones: job.zones.map((each) => (each.id === zone.id ? { ...each, answers } : each)),
  };
}
