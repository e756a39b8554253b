import type { RuleId } from '$lib/advice/rules';
import { isSurely } from '$lib/answers/answers';
import type { Job, Prices } from '$lib/answers/job';
import type { Warning } from '$lib/answers/questions';
import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { isKnown, sum, typicalOf, type Amount } from './amount';
import { conditionsOf, type ConditionId, type Conditions } from './conditions';
import {
  areaOf,
  compareCourses,
  fullDepth,
  measureIds,
  replacing,
  replacingParts,
  restoring,
  type Course,
  type Lighter,
  type MeasureId,
} from './courses';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import type { Plan } from './plan';
import type { Reach } from './tasks';

/** What an owner is told first. Not a verdict from one number: the points beside it carry it. */
export const readingIds = [
  'restore',
  'parts-only',
  'doubtful',
  'restore-part',
  'replace',
  'engineer-first',
  'not-known-yet',
] as const;
export type ReadingId = (typeof readingIds)[number];

export const pointIds = [
  'mostly-sound',
  'surface-only',
  'lighter',
  'full-depth-parts',
  'mostly-gone',
  'depth-past-third',
  'settled',
  'fire-or-chemical',
  'structure',
  'map-cracking',
  'moving-crack',
  'bar-loss',
  'open-answers',
  'unmeasured',
  'whole-unknown',
  'not-entered',
  'thickness-unknown',
  'patch-life',
  'no-one-percentage',
] as const;
export type PointId = (typeof pointIds)[number];

/** One thing that speaks for a course, with what it was seen from. */
export interface Point {
  readonly id: PointId;
  readonly share?: number;
  readonly zones?: readonly string[];
  readonly measure?: MeasureId;
  readonly figures?: readonly FigureId[];
}

export interface OwnersReading {
  readonly reading: ReadingId;
  readonly forRestoring: readonly Point[];
  readonly forReplacing: readonly Point[];
  readonly notKnown: readonly Point[];
  readonly conditions: Conditions;
  /** Null where nothing can be restored; what had to be left out of it is in `leftOut`. */
  readonly restore: Course | null;
  /** Replace the parts that are broken out or gone, restore the rest; null where there are none. */
  readonly parts: Course | null;
  readonly replace: Course;
  /** Zones that restoring does not count, so that it cannot be held against the others. */
  readonly leftOut: readonly string[];
  /** Parts of the whole, 0 to 1; null while its size, thickness or a zone is not known. */
  readonly shares: {
    readonly area: Conditions['share'];
    /** What comes off, of the volume of the whole: least, usual and most. */
    readonly volume: Reach | null;
  };
  /** `first` means restoring takes less. */
  readonly lighter: Readonly<Record<MeasureId, Lighter>>;
  readonly deepest: number | null;
}

/**
 * Restore or replace, from a planned job. Grave signs go first, whatever the shares say.
 * Source: common practice, no published source; the shares it is measured against are published
 * and disagree (figures `rule.*`).
 */
