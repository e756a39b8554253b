import type { HandsOver } from '$lib/safety/hands';
import { mostCrew } from '$lib/safety/other-crew';
import { toldTime, usualMinutes, type VibrationLimitId } from '$lib/safety/vibration';
import type { Say } from '$lib/words/types';
import { toolWords } from './tools';

const valueNames: Readonly<Record<VibrationLimitId, string>> = {
  action: 'the action value',
  limit: 'the limit value',
};

/** Minutes before a value, rounded down: "53 minutes", "1.4 hours". */
export function minutesInShort(say: Say, minutes: number): string {
  const { value, unit } = toldTime(minutes);
  return say.hours(unit === 'h' ? value : value / 60);
}

/** Planned hours to the tenth; below one to the minute. */
export const hoursInShort = (say: Say, hours: number): string =>
  say.hours(hours < 1 ? hours : Math.round(hours * 10) / 10);

/** "Day 1", "Days 1 to 3", "Days 1 and 3": only days that follow each other are told as one. */
export const inDays = (say: Say, days: readonly number[]): string => {
  const runs: [number, number][] = [];
  for (const day of days) {
    const run = runs.at(-1);
    if (run?.[1] === day - 1) run[1] = day;
    else runs.push([day, day]);
  }
  const told = runs.map(([first, last]) => (first === last ? `${first}` : `${first} to ${last}`));
  return `${days.length === 1 ? 'Day' : 'Days'} ${say.list(told)}`;
};

const count = (say: Say, number: number, one: string, many: string): string =>
  `${say.number(number)}\u00A0${number === 1 ? one : many}`;

/** That more people are no help: they would have more of the same work in a day. */
export const tooFew = (say: Say, crew: number): string =>
  `even ${count(say, mostCrew(crew), 'person', 'people')} are too few`;

/** What takes turns, or takes longer; where nothing of both helps, a gentler tool alone. */
function turnsLine(say: Say, { over, turns, shaking, crew, inHand: [most] }: HandsOver): string {
  const turn = say.hours(say.valueOf('share.step'));
  if (!turns)
    return `No number of people solves that: not even ${turn} fits. It takes a gentler tool, or another method.`;
  const longer =
    turns.days > shaking
      ? `${count(say, turns.days, 'day', 'days')} in place of ${say.number(shaking)}`
      : '';
  const other = turns.crew;
  const kept = `To stay ${over === 'limit' ? 'within' : 'under'} ${valueNames[over]}`;
  if (other?.people === crew) return `${kept}: all of you in equal turns, or a gentler tool.`;
  if (other) {
    const people = `${count(say, other.people, 'person', 'people')} in place of ${say.number(crew)}${other.equal ? ' in equal turns' : ''}`;
    return `${kept}: ${people}${longer && `, or ${longer}`}, or a gentler tool.`;
  }
  const each = most
    ? `at most ${minutesInShort(say, usualMinutes(most.minutes[over]))} a person a day`
    : '';
  return `${kept}: ${[longer || 'the same work spread evenly over its days', each].filter(Boolean).join(', ')}; ${tooFew(say, crew)}. Or a gentler tool, or another method.`;
}

/** That days of the plan do not hold for the hands, and what would: a title and two sentences. */
export function handsLines(
  say: Say,
  over: HandsOver,
): { readonly title: string; readonly lines: readonly string[] } {
  const [most] = over.inHand;
  const days = inDays(say, over.days);
  const one = over.days.length === 1;
  // Past the action value the employer has to bring it down; only the limit value ends the day.
  const fails =
    over.over === 'limit'
      ? `${one ? 'does' : 'do'} not hold for the hands`
      : `${one ? 'passes' : 'pass'} the action value for the hands, not the limit value`;
  const had = most
    ? `One person has the ${toolWords[most.tool].name} for ${hoursInShort(say, most.hours)}; usually ${valueNames.action} comes after ${minutesInShort(say, usualMinutes(most.minutes.action))}, ${valueNames.limit} after ${minutesInShort(say, usualMinutes(most.minutes.limit))}.`
    : '';
  return {
    title: `${days} ${fails}.`,
    lines: [had, turnsLine(say, over)].filter(Boolean),
  };
}
