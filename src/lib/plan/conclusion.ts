import type { Job, Prices } from '$lib/answers/job';
import type { OwnFigures } from '$shared/figures';
import { conditionsOf, type Conditions } from './conditions';
import { besideOf, damagedSize } from './damaged';
import { compareOptions, overlapsOf, type Lighter } from './compare';
import {
  ownerOptionIds,
  replacing,
  type OwnerOptionId,
  type OwnerOptions,
  type MeasureId,
} from './options';
import { partsOption, restoreOption } from './main-option';
import type { Plan } from './plan';
import { notKnownYet, pointsOf, type Point, type PointsOfOptions } from './points';
import { deepestOf, sizeOf, volumeShare } from './shares';
import { signsOf } from './signs';
import type { Reach } from './tasks';
import { waitingZones } from './waiting';

/** What an owner is told first. Not a verdict from one number: the points beside it carry it. */
export const conclusionIds = [
  'restore',
  'parts-only',
  'doubtful',
  'part-doubtful',
  'restore-part',
  'replace',
  'laboratory-first',
  'engineer-first',
  'not-known-yet',
] as const;
export type ConclusionId = (typeof conclusionIds)[number];

export interface OwnersConclusion {
  readonly conclusion: ConclusionId;
  /** What speaks for and against each option that there is. */
  readonly points: PointsOfOptions;
  readonly notKnown: readonly Point[];
  readonly conditions: Conditions;
  /**
   * Restore: null where nothing can be, or a part has to be made new; what had to be left out of it
   * is in `leftOut`. Parts: replace those that are broken out or gone and restore the rest; null where
   * there are none.
   */
  readonly options: OwnerOptions;
  /** Zones that restoring does not count, so that it cannot be held against the others. */
  readonly leftOut: readonly string[];
  /** Parts of the whole, 0 to 1; null while its size, thickness or a zone is not known. */
  readonly shares: {
    readonly area: Conditions['share'];
    /** What comes off, of the volume of the whole: least, usual and most. */
    readonly volume: Reach | null;
  };
  /** Restoring against replacing all: `first` means restoring takes less. */
  readonly lighter: Readonly<Record<MeasureId, Lighter>>;
  /** OwnerOptions whose ranges cross, so that neither is said to take less. */
  readonly overlaps: Readonly<
    Record<MeasureId, readonly (readonly [OwnerOptionId, OwnerOptionId])[]>
  >;
  readonly deepest: number | null;
  /** Part of the whole that rings: firm, or weak in its skin alone; null while the whole is not known. */
  readonly rings: number | null;
  /** The same as it is told, with what nobody has sounded, knows or has entered at the most; as the shares beside it. */
  readonly ringsTold: readonly [number, number] | null;
  /** Zones in which the hole goes past the depth to which a patch surely holds, or may. */
  readonly doubtful: readonly string[];
  /** Parts that are made new through their full depth, those that may have to be, of all entered. */
  readonly madeNew: { readonly parts: number; readonly perhaps: number; readonly of: number };
}

/** Whether a zone may sound dull: a skin that has let go is no sound concrete, however thin. */
const mayBeHollow = (job: Job, id: string): boolean => {
  const looseness = job.zones.find((zone) => zone.id === id)?.answers.looseness;
  return !looseness || looseness.some((each) => each === 'hollow' || each === 'rotten');
};

/** Of these nobody says how they sound. */
const unheard = ['not-sounded', 'not-known', 'not-entered'] as const;

