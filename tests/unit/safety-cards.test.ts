import { describe, expect, it } from 'vitest';
import { inCommon, personCards, turnWith, type PersonCard } from '$lib/safety/person-cards';
import { taskViews } from '$lib/safety/task-views';
import { settleTask } from '$lib/safety/tasks';
import type { ShiftTask } from '$lib/safety/types';
import { vibrationOfTask } from '$lib/safety/vibration';
import type { HazardId, StepId } from '$shared/methods';
import { at, brings, day, shaking } from '../helpers/shift-tasks';

const near = (value: number) => expect.closeTo(value, 9) as number;

// HSE ready reckoner: 10 m/s2 reaches the action value after 30 min and the limit after 2 h.
describe('a card a person', () => {
  const turn = (task: ShiftTask, planned?: number) =>
    turnWith(vibrationOfTask(settleTask(task)), planned);
  it('has the longest turn with each tool, or all there is of it', () => {
    const half = { tool: 'jackhammer', hours: 0.5, inAll: false };
    const minutes = { action: near(30), limit: near(120) };
    expect(turn(shaking(10, 1))).toEqual({ ...half, over: null });
    expect(turn(shaking(10, 1), 0.5)).toEqual({ ...half, over: null });
    expect(turn(shaking(10, 1), 0.51)).toEqual({ ...half, over: { planned: 0.51, minutes } });
    expect(turn(shaking(20, 1))).toEqual({ ...half, hours: near(0.125), inAll: true, over: null });
    expect(turn(at({ tool: 'hand-saw' }), 9)).toEqual({
      ...{ tool: 'hand-saw', hours: 'unknown', inAll: false, over: null },
    });
    expect(turn(at({ tool: 'vacuum' }), 9)).toBeNull();
    // As a tool usually shakes: a jackhammer's 12 m/s2.
    expect(turn(at())).toMatchObject({ hours: 0.25 });
  });

  it('is shared by those of whom it says the same', () => {
    const saw = at({ step: 'saw-cut', tool: 'hand-saw' });
    const two = shaking(10, 0.4, { ownLevel: 80 });
    const hazards = [
      brings('electric', 'grind', 'saw-cut'),
      brings('slips', 'break-out'),
      brings('noise', 'break-out'),
    ];
    const safety = day([two, two, saw], [two, two, saw], [saw], [two], []);
    const cards = personCards(safety, hazards);
    expect(cards.map(({ ids, steps, stop }) => [ids, steps, stop])).toEqual([
      [['1', '2'], ['break-out', 'saw-cut'], 'electric'],
      [['3'], ['saw-cut'], 'electric'],
      [['4'], ['break-out'], 'slips'],
    ]);
    expect(cards[0]?.worker).toBe(safety.workers[0]);
    expect(cards[0]?.turns).toMatchObject([
      { tool: 'jackhammer', over: { planned: 0.8 } },
      { tool: 'hand-saw', hours: 'unknown' },
    ]);
    expect(personCards(day([at({ step: 'sound-and-mark' })]), [])).toMatchObject([
      { turns: [], stop: null },
    ]);
  });

  it('is not shared where one has more to bear', () => {
    const with_ = (level: number) => at({ ownLevel: level, step: 'saw-cut', tool: 'hand-saw' });
    const ids = (...people: ShiftTask[][]) =>
      personCards(day(...people), []).map((card) => card.ids);
    expect(ids([with_(95)], [with_(95)])).toEqual([['1', '2']]);
    expect(ids([with_(95)], [with_(112)])).toHaveLength(2);
    expect(ids([with_(99)], [with_(96)])).toHaveLength(2);
  });

  it('leaves out what all have in common, told once', () => {
    const card = (steps: StepId[], stop: HazardId | null) =>
      ({ steps, stop }) as unknown as PersonCard;
    const nothing = { steps: [], stop: null };
    expect(inCommon([])).toEqual(nothing);
    expect(inCommon([card(['grind'], 'electric')])).toEqual(nothing);
    expect(inCommon([card(['grind', 'vacuum'], 'electric'), card(['vacuum'], 'electric')])).toEqual(
      {
        ...{ steps: ['vacuum'], stop: 'electric' },
      },
    );
    expect(inCommon([card(['grind'], 'electric'), card(['vacuum'], 'slips')])).toEqual(nothing);
    const both = card(['grind', 'vacuum'], 'electric');
    expect(inCommon([both, both, card(['vacuum'], 'slips')])).toEqual({
      ...{ steps: ['vacuum'], stop: null },
    });
  });
});

describe('the steps of a day', () => {
  const order: StepId[] = ['saw-cut', 'break-out', 'vacuum'];
  const placeOf = (step: StepId) => order.indexOf(step);
  const safety = day(
    [
      at({ hours: [1, 2], atTask: 3 }),
      at({ step: 'vacuum' }),
      at({ hours: [0.5, 1], atTask: 1.5 }),
    ],
    [at({ hours: [2.5, 2.9] }), at({ step: 'saw-cut', tool: 'hand-saw' })],
  );
  it('stand once each, for whoever has most of it in all goes, in the order of work', () => {
    const views = taskViews(safety, () => ({ zones: ['Ramp'] }), placeOf);
    expect(
      views.map(({ number, task, zones, waits, classes }) => [
        number,
        task.tool,
        task.hours,
        task.atTask,
        zones,
        waits,
        classes,
      ]),
    ).toEqual([
      [1, 'hand-saw', [1, 1], undefined, ['Ramp'], [], []],
      [2, 'jackhammer', [1.5, 3], 4.5, ['Ramp'], [], []],
      [3, 'vacuum', [1, 1], undefined, ['Ramp'], [], []],
    ]);
    const [one] = safety.workers;
    expect(views[1]).toMatchObject({
      silica: one?.silica.tasks[0],
      noise: one?.noise.tasks[0],
      vibration: one?.vibration.tasks[0],
    });
    expect(views[2]?.noise).toBe(one?.noise.tasks[1]);
    const other = day([at({ hours: [1, 2] })], [at({ hours: [0.5, 3] })], [at({ hours: [1, 3] })]);
    const [most] = taskViews(other, () => ({ zones: [] }));
    expect(most?.task.hours).toEqual([0.5, 3]);
  });
  it('come as they are worked where no order is known', () => {
    const views = taskViews(safety, () => ({ zones: [] }));
    expect(views.map(({ number, task }) => [number, task.step])).toEqual([
      [1, 'break-out'],
      [2, 'vacuum'],
      [3, 'saw-cut'],
    ]);
  });
  it('name the class of their own tool, once, and the zones that wait', () => {
    const tooling = [
      { tool: 'jackhammer', class: 'hammer.at-steel' },
      { tool: 'jackhammer', class: 'hammer.at-steel' },
      { tool: 'jackhammer' },
      { tool: 'vacuum', class: 'hammer.partial' },
    ] as never;
    const [view] = taskViews(day([at()]), () => ({ zones: [], waits: ['Step'], tooling }));
    expect([view?.classes, view?.waits]).toEqual([['hammer.at-steel'], ['Step']]);
  });
});
