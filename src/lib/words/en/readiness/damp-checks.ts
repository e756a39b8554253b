import type { CheckId } from '$lib/answers/readiness-record';
import type { CheckWords } from '$lib/words/readiness-types';
import type { Say } from '$lib/words/types';

type DampCheck = Extract<
  CheckId,
  'plastic-sheet' | 'humidity' | 'surface-damp' | 'dew-point' | 'slurry-ph'
>;

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
  'dew-point': {
    name: 'Warm enough, and above the dew point',
    how: [
      'Do this right before you cover it, and again each hour.',
      'Measure the air in the shade, close to the surface: its temperature and its humidity.',
      'Measure the concrete itself where it is coldest: by the door, in the shade, over bare ground.',
      'Type all three. The page works out the dew point.',
    ],
    passes: `Under what wants it dry: the surface at least ${say.figure('cover.above-dew')} above the dew point. Concrete and cement mortar: the surface at ${say.figure('place.temperature')}. Never on frozen concrete. The maker’s own limits come first.`,
    reading: 'Temperature of the surface',
    choices: {},
  },
  'slurry-ph': {
    name: 'Slurry and wash water (pH)',
    how: [
      'Catch all of it: in a wet vacuum, behind a bank of sand, in a barrel. None goes to a drain, a gutter or a garden.',
      'Wear gloves and eye protection: it burns skin.',
      'Let it settle, stir it, and dip pH paper in each barrel before anybody takes it away.',
    ],
    passes: `Below ${say.figure('hazard.wash-water-ph')}. From there on it counts as corrosive waste in the US. Below it, too, it is alkaline, and the local rules say where it may go.`,
    reading: 'pH',
    choices: {},
  },
});
