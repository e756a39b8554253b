import type { RuleId } from '$lib/advice/rules';
import type { Plan } from '$lib/plan/plan';
import type { OrderRule } from '$lib/plan/precedence';
import { nameHere } from '$words/steps/here';
import type { StepId } from '$shared/methods';

/** Why one step waits for another. Each stands behind "after <the other step>, ". */
export const orderReasons: Readonly<Record<OrderRule, string>> = {
  'safe-first': 'because nobody starts before the place is safe',
  'oil-driven-in': 'because a machine would drive the oil deeper in',
  'hides-concrete': 'because you cannot judge concrete that is covered',
  'mark-before-cutting': 'because you cut along the marks',
  'mark-before-machines': 'because the marks show where it goes deeper',
  'tap-before-cutting': 'because tapping shows how wide the crack has to be opened',
  'edge-before-breaking': 'because the saw cut stops the break from running on',
  'bars-once-they-show': 'because a bar can be followed only once it shows',
  'slurry-before-cleaning': 'because its slurry has to come off with the rest',
  'sound-what-is-left': 'because breaking can loosen what looked firm',
  'wet-before-dry': 'because it wets the concrete, and blasting needs it dry',
  'dull-off-first': 'because what still rings dull comes off first, and that wets the concrete',
  'dirty-before-clean': 'because its dust and bruises would spoil a clean surface',
  'edges-with-the-machine': 'because the machine shows which border it leaves',
  'cut-before-blasting': 'because blasting takes off the skin that cutting bruises',
  'bruises-off-last': 'because that skin is what the machines before it leave',
  'bars-after-blasting': 'because grit and rubble would foul a clean bar again',
  'dust-at-one-go': 'because that throws dust, and it is taken up at one go',
  'dust-before-water': 'because dust turns into mud when it gets wet',
  'seal-clean-crack': 'because a crack is opened clean and dry, and sealed on the same day',
  'seal-before-wash': 'because no wash water may run into an open crack',
  'wash-last': 'because the last wash takes off what that leaves',
  'prove-what-is-clean': 'because tests on a dirty surface prove nothing',
  'cover-what-is-proven': 'because you make ready only what has passed',
  'level-what-is-ready': 'because mortar holds only on a surface that is ready',
  'measure-what-has-dried': 'because only what has had time to dry can be measured',
  'clean-right-before': 'because dust settles while it waits',
  'cover-last': 'because nothing may come between the last cleaning and the cover',
};

/** Work on a crack that is done with a step and has no name of its own in the order. */
const along = {
  'routed-crack-sealed': 'seal the routed crack',
  'chased-crack-filled': 'fill the chased crack',
} as const satisfies Partial<Record<RuleId, string>>;

type Names<Words extends { readonly name: string }> = Readonly<Record<StepId, Words>>;
const inZones = ({ zones }: Pick<Plan, 'zones'>, step: StepId) =>
  zones.flatMap(({ advice }) => advice.steps.filter(({ id }) => id === step));

/** The steps by the names of their case, where all zones of a plan have one: damp, or dry. */
export const namesInPlan = <Words extends { readonly name: string }>(
  plan: Pick<Plan, 'zones'>,
  names: Names<Words>,
): Names<Words> =>
  Object.fromEntries(
    Object.entries<Words>(names).map(([id, words]) => {
      const [name = words.name, ...others] = new Set(
        inZones(plan, id as StepId).map((step) => nameHere(step) ?? words.name),
      );
      return [id, others.length ? words : { ...words, name }];
    }),
  ) as Names<Words>;

/**
 * A step’s name in the plan, with the crack that is sealed or filled with it.
 * @param names as `namesInPlan` has them
 */
export function stepInPlan(
  plan: Pick<Plan, 'zones'>,
  step: StepId,
  names: Names<{ readonly name: string }>,
): string {
  const rules = inZones(plan, step).flatMap(({ why }) => why.map(({ rule }) => rule));
  const told = Object.entries(along).flatMap(([rule, text]) =>
    rules.includes(rule as RuleId) ? [text] : [],
  );
  return [names[step].name, ...told].join('; ');
}

/** Parts of a job, in the order they come. */
export const stageIds = [
  'start',
  'mark',
  'break',
  'surface',
  'blast',
  'clean',
  'prove',
  'cover',
] as const;
export type StageId = (typeof stageIds)[number];

export const stageNames: Readonly<Record<StageId, string>> = {
  start: 'Get ready',
  mark: 'Mark and saw',
  break: 'Break out',
  surface: 'Cut the surface',
  blast: 'Blast',
  clean: 'Clean',
  prove: 'Prove',
  cover: 'Cover',
};

/** The part of the job a step belongs to. */
export const stageOf: Readonly<Record<StepId, StageId>> = {
  'make-safe': 'start',
  degrease: 'start',
  'strip-growth': 'start',
  'strip-coating': 'start',
  'sound-and-mark': 'mark',
  'tap-crack': 'mark',
  'saw-cut': 'mark',
  'break-out': 'break',
  'water-jet': 'break',
  'chase-crack': 'break',
  'route-crack': 'clean',
  'free-bar': 'break',
  're-sound': 'break',
  scarify: 'surface',
  grind: 'surface',
  'needle-scale': 'surface',
  'edge-work': 'surface',
  shotblast: 'blast',
  'abrasive-blast': 'blast',
  'blast-clean': 'blast',
  'clean-bar': 'blast',
  vacuum: 'clean',
  'pressure-wash': 'clean',
  'final-wash': 'clean',
  'check-ready': 'prove',
  'wet-or-dry': 'prove',
  'fill-level': 'prove',
  'fill-cure': 'prove',
  'moisture-test': 'prove',
  'last-clean': 'cover',
  cover: 'cover',
  cure: 'cover',
};
