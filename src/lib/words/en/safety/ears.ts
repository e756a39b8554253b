import type { KeepOff } from '$lib/safety/bare-ears';
import type { EarsOver } from '$lib/safety/ears-over';
import type { Say } from '$lib/words/types';
import { count } from '$words/count';
import { hoursInShort, inDays, minutesInShort, tooFew } from './hands';
import { wearAndMore } from './noise';
import { toolWords } from './tools';

/** Hours a person may have of a tool with plugs and muffs together on, rounded down. */
const mostOf = (say: Say, most: number): string => minutesInShort(say, most * 60);

/** That not even plugs and muffs together keep the ears on days of the plan, and what helps: a title and two sentences. */
export function earsLines(
  say: Say,
  { days, tool, hours, needed, takenOff, most, crew, with: other }: EarsOver,
): { readonly title: string; readonly lines: readonly string[] } {
  const up = (value: number) => say.number(Math.ceil(value - 1e-9));
  const name = toolWords[tool].name;
  const otherCrew = !other
    ? `; ${tooFew(say, crew)}`
    : other.people > crew
      ? `: ${count(other.people, 'person', 'people')} in place of ${say.number(crew)}${other.equal ? ' in equal turns' : ''}`
      : ', in equal turns';
  const turns =
    most === null
      ? `Not even ${say.hours(say.valueOf('share.step'))} with the ${name} fits.`
      : `With both on, one person has ${mostOf(say, most)} at the ${name} (planned: ${hoursInShort(say, hours)})${otherCrew}.`;
  return {
    title: `${inDays(say, days)} ${days.length === 1 ? 'is' : 'are'} too loud, even for plugs and muffs together.`,
    lines: [
      `Usually ${up(needed)}\u00A0dB must come off at the ear; both take off ${say.number(Math.floor(takenOff + 1e-9))}\u00A0dB.`,
      `${turns} What helps: ${wearAndMore}.`,
    ],
  };
}

/** The same at a step of the plan, in a line. */
export const earsAtStep = (say: Say, most: number | null): string =>
  most === null
    ? 'Too loud, even for plugs and muffs together: take another tool.'
    : `Loud: ${mostOf(say, most)} a person, with plugs and muffs on.`;

const metresInFoot = 0.3048;
/** A distance to stay away, up to the next that can be paced off: 5 m, or 10 ft. */
const awayOf = (say: Say, metres: number): string => {
  const step = say.units === 'us' ? 10 * metresInFoot : 5;
  return say.distance(Math.ceil(metres / step - 1e-9) * step);
};

/** Who wears protectors, and how far others stay who do not. */
export function keepOffLine(say: Say, { tool, metres }: KeepOff): string {
  const where = metres === null ? 'outside' : `${awayOf(say, metres)} away`;
  return `Everybody at work wears ear protectors; others stay ${where} while the ${toolWords[tool].name} runs.`;
}
