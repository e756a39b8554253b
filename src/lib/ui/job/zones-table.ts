import type { Answer } from '$lib/answers/answers';
import { exactText, type ExactUnit } from '$lib/answers/exact-text';
import type { Job } from '$lib/answers/job';
import {
  choicesOf,
  questions,
  zoneQuestionIds,
  type QuestionId,
  type ZoneQuestion,
} from '$lib/answers/questions';
import { csvOf } from '$lib/keep/export-csv';
import { choiceIn } from '$lib/ui/choice-words';
import { zonesTableWords as table } from '$words/plan/zones-table';
import type { QuestionsWords, Say } from '$lib/words/types';

/** Between answers in one cell. */
export const between = '; ';

/** What a question's number is measured in; null for a question without one. */
export const unitOf = (id: QuestionId): ExactUnit | null => {
  const question = questions[id];
  return 'unit' in question ? question.unit : null;
};

/** An answer as its cell; without one the cell is empty. */
function cellOf(
  id: ZoneQuestion,
  answer: Answer<QuestionId> | undefined,
  words: QuestionsWords,
  say: Say,
): string {
  if (answer === undefined) return '';
  if (answer === 'unknown') return table.notSure;
  if (typeof answer === 'number') return exactText(answer, unitOf(id) ?? 'mm', say.units);
  const name = (choice: string) => choiceIn(words[id], choice).name;
  const all = choicesOf(id).length;
  if (!('yes' in answer))
    return answer.length === all && all > 1 ? table.notSure : answer.map(name).join(between);
  const { yes, maybe } = answer;
  if (!yes.length && maybe.length === all) return table.notSure;
  if (!yes.length && !maybe.length) return table.none;
  return [...yes.map(name), ...maybe.map((each) => table.maybe(name(each)))].join(between);
}

/** The name of a question's column: its own words, and the unit its numbers are in. */
export const columnName = (id: ZoneQuestion, words: QuestionsWords, say: Say): string => {
  const unit = unitOf(id);
  return words[id].short + (unit ? ` (${say.unitOf(unit)})` : '');
};

/** The zones as a table that a spreadsheet opens and `readZones` takes back, exactly. */
export const zonesCsv = (job: Job, words: QuestionsWords, say: Say): string =>
  csvOf(
    [table.place, table.zone, ...zoneQuestionIds.map((id) => columnName(id, words, say))],
    job.zones.map(({ name, answers }, place) => [
      place + 1,
      name,
      ...zoneQuestionIds.map((id) => cellOf(id, answers[id], words, say)),
    ]),
  );
