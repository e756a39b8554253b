import { describe, expect, it } from 'vitest';
import type { Job } from '$lib/answers/job';
import { planJob } from '$lib/plan/plan';
import { briefingOf } from '$lib/safety/briefing';
import { earsFor, mostWithBoth, takenOffBy } from '$lib/safety/ears';
import { earsOver } from '$lib/safety/ears-over';
import { crewDaysOf } from '$lib/safety/from-plan';
import { safetyOf } from '$lib/safety/safety-of';
import type { ShiftTask } from '$lib/safety/types';
import { earsInShort } from '$lib/ui/crew/in-short';
import { formatter } from '$lib/words/format';
import { planDocument } from '$words/plan/document';
import { briefingLine, earsLines, keepOffLine } from '$words/safety';
import { hollow } from '../helpers/crew-jobs';

const say = formatter('metric');
const hammer = (noise: number): Partial<Job> => ({
  toolLevels: {
    jackhammer: { noise },
    'chipping-hammer': { noise },
    'blast-nozzle': { noise: 95 },
  },
});
const laid = (job: Job) => {
  const plan = planJob(job);
  const crewPlan = crewDaysOf(plan, job);
  const days = crewPlan.shifts.map(({ workers }) => {
    const result = safetyOf({ region: 'elsewhere', workers, crew: crewPlan.crew });
    if (!result.ok) throw new Error('refused');
    return result.safety;
  });
  const told = JSON.stringify(
    planDocument(job, plan, say, { date: '', nameOf: (zone) => zone }).sections,
  );
  return { days, told, over: earsOver(plan, job, 'elsewhere') };
};

// 29 CFR 1910.95 Appendix B, halved as the OSHA Technical Manual does: a rating of 33 takes off
// (33 - 7) / 2 = 13 dB; muffs over plugs add 5 (from memory). Equal energy from 85 dB(A) over 8 h
// (Directive 2003/10/EC): with 18 dB off, 103 dB(A) for 8 h, 106 for 4, 109 for 2.
describe('ears where all that can be worn is too little', () => {
  it('plugs and muffs together take off 18 dB, so that 63 times the limit is the most', () => {
    expect(takenOffBy()).toEqual({ one: 13, both: 18 });
    expect(mostWithBoth('eu-upper')).toBeCloseTo(10 ** 1.8, 6);
    expect(earsFor(10 ** 1.79, 'eu-upper').by).toBe('both');
    expect(earsFor(10 ** 1.81, 'eu-upper').by).toBe('neither');
    // 3 dB for twice the time: 18 dB are 2 to the 6th (NIOSH 98-126).
    expect(mostWithBoth('niosh')).toBeCloseTo(64, 6);
  });

  const job = hollow({ crew: 2, ...hammer(112) });
  const { days, told, over } = laid(job);

  it('the plan says so where people are counted, with the hours a person may have and what helps', () => {
    if (!over) throw new Error('not over');
    const { title, lines } = earsLines(say, over);
    expect(title).toBe('Day 1 is too loud, even for plugs and muffs together.');
    // 112 dB(A) less 18 is 94: an hour of it is the day's 85 over 8 h.
    expect(over.hours).toBeGreaterThan(1);
    expect(over.most).toBeLessThanOrEqual(1.01);
    expect(over.most).toBeGreaterThan(0.8);
    // Four people would break out twice as much that day.
    expect(over.with).toBeNull();
    expect(lines.join(' ')).toMatch(
      /both take off 18\sdB\. With both on, one person has \d+\sminutes at the chipping hammer \(planned: .*\); even 4\speople are too few\. What helps: fewer hours a person, a quieter tool, .*distance.*specialist/,
    );
    expect(told).toContain(title);
  });

  it('asks for a crew only where the plan of that crew holds', () => {
    let asked = 0;
    for (let area = 1; area <= 12; area++) {
      const any = hollow({ crew: 2, ...hammer(110) }, {}, { area });
      const crew = earsOver(planJob(any), any, 'elsewhere')?.with;
      if (!crew) continue;
      asked++;
      const turns = crew.equal ? ('equal' as const) : ('one-operator' as const);
      const then = { ...any, crew: crew.people, crewDay: { turns } };
      expect(earsOver(planJob(then), then, 'elsewhere')).toBeNull();
      expect(earsLines(say, { ...over, with: crew } as never).lines.join(' ')).toMatch(
        crew.people > 2 ? /: \d+ people in place of 2/ : /, in equal turns/,
      );
    }
    expect(asked).toBeGreaterThan(0);
  });

  it('and at the step itself', () => {
    expect(over?.steps.get('break-out')).toBeCloseTo(over?.most ?? 0, 6);
    expect(told).toMatch(/Break out .*; Loud: 55.minutes a person, with plugs and muffs on/);
  });

  it('card, briefing and plan say the same of the same people', () => {
    const worst = days
      .flatMap(({ workers }) => workers)
      .filter(({ ears }) => ears?.by === 'neither');
    expect(worst.length).toBeGreaterThan(0);
    for (const { noise, ears } of worst)
      expect(earsInShort(say, noise.limits['eu-upper'].protector, ears)).toMatch(
        /^Plugs and muffs fall short/,
      );
    const [safety] = days;
    const line = safety && briefingOf(safety, [], []).find(({ id }) => id === 'ears');
    if (!safety || !line) throw new Error('no line');
    expect(briefingLine(say, line, safety).line).toMatch(
      /Not even plugs and muffs together do that.*specialist for ears/,
    );
    const needed = Math.ceil(Math.max(...worst.map(({ ears }) => ears?.needed ?? 0)));
    expect(earsLines(say, over as never).lines[0]).toMatch(
      new RegExp(`Usually ${String(needed)}\\sdB`),
    );
  });

  it('a day that plugs and muffs do for is not told of', () => {
    const quiet = laid(hollow({ crew: 2, ...hammer(104) }));
    expect(quiet.over).toBeNull();
    expect(quiet.told).not.toContain('even for plugs and muffs');
  });
});

