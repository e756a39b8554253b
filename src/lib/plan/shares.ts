import type { Job } from '$lib/answers/job';
import { isKnown, sum, typicalOf, type Amount } from './amount';
import type { Conditions } from './conditions';
import { goneVolume } from './damaged';
import type { Plan } from './plan';
import type { Reach } from './tasks';

/** m2 of these zones, as far as they are measured. */
export const sizeOf = (ids: readonly string[], job: Job): number =>
  job.zones
    .filter(({ id }) => ids.includes(id))
    .reduce((total, { answers: { area } }) => total + (typeof area === 'number' ? area : 0), 0);

/** What comes off, of the volume of the whole; what is gone counts with its full depth. */
export function volumeShare(plan: Plan, { whole, of }: Conditions): Reach | null {
  const job = plan.drawn;
  const { thickness } = job.site;
  if (whole === null || typeof thickness !== 'number') return null;
  const off = job.zones.map((zone): Amount | null => {
    const planned = plan.zones.find(({ id }) => id === zone.id);
    if (planned) return planned.quantities.removed;
    return of[zone.id] === 'replace'
      ? goneVolume(plan, job, zone.id)
      : { missing: ['depth'], unit: 'm3' };
  });
  const all = sum(
    'm3',
    off.flatMap((each) => each ?? []),
  );
  if (!isKnown(all)) return null;
  const volume = (whole * thickness) / 1000;
  const part = (value: number) => Math.min(1, value / volume);
  return { low: part(all.span[0]), typical: part(typicalOf(all)), high: part(all.span[1]) };
}

/** The deepest measured damage as part of the thickness; null where either is not known. */
export function deepestOf(job: Job): number | null {
  const { thickness } = job.site;
  const depths = job.zones.flatMap(({ answers }) =>
    typeof answers.depth === 'number' ? [answers.depth] : [],
  );
  return typeof thickness === 'number' && depths.length ? Math.max(...depths) / thickness : null;
}
