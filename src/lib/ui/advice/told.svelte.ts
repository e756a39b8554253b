import { think } from '$lib/ui/thoughts/think';
import type { SiteAnswers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import { takesLong } from './may-be-open';
import { adviceMeasure, asRead, readerAdvice } from './reader-advice';

/** Answers with the advice that was worked out from them. */
export interface Told {
  readonly answers: { readonly site: SiteAnswers; readonly zone: TriedAnswers };
  readonly advice: ZoneAdvice;
}

/**
 * The advice for answers, at once; where so much is open that it takes long, once it has been worked
 * out apart from the page, which goes on answering taps meanwhile.
 * @param answers what is answered now
 * @returns what can be told; null until something can
 */
export function toldOf(answers: () => Told['answers']): { readonly now: Told | null } {
  const long = $derived(takesLong(answers()));
  const atOnce = $derived.by(() => {
    if (long) return null;
    const { site, zone } = answers();
    return { answers: answers(), advice: readerAdvice(site, zone) };
  });
  let thought = $state.raw<Told | null>(null);
  $effect(() => {
    if (!long) return;
    const asked = answers();
    const { site, zone } = asked;
    const start = performance.now();
    return think('advice', [site, zone], (advice) => {
      performance.measure(adviceMeasure, { start });
      thought = { answers: asked, advice: asRead(advice, site, zone) };
    });
  });
  return {
    get now() {
      return long ? thought : atOnce;
    },
  };
}
