import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { Setting, Warning } from '$lib/answers/questions';
import { hazardIds, type HazardId, type MethodId, type StepId } from '$shared/methods';
import { hazardsAt, hazardsOfHolds } from './cautions';
import { kindsFor, openMany, possible, subsets, type Kinds } from './completions';
import { choosing, groupsOf, indices, type Choosing, type Group } from './groups';
import { opensBelow } from './demands';
import { holdsOf, isBeyondSurface, reachOf, verdictOf, type Reach } from './holds';
import { workFor } from './settle';
import { workOrder, type Work } from './steps/work';
import type { Hold, SettledSite, SettledZone, Verdict } from './types';

const following = ['cracks', 'steel', 'freezeThaw', 'salts'] as const;
export type Walked = Choosing | (typeof following)[number];
export const walked: readonly Walked[] = [...choosing, ...following];

/** One verdict and method, with everything that leads to it. */
export interface Tally {
  readonly verdict: Verdict;
  readonly method: MethodId | null;
  /** Completions that come to it. */
  weight: number;
  /** For each question walked: bit i is set when its i-th kind can lead here. */
  readonly seen: Record<Walked, number>;
  /** Indices of the warning sets that can lead here. */
  readonly warnings: Set<number>;
  /** One completion that comes to it. */
  readonly site: SettledSite;
  readonly zone: SettledZone;
}

/** Everything that can come of the answers. */
export interface Survey {
  readonly kinds: Kinds;
  readonly warningSets: readonly (readonly Warning[])[];
  /** Most likely first. */
  readonly tallies: readonly Tally[];
  readonly total: number;
  /** Steps that every completion which is not stopped calls for, in order. */
  readonly commonSteps: readonly StepId[];
  readonly holds: readonly Hold[];
  readonly cautions: readonly HazardId[];
}

/** What one state of the work comes to under each set of warnings. */
interface Endings {
  readonly list: readonly { verdict: Verdict; beyond: boolean; warnings: number[] }[];
  readonly holds: readonly Hold[];
  readonly hazards: readonly HazardId[];
}

function endingsFor(
  site: SettledSite,
  zone: SettledZone,
  reach: Reach,
  depthHold: Hold | null,
  warningSets: Survey['warningSets'],
): Endings {
  const list: { verdict: Verdict; beyond: boolean; warnings: number[] }[] = [];
  const all = new Map<string, Hold>();
  const hazards = new Set<HazardId>();
  warningSets.forEach((warnings, index) => {
    const warnedSite = { ...site, warnings };
    const holds = holdsOf(warnedSite, zone, reach, depthHold);
    const verdict = verdictOf(holds);
    const beyond = isBeyondSurface(holds);
    const same = list.find((ending) => ending.verdict === verdict && ending.beyond === beyond);
    if (same) same.warnings.push(index);
    else list.push({ verdict, beyond, warnings: [index] });
    for (const hold of holds) all.set(hold.rule, hold);
    for (const hazard of hazardsOfHolds(holds, warnedSite, zone)) hazards.add(hazard);
  });
  return { list, holds: [...all.values()], hazards: [...hazards] };
}

