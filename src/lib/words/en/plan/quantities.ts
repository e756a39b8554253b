import type { TermId } from '$lib/plan/amount';
import type { QuantityId } from '$lib/plan/quantities';
import type { Named } from '$lib/words/types';

/** What is counted, and what the number is for. */
export const quantityNames: Readonly<Record<QuantityId, Named>> = {
  area: { name: 'Area', line: 'The surface to prepare.' },
  'patch-area': {
    name: 'Area of the patches',
    line: 'What is sawn round and broken out, past the damage on every side.',
  },
  removed: { name: 'Concrete to take off', line: 'Measured while it is still in place.' },
  'debris-mass': { name: 'Mass of the debris', line: 'What somebody has to lift and drive away.' },
  'debris-loose': { name: 'Debris, loose', line: 'Broken concrete takes more room than whole.' },
  skips: { name: 'Skips', line: 'Whole ones, if the debris goes into skips.' },
  'rubble-bags': { name: 'Rubble bags', line: 'Whole ones, if the debris goes into bags.' },
  fill: {
    name: 'Repair material',
    line: 'What fills the hole, with some for waste. What goes on top is not in it.',
  },
  'fill-bags': { name: 'Bags of repair material', line: 'Whole bags, by the yield of one bag.' },
  'saw-cut': { name: 'Saw cut', line: 'Round every patch.' },
  'crack-chased': { name: 'Crack to chase', line: 'Opened with a light hammer, both sides.' },
  'crack-routed': { name: 'Crack to rout', line: 'Opened to a groove.' },
  'bars-freed': { name: 'Bars to free', line: 'Length of bar, with the undercut behind it.' },
  'crack-filler': { name: 'Crack filler', line: 'Fills the routed grooves, with some for waste.' },
  'wash-water': { name: 'Wash water to catch', line: 'It must not reach a storm drain.' },
};

/** What one factor of a working is. */
export const termNames: Readonly<Record<TermId, string>> = {
  area: 'area',
  'patch-area': 'area of the patches, past the damage',
  depth: 'depth to take off',
  'depth-into-sound': 'depth of the damage, and a little into sound concrete',
  'hollow-depth': 'depth of the hollow',
  'drawn-depth': 'depth of the patches as drawn, on the average, and a little into sound concrete',
  perimeter: 'length round the patches',
  'crack-length': 'length of the crack',
  'border-length': 'length of the border',
  'bar-length': 'length of bar to free',
  'bar-strip': 'width opened along a bar',
  'bar-room': 'width of the bar with room on both sides',
  'bar-depth': 'depth below the hole, to clear behind the bar',
  'groove-width': 'width opened along the crack',
  'groove-depth': 'depth opened along the crack',
  removed: 'concrete to take off',
  loose: 'debris, loose',
  hole: 'what is to be filled',
  fill: 'repair material',
  'both-sides': 'both sides',
  unit: 'units',
  density: 'density of concrete',
  bulking: 'times as much room when broken',
  waste: 'with waste',
  yield: 'yield of one bag',
  skip: 'one skip',
  bag: 'one rubble bag',
  passes: 'passes',
  rate: 'rate of work',
  water: 'water used',
  patches: 'area of the patches as laid',
  zones: 'zones',
  hours: 'hours',
  taken: 'hours it took',
  pace: 'pace of this job so far',
  share: 'share of the day a tool is at work',
  mass: 'mass',
};
