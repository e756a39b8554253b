import { capital } from '$lib/words/by-language';
import { toStep } from '$lib/safety/bounds';
import type { SharingOut } from '$lib/safety/share-out';
import {
  toldTime,
  type MinutesBefore,
  type VibrationLimitId,
  type VibrationOfDay,
} from '$lib/safety/vibration';
import type { Say } from '$lib/words/types';
import { boundsWords } from './noise';
import { toolWords } from './tools';

/** The two daily values of vibration. */
export const vibrationLimitWords = (
  say: Say,
): Readonly<Record<VibrationLimitId, { readonly name: string; readonly means: string }>> => ({
  action: {
    name: `action value, ${say.figure('vibration.action')} over ${say.figure('vibration.day')} (${say.figure('vibration.action-points')})`,
    means: 'From here on, bring it down: other tools, shorter turns, health checks.',
  },
  limit: {
    name: `limit value, ${say.figure('vibration.limit')} over ${say.figure('vibration.day')}`,
    means: 'Nobody should pass this. In the European Union nobody may. The US has no legal limit.',
  },
});

/** One person's vibration of the day. */
export function vibrationSentence(
  say: Say,
  { points, daily, standing, unknown }: VibrationOfDay,
): string {
  const amount = `${boundsWords(say, toStep(points, 1), 'points')}; A(8) ${boundsWords(say, toStep(daily, 0.1), 'm/s²')}.`;
  if (standing.limit === 'over')
    return `Over the limit value: ${amount} Take less time or another tool.`;
  if (standing.limit === 'may-be-over') return `It may pass the limit value: ${amount}`;
  if (standing.action === 'over') return `Over the action value: ${amount}`;
  if (standing.action === 'may-be-over') return `It may pass the action value: ${amount}`;
  return unknown.length ? `We cannot tell: ${amount}` : `Under the action value: ${amount}`;
}

/** The tools whose vibration nobody has published. */
export function unknownVibrationSentence(say: Say, { unknown }: VibrationOfDay): string | null {
  if (!unknown.length) return null;
  const names = say.list(unknown.map((tool) => toolWords[tool].name));
  return `We found no published vibration for: ${names}. Type the maker’s figure. It can understate what work gives, so we count it up to double.`;
}

/** Trigger time of one tool before a limit. */
export function minutesSentence(say: Say, { atHigh, atTypical, atLow }: MinutesBefore): string {
  const time = (minutes: number) => {
    const { value, unit } = toldTime(minutes);
    return `${say.number(value)} ${unit}`;
  };
  const ends =
    atHigh === atLow
      ? time(atHigh)
      : `${time(atHigh)} with a rough tool, ${time(atLow)} with a gentle one`;
  return atTypical === undefined || atHigh === atLow
    ? ends
    : `${ends}, ${time(atTypical)} with a typical one`;
}

/** How many people or days bring everybody under what is aimed at. */
export function sharingSentence(say: Say, shared: SharingOut): string {
  const names = (tools: SharingOut['unknown']) =>
    say.list(tools.map((tool) => toolWords[tool].name));
  if (shared.can === 'not')
    return `No number of people brings that about: ${say.hours(say.valueOf('share.step'))} with the ${names(shared.tools)} already takes more than one person may have in a day.`;
  const { people, days, proven, atLeast, unknown } = shared;
  if (people === 0) return 'There is nothing to share out.';
  const who = people === 1 ? 'one person can' : `${say.number(people)} people can`;
  const counted = unknown.length ? `Of what is known, ${who}` : capital(who);
  const inDays = days === 1 ? 'one day' : `${say.number(days)} days`;
  return [
    `${counted} do it all in one day; your crew needs ${inDays}.`,
    ...(proven
      ? []
      : [`It may be possible with fewer, but not with fewer than ${say.number(atLeast)}.`]),
    ...(unknown.length
      ? [`This leaves out what is not known: ${names(unknown)}. More may be needed.`]
      : []),
  ].join(' ');
}
