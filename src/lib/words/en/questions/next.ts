import { fromUs } from '$lib/answers/units';
import type { QuestionsWords, Say } from '$lib/words/types';

/** What comes after, and how large the zone is. */
export const nextQuestionWords = (
  say: Say,
): Pick<QuestionsWords, 'finish' | 'area' | 'borderLength'> => ({
  finish: {
    ask: 'What goes on next?',
    short: 'Finish',
    why: 'Each finish needs its own roughness (CSP).',
    find: [
      'Look at the data sheet of what you want to put on. It says how thick it goes on.',
      'Ask the shop or the maker if you are not sure.',
    ],
    choices: {
      sealer: { name: 'Sealer', hint: 'It soaks in.' },
      'thin-film': { name: 'Thin paint', hint: 'Like house paint.' },
      'build-coat': { name: 'Build coat', hint: 'Thick paint, several coats.' },
      'self-levelling': {
        name: 'Self-levelling layer',
        hint: 'Poured, levels itself.',
      },
      'thin-overlay': {
        name: 'Thin overlay',
        hint: `${say.span('depth.thin', 'depth.shallow')}, trowelled.`,
      },
      overlay: {
        name: 'Overlay or patch',
        hint: `Thicker than ${say.figure('depth.shallow')}.`,
      },
      rebuild: { name: 'Form and pour', hint: 'A part poured anew.' },
      undecided: { name: 'Not decided', hint: 'Later.' },
    },
    number: null,
  },
  area: {
    ask: 'How large is this zone?',
    short: 'Area',
    why: 'It sets time, waste, and which machine is worth bringing.',
    find: [
      'Measure its length and its width, and multiply them.',
      `No tape? Pace it out. One long step is close to ${say.units === 'us' ? 'one yard' : 'one metre'}.`,
    ],
    choices: {},
    number: {
      label: 'Area of this zone',
      unit: say.unitOf('m2'),
      hint: 'Only the part with this kind of damage.',
      example: `For example ${say.area(say.units === 'us' ? fromUs('m2', 120) : 12)}`,
      unknown: 'I do not know',
    },
  },
  borderLength: {
    ask: 'How much of its edge meets something upright?',
    short: 'Edge at walls',
    why: 'A floor machine leaves a strip there, done by hand.',
    find: [
      'Walk round the zone. Add up the lengths along walls, columns, plinths and posts.',
      'Open edges, lawns and joints do not count. For a drive it is often none.',
    ],
    choices: {},
    number: {
      label: 'Length along walls and posts',
      unit: say.unitOf('m'),
      hint: 'All such lengths together.',
      example: `For example ${say.distance(say.units === 'us' ? fromUs('m', 20) : 6)}`,
      unknown: 'I do not know',
      none: { name: 'None of it', hint: 'Nothing upright stands along it.' },
    },
  },
});
