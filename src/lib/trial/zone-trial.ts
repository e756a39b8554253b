import type { Advice } from '$lib/advice/types';
import type { SiteAnswers } from '$lib/answers/answers';
import type { Zone } from '$lib/answers/job';
import { rangeOf, type FigureId, type OwnFigures } from '$shared/figures';
import { figures } from '$shared/figures';
import type { MethodId } from '$shared/methods';
import { aimOf, type Aim } from './aim';
import { foundOn, isFound, meanDepth, type Found } from './found';
import { learnRange, type Learnt } from './learn';
import type { Outcome } from './outcome';
import { firstTry, readAll } from './read';

/** One patch of a zone with what it comes to. */
export interface PatchRead {
  /** Its place in the zone's list. */
  readonly index: number;
  readonly found: Found;
  readonly outcome: Outcome;
}

/** Where a zone's trial stands. */
export interface ZoneTrial {
  readonly aim: Aim;
  /** Patches tried with the advised method and read, oldest first. */
  readonly read: readonly PatchRead[];
  /** The last of them; null before the first. */
  readonly last: PatchRead | null;
  /** What to try next; null once the trial has ended. */
  readonly next: { readonly notch: number; readonly passes: number } | null;
}

/**
 * Where the trial of a zone stands. Patches of a method that is no longer advised stay in the list
 * of the zone and say nothing here.
 * @returns null where there is no method to try
 */
export function trialOf(
  site: SiteAnswers,
  zone: Pick<Zone, 'answers' | 'trial'>,
  advice: Advice,
): ZoneTrial | null {
  const aim = aimOf(site, zone.answers, advice);
  if (!aim) return null;
  const found =
    zone.trial?.flatMap((patch, index) => {
      const seen = patch.method === aim.method ? foundOn(patch) : null;
      return seen && isFound(seen) ? [{ index, found: seen }] : [];
    }) ?? [];
  const outcomes = readAll(
    found.map((each) => each.found),
    aim,
  );
  const read = found.map((each, place) => ({ ...each, outcome: outcomes[place] as Outcome }));
  const last = read.at(-1) ?? null;
  return { aim, read, last, next: last ? (last.outcome.next ?? null) : firstTry(aim) };
}

/** Patches at the settings that the trial ended with, where it ended in going on; else none. */
export function settledPatches({ read, last }: ZoneTrial): readonly Found[] {
  if (last?.outcome.kind !== 'go-on') return [];
  const { notch, passes } = last.found;
  return read
    .filter(({ outcome }) => outcome.kind === 'go-on')
    .map(({ found }) => found)
    .filter((found) => found.notch === notch && found.passes === passes);
}

/**
 * What a patch measured of a rate, in the unit of the figure; null where it was not timed.
 * @param byPass the rate is that of one pass: the tables of what goes by passes are
 */
export function rateMeasured(found: Found, figure: FigureId, byPass = false): number | null {
  if (!found.minutes) return null;
  const hours = found.minutes / 60;
  if (figures[figure].unit !== 'h/m3') return (found.area * (byPass ? found.passes : 1)) / hours;
  const volume = (found.area * meanDepth(found)) / 1000;
  return volume > 0 ? hours / volume : null;
}

/**
 * A rate after the patches of a zone: nine in ten, with the median.
 * @returns null where nothing was timed, or the reader has a figure of their own over it
 */
export function rateLearnt(
  patches: readonly Found[],
  figure: FigureId,
  own?: OwnFigures,
  byPass = false,
): Learnt | null {
  if (own?.[figure] !== undefined) return null;
  const measured = patches.flatMap((found) => rateMeasured(found, figure, byPass) ?? []);
  return measured.length ? learnRange(rangeOf(figure), measured) : null;
}

/** The figure for what one pass takes off, by method; washing and breaking out have none. */
const passFigures: Readonly<Partial<Record<MethodId, FigureId>>> = {
  grind: 'grind.pass',
  'abrasive-blast': 'blast.pass',
  scarify: 'scarify.pass',
  shotblast: 'shotblast.pass-span',
  'needle-scale': 'needle.pass',
};

/** Whether a method is gone over pass by pass, each taking off some depth. */
export const goesByPasses = (method: MethodId): boolean => passFigures[method] !== undefined;

/** Depth a pass after the patches of a zone, mm; null where the method has none, or nothing came off. */
export function passLearnt(
  patches: readonly Found[],
  method: MethodId,
  own?: OwnFigures,
): Learnt | null {
  const figure = passFigures[method];
  if (!figure || own?.[figure] !== undefined) return null;
  const measured = patches.map((found) => meanDepth(found) / found.passes).filter((mm) => mm > 0);
  return measured.length ? learnRange(rangeOf(figure), measured) : null;
}