export function readForOwner(
  given: Job,
  plan: Plan,
  prices: Prices = given.prices ?? {},
  own: OwnFigures | undefined = given.own,
): OwnersReading {
  // What is drawn outranks what was typed, as in the plan.
  const job = drawnJob(given, surveyOf(given, own));
  const conditions = conditionsOf(job, plan);
  const zonesIn = (...ids: readonly ConditionId[]) =>
    job.zones
      .filter(({ id }) => ids.some((condition) => condition === conditions.of[id]))
      .map(({ id }) => id);
  const leftOut = job.zones
    .map(({ id }) => id)
    .filter((id) => !plan.zones.some((zone) => zone.id === id));
  const restore = restoring(plan, job, prices, own);
  const parts = replacingParts(plan, job, zonesIn('break-out', 'replace'), prices, own);
  const replace = replacing(plan, job, prices, own);
  // A course that leaves something out is less by that alone.
  const lighter = compareCourses(leftOut.length ? null : restore, replace);
  const { share, whole } = conditions;
  const mostly = valueOf('compare.mostly', own);
  const held = (rule: RuleId) =>
    [...plan.held, ...plan.zones]
      .filter(({ holds }) => holds.some((hold) => hold.rule === rule))
      .map(({ id }) => id);
  const warned = (warning: Warning) => job.site.warnings?.yes.includes(warning) ?? false;
  const rotten = job.zones
    .filter(({ answers }) => isSurely(answers.looseness, 'rotten'))
    .map(({ id }) => id);
  const lost = [...new Set([...rotten, ...zonesIn('replace')])];
  const gone = whole ? sizeOf(lost, job) / whole : 0;
  const doubtful = plan.zones
    .filter(({ advice }) =>
      advice.steps.some(({ why }) => why.some(({ rule }) => rule === 'depth-past-third')),
    )
    .map(({ id }) => id);

  const forReplacing: Point[] = [];
  if (zonesIn('replace').length)
    forReplacing.push({
      id: 'full-depth-parts',
      zones: zonesIn('replace'),
      ...(share && { share: share.replace }),
      figures: ['depth.full-limit'],
    });
  if (gone > mostly)
    forReplacing.push({ id: 'mostly-gone', share: gone, figures: ['compare.mostly'] });
  if (doubtful.length)
    forReplacing.push({
      id: 'depth-past-third',
      zones: doubtful,
      figures: ['depth.partial-limit'],
    });
  if (warned('settled-or-rocking')) forReplacing.push({ id: 'settled' });
  if (warned('fire-or-chemical')) forReplacing.push({ id: 'fire-or-chemical' });
  for (const [id, rule] of [
    ['structure', 'structure-before-removal'],
    ['map-cracking', 'map-cracking'],
    ['moving-crack', 'moving-crack'],
    ['bar-loss', 'bar-section-loss'],
  ] as const)
    if (held(rule).length) forReplacing.push({ id, zones: held(rule) });
  forReplacing.push({ id: 'patch-life', figures: ['patch.life-poor'] });

  const forRestoring: Point[] = [];
  if (share && share.sound > mostly) forRestoring.push({ id: 'mostly-sound', share: share.sound });
  if (share && share.sound + share.surface > 1 - roundOff)
    forRestoring.push({ id: 'surface-only' });
  forRestoring.push({ id: 'patch-life', figures: ['patch.life-good'] });
  for (const measure of measureIds) {
    if (lighter[measure] === 'first') forRestoring.push({ id: 'lighter', measure });
    if (lighter[measure] === 'second') forReplacing.push({ id: 'lighter', measure });
  }

  const notKnown: Point[] = [];
  if (zonesIn('not-known').length)
    notKnown.push({ id: 'open-answers', zones: zonesIn('not-known') });
  if (conditions.unmeasured.length)
    notKnown.push({ id: 'unmeasured', zones: conditions.unmeasured });
  if (whole === null) notKnown.push({ id: 'whole-unknown' });
  if (share && share['not-entered'] > roundOff)
    notKnown.push({ id: 'not-entered', share: share['not-entered'] });
  if ((job.site.thickness ?? 'unknown') === 'unknown') notKnown.push({ id: 'thickness-unknown' });
  notKnown.push({
    id: 'no-one-percentage',
    figures: ['rule.galion', 'rule.lauderhill', 'rule.sioux-falls', 'rule.pleasant-hill'],
  });

  const engineer =
    warned('settled-or-rocking') ||
    warned('fire-or-chemical') ||
    held('map-cracking').length > 0 ||
    zonesIn('engineer').length > 0;
  const waits = plan.zones.some(({ holds }) => holds.length > 0);
  const reading = ((): ReadingId => {
    if (engineer) return 'engineer-first';
    if (gone > mostly) return 'replace';
    if (zonesIn('replace').length) return 'restore-part';
    if (zonesIn('not-known').length || !job.zones.length || waits) return 'not-known-yet';
    if (doubtful.length) return 'doubtful';
    return share === null || share['not-entered'] > mostly ? 'parts-only' : 'restore';
  })();
  return {
    reading,
    forRestoring,
    forReplacing,
    notKnown,
    conditions,
    restore,
    parts,
    replace,
    leftOut,
    shares: { area: share, volume: volumeShare(job, plan, conditions) },
    lighter,
    deepest: deepestOf(job),
  };
}

const roundOff = 1e-9;

/** m2 of these zones, as far as they are measured. */
const sizeOf = (ids: readonly string[], job: Job): number =>
  job.zones
    .filter(({ id }) => ids.includes(id))
    .reduce((total, { answers: { area } }) => total + (typeof area === 'number' ? area : 0), 0);

/** What comes off, of the volume of the whole; a zone that is gone counts with its full depth. */
function volumeShare(job: Job, plan: Plan, { whole, of }: Conditions): Reach | null {
  const { thickness } = job.site;
  if (whole === null || typeof thickness !== 'number') return null;
  const off = job.zones.map((zone): Amount | null => {
    const planned = plan.zones.find(({ id }) => id === zone.id);
    if (planned) return planned.quantities.removed;
    return of[zone.id] === 'replace'
      ? fullDepth(areaOf(job, [zone.id]), job)
      : { missing: ['depth'], unit: 'm3' };
  });
  const all = sum(
    'm3',
    off.flatMap((each) => each ?? []),
  );
  if (!isKnown(all)) return null;
  const volume = (whole * thickness) / 1000;
  const part = (value: number) => Math.min(1, value / volume);
  return { low: part(all.span[0]), typical: part(typicalOf(all)), high: part(all.span[1]) };
}

/** The deepest measured damage as part of the thickness; null where either is not known. */
function deepestOf(job: Job): number | null {
  const { thickness } = job.site;
  const depths = job.zones.flatMap(({ answers }) =>
    typeof answers.depth === 'number' ? [answers.depth] : [],
  );
  return typeof thickness === 'number' && depths.length ? Math.max(...depths) / thickness : null;
}
