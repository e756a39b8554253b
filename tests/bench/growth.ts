import type { Job, Zone } from '$lib/answers/job';
import { choicesOf } from '$lib/answers/questions';
import { planJob } from '$lib/plan/plan';
import { surveyOf } from '$lib/survey/survey';
import { cpuOf } from './cpu';

/** A job of so many zones, different in some answer; another `seed`, other areas: nothing is remembered. */
export function jobOf(count: number, seed: number): Job {
  const states = choicesOf('looseness').filter((each) => each !== 'rotten');
  const textures = choicesOf('texture');
  const zones = Array.from({ length: count }, (_, index): Zone => {
    const answers = {
      depth: 1 + (index % 45),
      looseness: [states[index % states.length]],
      contamination: { yes: [], maybe: [] },
      texture: [textures[(index + seed) % textures.length]],
      cracks: ['none'],
      steel: ['none-seen'],
      finish: ['overlay'],
      area: 1 + ((index * 7 + seed * 13) % 300) / 10,
    };
    return { id: `z${index}`, name: '', answers } as unknown as Zone;
  });
  const site = {
    element: ['slab'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['some'],
    thickness: 150,
    warnings: { yes: [], maybe: [] },
  };
  return { name: 'Bench', site, zones } as unknown as Job;
}

/** A slab with so many hollow spots drawn on it, a metre apart. */
export function drawnJobOf(count: number, seed: number): Job {
  const across = Math.ceil(Math.sqrt(count));
  const marks = Array.from({ length: count }, (_, index) => {
    const x = (index % across) * 1000 + 200 + seed;
    const y = Math.floor(index / across) * 1000 + 200;
    const corners = [
      [x, y],
      [x + 300, y],
      [x + 300, y + 300],
      [x, y + 300],
    ];
    return { kind: 'spot', depth: 40, corners };
  });
  const slab = { length: across * 1000 + 1000, width: across * 1000 + 1000 };
  return { ...jobOf(1, seed), survey: { slab, marks } } as unknown as Job;
}

export interface Grown {
  readonly count: number;
  /** Milliseconds of processor. */
  readonly ms: number;
  /** It grows like count to this power, from the row before. */
  readonly power: number | null;
}

/** How the work grows with the count. */
export async function growth(
  counts: readonly number[],
  make: (count: number, seed: number) => Job,
  work: (job: Job) => unknown,
): Promise<readonly Grown[]> {
  const rows: Grown[] = [];
  let seed = 0;
  // Warm: what is measured is the work, not its compiling.
  for (let round = 0; round < 5; round += 1) work(make(50, (seed += 1)));
  for (const count of counts) {
    // Several at once where one is too short to be measured.
    const times = Math.max(1, Math.round(200 / count));
    const jobs = Array.from({ length: 5 * times }, () => make(count, (seed += 1)));
    const ms =
      (await cpuOf(() => {
        for (const job of jobs.splice(0, times)) work(job);
      })) / times;
    const before = rows.at(-1);
    const power = before ? Math.log(ms / before.ms) / Math.log(count / before.count) : null;
    rows.push({ count, ms, power });
  }
  return rows;
}

export const planGrowth = (counts: readonly number[]) =>
  growth(counts, jobOf, (job) => planJob(job));
export const surveyGrowth = (counts: readonly number[]) =>
  growth(counts, drawnJobOf, (job) => surveyOf(job));
