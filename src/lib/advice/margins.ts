import type { ManyAnswer, SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { bandOf, depthBands, depthEdges, rangeOfBand } from '$lib/answers/depth';
import {
  choicesOf,
  questions,
  type DepthBand,
  type MakerProfile,
  type QuestionId,
} from '$lib/answers/questions';
import { methods, type MethodId } from '$shared/methods';
import { changedTo, cleanedFirst, decisionOf, sameDecision } from './decision';
import { oftenMisjudged, type Asked } from './often-misjudged';
import { gradeOf } from './sheet';
import { halfEdges, stopsFrom } from './stops-from';
import type { Decision, Margin } from './zone-advice';

/** One answer changed to another, as the answers it would make. */
export interface Change {
  readonly question: Asked;
  readonly from: string;
  readonly to: string;
  readonly atMm?: number;
  /** Of a measured depth: whether the change goes deeper. Both sides may be of one band. */
  readonly deeper?: boolean;
  readonly apply: (answers: SiteAnswers & ZoneAnswers) => SiteAnswers & ZoneAnswers;
}

/** Every other certain answer to a question the reader is sure of. */
export function changesOf(question: Asked, answers: SiteAnswers & ZoneAnswers): Change[] {
  if (question === 'depth') return depthChanges(answers);
  // Without a sheet at hand the question stands all the same: what the sheet says would count.
  if (question === 'makerProfile') return sheetChanges(answers);
  const answer = answers[question];
  if (answer === undefined) return [];
  if (questions[question].kind === 'many')
    return toggles(question as 'warnings' | 'contamination', answer as ManyAnswer<string>);
  if (!Array.isArray(answer) || answer.length !== 1) return [];
  const from = answer[0] as string;
  return choicesOf(question)
    .filter((choice) => choice !== from)
    .map((to) => ({ question, from, to, apply: (all) => ({ ...all, [question]: [to] }) }));
}

function toggles(question: 'warnings' | 'contamination', answer: ManyAnswer<string>): Change[] {
  return choicesOf(question)
    .filter((choice) => !answer.maybe.includes(choice))
    .map((choice) => {
      const there = answer.yes.includes(choice);
      const yes = there ? answer.yes.filter((each) => each !== choice) : [...answer.yes, choice];
      return {
        question,
        from: there ? choice : `no ${choice}`,
        to: there ? `no ${choice}` : choice,
        apply: (all) => ({ ...all, [question]: { yes, maybe: answer.maybe } }),
      };
    });
}

/** What a sheet could ask for instead of what it says, or says nothing. */
const sheetChanges = (answers: SiteAnswers & ZoneAnswers): Change[] => {
  const [from = 'no-sheet'] = answers.makerProfile ?? [];
  return choicesOf('makerProfile')
    .filter((to) => to !== from && to !== 'no-sheet')
    .map((to) => ({
      question: 'makerProfile' as const,
      from,
      to,
      apply: (all) => ({ ...all, makerProfile: [to] as const }),
    }));
};

/** A measured depth moves from edge to edge, a band to another band. */
function depthChanges(answers: SiteAnswers & ZoneAnswers): Change[] {
  const thickness = answers.thickness ?? 'unknown';
  const { depth } = answers;
  if (typeof depth === 'number') {
    return edgesHere(thickness).map(({ at, below, above }) => {
      const deeper = depth <= below;
      const to = deeper ? above : below;
      return {
        question: 'depth' as const,
        from: bandOf(depth, thickness),
        to: bandOf(to, thickness),
        atMm: at,
        deeper,
        apply: (all) => ({ ...all, depth: to }),
      };
    });
  }
  if (depth?.length !== 1) return [];
  const [from] = depth;
  return depthBands
    .filter((band) => band !== from)
    .map((to) => ({
      question: 'depth' as const,
      from,
      to,
      atMm: edgeBetween(from, to, thickness),
      apply: (all) => ({ ...all, depth: [to] as const }),
    }));
}

/** Beside the edges of the bands: the damage from which the finished hole reaches half the thickness. */
function edgesHere(thickness: number | 'unknown'): ReturnType<typeof depthEdges> {
  const edges = depthEdges(thickness);
  if (thickness === 'unknown') return edges;
  const more = halfEdges(thickness)
    .filter((at) => !edges.some((edge) => edge.at === at))
    .map((at) => ({ at, below: at - 0.01, above: at }));
  return [...edges, ...more].sort((one, two) => one.at - two.at);
}

function edgeBetween(from: DepthBand, to: DepthBand, thickness: number | 'unknown'): number {
  const deeper = depthBands.indexOf(to) > depthBands.indexOf(from);
  return rangeOfBand(to, thickness)[deeper ? 0 : 1];
}

/**
 * The smallest single changes that flip the verdict or the method of settled advice,
 * likeliest misjudgement first. Along an ordered scale only the nearest change to each
 * different decision is kept.
 */
export function marginsOf(site: SiteAnswers, zone: ZoneAnswers): Margin[] {
  const answers = { ...site, ...zone };
  const now = decisionOf(answers);
  return now ? marginsAmong(oftenMisjudged, answers, now) : [];
}

/**
 * What a data sheet that asks for less would make of settled advice, where none was at hand; null
 * where a sheet speaks already, where something is open, or where it would make nothing gentler.
 */
export function sheetMarginOf(site: SiteAnswers, zone: ZoneAnswers): Margin | null {
  const answers = { ...site, ...zone };
  const now = gradeOf(zone.makerProfile) === undefined ? decisionOf(answers) : null;
  if (!now) return null;
  const margins = marginsAmong(['makerProfile'], answers, now);
  return margins.find(({ reach }) => reach === 'at-most') ?? null;
}

/**
 * The next depth at which settled advice becomes another, deeper down; null where something is open
 * or no greater depth changes it.
 */
export function depthMarginOf(site: SiteAnswers, zone: ZoneAnswers): Margin | null {
  const answers = { ...site, ...zone };
  const now = decisionOf(answers);
  if (!now) return null;
  return marginsAmong(['depth'], answers, now).find(isDeeper) ?? null;
}

function marginsAmong(
  asked: readonly Asked[],
  answers: SiteAnswers & ZoneAnswers,
  now: Decision,
): Margin[] {
  return asked.flatMap((question) => {
    const flips = changesOf(question, answers).flatMap((change) => {
      const decision = changedTo(change.apply(answers), now);
      return decision && !sameDecision(decision, now) ? [{ change, decision }] : [];
    });
    return nearest(question, flips, now).map(({ change, decision, reach }): Margin => ({
      ...(question === 'contamination' &&
        decision.method && { first: cleanedFirst(change.apply(answers), answers) }),
      question,
      from: change.from,
      to: change.to,
      ...(change.atMm !== undefined && { atMm: change.atMm }),
      ...(change.deeper !== undefined && { deeper: change.deeper }),
      ...(reach && { reach }),
      ...(decision.verdict === 'find-out-first' && stopWithin(change, answers, now)),
      verdict: decision.verdict,
      method: decision.method,
    }));
  });
}

/** A band of depth in which it may only have to be measured: from where in it it stops. */
function stopWithin(
  { question, to, deeper }: Change,
  answers: SiteAnswers & ZoneAnswers,
  now: Decision,
): Pick<Margin, 'stopsFrom'> {
  if (question !== 'depth' || deeper !== undefined) return {};
  const at = stopsFrom(
    to,
    answers.thickness ?? 'unknown',
    (depth) => changedTo({ ...answers, depth }, now)?.verdict === 'stop',
  );
  return at === undefined ? {} : { stopsFrom: at };
}

type Flip = {
  readonly change: Change;
  readonly decision: Decision;
  readonly reach?: Margin['reach'];
};

/**
 * A sheet that asks for less makes it gentler from some grade down: the roughest of those grades
 * says it all; one that asks for more makes it harsher from the smoothest of those up.
 */
function nearestGrade(flips: readonly Flip[], now: Decision): readonly Flip[] {
  const grade = ({ change }: Flip) => gradeOf([change.to as MakerProfile]) ?? 0;
  const place = (method: MethodId | null) => (method ? methods[method].class : 0);
  return flips.flatMap((flip) => {
    const same = flips.filter((other) => sameDecision(other.decision, flip.decision)).map(grade);
    const gentler = place(flip.decision.method) < place(now.method);
    const edge = gentler ? Math.max(...same) : Math.min(...same);
    return grade(flip) === edge ? [{ ...flip, reach: gentler ? 'at-most' : 'at-least' }] : [];
  });
}

/** Depth is a scale: of several changes to the same decision in one direction, the nearest says it all. */
function nearest(question: QuestionId, flips: readonly Flip[], now: Decision): readonly Flip[] {
  if (question === 'makerProfile') return nearestGrade(flips, now);
  return flips.filter(
    (flip) =>
      !flips.some(
        (other) =>
          isNearer(other.change, flip.change) && sameDecision(other.decision, flip.decision),
      ),
  );
}

const placeOf = (band: string) => depthBands.indexOf(band as DepthBand);
type OfDepth = Pick<Change, 'question' | 'from' | 'to' | 'atMm' | 'deeper'>;
const bandsAway = ({ from, to }: OfDepth) => placeOf(to) - placeOf(from);
const isDeeper = (change: OfDepth) => change.deeper ?? bandsAway(change) > 0;

/** Whether of two changes of depth in one direction the one is nearer to the answer. */
export function isNearer(one: OfDepth, other: OfDepth): boolean {
  if (one === other || one.question !== 'depth' || other.question !== 'depth') return false;
  const deeper = isDeeper(one);
  if (deeper !== isDeeper(other)) return false;
  const [near, far] = [Math.abs(bandsAway(one)), Math.abs(bandsAway(other))];
  return near < far || (near === far && Number(one.atMm) < Number(other.atMm) === deeper);
}
