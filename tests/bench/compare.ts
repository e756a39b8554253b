import { adviseSettled } from '$lib/advice/settle';
import { cpuOf } from './cpu';
import { anyCases } from './decisions';
import { buildEngine, decide } from './rules-engine';
import { buildLanguage, decideByLanguage } from './rules-language';

export interface Comparison {
  /** Decisions of which all three have an answer, and how many are not the same. */
  readonly compared: number;
  readonly differing: number;
  /** Microseconds of processor a decision. */
  readonly ours: number;
  readonly engine: number;
  readonly language: number;
}

/**
 * The same decisions by this engine, with steps, reasons, holds and cautions, and by a rules engine
 * and a rules language, the method alone; their answers compared.
 */
export async function compare(count: number): Promise<Comparison> {
  const cases = anyCases(count);
  const [rules, language] = [buildEngine(), buildLanguage()];
  let [compared, differing] = [0, 0];
  for (const { site, zone } of cases) {
    const { underneath } = adviseSettled(site, zone);
    if (!underneath) continue;
    compared += 1;
    const theirs = [await decide(rules, site, zone), decideByLanguage(language, site, zone)];
    if (theirs.some((method) => method !== underneath)) differing += 1;
  }
  const few = cases.slice(0, Math.ceil(count / 10));
  const each = async (of: typeof cases, work: (one: (typeof cases)[number]) => unknown) =>
    (1000 *
      (await cpuOf(async () => {
        for (const one of of) await work(one);
      }))) /
    of.length;
  const ours =
    (1000 *
      (await cpuOf(() => {
        for (const { site, zone } of cases) adviseSettled(site, zone);
      }))) /
    cases.length;
  return {
    compared,
    differing,
    ours,
    engine: await each(few, ({ site, zone }) => decide(rules, site, zone)),
    language:
      (1000 *
        (await cpuOf(() => {
          for (const { site, zone } of few) decideByLanguage(language, site, zone);
        }))) /
      few.length,
  };
}
