/** Steps before which somebody has to mark what lies hidden. */
const cuts: readonly string[] = [
  'saw-cut',
  'break-out',
  'chase-crack',
  'route-crack',
  'free-bar',
  'water-jet',
];

/** Machines that go over all of a floor, its ducts and lids with it. */
const overall: readonly string[] = ['scarify', 'grind', 'needle-scale', 'shotblast', 'edge-work'];

export const cutsIn = (id: string): boolean => cuts.includes(id);
export const goesOverAll = (id: string): boolean => overall.includes(id);
