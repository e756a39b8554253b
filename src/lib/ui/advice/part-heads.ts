import type { ZoneAdvice } from '$lib/advice/zone-advice';
import { isMadeNew } from '$lib/advice/made-new';
import type { Reader } from '$lib/ui/preferences.svelte';
import { advicePageWords as labels } from '$words/ui/advice';
import { ownerTitles, partTitles } from '$words/ui/reader';
import { isKeptAway, partOrders, stopsEitherWay, type PartId } from './part-order';

/** The test to do now takes the place of tool and setting: there is no method yet. */
export const isTestFirst = ({ verdict, findOut }: ZoneAdvice): boolean =>
  verdict === 'find-out-first' && findOut.length > 0;

/** A test that nothing waits for is a row like the rest, and so are steps that may not start yet. */
export const isFolded = (id: PartId, reader: Reader, advice: ZoneAdvice): boolean =>
  !partOrders[reader].open.includes(id) ||
  id === 'find-out' ||
  (id === 'cautions' && reader === 'own' && isTestFirst(advice)) ||
  (id === 'steps' && advice.method === null && advice.steps.length > 0);

/**
 * The heading of a part.
 * @param kept whether people are kept away from it
 */
export function titleFor(
  id: PartId,
  reader: Reader,
  advice: ZoneAdvice,
  kept: boolean = false,
): string {
  const settled = advice.outcomes.length === 1;
  if (id === 'find-out' && isKeptAway(reader, kept)) return labels.theirTests;
  if (id === 'find-out' && advice.verdict !== 'find-out-first') return labels.checkToo;
  if (id === 'possible' && stopsEitherWay(advice)) return labels.possible.someStop;
  if (id === 'steps') {
    if (isMadeNew(advice.holds)) return labels.stepsMadeNew;
    // What may not start yet must not read as if it might.
    if (settled && advice.verdict !== 'prepare') return labels.stepsAfter;
    if (advice.holds.length || advice.possibleHolds.length) return labels.stepsOnce;
    if (!settled) return labels.stepsCommon;
  }
  return (reader === 'own' ? ownerTitles[id] : undefined) ?? partTitles[id];
}
