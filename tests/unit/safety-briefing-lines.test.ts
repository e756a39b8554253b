import { describe, expect, it } from 'vitest';
import type { Plan } from '$lib/plan/plan';
import { briefingOf, gravestFirst, rowsToSign, worstHelp, worstOff } from '$lib/safety/briefing';
import { crewHazards, type CrewHazard } from '$lib/safety/crew-hazards';
import {
  hazardsOf,
  mixProblem,
  mixShift,
  mixWorkers,
  motorSteps,
  toolsForMix,
} from '$lib/safety/mix';
import { type Safety } from '$lib/safety/safety-of';
import { hazardIds, hazardsOfStep, type HazardId } from '$shared/methods';
import { hollow } from '../helpers/crew-jobs';
import { at, brings, day, shaking } from '../helpers/shift-tasks';

// What can kill at once goes first (common practice, no source); dust, noise and vibration have lines
// of their own.
const gravest: HazardId[] = [
  ...(['structure', 'falls', 'electric', 'carbon-monoxide', 'water-injection'] as const),
  ...(['lead-asbestos', 'overhead', 'eyes'] as const),
];
const graver = [
  ...gravest,
  ...hazardIds.filter(
    (id) => !gravest.includes(id) && !['silica', 'noise', 'vibration'].includes(id),
  ),
];

describe('what is read out before work', () => {
  const all = hazardIds.map((id) => brings(id, 'break-out'));
  it('stops for the gravest first', () => {
    expect(gravestFirst(all)).toEqual(graver);
    expect(gravestFirst([...all].reverse())).toEqual(graver);
  });

  const ids = (safety: Safety, hazards: readonly CrewHazard[] = [], held: string[] = []) =>
    briefingOf(safety, hazards, held).map((line) =>
      line.id === 'stop' ? `stop for ${line.hazard}` : line.id,
    );
  it('is a line for each thing there is, and never more than eight', () => {
    const hammering = day([at()], []);
    expect(ids(hammering)).toEqual(['dust-controls', 'ears', 'hands', 'anyone']);
    expect(ids(hammering, [brings('electric'), brings('eyes')], ['Ramp'])).toEqual([
      ...['dust-controls', 'ears', 'eyes', 'hands', 'leave', 'stop for electric', 'anyone'],
    ]);
    expect(ids(hammering, all)).toEqual([
      ...['dust-controls', 'ears', 'eyes', 'hands'],
      ...['structure', 'falls', 'electric'].map((id) => `stop for ${id}`),
      'anyone',
    ]);
    expect(ids(hammering, [brings('electric')])).not.toContain('eyes');
    const vacuum = at({ step: 'vacuum' });
    const sounding = at({ step: 'sound-and-mark' });
    expect(ids(day([at(), sounding]))).toContain('dust-controls');
    expect(ids(day([at(), vacuum]))).not.toContain('cleaning');
    expect(ids(day([vacuum, sounding]))).toContain('cleaning');
    expect(ids(day())).toEqual(['anyone']);
    expect(ids(day([at({ step: 'vacuum' })]))).toEqual(['cleaning', 'ears', 'anyone']);
    expect(ids(day([at({ step: 'sound-and-mark' })]))).toEqual(['anyone']);
    // A saw nobody has measured may shake, a quiet tool may still be heard.
    expect(ids(day([at({ step: 'pressure-wash' })]))).toEqual(['ears', 'hands', 'anyone']);
    expect(ids(day([at({ step: 'shotblast' })]))).toEqual([
      ...['dust-controls', 'mask', 'ears', 'hands', 'anyone'],
    ]);
  });

  it('has a row to sign for everybody, and some for whoever joins', () =>
    expect([1, 4, 5, 10, 11].map(rowsToSign)).toEqual([8, 8, 9, 14, 14]));

  it('names the strictest mask of the day, and whose ears have most to bear', () => {
    const blasting = at({ step: 'abrasive-blast' });
    const safety = day([at({ step: 'sound-and-mark' })], [blasting], [at({ step: 'shotblast' })]);
    const lines = briefingOf(safety, [], ['Ramp', 'Step']);
    expect(lines.find(({ id }) => id === 'mask')).toEqual({
      ...{
        id: 'mask',
        factor: 20,
        hood: true,
        near: false,
        measure: ['blast-nozzle', 'shotblaster'],
      },
    });
    expect(lines.find(({ id }) => id === 'ears')).toEqual({
      ...{ id: 'ears', worker: safety.workers[1], away: safety.keepOff },
    });
    expect(lines.find(({ id }) => id === 'leave')).toEqual({
      id: 'leave',
      zones: ['Ramp', 'Step'],
    });
  });

  it('goes by the person worst off in each', () => {
    const long = at({ step: 'saw-cut', tool: 'walk-behind-saw', hours: [4, 4], ownLevel: 80 });
    const safety = day([at({ hours: [0.5, 0.5] })], [long], [shaking(30, 1, { ownLevel: 60 })]);
    const worst = worstOff(safety);
    expect([worst.dust?.id, worst.noise?.id, worst.vibration?.id]).toEqual(['2', '1', '3']);
    const { workers } = safety;
    expect(worstHelp(safety)).toBe(
      workers.map(({ help }) => help).toSorted((a, b) => (b?.now ?? 0) - (a?.now ?? 0))[0],
    );
    expect(worstHelp(day([at({ step: 'sound-and-mark' })]))).toBeNull();
    expect(worstOff(day())).toEqual({ dust: undefined, noise: undefined, vibration: undefined });
    // Of two alike the first.
    expect(worstOff(day([long], [long])).dust?.id).toBe('1');
  });
});

