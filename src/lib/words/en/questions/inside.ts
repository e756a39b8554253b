import { fromUs } from '$lib/answers/units';
import type { QuestionsWords, Say } from '$lib/words/types';

/** What is in the concrete of a zone: cracks and steel. */
export const insideQuestionWords = (
  say: Say,
): Pick<QuestionsWords, 'cracks' | 'crackLength' | 'steel' | 'barLoss'> => ({
  cracks: {
    ask: 'Are there cracks?',
    short: 'Cracks',
    why: 'A crack lets water in. One that moves breaks any stiff repair.',
    find: [
      'Try to slide in a sheet of paper, then a coin.',
      'Tap along both edges. A dull sound or falling bits mean they have let go.',
      'Draw a pencil line across it. Look again in a week, or after a hot day, to see if it moved.',
    ],
    scrape: ['Brush it clean first.'],
    choices: {
      none: { name: 'None', hint: 'No crack, even when damp.' },
      hairline: { name: 'Hairline', hint: 'Paper will not go in.' },
      open: { name: 'Open, firm edges', hint: 'A gap; both edges ring.' },
      crumbling: { name: 'Crumbling edges', hint: 'Edges break off or sound dull.' },
      moving: {
        name: 'Moving',
        hint: 'It came back, or one side stands higher.',
      },
    },
    number: null,
  },
  crackLength: {
    ask: 'How long are the cracks?',
    short: 'Crack length',
    why: 'It sets the time and the filler you need.',
    find: ['Walk along each crack with a tape or a string. Add them up.'],
    choices: {},
    number: {
      label: 'Length of all cracks',
      unit: say.unitOf('m'),
      hint: 'Follow the bends. A rough figure will do.',
      example: `For example ${say.distance(say.units === 'us' ? fromUs('m', 12) : 4)}`,
      unknown: 'I do not know',
    },
  },
  steel: {
    ask: 'Does steel show?',
    short: 'Steel',
    why: 'Rust swells and pushes concrete off, and a repair too.',
    find: [
      'Look for brown stains, most of all along straight lines.',
      'Look into holes and wide cracks for bars or mesh.',
    ],
    scrape: ['Scrape the bar with a nail. See if rust comes off in layers.'],
    choices: {
      'none-seen': { name: 'None seen', hint: 'No bar and no rust stain.' },
      'rust-stain': { name: 'Rust stain', hint: 'Brown marks, but no bar in sight.' },
      exposed: {
        name: 'Bar shows, light rust',
        hint: 'Ribs whole; a wire brush cleans it.',
      },
      corroded: {
        name: 'Bar badly rusted',
        hint: 'Rust in layers, or a thinner bar.',
      },
    },
    number: null,
  },
  barLoss: {
    ask: 'How much of the bar has rust taken?',
    short: 'Steel lost',
    why: 'Thin bars carry less. Past a limit an engineer decides.',
    find: [
      'Measure across the bar at its thinnest, then where it is still whole.',
      `A bar that is a little thinner has lost more than it looks. At ${say.share(thinnerAt(say.valueOf('bar.loss-one')))} thinner, ${say.figure('bar.loss-one')} of it is gone.`,
    ],
    scrape: ['Scrape the rust off down to bright steel first.'],
    choices: {
      'within-limit': {
        name: 'Only a little',
        hint: `No bar has lost more than ${say.figure('bar.loss-one')} of its steel, and no two side by side more than ${say.figure('bar.loss-neighbours')} each.`,
      },
      'one-bar': {
        name: `One bar, over ${say.figure('bar.loss-one')} of the steel`,
        hint: `It is thinner by ${say.share(thinnerAt(say.valueOf('bar.loss-one')))} or more. The bars beside it are not.`,
      },
      neighbours: {
        name: `Bars side by side, over ${say.figure('bar.loss-neighbours')} of the steel`,
        hint: `Two or more bars next to each other are thinner by ${say.share(thinnerAt(say.valueOf('bar.loss-neighbours')))} or more.`,
      },
    },
    number: null,
  },
});

/**
 * How much thinner a round bar is, as a ratio of its diameter, when it has lost a share of its
 * section: the section goes with the square of the diameter, so 1 - sqrt(1 - loss).
 */
const thinnerAt = (loss: number): number => 1 - Math.sqrt(1 - loss);
