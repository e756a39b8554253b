import { describe, expect, it } from 'vitest';
import { briefingOf } from '$lib/safety/briefing';
import { safetyOf } from '$lib/safety/safety-of';
import { taskViews } from '$lib/safety/task-views';
import type { ShiftTask } from '$lib/safety/types';
import { lungsInShort, maskInShort } from '$lib/ui/crew/in-short';
import { formatter } from '$lib/words/format';
import { briefingLine } from '$words/safety';

const say = formatter('metric');
const shot: ShiftTask = { step: 'shotblast', setting: 'open', hours: [2, 2] };
const blast: ShiftTask = {
  step: 'abrasive-blast',
  setting: 'open',
  hours: [1, 1],
  tool: 'blast-nozzle',
};
const washing: ShiftTask = { step: 'pressure-wash', setting: 'open', hours: [1, 1] };
const sawing: ShiftTask = {
  step: 'saw-cut',
  setting: 'open',
  hours: [1, 1],
  tool: 'walk-behind-saw',
};
function day(region: 'us' | 'elsewhere', ...people: readonly (readonly ShiftTask[])[]) {
  const workers = people.map((tasks, at) => ({ id: String(at + 1), tasks }));
  const result = safetyOf({ region, workers });
  if (!result.ok) throw new Error('refused');
  return result.safety;
}
const said = (safety: ReturnType<typeof day>) =>
  briefingOf(safety, [], [])
    .filter(({ id }) => id === 'mask')
    .map((line) => briefingLine(say, line, safety).line)
    .join();

// HSE, construction health risks, "Scabbling or grinding": extraction of class H or M and a mask of
// factor 20. No table has a row for shot or grit: a competent person has to measure, and until then
// the crew begins with that. Common practice, no source for shotblasting itself.
describe.each(['us', 'elsewhere'] as const)('work that no table has a row for, %s', (region) => {
  it('begins with a mask of factor 20 and extraction, until somebody has measured', () => {
    const [one] = day(region, [shot]).workers;
    expect(one?.mask).toMatchObject({ factor: 20, hood: false, measure: ['shotblaster'] });
    expect(one && lungsInShort(say, one, region)).toMatch(
      /Mask of factor 20.*shotblaster.*measured/,
    );
    const task = one?.silica.tasks[0];
    expect(task && maskInShort(task, region)).toBe('factor 20 until measured');
    expect(said(day(region, [shot]))).toMatch(/factor 20.*shotblaster.*measured/);
    expect(said(day(region, [shot]))).not.toContain('Do not begin');
  });
  // WAC 296-818-20010 Table 1, and 29 CFR 1926.57(f)(5) from memory: supplied air, covering head,
  // neck and shoulders.
  it('puts whoever holds the abrasive nozzle into a hood fed with air', () => {
    const [one] = day(region, [blast]).workers;
    expect(one?.mask.hood).toBe(true);
    expect(one && lungsInShort(say, one, region)).toContain('fed with clean air');
    expect(said(day(region, [blast]))).toMatch(/hood fed with clean air.*outside the barrier/);
  });
  // NIOSH 1996, blasting a bridge deck: blasters 0.02 to 0.20 mg/m3, traffic controllers 0.05 to 0.53.
  it('never leaves those beside the nozzle without a mask', () => {
    const [, beside] = day(region, [blast], [washing]).workers;
    expect(beside?.mask).toMatchObject({ factor: 20, hood: false, besideBlast: true });
    expect(beside && lungsInShort(say, beside, region)).toMatch(/factor 20.*barrier/);
    const [, off] = day(region, [blast], []).workers;
    expect(off?.mask.factor).toBe(0);
  });
});

// The HSE page is stricter than the US table, which asks for no mask at a floor grinder with its
// collector (29 CFR 1926.1153 Table 1, row (xiii)); the wet saw's "none" stays.
it('elsewhere grinding and scabbling take the British factor, and the table stays in the US', () => {
  const grind: ShiftTask = { step: 'grind', setting: 'open', hours: [1, 1], tool: 'floor-grinder' };
  expect(day('elsewhere', [grind]).workers[0]?.mask).toMatchObject({ factor: 20, by: 'country' });
  expect(day('us', [grind]).workers[0]?.mask).toMatchObject({ factor: 0, by: 'table' });
  for (const region of ['us', 'elsewhere'] as const)
    expect(day(region, [sawing]).workers[0]?.mask.factor).toBe(0);
});

