import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { questionIds, type QuestionId } from '$lib/answers/questions';
import { methodIds, type MethodId } from '$shared/methods';
import { choose } from './choice';
import { fixedOf, possibilitiesFor, plainSite } from './completions';
import { groupsOf } from './groups';
import { methodsLeft } from './methods-left';
import { survey } from './survey';
import type { Reason } from './types';
import { whyNotOthers } from './why-not';
import type { Standing } from './zone-advice';

/** A method at one moment of the interview. */
interface State {
  chosen: boolean;
  wouldDo: boolean;
  /** A reason against it, from the completions in which it is not chosen. */
  why: Reason;
}
type States = Readonly<Record<MethodId, State>>;
interface Moment {
  readonly states: States;
  /** In how many ways the choice of method can be told apart. */
  readonly ways: number;
}

/** Answers come one by one, so the states before the last answer have been worked out already. */
const remembered = new Map<string, Moment>();
const mostRemembered = 64;

/** Where each method stands when only these answers count. */
function momentOf(site: SiteAnswers, zone: ZoneAnswers): Moment {
  const { element, thickness } = site;
  const { depth, looseness, contamination, texture, cracks, steel, finish, area } = zone;
  // Only these take part in the choice; the others leave every method where it was.
  const key = JSON.stringify([
    element,
    typeof depth === 'number' && thickness,
    depth,
    looseness,
    contamination,
    texture,
    cracks,
    steel,
    finish,
    area,
    zone.makerProfile,
  ]);
  const known = remembered.get(key);
  if (known) return known;
  const states = Object.fromEntries(
    methodIds.map((id) => [id, { chosen: false, wouldDo: false, why: { rule: 'meets-all' } }]),
  ) as Record<MethodId, State>;
  const base = { thickness: thickness ?? 'unknown', setting: plainSite.setting } as const;
  const { choices } = groupsOf(possibilitiesFor(site, zone), base, fixedOf(zone), false);
  for (const { demands } of choices) {
    const choice = choose(demands);
    states[choice.method].chosen = true;
    for (const { method, wouldDo, ...why } of whyNotOthers(choice)) {
      states[method].wouldDo ||= wouldDo;
      if (states[method].why.rule === 'meets-all' || (wouldDo && !states[method].chosen))
        states[method].why = why;
    }
  }
  if (remembered.size >= mostRemembered) remembered.clear();
  const moment = { states, ways: choices.length };
  remembered.set(key, moment);
  return moment;
}

/** Up to so many ways to choose, the whole advice is thought through on a phone between two taps. */
const mostThoughtThrough = 60;

/**
 * The methods that some way of completing the answers leads to without the work being stopped, as
 * the advice counts them. While very much is open, nothing is stopped for sure: all of them.
 */
function goingOn(site: SiteAnswers, zone: ZoneAnswers, ways: number): ReadonlySet<MethodId> {
  if (ways > mostThoughtThrough) return new Set(methodIds);
  return new Set(methodsLeft(survey(site, zone).tallies));
}

/**
 * Each method while the answers come in: standing while some way of completing them still leads
 * to it; would do when it could do the work but never is the gentlest; out otherwise, with the
 * first answer, in the order of the interview, that ruled it out.
 */
export function standingOf(site: SiteAnswers, zone: ZoneAnswers): Standing[] {
  const given = questionIds.filter(
    (id) => site[id as never] !== undefined || zone[id as never] !== undefined,
  );
  const upTo = (count: number) => pick(site, zone, given.slice(0, count));
  const { states: now, ways } = momentOf(...upTo(given.length));
  const going = goingOn(site, zone, ways);
  return methodIds.map((method): Standing => {
    const state = now[method];
    if (state.chosen && going.has(method)) return { method, state: 'standing' };
    // Whichever way the open answers come out, the work stops before it.
    if (state.chosen) return { method, state: 'out', why: { rule: 'held' } };
    const { why } = state;
    if (state.wouldDo) return { method, state: 'would-do', why };
    const at = given.findIndex((_, index) => {
      const then = momentOf(...upTo(index + 1)).states[method];
      return !then.chosen && !then.wouldDo;
    });
    const by = given[at];
    return { method, state: 'out', why, ...(by && { by }) };
  });
}

function pick(
  site: SiteAnswers,
  zone: ZoneAnswers,
  ids: readonly QuestionId[],
): [SiteAnswers, ZoneAnswers] {
  const among = (answers: object) =>
    Object.fromEntries(Object.entries(answers).filter(([id]) => ids.includes(id as QuestionId)));
  return [among(site), among(zone)];
}
