import { lowered } from '$lib/words/by-language';
import type { Ears, Fills, Help } from '$lib/safety/help';
import { methodWords } from '$words/methods';
import { stepWords } from '$words/steps';
import type { Say } from '$lib/words/types';
import { toolWords } from './tools';

const limitOf: Readonly<Record<Fills, string>> = {
  vibration: 'the vibration action value',
  noise: 'the noise limit',
};
const times = (say: Say, part: number): string => `${say.number(Math.round(10 * part) / 10)} times`;

const protectors: Readonly<Record<Ears['by'], string>> = {
  one: 'and a good protector takes that off',
  both: 'and plugs and muffs together take that off',
  neither: 'more than plugs and muffs together take off',
};
/** What has to come off at the ear, and what does it. */
const offEars = (say: Say, { needed, by }: Ears): string =>
  `${say.number(Math.ceil(needed - 1e-9))}\u00A0dB must come off at the ear, ${protectors[by]}.`;

/** What a change leaves, and what then protects. */
function left(say: Say, { then, still, ears }: Help): string {
  if (then <= 1 + 1e-9)
    return 'Then usual values stay under the vibration action value and the noise limit.';
  return [
    `That leaves ${times(say, then)} ${limitOf[still]}.`,
    ...(still === 'vibration'
      ? ['Gloves do not take it away. Spread the work over more days, or give it to a specialist.']
      : []),
    ...(ears ? [`Then ${offEars(say, ears)}`] : []),
    ...(ears?.by === 'neither'
      ? ['Give the work to a specialist, or spread it over more days.']
      : []),
  ].join(' ');
}

/** What is too much, which change helps most, and what it leaves. */
export const helpSentence = (say: Say, help: Help): string =>
  [
    `With usual tools the day takes ${times(say, help.now)} ${limitOf[help.over]}.`,
    ...(help.earsNow ? [`As planned, ${offEars(say, help.earsNow)}`] : []),
    changeLine(say, help),
    left(say, help),
  ].join(' ');

function changeLine(say: Say, help: Help): string {
  const steps = stepWords(say);
  switch (help.change) {
    case 'people':
      return `What helps most: ${say.number(help.people)} people share this person’s loud and shaking work evenly.`;
    case 'tool':
      return `What helps most: for “${steps[help.step].name}” take the ${toolWords[help.to].name} in place of the ${toolWords[help.from].name}.`;
    case 'method':
      return `What helps most: ${lowered(methodWords(say)[help.to].name)} for “${steps[help.step].name}”${help.specialist ? ', by a specialist' : ''}.`;
  }
}

/** Hours to the minute: nobody measures finer. */
export const minuteHours = (say: Say, hours: number): string =>
  say.hours(Math.round(hours * 60) / 60);

/** "1.5 to 2 h", or one number where both are the same when said. */
export function hoursBetween(say: Say, [least, most]: readonly [number, number]): string {
  return say.ends(minuteHours(say, least), minuteHours(say, most));
}
