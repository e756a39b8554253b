import type { Job } from '$lib/answers/job';
import { bounds } from '$lib/keep/bounds';
import type { WholePhoto } from '$lib/answers/photo';
import { jobFileName } from '$lib/keep/file-name';
import { session } from '$lib/ui/session.svelte';
import { jobsWords as words } from '$words/ui/jobs';

/** Hands a text to the reader as a file of that name. */
export function download(text: string, name: string, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers begin to read only after this turn.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Hands a job to the reader as a job file, with the photos that were chosen. The format is fetched when it is needed. */
export async function saveToFile(job: Job, photos: readonly WholePhoto[] = []): Promise<void> {
  const { jobTextWith } = await import('$lib/keep/job-file');
  download(await jobTextWith(job, photos), jobFileName(job));
}

/** Does what gives the job in hand another id; its photos are copied to it. */
export async function photosAlong(step: () => Promise<void>): Promise<void> {
  const { id } = session;
  await step();
  await (await import('$lib/ui/photos/shelf')).copyPhotos(id, session.id);
}

/** The name of a copy, cut where a name would be too long. */
export function copyName(name: string): string {
  const room = bounds.nameLength - [...words.copyOf('')].length;
  return words.copyOf([...(name || words.unnamed)].slice(0, room).join('').trim());
}
