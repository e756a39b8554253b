import { describe, expect, it } from 'vitest';
import { amountOf, hoursOf, oncePerJob, rateFigureOf } from '$lib/plan/hours';
import { struckHours, struckOf } from '$lib/plan/struck';
import { figureTerm } from '$lib/plan/amount';
import { workOrder } from '$lib/advice/steps/work';
import type { StepId } from '$shared/methods';
import { endsOf, quantitiesWith, reach, workOf } from '../helpers/zone-work';

type Three = readonly [number, number, number];
const nine = (values: Three) => values.map((value) => Math.round(value * 1e9) / 1e9);
/** Hours of an amount at a rate: the least of the one at the most of the other. */
const at = ([low, typical, high]: Three, [slow, usual, quick]: Three) =>
  nine([low / quick, typical / usual, high / slow]);

// Rates are common practice, no source, but for those of breaking out (SHRP-S-336, as reported).
const area: Three = [30, 30, 30];
const opened: Three = [5, 6, 8];
const metres: Three = [6, 6, 6];
const work = workOf({ alongBars: false }, { crackLength: 6, borderLength: 12, barLength: 3 });
const quantities = quantitiesWith({
  area: reach('m2', area),
  'patch-area': reach('m2', opened),
  removed: reach('m3', [0.2, 0.3, 0.4]),
  fill: reach('m3', [0.2, 0.3, 0.5]),
});

