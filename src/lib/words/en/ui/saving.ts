import type { Unavailable } from '$lib/keep/job-store';

/** Why work is held in this tab only. */
export const memoryWords: Readonly<Record<Unavailable, string>> = {
  'no-storage':
    'This browser keeps no data for websites, or that is switched off. Your work stays in this tab only. Save it as a file before you close the tab.',
  refused:
    'This browser would not open its storage, perhaps because this is a private window. Your work stays in this tab only. Save it as a file before you close the tab.',
  blocked:
    'Another tab holds an older copy of this site open. Close the other tabs and reload. Until then your work stays in this tab only.',
  slow: 'The storage of this browser did not answer. Your work stays in this tab only. Save it as a file, then reload.',
};
