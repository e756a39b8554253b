import { earsFor } from '$lib/safety/ears';
import { describe, expect, test } from 'vitest';
import { safetyOf, type SafetyOfWorker } from '$lib/safety/safety-of';
import { shiftProblems } from '$lib/safety/problems';
import type { ShiftTask } from '$lib/safety/types';
import { formatter } from '../helpers/plain-formatter';
import * as words from '$words/safety';

const say = formatter('metric');
function worker(...tasks: ShiftTask[]): SafetyOfWorker {
  const result = safetyOf({ region: 'us', workers: [{ id: 'a', tasks }] });
  const first = result.ok ? result.safety.workers[0] : undefined;
  if (!first) throw new Error('expected a result');
  return first;
}
const breaking: ShiftTask = { step: 'break-out', setting: 'sheltered', hours: [1, 2] };

describe('silica', () => {
  const first = (task: ShiftTask) => {
    const read = worker(task).silica.tasks[0];
    if (!read) throw new Error('expected a task');
    return read;
  };
  test('a row, a sheltered place', () => {
    expect(words.silicaSentence(say, first(breaking), 'us')).toBe(
      'The breaker stands in row (x), jackhammers and hand-held powered chipping tools of 29 CFR 1926.1153 Table 1. A roof or walls can hold dust in, so we treat this place as enclosed.',
    );
    expect(words.silicaSentence(say, first(breaking), 'elsewhere')).toMatch(/^Your country’s rule/);
  });
  test('an open reading says so, and names both rows', () => {
    const sentence = words.silicaSentence(say, first({ ...breaking, step: 'scarify' }), 'us');
    expect(sentence).toContain('row (xiii)');
    expect(sentence).toContain('row (x)');
    expect(sentence).toContain('stricter');
  });
  test('what is outside the table has to be assessed', () => {
    expect(words.silicaSentence(say, first({ ...breaking, step: 'shotblast' }), 'us')).toContain(
      'is not in the dust table',
    );
  });
  test('the air a wheel wants, in both units', () => {
    const read = first({
      step: 'edge-work',
      tool: 'hand-grinder',
      setting: 'indoors',
      hours: [1, 1],
      wheel: 127,
    });
    if (read.kind !== 'row' || !read.ways[0]) throw new Error('expected a way');
    expect(words.airflowSentence(say, read.ways[0])).toContain('(125 cfm)');
    expect(words.protectionSentence(read.ways[0].protection)).toContain('no respirator');
    expect(words.protectionSentence(10)).toContain('factor of 10');
  });
  test('the column', () => {
    expect(words.columnSentence(say, worker(breaking).silica)).toContain('within 4 hours');
    expect(words.columnSentence(say, worker({ ...breaking, hours: [3, 5] }).silica)).toContain(
      '3 hours to 5 hours',
    );
  });
});

describe('noise', () => {
  const noise = (...tasks: ShiftTask[]) => worker(...tasks).noise;
  test('known and unknown', () => {
    const known = noise({ ...breaking, hours: [2, 2], ownLevel: 90 });
    expect(words.noiseSentence(say, known.limits['osha-limit'])).toBe(
      'Under the limit: 25% of what it allows, without protectors. The mean of the day is 80 dB(A).',
    );
    expect(words.hoursLeftSentence(say, known.limits['osha-limit'])).toContain('6 hours more');
    const unknown = noise({ ...breaking, step: 'shotblast' });
    expect(words.noiseSentence(say, unknown.limits.niosh)).toContain('no level is known');
    // Nothing is known of the one tool: no number may be made of that.
    expect(words.protectorSentence(say, unknown.limits.niosh.protector, null)).toContain(
      'Measure first',
    );
    expect(words.unknownNoiseSentence(say, unknown)).toContain('shotblaster');
    expect(words.hoursLeftSentence(say, unknown.limits.niosh)).toContain('cannot be told');
    expect(words.unknownNoiseSentence(say, known)).toBeNull();
  });
  test('protectors: rounded up, derated, doubled where one cannot do it', () => {
    const loud = noise({ ...breaking, hours: [8, 8], ownLevel: 95 });
    const ears = (part: number) => earsFor(part, 'niosh');
    const usual = loud.limits.niosh.typical.part;
    expect(words.protectorSentence(say, loud.limits.niosh.protector, ears(usual))).toMatch(
      /take off 10 dB .* 50% .* \(NRR\) of 27 or more/,
    );
    const louder = noise({ ...breaking, hours: [8, 8], ownLevel: 110 });
    const much = louder.limits.niosh;
    expect(words.protectorSentence(say, much.protector, ears(much.typical.part))).toContain(
      'Not even plugs and muffs together',
    );
  });
});

test('vibration, trigger time, sharing', () => {
  const { vibration } = worker(breaking);
  expect(words.vibrationSentence(say, vibration)).toMatch(
    /^It may pass the limit value: 50 to 1,?600 points/,
  );
  const minutes = vibration.tasks[0]?.minutes;
  if (!minutes) throw new Error('expected minutes');
  // 480 (2.5 / 20)^2 = 7.5 min, never rounded up past the limit.
  expect(words.minutesSentence(say, minutes.action)).toBe(
    '7 min with a rough tool, 2 h with a gentle one, 20 min with a typical one',
  );
  // Measured at its worst, so that the usual value is that one.
  const worst = { ...breaking, ownVibration: 20, ownVibrationFrom: 'measured' as const };
  const result = safetyOf({ region: 'us', workers: [{ id: 'a', tasks: [worst] }], crew: 2 });
  if (!result.ok) throw new Error('expected a result');
  // 1 to 2 h, usually 1.5, at 20 m/s2 are 1200 points: a quarter hour is 200, so nobody can stay under
  // 100, and 3 people under 400; for the whole 2 h it would take 4.
  expect(words.sharingSentence(say, result.safety.sharing['vibration-action'])).toBe(
    'No number of people brings that about: 15 minutes with the breaker already takes more than one person may have in a day.',
  );
  expect(words.sharingSentence(say, result.safety.sharing['vibration-limit'])).toBe(
    '3 people can do it all in one day; your crew needs 2 days.',
  );
});

test('each problem says what was found and what is expected', () => {
  const said = (task: Partial<ShiftTask>, crew?: number) =>
    shiftProblems([{ id: 'a', tasks: [{ ...breaking, ...task }] }], crew).map((problem) =>
      words.shiftProblemSentence(say, problem),
    );
  expect(said({ ownLevel: 160 })).toEqual([
    '160 dB(A) is not a working level. Type a level from 50 to 140 dB(A).',
  ]);
  expect(said({ ownVibration: 101 })[0]).toContain('0 to 100 m/s²');
  expect(said({ hours: [-1, 2] })[0]).toContain('minus sign');
  expect(said({ hours: [1, 25] })[0]).toContain('24 hours');
  expect(said({ wheel: 5 })[0]).toContain('25 to 1');
  expect(said({}, 0)[0]).toContain('whole number from 1 to 50');
});
