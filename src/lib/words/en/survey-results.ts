const count = (number: number, one: string, many: string) =>
  number === 1 ? `1 ${one}` : `${number} ${many}`;

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
    whole: (bay: string, patched: string, area: string) =>
      `More than half of bay ${bay} is patched: ${patched} of ${area}. Ask for a price for the bay whole as well: ${area}, with no patch edges inside it.`,
  },
  soundings: {
    title: 'Sounded',
    none: 'Nothing is sounded yet. Hollow places without a mark are not in this drawing.',
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
    none: 'No patches are drawn yet.',
    from: (distance: string, way: 'along' | 'across', end: 'low' | 'high', inBay: boolean) =>
      inBay ? `${distance} from the ${sides[way][end]} side` : `${distance} from your corner`,
    key: 'Left and near are the sides at your corner, marked 0. Distances are to the nearest side of the patch.',
    caution:
      'Before anybody saws or breaks: look for pipes, cables and tensioned steel. Cut in water or with extraction.',
  },
  legend: {
    title: 'How to read it',
    spot: 'damage',
    patch: 'saw and break out here',
    joint: 'joint',
    upright: 'stands upright',
    crack: 'crack',
    bar: 'bar that shows',
    rings: 'tap that rings',
    dull: 'dull tap',
    again: 'tap again',
  },
} as const;
