import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

type OneOrMany = string | readonly string[];

/** What a senior of the trade expects of one zone. Ids are those of the program; `falls` any hazard of falling. */
export interface ZoneExpectation {
  /** One verdict, or those that are all defensible. */
  readonly verdict?: OneOrMany;
  /** Every method the open answers leave must be one of these; under a hold, what it will be. */
  readonly methods?: readonly string[];
  /** Must all be there in this order; an inner list means one of them. */
  readonly stepsInOrder?: readonly OneOrMany[];
  /** At least one of these must be there. */
  readonly stepsAny?: readonly string[];
  readonly stepsAbsent?: readonly string[];
  /** For each, a hold of this verdict that falls to one of these. */
  readonly holds?: readonly { readonly verdict: OneOrMany; readonly who?: readonly string[] }[];
  /** Nothing stands before the work, however open answers turn out. */
  readonly noHolds?: true;
  readonly target?: {
    /** CSP */
    readonly profileLeast?: number;
    readonly moisture?: string;
    readonly bruisedSkin?: string;
    readonly bruisedSkinNot?: string;
    /** mm */
    readonly behindBarLeast?: number;
  };
  readonly cautions?: readonly string[];
  /** Tests that have to be named. */
  readonly findOut?: readonly string[];
  /** Tests that cannot tell, and must not be named. */
  readonly findOutAbsent?: readonly string[];
  /** The test to name first. */
  readonly findOutFirst?: string;
  /** Before open answers are settled, nothing may be done but these. */
  readonly nowAtMost?: readonly string[];
  /** An answer that would change the advice, and the method it would become. */
  readonly wouldChange?: readonly { readonly question: string; readonly method: string }[];
  /** Readiness checks that have to be asked for. */
  readonly checks?: readonly string[];
  /** Tools the plan reckons a step with. */
  readonly tools?: Readonly<
    Record<string, { readonly has?: readonly string[]; readonly absent?: readonly string[] }>
  >;
}

export interface PlanExpectation {
  /** Pairs: both are there, the first before the second. */
  readonly order?: readonly (readonly [string, string])[];
  readonly absent?: readonly string[];
  /** The zones in which alone a step is done. */
  readonly only?: Readonly<Record<string, readonly string[]>>;
  /** Zones the plan has to leave out. */
  readonly held?: readonly string[];
  /** What stands in for a machine the crew lacks; null: hire one. */
  readonly instead?: Readonly<Record<string, string | null>>;
}

/** A case of the trade, judged before it was run. */
export interface Case {
  readonly id: string;
  readonly title: string;
  /** As in a job file of version 1. */
  readonly site: unknown;
  readonly zones: readonly unknown[];
  readonly expect: {
    readonly zones: Readonly<Record<string, ZoneExpectation>>;
    readonly plan?: PlanExpectation;
  };
  readonly reason: string;
  /** The published source, or "common practice". */
  readonly source: string;
  /** What was thought again after the case had been judged. */
  readonly note?: string;
}

export interface Theme {
  readonly theme: string;
  readonly cases: readonly Case[];
}

const folder = dirname(fileURLToPath(import.meta.url));

/** Every file of cases in this folder. */
export const themes: readonly Theme[] = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as Theme);
