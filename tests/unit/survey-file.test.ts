import { describe, expect, it } from 'vitest';
import { adviceDocument } from '../../src/cli/advice-document';
import type { Mark } from '$lib/answers/survey';
import { parseJob, readJobText, writeJob } from '$lib/keep/job-file';
import { jobSchema } from '$lib/keep/job-schema';
import { readShareLink, shareLink } from '$lib/keep/share-link';
import { diceFrom } from '$lib/practice/dice';
import { planJob } from '$lib/plan/plan';
import { surveyOf } from '$lib/survey/survey';
import { problemSentence } from '$lib/words/en/keep';
import { anyDrawing, drawn, rectangle } from '../helpers/drawings';

/** A job file with a drawing, as survey data is promised to be given. */
const file = (survey: unknown): Record<string, unknown> => ({
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
  survey,
});
const good = {
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
const said = (survey: unknown): string => {
  const read = parseJob(file(survey));
  return read.ok ? 'accepted' : problemSentence(read.problem);
};
const withMark = (mark: unknown) => said({ ...good, marks: [...good.marks, mark] });
const read = (survey: unknown) => {
  const job = parseJob(file(survey));
  if (!job.ok) throw new Error(problemSentence(job.problem));
  return job.value;
};

describe('the drawing in a job file', () => {
  it('comes back exactly, from values, text and link', async () => {
    const job = read(good);
    expect(writeJob(job).survey).toEqual(good);
    expect(await readJobText(JSON.stringify(file(good)))).toEqual({ ok: true, value: job });
    for (let seed = 1; seed <= 50; seed += 1) {
      const random = drawn(anyDrawing(diceFrom(seed)));
      expect(parseJob(JSON.parse(JSON.stringify(writeJob(random))))).toEqual({
        ok: true,
        value: random,
      });
    }
    const link = await shareLink(job, 'https://example.org/jobs/');
    if (!link.ok) throw new Error('too long');
    expect(await readShareLink(new URL(link.link).hash)).toEqual({ ok: true, value: job });
  });

  it('is in the published schema', () => {
    expect(JSON.stringify(jobSchema())).toContain('"upright"');
  });

  it('may give corners, repeat the first at the end, and lay steps flat', () => {
    const corners = rectangle(0, 0, 6000, 8000);
    expect(said({ slab: { corners } })).toBe('accepted');
    expect(said({ slab: { corners: [...corners, corners[0]] } })).toBe('accepted');
    expect(said({ slab: { steps: { count: 4, tread: 280, riser: 170, width: 1500 } } })).toBe(
      'accepted',
    );
  });

  it.each([
    [
      'an outline that crosses itself',
      {
        kind: 'spot',
        corners: [
          [100, 100],
          [900, 900],
          [900, 100],
          [100, 900],
        ],
      },
      'marks[24].corners: expected an outline that does not cross',
    ],
    [
      'a spot off the slab',
      { kind: 'spot', corners: rectangle(7000, 100, 300, 300) },
      'marks[24].corners: expected a place on the slab',
    ],
    [
      'a tap off the slab',
      { kind: 'tap', at: [7000, 100], rings: true },
      'marks[24].at: expected a place on the slab',
    ],
    [
      'a crack off the slab',
      {
        kind: 'crack',
        line: [
          [7000, 100],
          [7000, 400],
        ],
        crack: 'open',
      },
      'marks[24].line: expected a place on the slab',
    ],
    [
      'an outline that does not close',
      {
        kind: 'spot',
        corners: [
          [100, 100],
          [900, 900],
        ],
      },
      'marks[24].corners: expected at least three corners',
    ],
    [
      'an outline without area',
      {
        kind: 'spot',
        corners: [
          [100, 100],
          [900, 100],
          [500, 100],
        ],
      },
      'marks[24].corners: expected',
    ],
    [
      'a spot in metres',
      { kind: 'spot', corners: rectangle(1.2, 0.8, 0.4, 0.3) },
      'marks[24].corners: expected millimetres',
    ],
    [
      'an unknown field',
      { kind: 'tap', at: [100, 100], rings: true, ring: false },
      'marks[24].ring: expected a field that is known here',
    ],
    ['an unknown kind', { kind: 'hole', at: [100, 100] }, 'marks[24].kind: expected one of "spot"'],
    [
      'an unknown kind of crack',
      {
        kind: 'crack',
        line: [
          [0, 0],
          [900, 900],
        ],
        crack: 'deep',
      },
      'marks[24].crack: expected one of "hairline"',
    ],
    [
      'three numbers for a place',
      { kind: 'tap', at: [100, 100, 5], rings: true },
      'marks[24].at: expected',
    ],
    [
      'a tap that neither rings nor not',
      { kind: 'tap', at: [100, 100], rings: 'yes' },
      'marks[24].rings: expected true or false',
    ],
  ])('refuses %s at the mark', (_what, mark, sentence) => {
    expect(withMark(mark)).toContain(`survey.${sentence}`);
  });

  it.each([
    ['a slab in metres', { slab: { length: 6, width: 8 } }, 'survey.slab: expected millimetres'],
    ['a slab that is neither', { slab: { length: 6000 } }, 'survey.slab: expected the surface as'],
    [
      'a slab that crosses itself',
      {
        slab: {
          corners: [
            [0, 0],
            [6000, 8000],
            [6000, 0],
            [0, 8000],
          ],
        },
      },
      'survey.slab.corners: expected an outline that does not cross',
    ],
    [
      'a joint off the slab',
      {
        ...good,
        joints: [
          [
            [9000, 0],
            [9000, 8000],
          ],
        ],
      },
      'survey.joints[0]: expected a place on the slab',
    ],
    [
      'a joint of one place',
      { ...good, joints: [[[3000, 0]]] },
      'survey.joints[0]: expected at least two places',
    ],
    [
      'a joint in a ring',
      {
        ...good,
        joints: [
          [
            [1000, 1000],
            [2000, 1000],
            [1500, 2000],
            [1000, 1000],
          ],
        ],
      },
      'survey.joints[0]: expected a joint from edge to edge',
    ],
    [
      '10,000 marks',
      { ...good, marks: Array.from({ length: 10_000 }, () => good.marks[4]) },
      'survey.marks: expected a list of at most 5,000',
    ],
    [
      'an unknown part',
      { ...good, notes: '' },
      'survey.notes: expected a field that is known here',
    ],
  ])('refuses %s', (_what, survey, sentence) => {
    expect(said(survey)).toContain(sentence);
  });

  it('tells, without refusing, what may be a slip', () => {
    const marks = [
      { kind: 'zone', zone: 'a', corners: rectangle(2000, 2000, 2000, 2000) },
      { kind: 'spot', corners: rectangle(5800, 100, 400, 400) },
      { kind: 'spot', corners: rectangle(1000, 6000, 400, 400), zone: 'c' },
      // Up to the joint and no further is no cut.
      { kind: 'zone', zone: 'b', corners: rectangle(3000, 5000, 2000, 2000) },
    ];
    expect(surveyOf(read({ ...good, marks }))?.remarks).toEqual([
      { path: ['marks', 0, 'corners'], remark: 'cut-by-joint' },
      { path: ['marks', 1, 'corners'], remark: 'over-edge' },
      { path: ['marks', 2, 'zone'], remark: 'unknown-zone' },
    ]);
  });
});

describe('what the command line says of a drawing', () => {
  it('has every promised field', () => {
    const { survey, plan } = JSON.parse(JSON.stringify(adviceDocument(read(good))));
    expect(survey.patches).toMatchObject([
      { x: 2500, y: 900, length: 500, width: 700, bay: '1', zone: 'b' },
      { x: 3000, y: 900, length: 500, width: 700, bay: '2', zone: 'b' },
    ]);
    expect(survey.bays).toEqual([
      { id: '1', area: 24, patched: 0.35, whole: false },
      { id: '2', area: 24, patched: 0.35, whole: false },
    ]);
    // Each 500 + 700 + 500 mm; the joint is there.
    expect(survey.sawCut).toBeCloseTo(3.4, 9);
    expect(survey.spacing).toBe(300);
    expect(survey.found.ninety).toBeCloseTo(0.5575 * 300, 1);
    // Zone b is its spot, 0.8 x 0.5 m; a is what is left of 6 x 8 m.
    expect(survey.areas.b).toBeCloseTo(0.4, 9);
    expect(survey.areas.a).toBeCloseTo(47.6, 6);
    expect(survey.cracks).toEqual({ open: 3.5 });
    expect(survey.cracksByZone.a).toBeCloseTo(3.5, 9);
    expect(survey.upright).toBe(6);
    expect(survey.uprightByZone.a).toBeCloseTo(6, 9);
    expect(survey.bars).toBeCloseTo(0.4, 9);
    // One dull tap by itself is asked for again.
    expect(survey.taps).toEqual({ tapAgain: [13], outline: [] });
    // 0.7 m2 x (40 + 13) mm, of 48 m2 x 200 mm.
    expect(survey.removal.volume).toBeCloseTo(0.0371, 6);
    expect(survey.removal.share).toBeCloseTo(0.0371 / 9.6, 8);
    // The plan saws and breaks out what the drawing lays, not a square of the area.
    const zone = plan.zones.find(({ id }: { id: string }) => id === 'b');
    expect(zone.method).toBe('break-out');
    expect(zone.quantities['patch-area'].span).toEqual([0.7, 0.7]);
    expect(zone.quantities['saw-cut'].span[0]).toBeCloseTo(3.4, 9);
  });

  it('is absent without a drawing', () => {
    const { survey: _none, ...bare } = file(good);
    const job = parseJob(bare);
    if (!job.ok) throw new Error('refused');
    expect(adviceDocument(job.value)).not.toHaveProperty('survey');
  });

  it('outranks typed areas, in the plan as in the advice', () => {
    const { zones } = planJob(read(good));
    const a = zones.find(({ id }) => id === 'a');
    expect(a?.quantities.area).toMatchObject({
      span: [expect.closeTo(47.6, 6), expect.closeTo(47.6, 6)],
    });
  });
});

describe('a link with 200 marks', () => {
  it('is at most 2,000 characters long, or the file is offered', async () => {
    const taps = Array.from({ length: 200 }, (_, index): Mark => ({
      kind: 'tap',
      at: [150 + 300 * (index % 20), 150 + 300 * Math.floor(index / 20)],
      rings: index % 17 !== 0,
    }));
    const slab = { length: 6000, width: 8000 };
    const even = await shareLink(drawn({ slab, marks: taps }), 'https://example.org/jobs/');
    expect(even.ok).toBe(true);
    const dice = diceFrom(3);
    const spots = Array.from({ length: 200 }, (): Mark => ({
      kind: 'spot',
      corners: rectangle(
        dice.between(0, 5000),
        dice.between(0, 7000),
        dice.between(100, 900),
        dice.between(100, 900),
      ),
      depth: dice.between(10, 60),
    }));
    const wild = await shareLink(drawn({ slab, marks: spots }), 'https://example.org/jobs/');
    console.log(
      `200 taps: ${even.ok ? even.link.length : even.length} characters; 200 spots: ${wild.ok ? wild.link.length : wild.length}`,
    );
    for (const link of [even, wild])
      if (link.ok) expect(link.link.length).toBeLessThanOrEqual(2000);
      else expect(link.length).toBeGreaterThan(link.most);
  });
});
