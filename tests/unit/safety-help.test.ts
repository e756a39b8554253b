import { describe, expect, it } from 'vitest';
import { briefingOf } from '$lib/safety/briefing';
import { safetyOf } from '$lib/safety/safety-of';
import type { ShiftTask } from '$lib/safety/types';
import { formatter } from '$lib/words/format';
import { briefingLine, helpSentence } from '$words/safety';

const say = formatter('metric');
const day = (crew: number, ...tasks: readonly ShiftTask[]) => {
  const workers = [{ id: '1', tasks }, ...(crew > 1 ? [{ id: '2', tasks: [] }] : [])];
  const result = safetyOf({ region: 'elsewhere', workers, crew });
  if (!result.ok) throw new Error('refused');
  return result.safety;
};
const at = (level: number, hours: number): ShiftTask => ({
  step: 'abrasive-blast',
  setting: 'open',
  hours: [hours, hours],
  tool: 'blast-nozzle',
  ownLevel: level,
});
const helped = (task: ShiftTask) => {
  const help = day(2, task).workers[0]?.help;
  if (!help) throw new Error('no help');
  return { help, told: helpSentence(say, help) };
};

// Equal energy (EU 2003/10/EC; SCENIHR 2008 Table 3): 85 dB(A) for 8 h, twice for every 3 dB.
// A rating of 33 gives (33 - 7) / 2 = 13 dB in real use (29 CFR 1910.95 Appendix B, halved as the OSHA
// Technical Manual does); muffs over plugs add 5 (from memory): 18.
describe('what helps most', () => {
  it('says that it is noise, what stays over, and that plugs and muffs together then do', () => {
    // 8 h at 107 dB(A): 22 dB over, 158 times; both let 63 times through: three people, 17.2 to take off.
    const { help, told } = helped(at(107, 8));
    expect(help).toMatchObject({ over: 'noise', still: 'noise', ears: { by: 'both' } });
    expect(help).toMatchObject({ change: 'people', people: 3 });
    expect(help.ears?.needed).toBeCloseTo(17.2, 1);
    expect(told).toMatch(
      /usually are, without protectors: .* noise limit\. What .* That leaves .* times; plugs and muffs together are then enough/,
    );
  });
  it('says where one protector is enough, and where not even both are', () => {
    expect(helped(at(100, 8)).help.ears?.by).toBe('one');
    const { help, told } = helped(at(114, 8));
    expect(help.ears?.by).toBe('neither');
    expect(told).toContain('plugs and muffs together are still not enough');
  });
  it('counts the people there are: four who are there already are no change', () => {
    // Four at 100 dB(A) for 8 h each: 31.6 times the limit for everybody, and no turns change that.
    const loud = at(100, 8);
    const workers = ['1', '2', '3', '4'].map((id) => ({ id, tasks: [loud] }));
    const result = safetyOf({ region: 'elsewhere', workers, crew: 4 });
    if (!result.ok) throw new Error('refused');
    const help = result.safety.workers[0]?.help;
    if (help?.change !== 'people') throw new Error('no people');
    expect(help.people).toBe(8);
    expect(help.crew).toBe(4);
    // Half of their own each, and what is heard from beside stays.
    expect(help.then).toBeGreaterThan(help.now / 2);
    expect(helpSentence(say, help)).toContain('8 people at this day’s work in place of 4');
    // One who has it all, with three who have nothing, can share with them.
    const one = safetyOf({
      region: 'elsewhere',
      workers: workers.map(({ id }, place) => ({ id, tasks: place ? [] : [at(88, 8)] })),
      crew: 4,
    });
    if (!one.ok) throw new Error('refused');
    const shared = one.safety.workers[0]?.help;
    expect(shared && helpSentence(say, shared)).toContain('equal turns of all of you');
  });
  it('says that it is vibration, and that everything is then under', () => {
    // HSE ready reckoner: 10 m/s2 for 1 h is 200 points, twice the action value.
    const shaking: ShiftTask = {
      step: 'break-out',
      setting: 'open',
      hours: [1, 1],
      tool: 'chipping-hammer',
      ownLevel: 60,
      ownVibration: 10,
      ownVibrationFrom: 'measured',
    };
    const { help, told } = helped(shaking);
    expect(help).toMatchObject({ over: 'vibration', now: expect.closeTo(2, 6) as number });
    expect(told).toContain('2 times the vibration action value');
    expect(told).toContain('Then usual values stay under');
  });
});

describe('who takes turns', () => {
  const turns = (hours: number) => {
    const safety = day(2, {
      step: 'break-out',
      setting: 'open',
      hours: [hours, hours],
      tool: 'chipping-hammer',
      ownVibration: 10,
      ownVibrationFrom: 'measured',
    });
    return briefingOf(safety, [], [])
      .filter(({ id }) => id === 'hands')
      .map((line) => briefingLine(say, line, safety).line)
      .join(' ');
  };
  // HSE ready reckoner: 10 m/s2 reaches 100 points after 30 min, so 2.5 h are five people's half hours,
  // or three days of two. The plan has them on one day: it goes by hours of work.
  it('says what a day of the plan passes, and by how many people or days it would not', () => {
    expect(turns(2.5)).toMatch(/plan goes by hours.*action value: take 3 days/);
    expect(turns(2.5)).toContain('under the limit value today');
    expect(turns(2.5)).not.toContain('Do not do all');
  });
  it('says of one person’s work that vibration is meant', () =>
    expect(turns(0.5)).toContain('By vibration, one person'));
});
