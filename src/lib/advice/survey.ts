import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import type { Setting, Warning } from '$lib/answers/questions';
import type { HazardId, MethodId, StepId } from '$shared/methods';
import {
  fixedOf,
  possibilitiesFor,
  openMany,
  possible,
  subsets,
  type Possibilities,
} from './completions';
import { UnderWarnings, worstShortOfStop, type Verdicts } from './verdicts';
import {
  everyStep,
  followingFor,
  followingOf,
  mostCuts,
  mostHoldsAs,
  noteFollowing,
  stepsIn,
  worksFor,
  type Following,
  type Next,
  type Works,
} from './following';
import { groupsOf, type Choosing, type Chosen, type Group } from './groups';
import { Kept } from './kept';
import { HazardsAnywhere } from './hazards-anywhere';
import type { Hold, SettledSite, SettledZone, Verdict } from './types';

export type Walked = Choosing | Following;

/** One verdict and method, with everything that leads to it. */
export interface Tally {
  readonly verdict: Verdict;
  readonly method: MethodId | null;
  /** Completions that come to it. */
  weight: number;
  /** For each question walked: bit i is set when its i-th possibility can lead here. */
  readonly seen: Record<Walked, number>;
  /** Indices of the warning sets that can lead here. */
  readonly warnings: Set<number>;
  /** One completion that comes to it. */
  readonly site: SettledSite;
  readonly zone: SettledZone;
}

