import type { LimitId } from '$lib/advice/owner-limits';
import type { Called } from '$lib/advice/owner-may';
import type {
  Choice,
  DepthQuestion,
  Finish,
  NumberQuestion,
  QuestionId,
} from '$lib/answers/questions';
import type { Convertible, UnitSystem } from '$lib/answers/units';
import type { RuleId } from '$lib/advice/rules';
import type { Reason, Target, TestId, Verdict } from '$lib/advice/types';
import type { Margin } from '$lib/advice/zone-advice';
import type { FigureId } from '$shared/figures';
import type { HazardId, MethodId, StepId } from '$shared/methods';
import type { Basis, Extent, Unit } from '$shared/types';

/**
 * Speaks values in the reader's units and language. Every method takes engine units
 * (mm, m, m2, m3, kg, MPa, C, h) and returns text to put into a sentence. Rounds for display only.
 */
export interface Formatter {
  readonly units: UnitSystem;
  /** A bare number with the separators of the language. */
  number(value: number): string;
  /** mm: "6.4 mm" or "1/4 in", from 36 in on "3 ft 7 1/4 in". */
  length(value: number): string;
  /** mm of an edge between two answers, as a ruler shows it: "6 mm" or "1/4 in". */
  edge(value: number): string;
  /** mm to mm: "75 to 100 mm" or "3 to 4 in". */
  lengths(low: number, high: number): string;
  /** m: "12.5 m" or, as on a tape, "3 ft 7 1/4 in". */
  distance(value: number): string;
  /** mm of rain or snow, never in feet: "914 mm" or "36 in". */
  rain(value: number): string;
  /** m2; in square feet whole from 10 on. */
  area(value: number): string;
  /** m3: "0.5 m³" or "0.65 cu yd". */
  volume(value: number): string;
  /** kg: kilograms or tonnes; pounds or US tons. */
  mass(value: number): string;
  /** MPa, or psi. */
  stress(value: number): string;
  /** Of water and air, from MPa: bar, or psi. */
  pressure(value: number): string;
  /** Degrees Celsius, or Fahrenheit. */
  temperature(value: number): string;
  /** A roughness or a range of them: "CSP 5 to 10". */
  csp(range: readonly [number, number] | number): string;
  /** 0 to 100. */
  percent(value: number): string;
  /** A ratio of 0 to 1 as a percentage. */
  share(ratio: number): string;
  /** A ratio of 0 to 1 in a word where there is one: "half", "a third"; else a percentage. */
  fraction(ratio: number): string;
  /** Hours; minutes where it is less than one. */
  hours(value: number): string;
  /** Minutes in the largest unit that fits: "2 minutes", "7 days", "2 weeks". */
  duration(minutes: number): string;
  /** From one text to another, or the one where both are the same: "3 to 5". */
  ends(low: string, high: string): string;
  /** "oil, paint and moss" */
  list(items: readonly string[]): string;
  /** "oil, paint or moss" */
  either(items: readonly string[]): string;
  /** A figure of the trade with its unit; the reader's own value where there is one. */
  figure(id: FigureId): string;
  /** One number of a figure that is a range, with its unit. */
  end(id: FigureId, end: 'low' | 'typical' | 'high'): string;
  /** From one number to another in a unit of figures. */
  between(unit: Unit, low: number, high: number): string;
  /** From one figure to another of the same unit: "3 to 6 mm". */
  span(low: FigureId, high: FigureId): string;
  /**
   * The bare value of a figure in its engine unit, for arithmetic inside a sentence.
   * @throws Error when the figure is a range
   */
  valueOf(id: FigureId): number;
  /** The unit a typed number is in: "mm" or "in". */
  unitOf(kind: Convertible): string;
  /** A number as it would be typed in the reader's unit, without the unit. */
  typed(kind: Convertible, value: number): string;
}

/** What the sentences are given to speak with. */
export type Say = Formatter;

export interface ChoiceWords {
  /** The choice as a button, a few words. */
  readonly name: string;
  /** How to know it when you see it, one sentence. */
  readonly hint: string;
}

/** What stands round a field for a typed number. */
export interface NumberWords {
  readonly label: string;
  /** The unit the reader types in. */
  readonly unit: string;
  /** What to measure, and where. */
  readonly hint: string;
  /** A number as it might be typed. */
  readonly example: string;
  readonly unknown: string;
  /** Where nothing is a likely answer: a choice of its own. */
  readonly none?: ChoiceWords;
}

