import { isFloor } from '$lib/advice/place';
import type { OwnFigures } from '$shared/figures';
import type { MethodId, StepId } from '$shared/methods';
import { toolsOf, type ToolId } from '$shared/tools';
import { passes } from './bounds';
import { earsFor, peopleWithBoth, type Ears } from './ears';
import type { NoiseLimitId } from './noise-limits';
import { usualPart } from './noise-usual';
import { levelOf, vibrationOf } from './tasks';
import type { SettledTask } from './types';
import { pointsOfDay, usualPoints, vibrationLimit } from './vibration';

/** What fills a day: the vibration action value, or the noise limit aimed at. */
export type Fills = 'vibration' | 'noise';

/** What is done otherwise. */
type Change =
  | { readonly change: 'tool'; readonly step: StepId; readonly from: ToolId; readonly to: ToolId }
  /** Another method does the work of that step; who does it is not of this crew, or runs another machine. */
  | {
      readonly change: 'method';
      readonly step: StepId;
      readonly to: MethodId;
      readonly specialist: boolean;
    }
  /** As many people, the crew among them, take equal turns at all the loud and shaking work of the day. */
  | { readonly change: 'people'; readonly people: number; readonly crew: number };

/** What would help most, and what part of the fuller of the two limits is used with it. */
export type Help = {
  readonly now: number;
  /** Which of the two is the fuller now, and with the change. */
  readonly over: Fills;
  readonly then: number;
  readonly still: Fills;
  /** What they still need with the change, where that leaves the noise over the limit. */
  readonly ears: Ears | null;
} & Change;

/** More people than this, or than twice the crew, are no change but another crew. Source: common practice. */
const mostPeople = 4;
export const mostFor = (crew: number): number => Math.max(mostPeople, 2 * crew);

/** The day round one person's work. */
export interface Around {
  /** Everybody's tasks of that day, this person's among them. */
  readonly all: readonly SettledTask[];
  /** People there are that day. */
  readonly crew: number;
  /** Part of the noise limit that is heard from others' machines, whatever this person does. */
  readonly beside: number;
}

interface Used {
  readonly most: number;
  readonly of: Fills;
  readonly noise: number;
}

/** The fuller of the vibration action value and the noise limit, at usual values. */
function usedUp(
  tasks: readonly SettledTask[],
  limit: NoiseLimitId,
  own?: OwnFigures,
  beside = 0,
  people = 1,
): Used {
  const points = tasks.reduce((sum, task) => sum + usualPoints(task, own), 0) / people;
  const noise = usualPart(tasks, [], limit, own) / people + beside;
  const shakes = points / pointsOfDay(vibrationLimit('action', own), own);
  return {
    noise,
    ...(shakes > noise ? { most: shakes, of: 'vibration' } : { most: noise, of: 'noise' }),
  };
}

/** What else takes off the same, by trade: with no hammer in the hands. Source: common practice. */
const otherMethods: Readonly<Partial<Record<StepId, readonly MethodId[]>>> = {
  'break-out': ['water-jet'],
  scarify: ['shotblast'],
  'needle-scale': ['abrasive-blast'],
};
/** Done by somebody else's people with their own machines. */
const specialists: readonly MethodId[] = ['water-jet'];

/** The same task with another tool. Levels the reader typed belong to the tool they stand for. */
const withTool = (
  { ownLevel: _level, ownVibration: _vibration, ...task }: SettledTask,
  tool: ToolId,
): SettledTask => ({ ...task, tool });

const known = (task: SettledTask, own?: OwnFigures): boolean =>
  levelOf(task, own) !== 'unknown' && vibrationOf(task, own) !== 'unknown';

/**
 * The one change that lowers the fuller limit most: another tool that the step can be done with
 * there, or another method, whose noise and vibration are known or somebody else's, or the fewest
 * people that bring everybody under, in equal turns at all of the day.
 * Null where usual values keep under both limits. A tool's own pace is not weighed: hours stay.
 */
export function helpOf(
  tasks: readonly SettledTask[],
  limit: NoiseLimitId,
  own?: OwnFigures,
  { all, crew, beside }: Around = { all: tasks, crew: 1, beside: 0 },
): Help | null {
  // Nothing of their own is to be changed for what comes from beside alone.
  if (usedUp(tasks, limit, own).most <= 1) return null;
  const before = usedUp(tasks, limit, own, beside);
  const now = before.most;
  const options: Help[] = [];
  const earsAt = (noise: number) => (passes(noise, 1) ? earsFor(noise, limit, own) : null);
  const offer = (change: Change, { most: then, of: still, noise }: Used): void => {
    if (then < now)
      options.push({ ...change, now, over: before.of, then, still, ears: earsAt(noise) });
  };
  const most = mostFor(crew);
  const needed = Math.ceil(usedUp(all, limit, own).most / Math.max(1e-9, 1 - beside) - 1e-9);
  // Too loud even with both worn, and no number of people here keeps bare ears under: as many as do
  // with both, as the plan counts them.
  const loud = before.of === 'noise' && earsFor(before.noise, limit, own).by === 'neither';
  const wanted =
    loud && (needed > most || beside >= 1)
      ? peopleWithBoth(usedUp(all, limit, own).noise, beside, limit, own)
      : needed;
  const people = beside < 1 || loud ? Math.min(most, Math.max(2, crew, wanted)) : most;
  offer({ change: 'people', people, crew }, usedUp(all, limit, own, beside, people));
  for (const task of tasks)
    for (const to of otherMethods[task.step] ?? []) {
      const specialist = specialists.includes(to);
      const tool = toolsOf(to, isFloor(task.element))[0];
      const other = withTool({ ...task, step: to }, tool);
      if (!specialist && !known(other, own)) continue;
      const rest = tasks.filter((each) => each !== task);
      const used = usedUp(specialist ? rest : [...rest, other], limit, own, beside);
      offer({ change: 'method', step: task.step, to, specialist }, used);
    }
  for (const task of tasks)
    for (const to of toolsOf(task.step, isFloor(task.element))) {
      const other = withTool(task, to);
      if (to === task.tool || to === 'hand-tools' || !known(other, own)) continue;
      const used = usedUp(
        tasks.map((each) => (each === task ? other : each)),
        limit,
        own,
        beside,
      );
      offer({ change: 'tool', step: task.step, from: task.tool, to }, used);
    }
  return bestOf(options);
}

/**
 * The one that helps most; of changes that do as much, the first: people need no other machine. What
 * the crew can do itself and comes under goes before a specialist.
 */
function bestOf(options: readonly Help[]): Help | null {
  const own = options.filter((each) => !(each.change === 'method' && each.specialist));
  const enough = own.filter(({ then }) => then <= 1 + 1e-9);
  const among = enough.length ? enough : options;
  return among.length
    ? among.reduce((best, each) => (each.then < best.then - 1e-9 ? each : best))
    : null;
}
