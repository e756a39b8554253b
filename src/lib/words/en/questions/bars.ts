import { fromUs } from '$lib/answers/units';
import type { QuestionsWords, Say } from '$lib/words/types';

/** What the bars that show are like: how deep the hole gets, and how much of them is freed. */
export const barQuestionWords = (
  say: Say,
): Pick<QuestionsWords, 'barCover' | 'barDiameter' | 'barSpacing' | 'barLength'> => {
  const inch = (us: number, metric: number) =>
    say.length(say.units === 'us' ? fromUs('mm', us) : metric);
  const run = (us: number, metric: number) =>
    say.distance(say.units === 'us' ? fromUs('m', us) : metric);
  return {
    barCover: {
      ask: 'How much concrete lies over the bar?',
      short: 'Cover of the bar',
      why: 'A bar is freed all round, so the hole goes deeper than the bar. Past half the slab it is no patch any more.',
      find: [
        'Lay a straight edge over the sound surface beside the hole. Measure down to the top of the bar.',
        'A cover meter finds bars that do not show yet.',
      ],
      choices: {},
      number: {
        label: 'From the surface to the top of the bar',
        unit: say.unitOf('mm'),
        hint: 'Measure at the shallowest bar.',
        example: `For example ${inch(1.5, 40)}`,
        unknown: 'I do not know',
      },
    },
    barDiameter: {
      ask: 'How thick is the bar?',
      short: 'Thickness of the bar',
      why: 'The hole has to go past the bar, and rust is judged against what the bar was.',
      find: ['Measure across a sound place, ribs left out.'],
      scrape: ['Scrape it clean first.'],
      choices: {},
      number: {
        label: 'Across the bar',
        unit: say.unitOf('mm'),
        hint: 'Where it has not rusted.',
        example: `For example ${inch(0.5, 12)}`,
        unknown: 'I do not know',
      },
    },
    barSpacing: {
      ask: 'How far apart are the bars?',
      short: 'Distance between bars',
      why: 'Bars close together leave little concrete between them, and more steel to free.',
      find: ['Measure from the middle of one bar to the middle of the next.'],
      choices: {},
      number: {
        label: 'From bar to bar',
        unit: say.unitOf('mm'),
        hint: 'Leave it open if you see only one.',
        example: `For example ${inch(12, 300)}`,
        unknown: 'I do not know',
      },
    },
    barLength: {
      ask: 'How much bar has to be freed?',
      short: 'Length of bar',
      why: 'Bars are freed by the length. It sets the hours and the hole.',
      find: [
        'Add up all the bar that shows rust or lies open.',
        `Add ${say.figure('bar.along')} at each end: rust goes on under the concrete.`,
      ],
      choices: {},
      number: {
        label: 'Length of bar in this zone',
        unit: say.unitOf('m'),
        hint: 'All bars together.',
        example: `For example ${run(6, 2)}`,
        unknown: 'I do not know',
      },
    },
  };
};
