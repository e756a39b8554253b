import { count } from '$words/count';
import type { CrackKind, MarkKind } from '$lib/answers/survey';
import type { FaultId, RemarkId } from '$lib/survey/faults';
import type { Say } from '$lib/words/types';

/** Marks, and what else is put on the drawing. */
type Tool = MarkKind | 'joint' | 'move';

/** Why something cannot be drawn so, and what to do. */
export const drawnFaults: Readonly<Record<FaultId, string>> = {
  'not-closed': 'An outline needs three corners or more. Add one.',
  'crosses-itself': 'This outline crosses or touches itself. Check the order of its corners.',
  'no-area': 'This outline takes in no area. Its corners lie on one line.',
  'off-slab': 'This lies off the slab. Check where you measured from.',
  'wrong-unit': 'The size does not fit a slab. Check the unit.',
  'closed-joint': 'A joint runs from one edge to another. This one comes back to its start.',
};

/** What can be drawn and may be a slip. */
export const drawnRemarks: Readonly<Record<RemarkId, string>> = {
  'over-edge': 'Reaches past the edge of the slab. Only what lies on it counts.',
  'cut-by-joint': 'A joint runs through it.',
  'joint-taken-on': 'Ends inside the slab. It counts as running on to the next joint or edge.',
  'unknown-zone': 'Its zone is not in this job any more. Pick another.',
};

export const crackNames: Readonly<Record<CrackKind | 'not-sure', string>> = {
  hairline: 'hairline',
  open: 'open',
  crumbling: 'crumbling edges',
  moving: 'moves',
  'not-sure': 'kind not known',
};

