import type { CheckId } from '$lib/answers/readiness-record';
import type { CheckWords } from '$lib/words/readiness-types';
import type { Say } from '$lib/words/types';

type SteelCheck = Extract<
  CheckId,
  'bars-free' | 'bars-clean' | 'chloride' | 'carbonation' | 'half-cell'
>;

/** Checks of steel and of what reaches it. */
export const steelChecks = (say: Say): Readonly<Record<SteelCheck, CheckWords>> => ({
  'bars-free': {
    name: 'Bars free all round',
    how: [
      'Measure the clear space behind each bar with a gauge block or a rod of known thickness.',
      'Measure where it is tightest. Write down one number for each bar.',
    ],
    passes: `At least ${say.figure('bar.clear')} behind every freed bar, or the largest stone of the repair material plus ${say.figure('bar.clear-over-aggregate')}, whichever is more.`,
    reading: 'Space behind the bar',
    choices: { 'still-bonded': 'Clean, and left bonded' },
  },
  'bars-clean': {
    name: 'Bars clean',
    how: [
      'Look at each bar all round. Use a mirror for the back.',
      `The cleaned part reaches at least ${say.figure('bar.along')} past the last rust.`,
    ],
    passes: 'Bright or evenly grey, no flake of rust, all round.',
    reading: 'What you saw',
    choices: { clean: 'Clean', rusty: 'Rust left' },
  },
  chloride: {
    name: 'Salt at the steel (chloride)',
    how: [
      'Drill dust from the depth of the bars. Use a vacuum, a mask and a clean bag for each place.',
      'Send it to a laboratory, and ask for chloride as a share of the cement.',
    ],
    passes: `In old concrete the risk is called low below ${say.figure('chloride.old-low')} of the cement, and high above ${say.figure('chloride.high')}: the rust is likely to go on. In between it is medium, and an engineer decides. Limits for new concrete are another matter: ${say.figure('chloride.new-concrete')} with bars, ${say.figure('chloride.prestressed')} with tendons. Where there may be tendons in the old one, an engineer judges all above that.`,
    reading: 'Chloride, % of cement',
    choices: {},
  },
  carbonation: {
    name: 'Concrete still guards the steel (carbonation)',
    how: [
      'Break a fresh face, blow off the dust, and spray it with phenolphthalein. Wear gloves and eye protection: the liquid is harmful.',
      'Measure from the surface to where the pink begins. What stays clear no longer guards steel.',
      'Measure the cover: how deep the bar lies.',
    ],
    passes: 'The clear layer ends before the bar at every place.',
    reading: 'Depth that stays clear',
    choices: {},
  },
  'half-cell': {
    name: 'Corrosion going on (half-cell)',
    how: [
      'This is for people trained in corrosion tests. It needs a wire to a bar and damp, bare concrete.',
      'Read the voltage against a copper sulfate electrode at each place. Type the minus sign.',
    ],
    passes: `Less negative than ${say.figure('halfcell.low')}. Below ${say.figure('halfcell.high')} the risk is high. In between the value does not decide.`,
    reading: 'Potential, mV',
    choices: {},
  },
});
