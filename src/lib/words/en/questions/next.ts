import { fromUs } from '$lib/answers/units';
import type { QuestionsWords, Say } from '$lib/words/types';

/** What comes after, and how large the zone is. */
export const nextQuestionWords = (
  say: Say,
): Pick<QuestionsWords, 'finish' | 'area' | 'borderLength'> => ({
  finish: {
    ask: 'What goes on next?',
    short: 'Finish',
    why: 'Each finish needs its own roughness to grip. The trade counts it from the smoothest to the roughest with a number called CSP.',
    find: [
      'Look at the data sheet of what you want to put on. It says how thick it goes on.',
      'Ask the shop or the maker if you are not sure.',
    ],
    choices: {
      sealer: { name: 'Sealer', hint: 'It soaks in and leaves almost nothing on top.' },
      'thin-film': { name: 'Thin paint', hint: 'A coat as thin as house paint.' },
      'build-coat': { name: 'Build coat', hint: 'A thick paint in several coats.' },
      'self-levelling': {
        name: 'Self-levelling layer',
        hint: 'Poured, and it finds its own level.',
      },
      'thin-overlay': {
        name: 'Thin overlay',
        hint: `A trowelled layer of about ${say.span('depth.thin', 'depth.shallow')}.`,
      },
      overlay: {
        name: 'Overlay or patch',
        hint: `Concrete or repair mortar thicker than ${say.figure('depth.shallow')}.`,
      },
      rebuild: { name: 'Form and pour', hint: 'You build a form and pour a part anew.' },
      undecided: { name: 'Not decided', hint: 'You will choose later.' },
    },
    number: null,
  },
  area: {
    ask: 'How large is this zone?',
    short: 'Area',
    why: 'The size sets how long it takes, how much waste there is, and which machine is worth bringing.',
    find: [
      'Measure its length and its width, and multiply them.',
      'No tape? Pace it out. One long step is close to one yard or one metre.',
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
    why: 'A floor machine leaves a strip along walls, columns and posts. That strip is done by hand.',
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