describe('the hazards of a day', () => {
  const job = hollow();
  it('are those of its steps where they are done, in one order', () => {
    const hazards = crewHazards(job, [
      { id: 'saw-cut', zones: ['a'] },
      { id: 'break-out', zones: ['a', 'gone'] },
      { id: 'grind', zones: ['gone'] },
    ]);
    expect(hazards.map(({ hazard }) => hazard)).toEqual(
      hazardIds.filter((id) => hazards.some(({ hazard }) => hazard === id)),
    );
    const steps = new Map(hazards.map(({ hazard, steps: bringing }) => [hazard, bringing]));
    expect(steps.get('electric')).toEqual(['saw-cut', 'break-out']);
    expect(steps.get('silica')).toEqual(['saw-cut', 'break-out']);
    expect(hazards.flatMap(({ steps: bringing }) => bringing)).not.toContain('grind');
  });

  it('take an answer that is open, missing or only possible as there', () => {
    const names = (change: object) =>
      crewHazards({ ...job, ...change }, [{ id: 'grind', zones: ['a'] }]).map(
        ({ hazard }) => hazard,
      );
    const [zone] = job.zones;
    const coated = (contamination: object | undefined) =>
      names({ zones: [{ ...zone, answers: { ...zone?.answers, contamination } }] });
    expect(names({})).not.toContain('lead-asbestos');
    expect(coated({ yes: ['thin-coating'], maybe: [] })).toContain('lead-asbestos');
    expect(coated({ yes: [], maybe: ['thick-coating'] })).toContain('lead-asbestos');
    expect(coated(undefined)).toContain('lead-asbestos');
    const site = (change: object) => names({ site: { ...job.site, ...change } });
    expect(site({ warnings: undefined })).toContain('lead-asbestos');
    const yes = { yes: ['old-coating-or-adhesive'], maybe: [] };
    expect(site({ warnings: yes })).toContain('lead-asbestos');
    expect(site({ element: undefined })).toEqual(expect.arrayContaining(['overhead', 'falls']));
    expect(names({})).not.toContain('overhead');
  });

  it('are of the zones that need not wait, or of all where a step was begun all the same', () => {
    const shift = { days: [1, 1], steps: ['grind'], workers: [] } as const;
    const zones = ['a', 'b'].map((id) => ({ ...job.zones[0], id }));
    const answers = {
      ...job.zones[0]?.answers,
      contamination: { yes: ['thin-coating'], maybe: [] },
    };
    const two = { ...job, zones: [zones[0], { ...zones[1], answers }] } as typeof job;
    const plan = (waiting: readonly string[], where: readonly string[]) =>
      ({
        zones: ['a', 'b'].map((id) => ({ id, holds: waiting.includes(id) ? [{}] : [] })),
        steps: [
          { id: 'grind', zones: where },
          { id: 'saw-cut', zones: ['a'] },
        ],
      }) as unknown as Plan;
    const lead = (waiting: readonly string[], where: readonly string[]) =>
      hazardsOf(two, shift, plan(waiting, where)).some(({ hazard }) => hazard === 'lead-asbestos');
    expect([lead([], ['a', 'b']), lead(['b'], ['a', 'b']), lead(['b'], ['b'])]).toEqual([
      ...[true, false, true],
    ]);
    const steps = hazardsOf(two, shift, plan([], ['a'])).flatMap(({ steps: bringing }) => bringing);
    expect(new Set(steps)).toEqual(new Set(['grind']));
    // Without a plan, of the steps alone.
    const alone = hazardsOf(job, { ...shift, steps: ['grind', 'vacuum'] }, null);
    expect(alone).toEqual(
      hazardIds
        .map((id) =>
          brings(
            id,
            ...(['grind', 'vacuum'] as const).filter((step) => hazardsOfStep[step].includes(id)),
          ),
        )
        .filter(({ steps: bringing }) => bringing.length),
    );
  });
});

describe('a day put together by hand', () => {
  const mix = [{ step: 'break-out', tool: 'jackhammer', minutes: 90 }] as const;
  const job = hollow({
    crewDay: { mix, mixSetting: 'indoors' },
    toolLevels: { jackhammer: { noise: 99 } },
  });
  it('is one person’s, in the open unless said, with what is known of the tools', () => {
    const task = { step: 'break-out', tool: 'jackhammer', hours: [1.5, 1.5], ownLevel: 99 };
    expect(mixWorkers(job)).toEqual([{ id: '1', tasks: [{ ...task, setting: 'indoors' }] }]);
    expect(mixShift(job)).toEqual({ days: [1, 1], steps: ['break-out'], workers: mixWorkers(job) });
    expect(mixWorkers(hollow(), mix)[0]?.tasks[0]?.setting).toBe('open');
    expect(mixWorkers(hollow())).toEqual([{ id: '1', tasks: [] }]);
    expect(mixProblem(job, mix)).toBeNull();
    expect(mixProblem(job, [{ ...mix[0], minutes: -6 }])).toMatchObject({
      problem: 'hours-negative',
    });
  });
  it('has for each step the tools of floors and others, and what stands by', () => {
    expect(toolsForMix('break-out')).toEqual(['jackhammer', 'chipping-hammer', 'compressor']);
    expect(toolsForMix('saw-cut')).toEqual(['walk-behind-saw', 'hand-saw', 'compressor']);
    expect(motorSteps(['sound-and-mark', 'break-out', 'degrease', 'cure'])).toEqual([
      ...['break-out', 'degrease'],
    ]);
  });
});
