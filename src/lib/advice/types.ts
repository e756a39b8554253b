import type {
  BarLoss,
  Contaminant,
  Cracks,
  DepthBand,
  Element,
  Finish,
  FreezeThaw,
  Looseness,
  QuestionId,
  Salts,
  Setting,
  Steel,
  Texture,
  Warning,
} from '$lib/answers/questions';
import type { PartInDoubt, TriedOut } from '$lib/answers/trial-record';
import type { FigureId } from '$shared/figures';
import type { HazardId, MethodId, StepId } from '$shared/methods';
import type { RuleId } from './rules';

/** A site about which nothing is open any more; one of the possibilities of the reader's answers. */
export interface SettledSite {
  readonly element: Element;
  readonly setting: Setting;
  readonly salts: Salts;
  readonly freezeThaw: FreezeThaw;
  /** mm, or unknown */
  readonly thickness: number | 'unknown';
  readonly warnings: readonly Warning[];
}

/** A zone about which nothing is open any more. */
export interface SettledZone {
  readonly depth: DepthBand;
  /** mm, where the reader measured it */
  readonly depthMm?: number;
  readonly looseness: Looseness;
  readonly contamination: readonly Contaminant[];
  readonly texture: Texture;
  readonly cracks: Cracks;
  readonly steel: Steel;
  /** Absent while nobody has measured the bar: the advice then says to measure. */
  readonly barLoss?: BarLoss;
  /** mm of concrete over the bar, and the bar's diameter; absent while nobody has measured them. */
  readonly barCover?: number;
  readonly barDiameter?: number;
  readonly finish: Finish;
  /** What the data sheet of the finish asks for; absent without one. CSP 1 to 10. */
  readonly makerProfile?: number;
  readonly makerMoisture?: 'damp' | 'dry';
  /** m2, or unknown */
  readonly area: number | 'unknown';
  /** m of the edge along which something stands upright; absent where nobody has said. */
  readonly border?: number;
  /** Methods that have failed on a test patch; absent where none has. */
  readonly triedOut?: readonly TriedOut[];
  /** Another zone of the same part keeps people off all of it; absent where none does. */
  readonly partInDoubt?: PartInDoubt;
  /** What stopped a test patch of the advised method, and has not been found out; absent where nothing did. */
  readonly stopped?: readonly string[];
}

/** A value a rule saw, to be spoken by `words/`: ids of choices, or lengths in mm, areas in m2. */
export type Fact = string | number | readonly string[];
export type Facts = Readonly<Record<string, Fact>>;

/** Why something is so: the rule, the values it saw, the figures it used. */
export interface Reason {
  readonly rule: RuleId;
  readonly facts?: Facts;
  readonly figures?: readonly FigureId[];
  /** It holds in the likeliest case only; answers that are open may bring another. */
  readonly likeliest?: true;
}

/** Why a method is not the one advised. */
export interface Rejection extends Reason {
  readonly method: MethodId;
  /** Whether it would do the work all the same (harsher than needed, or kept as the alternative). */
  readonly wouldDo: boolean;
}

/** One piece of work, in its place in the order. */
export interface Step {
  readonly id: StepId;
  /** Why it is there, and how it is to be done here. */
  readonly why: readonly Reason[];
  readonly hazards: readonly HazardId[];
}

export type Verdict = 'prepare' | 'find-out-first' | 'stop';

/** A cheap test that has to come before, or beside, the work. */
export interface FindOut {
  /** The answer it settles. */
  readonly question: QuestionId;
  readonly test: TestId;
}

/** Field tests and look-ups that settle an answer. */
export const testIds = [
  'hammer-tap',
  'scrape',
  'brush',
  'water-drop',
  'measure-depth',
  'measure-thickness',
  'tap-crack',
  'crack-gauge',
  'look-at-steel',
  'measure-bar',
  'sound-round-stain',
  'petrography',
  'lead-asbestos-test',
  'locate-services',
  'ask-engineer',
  'ask-owner',
  'ask-maker',
  'look-close',
  'look-round',
  'local-weather',
  'chloride-test',
  'find-water',
  'measure-area',
] as const;
export type TestId = (typeof testIds)[number];

/** What the surface must be when preparation ends. */
export interface Target {
  /** Set where the finish follows the texture it finds: rougher than the profile is no fault. */
  readonly followsTexture?: true;
  /** CSP lowest and highest that will do; null while neither a sheet nor a finish says. */
  readonly profile: readonly [number, number] | null;
  /** The lowest is the data sheet's own; absent where the usual table speaks. */
  readonly fromSheet?: true;
  /** CSP lowest and highest the method leaves. */
  readonly leaves: readonly [number, number] | null;
  /** Whether a bruised skin may stay. */
  readonly bruisedSkin: 'must-go' | 'should-go' | 'may-stay';
  /** What the finish wants under it. */
  readonly moisture: 'saturated-surface-dry' | 'dry' | 'ask-maker';
  /** Least clear space behind a freed bar, mm; absent where no bar is to be freed. */
  readonly behindBar?: number;
  readonly figures: readonly FigureId[];
}

/** What of a target answers still open may leave open. */
export const targetParts = ['profile', 'leaves', 'bruisedSkin', 'moisture', 'behindBar'] as const;
export type TargetPart = (typeof targetParts)[number];

/** Advice for one settled combination of answers. Data only: the sentences are in `words/`. */
export interface Advice {
  readonly verdict: Verdict;
  /** The method to use; null unless the verdict is `prepare`. */
  readonly method: MethodId | null;
  /** What the method is, or will be once what stands before it is cleared; null where no surface method applies. */
  readonly underneath: MethodId | null;
  /** What the rest of the zone needs where breaking out along a bar leads; null where nothing else. */
  readonly beside: MethodId | null;
  readonly reasons: readonly Reason[];
  /** What stops the work or has to be found out before it; empty when the verdict is `prepare`. */
  readonly holds: readonly Hold[];
  readonly rejections: readonly Rejection[];
  readonly steps: readonly Step[];
  readonly target: Target;
  readonly cautions: readonly HazardId[];
  readonly findOut: readonly FindOut[];
}

/** Something that stands before the work. */
export interface Hold extends Reason {
  readonly verdict: Exclude<Verdict, 'prepare'>;
  readonly who: 'engineer' | 'laboratory' | 'locator' | 'concrete-contractor' | 'crew';
}
