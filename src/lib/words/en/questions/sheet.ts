import type { QuestionsWords, Say } from '$lib/words/types';

/**
 * What the maker's data sheet asks for. How each grade looks is what the chips of ICRI 310.2R were
 * made by, as reported.
 */
export const sheetQuestionWords = (
  say: Say,
): Pick<QuestionsWords, 'makerProfile' | 'makerMoisture'> => ({
  makerProfile: {
    ask: 'How rough does the data sheet want it?',
    short: 'Roughness by the data sheet',
    why: 'The sheet counts first.',
    find: [
      'Look in the sheet for “surface preparation”. Many give a CSP number.',
      '“Clean, sound and open” without a number usually means one of the three finest grades. Ask the maker.',
      'No sheet at hand? Say so, and the usual table counts.',
    ],
    choices: {
      'no-sheet': { name: 'No sheet', hint: 'The usual table.' },
      'csp-1': { name: say.csp(1), hint: 'Almost smooth.' },
      'csp-2': { name: say.csp(2), hint: 'Ground flat.' },
      'csp-3': { name: say.csp(3), hint: 'Light shotblast: fine sandpaper.' },
      'csp-4': { name: say.csp(4), hint: 'Lightly scarified.' },
      'csp-5': { name: say.csp(5), hint: 'Medium shotblast: coarse sandpaper.' },
      'csp-6': { name: say.csp(6), hint: 'Scarified.' },
      'csp-7': { name: say.csp(7), hint: 'Heavy blast.' },
      'csp-8': { name: say.csp(8), hint: 'Scabbled.' },
      'csp-9': { name: say.csp(9), hint: 'Heavily scarified.' },
      'csp-10': { name: say.csp(10), hint: 'Broken, then blasted.' },
    },
    number: null,
  },
  makerMoisture: {
    ask: 'Does the data sheet want it damp or dry?',
    short: 'Damp or dry by the data sheet',
    why: 'It decides whether it is washed last.',
    find: ['Look in the sheet for “saturated surface-dry”, “damp”, “dry” or a limit on moisture.'],
    choices: {
      'no-sheet': { name: 'It does not say', hint: 'What is usual for the finish counts.' },
      damp: { name: 'Damp', hint: 'Dark with water, but no shine: saturated surface-dry.' },
      dry: { name: 'Dry', hint: 'Dry to the touch, or below a limit the sheet gives.' },
    },
    number: null,
  },
});
