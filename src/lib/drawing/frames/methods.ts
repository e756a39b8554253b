import { facing, type SurfaceHere } from '$lib/advice/surface-here';
import type { MethodId, StepId } from '$shared/methods';
import { placed, type Drawing } from '$lib/drawing/mark';
import { spentGrit } from '$lib/drawing/method/skim';
import { rectangle } from '$lib/drawing/points';
import { unsound } from '$lib/drawing/motif/concrete';
import { dropPath } from '$lib/drawing/motif/small';
import { faceAt, type Work } from '$lib/drawing/motif/work';
import { bare, begun, bright, finished, litter, pit, type Ends } from './motif';

/** Dirt, salt and growth on a face that holds. */
const dirty = (seed: number): Drawing => [
  ...bare(seed),
  ['tone', 'M0 46C10 40 30 43 44 41S80 43 96 40 112 44 120 42V46z'],
  ...litter(0, 120, 110, seed + 1, 8),
];
/** A wall is drawn upright: the same turned by a quarter, its face to the left. */
const upright = (drawing: Drawing): Drawing => [
  ['air', 'M0 0H120V72H0z'],
  ...placed(drawing, 72, -24, 90),
];

/** Pits in a face, a skin of weak concrete over all of it. */
const pitted = (): Drawing => [
  ...begun({ depth: 4, height: 1, step: 6, seed: 24 }),
  ['air', 'M18 45C18 54 32 54 32 45zM62 45C62 52 72 52 72 45zM94 45C94 55 110 55 110 45z'],
  ['ink', 'M18 46C18 54 32 54 32 46M62 46C62 52 72 52 72 46M94 46C94 55 110 55 110 46'],
];

/** How those are drawn that otherwise stand on pits or under a coating. */
const worked: Readonly<Partial<Record<StepId, Work>>> = {
  scarify: { depth: 7, height: 3, step: 3, seed: 23 },
  shotblast: { depth: 4, height: 2, step: 4, seed: 24 },
};

/**
 * The three pictures of a method where the case is known: nothing is hatched as weak where nothing
 * is, a coating is a coating, and there are pits only where somebody found some.
 */
export function framesHere(
  id: StepId,
  [begin, middle, done]: readonly [Drawing, Drawing, Drawing],
  { weak, coated, pitted: pits }: SurfaceHere,
): readonly [Drawing, Drawing, Drawing] {
  if (!facing.has(id)) return [begin, middle, done];
  const work = worked[id];
  const ownEnds = work && !(id === 'shotblast' && pits) && !(id === 'scarify' && coated && weak);
  const met = (drawing: Drawing): Drawing =>
    weak
      ? drawing
      : drawing
          .filter(([ink]) => ink !== 'hatch' && ink !== 'crayon')
          .map(([ink, ...rest]) => [ink === 'wash' ? (coated ? 'tone' : 'body') : ink, ...rest]);
  return [met(ownEnds ? begun(work) : begin), met(middle), ownEnds ? finished(work) : done];
}

/** Each method before it starts, and when it is done; between them it is drawn at work. */
export const methodEnds: Readonly<Record<MethodId, Ends>> = {
  'pressure-wash': () => [
    dirty(11),
    [
      ...bare(11),
      ['form', dropPath([30, 43], 0.7) + dropPath([64, 44], 0.6) + dropPath([92, 43], 0.7)],
      ...bright(46, 38),
      ...bright(80, 38),
    ],
  ],
  grind: () => [
    begun({ depth: 3.5, height: 0.8, step: 8, seed: 21 }),
    finished({ depth: 3.5, height: 0.6, step: 10, seed: 21 }),
  ],
  'abrasive-blast': () => [
    [...upright(begun({ depth: 4, height: 2.4, step: 4, seed: 25 })), ['ink', 'M22 69H120']],
    [
      ...upright(finished({ depth: 4, height: 2.6, step: 4, seed: 25 })),
      ['ink', 'M22 69H120'],
      ...spentGrit,
    ],
  ],
  scarify: () => [
    [
      ...begun({ depth: 7, height: 3, step: 3, seed: 23 }),
      ['tone', `M0 38H120V${faceAt}H0z`],
      ['ink', `M0 38H120M0 ${faceAt}H120`],
    ],
    finished({ depth: 7, height: 3.6, step: 3, seed: 23 }),
  ],
  shotblast: () => [
    pitted(),
    [
      ...finished({ depth: 4, height: 2, step: 4, seed: 24 }),
      ['air', 'M18 49C18 58 32 58 32 49zM62 49C62 56 72 56 72 49zM94 49C94 59 110 59 110 49z'],
      ['heavy', 'M18 50C18 58 32 58 32 50M62 50C62 56 72 56 72 50M94 50C94 59 110 59 110 50'],
    ],
  ],
  'needle-scale': () => [
    begun({ depth: 4, height: 1.8, step: 3, seed: 27 }),
    finished({ depth: 4, height: 2.2, step: 2.6, seed: 27 }),
  ],
  'break-out': () => [
    [
      ...begun({ depth: 16, height: 5, step: 6, seed: 31 }),
      ['fine', 'M20 46l6 8-3 7M54 46l-4 9 5 6M92 46l5 7-4 8'],
    ],
    finished({ depth: 16, height: 5, step: 6, seed: 31 }),
  ],
  'water-jet': () => [
    [
      ...bare(12),
      ...unsound(rectangle(12, 47, 104, 61), 4),
      ['heavy', 'M0 46H120'],
      ['crayon', 'M10 62H106'],
    ],
    [
      ...pit(10, 106, 15, 12, 8),
      [
        'stone',
        'M22 61l4-6 6 2 1 6-6 3zM46 62l5-7 6 3-1 7-7 2zM74 61l5-6 6 3-1 6-7 2zM92 60l4-4 5 2-2 5z',
      ],
      ['ink', 'M22 61l4-6 6 2 1 6M46 62l5-7 6 3-1 7M74 61l5-6 6 3-1 6M92 60l4-4 5 2-2 5'],
    ],
  ],
};
