/**
 * Prints ratios, and turns red on nothing but disagreement: the engine, with full reasons, against
 * a general-purpose rules engine on the same decisions; and how plan time grows with the zones.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import { adviseSettled } from '$lib/advice/settle';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import type { Job, Zone } from '$lib/answers/job';
import { choicesOf } from '$lib/answers/questions';
import { planJob } from '$lib/plan/plan';
import { buildEngine, decide } from './rules-engine';

const seed = 20_261_125;
const dice = mersenne(seed);
const below = (count: number): number => Math.floor(uniformFloat64(dice) * count);
const one = <T>(list: readonly T[]): T => list[below(list.length)] as T;

interface Case {
  readonly site: SettledSite;
  readonly zone: SettledZone;
}

function anyCase(): Case {
  const site: SettledSite = {
    element: one(choicesOf('element')),
    setting: one(choicesOf('setting')),
    salts: one(choicesOf('salts')),
    freezeThaw: one(choicesOf('freezeThaw')),
    thickness: 'unknown',
    warnings: [],
  };
  const zone: SettledZone = {
    depth: one(choicesOf('depth')),
    looseness: one(choicesOf('looseness')),
    contamination: choicesOf('contamination').filter(() => below(4) === 0),
    texture: one(choicesOf('texture')),
    cracks: one(choicesOf('cracks')),
    crackLength: 'unknown',
    steel: one(choicesOf('steel')),
    barLoss: one(choicesOf('barLoss')),
    finish: one(choicesOf('finish')),
    area: 10,
  } as unknown as SettledZone;
  return { site, zone };
}

const rounds = 5;

/** Microseconds a call, the best of some rounds: the least disturbed one. */
async function microseconds(calls: number, work: () => Promise<void> | void): Promise<number> {
  let best = Infinity;
  for (let round = 0; round < rounds; round += 1) {
    const started = performance.now();
    await work();
    best = Math.min(best, performance.now() - started);
  }
  return (best * 1000) / calls;
}

async function againstRulesEngine(): Promise<boolean> {
  const cases = Array.from({ length: 3000 }, anyCase);
  const engine = buildEngine();
  let differ = 0;
  let compared = 0;
  for (const { site, zone } of cases) {
    const { underneath } = adviseSettled(site, zone);
    if (!underneath) continue;
    compared += 1;
    if ((await decide(engine, site, zone)) !== underneath) differ += 1;
  }
  const few = cases.slice(0, 600);
  const ours = await microseconds(cases.length, () => {
    for (const { site, zone } of cases) adviseSettled(site, zone);
  });
  const theirs = await microseconds(few.length, async () => {
    for (const { site, zone } of few) await decide(engine, site, zone);
  });
  console.log(`decisions compared: ${compared}, differing: ${differ}`);
  console.log(`this engine, with steps, reasons, holds and cautions: ${ours.toFixed(1)} us each`);
  console.log(`json-rules-engine, the method alone: ${theirs.toFixed(1)} us each`);
  console.log(`ratio: ${(theirs / ours).toFixed(0)} times`);
  return differ === 0 && compared > 1000;
}

/** A job of so many zones, all different in some answer. */
function jobOf(count: number): Job {
  const zones = Array.from({ length: count }, (_, index): Zone => {
    const answers = {
      depth: 1 + (index % 45),
      looseness: [one(choicesOf('looseness').filter((each) => each !== 'rotten'))],
      contamination: { yes: [], maybe: [] },
      texture: [one(choicesOf('texture'))],
      cracks: ['none'],
      steel: ['none-seen'],
      finish: ['overlay'],
      area: 1 + below(300) / 10,
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

async function growth(): Promise<void> {
  console.log('plan of a whole job, from nothing:');
  let before: { zones: number; ms: number } | undefined;
  for (const zones of [1, 10, 100, 200, 500, 1000]) {
    // A job of its own for every round: what was advised before is remembered.
    const jobs = Array.from({ length: rounds }, () => jobOf(zones));
    const ms = (await microseconds(1, () => void planJob(jobs.pop() as Job))) / 1000;
    const grew = before && Math.log(ms / before.ms) / Math.log(zones / before.zones);
    const power = grew === undefined ? '' : `, grows like zones^${grew.toFixed(2)}`;
    console.log(`  ${String(zones).padStart(5)} zones: ${ms.toFixed(1)} ms${power}`);
    before = { zones, ms };
  }
}

const agree = await againstRulesEngine();
await growth();
process.exit(agree ? 0 : 1);
