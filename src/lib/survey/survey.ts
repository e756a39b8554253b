import type { Job } from '$lib/answers/job';
import type { BarMark, CrackKind, CrackMark, Mark, SpotMark, Survey } from '$lib/answers/survey';
import { valueOf, type OwnFigures } from '$shared/figures';
import { baysOf, type Bay } from './bays';
import { chalkOf, type Chalk } from './chalk';
import { damageByZone, type DrawnDamage } from './damage-by-zone';
import { common, groundArea } from './clip';
import { remarksOn, type Remark } from './faults';
import { lengthOf, tidy, type Ring } from './geometry';
import { foldsOf, outlineOf } from './outline';
import { layPatches, patchNumber, rectangleRing, worstFrost, type Patch } from './patches';
import { removalOf, type Removal } from './removal';
import { sounded, type Soundings } from './soundings';
import { ifWhole, surveyedBay, type IfWhole, type SurveyedBay } from './whole-bays';
import { heardAllOver, lengthByZone, zoneGrounds, zoneOf, type ZoneGround } from './zones';

/** A patch on a drawing. `spots` are indices of its marks. */
export interface DrawnPatch extends Patch {
  /** Id of the zone most of its damage belongs to; absent where no zone is known there. */
  readonly zone?: string;
  /** Where to chalk it on, from two edges or joints. */
  readonly chalk: Chalk;
}

/** What a drawing comes to. */
export interface SurveyResult extends Soundings {
  /** m2 */
  readonly area: number;
  readonly patches: readonly DrawnPatch[];
  /** Indices of spots too small to break out. */
  readonly skipped: readonly number[];
  readonly bays: readonly SurveyedBay[];
  /** m */
  readonly sawCut: number;
  readonly ifWhole: IfWhole | null;
  /** m2 by zone; places no zone claims are in `unclaimed`. */
  readonly areas: Readonly<Record<string, number>>;
  readonly unclaimed: number;
  /** m by kind; `not-sure` where the mark does not say. */
  readonly cracks: Readonly<Partial<Record<CrackKind | 'not-sure', number>>>;
  /** m by zone. */
  readonly cracksByZone: Readonly<Record<string, number>>;
  /** m of what stands upright, to be done by hand beside it: together and by zone. */
  readonly upright: number;
  readonly uprightByZone: Readonly<Record<string, number>>;
  /** m of bars that show. */
  readonly bars: number;
  /** m of bar to free by zone: what shows, and at both ends on past the rust (figure `bar.along`). */
  readonly barsByZone: Readonly<Record<string, number>>;
  /** How deep, what cracks and whether a bar shows, by zone. */
  readonly damage: Readonly<Record<string, DrawnDamage>>;
  /** What patches take off, as far as depths are known. */
  readonly removal: Removal;
  readonly remarks: readonly Remark[];
  /** Ids of zones all of whose ground was heard. */
  readonly sounded: readonly string[];
}

const remembered = new WeakMap<Survey, { key: string; result: SurveyResult }>();

/** What the drawing of a job comes to; null without one. */
export function surveyOf(job: Job, own: OwnFigures | undefined = job.own): SurveyResult | null {
  if (!job.survey) return null;
  const ids = job.zones.map(({ id }) => id);
  const key = JSON.stringify([ids, job.rest, job.site.freezeThaw, job.site.thickness, own]);
  const known = remembered.get(job.survey);
  if (known?.key === key) return known.result;
  const result = resultOf(job.survey, job, ids, own);
  remembered.set(job.survey, { key, result });
  return result;
}

type Placed<M> = M & { readonly index: number };

/** Marks of one kind, in an order that is theirs and not that of the list. */
function marksOf<K extends Mark['kind']>(
  survey: Survey,
  kind: K,
): Placed<Extract<Mark, { kind: K }>>[] {
  return (survey.marks ?? [])
    .flatMap((mark, index) =>
      mark.kind === kind ? [{ mark, index, text: JSON.stringify(mark) }] : [],
    )
    .sort((one, other) => (one.text < other.text ? -1 : one.text > other.text ? 1 : 0))
    .map(({ mark, index }) => ({ ...(mark as Extract<Mark, { kind: K }>), index }));
}

