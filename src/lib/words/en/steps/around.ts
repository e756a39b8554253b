import { lowered } from '$lib/words/by-language';
import type { StepId } from '$shared/methods';
import type { Say, StepWords } from '$lib/words/types';
import { anySaw, sawDepthHere } from './saw-depth';

type AroundStep = Extract<
  StepId,
  | 'make-safe'
  | 'degrease'
  | 'strip-growth'
  | 'strip-coating'
  | 'sound-and-mark'
  | 'tap-crack'
  | 'saw-cut'
  | 'chase-crack'
  | 'route-crack'
  | 'free-bar'
  | 're-sound'
>;

/** How a step is done in one of its cases; which case it is, the advice says. */
export const aroundByCase = {
  nothingCut: 'Ask about load and old coatings.',
  rustyCrack: 'Open it to the bar, or fetch an engineer.',
  chase: 'Take a light hammer with a narrow chisel, with water or a hood on it.',
  rout: 'Follow it with a crack router, or a grinder and a crack blade, with extraction on it.',
  growth: 'Scrape off thick growth while it is damp, and bag it.',
  sound: 'Tap with a hammer about every hand’s width. Not on frozen concrete.',
  soundFloor:
    'Tap with a hammer about every hand’s width, or drag a chain. Not on frozen concrete.',
} as const;

/** What comes before and around the main method. */
export const aroundSteps = (say: Say): Readonly<Record<AroundStep, StepWords>> => ({
  'make-safe': {
    name: 'Make safe',
    how: [
      'Call for the marking of cables and pipes days ahead. Have what must be dead switched off and checked. Ask about tendons, load and old coatings.',
      'Fence the place off, and put up signs where people pass.',
      'Cover drains, glass and doors. Stand engines outside, away from openings.',
      'Lay out the gear for lungs, ears, eyes and hands, and see that it fits.',
      'Done when nobody can walk in by mistake and nothing hidden is left to chance.',
    ],
  },
  degrease: {
    name: 'Degrease',
    how: [
      'Scrape up what is thick.',
      'Scrub in a detergent made for oil, and let it work for as long as its label says.',
      'Rinse, and catch the water. Do it again.',
      'Done when a drop of water spreads out on the clean spot, a day after the last rinse. If it still beads after two rounds, the oil has soaked in.',
    ],
  },
  'strip-growth': {
    name: 'Take off growth',
    how: [
      'Scrape off the thick growth and bag it.',
      'Scrub the rest with a stiff brush and water. Let it dry.',
      'Done when the brush lifts nothing green or black.',
    ],
  },
  'strip-coating': {
    name: 'Strip the coating',
    how: [
      'Start only when a laboratory has tested an old coating for lead and asbestos.',
      'Push a sharp long-handled scraper under a loose edge. Use a power scraper where it holds.',
      'Bag the pieces as you go.',
      'Done when you see bare concrete, with only a thin residue in the pores.',
    ],
  },
  'sound-and-mark': {
    name: 'Sound and mark',
    how: [
      `${aroundByCase.sound} Over a floor a chain will do too.`,
      'Listen: a clear ring is sound, a dull note is hollow.',
      'Mark the edge of every dull spot with a crayon.',
      `Draw a patch with square corners round each one, at least ${say.figure('patch.min-length')} by ${say.figure('patch.min-width')}. Join patches that are closer than ${say.figure('patch.merge')}.`,
      'Done when all that lies outside the lines rings clear.',
    ],
  },
  'tap-crack': {
    name: 'Tap along the crack',
    how: [
      'Tap with a small hammer along both sides of the crack, from end to end.',
      'Mark where it sounds dull, or where the edge chips.',
      'Done when both edges ring all along. Where they do not, chase the crack.',
    ],
  },
  'saw-cut': {
    name: 'Saw the edge',
    how: [
      'Find cables, pipes and tendons first, then the steel. Set the blade so that it cannot reach it.',
      'Saw along the lines with water on the blade, square to the surface.',
      `${sawDepthHere(anySaw, say)} Stop short at the corners, and finish them with a chisel.`,
      'Wash the slurry off before it dries, and catch it.',
      'Done when each patch has a square edge all round, with no corner that points inward.',
    ],
  },
  'chase-crack': {
    name: 'Chase the crack',
    how: [
      `Rust at the crack? ${aroundByCase.rustyCrack} Else ${lowered(aroundByCase.chase)}`,
      'Work along the whole crack, and take the loose edge off on both sides.',
      'Tap as you go. Where an edge sounds dull, go wider.',
      'Done when both edges ring clear from end to end, and the groove is square, not a V.',
    ],
  },
  'route-crack': {
    name: 'Rout and seal the crack',
    how: [
      `Do not rout a crack that moves or shows rust. Else ${lowered(aroundByCase.rout)}`,
      `Cut a groove at least ${say.figure('rout.width')} wide and ${say.figure('rout.depth')} deep.`,
      'Blast each face in a pass of its own, and suck the dust out, until a finger comes away clean.',
      `Seal it on the same day, ${say.figure('rout.sealant-below')} below the surface, over a backer where the groove is deep.`,
      'Done when the sealant lies against both faces all along, with no gap and none on the surface.',
    ],
  },
  'free-bar': {
    name: 'Free the bar',
    how: [
      'Start the water or the hood. Break the concrete away beside the bar and behind it, with a light hammer. Do not hit the bar.',
      `Clear at least ${say.figure('bar.clear')} behind it: a finger goes all the way round.`,
      `Follow the bar until it is clean, at least ${say.figure('bar.along')} past the last rust.`,
      'Tie up any bar that hangs loose.',
      'Done when you can reach all round the bar, and it comes out of the concrete clean at both ends.',
    ],
  },
  're-sound': {
    name: 'Sound again',
    how: [
      'Clear the rubble, then tap the bottom and all the edges.',
      'Take off what sounds dull, and tap once more.',
      'Done when all of it rings clear.',
    ],
  },
});