describe('hours of a step', () => {
  it.each<[StepId, Three, Three]>([
    ['pressure-wash', area, [15, 30, 60]],
    ['final-wash', opened, [20, 40, 60]],
    ['vacuum', opened, [40, 80, 120]],
    ['last-clean', opened, [60, 100, 150]],
    ['grind', area, [6, 12, 20]],
    ['abrasive-blast', area, [4, 8, 15]],
    ['scarify', area, [5, 11.9, 33]],
    ['shotblast', area, [7.5, 15, 30]],
    ['needle-scale', area, [0.5, 1, 2]],
    ['degrease', area, [8, 15, 25]],
    ['strip-growth', area, [15, 25, 40]],
    ['strip-coating', area, [1, 2.5, 5]],
    ['sound-and-mark', area, [30, 60, 100]],
    ['tap-crack', metres, [20, 40, 60]],
    ['chase-crack', metres, [1, 2, 4]],
    ['route-crack', metres, [3, 6, 12]],
    ['edge-work', [12, 12, 12], [5, 10, 15]],
    ['free-bar', [3, 3, 3], [0.5, 1, 3]],
    ['clean-bar', [3, 3, 3], [2, 5, 10]],
    ['re-sound', opened, [30, 60, 100]],
    ['blast-clean', opened, [6, 10, 15]],
  ])('%s goes by what there is to do', (step, amount, rate) => {
    const here = step === 'pressure-wash' ? { ...quantities, 'patch-area': null } : quantities;
    expect(endsOf(hoursOf(step, work, here))).toEqual(at(amount, rate));
  });
  it.each<[StepId, Three]>([
    ['make-safe', [0.5, 1, 2]],
    ['check-ready', [0.5, 0.75, 1]],
    ['wet-or-dry', [0.25, 0.5, 1]],
    ['moisture-test', [0.5, 0.75, 1]],
  ])('%s takes as long in any zone', (step, hours) => {
    expect(endsOf(hoursOf(step, work, quantities))).toEqual(hours);
    expect(amountOf(step, work, quantities)).toBeNull();
  });
  it('is none where it is a specialist’s, goes on by itself, or is placed by whoever places it', () => {
    for (const step of ['water-jet', 'fill-cure', 'cover', 'cure'] as const) {
      expect(hoursOf(step, work, quantities), step).toBeNull();
      expect(amountOf(step, work, quantities), step).toBeNull();
      expect(rateFigureOf(step), step).toBeNull();
    }
  });
  it('is taken once for the job by making it safe, and by nothing else', () =>
    expect(workOrder.filter(oncePerJob)).toEqual(['make-safe']));
  it('is the reader’s own rate where there is one', () => {
    expect(rateFigureOf('grind')).toBe('rate.grind');
    expect(rateFigureOf('break-out')).toBe('rate.break-out-light');
    expect(endsOf(hoursOf('grind', work, quantities, { 'rate.grind': 15 }))).toEqual([2, 2, 2]);
  });
  it('of grinding by hand is that of a hand grinder: 1 to 4 m2/h', () => {
    const byHand = workOf({ tools: new Map([['grind', { tool: 'hand-grinder' }]]) });
    expect(endsOf(hoursOf('grind', byHand, quantities))).toEqual(at(area, [1, 2, 4]));
  });
  it('of a crack goes by what is chased, or else by what is routed', () => {
    const chased = { ...quantities, 'crack-chased': reach('m', [2, 2, 2]) };
    const both = { ...chased, 'crack-routed': reach('m', [4, 4, 4]) };
    expect(endsOf(hoursOf('chase-crack', work, both))).toEqual([0.5, 1, 2]);
    const routed = { ...quantities, 'crack-routed': reach('m', [4, 4, 4]) };
    expect(endsOf(hoursOf('chase-crack', work, routed))).toEqual([1, 2, 4]);
    for (const crackLength of [undefined, 'unknown'])
      expect(endsOf(hoursOf('chase-crack', workOf({}, { crackLength }), quantities))).toBe(
        'asks for crackLength',
      );
  });
  it('of bars goes by those that are freed: 2 m at 0.5 to 3 m/h', () => {
    const freed = { ...quantities, 'bars-freed': reach('m', [2, 2, 2]) };
    expect(endsOf(hoursOf('free-bar', work, freed))).toEqual(at([2, 2, 2], [0.5, 1, 3]));
  });
  it('of a border asks for its length', () => {
    for (const borderLength of [undefined, 'unknown'])
      expect(endsOf(hoursOf('edge-work', workOf({}, { borderLength }), quantities))).toBe(
        'asks for borderLength',
      );
  });
  it('of levelling goes by the mortar; by the area where only a rough surface is levelled', () => {
    // 10 to 30 h/m3, usually 18; 3 to 10 m2/h, usually 6.
    expect(endsOf(hoursOf('fill-level', work, quantities))).toEqual([2, 5.4, 15]);
    const rough = { ...quantities, fill: null };
    expect(endsOf(hoursOf('fill-level', work, rough))).toEqual([3, 5, 10]);
    expect(hoursOf('fill-level', work, quantitiesWith({}))).toBeNull();
  });
  it('of sawing goes round the patches laid', () => {
    const laid = workOf({
      patches: [
        { area: 2, saw: 6 },
        { area: 1, saw: 6 },
      ],
    });
    expect(endsOf(hoursOf('saw-cut', laid, quantities))).toEqual([0.6, 1, 2]);
  });
});

describe('what of a zone a step goes by', () => {
  it.each<[StepId, string | readonly number[]]>([
    ['grind', [30, 30, 30]],
    ['vacuum', [5, 6, 8]],
    ['re-sound', [5, 6, 8]],
    ['fill-level', [0.2, 0.3, 0.5]],
    ['edge-work', [12, 12, 12]],
    ['tap-crack', [6, 6, 6]],
    ['break-out', [0.2, 0.3, 0.4]],
    ['free-bar', 'none'],
  ])('%s', (step, amount) => expect(endsOf(amountOf(step, work, quantities))).toEqual(amount));
  it('metres of saw, of bars, of a crack that is struck', () => {
    const laid = workOf({ patches: [{ area: 2, saw: 6 }] });
    expect(endsOf(amountOf('saw-cut', laid, quantities))).toEqual([6, 6, 6]);
    const freed = quantitiesWith({ 'bars-freed': reach('m', [2, 2, 2]) });
    expect(endsOf(amountOf('free-bar', work, freed))).toEqual([2, 2, 2]);
    const chased = quantitiesWith({
      area: reach('m2', area),
      'crack-chased': reach('m', [4, 4, 4]),
    });
    expect(endsOf(amountOf('blast-clean', work, chased))).toEqual([4, 4, 4]);
    expect(endsOf(amountOf('fill-level', work, chased))).toEqual([30, 30, 30]);
    expect(amountOf('blast-clean', work, quantitiesWith({}))).toBeNull();
    expect(endsOf(amountOf('edge-work', workOf(), quantities))).toBe('asks for borderLength');
    expect(endsOf(amountOf('tap-crack', workOf({}, { crackLength: 'unknown' }), quantities))).toBe(
      'asks for crackLength',
    );
  });
});

