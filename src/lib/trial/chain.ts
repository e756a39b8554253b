import { adviseZone } from '$lib/advice/advise';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { SiteAnswers } from '$lib/answers/answers';
import type { Zone } from '$lib/answers/job';
import type { TriedAnswers, TriedOut } from '$lib/answers/trial-record';
import { trialOf, type ZoneTrial } from './zone-trial';

/** How advice is come by. */
type AdviseTried = (site: SiteAnswers, answers: TriedAnswers) => ZoneAdvice;

/** The trial of a method, and the advice it is tried by. */
export interface TrialBy {
  readonly trial: ZoneTrial;
  readonly advice: ZoneAdvice;
  /** The answers that advice came from, with what had failed before. */
  readonly answers: TriedAnswers;
}

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

const withoutMargins: AdviseTried = (site, answers) =>
  adviseZone(site, answers, { margins: false });

/**
 * The advice for a zone, following its test patches: a method that failed on its own patch is out,
 * the next one is advised, and where that has patches too, they are read. Each round takes a method
 * out, so it ends. A patch that stopped holds the work up until what it found is an answer. With
 * answers open, every method still possible is looked at.
 */
export function adviseTried(
  site: SiteAnswers,
  zone: Pick<Zone, 'answers' | 'trial'>,
  advise: AdviseTried = withoutMargins,
): AdvisedTried {
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

/** The answers of a zone with what its test patches have settled: what its advice is asked by. */
export const triedAnswers = (
  site: SiteAnswers,
  zone: Pick<Zone, 'answers' | 'trial'>,
  advise?: AdviseTried,
): TriedAnswers => (zone.trial?.length ? adviseTried(site, zone, advise).answers : zone.answers);
