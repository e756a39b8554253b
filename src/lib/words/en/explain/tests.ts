/** Drawings of tests: what they show, and the words in them. */

export const chainDrag = {
  label:
    'A floor seen from above, with a bar that drags five lengths of chain along a lane. Ahead lies an area where a layer has let go; a crayon line goes round it, a little outside. Dashed lines part the lanes, and short strokes along the joint show where the hammer goes.',
  caption:
    'Drag the chain in lanes that touch. Where the ring turns dull, go back and forth, and draw the line outside it. Along joints and edges the chain misses small spots, so tap there with the hammer.',
  dull: 'dull',
  chainOnBar: 'chain on a bar',
  rings: 'rings',
  nextLane: 'next lane',
  hammerAlong: 'hammer along',
  joint: 'the joint',
} as const;

export const sounding = {
  label:
    'A slab cut through. On the left a hammer taps sound concrete and it rings. On the right a layer has let go; a chain dragged over it sounds dull, and a crayon line rings the hollow part.',
  caption:
    'Firm concrete rings. Where a layer has let go underneath, the same tap sounds dull. Mark the edge of the dull sound with crayon.',
  rings: 'rings',
  dull: 'dull',
  layerLetGo: 'layer let go',
} as const;

export const dropTime = {
  label:
    'A drop of water on concrete at three times. In the upper row it sinks in: a bead, a flat bead over a damp patch, a dark patch only. In the lower row it stays a bead all the time.',
  caption:
    'Open concrete drinks the drop in about a minute. A bead that stays tells of oil, a sealer or a closed skin, and none of these is ready to cover.',
  sinksOpen: 'It sinks in: open',
  once: 'at once',
  halfMinute: 'half a minute',
  minute: 'a minute',
  staysOilSealerClosed: 'It stays: oil, sealer or a closed skin',
} as const;

export const fivePlaces = {
  label:
    'Above, the square cut through: a straightedge lies on the old surface on both sides, and a gauge goes down from it to the floor at five places. Below, the square from above with its five places: the middle and near each corner.',
  caption:
    'The straightedge lies on the old surface, so that the depth is told from there. The crayon line is where the damage was said to end.',
  straightedge: 'straightedge',
  fromAbove: 'from above',
} as const;

export const pullOff = {
  label:
    'A pull-off test cut through. A steel disc is glued on a core that was drilled free through the repair into the slab. A puller on legs draws the disc upward. The dashed lines show the places where it can break: glue, repair, joint, slab.',
  caption:
    'The core stands free, so only it is pulled. Note which of the four places broke. A break in the glue does not count.',
  pull: 'pull',
  glue: 'glue',
  repair: 'repair',
  joint: 'joint',
  slab: 'slab',
} as const;

export const pullOffBreaks = {
  label:
    'Six pulled cores in two rows. Above, on bare concrete: broken deep in the slab, it is ready; in the top skin, take more off; in the glue, the test does not count. Below, through a repair: broken in the old slab, it holds; at the joint, the repair let go; inside the repair, the repair is weak.',
  caption:
    'The same test, used twice: on bare concrete before the repair, and through the repair when it is finished. The crayon line is where it broke. How hard it was pulled counts only together with the place.',
  beforeRepair: 'before the repair',
  throughRepair: 'through the repair',
  bare: {
    slab: { name: 'deep', says: 'it is ready' },
    skin: { name: 'top skin', says: 'take more off' },
    glue: { name: 'glue', says: 'does not count' },
  },
  covered: {
    slab: { name: 'old slab', says: 'it holds' },
    joint: { name: 'joint', says: 'it let go' },
    repair: { name: 'repair', says: 'weak repair' },
  },
} as const;

export const surfaceDry = {
  tooDry: 'too dry',
  right: 'right',
  tooWet: 'too wet',
  label:
    'Three blocks of concrete. The first has empty pores and would drink water from the repair. The second has full pores and a dry face. The third has full pores and a film of water on top.',
  caption:
    'Saturated surface-dry is the one in the middle: the pores are full, and the face is dry and dull.',
  drinks: 'drinks',
  film: 'film',
} as const;

export const tapeResult = {
  label:
    'Two strips of clear tape, each stuck on a card. The left one is clear but for three specks: it passes. The right one is covered with dust like frosted glass: it fails.',
  caption:
    'Stick the tape on a card whose colour shows the dust. A few specks pass. Tape like frosted glass fails: vacuum again, and try beside the old spot.',
  passes: 'passes',
  fails: 'fails',
  clearFewSpecks: 'clear, a few specks',
  greyAllOver: 'grey all over',
} as const;

export const profileScale = {
  label: 'Ten surfaces in section, from CSP 1, nearly smooth, to CSP 10, very rough.',
  caption:
    'The ten steps of the profile scale, all drawn larger than life by the same amount. Only step 10 has a known height, more than 6 mm (1/4 in). The others are drawn by eye: the guide gives chips to compare with, not numbers.',
} as const;
