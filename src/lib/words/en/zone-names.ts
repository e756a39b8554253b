import type { Zone } from '$lib/answers/job';
import { questionPageWords } from './ui/question';

/**
 * Zones by their names; by their places where they have none; and by both where two have the same,
 * since the one may have to stop and the other not.
 */
export function zoneNames(zones: readonly Pick<Zone, 'name'>[]): string[] {
  const plain = (name: string) => name.trim().toLowerCase();
  const count = new Map<string, number>();
  for (const { name } of zones) count.set(plain(name), (count.get(plain(name)) ?? 0) + 1);
  return zones.map(({ name }, place) =>
    name.trim() && count.get(plain(name)) === 1
      ? name.trim()
      : questionPageWords.zone(name.trim(), place + 1),
  );
}
