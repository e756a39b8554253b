import { formatter } from '$lib/words/format';
import { ownLanguage } from '$words/language';
import { figureNames } from '$words/ui/figures';
import { capital } from '$lib/words/by-language';
import { figures, rangeOf, valueOf, type FigureId } from '$shared/figures';

const metric = formatter('metric');
const american = formatter('us');

/** A ratio above one is a factor, not a share: it is printed as it is. */
const isFactor = (id: FigureId) => {
  const { unit, value, range } = figures[id];
  return unit === 'ratio' && Math.max(...(range ?? [value ?? 0])) > 1;
};

/** What a figure is the figure of; one without a name of its own is told by the words of its id. */
export const nameFigure = (id: FigureId): string =>
  figureNames[id] ?? capital(id.replaceAll('.', ', ').replaceAll('-', ' '));

/** A figure as the explainers print it: shares in words, else metric, then US measure in brackets where the two differ. */
export function sayFigure(id: FigureId): string {
  if (isFactor(id)) {
    const [low, high] = rangeOf(id).map((end) => metric.number(end)) as [string, string];
    return ownLanguage.times(metric.ends(low, high));
  }
  // "A third of the thickness" is what a tape measure shows; "33.3%" is not.
  if (figures[id].unit === 'ratio' && !figures[id].range) return metric.fraction(valueOf(id));
  if (figures[id].unit === 'pH') {
    const [low, high] = rangeOf(id).map((end) => metric.number(end)) as [string, string];
    return `pH ${metric.ends(low, high)}`;
  }
  const [first, second] = [metric.figure(id), american.figure(id)];
  return first === second ? first : `${first} (${second})`;
}
