import { dateOf, instantOf, spellsOf, stateOf, type Moment } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { logAt } from '$lib/answers/task-log';
import { faultOf, hoursBetween } from '$lib/plan/spent';
import { clockWords, logWords, momentWords, spentWords } from '$words/safety/log';
import { stepWords } from '$words/steps';
import { shortDay } from '$lib/words/by-language';
import type { Say } from '$lib/words/types';

/** A line of the log: one go at a step, or a step ticked off or noted without one. */
interface LogLine {
  readonly date: string;
  readonly step: string;
  readonly zone: string;
  readonly from: string;
  readonly to: string;
  readonly people: string;
  readonly hours: string;
  readonly note: string;
}

const words = logWords.sheet;
const blank = { from: '', to: '', people: '', hours: '' };

/**
 * What was told, line by line, the earliest first. A go over several zones stands once. Steps that
 * are no longer in the plan stand too: what was worked was worked.
 */
export function logLines(job: Job, say: Say, nameOf: (zone: string) => string): LogLine[] {
  const names = stepWords(say);
  const found: { at: number; key: string; line: LogLine }[] = [];
  const keys = [
    ...Object.keys(job.log ?? {}).map((step) => ({ zone: null, step })),
    ...job.zones.flatMap(({ id, log }) =>
      Object.keys(log ?? {}).map((step) => ({ zone: id, step })),
    ),
  ] as { zone: string | null; step: keyof typeof names }[];
  for (const key of keys) {
    const log = logAt(job, key);
    const state = stateOf(log);
    const goes = spellsOf(log);
    const step = names[key.step].name;
    const zone = key.zone === null ? words.whole : nameOf(key.zone);
    const last = [log.done && words.doneAt(clockWords(log.done)), log.note]
      .filter(Boolean)
      .join('. ');
    const on = (at: Moment | undefined) => (at ? shortDay(dateOf(at)) : '');
    if (!goes.length)
      found.push({
        at: log.done ? instantOf(log.done) : Infinity,
        key: JSON.stringify(key),
        line: { ...blank, date: on(log.done), step, zone, note: last },
      });
    for (const [place, go] of goes.entries()) {
      const { from, to, people, together } = go;
      const fault = faultOf(go, state);
      const hours = to === undefined ? 0 : hoursBetween(instantOf(from), instantOf(to));
      found.push({
        at: instantOf(from),
        key: together ? JSON.stringify([key.step, from, to]) : JSON.stringify([key, from]),
        line: {
          date: on(from),
          step,
          zone,
          from: clockWords(from),
          to: !to ? words.running : dateOf(to) === dateOf(from) ? clockWords(to) : momentWords(to),
          people: String(people),
          hours: fault ? words.notCounted : to ? spentWords(hours, say) : '',
          note: place === goes.length - 1 ? last : '',
        },
      });
    }
  }
  const lines = new Map<string, LogLine>();
  for (const { key, line } of found.sort((one, other) => one.at - other.at)) {
    const before = lines.get(key);
    const both = (of: 'zone' | 'note') =>
      [...new Set([before?.[of], line[of]])].filter(Boolean).join(', ');
    lines.set(key, { ...line, zone: both('zone'), note: both('note') });
  }
  return [...lines.values()];
}
