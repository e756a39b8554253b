import type { PutResult } from '$lib/keep/job-store';

/** Why the last state of the job is not saved. */
export type Trouble = Exclude<PutResult, { ok: true }>['why'];
/** How keeping the work is going. Trouble is told to the reader, and `saved` is said. */
export type Saving = 'idle' | 'saving' | 'saved' | Trouble;

export const troubleIn = (saving: Saving): Trouble | null =>
  saving === 'idle' || saving === 'saving' || saving === 'saved' ? null : saving;
