import { questionIds, type QuestionId } from '$lib/answers/questions';
import { loadParts } from '$lib/ui/question/load';
import type { EntryGenerator, PageLoad } from './$types';

/** One page for every question, so that each can be read without JavaScript. */
export const entries: EntryGenerator = () => questionIds.map((question) => ({ question }));

export const load: PageLoad = async ({ params }) => {
  const question = params.question as QuestionId;
  return { question, parts: await loadParts(question) };
};
