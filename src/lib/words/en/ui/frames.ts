import { facing, type SurfaceHere } from '$lib/advice/surface-here';
import type { CheckId } from '$lib/answers/readiness-record';
import type { StepId } from '$shared/methods';

type Captions = readonly [begin: string, middle: string, done: string];

/** Under the three pictures of a method or a step: one to four words each. */
const steps: Readonly<Record<StepId, Captions>> = {
  'pressure-wash': ['Dirty, but firm', 'Wash in passes', 'Clean, texture as before'],
  grind: ['Weak skin', 'Grind, dust caught', 'Flat, skin off'],
  'abrasive-blast': ['Weak face', 'Blast down the wall', 'Rough and clean'],
  scarify: ['Coating, weak skin', 'Cutters plane it down', 'Rough grooves'],
  shotblast: ['Pitted, weak skin', 'Shot flies down', 'Clean into the pits'],
  'needle-scale': ['Loose spot', 'Needles strike it', 'Small dents, firm'],
  'break-out': ['Broken to depth', 'Hammer down to sound', 'Rough hole, firm floor'],
  'water-jet': ['Weak below', 'The jet bursts it', 'Stones stand firm'],
  'make-safe': ['What lies below?', 'Fence it off', 'Marked and fenced'],
  degrease: ['Oil: drops stay round', 'Scrub with detergent', 'The drop spreads'],
  'strip-growth': ['Moss all over', 'Scrape it off', 'Face shows'],
  'strip-coating': ['Coated', 'Scrape it off', 'Bare concrete'],
  'sound-and-mark': ['Tap all over', 'Find what sounds dull', 'Box it square'],
  'tap-crack': ['Tap its edges', 'An edge gives', 'Mark how wide'],
  'saw-cut': ['Line drawn', 'Saw, with water', 'Square edge'],
  'chase-crack': ['Loose edges', 'Chip both sides', 'Both edges ring'],
  'route-crack': ['Fine crack', 'Cut along it', 'Square groove'],
  'free-bar': ['Bar half buried', 'Chip behind it', 'Free all round'],
  're-sound': ['Hole made', 'Tap its floor', 'It rings'],
  'edge-work': ['Strip at the wall', 'Hand tool', 'Done to the wall'],
  'blast-clean': ['Bruised floor', 'Blast it off', 'Sound floor'],
  'clean-bar': ['Rusty bar', 'Brush all round', 'Bright bar'],
  vacuum: ['Dust', 'Take it up', 'No dust'],
  'final-wash': ['Dust and slurry', 'Wash to one side', 'Clean, damp'],
  'fill-level': ['Too rough', 'Fill, draw level', 'Level'],
  'check-ready': ['Checks open', 'Drop, tape, hammer', 'All passed'],
  'wet-or-dry': ['Wet, or dry?', 'As the label says', 'Damp, or dry'],
  'fill-cure': ['Fresh fill', 'Covered, given time', 'Hard, and it rings'],
  'moisture-test': ['Drill a hole', 'Probe, and wait', 'Read it'],
  'last-clean': ['All is ready', 'Last dust off', 'Cover at once'],
  cover: ['Damp and clean', 'Spread it', 'Covered'],
  cure: ['Fresh', 'Keep it wet', 'Hard: sheet off'],
};

/** Under the three pictures of a check; the last one is what it can come to. */
const checks: Readonly<Record<CheckId, Captions>> = {
  sounding: ['Lift the hammer', 'Tap and listen', 'Clear, or dull'],
  edges: ['Look at the edge', 'Hold a square', 'Upright, or sloping'],
  profile: ['Ten chips', 'Hold one beside it', 'The chip that fits'],
  'pull-off': ['Core a ring', 'Glue, then pull', 'Read the break'],
  ph: ['Rinse it', 'Press paper on', 'Compare the colour'],
  'dust-tape': ['Press tape on', 'Peel it off', 'Clean, or dusty'],
  'water-drop': ['One drop', 'Watch its edge', 'Spreads, or stays round'],
  absorption: ['One drop, a watch', 'It sinks in', 'Gone, or still there'],
  'fill-cured': ['Fresh fill', 'Tap it later', 'Rings, or cracked'],
  'open-time': ['Cleaned: start', 'The clock runs', 'Covered, or dusty again'],
  'dew-point': ['Air, and slab', 'Watch for drops', 'Above it, or wet'],
  'slurry-ph': ['Catch it', 'Dip paper in', 'Compare the colour'],
  'bars-free': ['Bar laid open', 'Measure behind it', 'Free, or touching'],
  'bars-clean': ['Rusty', 'Wipe all round', 'Clean, or rusty'],
  chloride: ['Drill for dust', 'Catch the dust', 'To the laboratory'],
  carbonation: ['Break a face', 'Spray it', 'Bar guarded, or not'],
  'half-cell': ['Wire to the bar', 'Probe on the face', 'Low risk, or high'],
  'plastic-sheet': ['Tape it down', 'Leave it', 'Dry, or drops'],
  humidity: ['Drill', 'Probe, and wait', 'Read it'],
  'surface-damp': ['Soak it', 'Take off puddles', 'Dark, or shining'],
};

/** What a machine meets in the case in hand. */
function metWords({ weak, coated, pitted }: SurfaceHere): string {
  if (weak) return coated ? 'Coating, weak skin' : pitted ? 'Pitted, weak skin' : 'Weak skin';
  if (coated) return 'Coated';
  return pitted ? 'Pitted, but firm' : 'Firm, not rough yet';
}
/** What it leaves there: only where it differs from the usual. */
const leftWords: Readonly<Partial<Record<StepId, (here: SurfaceHere) => string>>> = {
  scarify: () => steps.scarify[2],
  grind: ({ weak, coated }) =>
    weak ? 'Flat, skin off' : coated ? 'Flat and bare' : 'Flat, pores open',
  shotblast: ({ pitted }) => (pitted ? 'Clean into the pits' : 'Even and rough'),
};

/** The captions of the three pictures of a method, a step or a check. */
export function frameCaptions(
  of: { kind: 'method'; id: StepId; here?: SurfaceHere | null } | { kind: 'check'; id: CheckId },
): Captions {
  if (of.kind === 'check') return checks[of.id];
  const [begin, middle, done] = steps[of.id];
  if (!of.here || !facing.has(of.id)) return [begin, middle, done];
  const usual = of.here.weak && !of.here.coated && !leftWords[of.id];
  return [usual ? begin : metWords(of.here), middle, leftWords[of.id]?.(of.here) ?? done];
}
