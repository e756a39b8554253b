import type { ShiftProblem, ShiftProblemId } from '$lib/safety/problems';
import type { Say } from '$lib/words/types';

/** What each problem asks the reader to do. The last good result stays on the page. */
const sentences: Readonly<Record<ShiftProblemId, (say: Say, problem: ShiftProblem) => string>> = {
  'not-a-number': () => 'This is not a number. Type digits, with a point for decimals.',
  'level-outside': (say, { got }) =>
    `${say.number(got)} dB(A) is not a working level. Type a level from ${say.figure('limit.noise-level')}.`,
  'vibration-outside': (say, { got }) =>
    `${say.number(got)} m/s² is not a vibration at the hand. Type a value from ${say.figure('limit.vibration')}.`,
  'wheel-outside': (say, { got }) =>
    `${say.length(got)} is not the size of a wheel. Type a size from ${say.figure('limit.wheel')}.`,
  'hours-negative': () => 'Time cannot be less than zero. Take the minus sign away.',
  'hours-over-a-day': () => 'A day has 24 hours. Type a shorter time, or spread it over more days.',
  'hours-wrong-way-round': () => 'The least time is longer than the most. Change them over.',
  'day-too-long': (say, { got }) =>
    `These tasks take ${say.number(got)} hours together, and a day has 24. Give some to somebody else or to another day.`,
  'crew-outside': (say) =>
    `Type how many people there are, a whole number from ${say.figure('limit.crew')}.`,
};

/** What is wrong with a number of the crew’s day, in English. */
export const shiftProblemSentence = (say: Say, problem: ShiftProblem): string =>
  sentences[problem.problem](say, problem);
