import { lowered } from '$lib/words/by-language';
import type { StepId } from '$shared/methods';
import type { Say, StepWords } from '$lib/words/types';

type FinishStep = Extract<
  StepId,
  | 'edge-work'
  | 'blast-clean'
  | 'clean-bar'
  | 'vacuum'
  | 'final-wash'
  | 'fill-level'
  | 'check-ready'
  | 'wet-or-dry'
  | 'fill-cure'
  | 'moisture-test'
  | 'last-clean'
  | 'cover'
  | 'cure'
>;

/** How a step is done in one of its cases; which case it is, the advice says. */
export const byCase = {
  skinByShot: 'Shotblast the flat floor.',
  skinByGrit: 'Blast with grit, or wash at high pressure.',
  skinByGritAlone: 'Blast with grit.',
  lastOpen: 'Look for dust, loose grains and puddles.',
  borderByGrinder: 'Take a hand grinder.',
  borderRough: 'Take a bush-hammer head or a needle scaler, and blast off what it bruised.',
  damp: 'Soak it well beforehand. Then take off standing water, so that it is dark but does not shine.',
  dry: 'Let it dry, and measure as the maker says.',
  lastDry: 'Vacuum once more, and press clear tape on it in several places.',
  lastDamp: 'Look for dust, loose grains and puddles. Rinse what is dirty, and take the water off.',
  cureDamp: 'Cover it with wet cloth and sheeting past its edges, and keep it wet.',
  cureDry: 'Keep water, dust and feet off it.',
} as const;

/** What follows the main method, up to the repair. */
export const finishSteps = (say: Say): Readonly<Record<FinishStep, StepWords>> => ({
  'edge-work': {
    name: 'Strip along walls, by hand',
    how: [
      `Where the rest is ground, ${lowered(byCase.borderByGrinder)} Where it is rougher, ${lowered(byCase.borderRough)}`,
      'Keep the shroud and the extraction on. Take off what the hammer has bruised.',
      'Done when the strip is as clean and as rough as the rest.',
    ],
  },
  'blast-clean': {
    name: 'Take off the bruised skin',
    how: [
      `${byCase.skinByShot} In holes and chased cracks, round bars and off floors, ${lowered(byCase.skinByGrit)}`,
      'Go over every part that a hammer or a toothed tool has touched.',
      'Done when you see no crushed stone and no fine cracks, and a scraper takes nothing.',
    ],
  },
  'clean-bar': {
    name: 'Clean the bar',
    how: [
      'Coated or zinc-grey bar? Ask the engineer first. Else clean it all round, the back too: with a wire brush on the hand grinder, or by blasting.',
      'Measure it where it is thinnest.',
      'Done when no scale, no flake and no black pit is left.',
    ],
  },
  vacuum: {
    name: 'Vacuum',
    how: [
      'Use a vacuum with a fine-dust (HEPA) filter. Do not sweep dry, and do not blow with air.',
      'Go over it twice, the second time across the first. Do corners and grooves with a narrow nozzle.',
      'Done when clear tape pressed on the surface lifts no dust.',
    ],
  },
  'final-wash': {
    name: 'Wash everything',
    how: [
      'Wash all zones on the same day, from the top down and from the wind’s side.',
      'Let each pass overlap the last, at the same distance from the surface.',
      'Catch the water. Do not let it dry in puddles.',
      'Done when the water runs off clear, and a dark cloth wiped over the dried surface stays clean.',
    ],
  },
  'fill-level': {
    name: 'Fill level',
    how: [
      'Fill the rough spots with a repair mortar that the maker of the finish accepts.',
      'Done when a straight edge lies flat on it, and the roughness is what the finish asks for.',
    ],
  },
  'check-ready': {
    name: 'Check that it is ready',
    how: [
      'Sound it, tape it, and put drops of water on it. Compare its roughness with CSP chips.',
      'Do pull-off tests where the job calls for them.',
      'Write down each result with place and time.',
      'Done when every check passes. If one fails, go back to the step that cures it.',
    ],
  },
  'wet-or-dry': {
    name: 'Make it damp or dry, as its label asks',
    how: [
      `For concrete or cement mortar: ${lowered(byCase.damp)}`,
      `For coatings and crack fillers: ${lowered(byCase.dry)}`,
      'Done when it is as the product asks.',
    ],
  },
  'fill-cure': {
    name: 'Let the fill cure',
    how: [
      'Keep a cement fill damp and covered for as long as its label says. The clock of the finish has not started yet.',
      'Then open its skin: grind or brush it to the roughness that the finish asks for, and vacuum.',
      'Done when its label time is over, it rings clear, and the roughness fits.',
    ],
  },
  'moisture-test': {
    name: 'Measure how dry it is',
    how: [
      'Do the test that the maker names, at as many places as it asks for. Mark them on the plan.',
      'Leave probes and sheets as long as the test says. Keep traffic and heaters off.',
      'Done when every reading is below the limit. If one is not, wait and measure again.',
    ],
  },
  'last-clean': {
    name: 'Last cleaning and last look',
    how: [
      `For a dry finish: ${lowered(byCase.lastDry)}`,
      `For a damp one: ${lowered(byCase.lastDamp)}`,
      `Done when tape comes up clean, or the surface is dark without shine. From now the ${say.figure('open.limit')} run.`,
    ],
  },
  cover: {
    name: 'Cover it',
    how: [
      'Measure the temperature of the surface and of the air, and the humidity. Work out the dew point.',
      'Work inside the maker’s limits. Stop when the surface is less than what the maker asks above the dew point.',
      `Cover within ${say.figure('open.limit')} of the last cleaning. If you miss it, clean again.`,
      'Done when the whole zone is covered, and the time is written down.',
    ],
  },
  cure: {
    name: 'Let it cure',
    how: [
      `Cement: ${lowered(byCase.cureDamp)} Coatings: ${lowered(byCase.cureDry)}`,
      'Keep traffic away until the maker’s time, or the strength asked for, is reached.',
      'Done when the time is over, and it rings clear when you sound it again.',
    ],
  },
});
