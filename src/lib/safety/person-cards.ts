import type { HazardId, StepId } from '$shared/methods';
import type { ToolId } from '$shared/tools';
import { gravestFirst } from './briefing';
import type { CrewHazard } from './crew-hazards';
import { noiseAim } from './noise-limits';
import type { Safety, SafetyOfWorker } from './safety-of';
import { usualHours } from './tasks';
import { turnOf, usualMinutes, type VibrationLimitId, type VibrationOfTask } from './vibration';

/** How long one tool may shake somebody's hands before they change over. */
export interface Turn {
  readonly tool: ToolId;
  /** Trigger hours; `unknown` where the maker has to be asked. */
  readonly hours: number | 'unknown';
  /** Not even the shortest turn fits: the hours are all there are of it that day, and no turn. */
  readonly inAll: boolean;
  /** Set where the plan has more of it for one person than the action value allows. */
  readonly over: {
    /** Trigger hours the plan has for them, as the tool usually runs. */
    readonly planned: number;
    /** Trigger minutes before each value, as it usually shakes. */
    readonly minutes: Readonly<Record<VibrationLimitId, number>>;
  } | null;
}

/** One person's day on a card, or that of several whose days are alike. */
export interface PersonCard {
  readonly ids: readonly string[];
  /** The first of them; the numbers of the others come to the same on the card. */
  readonly worker: SafetyOfWorker;
  readonly steps: readonly StepId[];
  readonly turns: readonly Turn[];
  /** The gravest hazard of their steps that no other line of the card is about. */
  readonly stop: HazardId | null;
}

/**
 * The longest turn with a tool as it usually shakes, or what there is of it in all where that is too
 * short to take turns with; null for one that does not shake.
 * @param planned trigger hours that one person has of it
 */
export function turnWith({ tool, magnitude, minutes }: VibrationOfTask, planned = 0): Turn | null {
  if (magnitude === 'unknown') return { tool, hours: 'unknown', inAll: false, over: null };
  if (!minutes) return null;
  const [action, limit] = [usualMinutes(minutes.action), usualMinutes(minutes.limit)];
  const over = planned > turnEnd(action);
  const turn = turnOf(action);
  return {
    tool,
    hours: turn ?? action / minutesPerHour,
    inAll: turn === null,
    over: over ? { planned, minutes: { action, limit } } : null,
  };
}
const minutesPerHour = 60;
/** Hours before a value, with room for rounding. */
const turnEnd = (minutes: number): number => minutes / minutesPerHour + 1e-6;

/** What all cards of a day have in common, told once; nothing where there is one card. */
export interface InCommon {
  readonly steps: readonly StepId[];
  readonly stop: HazardId | null;
}

export function inCommon(cards: readonly PersonCard[]): InCommon {
  const [first, ...others] = cards;
  if (!first || !others.length) return { steps: [], stop: null };
  return {
    steps: first.steps.filter((step) => others.every(({ steps }) => steps.includes(step))),
    stop: others.every(({ stop }) => stop === first.stop) ? first.stop : null,
  };
}

/** What a card says of somebody, so that those of whom it says the same share one. */
const likeness = ({ worker, steps, turns }: PersonCard, safety: Safety): string =>
  JSON.stringify([
    steps,
    turns,
    worker.mask,
    worker.ears?.by,
    Math.ceil(worker.noise.limits[noiseAim[safety.region]].protector.rating.high),
  ]);

/** A card for everybody who works that day. */
export function personCards(safety: Safety, hazards: readonly CrewHazard[]): PersonCard[] {
  const cards = new Map<string, PersonCard>();
  for (const worker of safety.workers) {
    if (!worker.tasks.length) continue;
    const steps = [...new Set(worker.tasks.map(({ step }) => step))];
    const planned = (tool: ToolId) =>
      worker.tasks.reduce((sum, task) => sum + (task.tool === tool ? usualHours(task) : 0), 0);
    const turns = new Map(
      worker.vibration.tasks.flatMap((task) => {
        const turn = turnWith(task, planned(task.tool));
        return turn ? [[turn.tool, turn]] : [];
      }),
    );
    const mine = hazards.filter((each) => each.steps.some((step) => steps.includes(step)));
    const card: PersonCard = {
      ids: [worker.id],
      worker,
      steps,
      turns: [...turns.values()],
      stop: gravestFirst(mine)[0] ?? null,
    };
    const key = likeness(card, safety);
    const before = cards.get(key);
    cards.set(key, before ? { ...before, ids: [...before.ids, worker.id] } : card);
  }
  return [...cards.values()];
}
