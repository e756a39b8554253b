import type { Help } from '$lib/safety/help';
import { methodWords } from '$lib/words/en/methods';
import { stepWords } from '$lib/words/en/steps';
import type { Say } from '$lib/words/types';
import { toolWords } from './tools';

/** What a change leaves of the fuller limit. */
const left = (say: Say, then: number): string =>
  then <= 1 + 1e-9
    ? 'Then usual values stay under.'
    : `Even then usual values take ${say.number(Math.round(10 * then) / 10)} times what a day allows.`;

/** The one change that helps most, and what it leaves. */
export function helpSentence(say: Say, help: Help): string {
  const steps = stepWords(say);
  switch (help.change) {
    case 'people':
      return `What helps most: ${say.number(help.people)} people share this person’s loud and shaking work evenly. ${left(say, help.then)}`;
    case 'tool':
      return `What helps most: for “${steps[help.step].name}” take the ${toolWords[help.to].name} in place of the ${toolWords[help.from].name}. ${left(say, help.then)}`;
    case 'method':
      return `What helps most: another method for “${steps[help.step].name}”: ${methodWords(say)[help.to].name.toLowerCase()}${help.specialist ? ', done by a specialist' : ''}. ${left(say, help.then)}`;
  }
}

/** Hours to the minute: nobody measures finer. */
export const minuteHours = (say: Say, hours: number): string =>
  say.hours(Math.round(hours * 60) / 60);

/** "1.5 to 2 h", or one number where both are the same when said. */
export function hoursBetween(say: Say, [least, most]: readonly [number, number]): string {
  const [low, high] = [minuteHours(say, least), minuteHours(say, most)];
  return low === high ? high : `${low} to ${high}`;
}
