import { csvOf } from '$lib/keep/export-csv';
import { localTime } from '$lib/ui/ready/times';
import type { Say } from '$lib/words/types';
import { resultsWords as words } from '$words/practice/results';
import type { GivenSet } from './sets';
import { callName, titleOf } from './names';

/** A moment as spreadsheets sort it. */
const stamp = (minute: number): string =>
  localTime(new Date(minute * 60_000).toISOString()).replace('T', ' ');

/** Every pick of every learner as a row of a table. */
export const resultsCsv = (sets: readonly GivenSet[], say: Say): string =>
  csvOf(
    words.head,
    sets.flatMap(({ rows }, at) =>
      rows.flatMap(({ result, judged }) =>
        judged.map(({ id, pick, grade }, place) => [
          result.name,
          stamp(result.minute),
          at + 1,
          place + 1,
          titleOf(id),
          callName(pick, say),
          grade ? callName(grade.answer, say) : null,
          grade ? (grade.kind === 'right' ? words.yes : words.no) : null,
        ]),
      ),
    ),
  );
