import type { SiteAnswers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { adviseZone } from '$lib/advice/advise';
import { asMadeNew, isMadeNew } from '$lib/advice/made-new';
import { whyNotAsked } from '$lib/advice/relevance';
import type { Reason } from '$lib/advice/types';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { FigureId } from '$shared/figures';
import { settingFigures } from '$shared/settings';

/** How long the advice took, among the browser's performance entries. */
export const adviceMeasure = 'advice';

/**
 * The advice as the page shows it: what is left open leaves out questions that are not asked.
 * What would change it is worked out after: see `further.ts`.
 */
export function readerAdvice(site: SiteAnswers, zone: TriedAnswers): ZoneAdvice {
  const start = performance.now();
  const advice = adviseZone(site, zone, { margins: false });
  performance.measure(adviceMeasure, { start });
  return asRead(advice, site, zone);
}

/** Advice as the page shows it. */
export function asRead(advice: ZoneAdvice, site: SiteAnswers, zone: TriedAnswers): ZoneAdvice {
  const asked = ({ question }: { question: Parameters<typeof whyNotAsked>[0] }) =>
    whyNotAsked(question, site, zone) === null;
  const told = isMadeNew(advice.holds) ? asMadeNew(advice, site) : advice;
  return {
    ...told,
    assumptions: told.assumptions.filter(asked),
  };
}

const figuresOf = (reasons: readonly Reason[]): readonly FigureId[] =>
  reasons.flatMap(({ figures }) => figures ?? []);

/** Every figure the advice leans on, each once, in the order it comes up. */
export const figuresUsed = (advice: ZoneAdvice): readonly FigureId[] => [
  ...new Set([
    ...figuresOf(advice.holds),
    ...advice.steps.flatMap(({ why }) => figuresOf(why)),
    ...figuresOf(advice.reasons),
    ...figuresOf(advice.rejections),
    ...advice.target.figures,
    ...(advice.method ? settingFigures(advice.method) : []),
  ]),
];
