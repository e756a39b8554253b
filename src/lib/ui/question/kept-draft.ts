import type { QuestionId } from '$lib/answers/questions';
import { preferences } from '$lib/ui/preferences.svelte';
import { siteName } from '$lib/ui/site-name';
import type { Draft } from './draft';

const key = siteName('down-to-sound.draft');

/** Which question of which zone and job a draft is for. */
const placeOf = (question: QuestionId, zone: string | null) =>
  JSON.stringify([preferences.job, zone, question]);

/**
 * Keeps, for this tab, what is ticked or typed before Continue: a look at a word of the trade must
 * not cost it. Null lets go of it. One at a time: the reader stands before one question.
 */
export function keepDraft(question: QuestionId, zone: string | null, draft: Draft | null): void {
  try {
    if (draft) sessionStorage.setItem(key, JSON.stringify([placeOf(question, zone), draft]));
    else sessionStorage.removeItem(key);
  } catch {
    // No storage, or none left: it holds as long as the page stands.
  }
}

/** The draft kept for this question, or null. */
export function keptDraft(question: QuestionId, zone: string | null): Draft | null {
  try {
    const [place, draft] = JSON.parse(sessionStorage.getItem(key) ?? '[]') as [string?, Draft?];
    return (place === placeOf(question, zone) && draft) || null;
  } catch {
    return null;
  }
}
