import { lowered } from '$lib/words/by-language';
import type { Ears } from '$lib/safety/ears';
import type { Fills, Help } from '$lib/safety/help';
import { methodWords } from '$words/methods';
import { stepWords } from '$words/steps';
import type { Say } from '$lib/words/types';
import { toolWords } from './tools';

const limitOf: Readonly<Record<Fills, string>> = {
  vibration: 'the vibration action value',
  noise: 'the noise limit',
};
/** Usual values are known to a few decibels: from ten times on, tenths would only look exact. */
const times = (say: Say, part: number): string =>
  `${say.number(part < 10 ? Math.round(10 * part) / 10 : Math.round(part))} times`;

/** What stands behind what a change leaves. */
const protectors: Readonly<Record<Ears['by'], string>> = {
  one: 'a good protector is then enough',
  both: 'plugs and muffs together are then enough',
  neither: 'plugs and muffs together are still not enough',
};

/** What a change leaves, and what then protects. */
function left(say: Say, { then, over, still, ears }: Help): string {
  if (then <= 1 + 1e-9)
    return 'Then usual values stay under the vibration action value and the noise limit.';
  const [first, ...more] = [
    `${times(say, then)}${still === over ? '' : ` ${limitOf[still]}`}`,
    ...(ears ? [protectors[ears.by]] : []),
  ];
  return [
    `That leaves ${[first, ...more].join('; ')}.`,
    ...(still === 'vibration'
      ? ['Gloves do not take it away. Spread the work over more days, or give it to a specialist.']
      : ears?.by === 'neither'
        ? ['Spread the work over more days, or give it to a specialist.']
        : []),
  ].join(' ');
}

/** What is too much, which change helps most, and what it leaves. */
export const helpSentence = (say: Say, help: Help): string =>
  [
    `As tools usually are${help.over === 'noise' ? ', without protectors' : ''}: ${times(say, help.now)} ${limitOf[help.over]}.`,
    changeLine(say, help),
    left(say, help),
  ].join(' ');

function changeLine(say: Say, help: Help): string {
  const steps = stepWords(say);
  switch (help.change) {
    case 'people':
      return help.people > help.crew
        ? `What helps most: ${say.number(help.people)} people at this day’s work in place of ${say.number(help.crew)}, in equal turns at all that is loud or shakes.`
        : 'What helps most: equal turns of all of you at what is loud or shakes.';
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
