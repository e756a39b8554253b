import { bandOf } from '$lib/answers/depth';
import { isSurely, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import {
  choicesOf,
  type BarLoss,
  type Choice,
  type DepthBand,
  type Looseness,
  type QuestionId,
  type Steel,
} from '$lib/answers/questions';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { methodIds } from '$shared/methods';
import { isFirmHollow, showsBar, type Demands } from './demands';
import { traitAfterPatch, traitOfContamination } from './dirt-traits';
import { fullDepthHold } from './hole';
import { isDeep } from './holds';
import { gradeOf, sheetMoisture } from './sheet';
import { judgeRemoval } from './methods/judge';
import { patchFacts } from './tried-out';
import type { SettledSite, SettledZone } from './types';

/**
 * What an answer leaves possible: one choice, or several between which the advice cannot tell, as one.
 * "Not sure" about everything is millions of combinations, of which only thousands differ.
 * That none hides a difference is proven against plain enumeration in the tests.
 */
export interface Possibility<T> {
  /** One of the choices, standing for all. */
  readonly value: T;
  /** How many choices it stands for. */
  readonly weight: number;
  /** All it stands for. */
  readonly members: readonly T[];
}

/** Makes one possibility of all values that share a trait. */
export function gather<T>(values: readonly T[], trait: (value: T) => string): Possibility<T>[] {
  const all = new Map<string, T[]>();
  for (const value of values) {
    const key = trait(value);
    const members = all.get(key);
    if (members) members.push(value);
    else all.set(key, [value]);
  }
  return [...all.values()].map((members) => ({
    value: members[0] as T,
    weight: members.length,
    members,
  }));
}

/** The choices still possible; all of them where nothing was answered. */
export function possible<Q extends QuestionId>(
  id: Q,
  answer: readonly Choice<Q>[] | undefined,
): readonly Choice<Q>[] {
  return answer ?? choicesOf(id);
}

export const possibleDepths = (zone: ZoneAnswers): readonly (DepthBand | number)[] =>
  typeof zone.depth === 'number' ? [zone.depth] : possible('depth', zone.depth);

/** Every subset of the "maybe" choices, each with the certain ones. */
export function subsets<C extends string>(answer: {
  readonly yes: readonly C[];
  readonly maybe: readonly C[];
}): C[][] {
  let all: C[][] = [[...answer.yes]];
  for (const choice of answer.maybe)
    if (!answer.yes.includes(choice)) all = all.flatMap((set) => [set, [...set, choice]]);
  return all;
}

export const openMany = <Q extends 'warnings' | 'contamination'>(
  id: Q,
  answer: { readonly yes: readonly Choice<Q>[]; readonly maybe: readonly Choice<Q>[] } | undefined,
) => answer ?? { yes: [], maybe: choicesOf(id) };

/** What steel asks for together with how much of the bar is gone. */
export interface SteelState {
  readonly steel: Steel;
  readonly barLoss?: BarLoss;
}

export interface DepthState {
  readonly depth: DepthBand;
  readonly depthMm?: number;
  readonly looseness: Looseness;
}

/** All possibilities of every question, for one site and zone. */
export function possibilitiesFor(site: SiteAnswers, zone: TriedAnswers) {
  const contamination = openMany('contamination', zone.contamination);
  return {
    element: gather(possible('element', site.element), (element) =>
      element === 'soffit' ? 'wall' : element,
    ),
    salts: gather(possible('salts', site.salts), (salts) => (salts === 'none' ? 'none' : 'some')),
    freezeThaw: gather(possible('freezeThaw', site.freezeThaw), (frost) => frost),
    depthAndLooseness: depthPossibilities(site, zone),
    contamination: gather(subsets(contamination), (set) =>
      zone.triedOut?.length ? traitAfterPatch(set) : traitOfContamination(set),
    ),
    texture: gather(possible('texture', zone.texture), (texture) => texture),
    cracks: gather(possible('cracks', zone.cracks), (cracks) => cracks),
    steel: gather(steelStates(zone), ({ steel, barLoss }) =>
      showsBar({ steel }) ? `${steel} ${barLoss && barLoss !== 'within-limit'}` : steel,
    ),
    finish: gather(possible('finish', zone.finish), (finish) => finish),
  };
}

export type Possibilities = ReturnType<typeof possibilitiesFor>;

export function steelStates(zone: ZoneAnswers): SteelState[] {
  return possible('steel', zone.steel).flatMap((steel): SteelState[] =>
    showsBar({ steel }) && zone.barLoss
      ? zone.barLoss.map((barLoss) => ({ steel, barLoss }))
      : [{ steel }],
  );
}

/**
 * Depth and looseness decide together: which methods reach, how deep the hole will be, and what the
 * skin is like. With a bar and without, on a floor and off it, since a bar makes the hole deeper.
 */
function depthPossibilities(site: SiteAnswers, zone: ZoneAnswers): Possibility<DepthState>[] {
  const thickness = site.thickness ?? 'unknown';
  const states = possibleDepths(zone).flatMap((depth) =>
    possible('looseness', zone.looseness).map((looseness): DepthState =>
      typeof depth === 'number'
        ? { depth: bandOf(depth, thickness), depthMm: depth, looseness }
        : { depth, looseness },
    ),
  );
  const fixed = fixedOf(zone);
  return gather(states, (state) => {
    const probe = { ...plainZone, ...fixed, ...state };
    const demands = { remove: { band: state.depth, looseness: state.looseness } } as Demands;
    const holds = (['slab', 'wall'] as const).flatMap((element) =>
      (['none-seen', 'exposed'] as const).map(
        (steel) => fullDepthHold({ element, thickness }, { ...probe, steel })?.rule,
      ),
    );
    return [
      methodIds.map((method) => !judgeRemoval(method, demands)).join(),
      ...holds,
      isDeep(probe),
      state.looseness === 'tight',
      state.looseness === 'powdery',
      state.looseness === 'hollow',
      isFirmHollow({ ...state, finish: 'rebuild' }),
    ].join();
  });
}

type Fixed = 'border' | 'barCover' | 'barDiameter' | 'makerProfile' | 'makerMoisture';
/** What is said of a zone in numbers, by a sheet or by test patches: never open, only there or not. */
export function fixedOf(
  zone: TriedAnswers,
): Pick<SettledZone, 'area' | 'triedOut' | 'stopped' | 'partInDoubt' | Fixed> {
  const { area, borderLength, barCover, barDiameter } = zone;
  const makerProfile = gradeOf(zone.makerProfile);
  // Without a sheet at hand nothing of it counts.
  const sheetless = isSurely(zone.makerProfile, 'no-sheet');
  const makerMoisture = sheetless ? undefined : sheetMoisture(zone.makerMoisture);
  return {
    area: area ?? 'unknown',
    ...(typeof borderLength === 'number' && { border: borderLength }),
    ...(typeof barCover === 'number' && { barCover }),
    ...(typeof barDiameter === 'number' && { barDiameter }),
    ...(makerProfile !== undefined && { makerProfile }),
    ...(makerMoisture !== undefined && { makerMoisture }),
    ...patchFacts(zone),
  };
}

/**
 * The site and zone of answers that leave nothing open but the setting, which decides neither
 * verdict nor method; null where more is open.
 */
export function onlyCompletion(
  answers: SiteAnswers & ZoneAnswers,
): { site: SettledSite; zone: SettledZone } | null {
  const { warnings, contamination, thickness = 'unknown', depth } = answers;
  if (!warnings || warnings.maybe.length || !contamination || contamination.maybe.length)
    return null;
  const element = single(answers.element);
  const salts = single(answers.salts);
  const freezeThaw = single(answers.freezeThaw);
  const band = typeof depth === 'number' ? bandOf(depth, thickness) : single(depth);
  const looseness = single(answers.looseness);
  const texture = single(answers.texture);
  const cracks = single(answers.cracks);
  const steel = single(answers.steel);
  const finish = single(answers.finish);
  const barLoss = steel && showsBar({ steel }) && answers.barLoss ? answers.barLoss : [undefined];
  if (!element || !salts || !freezeThaw || !band || !looseness) return null;
  if (!texture || !cracks || !steel || !finish || barLoss.length > 1) return null;
  const setting = possible('setting', answers.setting)[0] as SettledSite['setting'];
  return {
    site: { element, setting, salts, freezeThaw, thickness, warnings: warnings.yes },
    zone: {
      depth: band,
      ...(typeof depth === 'number' && { depthMm: depth }),
      looseness,
      contamination: contamination.yes,
      texture,
      cracks,
      steel,
      ...(barLoss[0] && { barLoss: barLoss[0] }),
      finish,
      ...fixedOf(answers),
    },
  };
}

const single = <T>(answer: readonly T[] | undefined): T | undefined =>
  answer?.length === 1 ? answer[0] : undefined;

/** A site and zone with nothing wrong, to hang one answer on. */
export const plainSite: SettledSite = {
  element: 'slab',
  setting: 'open',
  salts: 'none',
  freezeThaw: 'rare',
  thickness: 'unknown',
  warnings: [],
};
export const plainZone: SettledZone = {
  depth: 'film',
  looseness: 'tight',
  contamination: [],
  texture: 'smooth',
  cracks: 'none',
  steel: 'none-seen',
  finish: 'undecided',
  area: 'unknown',
};
