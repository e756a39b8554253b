import { basisWords, sayFigure } from '$lib/learn/figure-words';
import { explainers, listed } from '$lib/learn/library.server';
import { figuresIn } from '$lib/learn/check';
import { wholeFigures } from '$shared/figure-notes';
import type { FigureId } from '$shared/figures';
import { sources } from '$shared/sources';
import { bases, type Basis } from '$shared/types';

export const csr = false;

/** Shown beside a basis, for readers who meet the word here first. */
const basisMeaning: Readonly<Record<Basis, string>> = {
  published: 'Read in the source’s own text, or in a government or research text.',
  reported: 'Read in a second-hand copy or summary of the source.',
  memory: 'From memory. Check a copy of the source before you rely on it.',
  practice: 'Common practice of the trade. No published source.',
  derived: 'Worked out here by arithmetic, which the note shows.',
};

const lines = Object.entries(wholeFigures).map(([id, figure]) => ({
  id,
  said: sayFigure(id as FigureId),
  basis: basisWords[figure.basis],
  note: figure.note,
  source: figure.source ?? [],
}));

/** Every source with the figures and explainers that lean on it, then the figures that have none. */
export const load = () => ({
  bases: bases.map((basis) => ({ basis, means: basisMeaning[basis] })),
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
