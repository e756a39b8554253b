import { sayFigure } from '$lib/learn/figure-words';
import { explainers, listed } from '$lib/learn/library.server';
import { figuresIn } from '$lib/learn/check';
import { verdictWords } from '$lib/words/en/verdicts';
import { wholeFigures } from '$shared/figure-notes';
import type { FigureId } from '$shared/figures';
import { sources } from '$shared/sources';
import { bases } from '$shared/types';

export const csr = false;

const lines = Object.entries(wholeFigures).map(([id, figure]) => ({
  id,
  said: sayFigure(id as FigureId),
  basis: [verdictWords.bases[figure.basis].name, figure.seen && verdictWords.seen[figure.seen]]
    .filter(Boolean)
    .join('; '),
  note: figure.note,
  source: figure.source ?? [],
}));

/** Every source with the figures and explainers that lean on it, then the figures that have none. */
export const load = () => ({
  bases: bases.map((basis) => verdictWords.bases[basis]),
  sources: Object.entries(sources)
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
    .sort((a, b) => a.by.localeCompare(b.by, 'en-GB') || a.title.localeCompare(b.title, 'en-GB')),
  unsourced: lines.filter((line) => line.source.length === 0),
});
