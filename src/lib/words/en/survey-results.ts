import { count } from '$words/count';

const sides = {
  along: { low: 'left', high: 'right' },
  across: { low: 'near', high: 'far' },
} as const;

/** What a drawing comes to, and the sheet to chalk by. */
export const surveyResultWords = {
  results: {
    title: 'What it comes to',
    slab: 'Slab',
    unclaimed: 'In no zone',
    patches: 'Patches',
    patchesOf: (number: number, area: string, share: string) =>
      number ? `${number}, together ${area} (${share} of the slab)` : 'none',
    saw: 'Saw cut',
    off: 'Concrete that comes off',
    ofSlab: (volume: string, share: string) => `${volume} (${share} of the slab)`,
    noDepths: (patches: string) => `Without patch ${patches}: depth not known.`,
    crack: (kind: string) => `Cracks, ${kind}`,
    upright: 'Edges to do by hand',
    bars: 'Bars that show',
    skipped: (spots: string) => `Too small to break out: ${spots}.`,
    whole: (bay: string, patched: string, saw: string, area: string) =>
      `More than half of bay ${bay} is patched: ${patched} of ${area}, with ${saw} to saw. Ask for a price for the bay whole as well: ${area}, nothing to saw, and no patch edges inside it.`,
    ifWhole: (bays: string, many: boolean, area: string, saw: string) =>
      `With ${many ? 'bays' : 'bay'} ${bays} whole, the slab comes to ${area} of patches and bays, with ${saw} to saw.`,
  },
  soundings: {
    title: 'Sounded',
    none: 'Nothing is sounded yet. Hollow places without a mark are not in this drawing.',
    chained: (lanes: string) =>
      `A chain was dragged over all of it in lanes of ${lanes}. It misses less than taps on a grid, if the ear is good (common practice). Tap again where you are not sure.`,
    lanesTooWide: (lanes: string, most: string) =>
      `A chain was dragged in lanes of ${lanes}. A chain covers about ${most} (common practice): what lies between was not heard.`,
    grid: (spacing: string) => `Tapped every ${spacing}.`,
    found: (across: string) =>
      `Nine times in ten, this grid finds a round hollow of ${across} across or more. A smaller one can lie between the taps.`,
    finer: (spacing: string, across: string) =>
      `A grid of ${spacing} would find one of ${across} (common practice).`,
    tooWide:
      'This grid is too wide to lay patches by. Tap round each dull place and draw its outline as a spot.',
    hollow: (low: string, high: string) =>
      `Counting taps, ${low} to ${high} is hollow. Patches need outlines: tap round each dull place and draw it as a spot.`,
    noneHollow: (high: string) => `No tap was dull: ${high} at most can be hollow.`,
    again: (number: number) =>
      `${count(number, 'dull tap stands', 'dull taps stand')} alone. Tap again there: a tap is easily misheard.`,
    outline: (number: number) =>
      `${count(number, 'dull tap is', 'dull taps are')} in no spot yet. Tap round there and draw the outline.`,
    untapped: (bays: string, many: boolean) =>
      `Nothing is known of ${many ? 'bays' : 'bay'} ${bays}: not tapped.`,
  },
  days: {
    title: 'Which part on which day',
    where: 'Where you work',
    line: 'Outlined in crayon: where the work is. Patches stand for a zone that is broken out.',
    picture: (days: string, zones: string) => `${days}: the slab, with work on ${zones}.`,
    notDrawn: 'not on the drawing',
    more: (number: number) => `Show ${count(number, 'more day', 'more days')}`,
  },
  chalk: {
    title: 'Sheet to chalk by',
    line: 'Measure from two edges or joints of the bay, chalk the corner, then draw the box square.',
    patch: 'Patch',
    bay: 'Bay',
    zone: 'Zone',
    along: 'Along',
    across: 'Across',
    size: 'Length x width',
    area: 'Area',
    saw: 'Saw',
    depth: 'Damage down to',
    /** Of a patch with a spot that nobody has measured. */
    deeper: (depth: string) => `${depth} or deeper: measure`,
    measure: 'measure',
    none: 'No patches are drawn yet.',
    notYet: (zone: string) => `${zone}: saw nothing yet.`,
    from: (distance: string, way: 'along' | 'across', end: 'low' | 'high', inBay: boolean) =>
      inBay ? `${distance} from the ${sides[way][end]} side` : `${distance} from your corner`,
    at: (way: 'along' | 'across', end: 'low' | 'high', inBay: boolean) =>
      inBay ? `at the ${sides[way][end]} side` : 'at your corner',
    key: 'Left and near are the sides at your corner, marked 0. Distances are to the nearest side of the patch.',
    caution:
      'Before anybody saws or breaks: look for pipes, cables and tensioned steel. Cut in water or with extraction.',
  },
  legend: {
    title: 'How to read it',
    spot: 'damage',
    patch: 'patch, with its number: saw and break out here',
    notYet: 'patch, with its number: saw nothing yet',
    joint: 'joint',
    upright: 'stands upright',
    crack: 'crack',
    bar: 'bar that shows',
    rings: 'tap that rings',
    dull: 'dull tap',
    again: 'tap again',
  },
} as const;
