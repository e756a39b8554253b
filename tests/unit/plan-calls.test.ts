import { expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { demoJob } from '$lib/keep/demos';
import { planJob } from '$lib/plan/plan';
import { formatter } from '$lib/words/format';
import { callLines } from '$words/plan/calls';
import { hollow } from '../helpers/crew-jobs';

const lines = (job: Job) =>
  callLines(
    planJob(job),
    (id) => job.zones.find((zone) => zone.id === id)?.name ?? '',
    formatter('metric'),
  );

// Common practice, no source: who has to come is asked before anything is hired, and "nobody" is an answer.
it('says that nobody has to be called, where that is so', () =>
  expect(lines(hollow())).toEqual([
    'No engineer or laboratory is needed before day 1. Have cables and pipes marked days ahead.',
  ]));

it('sends nobody to call himself: what the crew measures is told to the crew', () =>
  expect(lines(demoJob('larch-row'))).toEqual([
    'No engineer or laboratory is needed before day 1. Have cables and pipes marked days ahead.',
    'Measure yourselves before you begin there: Hollow by the kerb.',
  ]));

it('names whoever marks hidden cables before anything is cut', () =>
  expect(
    lines(hollow({}, { warnings: { yes: ['buried-services'], maybe: [] } } as never))[0],
  ).toMatch(/^Call before day 1: a service that locates cables and pipes\.$/));
