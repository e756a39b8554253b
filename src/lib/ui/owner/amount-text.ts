import { isKnown, type Amount } from '$lib/plan/amount';
import type { MeasureId } from '$lib/plan/courses';
import { questionWords } from '$lib/words/en/questions';
import { ownerPageWords as labels } from '$lib/words/en/owner';
import type { Say } from '$lib/words/types';

/** Two significant figures: more would pretend to know. */
const coarse = (value: number): number => (value === 0 ? 0 : Number(value.toPrecision(2)));

const speak: Readonly<Record<MeasureId, (value: number, say: Say) => string>> = {
  debris: (value, say) => say.mass(value),
  material: (value, say) => say.volume(value),
  water: (value, say) => `${say.number(value)} L`,
  hours: (value, say) => `${say.number(value)} h`,
  'days-closed': (value, say) => say.number(value),
  carbon: (value, say) => `${say.number(value)} kg`,
  cost: (value, say) => say.number(value),
};

/** A measure as the owner reads it: a range, or what it still needs. */
export function measureText(id: MeasureId, amount: Amount | null, say: Say): string {
  if (!amount) return id === 'cost' ? labels.needsPrices : labels.notFigured;
  if (!isKnown(amount)) {
    const words = questionWords(say);
    return `${labels.needsAnswers}: ${say.list(amount.missing.map((question) => words[question].short))}`;
  }
  const [low, high] = amount.span.map((end) => speak[id](coarse(end), say));
  return low === high ? String(low) : `${low} – ${high}`;
}