// 29 CFR 1926.1153 Table 1: row (iv), a walk-behind saw with water, asks for none; row (xii), a hand
// grinder outdoors past four hours, does. The list has a mask a tool, the card one a day.
it('card and list say the same: the card names the tools its mask is for', () => {
  const hammer: ShiftTask = {
    step: 'break-out',
    setting: 'indoors',
    hours: [1, 1],
    tool: 'chipping-hammer',
  };
  const [both] = day('us', [sawing, hammer]).workers;
  const [saw, other] = both?.silica.tasks ?? [];
  expect(saw && maskInShort(saw, 'us')).toBe('none');
  expect(other && maskInShort(other, 'us')).toContain('factor 10');
  expect(both && lungsInShort(say, both, 'us')).toContain(
    'Mask of factor 10 or more at the chipping hammer.',
  );
  const [alone] = day('us', [hammer]).workers;
  expect(alone && lungsInShort(say, alone, 'us')).toContain('Mask of factor 10 or more.');
});

const handSaw: ShiftTask = { step: 'saw-cut', setting: 'open', hours: [1, 1], tool: 'hand-saw' };
const handSawInside: ShiftTask = { ...handSaw, setting: 'indoors' };
const sounding: ShiftTask = { step: 'sound-and-mark', setting: 'indoors', hours: [1, 1] };

// 29 CFR 1926.1153 Table 1, row (ii): indoors a hand-held saw asks for factor 10 though it is wet. The
// plan keeps others out of its dust, (g)(1)(iv), from memory; whoever stays near wears the same mask:
// common practice, no source.
describe('the lungs of whoever works near another who makes dust', () => {
  it('wear that mask near it, or keep out', () => {
    const [saws, sounds] = day('us', [handSawInside], [sounding]).workers;
    expect(sounds?.mask).toMatchObject({
      factor: 0,
      besideDust: { factor: 10, tools: ['hand-saw'] },
    });
    expect(sounds && lungsInShort(say, sounds, 'us')).toMatch(
      /No mask asked for\. Near the hand-held concrete saw: mask of factor 10\./,
    );
    expect(saws?.mask.besideDust).toBe(null);
    expect(said(day('us', [handSawInside], [sounding]))).toContain('Near it wear one too');
    expect(said(day('us', [handSawInside], []))).not.toContain('Near it');
  });
  it('are told nothing more where their own mask is on anyway, or where they are not there', () => {
    const hammer: ShiftTask = { ...handSawInside, step: 'break-out', tool: 'chipping-hammer' };
    const [, hammers] = day('us', [handSawInside], [hammer]).workers;
    expect(hammers?.mask).toMatchObject({ factor: 10, besideDust: null });
    expect(day('us', [handSawInside], []).workers[1]?.mask.besideDust).toBe(null);
    const [, far] = day('us', [sawing], [sounding]).workers;
    expect(far?.mask.besideDust).toBe(null);
  });
  it('count the strictest that is near, and a mask worn at one tool only is not worn all day', () => {
    const grind: ShiftTask = {
      step: 'grind',
      setting: 'open',
      hours: [1, 1],
      tool: 'floor-grinder',
    };
    const [, both] = day('elsewhere', [grind], [sawing, { ...handSawInside }]).workers;
    expect(both?.mask.besideDust).toEqual({ factor: 20, tools: ['floor-grinder'] });
    const [, mixed] = day(
      'us',
      [{ ...handSawInside, step: 'break-out', tool: 'chipping-hammer' }],
      [sawing, handSawInside],
    ).workers;
    expect(mixed?.mask.besideDust).toEqual({ factor: 10, tools: ['chipping-hammer'] });
  });
});

// Table 1, column for over four hours: it goes by the person's whole day, so the same saw asks one
// for a mask and another for none. The list is for whoever takes the saw next.
it('the list names the mask of the saw in the hands of whoever has most dust that day', () => {
  const short: ShiftTask = { ...handSaw, hours: [2, 2] };
  const hammer: ShiftTask = {
    step: 'break-out',
    setting: 'open',
    hours: [4, 4],
    tool: 'chipping-hammer',
  };
  const views = taskViews(day('us', [short], [handSaw, hammer]), () => ({ zones: [] }));
  const saw = views.find(({ task }) => task.tool === 'hand-saw');
  expect(saw && maskInShort(saw.silica, 'us')).toBe('factor 10');
});
