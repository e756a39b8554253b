import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { Setting, Warning } from '$lib/answers/questions';
import type { HazardId, MethodId, StepId } from '$shared/methods';
import { fixedOf, kindsFor, openMany, possible, subsets, type Kinds } from './completions';
import { UnderWarnings, worstShortOfStop, type Endings } from './endings';
import {
  cutsAs,
  everyStep,
  following,
  followingFor,
  followingOf,
  mostCuts,
  mostHoldsAs,
  stepsIn,
  worksFor,
  type Following,
  type Next,
} from './following';
import { choosing, groupsOf, type Choosing, type Chosen, type Group } from './groups';
import { Kept } from './kept';
import { HazardsAnywhere } from './hazards-anywhere';
import type { Hold, SettledSite, SettledZone, Verdict } from './types';

export type Walked = Choosing | Following;
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
  /** The group that came to it last, so that none is noted twice. */
  last?: Group;
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
  /** Steps that some completion which is not stopped calls for, in order. */
  readonly anySteps: readonly StepId[];
  /** One for each way the choice of method can be told apart. */
  readonly choices: readonly Chosen[];
  readonly groups: readonly Group[];
  /** What stands before the work in every completion, gravest first. */
  readonly holds: readonly Hold[];
  /** What stands before it in some completions and not in others, gravest first. */
  readonly possibleHolds: readonly Hold[];
  readonly cautions: readonly HazardId[];
}

/** Walks every kind of completion of the answers and gathers what they come to. */
export function survey(site: SiteAnswers, zone: ZoneAnswers): Survey {
  const kinds = kindsFor(site, zone);
  const warnings = openMany('warnings', site.warnings);
  const warningSets = subsets(warnings);
  const settings = possible('setting', site.setting);
  const base = { thickness: site.thickness ?? 'unknown', setting: settings[0] as Setting } as const;
  const { groups, choices, ends } = groupsOf(kinds, base, fixedOf(zone));
  const follow = followingOf(kinds);
  const fits = followingFor(follow);
  const under = new UnderWarnings(warnings, warningSets);
  const hazards = new HazardsAnywhere(settings, worstShortOfStop(warnings));
  const works = new Map<number, readonly number[]>();
  const tallies = new Map<string, Tally>();
  const known = new Kept<Found>(ends * mostCuts * mostHoldsAs);
  const warned = new Map<Tally, Set<readonly number[]>>();
  let common = everyStep;
  let called = 0;
  let total = 0;

  /** What a group comes to with one combination of the following questions, and where that is counted. */
  const find = (group: Group, next: Next): Found => {
    const siteNow = { ...group.site, ...next.site };
    const zoneNow = { ...group.zone, ...next.zone };
    const endings = under.endingsOf(siteNow, zoneNow, group);
    return {
      endings,
      counted: endings.list.map(({ verdict, beyond, sets }) => {
        const site = { ...siteNow, warnings: warningSets[sets[0] as number] ?? [] };
        const tally = tallyOf(tallies, verdict, beyond ? null : group.method, site, zoneNow);
        // Many endings share one list of sets.
        let lists = warned.get(tally);
        if (!lists) warned.set(tally, (lists = new Set()));
        if (!lists.has(sets)) {
          lists.add(sets);
          for (const set of sets) tally.warnings.add(set);
        }
        return { tally, sets: sets.length };
      }),
    };
  };

  // Where the walk stands, shared so that a step of it makes nothing new.
  let [group, next] = [{} as Group, {} as Next];
  const findHere = () => find(group, next);
  for (group of groups) {
    const nexts = fits(group.demands);
    let work = works.get(group.worksAs);
    if (!work) works.set(group.worksAs, (work = worksFor(group, nexts)));
    let all = everyStep;
    let any = 0;
    let going = 0;
    for (let index = 0; index < nexts.length; index += 1) {
      next = nexts[index] as Next;
      const steps = work[index] as number;
      const key = (group.endsAs * mostCuts + cutsAs(steps)) * mostHoldsAs + next.holdsAs;
      const { endings, counted } = known.of(key, findHere);
      const here = group.weight * next.weight * settings.length;
      total += here * warningSets.length;
      for (const { tally, sets } of counted) {
        tally.weight += here * sets;
        const { seen } = tally;
        note(seen, next);
        if (tally.last === group) continue;
        tally.last = group;
        for (const name of choosing) seen[name] |= group.seen[name];
      }
      if (endings.goesOn) {
        all &= steps;
        going |= steps;
        note(group.going, next);
      }
      if (endings.surface) {
        any |= steps;
        note(group.standing, next);
      }
    }
    common &= group.dirtAll | all;
    if (going) called |= group.dirtAny | going;
    if (any) hazards.note(group.dirtAny | any, group);
  }
  const holds = under.holds();
  // Walls and soffits are one kind: where both are possible, neither is named.
  const blurred = kinds.element.some(({ weight }) => weight > 1);
  const asTold = (hold: Hold): Hold => (blurred ? withoutElement(hold) : hold);
  return {
    kinds,
    warningSets,
    tallies: [...tallies.values()].sort((one, other) => other.weight - one.weight),
    total,
    commonSteps: common === everyStep ? [] : stepsIn(common),
    anySteps: stepsIn(called),
    choices,
    groups,
    holds: holds.certain.map(asTold),
    possibleHolds: holds.possible.map(asTold),
    cautions: hazards.all(under.hazards()),
  };
}

function note(seen: Record<Following, number>, next: Next): void {
  seen.cracks |= next.seen.cracks;
  seen.steel |= next.seen.steel;
  seen.freezeThaw |= next.seen.freezeThaw;
  seen.salts |= next.seen.salts;
}

function withoutElement(hold: Hold): Hold {
  if (!hold.facts) return hold;
  return {
    ...hold,
    facts: Object.fromEntries(Object.entries(hold.facts).filter(([name]) => name !== 'element')),
  };
}

interface Found {
  readonly endings: Endings;
  readonly counted: readonly { readonly tally: Tally; readonly sets: number }[];
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