/** Walks every kind of completion of the answers and gathers what they come to. */
export function survey(site: SiteAnswers, zone: ZoneAnswers): Survey {
  const kinds = kindsFor(site, zone);
  const warned = openMany('warnings', site.warnings);
  const warningSets = subsets(warned);
  const settings = possible('setting', site.setting);
  const base = { thickness: site.thickness ?? 'unknown', setting: settings[0] as Setting } as const;
  const tallies = new Map<string, Tally>();
  const known = new Map<string, Endings>();
  const hazards = new HazardsAnywhere(settings, worstShortOfStop(warned));
  let common = null as readonly StepId[] | null;
  let total = 0;

  const sizes = following.map((name) => kinds[name].length);
  for (const group of groupsOf(kinds, base, zone.area ?? 'unknown'))
    for (const at of indices(sizes)) {
      const [ki, si, ri, ai] = at as [number, number, number, number];
      const cracks = kinds.cracks[ki] as Kinds['cracks'][number];
      const steel = kinds.steel[si] as Kinds['steel'][number];
      const frost = kinds.freezeThaw[ri] as Kinds['freezeThaw'][number];
      const salts = kinds.salts[ai] as Kinds['salts'][number];
      if (opensBelow(cracks.value) !== opensBelow(group.zone.cracks)) continue;
      const siteNow = { ...group.site, freezeThaw: frost.value, salts: salts.value };
      const zoneNow = { ...group.zone, cracks: cracks.value, ...steel.value };
      const work = workFor({ ...group, site: siteNow, zone: zoneNow });
      const reach = reachOf(zoneNow, group.method, work);
      const moving = cracks.value === 'moving';
      const signature = `${siteNow.element} ${reach.removes} ${reach.cuts} ${reach.deep} ${si} ${moving} ${group.depthHold?.rule}`;
      let endings = known.get(signature);
      if (!endings) {
        endings = endingsFor(siteNow, zoneNow, reach, group.depthHold, warningSets);
        known.set(signature, endings);
      }
      const weight =
        group.weight * cracks.weight * steel.weight * frost.weight * salts.weight * settings.length;
      total += weight * warningSets.length;
      for (const ending of endings.list) {
        const warnings = warningSets[ending.warnings[0] as number] ?? [];
        const method = ending.beyond ? null : group.method;
        const tally = tallyOf(tallies, ending.verdict, method, { ...siteNow, warnings }, zoneNow);
        tally.weight += weight * ending.warnings.length;
        for (const name of choosing) tally.seen[name] |= group.seen[name];
        following.forEach((name, place) => (tally.seen[name] |= 1 << (at[place] as number)));
        for (const index of ending.warnings) tally.warnings.add(index);
      }
      if (endings.list.some((ending) => ending.verdict !== 'stop'))
        common = (common ?? workOrder).filter((id) => work[id]);
      if (endings.list.some((ending) => !ending.beyond)) hazards.note(work, group);
    }
  const holds = new Map<string, Hold>();
  for (const ending of known.values())
    for (const hold of ending.holds) if (!holds.has(hold.rule)) holds.set(hold.rule, hold);
  return {
    kinds,
    warningSets,
    tallies: [...tallies.values()].sort((one, other) => other.weight - one.weight),
    total,
    commonSteps: common ?? [],
    holds: [...holds.values()],
    cautions: hazards.all([...known.values()].flatMap((ending) => ending.hazards)),
  };
}

function tallyOf(
  tallies: Map<string, Tally>,
  verdict: Verdict,
  method: MethodId | null,
  site: SettledSite,
  zone: SettledZone,
): Tally {
  const key = `${verdict} ${method}`;
  let tally = tallies.get(key);
  if (!tally) {
    const seen = Object.fromEntries(walked.map((name) => [name, 0])) as Tally['seen'];
    tally = {
      verdict,
      method,
      weight: 0,
      seen,
      warnings: new Set(),
      site,
      zone,
    };
    tallies.set(key, tally);
  }
  return tally;
}

/** The largest set of warnings that still leaves a surface method: hazards only grow with warnings. */
function worstShortOfStop(warned: {
  yes: readonly Warning[];
  maybe: readonly Warning[];
}): Warning[] {
  const beyond = (warning: Warning) =>
    warning === 'fire-or-chemical' || warning === 'settled-or-rocking';
  return [...new Set([...warned.yes, ...warned.maybe.filter((warning) => !beyond(warning))])];
}

/** Gathers the hazards of steps over every place they may be done in, each place and step looked at once. */
class HazardsAnywhere {
  readonly #noted = new Map<string, { step: StepId; group: Group }>();
  readonly #settings: readonly Setting[];
  readonly #warnings: readonly Warning[];

  constructor(settings: readonly Setting[], warnings: readonly Warning[]) {
    this.#settings = settings;
    this.#warnings = warnings;
  }

  note(work: Work, group: Group): void {
    const coated = group.zone.contamination.some((contaminant) => contaminant.endsWith('-coating'));
    for (const step of Object.keys(work) as StepId[]) {
      const key = `${step} ${group.site.element} ${coated}`;
      if (!this.#noted.has(key)) this.#noted.set(key, { step, group });
    }
  }

  all(others: readonly HazardId[]): HazardId[] {
    const present = new Set(others);
    for (const { step, group } of this.#noted.values())
      for (const setting of this.#settings)
        for (const hazard of hazardsAt(
          step,
          { ...group.site, setting, warnings: this.#warnings },
          group.zone,
        ))
          present.add(hazard);
    return hazardIds.filter((hazard) => present.has(hazard));
  }
}