export const surveyWords = {
  title: 'The slab, drawn',
  line: 'Draw what you measured. Areas, patches and saw cuts follow from the drawing.',
  waiting: 'Fetching your job from this device.',
  noScript: 'Drawing is done in your own browser, and needs JavaScript, which is switched off.',
  unnamed: 'Job without a name',
  draw: 'Draw the slab',
  change: 'Change the drawing',
  toJob: 'To the job',
  toPlan: 'To the plan',
  print: 'Print the sheet to chalk by',
  svg: 'Keep the drawing (.svg)',
  png: 'Keep it as a picture (.png)',
  fileName: 'slab',
  picture: (say: Say, area: number, patches: number, cut: number) =>
    `The slab seen from above, to scale: ${say.area(area)}. ${
      patches
        ? `${count(patches, 'patch', 'patches')}, ${say.distance(cut)} to saw.`
        : 'No patches.'
    }`,

  start: {
    title: 'How large is it?',
    corner: 'Pick one corner as yours: measure everything from there, along and across.',
    ways: {
      size: 'A rectangle',
      corners: 'Corners, by x and y',
      sides: 'Corners, by side and turn',
      steps: 'Steps',
    },
    way: 'The shape',
    cornersLine: 'One corner after the other, round the slab. The first is yours: 0 and 0.',
    sidesLine:
      'Walk round the slab. Each side: its length, and how far you turn left at its end. A square corner to the left is 90, to the right -90.',
    stepsLine: 'The flight laid flat, from the bottom: a riser, a tread, and so on up.',
    go: 'Draw it',
    change: 'Change the outline',
    open: (gap: string) =>
      `The last side ends ${gap} from the first corner. Measure again the side or turn that is wrong.`,
    leaves: (mark: string) => `${mark} would not fit this outline. Move it or take it out first.`,
  },
  typed: {
    title: 'Typed before, not drawn yet',
    line: 'What was typed counts until it is drawn.',
    place: (zone: string, area: string) => `Place ${zone}, ${area}`,
    tapWhere: (zone: string) => `Tap the middle of ${zone}.`,
    spots: (number: number) => `Bring in ${count(number, 'spot', 'spots')} typed on the plan`,
    spotsOff: (number: number) =>
      `${count(number, 'spot lies', 'spots lie')} off the slab and stay on the plan.`,
  },
  length: 'Length (along)',
  width: 'Width (across)',
  x: 'x (along)',
  y: 'y (across)',
  depth: 'Depth',
  depthMaybe: 'Depth, if known',
  side: 'Side',
  turn: 'Turn left',
  degrees: 'degrees',
  count: 'How many steps',
  tread: 'Tread',
  riser: 'Riser',
  stepWidth: 'Width of the flight',
  corner: (number: number) => `Corner ${number}`,
  point: (number: number) => `Point ${number}`,
  sideNo: (number: number) => `Side ${number}`,
  addCorner: 'Add a corner',
  addPoint: 'Add a point',
  addSide: 'Add a side',
  dropRow: 'Take out the last one',
  missing: 'Type a number here.',
  whole: 'Type a whole number.',
  angle: 'Type degrees from -180 to 180.',

  joints: {
    title: 'Joints',
    line: 'A joint parts the slab into bays. No patch goes over one.',
    along: 'Spacing along',
    across: 'Spacing across',
    fill: 'Lay joints at this spacing',
    onlyBox: 'Even spacing works on a rectangle. Draw the joints of this slab one by one.',
    filled: (number: number) => `${count(number, 'joint', 'joints')} laid.`,
  },

  tool: 'What to mark',
  tools: {
    spot: 'Spot',
    crack: 'Crack',
    bar: 'Bar',
    tap: 'Tap',
    upright: 'Wall',
    zone: 'Zone',
    joint: 'Joint',
    move: 'Move',
  } satisfies Record<Tool, string>,
  how: {
    spot: 'Drag over the damage, or tap in its middle and type its size.',
    crack: 'Drag along the crack, or tap its corners and finish.',
    bar: 'Drag along the bar that shows.',
    tap: 'Sound the slab at the dots, or drag a chain along lanes. Mark what you hear.',
    upright: 'Tap an edge where something stands upright: machines cannot reach there.',
    zone: 'Tap a bay to paint it, or drag over a part of the slab.',
    joint: 'Drag from edge to edge.',
    move: 'Drag a mark to another place. Drag bare ground to shift the drawing.',
  } satisfies Record<Tool, string>,
  ownZone:
    'Too deep to patch, so all of its zone waits. Give it a zone of its own; then the rest can be planned.',
  skinLeft:
    'Deeper than the loose surface round it, which is not planned. Give the spots a zone of their own; then the rest is planned too.',
  pad: 'Drawing of the slab',
  keys: 'Arrow keys move the cross, Enter places, Escape drops what is begun. Plus and minus zoom.',
  at: (x: string, y: string) => `${x} along, ${y} across`,
  step: 'Cross moves by',
  finer: 'Zoom in',
  wider: 'Zoom out',
  undo: 'Undo',
  redo: 'Redo',
  undone: 'Undone.',
  redone: 'Done again.',
  finish: 'Finish the line',
  finishOutline: 'Close the outline',
  typedArea: (area: string) =>
    `Typed: ${area}. Tap its middle to place it at that size, or drag over it as you measure it.`,
  byCorners: 'Corner by corner',
  drop: 'Drop it',
  begun: (number: number) => `${count(number, 'corner', 'corners')} set.`,
  zone: 'Zone',
  /** Beside the zone of what is picked already. */
  zoneOfNext: { spot: 'Zone of the next spot', zone: 'Zone to paint' },
  zoneOfPlace: 'The zone of its place',
  kind: 'Kind of crack',
  inNumbers: 'Type it in numbers',
  rectangle: 'A rectangle',
  outline: 'Corners',
  shape: 'As',
  place: 'Place it',
  apply: 'Change it',
  done: 'Done',
  placed: (name: string) => `${name} placed.`,
  changed: (name: string) => `${name} changed.`,
  removed: (name: string) => `${name} taken out.`,
  full: (most: string) => `A drawing has room for ${most} marks. This one is full.`,
  noMark: 'No mark lies there.',

  sound: {
    heard: 'What you hear',
    rings: 'Rings',
    dull: 'Dull',
    spacing: 'Spacing of the dots',
    lay: 'Lay out the dots',
    laid: (number: number) => `${count(number, 'dot', 'dots')} to tap.`,
    rest: 'All the other dots ring',
    left: (number: number) => `${count(number, 'dot', 'dots')} not tapped yet.`,
    taken: (sound: string, at: string) => `${sound} at ${at}.`,
    cleared: 'Tap taken back.',
    nowRings: 'It rings now',
    again: 'Dull again',
    noDots: 'No dot lies there.',
    by: 'With',
    hammer: 'A hammer',
    chain: 'A chain',
    chainHow:
      'Drag the chain along each line, lane beside lane, and a hammer along the edges. Where it sounds dull, draw the outline as a spot.',
    lane: 'Width of a lane',
    chained: 'I dragged the chain over all of it',
    chainKept: 'Chain noted.',
    unchained: 'Take that back',
    chainGone: 'Chain taken back.',
    pickSpot: 'Draw dull places as spots',
    asSpot:
      'With the chain, draw what sounds dull as a spot. To mark single taps, take the hammer.',
    wideGrid: (most: string) =>
      `Dots more than ${most} apart are too wide to lay patches by. Use them to find dull places, then tap round each.`,
  },

  list: {
    title: 'Marks',
    none: 'Nothing is marked yet.',
    change: 'Change',
    changeOf: (name: string) => `Change ${name}`,
    remove: 'Take out',
    removeOf: (name: string) => `Take out ${name}`,
    settled: (number: number) =>
      `${count(number, 'tap that asks', 'taps that ask')} for nothing more`,
    clearTaps: 'Take out all taps',
    tapsCleared: 'All taps taken out.',
  },
  names: (kind: MarkKind | 'joint', number: number) =>
    `${{ spot: 'Spot', crack: 'Crack', bar: 'Bar', tap: 'Tap', upright: 'Wall', zone: 'Painted zone', joint: 'Joint' }[kind]} ${number}`,
  told: {
    box: (length: string, width: string, at: string) => `${length} x ${width}, from ${at}`,
    outline: (corners: number) => `outline of ${corners} corners`,
    long: (length: string, at: string) => `${length} long, from ${at}`,
    deep: (depth: string) => `${depth} deep`,
    noDepth: 'depth not known',
    patches: (numbers: string, many: boolean) => `in ${many ? 'patches' : 'patch'} ${numbers}`,
    sound: (rings: boolean, at: string) => `${rings ? 'rings' : 'dull'}, at ${at}`,
  },
} as const;
