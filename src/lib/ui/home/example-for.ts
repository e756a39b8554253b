import type { DemoId } from '$lib/keep/demos';
import type { Reader } from '$lib/ui/preferences.svelte';

/**
 * The example a reader is shown, and the page of it. Whoever owns or explains needs one whose sheet
 * weighs restoring against replacing; whoever works, one with drawn zones and something to find out.
 */
export function exampleFor(reader: Reader | null): {
  readonly id: Extract<DemoId, 'larch-row' | 'community-hall-forecourt'>;
  readonly page: 'advice' | 'owner';
} {
  if (reader === 'explain') return { id: 'community-hall-forecourt', page: 'owner' };
  if (reader === 'own') return { id: 'community-hall-forecourt', page: 'advice' };
  return { id: 'larch-row', page: 'advice' };
}
