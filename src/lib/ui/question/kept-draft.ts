import type { QuestionId } from '$lib/answers/questions';
import { siteName } from '$lib/ui/site-name';
import type { Draft } from './draft';

const key = siteName('down-to-sound.drafts');

/** Which question of which zone and job a draft is for. */
const placeOf = (job: string, question: QuestionId, zone: string | null) =>
  JSON.stringify([job, zone, question]);

const all = (): Record<string, Draft> => JSON.parse(sessionStorage.getItem(key) ?? '{}');

/**
 * Keeps, for this tab, what is ticked or typed before Continue: a look at a word of the trade must
 * not cost it. Null lets go of it.
 * @returns whether it is kept
 */
export function keepDraft(
  job: string,
  question: QuestionId,
  zone: string | null,
  draft: Draft | null,
): boolean {
  const place = placeOf(job, question, zone);
  try {
    // One that is let go of is undefined here, and so left out.
    sessionStorage.setItem(key, JSON.stringify({ ...all(), [place]: draft ?? undefined }));
    return true;
  } catch {
    // No storage, or none left: it holds as long as the page stands.
    return false;
  }
}

/** The draft kept for this question, or null. */
export function keptDraft(job: string, question: QuestionId, zone: string | null): Draft | null {
  try {
    return all()[placeOf(job, question, zone)] ?? null;
  } catch {
    return null;
  }
}