export interface QuestionWords<Q extends QuestionId = QuestionId> {
  /** The question, in full. */
  readonly ask: string;
  /** Two or three words for lists and summaries. */
  readonly short: string;
  readonly why: string;
  /** How to find out on the spot in two minutes. */
  readonly find: readonly string[];
  /** What comes before that: standing on it, and where it hangs or an owner looks, from beside it. */
  readonly onIt?: readonly string[];
  readonly beside?: readonly string[];
  /** The same by scraping, brushing or picking: not told where an old coating has not been tested. */
  readonly scrape?: readonly string[];
  readonly choices: { readonly [C in Choice<Q>]: ChoiceWords };
  readonly number: Q extends NumberQuestion | DepthQuestion ? NumberWords : null;
}

/** The words of every question, in the units of `say`. */
export type QuestionsWords = { readonly [Q in QuestionId]: QuestionWords<Q> };

/** A sentence or two for a reason; those against a method are written to follow its name and a colon. */
export type RuleSentence = (reason: Reason, say: Say) => string;
export type RulesWords = Readonly<Record<RuleId, RuleSentence>>;

export interface MethodWords {
  /** "Grinding" */
  readonly name: string;
  /** As an instruction: "Grind the surface". */
  readonly doing: string;
  readonly what: string;
  /** What it leaves behind. */
  readonly leaves: string;
  /** What it costs: dust, noise, time, bruises. */
  readonly costs: string;
}

export interface StepWords {
  readonly name: string;
  /** Instructions in order; the last says how to tell that it is done. */
  readonly how: readonly string[];
}

export interface HazardWords {
  readonly name: string;
  /** What it does to you. */
  readonly harm: string;
  /** The same where no hammer is used, if that makes a difference. */
  readonly harmNoHammer?: string;
  /** In order of control: do away with it, water or extraction, distance and time, gear. */
  readonly controls: readonly string[];
  /** When to stop. */
  readonly stop: string;
}

export interface TestWords {
  readonly name: string;
  readonly how: readonly string[];
  /** How long it takes: minutes on the spot, weeks at a laboratory. */
  readonly minutes: string;
}

/** A name and a sentence that explains it. */
export interface Named {
  readonly name: string;
  readonly line: string;
}

export interface VerdictWords {
  readonly verdicts: Readonly<Record<Verdict, Named>>;
  /** Who to call: what they are called, and what they do for you. */
  readonly who: Readonly<Record<Called, Named>>;
  readonly moisture: Readonly<Record<Target['moisture'], Named>>;
  readonly bruisedSkin: Readonly<Record<Target['bruisedSkin'], Named>>;
  readonly finishes: Readonly<Record<Finish, Named>>;
  readonly bases: Readonly<Record<Basis, Named>>;
  /** How much of a source was read, as said after the basis. */
  readonly seen: Readonly<Record<Extent, Named>>;
  /** Stands on every page with advice. */
  readonly deferral: string;
  /** What is not do-it-yourself, for an owner. */
  readonly ownerLimits: Readonly<Record<LimitId, string>>;
}

/** What can be wrong with a number somebody typed. */
export interface NumberMessages {
  readonly empty: string;
  readonly notNumber: (typed: string) => string;
  /** Both readings are offered behind it. */
  readonly twoWays: (typed: string) => string;
  readonly notWhole: string;
  readonly aboveZero: string;
  /** @param unit the one the field is typed in */
  readonly otherUnit: (unit: string) => string;
  readonly negative: string;
  /** @param least the limit, spoken with its unit */
  readonly tooSmall: (least: string) => string;
  /** @param most the limit, spoken with its unit */
  readonly tooLarge: (most: string) => string;
  /** @param thickness the slab's, spoken with its unit */
  readonly deeperThanSlab: (thickness: string) => string;
}

/**
 * Everything one language has to provide. Words with numbers in them are made from `say`,
 * so that they come in the reader's units.
 */
export interface Words {
  readonly questions: (say: Say) => QuestionsWords;
  readonly rules: RulesWords;
  /** What would change the advice. */
  readonly margins: (margin: Margin, say: Say, questions: QuestionsWords) => string;
  readonly methods: (say: Say) => Readonly<Record<MethodId, MethodWords>>;
  readonly steps: (say: Say) => Readonly<Record<StepId, StepWords>>;
  readonly hazards: (say: Say) => Readonly<Record<HazardId, HazardWords>>;
  readonly tests: (say: Say) => Readonly<Record<TestId, TestWords>>;
  readonly verdicts: VerdictWords;
  readonly numbers: NumberMessages;
}
