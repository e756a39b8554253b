import { regionOf } from '$lib/answers/crew-day';
import type { Job, Zone } from '$lib/answers/job';
import { planJob, type Plan } from '$lib/plan/plan';
import { earsOver } from '$lib/safety/ears-over';
import { giveWay, inTurn, mayWait } from '$lib/ui/in-turn';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { formatter } from '$lib/words/format';
import { zoneNames } from '$words/zone-names';

/** The job as it was before what was just told, while the plan follows: it stands for that one alone. */
let behind = $state.raw<{ readonly was: Job; readonly now: Job } | null>(null);
const shown = $derived(behind?.now === session.job ? behind.was : session.job);
const plan = $derived(planJob(shown));
const say = $derived(formatter(preferences.units, session.job.own));
const ears = $derived(earsOver(plan, shown, regionOf(shown.crewDay, preferences.units)));
const names = $derived(zoneNames(session.job.zones));
const places = $derived(new Map(session.job.zones.map(({ id }, place) => [id, place])));

/** The plan of the job in hand, worked out once for everything on the page that shows it. */
export const planned = {
  get plan(): Plan {
    return plan;
  },
  /** The job that this plan is of: the one in hand, or as it was before what was just told. */
  get job(): Job {
    return shown;
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
  /**
   * Changes the job at once and lays the plan anew once the browser has painted that: whoever ticks
   * something off does not wait for the plan.
   * @param change changes the job in hand
   * @param around does what belongs right before and after the plan changes, which `lay` does
   */
  follows(change: () => void, around: (lay: () => void) => void = (lay) => lay()): void {
    const was = shown;
    change();
    const now = session.job;
    if (!mayWait() || now === was) return around(() => undefined);
    behind = { was, now };
    inTurn(() => {
      // What it has found is remembered, so that laying it is the shorter half.
      planJob(now);
      void giveWay().then(() => around(() => (behind = null)));
    });
  },
};
