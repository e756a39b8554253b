import type { Job } from '$lib/answers/job';
import { parseJob } from '$lib/keep/job-file';
import { problemSentence } from '$words/keep';
import { rectangle } from './drawings';

/** A job file with a drawing, as survey data is promised to be given. */
export const drawnFile = (survey?: unknown): Record<string, unknown> => ({
  format: 'down-to-sound.job',
  version: 1,
  site: {
    name: 'Slip at Marrow Quay (invented)',
    element: 'slab',
    setting: 'open',
    salts: 'none',
    freezeThaw: 'some',
    thickness: 200,
    warnings: [],
  },
  zones: [
    {
      id: 'a',
      area: 40,
      depth: 2,
      looseness: 'powdery',
      contamination: [],
      texture: 'sandy',
      cracks: 'open',
      steel: 'none-seen',
      finish: 'overlay',
    },
    {
      id: 'b',
      depth: 40,
      looseness: 'hollow',
      contamination: [],
      texture: 'sandy',
      cracks: 'none',
      steel: 'none-seen',
      finish: 'overlay',
    },
  ],
  ...(survey !== undefined && { survey }),
});
/** A good drawing of it. */
export const goodDrawing = {
  slab: { length: 6000, width: 8000 },
  joints: [
    [
      [3000, 0],
      [3000, 8000],
    ],
  ],
  marks: [
    { kind: 'spot', corners: rectangle(2600, 1000, 800, 500), depth: 40, zone: 'b' },
    {
      kind: 'crack',
      line: [
        [500, 7000],
        [500, 4000],
        [900, 3700],
      ],
      crack: 'open',
    },
    {
      kind: 'bar',
      line: [
        [2700, 1200],
        [3100, 1200],
      ],
    },
    {
      kind: 'upright',
      line: [
        [0, 8000],
        [6000, 8000],
      ],
    },
    ...[150, 450, 750, 1050, 1350].flatMap((x) =>
      [150, 450, 750, 1050].map((y) => ({
        kind: 'tap',
        at: [x, y],
        rings: x !== 750 || y !== 450,
      })),
    ),
  ],
};
/** The job with this drawing. */
export const readDrawn = (survey?: unknown): Job => {
  const job = parseJob(drawnFile(survey));
  if (!job.ok) throw new Error(problemSentence(job.problem));
  return job.value;
};
