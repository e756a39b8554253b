import type { RuleId } from '$lib/advice/rules';
import { isSurely } from '$lib/answers/answers';
import type { Job, Prices } from '$lib/answers/job';
import type { Warning } from '$lib/answers/questions';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { conditionsOf, type Conditions } from './conditions';
import {
  compareCourses,
  measureIds,
  replacing,
  restoring,
  type Course,
  type Lighter,
  type MeasureId,
} from './courses';
import type { Plan } from './plan';

/** What an owner is told first. Not a verdict from one number: the points beside it carry it. */
export const readingIds = [
  'restore',
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
  readonly restore: Course;
  readonly replace: Course;
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
  const restore = restoring(plan, prices, own);
  const replace = replacing(job, prices, own);
  const lighter = compareCourses(restore, replace);
  const { share } = conditions;
  const mostly = valueOf('compare.mostly', own);
  const zonesIn = (...ids: readonly string[]) =>
    job.zones.filter(({ id }) => ids.includes(conditions.of[id] ?? '')).map(({ id }) => id);
  const held = (rule: RuleId) =>
    [...plan.held, ...plan.zones]
      .filter(({ holds }) => holds.some((hold) => hold.rule === rule))
      .map(({ id }) => id);
  const warned = (warning: Warning) => job.site.warnings?.yes.includes(warning) ?? false;
  const rotten = job.zones.filter(({ answers }) => isSurely(answers.looseness, 'rotten'));
  const gone = shareOf(rotten.map(({ id }) => id).concat(zonesIn('replace')), job, conditions);

  const forReplacing: Point[] = [];
  if (zonesIn('replace').length)
    forReplacing.push({
      id: 'full-depth-parts',
      zones: zonesIn('replace'),
      share: share.replace,
      figures: ['depth.full-limit'],
    });
  if (gone > mostly)
    forReplacing.push({ id: 'mostly-gone', share: gone, figures: ['compare.mostly'] });
  const doubtful = plan.zones.filter(({ advice }) =>
    advice.steps.some(({ why }) => why.some(({ rule }) => rule === 'depth-past-third')),
  );
  if (doubtful.length)
    forReplacing.push({
      id: 'depth-past-third',
      zones: doubtful.map(({ id }) => id),
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
  if (share.sound > mostly) forRestoring.push({ id: 'mostly-sound', share: share.sound });
  const onlySurface = share.sound + share.surface;
  if (conditions.known && onlySurface === 1) forRestoring.push({ id: 'surface-only' });
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
  const reading: ReadingId = engineer
    ? 'engineer-first'
    : gone > mostly
      ? 'replace'
      : share.replace > 0 || zonesIn('replace').length
        ? 'restore-part'
        : zonesIn('not-known').length || !job.zones.length
          ? 'not-known-yet'
          : 'restore';
  return {
    reading,
    forRestoring,
    forReplacing,
    notKnown,
    conditions,
    restore,
    replace,
    lighter,
    deepest: deepestOf(job),
  };
}

function shareOf(ids: readonly string[], job: Job, { known }: Conditions): number {
  const areas = job.zones.filter(({ id }) => ids.includes(id)).map(({ answers }) => answers.area);
  const total = areas.reduce<number>((sum, area) => sum + (typeof area === 'number' ? area : 0), 0);
  // Where nothing is measured, zones are counted instead.
  return known ? total / known : job.zones.length ? areas.length / job.zones.length : 0;
}

/** The deepest measured damage as part of the thickness; null where either is not known. */
function deepestOf(job: Job): number | null {
  const { thickness } = job.site;
  const depths = job.zones.flatMap(({ answers }) =>
    typeof answers.depth === 'number' ? [answers.depth] : [],
  );
  return typeof thickness === 'number' && depths.length ? Math.max(...depths) / thickness : null;
}
