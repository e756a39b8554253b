import { describe, expect, it } from 'vitest';
import { parseJob, readJobText, writeJob } from '$lib/keep/job-file';
import { jobSchema } from '$lib/keep/job-schema';
import { readShareLink, shareLink } from '$lib/keep/share-link';
import { diceFrom } from '$lib/practice/dice';
import { surveyOf } from '$lib/survey/survey';
import { problemSentence } from '$words/keep';
import { anyDrawing, drawn, rectangle } from '../helpers/drawings';
import { drawnFile, goodDrawing as good, readDrawn } from '../helpers/drawn-file';

const said = (survey: unknown): string => {
  const read = parseJob(drawnFile(survey));
  return read.ok ? 'accepted' : problemSentence(read.problem);
};
const withMark = (mark: unknown) => said({ ...good, marks: [...good.marks, mark] });
describe('the drawing in a job file', () => {
  it('comes back exactly, from values, text and link', async () => {
    const job = readDrawn(good);
    expect(writeJob(job).survey).toEqual(good);
    expect(await readJobText(JSON.stringify(drawnFile(good)))).toEqual({ ok: true, value: job });
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
    expect(surveyOf(readDrawn({ ...good, marks }))?.remarks).toEqual([
      { path: ['marks', 0, 'corners'], remark: 'cut-by-joint' },
      { path: ['marks', 1, 'corners'], remark: 'over-edge' },
      { path: ['marks', 2, 'zone'], remark: 'unknown-zone' },
    ]);
  });
});
