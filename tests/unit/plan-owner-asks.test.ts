import { describe, expect, it } from 'vitest';
import { askedHere, askedInZone, offeredHere } from '$lib/plan/ask';
import { priceDrivers } from '$lib/plan/price-drivers';
import { quantitiesWith, reach } from '../helpers/zone-work';

// What an owner asks, is offered and weighs. Common practice, no source.
const stop = { rule: 'moving-crack', verdict: 'stop' };
const find = { rule: 'sound-first', verdict: 'find-out-first' };
const zone = (steps: string[], holds: object[] = [], possibleHolds: object[] = []) => ({
  ...{ id: 'a', steps, holds, possibleHolds },
});

describe('what an owner asks a contractor', () => {
  const always = ['method', 'tests', 'closed'];
  const asked = (zones: object[], more: object = {}) =>
    askedHere({ zones, held: [], tasks: [], ...more } as never);
  it('whatever is done: how, how it is tested, how long it is closed', () =>
    expect(asked([zone(['vacuum'])])).toEqual(always));
  it('where it is broken out: how it is found, how far it goes, and how bruises come off', () =>
    expect(asked([zone(['vacuum']), zone(['break-out'])])).toEqual([
      ...['find', 'far', 'method', 'bruise', 'tests', 'closed'],
    ]));
  it.each(['chase-crack', 'free-bar', 'needle-scale', 'scarify'])(
    'where a hammer or a drum strikes (%s): how bruises come off',
    (step) => expect(asked([zone([step])])).toEqual(['method', 'bruise', 'tests', 'closed']),
  );
  it('where a zone is held: how it is found out; where something stops: who the engineer is', () => {
    expect(asked([], { held: [zone([], [find])] })).toEqual(['find', ...always]);
    const stopped = ['method', 'tests', 'engineer', 'closed'];
    expect(asked([zone([], [find, stop])])).toEqual(stopped);
    expect(asked([zone([], [], [stop])])).toEqual(stopped);
    expect(asked([], { held: [zone([], [stop])] })).toEqual(['find', ...stopped]);
    expect(asked([zone([], [find], [find])])).toEqual(always);
  });
  it('where a tool throws dust or makes a noise: what the neighbours hear and breathe', () => {
    const bothers = ['method', 'neighbours', 'tests', 'closed'];
    const task = (tool: string) => ({ tool: { tool } });
    expect(asked([], { tasks: [task('hand-tools'), task('vacuum')] })).toEqual(bothers);
    expect(asked([], { tasks: [task('pressure-washer')] })).toEqual(bothers);
    expect(asked([], { tasks: [task('hand-tools')] })).toEqual(always);
  });
  it('about one zone, in any way its open answers may turn out', () => {
    const about = (more: object) =>
      askedInZone({
        ...{ steps: [], outcomes: [], cautions: [], holds: [], possibleHolds: [] },
        ...more,
      } as never);
    const way = (method: string | null, ...steps: string[]) => ({
      ...{ method, example: { steps: steps.map((id) => ({ id })) } },
    });
    expect(about({})).toEqual(always);
    expect(about({ steps: [{ id: 'scarify' }] })).toContain('bruise');
    expect(about({ outcomes: [way(null, 'chase-crack')] })).toContain('bruise');
    expect(about({ outcomes: [way(null), way('break-out')] })).toEqual([
      ...['find', 'far', 'method', 'bruise', 'tests', 'closed'],
    ]);
    expect(about({ holds: [find] })).toEqual(['find', ...always]);
    expect(about({ possibleHolds: [stop] })).toContain('engineer');
    for (const caution of ['silica', 'noise'])
      expect(about({ cautions: [caution] })).toEqual(['method', 'neighbours', 'tests', 'closed']);
    expect(about({ cautions: ['slips'] })).toEqual(always);
  });
});

describe('what a sound offer contains', () => {
  const kg = reach('kg', [1, 2, 3]);
  const offered = (steps: string[], totals: object) =>
    offeredHere({
      zones: [zone(steps), zone(['vacuum'])],
      totals: quantitiesWith(totals),
    } as never);
  it('the material where something goes on, and the waste where there is some', () => {
    const rest = ['drawing', 'depth', 'tests', 'left-out'];
    expect(offered(['vacuum'], {})).toEqual(rest);
    expect(offered(['cover'], {})).toEqual(['drawing', 'depth', 'material', 'tests', 'left-out']);
    for (const id of ['debris-mass', 'wash-water'])
      expect(offered([], { [id]: kg })).toEqual(['drawing', 'depth', 'tests', 'waste', 'left-out']);
  });
});

describe('what the price goes up and down with', () => {
  const amount = reach('m', [1, 2, 3]);
  const tally = (hired: number) => ({ low: { hired: 1 }, typical: { hired }, high: { hired: 2 } });
  const plan = (more: object = {}, site: object = {}, zones: object[] = []) =>
    ({
      drawn: { site, zones: zones.map((answers, at) => ({ id: `z${at}`, answers })) },
      schedule: { tally: tally(4), days: [{}], count: [2, 5], crew: 3 },
      tasks: [],
      held: [],
      totals: quantitiesWith({}),
      ...more,
    }) as never;
  const days = { id: 'days', days: [2, 5], people: 3, open: false };
  const machines = { id: 'machines', machineDays: [1, 4] };
  it('amounts in the order of what they cost, dearest first; then machines, days and place', () => {
    const totals = quantitiesWith({
      ...{ 'wash-water': amount, 'debris-mass': amount, 'saw-cut': amount },
      ...{ 'crack-chased': amount, 'bars-freed': amount, 'patch-area': amount },
    });
    expect(priceDrivers(plan({ totals }, { element: ['wall'], setting: ['indoors'] }))).toEqual([
      ...['break-out', 'bars', 'cracks', 'saw-cut', 'debris', 'water'].map((id) => ({
        id,
        amount,
      })),
      ...[machines, days, { id: 'indoors' }, { id: 'by-hand' }],
    ]);
  });
  it('nothing that the job has none of, or of which nobody knows how much', () => {
    const totals = quantitiesWith({
      ...{ 'wash-water': reach('L', [0, 0, 0]), 'saw-cut': { missing: ['area'], unit: 'm' } },
    });
    const none = { low: { hired: 0 }, typical: { hired: 0 }, high: { hired: 0 } };
    expect(priceDrivers(plan({ totals, schedule: { tally: none, days: [] } }))).toEqual([]);
    expect(priceDrivers(plan({}, { element: ['wall', 'slab'], setting: ['open'] }))).toEqual([
      ...[machines, days],
    ]);
    expect(priceDrivers(plan({}, { element: [] }))).toEqual([machines, days]);
  });
  it('first what nobody has measured: a depth that may be one of several, or is not given', () =>
    expect(
      priceDrivers(
        plan({}, {}, [{ depth: 40 }, { depth: ['20-to-50'] }, {}, { depth: ['film', 'over-50'] }]),
      )[0],
    ).toEqual({ id: 'depth-open', zones: ['z2', 'z3'] }));
  it('says that days are open where hours of some of the work are missing', () => {
    const open = (labour: unknown) =>
      priceDrivers(plan({ tasks: [{ labour }] })).find(({ id }) => id === 'days');
    expect(open({ missing: ['crackLength'], unit: 'h' })).toEqual({ ...days, open: true });
    expect(open(null)).toEqual(days);
    expect(open(amount)).toEqual(days);
  });
});
