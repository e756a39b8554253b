import { depthDoubt } from '$lib/advice/doubt';
import type { RuleId } from '$lib/advice/rules';
import { isSurely } from '$lib/answers/answers';
import type { Looseness, Warning } from '$lib/answers/questions';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { ConditionId, Conditions } from './conditions';
import type { Plan } from './plan';
import { damagedSize, goneSize, isUnheard } from './damaged';

/** What the owner's reading and its points are drawn from. */
export interface Signs {
  readonly zonesIn: (...ids: readonly ConditionId[]) => readonly string[];
  /** Zones held, or held up, by a rule. */
  readonly held: (rule: RuleId) => readonly string[];
  readonly warned: (warning: Warning) => boolean;
  /** Whether any hole is filled: only then does the life of patches speak. */
  readonly patched: boolean;
  /** Part of the whole that is rotten or gone to full depth; 0 while the whole is not known. */
  readonly gone: number;
  /** Whether that is most of it (figure `compare.mostly`). */
  readonly mostlyGone: boolean;
  /** Zones whose damage goes past the top third, or may. */
  readonly doubtful: readonly string[];
  /** Whether most of the whole is known and goes no deeper than a patch surely holds. */
  readonly mostlyFree: boolean;
  readonly mostly: number;
  /** Salt and frost have surely worked on it: a skin has let go, and they go on. */
  readonly salted: boolean;
  /** Zones of which nobody has said what goes on top. */
  readonly undecided: readonly string[];
  /** Zones counted by their spots alone, on ground that nobody has sounded all over. */
  readonly notSounded: readonly string[];
  /** Zones of which the spots alone are planned, and not the loose skin beside them. */
  readonly skinLeft: readonly string[];
}

/** What salt and frost make of a surface. Source: NRMCA CIP 2 (scaling), from memory. */
const scaled: readonly Looseness[] = ['powdery', 'flaking', 'fractured', 'rotten'];

export function signsOf(plan: Plan, conditions: Conditions, own?: OwnFigures): Signs {
  const job = plan.drawn;
  const zonesIn = (...ids: readonly ConditionId[]) =>
    job.zones
      .filter(({ id }) => ids.some((condition) => condition === conditions.of[id]))
      .map(({ id }) => id);
  const rotten = job.zones
    .filter(({ answers }) => isSurely(answers.looseness, 'rotten'))
    .map(({ id }) => id);
  const through = zonesIn('replace').filter((id) => !rotten.includes(id));
  const lost = damagedSize(plan, job, rotten) + goneSize(plan, job, through);
  const gone = conditions.whole ? lost / conditions.whole : 0;
  const mostly = valueOf('compare.mostly', own);
  const doubtful = plan.zones.filter(({ advice }) => depthDoubt(advice.steps)).map(({ id }) => id);
  const { whole, share } = conditions;
  const free = whole
    ? 1 - damagedSize(plan, job, doubtful) / whole - (share?.['not-entered'] ?? 0)
    : 0;
  const planned = new Set(plan.zones.map(({ id }) => id));
  return {
    zonesIn,
    held: (rule) =>
      [...plan.held, ...plan.zones]
        .filter(({ holds }) => holds.some((hold) => hold.rule === rule))
        .map(({ id }) => id),
    patched: plan.zones.some(({ quantities: { fill } }) => fill !== null),
    warned: (warning) => job.site.warnings?.yes.includes(warning) ?? false,
    gone,
    mostlyGone: gone > mostly,
    doubtful,
    mostlyFree: free > mostly && conditions.unmeasured.length === 0,
    mostly,
    salted:
      isSurely(job.site.salts, 'de-icing') &&
      !(job.site.freezeThaw ?? ['rare']).includes('rare') &&
      job.zones.some(({ answers: { looseness } }) =>
        looseness?.every((each) => scaled.includes(each)),
      ),
    notSounded: zonesIn('break-out', 'replace').filter((id) => isUnheard(plan, id)),
    skinLeft: plan.zones.filter(({ skinLeft }) => skinLeft).map(({ id }) => id),
    undecided: job.zones
      .filter(
        ({ id, answers: { finish } }) => planned.has(id) && (finish?.includes('undecided') ?? true),
      )
      .map(({ id }) => id),
  };
}
