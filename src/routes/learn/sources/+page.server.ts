import { inOrder } from '$lib/words/by-language';
import { nameFigure, sayFigure } from '$lib/learn/figure-words';
import { lettersOf } from '$lib/learn/letters';
import { explainers, listed } from '$lib/learn/library.server';
import { formatter } from '$lib/words/format';
import { figuresIn } from '$lib/learn/check';
import { stepWords } from '$words/steps';
import { libraryWords } from '$words/ui/library';
import { verdictWords } from '$words/verdicts';
import { wholeFigures } from '$shared/figure-notes';
import type { FigureId } from '$shared/figures';
import { looked, type Aspect, type LookedFor } from '$shared/looked-for';
import type { StepId } from '$shared/methods';
import { sources } from '$shared/sources';
import { bases, extents } from '$shared/types';

export const csr = false;

const { otherWork } = libraryWords.sourcesPage;
const steps = stepWords(formatter('metric'));

const lines = Object.entries(wholeFigures).map(([id, figure]) => ({
  id,
  name: nameFigure(id as FigureId),
  said: sayFigure(id as FigureId),
  basis: [verdictWords.bases[figure.basis].name, figure.seen && verdictWords.seen[figure.seen].name]
    .filter(Boolean)
    .join('; '),
  note: figure.note,
  source: figure.source ?? [],
}));

const listedSources = Object.entries(sources)
  .map(([id, source]) => ({
    id,
    ...source,
    figures: lines.filter((line) => line.source.includes(id)),
    explainers: explainers
      .filter(
        ({ front, body }) =>
          front.sources.includes(id) ||
          figuresIn(body).some((figure) => wholeFigures[figure as FigureId].source?.includes(id)),
      )
      .map(listed),
  }))
  .sort((a, b) => inOrder(a.by, b.by) || inOrder(a.title, b.title));

/** Every source with the figures and explainers that lean on it, then the figures that have none. */
export const load = () => ({
  jumps: [
    ...lettersOf(listedSources, ({ by }) => by),
    { to: 'looked-for', name: libraryWords.sourcesPage.looked },
    { to: 'no-source', name: libraryWords.sourcesPage.none },
  ],
  bases: [
    ...bases.map((basis) => verdictWords.bases[basis]),
    ...extents.map((extent) => verdictWords.seen[extent]),
  ],
  sources: listedSources,
  looked: Object.entries(looked).map(([method, found]) => ({
    method:
      method in steps ? steps[method as StepId].name : otherWork[method as keyof typeof otherWork],
    aspects: (Object.entries(found) as [Aspect, LookedFor][]).map(
      ([aspect, { figures = [], looked: tried }]) => ({
        aspect,
        said: figures.map((id) => ({ id, name: nameFigure(id), said: sayFigure(id) })),
        tried,
      }),
    ),
  })),
  unsourced: lines.filter((line) => line.source.length === 0),
});
