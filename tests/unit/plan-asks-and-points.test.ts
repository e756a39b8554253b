import { describe, expect, it } from 'vitest';
import { askedHere, askedInZone, offeredHere } from '$lib/plan/ask';
import { compareOptions, overlapsOf } from '$lib/plan/compare';
import { conditionsOf } from '$lib/plan/conditions';
import { measureIds, type OwnerOption } from '$lib/plan/options';
import { notKnownYet, pointsOf } from '$lib/plan/points';
import { signsOf } from '$lib/plan/signs';
import { priceDrivers } from '$lib/plan/price-drivers';
import type { Amount } from '$lib/plan/amount';
import { quantitiesWith, reach } from '../helpers/zone-work';
import { tradeJob } from '../helpers/trade-jobs';

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
    offeredHere({ zones: [zone(steps)], totals: quantitiesWith(totals) } as never);
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
      ...['break-out', 'bars', 'cracks', 'saw-cut', 'debris', 'water'].map((id) => ({ id, amount })),
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

const option = (span: readonly [number, number] | null, id = 'debris'): OwnerOption => ({
  ...(Object.fromEntries(measureIds.map((each) => [each, null])) as unknown as OwnerOption),
  [id]: span && ({ span, unit: 'kg', working: [] } satisfies Amount),
});

describe('two options held against each other', () => {
  const lighter = (one: [number, number] | null, other: [number, number] | null) =>
    compareOptions(option(one), option(other)).debris;
  it('takes less where its most is less than the least of the other; else they are alike', () => {
    expect(lighter([1, 2], [3, 4])).toBe('first');
    expect(lighter([3, 4], [1, 2])).toBe('second');
    expect(lighter([1, 3], [3, 4])).toBe('alike');
    expect(lighter([3, 4], [1, 3])).toBe('alike');
    expect(lighter([1, 9], [3, 4])).toBe('alike');
    expect(lighter(null, [3, 4])).toBe('not-known');
    expect(lighter([3, 4], null)).toBe('not-known');
    const none = compareOptions(null, option([1, 2]));
    expect(new Set(Object.values(none))).toEqual(new Set(['not-known']));
    expect(Object.keys(none)).toEqual([...measureIds]);
    const open: OwnerOption = { ...option(null), debris: { missing: ['area'], unit: 'kg' } };
    expect(compareOptions(open, option([1, 2])).debris).toBe('not-known');
    expect(compareOptions(option([1, 2]), open).debris).toBe('not-known');
  });
  it('names the pairs that cross', () => {
    const { debris, hours } = overlapsOf({
      ...{ restore: option([1, 3]), parts: option([2, 5]), replace: option([4, 6]) },
    });
    expect(debris).toEqual([
      ['restore', 'parts'],
      ['parts', 'replace'],
    ]);
    expect(hours).toEqual([]);
  });
});

