import { isKnown, type Amount } from '$lib/plan/amount';
import type { MeasureId } from '$lib/plan/options';
import { lowered } from '$lib/words/by-language';
import { ownerPageWords as labels } from '$words/owner';
import { amountWords, spanWords } from '$words/plan/amounts';
import { questionWords } from '$words/questions';
import type { Say } from '$lib/words/types';

/**
 * A measure as the owner reads it: a range, or what it still needs.
 * @param largest the largest number of the measure, so that all options are in one unit
 */
export function measureText(
  id: MeasureId,
  amount: Amount | null,
  say: Say,
  largest?: number,
): string {
  if (!amount) return id === 'cost' ? labels.needsPrices : labels.notFigured;
  if (isKnown(amount)) {
    // What a option takes none of here, it may take elsewhere: a coat, the dust of a machine.
    if (!amount.span[1] && (id === 'material' || id === 'carbon')) return labels.onlyOnTop;
    if (!amount.span[1] && id === 'debris') return labels.onlyDust;
    // Money has no unit we know; days are said in the name of the measure.
    if (id === 'cost') return spanWords(amount.span, 'ratio', say);
    if (amount.unit === 'd') return spanWords(amount.span, 'count', say);
    return amountWords(amount, say, largest) ?? '';
  }
  const words = questionWords(say);
  return `${labels.needsAnswers}: ${say.list(amount.missing.map((question) => lowered(words[question].short)))}`;
}
