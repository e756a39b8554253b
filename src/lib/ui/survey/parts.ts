import type { Job } from '$lib/answers/job';
import type { Part } from '$lib/drawing/survey/day';
import type { Plan } from '$lib/plan/plan';
import { rectangleRing } from '$lib/survey/patches';
import { groundsOf, surveyOf } from '$lib/survey/survey';

/** The parts of a drawn surface, zone by zone: its patches where they are broken out, else its ground. */
export function partsOf(job: Job, plan: Plan): ReadonlyMap<string, Omit<Part, 'now'>> {
  const patches = surveyOf(job)?.patches ?? [];
  const grounds = groundsOf(job);
  return new Map(
    job.zones.flatMap(({ id }, place) => {
      const broken = plan.zones.find((zone) => zone.id === id)?.method === 'break-out';
      const mine = broken ? patches.filter(({ zone }) => zone === id) : [];
      const rings = mine.length
        ? mine.map((patch) => patch.corners ?? rectangleRing(patch))
        : (grounds.find((ground) => ground.id === id)?.ground ?? []);
      return rings.length ? [[id, { place, rings }] as const] : [];
    }),
  );
}
