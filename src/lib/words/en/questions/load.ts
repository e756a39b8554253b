import type { QuestionId } from '$lib/answers/questions';
import type { QuestionsWords, QuestionWords, Say } from '$lib/words/types';

const site = async () => (await import('./site')).siteQuestionWords;
const damage = async () => (await import('./damage')).damageQuestionWords;
const inside = async () => (await import('./inside')).insideQuestionWords;
const bars = async () => (await import('./bars')).barQuestionWords;
const sheet = async () => (await import('./sheet')).sheetQuestionWords;
const next = async () => (await import('./next')).nextQuestionWords;

/** Where the words of each question are; a wrong place does not compile. */
const places: { readonly [Q in QuestionId]: () => Promise<(say: Say) => Pick<QuestionsWords, Q>> } =
  {
    element: site,
    setting: site,
    salts: site,
    freezeThaw: site,
    thickness: site,
    warnings: site,
    depth: damage,
    looseness: damage,
    contamination: damage,
    texture: damage,
    cracks: inside,
    crackLength: inside,
    steel: inside,
    barLoss: inside,
    barCover: bars,
    barDiameter: bars,
    barSpacing: bars,
    barLength: bars,
    finish: next,
    makerProfile: sheet,
    makerMoisture: sheet,
    area: next,
    borderLength: next,
  };

/** The words of one question, in the units of `say`. */
export type WordsOf = (say: Say) => QuestionWords;

/** Fetches the words of one question, so that a page need not wait for those of all. */
export async function loadQuestionWords(question: QuestionId): Promise<WordsOf> {
  const all: (say: Say) => Partial<QuestionsWords> = await places[question]();
  return (say) => all(say)[question] as QuestionWords;
}
