import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whyNotAsked } from '$lib/advice/relevance';
import type { Job } from '$lib/answers/job';
import { questionIds, questions } from '$lib/answers/questions';
import type { AnswerGiven } from '$lib/interview/context';
import { roomFor, withoutAdded, withZones } from '$lib/ui/job/edits';
import type { ZoneAnswers } from '$lib/answers/answers';
import { glanceOf, isDrawn } from '$lib/ui/job/glance';
import { answerNow, changeBack, changeInPlace } from '$lib/ui/job/in-place';
import { withAnswer } from '$lib/ui/with-answer';
import { questionWords } from '$words/questions';
import { formatter } from '../helpers/plain-formatter';
import { anyAnswer, anyJob } from '../helpers/any-job';
import { rounds } from '../helpers/rounds';

const anyGiven = fc
  .constantFrom(...questionIds)
  .chain((question) => anyAnswer(question).map((answer) => ({ question, answer }) as AnswerGiven));

describe('an answer changed where it stands', () => {
  it('is what the interview would have written, and goes back exactly', () => {
    let taken = 0;
    fc.assert(
      fc.property(anyJob(3, 1), anyGiven, fc.nat(), (job, given, dice) => {
        const zone = job.zones[dice % job.zones.length] as Job['zones'][number];
        const result = changeInPlace(job, zone.id, given, answerNow(job, zone.id, given.question));
        if ('refused' in result) {
          expect(result.refused).toBe('not-asked');
          expect(whyNotAsked(given.question, job.site, zone.answers)).not.toBeNull();
          return;
        }
        taken += 1;
        expect(result.job).toEqual(withAnswer(job, zone.id, given));
        expect(answerNow(result.job, zone.id, given.question)).toEqual(given.answer);
        expect(changeBack(result.job, result.changed)).toEqual({ job });
      }),
      { numRuns: rounds(125, 500) },
    );
    expect(taken).toBeGreaterThan(rounds(60, 100));
  });

  const zone = { id: 'a', name: 'Ramp', answers: { depth: 20 } } as const;
  const job: Job = { name: '', site: {}, zones: [zone], totalArea: 40, rest: 'a' };
  const deeper = { question: 'depth', answer: 30 } as const;

  it('is refused when the zone is gone, and nothing is written', () => {
    expect(changeInPlace(job, 'b', deeper, 20)).toEqual({ refused: 'zone-gone' });
  });

  it('is refused when the question counts for nothing any more', () => {
    const through: Job = { ...job, zones: [{ ...zone, answers: { depth: ['through'] } }] };
    const given = { question: 'looseness', answer: ['hollow'] } as const;
    expect(changeInPlace(through, 'a', given, undefined)).toEqual({ refused: 'not-asked' });
  });

  it('does not write over what another tab has answered meanwhile', () => {
    expect(changeInPlace(job, 'a', deeper, 10)).toEqual({ refused: 'changed-elsewhere' });
  });

  it('makes the rest a zone like the others by an area of its own, and undoing makes it the rest', () => {
    const given = { question: 'area', answer: 12 } as const;
    const result = changeInPlace(job, 'a', given, undefined);
    if ('refused' in result) throw new Error(result.refused);
    expect(result.job.rest).toBeUndefined();
    expect(changeBack(result.job, result.changed)).toEqual({ job });
  });

  it('is not undone over a later answer, nor in a zone that is gone', () => {
    const result = changeInPlace(job, 'a', deeper, 20);
    if ('refused' in result) throw new Error(result.refused);
    const later = withAnswer(result.job, 'a', { question: 'depth', answer: 50 });
    expect(changeBack(later, result.changed)).toEqual({ refused: 'changed-elsewhere' });
    expect(changeBack({ ...job, zones: [] }, result.changed)).toEqual({ refused: 'zone-gone' });
  });
});

describe('zones of a table', () => {
  const anyAdded = anyJob(5, 1, false).map(({ zones }) => zones);

  it('come behind the others under ids of their own, and go again', () => {
    fc.assert(
      fc.property(anyJob(4, 1), anyAdded, (job, added) => {
        const { job: more, ids } = withZones(job, added);
        const all = more.zones.map(({ id }) => id);
        expect(new Set(all).size).toBe(all.length);
        const fresh = more.zones.slice(-added.length);
        expect(fresh.map(({ id }) => id)).toEqual(ids);
        expect(fresh.map(({ name, answers }) => ({ name, answers }))).toEqual(
          added.map(({ name, answers }) => ({ name, answers })),
        );
        const [first] = job.zones;
        const blank =
          job.zones.length === 1 && !first?.name && !Object.keys(first?.answers ?? {})[0];
        if (!blank) expect(withoutAdded(more, fresh)).toEqual(job);
      }),
    );
  });

  it('take the place of the one zone nobody has said anything of', () => {
    const blank: Job = { name: '', site: {}, zones: [{ id: 'a', name: '', answers: {} }] };
    const { job } = withZones(blank, [{ name: 'Ramp', answers: {} }]);
    expect(job.zones.map(({ name }) => name)).toEqual(['Ramp']);
    expect([roomFor(blank, 10), roomFor(job, 10)]).toEqual([10, 9]);
    expect(withoutAdded(job, job.zones).zones).toHaveLength(1);
  });

  it('stay where somebody has answered more of them since', () => {
    const start: Job = { name: '', site: {}, zones: [{ id: 'a', name: 'A', answers: {} }] };
    const { job } = withZones(start, [{ name: 'B', answers: {} }]);
    const added = job.zones.slice(1);
    const later = withAnswer(job, 'b', { question: 'area', answer: 3 });
    expect(withoutAdded(later, added)).toEqual(later);
  });
});

describe('a zone at a glance', () => {
  const say = formatter('metric');
  const asked = questionWords(say);

  it('says what tells it apart, and leaves out what is not there', () => {
    expect(
      glanceOf(
        {
          depth: 60,
          looseness: ['hollow'],
          contamination: { yes: [], maybe: [] },
          texture: ['pitted'],
          cracks: ['none'],
          steel: ['corroded'],
          finish: ['overlay', 'thin-overlay'],
        },
        asked,
        say,
      ),
    ).toEqual([
      'Depth: 60 mm',
      'Hollow',
      asked.steel.choices.corroded.name,
      'Finish: Could be Overlay or patch or Thin overlay',
    ]);
  });

  it('says what is from the drawing and not from an answer', () => {
    const given: ZoneAnswers = { cracks: ['hairline', 'open'], looseness: ['hollow'], area: 3 };
    const shown = { ...given, cracks: ['open', 'hairline'], depth: 90, area: 24 } as const;
    expect(glanceOf(shown, asked, say, given)).toEqual([
      'Depth: 90 mm (drawn)',
      'Hollow',
      expect.not.stringContaining('drawn'),
    ]);
    expect(isDrawn('area', shown, given)).toBe(true);
    expect(isDrawn('cracks', shown, given)).toBe(false);
    expect(isDrawn('depth', given, given)).toBe(false);
    expect(glanceOf(shown, asked, say)[0]).toBe('Depth: 90 mm');
  });

  it('is short: six answers at most, whatever was given', () => {
    fc.assert(
      fc.property(anyJob(2, 1, false), ({ zones }) => {
        for (const { answers } of zones)
          expect(glanceOf(answers, asked, say).length).toBeLessThanOrEqual(6);
      }),
    );
    expect(Object.keys(questions).length).toBeGreaterThan(6);
  });
});
