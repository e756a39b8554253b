import { figuresIn } from '$lib/learn/check';
import { sayFigure } from '$lib/learn/figure-words';
import { verdictWords } from '$words/verdicts';
import { explained } from '$lib/learn/kinds';
import { explainerOf, explainers, listed } from '$lib/learn/library.server';
import { wholeFigures } from '$shared/figure-notes';
import type { FigureId } from '$shared/figures';
import { sources, type SourceId } from '$shared/sources';
import type { EntryGenerator, PageServerLoad } from './$types';

export const csr = false;

export const entries: EntryGenerator = () => explainers.map(({ slug }) => ({ slug }));

const nameSource = (id: string) => ({ id, ...sources[id as SourceId] });

/** One explainer's head, and what stands at its foot: figures, sources, where to read on. */
export const load: PageServerLoad = ({ params }) => {
  const { slug, front, body } = explainerOf(params.slug);
  const notes = figuresIn(body).map((id) => {
    const figure = wholeFigures[id as FigureId];
    return {
      said: sayFigure(id as FigureId),
      basis: verdictWords.bases[figure.basis].name,
      note: figure.note,
      sources: (figure.source ?? []).map(nameSource),
    };
  });
  const named = new Set([
    ...front.sources,
    ...figuresIn(body).flatMap((id) => wholeFigures[id as FigureId].source ?? []),
  ]);
  return {
    slug,
    front,
    hazards: explained.hazard.filter((id) => front.covers.includes(`hazard:${id}`)),
    steps: explained.step.filter((id) => front.covers.includes(`step:${id}`)),
    checks: explained.check.filter((id) => front.covers.includes(`check:${id}`)),
    notes,
    sources: [...named].map(nameSource),
    related: front.related.map((id) => listed(explainerOf(id))),
  };
};