describe('in what state the parts of a surface are', () => {
  const planned = (id: string, method: string, steps: string[] = []) => ({ id, method, steps });
  const held = (id: string, verdict: string, holds: object[], possibleHolds: object[] = []) => ({
    ...{ id, verdict, holds, possibleHolds },
  });
  const state = (of: { zones?: object[]; held?: object[] }, answers: object = {}) =>
    conditionsOf(tradeJob([answers]), { zones: [], held: [], ...of } as never).of['z0'];
  const full = { rule: 'full-depth', verdict: 'stop' };
  it('is by the method, and by what stands before it', () => {
    expect(state({ zones: [planned('z0', 'break-out')] })).toBe('break-out');
    expect(state({ zones: [planned('z0', 'water-jet', ['saw-cut'])] })).toBe('break-out');
    expect(state({ zones: [planned('z0', 'water-jet', ['vacuum'])] })).toBe('sound');
    expect(state({ zones: [planned('z0', 'scarify', ['saw-cut'])] })).toBe('sound');
    expect(state({ zones: [planned('z0', 'scarify')] }, { looseness: ['powdery'] })).toBe('surface');
    expect(state({})).toBe('not-known');
    expect(state({ zones: [planned('other', 'break-out')] })).toBe('not-known');
    expect(state({ held: [held('z0', 'find-out-first', [find])] })).toBe('not-known');
    expect(state({ held: [held('z0', 'find-out-first', [stop])] })).toBe('not-known');
    expect(state({ held: [held('z0', 'stop', [stop])] })).toBe('engineer');
    expect(state({ held: [held('z0', 'stop', [full, stop])] })).toBe('engineer');
    expect(state({ held: [held('z0', 'stop', [full, find], [stop])] })).toBe('replace');
    expect(state({ held: [held('z0', 'stop', [{ ...full, rule: 'through' }])] })).toBe('replace');
    expect(state({ held: [held('z0', 'stop', [], [stop])] })).toBe('engineer');
    expect(state({ held: [held('z0', 'stop', [find], [full])] })).toBe('replace');
  });
  it('has the parts of the whole: 30, 10 and 20 of 80 m2, the rest not entered', () => {
    const zones = [{ area: 30 }, { area: 10 }, { area: 20, looseness: ['powdery'] }, { area: 'unknown' }];
    const plan = {
      held: [],
      zones: [planned('z0', 'scarify'), planned('z1', 'break-out'), planned('z2', 'scarify')],
    } as never;
    const area = {
      ...{ sound: 30, surface: 20, 'break-out': 10, replace: 0, engineer: 0, 'not-known': 0 },
    };
    const of = { z0: 'sound', z1: 'break-out', z2: 'surface', z3: 'not-known' };
    expect(conditionsOf(tradeJob(zones, {}, { totalArea: 80 }), plan)).toEqual({
      ...{ known: 60, whole: 80, unmeasured: ['z3'], of },
      area: { ...area, 'not-entered': 20 },
      share: {
        ...{ sound: 0.375, surface: 0.25, 'break-out': 0.125, 'not-entered': 0.25 },
        ...{ replace: 0, engineer: 0, 'not-known': 0 },
      },
    });
    // Zones that come to more than the whole were measured.
    expect(conditionsOf(tradeJob(zones, {}, { totalArea: 50 }), plan)).toMatchObject({
      ...{ known: 60, whole: 60, area: { 'not-entered': 0 }, share: { sound: 0.5 } },
    });
    expect(conditionsOf(tradeJob(zones), plan)).toEqual({
      ...{ known: 60, whole: null, share: null, unmeasured: ['z3'], of },
      area: { ...area, 'not-entered': 0 },
    });
  });
});

describe('signs', () => {
  const past = { why: [{ rule: 'depth-past-third' }] };
  const planned = (id: string, holds: object[] = [], steps: object[] = [], fill: unknown = null) => ({
    ...{ id, holds, advice: { steps }, quantities: { fill } },
  });
  const zones = [{ area: 10, looseness: ['rotten'] }, { area: 20 }, { area: 30 }];
  const conditions = (whole: number | null, of: object = {}, more: object = {}) =>
    ({ whole, of: { z0: 'sound', z1: 'replace', z2: 'sound', ...of }, unmeasured: [], ...more }) as never;
  const job = tradeJob(zones, { warnings: { yes: ['settled-or-rocking'], maybe: ['through-cracks'] } });
  const plan = {
    drawn: job,
    held: [{ id: 'z1', holds: [{ rule: 'through' }] }],
    zones: [planned('z0', [{ rule: 'map-cracking' }]), planned('z2', [], [past])],
  } as never;
  it('are zones by their state, by what holds them, and what is warned of', () => {
    const signs = signsOf(plan, conditions(100));
    expect(signs.zonesIn('sound')).toEqual(['z0', 'z2']);
    expect(signs.zonesIn('replace', 'engineer')).toEqual(['z1']);
    expect(signs.held('map-cracking')).toEqual(['z0']);
    expect(signs.held('through')).toEqual(['z1']);
    expect(signs.held('moving-crack')).toEqual([]);
    expect(signs.warned('settled-or-rocking')).toBe(true);
    expect(signs.warned('fire-or-chemical')).toBe(false);
    const bare = { ...(plan as object), drawn: tradeJob(zones, { warnings: undefined }) } as never;
    expect(signsOf(bare, conditions(100)).warned('settled-or-rocking')).toBe(false);
    expect(signs).toMatchObject({ doubtful: ['z2'], patched: false, mostly: 0.5 });
  });
  it('say that most is gone past one half: rotten and gone, each once', () => {
    // z0 is rotten and z1 gone: 30 m2.
    expect(signsOf(plan, conditions(100))).toMatchObject({ gone: 0.3, mostlyGone: false });
    expect(signsOf(plan, conditions(60))).toMatchObject({ gone: 0.5, mostlyGone: false });
    expect(signsOf(plan, conditions(50))).toMatchObject({ gone: 0.6, mostlyGone: true });
    expect(signsOf(plan, conditions(100, { z0: 'replace' }))).toMatchObject({ gone: 0.3 });
    expect(signsOf(plan, conditions(null))).toMatchObject({ gone: 0, mostlyGone: false });
    expect(signsOf(plan, conditions(100), { 'compare.mostly': 0.2 }).mostlyGone).toBe(true);
  });
  it('say that most is free of doubt where less than half is doubtful or not entered', () => {
    const free = (whole: number | null, entered = 0, unmeasured: string[] = []) =>
      signsOf(
        plan,
        conditions(whole, {}, { unmeasured, share: { 'not-entered': entered } }),
      ).mostlyFree;
    // z2, 30 m2, is doubtful.
    expect(free(100)).toBe(true);
    expect(free(60)).toBe(false);
    expect(free(100, 0.2)).toBe(false);
    expect(free(100, 0.19)).toBe(true);
    expect(free(100, 0, ['z1'])).toBe(false);
    expect(free(null)).toBe(false);
  });
  it('speak of the life of patches where a hole is filled', () => {
    const filled = { drawn: job, held: [], zones: [planned('z0', [], [], reach('m3', [1, 2, 3]))] };
    expect(signsOf(filled as never, conditions(100)).patched).toBe(true);
  });
});

