import { missingQuestions, neverInTheWay } from '$lib/advice/relevance';
import type { Advice, Hold } from '$lib/advice/types';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import { isSurely, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import type { Zone } from '$lib/answers/job';
import type { TriedAnswers } from '$lib/answers/trial-record';
import type { QuestionId } from '$lib/answers/questions';
import { drawnPatches } from '$lib/survey/drawn';
import { layPatches, rectangleRing, worstFrost, type PatchLayout } from '$lib/survey/patches';
import type { SurveyResult } from '$lib/survey/survey';
import { adviseTried, isFoundOut } from '$lib/trial/chain';
import { settledPatches, trialOf } from '$lib/trial/zone-trial';
import type { OwnFigures } from '$shared/figures';
import { methodIds, type MethodId, type StepId } from '$shared/methods';
import { besideSpots, type BesideSpots } from './beside-spots';
import { quantitiesOf, type Quantities } from './quantities';
import { placeOfZone, toolingOf } from './tools';
import type { ZoneWork } from './zone-work';

/** What a plan needs of a zone's advice. */
interface Advised {
  readonly advice: Advice | null;
  readonly holds: readonly Hold[];
  readonly possibleHolds: readonly Hold[];
  /** Why the plan leaves it out; null where it does not. */
  readonly held: {
    readonly verdict: 'stop' | 'find-out-first';
    readonly open: readonly QuestionId[];
    /** How many methods its answers still lead to. */
    readonly methods: number;
  } | null;
}

interface WorkedOut {
  readonly work: ZoneWork;
  readonly quantities: Quantities;
}

/** What a zone is reckoned with, beside its own answers. */
export interface Around {
  readonly site: SiteAnswers;
  /** The whole surface, m2; absent where nobody has said. */
  readonly whole: number | undefined;
  readonly survey: SurveyResult | null;
  /** The reader's own values over the figures of the trade. */
  readonly own: OwnFigures | undefined;
}

/** What one zone comes to: its advice, and what has to be done there; null where the plan leaves it out. */
export interface ZoneReckoned {
  readonly advised: Advised;
  readonly worked: WorkedOut | null;
  /** The patches of its damage; null where only its area is known. */
  readonly patches: PatchLayout | null;
  readonly beside: BesideSpots | null;
}

/** How a plan comes to the advice for a zone. */
export type AdviceOf = (site: SiteAnswers, answers: ZoneAnswers) => ZoneAdvice;

/**
 * What each zone came to, as long as nothing it stands on is another. Answers are never changed in
 * place, so the same objects always mean the same; one edit leaves the other zones as they were.
 */
const kept = new WeakMap<
  Zone,
  {
    readonly around: Around;
    readonly held: TriedAnswers['partInDoubt'];
    readonly out: ZoneReckoned;
  }
>();

/** Zones with equal answers share their advice, however many there are. */
const alike = new Map<string, Advised>();
const mostAlike = 2000;
/** With this many questions unanswered nothing can be planned, and no time is spent on what might be. */
const tooFewAnswers = 4;

/**
 * @param given the zone as it stands in the job, which is what is remembered
 * @param zone the same with what the drawing measures
 */
export function reckonZone(
  given: Zone,
  zone: Zone,
  around: Around,
  adviceOf: AdviceOf,
): ZoneReckoned {
  const known = kept.get(given);
  const { site, whole, survey, own } = around;
  const held = (zone.answers as TriedAnswers).partInDoubt;
  const sameAnswers =
    known?.around.site === site && known.around.survey === survey && known.held === held;
  if (known && sameAnswers && known.around.whole === whole && known.around.own === own)
    return known.out;
  const sameAdvice = sameAnswers && (known.around.own === own || !isFoundOut(zone));
  const advised = sameAdvice ? known.out.advised : sharedAdvice(zone, around, adviceOf);
  const patches = patchesOf(zone, site, survey, own);
  const out = {
    advised,
    worked: workedOut(zone, advised, around, patches),
    patches,
    beside: besideSpots(given, zone, site, patches, survey),
  };
  kept.set(given, { around, held, out });
  return out;
}

function sharedAdvice(zone: Zone, { site, own }: Around, adviceOf: AdviceOf): Advised {
  const { answers } = zone;
  // Test patches and samples are a zone's own: what they settle is shared with no other.
  if (isFoundOut(zone))
    return advisedOf(site, answers, () => adviseTried(site, zone, adviceOf, own).advice);
  const key = JSON.stringify([site, answers]);
  const advised = alike.get(key) ?? advisedOf(site, answers, adviceOf);
  if (alike.size >= mostAlike) alike.clear();
  alike.set(key, advised);
  return advised;
}

function advisedOf(site: SiteAnswers, answers: ZoneAnswers, adviceOf: AdviceOf): Advised {
  const unanswered = missingQuestions(site, answers).filter((id) => !neverInTheWay.has(id));
  if (unanswered.length >= tooFewAnswers)
    return {
      advice: null,
      holds: [],
      possibleHolds: [],
      held: { verdict: 'find-out-first', open: unanswered, methods: methodIds.length },
    };
  const { outcomes, holds, possibleHolds, assumptions, verdict } = adviceOf(site, answers);
  const [only] = outcomes;
  if (only && outcomes.length === 1 && only.verdict !== 'stop' && only.method)
    return { advice: only.example, holds, possibleHolds, held: null };
  return {
    advice: null,
    holds,
    possibleHolds,
    held: {
      verdict: verdict === 'stop' ? 'stop' : 'find-out-first',
      open: assumptions.filter(({ matters }) => matters).map(({ question }) => question),
      methods: new Set(outcomes.map(({ method }) => method)).size,
    },
  };
}

function workedOut(
  zone: Zone,
  { advice }: Advised,
  { site, whole, own }: Around,
  patches: PatchLayout | null,
): WorkedOut | null {
  if (!advice?.underneath) return null;
  const work = {
    ...workOf(zone, site, advice, advice.underneath),
    patches: patches?.patches ?? null,
    ...(whole !== undefined && { whole }),
  };
  const quantities = quantitiesOf(work, own);
  return { work: withRing(work, quantities), quantities };
}

/**
 * The ring of sound concrete between the cut and a firm hollow is chipped out with a light hammer,
 * which takes hours and shakes hands like any breaking out. The advice tells it with the cut.
 * Source: common practice, no published source.
 */
function withRing(work: ZoneWork, { removed }: Quantities): ZoneWork {
  const { steps, tools } = work;
  const cut = steps.indexOf('saw-cut');
  if (work.breaks || !work.tight || cut < 0 || !removed || steps.includes('break-out')) return work;
  const hammer = { tool: 'chipping-hammer', class: 'hammer.small-patch' } as const;
  return {
    ...work,
    steps: steps.toSpliced(cut + 1, 0, 'break-out'),
    tools: new Map([...tools, ['break-out', hammer]]),
  };
}

/** Patches as drawn; without a drawing of the zone round its typed spots; null where neither is. */
function patchesOf(
  zone: Zone,
  site: SiteAnswers,
  survey: SurveyResult | null,
  own?: OwnFigures,
): PatchLayout | null {
  const typed = zone.patches?.map(rectangleRing) ?? [];
  return (
    drawnPatches(zone.id, survey) ??
    (typed.length ? layPatches(typed, worstFrost(site), own) : null)
  );
}

function workOf(
  zone: Zone,
  site: SiteAnswers,
  advice: Advice,
  method: MethodId,
): Omit<ZoneWork, 'patches'> {
  const trial = zone.trial?.length ? trialOf(site, zone, advice) : null;
  const calls = (step: StepId) => advice.steps.some(({ id }) => id === step);
  return {
    zone,
    method,
    steps: advice.steps.map(({ id }) => id),
    tools: toolingOf(advice, placeOfZone(site, zone.answers)),
    thickness: site.thickness ?? 'unknown',
    frost: worstFrost(site),
    breaks:
      method === 'break-out' || (method === 'water-jet' && calls('re-sound') && calls('saw-cut')),
    tight: isSurely(zone.answers.looseness, 'tight'),
    tried: trial ? settledPatches(trial) : [],
    alongBars:
      (method === 'break-out' || method === 'water-jet') &&
      advice.beside !== null &&
      advice.beside !== 'break-out',
  };
}
