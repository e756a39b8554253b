import { adviseZone } from '$lib/advice/advise';
import { siteMeasured } from '$lib/advice/salt-measured';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { SiteAnswers } from '$lib/answers/answers';
import type { Zone } from '$lib/answers/job';
import type { TriedAnswers, TriedOut } from '$lib/answers/trial-record';
import type { OwnFigures } from '$shared/figures';
import { trialOf, type ZoneTrial } from './zone-trial';

/** How advice is come by. */
export type AdviseTried = (site: SiteAnswers, answers: TriedAnswers) => ZoneAdvice;

/** The trial of a method, and the advice it is tried by. */
export interface TrialBy {
  readonly trial: ZoneTrial;
  readonly advice: ZoneAdvice;
  /** The answers that advice came from, with what had failed before. */
  readonly answers: TriedAnswers;
}

/** A zone with what was found out on it. */
type Found = Pick<Zone, 'answers' | 'trial' | 'readiness'>;

/** The advice for a zone after its test patches. */
export interface AdvisedTried {
  /** The answers, with the methods that failed. */
  readonly answers: TriedAnswers;
  readonly advice: ZoneAdvice;
  /** Trials that ended with another method or a stop, in the order the advice came to them. */
  readonly ended: readonly TrialBy[];
}

/** What the trial of a method has settled; null while it has not failed. */
function triedOut({ aim, last }: ZoneTrial): TriedOut | null {
  if (!last?.outcome.because) return null;
  const { because, why } = last.outcome;
  return { method: aim.method, because, why };
}

export const withoutMargins: AdviseTried = (site, answers) =>
  adviseZone(site, answers, { margins: false });

/**
 * The advice for a zone, following its test patches: a method that failed on its own patch is out,
 * the next one is advised, and where that has patches too, they are read. Each round takes a method
 * out, so it ends. A patch that stopped holds the work up until what it found is an answer. With
 * answers open, every method still possible is looked at. Salt that was measured counts as measured.
 */
export function adviseTried(
  given: SiteAnswers,
  zone: Found,
  advise: AdviseTried = withoutMargins,
  own?: OwnFigures,
): AdvisedTried {
  const site = siteMeasured(given, zone, own);
  const ended: TrialBy[] = [];
  const failed: TriedOut[] = [];
  const stops: TrialBy[] = [];
  for (;;) {
    const answers: TriedAnswers = failed.length
      ? { ...zone.answers, triedOut: [...failed] }
      : zone.answers;
    const advice = advise(site, answers);
    if (!zone.trial?.length) return { answers, advice, ended };
    const before = failed.length;
    let stopped: readonly string[] | undefined;
    for (const { example } of advice.outcomes) {
      const trial = trialOf(site, zone, example);
      const out = trial && triedOut(trial);
      if (trial?.last?.outcome.kind === 'stop') {
        stopped ??= trial.last.outcome.why;
        stops.push({ trial, advice, answers });
      }
      if (!trial || !out || failed.some(({ method }) => method === out.method)) continue;
      failed.push(out);
      ended.push({ trial, advice, answers });
    }
    if (failed.length > before) {
      stops.length = 0;
      continue;
    }
    if (!stopped) return { answers, advice, ended };
    const held = { ...answers, stopped };
    return { answers: held, advice: advise(site, held), ended: [...ended, ...stops] };
  }
}

/** What was found out on a zone, so that its advice follows more than its answers. */
export const isFoundOut = ({ trial, readiness }: Found): boolean =>
  !!trial?.length || !!readiness?.results.chloride;

/** What the advice of a zone is asked by: its answers with what its test patches and samples have settled. */
export const askedBy = (
  site: SiteAnswers,
  zone: Found,
  own?: OwnFigures,
): { readonly site: SiteAnswers; readonly zone: TriedAnswers } => ({
  site: siteMeasured(site, zone, own),
  zone: zone.trial?.length ? adviseTried(site, zone, withoutMargins, own).answers : zone.answers,
});
