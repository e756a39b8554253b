import type { CheckId } from '$lib/answers/readiness-record';
import type { CheckWords } from '$lib/words/readiness-types';
import type { Say } from '$lib/words/types';

type DampCheck = Extract<CheckId, 'plastic-sheet' | 'humidity' | 'surface-damp'>;

/** Checks of water in and on the concrete. */
export const dampChecks = (say: Say): Readonly<Record<DampCheck, CheckWords>> => ({
  'plastic-sheet': {
    name: 'Dry (plastic sheet)',
    how: [
      `Tape a clear plastic sheet, ${say.figure('sheet.side')} square, to the surface on all four sides. Keep sun and heat off it.`,
      `Leave it for at least ${say.figure('sheet.time')}.`,
      'Look under it: drops on the sheet, or darker concrete, mean damp.',
    ],
    passes: 'Dry under every sheet. A dry sheet does not prove that the slab is dry in depth.',
    reading: 'Under the sheet',
    choices: { dry: 'Dry', damp: 'Drops or dark' },
  },
  humidity: {
    name: 'Dry in depth (relative humidity)',
    how: [
      `Drill a hole to ${say.figure('humidity.depth')} of the slab’s thickness where it dries from the top only. Use a vacuum on the drill.`,
      `Line it, close it, and wait ${say.figure('humidity.wait')}, or longer where the maker of the probe says so. Editions of the method before 2018 asked for ${say.figure('humidity.wait-before')}.`,
      'Put in the probe, and read it when it is steady.',
    ],
    passes: `At most what the maker of the finish allows. Where the maker gives nothing: ${say.figure('humidity.most')}.`,
    reading: 'Relative humidity, %',
    choices: {},
  },
  'surface-damp': {
    name: 'Damp, not wet',
    how: [
      'Soak the surface beforehand, then take off what stands on it.',
      'Look at it from the side, against the light, just before you cover it.',
    ],
    passes: 'Dark all over, with no shine and no puddle.',
    reading: 'How it looks',
    choices: { damp: 'Dark, no shine', dry: 'Pale, dry', wet: 'Shines, or water stands' },
  },
});
