import { isFloor } from '$lib/advice/place';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { MethodId, StepId } from '$shared/methods';
import { toolsOf, type ToolId } from '$shared/tools';
import { passes } from './bounds';
import { dayLevel, partOf, type NoiseLimitId } from './noise-limits';
import { takenOff } from './protector';
import { levelOf, usualHours, vibrationOf } from './tasks';
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
  /** As many people share the loud and shaking work evenly. */
  | { readonly change: 'people'; readonly people: number };

/** What would help most, and what part of the fuller of the two limits is used with it. */
export type Help = {
  readonly now: number;
  /** Which of the two is the fuller now, and with the change. */
  readonly over: Fills;
  readonly then: number;
  readonly still: Fills;
  /** What the ears need as it is planned, where its noise is over the limit. */
  readonly earsNow: Ears | null;
  /** What they still need with the change, where that leaves the noise over the limit. */
  readonly ears: Ears | null;
} & Change;

/** What protectors have to do at usual values. */
export interface Ears {
  /** Decibels to take off at the ear. */
  readonly needed: number;
  readonly by: 'one' | 'both' | 'neither';
}

/** More people than this in place of one are no change but another crew. */
const mostPeople = 4;

interface Used {
  readonly most: number;
  readonly of: Fills;
  readonly noise: number;
}

/** The fuller of the vibration action value and the noise limit, at usual values. */
function usedUp(tasks: readonly SettledTask[], limit: NoiseLimitId, own?: OwnFigures): Used {
  const points = tasks.reduce((sum, task) => sum + usualPoints(task, own), 0);
  const noise = tasks.reduce((sum, task) => {
    const level = levelOf(task, own);
    if (typeof level === 'string') return sum;
    const { range, typical = (range[0] + range[1]) / 2 } = level;
    return sum + partOf(limit, typical, usualHours(task), own);
  }, 0);
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
const withTool = (task: SettledTask, tool: ToolId): SettledTask => {
  const { step, setting, element, hours, typical, atTask } = task;
  return {
    step,
    setting,
    element,
    hours,
    tool,
    ...(typical !== undefined && { typical }),
    ...(atTask !== undefined && { atTask }),
  };
};

const known = (task: SettledTask, own?: OwnFigures): boolean =>
  levelOf(task, own) !== 'unknown' && vibrationOf(task, own) !== 'unknown';

/**
 * What the ears need where usual noise takes `part` of a limit: one protector, plugs and muffs
 * together, or more than both give. Source: 29 CFR 1910.95 Appendix B with the field derating; the
 * second protector's share is figure `noise.rating-second`.
 */
function earsFor(part: number, limit: NoiseLimitId, own?: OwnFigures): Ears {
  const needed = dayLevel(limit, part, own) - dayLevel(limit, 1, own);
  const one = takenOff(valueOf('noise.rating-highest', own), own);
  const both = one + valueOf('noise.rating-second', own);
  return { needed, by: needed <= one ? 'one' : needed <= both ? 'both' : 'neither' };
}

/**
 * The one change that lowers the fuller limit most: another tool that the step can be done with
 * there, or another method, whose noise and vibration are known or somebody else's, or the fewest
 * people that bring everybody under.
 * Null where usual values keep under both limits. A tool's own pace is not weighed: hours stay.
 */
export function helpOf(
  tasks: readonly SettledTask[],
  limit: NoiseLimitId,
  own?: OwnFigures,
): Help | null {
  const before = usedUp(tasks, limit, own);
  const now = before.most;
  if (now <= 1) return null;
  const options: Help[] = [];
  const earsAt = (noise: number) => (passes(noise, 1) ? earsFor(noise, limit, own) : null);
  const earsNow = earsAt(before.noise);
  const offer = (change: Change, { most: then, of: still, noise }: Used): void => {
    options.push({ ...change, now, over: before.of, then, still, earsNow, ears: earsAt(noise) });
  };
  const people = Math.min(mostPeople, Math.max(2, Math.ceil(now - 1e-9)));
  offer(
    { change: 'people', people },
    { ...before, most: now / people, noise: before.noise / people },
  );
  for (const task of tasks)
    for (const to of otherMethods[task.step] ?? []) {
      const specialist = specialists.includes(to);
      const tool = toolsOf(to, isFloor(task.element))[0];
      const other = withTool({ ...task, step: to }, tool);
      if (!specialist && !known(other, own)) continue;
      const rest = tasks.filter((each) => each !== task);
      const used = usedUp(specialist ? rest : [...rest, other], limit, own);
      if (used.most < now) offer({ change: 'method', step: task.step, to, specialist }, used);
    }
  for (const task of tasks)
    for (const to of toolsOf(task.step, isFloor(task.element))) {
      const other = withTool(task, to);
      if (to === task.tool || to === 'hand-tools' || !known(other, own)) continue;
      const used = usedUp(
        tasks.map((each) => (each === task ? other : each)),
        limit,
        own,
      );
      if (used.most < now) offer({ change: 'tool', step: task.step, from: task.tool, to }, used);
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
