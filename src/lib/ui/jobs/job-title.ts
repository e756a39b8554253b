import type { JobSummary } from '$lib/keep/job-store';
import { timeWords } from '$lib/words/by-language';
import { elementTitles } from '$words/ui/frame';
import { homeWords as words } from '$words/ui/home';

/** Zones that an unnamed job is told by, at most. */
const most = 2;

/** The name of a job in a list; one without a name is told by what it is about. */
export function jobTitle({ name, about }: JobSummary): string {
  if (name) return name;
  const told = [
    ...(about?.element ? [elementTitles[about.element]] : []),
    ...(about?.zones.slice(0, most) ?? []),
  ];
  return told.length ? words.unnamedOf(told.join(', ')) : words.unnamed;
}

/** The same where nothing stands beside it: an unnamed job with the time of its last change. */
export const jobSpoken = (summary: JobSummary): string =>
  summary.name || !summary.changedAt
    ? jobTitle(summary)
    : `${jobTitle(summary)}, ${words.changed(timeWords(summary.changedAt))}`;
