import type { Job } from '$lib/answers/job';
import type { Element } from '$lib/answers/questions';
import type { Problem } from './problem';

/** A job as it is kept, with what lets two tabs notice each other. */
export interface StoredJob {
  readonly id: string;
  readonly job: Job;
  /** Milliseconds since 1970, by the device's clock. */
  readonly createdAt: number;
  readonly changedAt: number;
  /** One more with every write; where it begins is drawn by lot, never 0. */
  readonly revision: number;
}

/** One line of the list of jobs. `damaged` when the record does not read as a job any more. */
export interface JobSummary {
  readonly id: string;
  readonly name: string;
  readonly zones: number;
  /** What tells a job without a name from another: what it is about, where that is known, and the zones that have a name. */
  readonly about?: { readonly element: Element | null; readonly zones: readonly string[] };
  readonly createdAt: number;
  readonly changedAt: number;
  readonly revision: number;
  readonly damaged?: Problem;
}

/** Why work is held in this tab only, or why it could not be kept. */
export type Unavailable =
  /** The browser has no storage for sites, or it is switched off. */
  | 'no-storage'
  /** The browser refused to open it: private mode, a policy, a damaged profile. */
  | 'refused'
  /** Another tab holds an older version of the storage open. */
  | 'blocked'
  /** Opening took too long. */
  | 'slow';

export type PutResult =
  | { readonly ok: true; readonly revision: number }
  /** `newer`: another tab saved since; `stored` is what it saved, absent when it deleted the job. */
  | { readonly ok: false; readonly why: 'newer'; readonly stored?: StoredJob }
  | { readonly ok: false; readonly why: 'quota' | 'unavailable' }
  /** The job could not be read back as it is, so it was not written. */
  | { readonly ok: false; readonly why: 'invalid'; readonly problem: Problem };

export type StoreEvent =
  | { readonly kind: 'put'; readonly id: string; readonly revision: number }
  /** With an empty id: the storage was taken away under the page, and all that was kept may be gone. */
  | { readonly kind: 'remove'; readonly id: string };

/** Reads reject when the device fails; writes say it in their result. */
export interface JobStore {
  /** `memory` holds work in this tab only; `why` then says what is the matter. */
  readonly kind: 'device' | 'memory';
  readonly why?: Unavailable;
  /** All jobs, last changed first; a damaged record is listed as such. */
  list(): Promise<readonly JobSummary[]>;
  /** A job; undefined when there is none by that id, or when its record is damaged. */
  get(id: string): Promise<StoredJob | undefined>;
  /**
   * Saves a job over the revision it was read at; 0 for a new one. Never throws.
   * `ok` is said only after the write has ended on the device.
   */
  put(id: string, job: Job, revision: number): Promise<PutResult>;
  /** Deletes a job and gives back what it was, for `restore`. A damaged record is deleted too. */
  remove(id: string): Promise<StoredJob | undefined>;
  /**
   * Deletes all jobs, also what cannot be read, and tells other tabs of each. Says how many went.
   * Rejects when the device fails; then all are there as before.
   */
  clear(): Promise<number>;
  /** Undoes `remove`. Refused as `newer` when a job by that id is there again. */
  restore(stored: StoredJob): Promise<PutResult>;
  /** What is on the device under an id, as text, whatever it is: the way out for a damaged record. */
  raw(id: string): Promise<string | undefined>;
  /** Calls back when another tab has saved or deleted a job, or the storage was taken away. Returns the way to stop. */
  onChange(listener: (event: StoreEvent) => void): () => void;
  close(): void;
}

/** A new id for a job. */
export const newJobId = (): string => crypto.randomUUID();