// Free field, a small source (Georgia EPD: L2 = L1 - 20 log10(r2 / r1)): 109 dB(A) at 1 m is 85 at
// 10^(24/20) = 15.8 m. In a room a doubling takes off 1 to 2 dB further out: distance hardly helps.
describe('who works near wears protectors, and how far others stay', () => {
  const day = (setting: 'open' | 'indoors', level: number) => {
    const task: ShiftTask = {
      ...{ step: 'break-out', setting, hours: [1, 1], tool: 'chipping-hammer', ownLevel: level },
    };
    const result = safetyOf({ region: 'us', workers: [{ id: '1', tasks: [task] }] });
    if (!result.ok) throw new Error('refused');
    return result.safety;
  };

  it('goes by the loudest tool and the distance law, and in a room by its walls', () => {
    const { keepOff } = day('open', 109);
    // 6 dB for each doubling is 20 log10 to a third of a percent.
    expect(keepOff?.metres).toBeCloseTo(16, 1);
    expect(keepOff && keepOffLine(say, keepOff).replaceAll('\u00A0', ' ')).toBe(
      'Everybody at work wears ear protectors; others stay 20 m away while the chipping hammer runs.',
    );
    expect(keepOff && keepOffLine(formatter('us'), keepOff)).toMatch(/stay 60\sft away/);
    const inside = day('indoors', 109).keepOff;
    expect(inside && keepOffLine(say, inside)).toContain('others stay outside while');
    expect(day('open', 85).keepOff).toBeNull();
  });

  it('is read out with the line on the ears', () => {
    const safety = day('open', 109);
    const line = briefingOf(safety, [], []).find(({ id }) => id === 'ears');
    expect(line && briefingLine(say, line, safety).line).toMatch(
      /others stay 20\sm away while the/,
    );
  });
});
