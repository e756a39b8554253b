import { expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { demoJob } from '$lib/keep/demos';
import { planJob } from '$lib/plan/plan';
import { formatter } from '$lib/words/format';
import { callLines } from '$words/plan/calls';
import { boatShed } from '../helpers/boat-shed';
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
    'No engineer or laboratory is needed before day 1.',
    'Have cables and pipes marked days ahead.',
  ]));

it('sends nobody to call himself: what the crew measures is told to the crew', () =>
  expect(lines(demoJob('larch-row'))).toEqual([
    'No engineer or laboratory is needed before day 1.',
    'Have cables and pipes marked days ahead.',
    'Measure yourselves before you begin there: Hollow by the kerb.',
  ]));

it('names whoever marks hidden cables before anything is cut', () =>
  expect(
    lines(hollow({}, { warnings: { yes: ['buried-services'], maybe: [] } } as never))[0],
  ).toMatch(/^Call before day 1: a service that locates cables and pipes\.$/));

// Common practice, no source: a wash reaches no cable. Where it is broken they are marked.
it('has nothing marked for a wash, found cables or not', () => {
  const washed = (...yes: string[]) =>
    lines(
      boatShed(
        { warnings: { yes, maybe: [] } },
        { depth: ['film'], looseness: ['tight'], finish: ['sealer'] },
      ),
    );
  const nobody = ['No engineer or laboratory is needed before day 1.'];
  expect(washed()).toEqual(nobody);
  expect(washed('buried-services')).toEqual(nobody);
});

// Common practice, no source: they are marked ahead of any tool that goes in, whatever else is open.
it('has cables and pipes marked while a laboratory is awaited too', () =>
  expect(
    lines(hollow({}, { warnings: { yes: ['old-coating-or-adhesive'], maybe: [] } } as never)),
  ).toEqual([
    'Call before day 1: a testing laboratory.',
    'Have cables and pipes marked days ahead.',
  ]));

// An engineer judges salt at the steel past the limits that the figures `chloride.*` name.
it('calls an engineer where so much salt was measured at the steel that one has to judge it', () => {
  const measured = (...readings: (number | string)[]) => {
    const job = hollow();
    const zones = job.zones.map((zone) => ({
      ...zone,
      readiness: { seed: 1, results: { chloride: { readings } } },
    }));
    return lines({ ...job, zones })[0];
  };
  expect(measured(0.05, 1.2)).toBe('Call before day 1: a licensed structural engineer.');
  for (const low of [[0.05, 0.05], [], ['', 'much']])
    expect(measured(...low)).toBe('No engineer or laboratory is needed before day 1.');
});
