import type { TestId } from '$lib/advice/types';
import type { Say, TestWords } from '$lib/words/types';
import { takes } from './takes';

type FieldTest = Extract<
  TestId,
  | 'hammer-tap'
  | 'scrape'
  | 'brush'
  | 'water-drop'
  | 'measure-depth'
  | 'measure-thickness'
  | 'tap-crack'
  | 'crack-gauge'
  | 'look-at-steel'
  | 'measure-bar'
  | 'sound-round-stain'
  | 'look-close'
  | 'look-round'
  | 'measure-area'
>;

/** Tests that anyone can do on the spot. */
export const fieldTests = (say: Say): Readonly<Record<FieldTest, TestWords>> => ({
  'hammer-tap': {
    name: 'Tap it with a hammer',
    how: [
      'Wear goggles. Tap lightly all over, or drag a chain over a floor. Not when it is frozen.',
      'A clear ring is sound. A dull note is hollow. If chips come loose, it is broken on top.',
    ],
    minutes: takes(say, 'hammer-tap'),
  },
  scrape: {
    name: 'Scrape it',
    how: [
      'Push a stiff scraper along the surface with both hands.',
      'If it takes nothing, it is tight. If thin flakes lift, it is flaking.',
    ],
    minutes: takes(say, 'scrape'),
  },
  brush: {
    name: 'Brush it',
    how: [
      'Damp the dust down around you first. Rub one spot hard with a stiff brush, and wipe it clean.',
      'Rub it again. If dust still comes, it is powdery.',
    ],
    minutes: takes(say, 'brush'),
  },
  'water-drop': {
    name: 'Put a drop of water on it',
    how: [
      'Put a few drops on the dry surface, in several spots.',
      'If a drop spreads and soaks in, it is clean. If it stays a bead, oil or a sealer is in the way.',
    ],
    minutes: takes(say, 'water-drop'),
  },
  'measure-depth': {
    name: 'Measure the depth',
    how: [
      'In one spot, scrape out what is loose. Lay a straight edge across it.',
      'Measure from the straight edge down to the firm bottom, at the deepest spot.',
    ],
    minutes: takes(say, 'measure-depth'),
  },
  'measure-thickness': {
    name: 'Measure the thickness',
    how: [
      'Measure at a free edge, a joint, a drain or a hole.',
      'If there is none, ask for the drawings. Drill a small hole only when cables, pipes and tendons are ruled out.',
    ],
    minutes: takes(say, 'measure-thickness'),
  },
  'tap-crack': {
    name: 'Tap along the crack',
    how: [
      'Tap with a small hammer along both edges, from end to end.',
      'If they ring, the edges are firm. If they sound dull or chips come off, the crack is crumbling.',
    ],
    minutes: takes(say, 'tap-crack'),
  },
  'crack-gauge': {
    name: 'Measure the crack',
    how: [
      `Hold a crack gauge or feeler blades to it. Under ${say.figure('crack.fine')} it is fine, over ${say.figure('crack.wide')} it is wide.`,
      'Draw a line across it with the date, and measure again on a warm day and on a cold one. If the width changes, it moves.',
    ],
    minutes: takes(say, 'crack-gauge', ', and once more some weeks later'),
  },
  'look-at-steel': {
    name: 'Look at the steel',
    how: [
      'Shine a light into holes and cracks. Look for bars, mesh and brown lines.',
      'Scrape a bar with a nail. If rust comes off in layers, it is badly rusted.',
    ],
    minutes: takes(say, 'look-at-steel'),
  },
  'measure-bar': {
    name: 'Measure the bar',
    how: [
      'Only where the bar is in the open already: do not dig for it. Where it may carry something, or cables may be near, photograph it and leave the measuring to an engineer.',
      'Clean it down to bright steel.',
      'Measure across it at the thinnest spot, and where it is whole. Do the same for bars beside it that are in the open.',
      `Work out the loss with the areas, not the widths. Over ${say.figure('bar.loss-one')} of one bar, or over ${say.figure('bar.loss-neighbours')} of bars side by side, needs an engineer.`,
    ],
    minutes: takes(say, 'measure-bar'),
  },
  'sound-round-stain': {
    name: 'Sound round the stain',
    how: [
      'Tap round the rust stain in growing circles. Mark where it sounds dull.',
      'If it is dull, steel is pushing the concrete off. If all of it rings, the rust may have come from somewhere else.',
    ],
    minutes: takes(say, 'sound-round-stain'),
  },
  'look-close': {
    name: 'Look close',
    how: [
      'Brush a spot clean and kneel down to it. Look at it dry, then damp.',
      'Feel it with your palm, and compare it with the drawings.',
    ],
    minutes: takes(say, 'look-close'),
  },
  'look-round': {
    name: 'Look round the place',
    how: [
      'Walk all round it. Look at the underside too, from where nothing can fall on you.',
      'Look for joints, posts, drains, cables, and signs that it has moved.',
    ],
    minutes: takes(say, 'look-round'),
  },
  'measure-area': {
    name: 'Measure the zone',
    how: ['Measure its length and width with a tape, and multiply. Split odd shapes into oblongs.'],
    minutes: takes(say, 'measure-area'),
  },
});
