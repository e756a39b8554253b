import { regionOf } from '$lib/answers/crew-day';
import type { Zone } from '$lib/answers/job';
import { planJob, type Plan } from '$lib/plan/plan';
import { earsOver } from '$lib/safety/ears-over';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { formatter } from '$lib/words/format';
import { zoneNames } from '$words/zone-names';

const plan = $derived(planJob(session.job));
const say = $derived(formatter(preferences.units, session.job.own));
const ears = $derived(
  earsOver(plan, session.job, regionOf(session.job.crewDay, preferences.units)),
);
const names = $derived(zoneNames(session.job.zones));
const places = $derived(new Map(session.job.zones.map(({ id }, place) => [id, place])));

/** The plan of the job in hand, worked out once for everything on the page that shows it. */
export const planned = {
  get plan(): Plan {
    return plan;
  },
  /** Days on which not even plugs and muffs together keep the ears; null where there are none. */
  get ears() {
    return ears;
  },
  /** The formatter in the reader's units, with their own values of figures. */
  get say() {
    return say;
  },
  /** Where a zone stands in the job, from 0. */
  placeOf: (id: string): number => places.get(id) ?? 0,
  zone: (id: string): Zone => session.job.zones[planned.placeOf(id)] as Zone,
  /** "Ramp", or "Zone 2" where it has no name. */
  nameOf: (id: string): string => names[planned.placeOf(id)] ?? '',
};
