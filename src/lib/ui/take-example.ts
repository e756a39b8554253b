import { demoJob, type DemoId } from '$lib/keep/demos';
import { session } from './session.svelte';

/**
 * Takes an example job into hand. One that was opened before is opened again as it was left, so
 * that copies do not pile up. Ask first where something in hand would be lost.
 */
export async function takeExample(id: DemoId): Promise<void> {
  const job = demoJob(id);
  const before = (await session.list()).find(({ name, damaged }) => name === job.name && !damaged);
  if (before && (await session.switchTo(before.id))) return;
  await session.startNew(job);
  session.update((each) => each);
}
