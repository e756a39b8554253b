import type { Setting, Warning } from '$lib/answers/questions';
import { hazardIds, type HazardId } from '$shared/methods';
import { hazardsHere, ofTakingUp, throwDust } from './cautions';
import { plainSite, plainZone } from './completions';
import { stepsIn } from './following';
import type { Group } from './groups';
import type { SettledSite, SettledZone } from './types';

interface Noted {
  steps: number;
  readonly coated: boolean;
  readonly looseness: SettledZone['looseness'];
  readonly dusty: boolean;
  readonly element: SettledSite['element'];
}

/** Gathers the hazards of steps over every place they may be done in, each place and step looked at once. */
export class HazardsAnywhere {
  readonly #noted = new Map<string, Noted>();
  readonly #settings: readonly Setting[];
  readonly #warnings: readonly Warning[];

  constructor(settings: readonly Setting[], warnings: readonly Warning[]) {
    this.#settings = settings;
    this.#warnings = warnings;
  }

  /** @param steps a set of steps, as in `following.ts` */
  note(steps: number, group: Group): void {
    const dusty = throwDust([...stepsIn(steps)]);
    for (const coated of [true, false]) {
      if (coated ? !group.coatedSome : !group.coatedNever) continue;
      const looseness = group.zone.looseness === 'hollow' ? 'hollow' : plainZone.looseness;
      const key = `${group.site.element} ${coated} ${dusty} ${looseness}`;
      const place = this.#noted.get(key);
      if (place) place.steps |= steps;
      else this.#noted.set(key, { steps, coated, looseness, dusty, element: group.site.element });
    }
  }

  all(others: readonly HazardId[]): HazardId[] {
    const present = new Set(others);
    for (const { steps, coated, looseness, dusty, element } of this.#noted.values())
      for (const step of stepsIn(steps))
        for (const setting of this.#settings) {
          const site = { ...plainSite, element, setting, warnings: this.#warnings };
          const contamination = coated ? (['thin-coating'] as const) : [];
          const zone: SettledZone = { ...plainZone, looseness, contamination };
          for (const hazard of ofTakingUp(step, hazardsHere(site, zone)(step), dusty))
            present.add(hazard);
        }
    return hazardIds.filter((hazard) => present.has(hazard));
  }
}
