import { isSurely, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import { questionIds, type QuestionId } from '$lib/answers/questions';
import { plainSite, plainZone } from './completions';
import { fullDepthHold, onlyBreakingReaches } from './hole';
import { isFloor } from './place';
import { isStiff, showsBar } from './demands';
import type { SettledZone } from './types';

/** Why a question is not asked: its answer could change neither verdict, nor method, nor any step. */
export const skipReasons = [
  'no-cracks',
  'no-bar-shows',
  'no-finish-yet',
  'no-sheet',
  'no-floor-machine',
  'concrete-itself-harmed',
  'ground-first',
  'damaged-through',
  'past-half-thickness',
  'broken-out-anyway',
] as const;
export type SkipReason = (typeof skipReasons)[number];

/** Asked whatever the rest says: the site is asked once for all its zones, and every plan needs an area. */
const alwaysAsked: ReadonlySet<QuestionId> = new Set<QuestionId>([
  'element',
  'setting',
  'salts',
  'freezeThaw',
  'thickness',
  'warnings',
  'area',
]);

const aboutBars: ReadonlySet<QuestionId> = new Set<QuestionId>([
  'barCover',
  'barDiameter',
  'barSpacing',
  'barLength',
]);
const aboutSheet: ReadonlySet<QuestionId> = new Set<QuestionId>(['makerProfile', 'makerMoisture']);

/**
 * Asked, but never in the way: without an answer they leave nothing open, since what nobody measured
 * is taken as usual, and without a data sheet the usual table speaks.
 */
export const neverInTheWay: ReadonlySet<QuestionId> = new Set<QuestionId>([
  ...aboutBars,
  ...aboutSheet,
  'borderLength',
]);

/**
 * Why a question cannot matter here any more, or null while it can.
 * Only certain answers count: as long as one possibility needs the question, it is asked.
 * That no choice of a skipped question changes verdict, method or steps is proven in the tests.
 */
export function whyNotAsked(
  question: QuestionId,
  site: SiteAnswers,
  zone: ZoneAnswers,
): SkipReason | null {
  if (alwaysAsked.has(question)) return null;
  if (site.warnings?.yes.includes('fire-or-chemical')) return 'concrete-itself-harmed';
  // Only under what is not stiff does the rest still count.
  const settled = site.warnings?.yes.includes('settled-or-rocking');
  if (settled && question !== 'finish' && !zone.finish?.some((finish) => !isStiff({ finish })))
    return 'ground-first';
  if (question === 'depth') return null;
  if (everyDepth(site, zone, ({ depth }) => depth === 'through')) return 'damaged-through';
  if (question === 'looseness') return null;
  if (everyState(site, zone, pastRepair)) return 'past-half-thickness';
  if (question === 'texture' && everyState(site, zone, onlyBreakingReaches))
    return 'broken-out-anyway';
  if (question === 'crackLength' && isSurely(zone.cracks, 'none')) return 'no-cracks';
  const mayShow = zone.steel?.some((steel) => showsBar({ steel }));
  if (question === 'barLoss' && zone.steel && !mayShow) return 'no-bar-shows';
  if (aboutBars.has(question) && zone.steel && !mayShow) return 'no-bar-shows';
  if (aboutSheet.has(question) && isSurely(zone.finish, 'undecided')) return 'no-finish-yet';
  if (question === 'makerMoisture' && isSurely(zone.makerProfile, 'no-sheet')) return 'no-sheet';
  if (question === 'borderLength' && site.element && !site.element.some(isFloor))
    return 'no-floor-machine';
  return null;
}

/** The questions that still count, in the order they are asked. */
export const askedQuestions = (site: SiteAnswers, zone: ZoneAnswers): QuestionId[] =>
  questionIds.filter((question) => whyNotAsked(question, site, zone) === null);

/**
 * The questions most readers come to be asked: those that still count where each open answer that
 * would bring more questions is the usual one. Source: common practice, no source.
 */
export const usuallyAsked = (site: SiteAnswers, zone: ZoneAnswers): QuestionId[] =>
  askedQuestions(site, {
    ...zone,
    cracks: zone.cracks ?? ['none'],
    steel: zone.steel ?? ['none-seen'],
    makerProfile: zone.makerProfile ?? ['no-sheet'],
  });

/** The questions that are asked and have no answer yet. Not sure is an answer. */
export const missingQuestions = (site: SiteAnswers, zone: ZoneAnswers): QuestionId[] =>
  askedQuestions(site, zone).filter(
    (question) =>
      ({ ...site, ...zone })[question as keyof (SiteAnswers & ZoneAnswers)] === undefined,
  );

type DepthState = Pick<SettledZone, 'depth' | 'depthMm'>;
type LooseState = DepthState & Pick<SettledZone, 'looseness'>;

function everyDepth(
  site: SiteAnswers,
  zone: ZoneAnswers,
  holds: (state: DepthState) => boolean,
): boolean {
  const thickness = site.thickness ?? 'unknown';
  if (zone.depth === undefined) return false;
  if (typeof zone.depth === 'number')
    return holds({ depth: bandOf(zone.depth, thickness), depthMm: zone.depth });
  return zone.depth.every((depth) => holds({ depth }));
}

function everyState(
  site: SiteAnswers,
  zone: ZoneAnswers,
  holds: (state: LooseState, thickness: number | 'unknown') => boolean,
): boolean {
  const { looseness } = zone;
  if (!looseness) return false;
  return everyDepth(site, zone, (state) =>
    looseness.every((each) => holds({ ...state, looseness: each }, site.thickness ?? 'unknown')),
  );
}

/** Loose to half the thickness or more: that part is replaced full depth. */
const pastRepair = (state: LooseState, thickness: number | 'unknown'): boolean =>
  fullDepthHold({ ...plainSite, thickness }, { ...plainZone, ...state })?.verdict === 'stop';
