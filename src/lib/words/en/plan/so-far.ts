import { count } from '$words/count';
import type { Plan } from '$lib/plan/plan';
import { stepWords } from '$words/steps';
import type { Say } from '$lib/words/types';
import { spanWords } from './amounts';

/** A ratio to one tenth: what a few tasks teach is no finer. */
const tenth = (ratio: number): number => Math.round(ratio * 10) / 10;

const words = {
  title: 'So far',
  done: (done: number, all: number) => `${done} of ${count(all, 'task', 'tasks')} done`,
  running: (number: number) => `${number} going on`,
  left: (hours: string, days: string) => `Left: ${hours} of work, ${days}.`,
  nothing: 'Nothing is left to do.',
  days: (span: string, one: boolean) => `${span} ${one ? 'working day' : 'working days'}`,
  took: (times: string, tasks: string) =>
    `Took ${times} times as long as reckoned so far (${tasks}).`,
  tookAlike: (tasks: string) => `Took as long as reckoned so far (${tasks}).`,
  rest: (times: string, low: string, high: string) =>
    `What is left is reckoned at ${times} times, nine in ten between ${low} and ${high}.`,
  doubted: (steps: string) =>
    `Too far off to be believed, so not counted: ${steps}. Check the times.`,
  faults: (number: number) =>
    `${count(number, 'time', 'times')} cannot be right. The crew’s day says which.`,
};
export const soFarTitle = words.title;

/** How far the crew has come and what that says of the rest, a sentence each; none before work began. */
export function soFarLines({ soFar, schedule }: Plan, say: Say): string[] {
  if (!soFar) return [];
  const { done, tasks, running, left, ratio, counted, pace, doubted, faults } = soFar;
  const state = [words.done(done, tasks), ...(running ? [words.running(running)] : [])];
  const days = schedule.left?.count ?? [0, 0];
  const said = (value: number) => say.number(tenth(value));
  const of = count(counted, 'task', 'tasks');
  const names = stepWords(say);
  return [
    `${state.join(', ')}. ${
      left.high > 0
        ? words.left(
            spanWords([left.low, left.high], 'h', say),
            words.days(spanWords(days, 'count', say), days[1] === 1),
          )
        : words.nothing
    }`,
    ...(ratio === null
      ? []
      : [tenth(ratio) === 1 ? words.tookAlike(of) : words.took(said(ratio), of)]),
    ...(pace ? [words.rest(said(pace.typical), said(pace.low), said(pace.high))] : []),
    ...(doubted.length
      ? [words.doubted(say.list([...new Set(doubted.map(({ step }) => names[step].name))]))]
      : []),
    ...(faults.length ? [words.faults(faults.length)] : []),
  ];
}