function resultOf(
  survey: Survey,
  { site, rest }: Job,
  ids: readonly string[],
  own: OwnFigures | undefined,
): SurveyResult {
  const slab = outlineOf(survey.slab);
  const bays = baysOf(slab, [...(survey.joints ?? []), ...foldsOf(survey.slab)]);
  const area = groundArea([slab]) / 1e6;
  const spots = marksOf(survey, 'spot');
  const cracks = marksOf(survey, 'crack');
  const bars = marksOf(survey, 'bar');
  const { zones, unclaimed } = groundsIn(survey, slab, ids, rest);
  const layout = layPatches(
    spots.map(({ corners }) => corners),
    worstFrost(site),
    own,
    bays,
  );
  const patches = layout.patches.map((patch, place): DrawnPatch => {
    const mine = patch.spots.map((at) => spots[at] as Placed<SpotMark>);
    const zone = zoneOfPatch(patch, mine, zones, ids);
    const depth = deepest(mine);
    return {
      ...patch,
      number: patchNumber(patch, place),
      spots: mine.map(({ index }) => index).sort((a, b) => a - b),
      ...(zone !== undefined && { zone }),
      ...(depth !== undefined && { depth }),
      chalk: chalkOf(patch, bays.find(({ id }) => id === patch.bay) as Bay),
    };
  });
  const surveyed = bays.map((bay) => surveyedBay(bay, patches, own));
  const taps = marksOf(survey, 'tap');
  const soundings = sounded(taps, survey, bays, spots, cracks, own);
  const outlined = soundings.taps.outline;
  const dull = taps.filter(({ index }) => outlined.includes(index)).map(({ at }) => at);
  const uprights = marksOf(survey, 'upright').map(({ line }) => line);
  return {
    area,
    patches,
    skipped: layout.skipped
      .map((at) => (spots[at] as Placed<SpotMark>).index)
      .sort((a, b) => a - b),
    bays: surveyed,
    sawCut: total(patches.map(({ saw }) => saw)),
    ifWhole: ifWhole(surveyed),
    ...soundings,
    areas: Object.fromEntries(zones.map((zone) => [zone.id, zone.area])),
    unclaimed,
    cracks: byKind(cracks),
    cracksByZone: cracksIn(cracks, zones),
    upright: total(uprights.map((line) => lengthOf(line) / 1000)),
    uprightByZone: summed(uprights.map((line) => lengthByZone(line, zones, beside))),
    bars: total(bars.map(({ line }) => lengthOf(line) / 1000)),
    barsByZone: barsIn(bars, zones, own),
    damage: damageByZone({ spots, cracks, bars, dull }, zones),
    removal: removalOf(patches, area, site.thickness, own),
    remarks: remarksOn(survey, ids),
    sounded: heardAllOver(zones, bays, soundings.heard),
  };
}

function groundsIn(survey: Survey, slab: Ring, ids: readonly string[], rest: string | undefined) {
  const spots = marksOf(survey, 'spot');
  const painted = marksOf(survey, 'zone');
  return zoneGrounds(
    slab,
    ids,
    spots.flatMap((spot) => (spot.zone === undefined ? [] : [claim(spot.zone, spot.corners)])),
    painted.map(({ zone, corners }) => claim(zone, corners)),
    rest ?? onlyUnclaimed(ids, [...spots, ...painted]),
  );
}

/** The ground of each zone of a job with a drawing, in mm; nothing without one. */
export const groundsOf = ({ survey, zones, rest }: Job): readonly ZoneGround[] =>
  survey
    ? groundsIn(
        survey,
        outlineOf(survey.slab),
        zones.map(({ id }) => id),
        rest,
      ).zones
    : [];

/** How far off something upright its zone is looked for, mm. */
const beside = 5;

const claim = (zone: string, corners: SpotMark['corners']) => ({ zone, ring: tidy(corners) });
const total = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

/** The one zone nothing is drawn for is what the others leave. */
function onlyUnclaimed(
  ids: readonly string[],
  marks: readonly { readonly zone?: string }[],
): string | undefined {
  const bare = ids.filter((id) => !marks.some(({ zone }) => zone === id));
  return bare.length === 1 ? bare[0] : undefined;
}

/** The zone that most of the damage in a patch says, or else lies in. */
function zoneOfPatch(
  patch: Patch,
  spots: readonly SpotMark[],
  zones: readonly ZoneGround[],
  ids: readonly string[],
): string | undefined {
  const ring = patch.corners ?? rectangleRing(patch);
  const said = spots.map((spot) => {
    const outline = tidy(spot.corners);
    const known = spot.zone !== undefined && ids.includes(spot.zone);
    return { outline, zone: known ? spot.zone : zoneOf(outline, zones) };
  });
  const [first] = said;
  if (said.every(({ zone }) => zone === first?.zone)) return first?.zone;
  const sums = new Map<string, number>();
  for (const { outline, zone } of said) {
    if (zone === undefined) continue;
    const mine = groundArea(common(outline, ring));
    sums.set(zone, (sums.get(zone) ?? 0) + mine);
  }
  return [...sums].sort(
    ([one, mine], [other, theirs]) => theirs - mine || ids.indexOf(one) - ids.indexOf(other),
  )[0]?.[0];
}

function deepest(spots: readonly SpotMark[]): number | undefined {
  const depths = spots.flatMap(({ depth }) => depth ?? []);
  return depths.length === spots.length ? Math.max(...depths) : undefined;
}

function byKind(cracks: readonly CrackMark[]): SurveyResult['cracks'] {
  const sums: Partial<Record<CrackKind | 'not-sure', number>> = {};
  for (const { crack = 'not-sure', line } of cracks)
    sums[crack] = (sums[crack] ?? 0) + lengthOf(line) / 1000;
  return sums;
}

const cracksIn = (cracks: readonly CrackMark[], zones: readonly ZoneGround[]) =>
  summed(
    cracks.map(({ zone, line }) =>
      zone === undefined ? lengthByZone(line, zones) : new Map([[zone, lengthOf(line) / 1000]]),
    ),
  );

/** A bar that lies in several zones is taken on in each by its share of it. */
function barsIn(bars: readonly BarMark[], zones: readonly ZoneGround[], own?: OwnFigures) {
  const on = (2 * valueOf('bar.along', own)) / 1000;
  return summed(
    bars.map(({ zone, line }) => {
      const long = lengthOf(line) / 1000;
      const shown = zone === undefined ? lengthByZone(line, zones) : new Map([[zone, long]]);
      return new Map([...shown].map(([id, part]) => [id, part * (1 + on / long)]));
    }),
  );
}

function summed(maps: readonly ReadonlyMap<string, number>[]): Record<string, number> {
  const sums: Record<string, number> = {};
  for (const map of maps) for (const [id, length] of map) sums[id] = (sums[id] ?? 0) + length;
  return sums;
}
