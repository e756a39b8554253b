import type { Hold, Step } from '$lib/advice/types';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { HazardId, MethodId, StepId } from '$shared/methods';

const none = { yes: [], maybe: [] } as const;
export const site: SiteAnswers = {
  element: ['slab'],
  setting: ['open'],
  freezeThaw: ['rare'],
  warnings: none,
};
export const zone: ZoneAnswers = {
  steel: ['none-seen'],
  contamination: none,
  area: 12,
  finish: ['sealer'],
};

export const step = (
  id: StepId,
  hazards: readonly HazardId[] = [],
  why: Step['why'] = [],
): Step => ({
  id,
  why,
  hazards,
});
export const hold = (
  verdict: Hold['verdict'],
  who: Hold['who'],
  rule: Hold['rule'] = 'map-cracking',
): Hold => ({ rule, verdict, who });
export interface Advised {
  verdict: 'prepare' | 'find-out-first' | 'stop';
  method: MethodId | null;
  methods: readonly MethodId[];
  steps: readonly Step[];
  cautions: readonly HazardId[];
  holds: readonly Hold[];
  possibleHolds: readonly Hold[];
}
/** Washing a slab on the ground; each case says what is otherwise. */
export const advised = (change: Partial<Advised> = {}): Advised => ({
  verdict: 'prepare',
  method: 'pressure-wash',
  methods: ['pressure-wash'],
  steps: [step('make-safe'), step('pressure-wash', ['wash-water']), step('cover')],
  cautions: [],
  holds: [],
  possibleHolds: [],
  ...change,
});
