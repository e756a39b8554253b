import type { SiteAnswers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { methodIds, type MethodId } from '$shared/methods';
import { choose, judgeBy, type Choice, type Methods } from './choice';
import { demandsAsked, demandsOf } from './demands';
import { fullDepthHold } from './hole';
import { holdsOf, isBeyondSurface, reachOf, verdictOf } from './holds';
import { OpenAnswers } from './open-answers';
import { Reached, type Need } from './reached';
import { reasonsFor } from './steps/all';
import type { Situation } from './steps/work';
import type { Survey } from './survey';
import { targetRules } from './target';
import {
  targetParts,
  type Advice,
  type Hold,
  type Reason,
  type Rejection,
  type SettledSite,
  type SettledZone,
  type Step,
  type Target,
  type TargetPart,
} from './types';
import { whyNot } from './why-not';
import { choiceReasons } from './why-this';

interface Completion {
  readonly site: SettledSite;
  readonly zone: SettledZone;
}

/** Whether two reasons say the same. */
const same = (one: Reason, other: Reason): boolean =>
  one.rule === other.rule &&
  (one.facts === other.facts || JSON.stringify(one.facts) === JSON.stringify(other.facts));

/** Whether the rule that gave a reason where it was told gives it; no other rule gives the same. */
function giverOf<S>(
  rules: readonly ((situation: S) => Reason | false)[],
  told: S,
  reason: Reason,
): (situation: S) => boolean {
  type Rule = (typeof rules)[number];
  const gives = (rule: Rule, situation: S): boolean => {
    const found = rule(situation);
    return found && same(found, reason);
  };
  const own = rules.find((rule) => gives(rule, told)) as Rule;
  return (situation) => gives(own, situation);
}

/**
 * What is told of open answers as sure, because it is so in every possibility. Whatever is told is
 * what rules say of the likeliest; here a possibility is sought of which they say something else, by
 * asking them again for every answer that they look at. Where none is found, there is none.
 * `tests/unit/possibilities.test.ts` compares with plain enumeration.
 */
export class TrueOfAll {
  readonly #open: OpenAnswers;
  /** What the rules look at. */
  readonly #asked: Situation & Choice;
  readonly #reached: Reached;
  readonly #mayStop: boolean;
  readonly #leastWarned: SettledSite;

  constructor(
    site: SiteAnswers,
    zone: TriedAnswers,
    {
      choices,
      groups,
      possibilities,
      tallies,
    }: Pick<Survey, 'choices' | 'groups' | 'possibilities' | 'tallies'>,
  ) {
    const ways = waysAmong(choices);
    const open = new OpenAnswers(site, zone);
    const demands = demandsAsked(open.site, open.zone);
    const tools = () => open.look('methods', ways);
    this.#open = open;
    this.#reached = new Reached(groups, possibilities);
    this.#mayStop = tallies.some(({ verdict }) => verdict === 'stop');
    this.#asked = {
      site: open.site,
      zone: open.zone,
      demands,
      // Taken for granted where a rule looks at it; whether it is so is seen after (`#isSo`).
      get method() {
        return tools().method;
      },
      get rest() {
        return tools().rest;
      },
      get spent() {
        return tools().spent;
      },
      get passedOver() {
        return choose(demands).passedOver;
      },
      get shortfallOf() {
        return judgeBy(demands);
      },
    };
    const least = site.warnings ? site.warnings.yes : [];
    this.#leastWarned = Object.create(open.site, {
      warnings: { get: () => (open.isSeen('warnings') ? open.site.warnings : least) },
    });
  }

  /** The step with those of its reasons that hold in every possibility that goes on. */
  step(step: Step, { site, zone }: Completion): Step {
    const demands = demandsOf(site, zone);
    const told = { site, zone, ...choose(demands) };
    const rules = reasonsFor(step.id);
    const why = step.why.filter((reason) => {
      const gives = giverOf(rules, told, reason);
      return !this.#open.some(() => !gives(this.#asked) && this.#isSo('goesOn'));
    });
    return { ...step, why };
  }

  /** The reasons for the method; those that do not hold in every possibility told as the likeliest. */
  reasons(reasons: readonly Reason[], { site, zone }: Completion): readonly Reason[] {
    const told = choose(demandsOf(site, zone));
    return reasons.map((reason) => {
      const gives = giverOf(choiceReasons, told, reason);
      return this.#open.some(() => !gives(this.#asked) && this.#isSo('any'))
        ? { ...reason, likeliest: true }
        : reason;
    });
  }

  /** What of the target is not the same in every possibility. */
  openTargets(target: Target): TargetPart[] {
    return targetParts.filter((part) => {
      const told = String(target[part]);
      return this.#open.some(
        () =>
          String(targetRules[part](this.#asked)) !== told &&
          // Where no surface method stands, none leaves anything.
          this.#isSo(part === 'leaves' ? 'surface' : 'any'),
      );
    });
  }

  /**
   * One rejection for each method that no possibility advises: what is said of it in all of them, or
   * in the likeliest, told as such.
   * @param left the methods that some possibility advises
   */
  rejections(left: readonly MethodId[], likeliestFirst: readonly Advice[]): Rejection[] {
    return methodIds
      .filter((method) => !left.includes(method))
      .map((method) => {
        const of = (advice: Advice) => advice.rejections.filter((each) => each.method === method);
        // Only a stop keeps from it what some case comes to: it is no worse than the rest, and waits.
        const waits = likeliestFirst.find(({ underneath }) => underneath === method);
        const first = (waits ? [waits] : likeliestFirst).flatMap(of);
        // What holds the work is told with its reasons; a method it holds needs no other.
        const told = (first.find(({ rule }) => rule !== 'held') ?? first[0]) as Rejection;
        const sure = told.rule === 'held' || !this.#open.some(() => this.#saysElse(told));
        return sure ? told : { ...told, likeliest: true as const };
      });
  }

  /** Whether something else is said against a method here. */
  #saysElse(told: Rejection): boolean {
    const here = whyNot(this.#asked, told.method);
    if (!here || same(here, told)) return false;
    // Where it is the test patches that leave none, each says how it failed, whatever holds the work.
    if (this.#asked.spent) return this.#isSo('any');
    return this.#isSo(here.wouldDo ? 'goesOn' : 'surface');
  }

  /**
   * Whether what was looked at is so in some possibility: the method taken for granted is the one
   * chosen, and what is needed is given. What is quickest found out comes first.
   */
  #isSo(need: Need): boolean {
    const { looks } = this.#open;
    const taken = this.#open.isSeen('methods') ? this.#asked : null;
    if (!this.#reached.mayBe(looks, taken, this.#mayStop ? need : 'any')) return false;
    if (!this.#gives(need)) return false;
    if (taken) {
      const { method, rest, spent } = choose(taken.demands);
      if (taken.method !== method || taken.rest !== rest || taken.spent !== spent) return false;
    }
    return true;
  }

  #gives(need: Need): boolean {
    if (need === 'any' || !this.#mayStop) return true;
    const holds = this.#holds();
    return need === 'goesOn' ? verdictOf(holds) !== 'stop' : !isBeyondSurface(holds);
  }

  /** What stands before the work. More warnings only add to it, so those nobody looked at are left out. */
  #holds(): readonly Hold[] {
    const { zone } = this.#open;
    const site = this.#leastWarned;
    const { method, spent } = this.#open.isSeen('methods')
      ? this.#asked
      : choose(this.#asked.demands);
    return holdsOf(site, zone, reachOf(site, zone, method, spent), fullDepthHold(site, zone));
  }
}

/** Each way of choosing once. */
function waysAmong(all: readonly Methods[]): readonly Methods[] {
  const ways = new Map(all.map((each) => [`${each.method} ${each.rest} ${each.spent}`, each]));
  return [...ways.values()];
}
