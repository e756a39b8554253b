import { authoredFaults } from '$lib/practice/authored';

/** Cases that do not teach what they mean to stop the build. */
export function load() {
  const faults = authoredFaults();
  if (faults.length) throw new Error(`practice cases:\n${faults.join('\n')}`);
}
