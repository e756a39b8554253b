import type { Setting, Warning } from '$lib/answers/questions';
import { hazardIds, type HazardId } from '$shared/methods';
import { hazardsAt } from './cautions';
import { hasCoating } from './demands';
import { stepsIn } from './following';
import type { Group } from './groups';

/** Gathers the hazards of steps over every place they may be done in, each place and step looked at once. */
export class HazardsAnywhere {
  readonly #noted = new Map<string, { steps: number; readonly group: Group }>();
  readonly #settings: readonly Setting[];
  readonly #warnings: readonly Warning[];

  constructor(settings: readonly Setting[], warnings: readonly Warning[]) {
    this.#settings = settings;
    this.#warnings = warnings;
  }

  /** @param steps a set of steps, as in `following.ts` */
  note(steps: number, group: Group): void {
    const key = `${group.site.element} ${hasCoating(group.zone.contamination)}`;
    const place = this.#noted.get(key);
    if (place) place.steps |= steps;
    else this.#noted.set(key, { steps, group });
  }

  all(others: readonly HazardId[]): HazardId[] {
    const present = new Set(others);
    for (const { steps, group } of this.#noted.values())
      for (const step of stepsIn(steps))
        for (const setting of this.#settings) {
          const site = { ...group.site, setting, warnings: this.#warnings };
          for (const hazard of hazardsAt(step, site, group.zone)) present.add(hazard);
        }
    return hazardIds.filter((hazard) => present.has(hazard));
  }
}
