import { countRejections, stands } from '$lib/advice/rejected';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import { choiceSentence } from '$words/rules/choice';
import { advicePageWords as labels } from '$words/ui/advice';
import type { Say } from '$lib/words/types';
import type { Further } from '$lib/ui/thoughts/further';
import { borderOpen, type PartId } from './part-order';

/** What a folded part comes to, beside its title: a count, or the first reason. */
export function partLine(
  id: PartId,
  advice: ZoneAdvice,
  further: Further | null,
  say: Say,
): string {
  const { rejections, reasons, outcomes, findOut, assumptions, steps, cautions } = advice;
  switch (id) {
    case 'reasons':
      return reasons[0] ? choiceSentence(reasons[0], say) : '';
    case 'others': {
      const counts = countRejections(rejections);
      return stands
        .filter((stand) => counts[stand])
        .map((stand) => `${counts[stand]} ${labels.stands[stand]}`)
        .join(', ');
    }
    case 'margins':
      return further ? labels.answersCount(further.margins.length) : '';
    case 'outcomes':
      return String(outcomes.length);
    case 'find-out':
      return String(findOut.length);
    case 'left-open':
      return String(assumptions.length + (borderOpen(advice) ? 1 : 0));
    case 'steps':
      return steps.length ? String(steps.length) : '';
    case 'cautions':
      return String(cautions.length);
    default:
      return '';
  }
}
