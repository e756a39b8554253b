import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { Contaminant, MakerProfile, QuestionId, Warning } from '$lib/answers/questions';
import type { RuleId } from '$lib/advice/rules';
import { adviseSettled } from '$lib/advice/settle';
import type { Advice, Hold, SettledSite, SettledZone, Verdict } from '$lib/advice/types';
import { methodIds, type HazardId, type MethodId } from '$shared/methods';

/** A case to practise on: what is true of the concrete. The engine decides what is right for it. */
export interface Case {
  /** Letters, digits and dashes; stable, since progress and links name it. */
  readonly id: string;
  readonly site: SettledSite;
  readonly zone: SettledZone;
  /** Hazards that a fact rules out: the engine knows that a coating is there, not its report. */
  readonly cleared?: readonly HazardId[];
}

/** How a fact comes to whoever stands there. */
export const senses = ['see', 'hear', 'scrape', 'drop', 'owner'] as const;
export type Sense = (typeof senses)[number];

/** Something found out on the spot, and the answers it gives away. */
export interface Told {
  readonly by: Sense;
  readonly about: readonly QuestionId[];
  /** Sentences; what is measured stands as `{depth}`, `{thickness}`, `{area}`, `{border}`, `{grade}`. */
  readonly text: string;
}

/** Whoever has to come before the work: instead of a method. */
export const waits = [
  'engineer',
  'concrete-contractor',
  'laboratory',
  'locator',
  'crew',
] as const satisfies readonly Hold['who'][];

/** What a learner can decide: a method, or who has to come first. */
export type Call = MethodId | Hold['who'];
export const calls: readonly Call[] = [...methodIds, ...waits];
export { isMethod } from '$shared/methods';

/** A case written by hand, with what its author meant by it. Everything in it is invented. */
export interface AuthoredCase extends Case {
  readonly title: string;
  readonly told: readonly Told[];
  /** What somebody long in the trade would do here, and why: judged by the trade, not by the engine. */
  readonly senior: string;
  readonly intended: {
    readonly verdict: Verdict;
    readonly call: Call;
    /** The reason the case is there to teach. */
    readonly reason: RuleId;
    /** The wrong pick it invites, and what the engine has to say against it. */
    readonly trap?: { readonly method: MethodId; readonly rule: RuleId };
  };
}

const known = new WeakMap<Case, Advice>();

/** The engine's advice on a case, worked out once: its level, its twists and its grade rest on it. */
export function adviceOn(one: Case): Advice {
  let advice = known.get(one);
  if (!advice) known.set(one, (advice = withoutCleared(one, adviseSettled(one.site, one.zone))));
  return advice;
}

function withoutCleared({ cleared }: Case, advice: Advice): Advice {
  if (!cleared) return advice;
  const left = (hazards: readonly HazardId[]) => hazards.filter((id) => !cleared.includes(id));
  const steps = advice.steps.map((step) => ({ ...step, hazards: left(step.hazards) }));
  return { ...advice, steps, cautions: left(advice.cautions) };
}

/**
 * Who may come first where something holds the work: whoever clears a hold of the gravest kind.
 * Replacing the part is work, so it waits for whoever has to look before any work: that one says what
 * the new part must stand. Source: common practice, no published source.
 */
export function firstCallers({ verdict, holds }: Advice): readonly Hold['who'][] {
  const gravest = holds.filter((hold) => hold.verdict === verdict).map(({ who }) => who);
  const looking = gravest.filter((who) => who !== 'concrete-contractor');
  return looking.length ? looking : gravest;
}

/** The call the advice comes to: its method, or the first of those who may come first. */
export function callOf(advice: Advice): Call {
  const call = advice.method ?? firstCallers(advice)[0];
  if (!call) throw new Error('Advice without a method has a hold.');
  return call;
}

/** The truth of a case as answers, as the interview would have them. */
export function answersOf({ site, zone }: Case): { site: SiteAnswers; zone: ZoneAnswers } {
  return {
    site: {
      element: [site.element],
      setting: [site.setting],
      salts: [site.salts],
      freezeThaw: [site.freezeThaw],
      thickness: site.thickness,
      warnings: { yes: site.warnings as readonly Warning[], maybe: [] },
    },
    zone: {
      depth: zone.depthMm ?? [zone.depth],
      looseness: [zone.looseness],
      contamination: { yes: zone.contamination as readonly Contaminant[], maybe: [] },
      texture: [zone.texture],
      cracks: [zone.cracks],
      steel: [zone.steel],
      ...(zone.barLoss && { barLoss: [zone.barLoss] as const }),
      ...(zone.barCover !== undefined && { barCover: zone.barCover }),
      ...(zone.barDiameter !== undefined && { barDiameter: zone.barDiameter }),
      finish: [zone.finish],
      ...(zone.makerProfile && {
        makerProfile: [`csp-${zone.makerProfile}` as MakerProfile],
      }),
      ...(zone.makerMoisture && { makerMoisture: [zone.makerMoisture] as const }),
      area: zone.area,
      ...(zone.border !== undefined && { borderLength: zone.border }),
    },
  };
}
