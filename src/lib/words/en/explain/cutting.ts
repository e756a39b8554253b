/** Drawings of cutting and breaking out: what they show, and the words in them. */

export const chipBeside = {
  smoother: 'smoother',
  nearest: 'nearest',
  rougher: 'rougher',
  label:
    'Three chips held over a rough face, seen from the side. The first is smoother than the face, the middle one as rough, the last rougher. The middle one is marked.',
  caption:
    'Hold the chips on the face in low light from the side, and feel both with a finger. Take the chip that comes nearest, not the one you hope for.',
  yourFace: 'your face',
} as const;

export const crackSections = {
  label:
    'Two ways to open a crack, in section. On the left both broken edges are chipped away until they ring, so the opening is wide and rough. On the right a narrow groove is cut along a firm crack, with a round backer at its bottom and soft sealant above it, a little below the face.',
  caption:
    'Left: a crack with loose edges is chased until both sides ring, then filled. Right: a firm crack gets a neat groove. Sealant above a backer sticks to two sides only, so it can stretch.',
  chased: 'chased',
  untilBothEdgesRing: 'until both edges ring',
  groovedSealed: 'grooved and sealed',
  belowFace: 'below the face',
  sealant: 'sealant',
  backer: 'backer',
  crack: 'crack',
} as const;

export const edgeShapes = {
  label:
    'Two patches cut through. The upper one runs out thin at both sides; its lips have cracked and lifted. The lower one has upright sawn sides and is as thick at the rim as in the middle.',
  caption:
    'A rim that runs out to nothing dries first, curls and breaks off. Sawn upright along the crayon lines, the patch is thick right to its edge.',
  featherEdgeThinLips: 'feather edge: thin lips lift',
  squareEdgeThickRim: 'square edge: thick to the rim',
  patch: 'patch',
} as const;

export const edgeStrip = {
  label:
    'A floor seen from above, with walls at the top and the left and a column. The lanes of the floor machine end a hand’s width from the walls. The strip that is left along the walls and round the column is hatched. A hand tool works along it, and a crayon line shows how far it overlaps the machine’s lanes.',
  caption:
    'The machine leaves a strip along each wall and round each column. Do it by hand to the same roughness, and go over the crayon line into the machine’s lanes.',
  wall: 'wall',
  stripMachineLeaves: 'strip the machine leaves',
  machine: 'machine',
  lanes: 'lanes',
  hood: 'hood',
  column: 'column',
} as const;

export const fullDepthCut = {
  label:
    'A slab cut through where a part was replaced. The sides are sawn upright through the whole thickness. Dowels at half the depth join the new part to the old slab on both sides. The base below is firm and level.',
  caption:
    'Saw upright through the whole slab, mend and press down the base, and set dowels at half the depth, level and square to the cut. Cables, pipes and bars are found before the saw goes in.',
  newPart: 'new part',
  sawnRightThrough: 'sawn right through',
  dowel: 'dowel',
  oldSlab: 'old slab',
  firmBase: 'firm base',
} as const;

export const jointSection = {
  label:
    'A joint in section, twice. On the left a strip stands in the joint through the whole repair, and the joint goes on to the top. On the right mortar bridges the joint; it has torn and lifted beside it.',
  caption:
    'Left: a strip keeps the joint open through the whole repair, with soft sealant on top later. Right: mortar over the joint ties two slabs together. The next cold night tears it beside the joint.',
  jointKept: 'joint kept',
  stripRightThrough: 'strip right through',
  jointBridged: 'joint bridged',
  tornBeside: 'torn beside it',
  repair: 'repair',
  joint: 'joint',
} as const;

export const patchPlan = {
  label:
    "A patch seen from above. An uneven dull area is hatched. Round it lies a plain rectangle in crayon, a hand's width outside the damage on three sides. On the fourth side the rectangle stops at the joint.",
  caption:
    'The crayon line is where the saw goes: a plain rectangle, a hand’s width past what sounds dull. It stops at the joint, and the other side of the joint gets a patch of its own.',
  dull: 'dull',
  hands: 'a hand’s',
  width: 'width',
  joint: 'joint',
  sawAlongThisLine: 'saw along this line',
  handsWidth: 'a hand’s width',
} as const;

export const undercutBar = {
  label:
    'A patch cut into a slab, seen from the side. A bar crosses it, rusty in the middle and clean at both ends. The upright saw cuts stop well above the bar; below them the sides are chipped. The concrete is cleared above the bar and behind it, and the crayon line shows the floor of the cut.',
  /** How far past the last rust, in both units. */
  caption: (along: string) =>
    `The bar is clear all round, and at least ${along} past the last rust at both ends. The saw stops above the steel, and a light hammer does the rest. The crayon line is the floor to reach.`,
  spaceBehind: 'space behind',
  rust: 'rust',
  pastRust: 'past the rust',
  sawnAboveBar: 'sawn, above the bar',
  chipped: 'chipped',
  soundConcrete: 'sound concrete',
} as const;
