import { questions, type QuestionId } from '$lib/answers/questions';
import { preferences } from '$lib/ui/preferences.svelte';
import { emptyDraft, type Draft } from './draft';
import { unsureChoice } from './unsure-choice';

/**
 * What the reader ticked or typed on the page as it came, before this code took it over; taking
 * over would clear it. Null when there is no such page or nothing was touched.
 */
export function earlyDraft(question: QuestionId): Draft | null {
  if (typeof document === 'undefined') return null;
  const form = document.querySelector<HTMLFormElement>(`form[data-question="${question}"]`);
  if (!form) return null;
  const ticked = (name: string) =>
    [...form.querySelectorAll<HTMLInputElement>(`input[name="${name}"]:checked`)].map(
      ({ value }) => value,
    );
  const text = form.querySelector<HTMLInputElement>('[inputmode]')?.value ?? '';
  const picked = ticked(question);
  const maybe = ticked(`${question}-maybe`);
  if (text) return { ...emptyDraft, way: 'number', typed: { text, units: preferences.units } };
  if (picked.includes('unsure')) return { ...emptyDraft, way: 'unsure' };
  if (picked.includes('zero')) return { ...emptyDraft, way: 'number', value: 0 };
  if (picked.includes('measured')) return { ...emptyDraft, way: 'number' };
  if (picked.includes('none') && questions[question].kind === 'many')
    return { ...emptyDraft, way: 'none' };
  if (!picked.length && !maybe.length) return null;
  // What comes ticked was not ticked by the reader.
  if (picked[0] === unsureChoice(question)) return null;
  return { ...emptyDraft, way: 'choices', picked, maybe };
}
