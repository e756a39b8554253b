import { isFloor } from '$lib/advice/place';
import { fixedOf } from '$lib/advice/completions';
import { profileWanted } from '$lib/advice/sheet';
import { warnedOf, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import {
  choicesOf,
  type Choice,
  type Finish,
  type QuestionId,
  type Warning,
} from '$lib/answers/questions';
import { checkIds } from '$lib/answers/readiness-record';
import { checks } from './checks';
import type { OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import {
  checksFor,
  isCement,
  makesSlurry,
  roughens,
  takesTexture,
  wantsDamp,
  type CheckSituation,
  type Need,
} from './needs';

/** A need of a zone about which some answers may still be open. */
export interface OpenNeed extends Need {
  /** Whether every way the open answers could turn out needs the check. If not, one does. */
  readonly certain: boolean;
  /** The open answers that decide whether it is needed; empty when certain. */
  readonly depends: readonly QuestionId[];
  /** What may lie hidden where it cuts in, and is located before: cables under tension, pipes, power. */
  readonly locate: readonly Hidden[];
}

/** Signs at the site of what no tool may meet. Source: common practice; tendons: Post-Tensioning Association GN01, as reported. */
export type Hidden = Extract<Warning, 'tendons-possible' | 'buried-services'>;
const hidden: readonly Hidden[] = ['tendons-possible', 'buried-services'];

/** What the readiness of a zone is judged by. */
export interface ZoneNeeds {
  readonly needs: readonly OpenNeed[];
  /** CSP that every possible finish accepts, by the sheet where there is one; null when there is none, or the finish is open. */
  readonly profile: readonly [number, number] | null;
  /** Steel that may be corroded: a bar that only shows may stay bonded, a rusty one not. */
  readonly corroded: boolean;
  /** There may be tendons in it, which bear far less salt than bars. */
  readonly tendons: boolean;
  /** What goes on may want it dry. */
  readonly wantsDry: boolean;
  /** What goes on is cement, whatever is still open. */
  readonly cement: boolean;
  readonly finishes: readonly Finish[];
}

/** The part of a zone's advice the checks look at; what `adviseZone` returns fits. */
export interface StepsAdvised {
  readonly steps: readonly { readonly id: StepId }[];
  readonly outcomes: readonly {
    readonly example: { readonly steps: readonly { readonly id: StepId }[] };
  }[];
}

const possible = <Q extends QuestionId>(id: Q, answer: readonly Choice<Q>[] | undefined) =>
  answer ?? choicesOf(id);

/** One of each kind: the checks cannot tell the members of a kind apart. */
const oneOfEach = <T>(values: readonly T[], kind: (value: T) => boolean): T[] => [
  ...new Map(values.map((value) => [kind(value), value])).values(),
];

/** Work that calls for a check of its own. */
const workKinds: readonly ((step: StepId) => boolean)[] = [
  (step) => step === 'saw-cut',
  (step) => step === 'fill-level',
  roughens,
  makesSlurry,
];

/** The ways the open answers that matter to the checks could turn out. */
function completions(
  site: SiteAnswers,
  zone: ZoneAnswers,
  advised: StepsAdvised,
): CheckSituation[] {
  const certain = advised.steps.map((step) => step.id);
  const perhaps = advised.outcomes.flatMap(({ example }) => example.steps.map((step) => step.id));
  const works = workKinds.reduce<(readonly StepId[])[]>(
    (sets, isOf) => {
      const done = certain.find(isOf);
      const open = done ?? perhaps.find(isOf);
      const withIt = open ? sets.map((steps) => [...steps, open]) : [];
      return done ? withIt : [...sets, ...withIt];
    },
    [[]],
  );
  const given = zone.contamination;
  const oils = given?.yes.includes('oil')
    ? [true]
    : !given || given.maybe.includes('oil')
      ? [true, false]
      : [false];
  const { area, makerProfile, makerMoisture } = fixedOf(zone);
  const sheet = {
    ...(makerProfile !== undefined && { makerProfile }),
    ...(makerMoisture !== undefined && { makerMoisture }),
  };
  const all: CheckSituation[] = [];
  for (const element of oneOfEach(possible('element', site.element), isFloor))
    for (const setting of oneOfEach(possible('setting', site.setting), (id) => id === 'indoors'))
      for (const salts of oneOfEach(possible('salts', site.salts), (id) => id === 'none'))
        for (const steel of possible('steel', zone.steel))
          for (const finish of possible('finish', zone.finish))
            for (const oil of oils)
              for (const steps of works)
                all.push({
                  site: { element, setting, salts },
                  zone: { steel, finish, area, contamination: oil ? ['oil'] : [], ...sheet },
                  steps,
                });
  return all;
}

/** What a question's answer is in one completion, for telling which questions a need hangs on. */
const traits: Readonly<Partial<Record<QuestionId, (s: CheckSituation) => string>>> = {
  element: ({ site }) => site.element,
  setting: ({ site }) => site.setting,
  salts: ({ site }) => site.salts,
  steel: ({ zone }) => zone.steel,
  finish: ({ zone }) => zone.finish,
  contamination: ({ zone }) => zone.contamination.join(),
  looseness: ({ steps }) => steps.join(),
};

/**
 * The checks a zone calls for, whatever is still open about it: a check is there if any way the
 * open answers could turn out calls for it, at the strongest level any of them gives.
 */
export function needsOf(
  site: SiteAnswers,
  zone: ZoneAnswers,
  advised: StepsAdvised,
  own?: OwnFigures,
): ZoneNeeds {
  const ways = completions(site, zone, advised);
  const called = ways.map((way) => ({
    way,
    needs: new Map(checksFor(way, own).map((need) => [need.check, need])),
  }));
  const needs: OpenNeed[] = [];
  const warned = new Set(warnedOf(site) ?? hidden);
  for (const check of checkIds) {
    const found = called.flatMap(({ needs: map }) => map.get(check) ?? []);
    const strongest = found.find((need) => need.level === 'needed') ?? found[0];
    if (!strongest) continue;
    const isNeeded = called.map(({ way, needs: map }) => ({
      way,
      yes: map.get(check)?.level === strongest.level,
    }));
    const certain = isNeeded.every(({ yes }) => yes);
    const passes = [...new Set(found.flatMap((need) => need.passes))];
    needs.push({
      ...strongest,
      passes,
      certain,
      depends: certain ? [] : dependsOn(isNeeded),
      locate: checks[check].cutsIn ? hidden.filter((sign) => warned.has(sign)) : [],
    });
  }
  return {
    needs,
    profile: commonProfile(ways, own),
    corroded: possible('steel', zone.steel).includes('corroded'),
    tendons: warned.has('tendons-possible'),
    wantsDry: ways.some((way) => !wantsDamp(way.zone)),
    cement: ways.every((way) => isCement(way.zone)),
    finishes: possible('finish', zone.finish),
  };
}

/** Questions whose answer alone can change whether the check is needed. */
function dependsOn(ways: readonly { way: CheckSituation; yes: boolean }[]): QuestionId[] {
  const questions: QuestionId[] = [];
  for (const [question, trait] of Object.entries(traits) as [
    QuestionId,
    (s: CheckSituation) => string,
  ][]) {
    const shares = new Map<string, { yes: number; all: number }>();
    for (const { way, yes } of ways) {
      const tally = shares.get(trait(way)) ?? { yes: 0, all: 0 };
      shares.set(trait(way), { yes: tally.yes + (yes ? 1 : 0), all: tally.all + 1 });
    }
    const rates = new Set([...shares.values()].map(({ yes, all }) => yes / all));
    if (rates.size > 1) questions.push(question);
  }
  return questions;
}

/** The profile every possible finish accepts. */
function commonProfile(
  ways: readonly CheckSituation[],
  own?: OwnFigures,
): readonly [number, number] | null {
  const ranges = ways
    .filter((way) => !takesTexture(way))
    .map((way) => profileWanted(way.zone, own));
  if (!ranges.length) return null;
  let low = -Infinity;
  let high = Infinity;
  for (const range of ranges) {
    if (!range) return null;
    low = Math.max(low, range[0]);
    high = Math.min(high, range[1]);
  }
  return low <= high ? [low, high] : null;
}
