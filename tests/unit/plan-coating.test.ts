import { expect, it } from 'vitest';
import { coatingComesOff } from '$lib/plan/coating';
import { planJob } from '$lib/plan/plan';
import { tradeJob } from '../helpers/trade-jobs';

// Common practice, no source: what comes off with a coating goes into bags of its own, not with the debris.
it.each([
  [['thick-coating'], true],
  [[], false],
])('a coating that comes off is told, none where there is none: %j', (yes, told) => {
  const zone = {
    ...{ depth: ['under-3'], looseness: ['flaking'], contamination: { yes, maybe: [] } },
    ...{ texture: ['smooth'], finish: ['build-coat'], area: 36 },
  };
  expect(coatingComesOff(planJob(tradeJob([zone as never])))).toBe(told);
});

it.each([
  ['coating-comes-off', true],
  ['coating-by-scraper', true],
  ['coating-debris-apart', true],
  ['dust-off', false],
])('is told by whichever step takes it off, or takes up what it left: %s', (rule, told) => {
  const step = (...rules: readonly string[]) => ({ why: rules.map((each) => ({ rule: each })) });
  const zone = (...steps: object[]) => ({ advice: { steps } });
  const plan = { zones: [zone(step('square-edge')), zone(step(), step('square-edge', rule))] };
  expect(coatingComesOff(plan as never)).toBe(told);
});