/** Everything that can come of the answers. */
export interface Survey {
  readonly possibilities: Possibilities;
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

/** Walks all completions of the answers and gathers what they come to. */
export function survey(site: SiteAnswers, zone: ZoneAnswers): Survey {
  const possibilities = possibilitiesFor(site, zone);
  const warnings = openMany('warnings', site.warnings);
  const warningSets = subsets(warnings);
  const settings = possible('setting', site.setting);
  const base = { thickness: site.thickness ?? 'unknown', setting: settings[0] as Setting } as const;
  const { groups, choices, mostHolds } = groupsOf(possibilities, base, fixedOf(zone));
  const follow = followingOf(possibilities);
  const fits = followingFor(follow);
  const under = new UnderWarnings(warnings, warningSets);
  const hazards = new HazardsAnywhere(settings, worstShortOfStop(warnings));
  const works = new Map<number, readonly Works[]>();
  const known = new Kept<Found>(mostHolds * mostCuts * mostHoldsAs);
  const states = new Map<Verdicts, Map<MethodId, Found>>();
  let common = everyStep;
  let called = 0;
  let total = 0;

  // The answers looked at, of one group after another: thousands made anew would take a third of the time.
  let looked = { group: {} as Group, site: {} as SettledSite, zone: {} as SettledZone };
  /** What a group comes to with one combination of the following questions. */
  const find = (group: Group, next: Next): Found => {
    if (looked.group !== group)
      looked = { group, site: { ...group.site }, zone: { ...group.zone } };
    const site = Object.assign(looked.site, next.site);
    const zone = Object.assign(looked.zone, next.zone);
    const verdicts = under.verdictsOf(site, zone, group);
    let byMethod = states.get(verdicts);
    if (!byMethod) states.set(verdicts, (byMethod = new Map()));
    let found = byMethod.get(group.method);
    if (!found) {
      found = { verdicts, group, next, weight: 0, seen: nothingSeen(), last: null };
      byMethod.set(group.method, found);
    }
    return found;
  };

  // Where the walk stands, shared so that a step of it makes nothing new.
  let group!: Group;
  let next!: Next;
  const findHere = () => find(group, next);
  for (group of groups) {
    const nexts = fits(group.demands);
    let work = works.get(group.worksAs);
    if (!work) works.set(group.worksAs, (work = worksFor(group, nexts)));
    let all = everyStep;
    let any = 0;
    let going = 0;
    for (const cell of work) {
      next = cell.next;
      const key = (group.holdsAs * mostCuts + cell.cuts) * mostHoldsAs + next.holdsAs;
      const found = known.of(key, findHere);
      const { verdicts } = found;
      const here = group.weight * cell.weight * settings.length;
      total += here * warningSets.length;
      found.weight += here;
      noteFollowing(found.seen, cell.seen);
      if (found.last !== group) {
        found.last = group;
        noteChoosing(found.seen, group.seen);
      }
      if (verdicts.goesOn) {
        all &= cell.all;
        going |= cell.any;
        noteFollowing(group.going, cell.seen);
      }
      if (verdicts.surface) {
        any |= cell.any;
        noteFollowing(group.surface, cell.seen);
      }
    }
    common &= group.dirtAll | all;
    if (going) called |= group.dirtAny | going;
    if (any) hazards.note(group.dirtAny | any, group);
  }
  const holds = under.holds();
  // Walls and soffits are one possibility, and so is any salt: where both are possible, neither is named.
  const blurred: readonly string[] = (['element', 'salts'] as const).filter((name) =>
    possibilities[name].some(({ weight }) => weight > 1),
  );
  const asTold = (hold: Hold): Hold => (blurred.length ? without(blurred, hold) : hold);
  return {
    possibilities,
    warningSets,
    tallies: talliesOf([...new Set(known.all)], warningSets),
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

// Written out: it is called tens of thousands of times.
function noteChoosing(seen: Record<Choosing, number>, more: Record<Choosing, number>): void {
  seen.element |= more.element;
  seen.depthAndLooseness |= more.depthAndLooseness;
  seen.contamination |= more.contamination;
  seen.texture |= more.texture;
  seen.finish |= more.finish;
}

function without(names: readonly string[], hold: Hold): Hold {
  if (!hold.facts) return hold;
  return {
    ...hold,
    facts: Object.fromEntries(Object.entries(hold.facts).filter(([name]) => !names.includes(name))),
  };
}

/** What comes to the same holds by the same method. */
interface Found {
  readonly verdicts: Verdicts;
  /** One of the completions, but for its warnings. */
  readonly group: Group;
  readonly next: Next;
  /** How many they are under each set of warnings. */
  weight: number;
  readonly seen: Record<Walked, number>;
  /** The group that was noted last, so that none is noted twice. */
  last: Group | null;
}

// Written out: there are thousands, and spread ones are slow to make and to read.
const nothingSeen = (): Record<Walked, number> => ({
  element: 0,
  depthAndLooseness: 0,
  contamination: 0,
  texture: 0,
  finish: 0,
  cracks: 0,
  steel: 0,
  freezeThaw: 0,
  salts: 0,
});

/** Gathers what was found by verdict and method, most likely first. */
function talliesOf(
  all: readonly Found[],
  warningSets: readonly (readonly Warning[])[],
): readonly Tally[] {
  const tallies = new Map<string, Tally & { readonly lists: Set<readonly number[]> }>();
  for (const { verdicts, group, next, weight, seen } of all)
    for (const { verdict, beyond, sets } of verdicts.list) {
      const stands = beyond ? null : group.method;
      const key = `${verdict} ${stands}`;
      let tally = tallies.get(key);
      if (!tally) {
        const warnings = warningSets[sets[0] as number] as readonly Warning[];
        tally = {
          ...{ verdict, method: stands, weight: 0, seen: nothingSeen() },
          site: { ...group.site, ...next.site, warnings },
          zone: { ...group.zone, ...next.zone },
          ...{ warnings: new Set(), lists: new Set() },
        };
        tallies.set(key, tally);
      }
      tally.weight += weight * sets.length;
      noteFollowing(tally.seen, seen);
      noteChoosing(tally.seen, seen);
      // Many verdicts share one list of sets.
      if (tally.lists.has(sets)) continue;
      tally.lists.add(sets);
      for (const set of sets) tally.warnings.add(set);
    }
  return [...tallies.values()].sort((one, other) => other.weight - one.weight);
}
