import { describe, expect, it } from 'vitest';
import { byBegin } from '$lib/plan/by-begin';
import { edgesAmong, nearest, orderSteps } from '$lib/plan/order';
import { workOrder } from '$lib/advice/steps/work';
import type { StepId } from '$shared/methods';

// What a senior of the trade does before what, and why: the whole table a second time, by the step
// that comes later. Common practice, no source; sawing before breaking and marking before sawing as
// FHWA, Partial-depth repairs, has them.
const hammers = 'break-out chase-crack free-bar';
const cutters = 'scarify grind needle-scale';
const grit = 'shotblast abrasive-blast blast-clean';
const tools = `saw-cut ${hammers} ${cutters} edge-work ${grit}`;
const dust = `${tools} re-sound clean-bar`;
const hiding = 'strip-growth strip-coating';
const jet = 'water-jet';
const before: Readonly<Partial<Record<StepId, Readonly<Record<string, string>>>>> = {
  'strip-coating': { 'oil-driven-in': 'degrease' },
  'sound-and-mark': { 'hides-concrete': hiding },
  'tap-crack': { 'hides-concrete': hiding },
  'saw-cut': {
    ...{ 'oil-driven-in': 'degrease', 'hides-concrete': hiding },
    'mark-before-cutting': 'sound-and-mark',
  },
  'break-out': {
    ...{ 'oil-driven-in': 'degrease', 'hides-concrete': hiding },
    ...{ 'mark-before-cutting': 'sound-and-mark', 'edge-before-breaking': 'saw-cut' },
  },
  'water-jet': { 'edge-before-breaking': 'saw-cut' },
  'chase-crack': {
    ...{ 'oil-driven-in': 'degrease', 'hides-concrete': hiding },
    ...{ 'mark-before-cutting': 'sound-and-mark', 'tap-before-cutting': 'tap-crack' },
  },
  'free-bar': {
    ...{ 'oil-driven-in': 'degrease', 'hides-concrete': hiding },
    ...{ 'mark-before-cutting': 'sound-and-mark', 'edge-before-breaking': 'saw-cut' },
    'bars-once-they-show': 'break-out',
  },
  're-sound': { 'sound-what-is-left': `${hammers} ${jet}` },
  ...Object.fromEntries(
    `${cutters} edge-work ${grit}`.split(' ').map((step) => [
      step,
      {
        ...{ 'oil-driven-in': 'degrease', 'hides-concrete': hiding },
        'mark-before-machines': 'sound-and-mark',
        ...(step !== 'edge-work' && { 'tap-before-cutting': 'tap-crack' }),
        // What wets a floor is done before any of it is blasted: shot and grit need it dry.
        ...(grit.split(' ').includes(step)
          ? { 'wet-before-dry': `saw-cut ${hammers} ${jet}` }
          : { 'slurry-before-cleaning': 'saw-cut', 'dirty-before-clean': `${hammers} ${jet}` }),
        'dull-off-first': 're-sound',
        ...(step === 'edge-work' && { 'edges-with-the-machine': 'scarify grind' }),
        ...(grit.split(' ').includes(step) && { 'cut-before-blasting': `${cutters} edge-work` }),
        ...(step === 'blast-clean' && { 'bruises-off-last': 'shotblast abrasive-blast' }),
      },
    ]),
  ),
  'clean-bar': { 'bars-after-blasting': `${grit} ${hammers}` },
  vacuum: { 'dust-at-one-go': dust },
  // Hammers are worked with water at the point, and leave slurry as the saw does.
  'pressure-wash': {
    ...{ 'oil-driven-in': 'degrease', 'slurry-before-cleaning': `saw-cut ${hammers}` },
    'dust-before-water': 'vacuum',
  },
  'route-crack': {
    ...{ 'oil-driven-in': 'degrease', 'hides-concrete': hiding },
    ...{ 'mark-before-cutting': 'sound-and-mark', 'tap-before-cutting': 'tap-crack' },
    'seal-clean-crack': `${dust} vacuum pressure-wash`,
  },
  'final-wash': {
    ...{ 'dust-before-water': 'vacuum', 'seal-before-wash': 'route-crack' },
    'wash-last': `${dust} degrease pressure-wash strip-growth`,
  },
  'check-ready': { 'prove-what-is-clean': 'vacuum pressure-wash final-wash route-crack' },
  'fill-level': { 'cover-what-is-proven': 'check-ready' },
  'fill-cure': { 'level-what-is-ready': 'fill-level' },
  'wet-or-dry': { 'cover-what-is-proven': 'check-ready', 'level-what-is-ready': 'fill-cure' },
  'moisture-test': { 'measure-what-has-dried': 'wet-or-dry' },
  'last-clean': { 'clean-right-before': 'wet-or-dry moisture-test' },
  cover: { 'cover-last': 'last-clean' },
  cure: { 'cover-last': 'last-clean cover' },
};

const edges = edgesAmong(workOrder);