/** What rings, as it is told: where that is all that is sound or weak in its skin, the sum of these. */
function toldOf(rings: number | null, { share, told }: Conditions): OwnersConclusion['ringsTold'] {
  if (rings === null || !share || !told) return null;
  const all = Math.abs(rings - share.sound - share.surface) < 1e-9;
  const low = all ? told.sound + told.surface : rings;
  return [low, Math.min(1, low + unheard.reduce((sum, id) => sum + told[id], 0))];
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
): OwnersConclusion {
  const job = plan.drawn;
  const conditions = conditionsOf(job, plan);
  const signs = signsOf(plan, conditions, own);
  const { zonesIn, held, warned, doubtful, mostly, mostlyGone, mostlyFree } = signs;
  const leftOut = job.zones
    .map(({ id }) => id)
    .filter((id) => !plan.zones.some((zone) => zone.id === id));
  const madeNew = zonesIn('break-out', 'replace');
  const options: OwnerOptions = {
    restore: restoreOption(plan, conditions, prices, own),
    parts: partsOption(plan, conditions, prices, own),
    replace: replacing(plan, job, prices, own),
  };
  // A option that leaves something out is less by that alone.
  const skin = signs.skinLeft.length > 0;
  const counted: OwnerOptions = {
    restore: leftOut.length || skin ? null : options.restore,
    parts: skin || leftOut.some((id) => !madeNew.includes(id)) ? null : options.parts,
    replace: options.replace,
  };
  const lighter = compareOptions(counted.restore, options.replace);
  const { share } = conditions;
  const engineer =
    warned('settled-or-rocking') || warned('fire-or-chemical') || zonesIn('engineer').length > 0;
  const waits = waitingZones(plan).size > 0;
  const ringing = zonesIn('sound', 'surface').filter((id) => !mayBeHollow(job, id));
  // What lies between spots rings where it was heard, or is loose in a skin that has not let go.
  const between = madeNew.filter((id) => {
    const beside = besideOf(plan, id);
    return beside === 'sound' || (beside === 'surface' && !mayBeHollow(job, id));
  });
  const rings =
    conditions.whole === null
      ? null
      : (sizeOf(ringing, job) + sizeOf(between, job) - damagedSize(plan, job, between)) /
        conditions.whole;
  const conclusion = ((): ConclusionId => {
    if (engineer) return 'engineer-first';
    if (held('map-cracking').length) return 'laboratory-first';
    if (mostlyGone) return 'replace';
    if (zonesIn('replace').length) return 'restore-part';
    if (zonesIn('not-known').length || !job.zones.length || waits) return 'not-known-yet';
    if (doubtful.length) return mostlyFree ? 'part-doubtful' : 'doubtful';
    return share === null || share['not-entered'] >= mostly ? 'parts-only' : 'restore';
  })();
  return {
    conclusion,
    points: pointsOf(signs, conditions, { restore: !!options.restore, parts: !!options.parts }, [
      { one: 'restore', other: 'replace', lighter },
      {
        one: 'parts',
        other: 'replace',
        lighter: compareOptions(counted.parts, options.replace),
      },
      {
        one: 'restore',
        other: 'parts',
        lighter: compareOptions(counted.restore, counted.parts),
      },
    ]),
    notKnown: notKnownYet(plan, signs, conditions),
    conditions,
    options,
    leftOut,
    shares: { area: share, volume: volumeShare(plan, conditions) },
    lighter,
    overlaps: overlapsOf(options),
    deepest: deepestOf(job),
    rings,
    ringsTold: toldOf(rings, conditions),
    doubtful,
    madeNew: {
      parts: zonesIn('replace').length,
      perhaps: new Set([...doubtful, ...zonesIn('engineer', 'not-known')]).size,
      of: job.zones.length,
    },
  };
}

/** What the conclusion itself says, so that no point beside it says it again. */
const saidAbove: Partial<Record<ConclusionId, Point['id']>> = {
  'laboratory-first': 'map-cracking',
};

/**
 * Of each option the gravest point on each side that stands nowhere above it yet; options of which
 * nothing is left to say are left out.
 */
export function firstPoints({
  conclusion,
  points,
}: Pick<OwnersConclusion, 'conclusion' | 'points'>): Partial<PointsOfOptions> {
  const said = new Set<string>();
  const first = (all: readonly Point[]): readonly Point[] => {
    const next = all.find(
      (point) => point.id !== saidAbove[conclusion] && !said.has(JSON.stringify(point)),
    );
    if (!next) return [];
    said.add(JSON.stringify(next));
    return [next];
  };
  return Object.fromEntries(
    ownerOptionIds.flatMap((id) => {
      const of = points[id];
      if (!of) return [];
      const sides = { speaksFor: first(of.speaksFor), against: first(of.against) };
      return sides.speaksFor.length + sides.against.length ? [[id, sides]] : [];
    }),
  );
}
