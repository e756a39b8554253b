import type { Job } from '$lib/answers/job';
import { bounds } from '$lib/keep/bounds';
import { jobFileName } from '$lib/keep/file-name';
import { jobsWords as words } from '$lib/words/en/ui/jobs';

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

/** Hands a job to the reader as a job file. The format is fetched when it is needed. */
export async function saveToFile(job: Job): Promise<void> {
  const { jobText } = await import('$lib/keep/job-file');
  download(jobText(job), jobFileName(job));
}

/** The name of a copy, cut where a name would be too long. */
export function copyName(name: string): string {
  const room = bounds.nameLength - [...words.copyOf('')].length;
  return words.copyOf([...(name || words.unnamed)].slice(0, room).join('').trim());
}
