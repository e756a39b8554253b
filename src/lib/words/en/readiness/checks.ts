import type { CheckId } from '$lib/answers/readiness-record';
import type { CheckWords } from '$lib/words/readiness-types';
import type { Say } from '$lib/words/types';
import { dampChecks } from './damp-checks';
import { steelChecks } from './steel-checks';

type SurfaceCheck = Extract<
  CheckId,
  | 'sounding'
  | 'edges'
  | 'profile'
  | 'pull-off'
  | 'ph'
  | 'dust-tape'
  | 'water-drop'
  | 'absorption'
  | 'fill-cured'
  | 'open-time'
>;

const surfaceChecks = (say: Say): Readonly<Record<SurfaceCheck, CheckWords>> => ({
  sounding: {
    name: 'Sound all over',
    how: [
      'Tap with a hammer about every hand’s width, or drag a chain over a floor. Not on frozen concrete.',
      'Go to the edges and the corners too, and round every patch.',
      'Mark every dull spot with a crayon.',
    ],
    passes: 'A clear ring everywhere.',
    reading: 'What you heard',
    choices: { clear: 'Rings clear everywhere', dull: 'Dull somewhere' },
  },
  edges: {
    name: 'Edges square',
    how: [
      'Look along every edge of the patch, and hold a set square to it.',
      `In plan, no corner is sharper than ${say.figure('patch.min-corner')}. In depth, the edge stands upright and does not thin out to nothing.`,
    ],
    passes: 'Every edge upright, every corner square, no thin edge.',
    reading: 'What you saw',
    choices: { square: 'All square', 'not-square': 'Thin, sloping or sharp somewhere' },
  },
  profile: {
    name: 'Rough enough',
    how: [
      'Lay the set of ten roughness chips (CSP 1 to 10) beside the surface, in low light from the side.',
      'Find the chip that looks and feels most like it. Or press replica putty on it and measure the print.',
      'Note the number of the chip for each place.',
    ],
    passes: 'Every place within what the finish asks for.',
    reading: 'CSP chip',
    choices: {},
  },
  'pull-off': {
    name: 'Strong enough (pull-off)',
    how: [
      'Core a ring through the prepared surface and a little into the concrete below, square to it.',
      'Glue a steel disc on the core, and let the glue harden.',
      'Pull the disc off, straight and at an even rate. Write down the highest reading.',
      'Look at the broken faces: where did it let go, and over what share of the disc?',
    ],
    passes:
      'Results that broke the same way are averaged together. Each mean reaches what is asked. A break in the glue does not count.',
    reading: 'Test',
    choices: {},
  },
  ph: {
    name: 'Chemicals rinsed off (pH)',
    how: [
      'Measure the pH of the clean rinse water first.',
      'Straight after the last rinse, while the surface is still wet, press pH paper on it.',
      'Compare its colour with the scale, and write down the number for each place.',
    ],
    passes: 'Every place close to the rinse water: at most one below it, at most two above.',
    reading: 'pH',
    choices: {},
  },
  'dust-tape': {
    name: 'No dust left',
    how: [
      'Press clear tape on the dry surface with your thumb, then peel it off.',
      'Lay it on paper of the other colour: white for dark dust, black for pale.',
      'Rate it from 0 (clean) to 5 (covered).',
    ],
    passes: `A rating of ${say.figure('dust.most')} or less at every place.`,
    reading: 'Rating, 0 to 5',
    choices: {},
  },
  'water-drop': {
    name: 'Clean (water drop)',
    how: [
      'Put one drop of clean water on the dry surface.',
      'Watch its edge. A drop that stays round sits on oil, sealer or curing compound.',
    ],
    passes: 'The drop spreads at every place.',
    reading: 'What the drop did',
    choices: { spreads: 'Spread out', beads: 'Stayed round' },
  },
  absorption: {
    name: 'Open (drinks water)',
    how: [
      'Do this on the dry surface, before you wet it for the repair.',
      'Put one drop of clean water on it, and start a watch.',
      'Stop when the drop is gone and only a dark spot is left.',
    ],
    passes: `Gone in less than ${say.figure('absorption.time')} at every place.`,
    reading: 'Minutes until it was gone',
    choices: {},
  },
  'fill-cured': {
    name: 'Fill hard, sound and open',
    how: [
      'Compare the time since it was filled with its label. In the cold it takes longer.',
      'Tap it all over, its edges too.',
      'Lay the roughness chips beside it: its skin must be opened to what the finish asks for.',
    ],
    passes:
      'As old as its label asks, a clear ring everywhere, and as rough as the finish asks for.',
    reading: 'What you found',
    choices: {
      cured: 'Old enough, rings clear, rough enough',
      young: 'Not as old as its label asks',
      dull: 'Sounds dull, or has come loose',
      closed: 'Too smooth, or a skin on it',
    },
  },
  'open-time': {
    name: 'Still fresh',
    how: [
      'Start the clock when the last cleaning ends.',
      'Keep people, dust and rain off. If one gets on it, clean again and start anew.',
    ],
    passes: `Covered within ${say.figure('open.limit')} of the last cleaning, with no rain, dust or traffic in between.`,
    reading: 'Cleaned at',
    choices: {},
  },
});

/** How each check is done and what passes, in English. */
export const checkWords = (say: Say): Readonly<Record<CheckId, CheckWords>> => ({
  ...surfaceChecks(say),
  ...steelChecks(say),
  ...dampChecks(say),
});
