import type { Answer } from '$lib/answers/answers';
import { questions, type QuestionId } from '$lib/answers/questions';
import type { AnswerGiven } from '$lib/interview/context';
import { session } from '$lib/ui/session.svelte';
import { speakAnswer } from '$lib/ui/speak-answer';
import { jobPageWords as words } from '$words/plan/job';
import { questionWords } from '$words/questions';
import { changeBack, changeInPlace, type Changed, type Refused } from './in-place';
import { planned } from './plan.svelte';
import { labelOf, zoneList } from './zone-list.svelte';

/** What stands again after an undo. */
function again({ question, before }: Changed, of: string): string {
  const asked = questionWords(planned.say);
  const { short } = asked[question];
  return before === undefined
    ? words.inPlace.undoneOpen(short, of)
    : words.inPlace.undone(
        short,
        of,
        speakAnswer(question, before as Answer<QuestionId>, asked, planned.say),
      );
}

/** Changes an answer where it stands; why not, where it is refused. */
export function answerInPlace(zone: string, given: AnswerGiven, seen: unknown): Refused | null {
  const result = changeInPlace(session.job, zone, given, seen);
  if ('refused' in result) return result.refused;
  session.update(() => result.job);
  const { question } = given;
  const site = questions[question].scope === 'site';
  const { short } = questionWords(planned.say)[question];
  const of = site ? words.ofSite : labelOf(zone);
  const element = `change-${site ? 'site' : zone}-${question}`;
  zoneList.remember({
    done: words.inPlace.changed(short, of),
    label: words.inPlace.undoOf(short, of),
    undo: (now) => {
      const back = changeBack(now, result.changed);
      const stays = 'refused' in back;
      return {
        job: stays ? now : back.job,
        told: stays ? words.inPlace.undoRefused[back.refused] : again(result.changed, of),
        back: { zone: site ? null : zone, element },
      };
    },
  });
  return null;
}