describe('what comes before what, and why', () => {
  it.each(workOrder)('%s', (step) => {
    const found: Record<string, string[]> = {};
    for (const edge of edges) if (edge.after === step) (found[edge.why] ??= []).push(edge.before);
    const wanted: Record<string, string[]> =
      step === 'make-safe' ? {} : { 'safe-first': ['make-safe'] };
    for (const [why, steps] of Object.entries(before[step] ?? {}))
      wanted[why] = steps.split(' ').sort();
    for (const list of Object.values(found)) list.sort();
    expect(found).toEqual(wanted);
  });
  it('is asked of the steps that are there, each pair once', () => {
    expect(edgesAmong(['break-out', 'vacuum'])).toEqual([
      { before: 'break-out', after: 'vacuum', why: 'dust-at-one-go' },
    ]);
    expect(edgesAmong(['vacuum'])).toEqual([]);
    expect(new Set(edges.map(({ before: one, after }) => `${one} ${after}`)).size).toBe(
      edges.length,
    );
  });
  it('tells the last links alone: a hammer waits for the saw, which waits for the marks', () => {
    const three = edgesAmong(['sound-and-mark', 'saw-cut', 'break-out']);
    expect(
      nearest(
        three.filter(({ after }) => after === 'break-out'),
        three,
      ),
    ).toEqual([{ step: 'saw-cut', why: 'edge-before-breaking' }]);
  });
});

describe('the steps of several zones in one order', () => {
  const of = (zone: string, dryFinish: boolean, ...steps: StepId[]) =>
    steps.map((step) => ({ zone, step, dryFinish }));
  it('has each once, its zones as the job has them, what it waits for and how long it dries', () => {
    expect(
      orderSteps([
        ...of('b', false, 'final-wash', 'saw-cut', 'wet-or-dry'),
        ...of('a', true, 'wet-or-dry', 'saw-cut', 'saw-cut', 'final-wash'),
      ]),
    ).toEqual([
      { id: 'saw-cut', zones: ['b', 'a'], after: [] },
      { id: 'final-wash', zones: ['b', 'a'], after: [{ step: 'saw-cut', why: 'wash-last' }] },
      {
        ...{ id: 'wet-or-dry', zones: ['b', 'a'], after: [] },
        // 24 to 72 h before a finish that wants it dry: zone a alone.
        wait: { hours: [24, 72], figure: 'dry.before-coating' },
      },
    ]);
  });
  it('dries nothing in one zone for what was wetted in another', () => {
    const [, grind] = orderSteps([...of('a', true, 'saw-cut'), ...of('b', true, 'grind')]);
    expect(grind).toMatchObject({ id: 'grind', zones: ['b'] });
    expect(grind).not.toHaveProperty('wait');
    const both = orderSteps([...of('a', true, 'saw-cut', 'grind')], { 'dry.before-blasting': 5 });
    expect(both[1]?.wait).toEqual({ hours: [5, 5], figure: 'dry.before-blasting' });
  });
});

describe('one numbering for list, chart and days', () => {
  const step = (id: StepId, ...zones: string[]) => ({ id, zones, after: [] });
  const begins = (id: StepId, from: number) => ({ task: { step: id }, from }) as never;
  it('goes by begin where the trade leaves it open, and by the trade where not', () => {
    const steps = [
      step('sound-and-mark', 'a', 'b'),
      step('saw-cut', 'a'),
      step('break-out', 'a'),
      step('wet-or-dry', 'b'),
      step('cover', 'b'),
    ];
    const placed = [
      begins('sound-and-mark', 0),
      begins('saw-cut', 4),
      begins('saw-cut', 9),
      begins('break-out', 6),
      begins('wet-or-dry', 5),
    ];
    expect(byBegin(steps, placed)).toEqual([
      { ...step('sound-and-mark', 'a', 'b') },
      { ...step('saw-cut', 'a'), after: [{ step: 'sound-and-mark', why: 'mark-before-cutting' }] },
      { ...step('wet-or-dry', 'b'), after: [] },
      { ...step('break-out', 'a'), after: [{ step: 'saw-cut', why: 'edge-before-breaking' }] },
      // Nobody has said when.
      step('cover', 'b'),
    ]);
  });
  it('keeps the trade’s order where two begin at once', () => {
    const steps = [step('vacuum', 'a'), step('cover', 'b')];
    const found = byBegin(steps, [begins('vacuum', 3), begins('cover', 3)]);
    expect(found.map(({ id }) => id)).toEqual(['vacuum', 'cover']);
  });
  it('tells a step of other zones only where dirt of one zone reaches the next', () => {
    const after = (...steps: ReturnType<typeof step>[]) => byBegin(steps, []).at(-1)?.after;
    expect(after(step('break-out', 'a'), step('vacuum', 'b'))).toEqual([
      { step: 'break-out', why: 'dust-at-one-go' },
    ]);
    expect(after(step('scarify', 'a'), step('shotblast', 'b'))).toEqual([]);
    // Water runs on: no shot beside a wet saw or hammer on the same floor.
    for (const wet of ['saw-cut', 'break-out', 'chase-crack', 'water-jet'] as const)
      expect(after(step(wet, 'a'), step('shotblast', 'b'))).toEqual([
        { step: wet, why: 'wet-before-dry' },
      ]);
    expect(after(step('scarify', 'a', 'b'), step('shotblast', 'b', 'c'))).toEqual([
      { step: 'scarify', why: 'cut-before-blasting' },
    ]);
  });
});