describe('what speaks for and against each option', () => {
  const signs = (more: object = {}, holds: Record<string, string[]> = {}, warnings: string[] = []) =>
    ({
      zonesIn: (...ids: string[]) => ids.flatMap((id) => holds[id] ?? []),
      held: (rule: string) => holds[rule] ?? [],
      warned: (id: string) => warnings.includes(id),
      ...{ patched: false, gone: 0, mostlyGone: false, doubtful: [], mostlyFree: true, mostly: 0.5 },
      ...more,
    }) as never;
  const share = (more: object = {}) => ({
    ...{ sound: 0.2, surface: 0.1, 'break-out': 0.7, replace: 0, 'not-entered': 0, ...more },
  });
  const all = { restore: true, parts: true };
  const poor = { id: 'patch-life', figures: ['patch.life-poor'] };
  const good = { id: 'patch-life', figures: ['patch.life-good'] };
  const points = (
    given: never,
    shares: object | null = share(),
    options = all,
    weighed: readonly object[] = [],
  ) => pointsOf(given, { share: shares } as never, options, weighed as never);
  const none = { speaksFor: [], against: [] };

  it('is nothing where nothing is known, of the options that there are', () => {
    expect(points(signs())).toEqual({ restore: none, parts: none, replace: none });
    expect(points(signs(), null)).toEqual({ restore: none, parts: none, replace: none });
    expect(points(signs(), null, { restore: false, parts: false })).toEqual({ replace: none });
  });
  it('for restoring: most is sound, all is in the skin, patches that last; against it: those that do not', () => {
    const sound = share({ sound: 0.7, surface: 0.3 });
    expect(points(signs({ patched: true }), sound)).toEqual({
      restore: {
        speaksFor: [{ id: 'mostly-sound', share: 0.7 }, { id: 'surface-only' }, good],
        against: [poor],
      },
      parts: none,
      replace: {
        speaksFor: [],
        against: [{ id: 'sound-broken-out', share: 0.7 }, { id: 'surface-only' }],
      },
    });
    expect(points(signs(), share({ sound: 0.5, surface: 0.4 })).restore).toEqual(none);
  });
  it('against a patch: what is gone, mostly gone, deep, or lost by the concrete itself', () => {
    const gone = {
      ...{ id: 'full-depth-parts', zones: ['g'], share: 0.1, figures: ['depth.full-limit'] },
    };
    const mostlyGone = { id: 'mostly-gone', share: 0.6, figures: ['compare.mostly'] };
    const past = { id: 'depth-past-third', zones: ['d'], figures: ['depth.partial-limit'] };
    const lost = [
      { id: 'fire-or-chemical' },
      { id: 'map-cracking', zones: ['m'] },
      { id: 'bar-loss', zones: ['b'] },
    ];
    const causes = [
      { id: 'settled' },
      { id: 'structure', zones: ['s'] },
      { id: 'moving-crack', zones: ['c'] },
    ];
    const grave = signs(
      { doubtful: ['d'], mostlyGone: true, gone: 0.6 },
      {
        ...{ replace: ['g'], 'break-out': ['k', 'g'], 'map-cracking': ['m'] },
        ...{ 'bar-section-loss': ['b'], 'structure-before-removal': ['s'], 'moving-crack': ['c'] },
      },
      ['fire-or-chemical', 'settled-or-rocking'],
    );
    const wanted = {
      restore: { speaksFor: [], against: [gone, mostlyGone, past, ...causes, ...lost] },
      parts: {
        speaksFor: [{ id: 'parts-made-new', zones: ['k', 'g'] }],
        against: [mostlyGone, ...causes, ...lost],
      },
      replace: {
        speaksFor: [gone, mostlyGone, past, ...lost],
        // New concrete moves with what moves it, and has to be propped as a whole.
        against: [{ id: 'cause-stays' }, { id: 'props-for-all', zones: ['s'] }],
      },
    };
    expect(points(grave, share({ replace: 0.1 }))).toEqual(wanted);
    // What speaks against restoring is told though nothing can be restored.
    expect(points(grave, share({ replace: 0.1 }), { restore: false, parts: true })).toEqual(wanted);
    expect(points(grave, null).restore?.against[0]).toEqual({
      ...{ id: 'full-depth-parts', zones: ['g'], figures: ['depth.full-limit'] },
    });
    const moving = points(signs({}, { 'moving-crack': ['c'] }));
    expect(moving.replace?.against).toEqual([{ id: 'cause-stays' }]);
  });
  it('by measures: what surely takes less or more than another, days of hire never', () => {
    const weigh = (one: string, other: string, lighter: object) => ({
      ...{ one, other, lighter: { ...Object.fromEntries(measureIds.map((id) => [id, 'alike'])), ...lighter } },
    });
    const weighed = [
      weigh('restore', 'replace', { debris: 'first', hours: 'second', 'hire-days': 'first' }),
      weigh('parts', 'replace', { water: 'first', carbon: 'second' }),
      weigh('restore', 'parts', { cost: 'second' }),
    ];
    expect(points(signs(), share(), all, weighed)).toEqual({
      restore: {
        speaksFor: [{ id: 'less', measures: ['debris'], than: 'replace' }],
        against: [
          { id: 'more', measures: ['hours'], than: 'replace' },
          { id: 'more', measures: ['cost'], than: 'parts' },
        ],
      },
      parts: {
        speaksFor: [
          { id: 'less', measures: ['water'], than: 'replace' },
          { id: 'less', measures: ['cost'], than: 'restore' },
        ],
        against: [{ id: 'more', measures: ['carbon'], than: 'replace' }],
      },
      replace: {
        speaksFor: [{ id: 'less', measures: ['hours'], than: 'restore' }],
        against: [{ id: 'more', measures: ['debris'], than: 'restore' }],
      },
    });
  });
  it('and what nobody has found out yet', () => {
    const notKnown = (thickness: unknown, conditions: object, holds: Record<string, string[]> = {}) =>
      notKnownYet({ drawn: { site: { thickness } } } as never, signs({}, holds), conditions as never);
    const percent = {
      id: 'no-one-percentage',
      figures: ['rule.galion', 'rule.lauderhill', 'rule.sioux-falls', 'rule.pleasant-hill'],
    };
    expect(notKnown(150, { share: share(), whole: 10, unmeasured: [] })).toEqual([percent]);
    expect(
      notKnown('unknown', { share: null, whole: null, unmeasured: ['u'] }, { 'not-known': ['n'] }),
    ).toEqual([
      { id: 'open-answers', zones: ['n'] },
      { id: 'unmeasured', zones: ['u'] },
      { id: 'whole-unknown' },
      { id: 'thickness-unknown' },
      percent,
    ]);
    expect(notKnown(undefined, { share: share({ 'not-entered': 0.3 }), whole: 9, unmeasured: [] })).toEqual([
      { id: 'not-entered', share: 0.3 },
      { id: 'thickness-unknown' },
      percent,
    ]);
  });
});
