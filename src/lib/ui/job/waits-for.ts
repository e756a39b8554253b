import type { Hold } from '$lib/advice/types';
import type { QuestionId } from '$lib/answers/questions';
import { capital } from '$lib/words/by-language';
import { jobPageWords as words } from '$words/plan/job';
import { questionWords } from '$words/questions';
import { verdictWords } from '$words/verdicts';
import type { Say } from '$lib/words/types';

/**
 * Whom a zone waits for and which answers are still open, in one line; who may be needed stands with
 * the advice where answers are open.
 * @param toCrew the reader does the work: what the crew finds out on the spot is for them
 */
export function waitsFor(
  zone: {
    readonly holds: readonly Hold[];
    readonly possibleHolds: readonly Hold[];
    readonly open: readonly QuestionId[];
  },
  say: Say,
  toCrew = false,
): string {
  const itself = (who: Hold['who']) => toCrew && who === 'crew';
  // Who is called is not asked as well.
  const called = zone.holds.filter(({ verdict }) => verdict === 'stop').map(({ who }) => who);
  const told = zone.holds.filter(({ verdict, who }) => verdict === 'stop' || !called.includes(who));
  const who = told.map((hold) =>
    itself(hold.who)
      ? words.findYourselves
      : (hold.verdict === 'stop' ? words.call : words.find)(verdictWords.who[hold.who].name),
  );
  const perhaps =
    zone.holds.length || zone.open.length
      ? []
      : zone.possibleHolds.map(({ who }) =>
          itself(who) ? words.findYourselves : words.may(verdictWords.who[who].name),
        );
  const asked = questionWords(say);
  const open = zone.open.length
    ? [words.openQuestions(say.list(zone.open.map((id) => asked[id].short)))]
    : [];
  return capital([...new Set([...who, ...perhaps]), ...open].join('; '));
}
