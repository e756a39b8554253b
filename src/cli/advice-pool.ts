import { availableParallelism } from 'node:os';
import { parentPort, Worker } from 'node:worker_threads';
import { adviseZone } from '$lib/advice/advise';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Job } from '$lib/answers/job';
import type { AdviceOf } from '$lib/plan/plan';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';

/** Milliseconds for which all is done here: most jobs are through before a helper would have begun. */
const alone = 400;

/**
 * Room for what is thought of and dropped again, in MB: with the usual 16 a quarter of the time goes
 * into sweeping (measured: 105 ms a zone, with this 85).
 */
const room = 192;

interface Task {
  readonly key: string;
  readonly site: SiteAnswers;
  readonly answers: ZoneAnswers;
}

/** What a helper does all its life: answers in, advice out. */
export function helpAdvise(): void {
  parentPort?.on('message', ({ key, site, answers }: Task) =>
    parentPort?.postMessage({ key, advice: adviseZone(site, answers) }),
  );
}

/**
 * Works out the advice for every zone of a job: here while it is quick, on all cores when it is not.
 * @param helper the file to run on the other cores; without it all is done here
 * @param progress told now and then how many zones are through
 */
export async function adviseAll(
  { site, zones }: Job,
  helper?: URL,
  progress: (done: number) => void = () => undefined,
): Promise<AdviceOf> {
  const known = new Map<string, ZoneAdvice>();
  const keyOf = (answers: ZoneAnswers) => JSON.stringify(answers);
  /** How many zones have these answers. */
  const zonesOf = new Map<string, number>();
  const tasks: Task[] = [];
  for (const { answers } of zones) {
    const key = keyOf(answers);
    if (!zonesOf.has(key)) tasks.push({ key, site, answers });
    zonesOf.set(key, (zonesOf.get(key) ?? 0) + 1);
  }
  let done = 0;
  const take = (key: string, advice: ZoneAdvice) => {
    known.set(key, advice);
    done += zonesOf.get(key) ?? 0;
    progress(done);
  };

  let next = 0;
  const began = performance.now();
  for (; next < tasks.length && !(helper && performance.now() - began > alone); next += 1) {
    const { key, answers } = tasks[next] as Task;
    take(key, adviseZone(site, answers));
  }
  if (helper && next < tasks.length) await shareOut(tasks.slice(next), helper, take);
  // Where salt was measured the advice is asked for another site.
  return (asked, answers) =>
    (asked === site ? known.get(keyOf(answers)) : undefined) ?? adviseZone(asked, answers);
}

/** Gives tasks to as many helpers as there are cores, one at a time each, until all are done. */
async function shareOut(
  tasks: readonly Task[],
  helper: URL,
  take: (key: string, advice: ZoneAdvice) => void,
): Promise<void> {
  const left = tasks.values();
  const cores = Math.min(availableParallelism(), tasks.length);
  const work = () =>
    new Promise<void>((ended, failed) => {
      const worker = new Worker(helper, { resourceLimits: { maxYoungGenerationSizeMb: room } });
      const give = () => {
        const { value } = left.next() as { value?: Task };
        if (value) return worker.postMessage(value);
        void worker.terminate();
        ended();
      };
      worker.on('error', failed);
      worker.on('message', ({ key, advice }: { key: string; advice: ZoneAdvice }) => {
        give();
        take(key, advice);
      });
      give();
    });
  await Promise.all(Array.from({ length: cores }, work));
}
