import { jobFileName } from '$lib/keep/file-name';
import { session } from '$lib/ui/session.svelte';

/** Hands a text to the browser as a file, named after the job. */
export function download(text: string, type: string, ending: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = url;
  link.download = jobFileName(session.job).replace('.down-to-sound.json', ending);
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
