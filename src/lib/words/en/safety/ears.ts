import type { EarsOver } from '$lib/safety/ears-over';
import type { Say } from '$lib/words/types';
import { count } from '$words/count';
import { hoursInShort, inDays, minutesInShort } from './hands';
import { wearAndMore } from './noise';
import { toolWords } from './tools';

/** Hours a person may have of a tool with plugs and muffs together on, rounded down. */
const mostOf = (say: Say, most: number): string => minutesInShort(say, most * 60);

/** That not even plugs and muffs together keep the ears on days of the plan, and what helps: a title and two sentences. */
export function earsLines(
  say: Say,
  { days, tool, hours, needed, takenOff, most, people, crew }: EarsOver,
): { readonly title: string; readonly lines: readonly string[] } {
  const up = (value: number) => say.number(Math.ceil(value - 1e-9));
  const turns =
    most === null
      ? 'Not even a quarter of an hour of it fits.'
      : `With both on, one person has ${mostOf(say, most)} of it${people > crew ? `: ${count(people, 'person', 'people')} in equal turns` : ', in equal turns'}.`;
  return {
    title: `${inDays(days)} ${days.length === 1 ? 'is' : 'are'} too loud, even for plugs and muffs together.`,
    lines: [
      `One person has the ${toolWords[tool].name} for ${hoursInShort(say, hours)}; as tools usually are, ${up(needed)}\u00A0dB must come off at the ear, and both take off ${say.number(Math.floor(takenOff + 1e-9))}\u00A0dB.`,
      `${turns} What helps: ${wearAndMore}.`,
    ],
  };
}

/** The same at a step of the plan, in a line. */
export const earsAtStep = (say: Say, { most }: EarsOver): string =>
  most === null
    ? 'Too loud, even for plugs and muffs together: take another tool.'
    : `Too loud for whole days, even with plugs and muffs together: ${mostOf(say, most)} a person.`;