// Common practice, no source: along a crack or a border the work is a strip, by the metre.
describe('what hammers have struck', () => {
  const zone = { borderLength: 12 };
  const m2 = reach('m2', area);
  const crack = reach('m', [4, 4, 4]);
  const needle = new Map([['edge-work', { tool: 'needle-scaler' }]]);
  const ends = ({ ground, lengths }: ReturnType<typeof struckOf>) => [
    endsOf(ground),
    lengths.map(endsOf),
  ];
  it('is the patches; else the crack and the border alone; else the whole zone', () => {
    const here = (change: object, given: object, step: StepId = 'blast-clean') =>
      ends(struckOf(step, workOf(change, zone), quantitiesWith({ area: m2, ...given })));
    expect(here({}, {})).toEqual([[30, 30, 30], []]);
    expect(here({}, { 'crack-chased': crack })).toEqual(['none', [[4, 4, 4]]]);
    expect(here({ tools: needle }, {})).toEqual(['none', [[12, 12, 12]]]);
    expect(here({ tools: needle }, { 'crack-chased': crack })).toEqual([
      'none',
      [
        [4, 4, 4],
        [12, 12, 12],
      ],
    ]);
    // A grinder at the border bruises nothing; sounding again goes along no border.
    const ground = new Map([['edge-work', { tool: 'hand-grinder' }]]);
    expect(here({ tools: ground }, {})).toEqual([[30, 30, 30], []]);
    expect(here({ tools: needle }, {}, 're-sound')).toEqual([[30, 30, 30], []]);
    const patch = reach('m2', opened);
    expect(here({}, { 'crack-chased': crack, 'patch-area': patch })).toEqual([
      [5, 6, 8],
      [[4, 4, 4]],
    ]);
  });
  it('asks how long the border is, where nobody has measured it', () => {
    const along = (borderLength?: unknown) =>
      struckOf(
        'blast-clean',
        workOf({ tools: needle }, { borderLength }),
        quantitiesWith({ area: m2 }),
      ).lengths;
    expect(along().map(endsOf)).toEqual(['asks for borderLength']);
    expect(along('unknown').map(endsOf)).toEqual(['asks for borderLength']);
    expect(along(12)).toMatchObject([{ working: [{ what: 'border-length', unit: 'm' }] }]);
  });
  it('is the whole zone too where a scarifier or needles went over it', () => {
    for (const step of ['scarify', 'needle-scale'] as const) {
      const struck = (of: StepId) =>
        ends(
          struckOf(
            of,
            workOf({ steps: [step] }),
            quantitiesWith({ area: m2, 'crack-chased': crack }),
          ),
        );
      expect(struck('blast-clean')).toEqual([[30, 30, 30], [[4, 4, 4]]]);
      expect(struck('re-sound')).toEqual(['none', [[4, 4, 4]]]);
    }
  });
  it('takes the hours of both: 30 m2 at 10 m2/h and 4 m at 25 m/h', () => {
    const hours = (step: StepId, steps: StepId[]) =>
      endsOf(
        struckHours(
          step,
          workOf({ steps }),
          quantitiesWith({ area: m2, 'crack-chased': crack }),
          figureTerm('rate', 'rate.blast-clean', undefined, 'over'),
        ),
      );
    expect(hours('blast-clean', ['scarify'])).toEqual(nine([2 + 4 / 50, 3 + 4 / 25, 5 + 4 / 12]));
    expect(hours('re-sound', [])).toEqual(nine([4 / 60, 4 / 40, 4 / 20]));
    expect(hours('vacuum', [])).toBe('none');
  });
});
