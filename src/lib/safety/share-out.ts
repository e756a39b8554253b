import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { noiseLimitIds, partOf, type NoiseLimitId } from './noise-limits';
import { shareByDealing } from './share-deal';
import { restsOf, shareExactly } from './share-exact';
import { fewestShares, loadOf, unshareable, type Pile } from './share-piles';
import { levelOf, usualHours, vibrationOf, type Known, type Strength } from './tasks';
import type { SettledTask } from './types';
import { pointsOf, pointsOfDay, vibrationLimit } from './vibration';

/** What one person may use up in one day. */
export const budgetIds = ['vibration-action', 'vibration-limit', ...noiseLimitIds] as const;
export type BudgetId = (typeof budgetIds)[number];

/** What one person does on one day. */
export interface Allotment {
  /** Counted from 1. */
  readonly day: number;
  /** Counted from 1. */
  readonly person: number;
  readonly hours: readonly { readonly tool: ToolId; readonly hours: number }[];
  /** Part of the fullest budget that is used up; 1 is all of it. */
  readonly load: number;
}

export type SharingOut =
  | {
      readonly can: 'not';
      /** Tools of which not even a quarter of an hour fits: a gentler tool or method, not more people. */
      readonly tools: readonly ToolId[];
      readonly unknown: readonly ToolId[];
    }
  | {
      readonly can: 'share';
      /** Fewest people that can do it all in one day within the budgets; as well, fewest person-days. */
      readonly people: number;
      /** Fewest days with the crew there is. */
      readonly days: number;
      /** Nothing below this can do. */
      readonly atLeast: number;
      /** Whether `people` is the true optimum of the model. */
      readonly proven: boolean;
      /** Everybody's day, the worst-off first. */
      readonly allotments: readonly Allotment[];
      /** Tools whose part in a budget is not known: the numbers are lower bounds. */
      readonly unknown: readonly ToolId[];
      readonly figures: readonly FigureId[];
    };

/** Work of the exact way, in comparisons, that a phone does in well under a second. */
const exactWork = 12_000_000;

/** Which values are shared out: usual ones make the plan, the worst stands beside it as a warning. */
export type ShareBy = 'usual' | 'worst';

function strengthAt(strength: Known<Strength>, by: ShareBy): number | null {
  if (strength === 'unknown') return null;
  if (strength === 'none') return 0;
  const { range, typical = (range[0] + range[1]) / 2 } = strength;
  return by === 'worst' ? range[1] : typical;
}

/** Part of a budget that one hour of a task takes; null where it is not known. */
function partAnHour(
  budget: BudgetId,
  task: SettledTask,
  by: ShareBy,
  own?: OwnFigures,
): number | null {
  if (budget === 'vibration-action' || budget === 'vibration-limit') {
    const magnitude = strengthAt(vibrationOf(task, own), by);
    const limit = vibrationLimit(budget === 'vibration-action' ? 'action' : 'limit', own);
    return magnitude === null ? null : pointsOf(magnitude, 1, own) / pointsOfDay(limit, own);
  }
  const known = levelOf(task, own);
  if (known === 'none') return 0;
  const level = strengthAt(known, by);
  return level === null ? null : partOf(budget as NoiseLimitId, level, 1, own);
}

interface Work extends Pile {
  readonly tool: ToolId;
  readonly known: boolean;
}

/** The tasks as piles of quarter hours; equal work lies on one pile. */
function pilesOf(
  tasks: readonly SettledTask[],
  budgets: readonly BudgetId[],
  step: number,
  by: ShareBy,
  own?: OwnFigures,
): Work[] {
  const piles = new Map<string, { tool: ToolId; known: boolean; hours: number; parts: number[] }>();
  const ofShift = step / valueOf('share.shift', own);
  for (const task of tasks) {
    const parts = budgets.map((budget) => partAnHour(budget, task, by, own));
    if (parts.every((part) => part === 0)) continue;
    const key = JSON.stringify([task.tool, parts]);
    const pile = piles.get(key) ?? {
      tool: task.tool,
      known: !parts.includes(null),
      hours: 0,
      parts: [ofShift, ...parts.map((part) => (part ?? 0) * step)],
    };
    pile.hours += by === 'worst' ? task.hours[1] : usualHours(task);
    piles.set(key, pile);
  }
  // Hours that are a whole number of quarters but for rounding are not lifted to the next one.
  return [...piles.values()].map(({ hours, ...pile }) => ({
    ...pile,
    units: Math.ceil(hours / step - 1e-9),
  }));
}

/**
 * Shares work out so that nobody passes any of the budgets, nor the length of a shift.
 *
 * The model: tools run for their usual hours at their usual level, or with `worst` for their most hours
 * at their high end; work can change hands every quarter of an
 * hour (`share.step`); everybody can use every tool. Small jobs are solved exactly; for larger ones work is
 * dealt out evenly, `atLeast` says what no way can go below, and `proven` whether it was reached.
 * @param tasks all the work, whoever was to do it
 * @param crew people there are
 */
export function shareOut(
  tasks: readonly SettledTask[],
  budgets: readonly BudgetId[],
  crew: number,
  own?: OwnFigures,
  by: ShareBy = 'usual',
): SharingOut {
  const step = valueOf('share.step', own);
  const piles = pilesOf(tasks, budgets, step, by, own);
  const unknown = [
    ...new Set(piles.flatMap(({ known, tool, units }) => (!known && units > 0 ? [tool] : []))),
  ];
  const tooMuch = unshareable(piles).flatMap((index) => piles[index]?.tool ?? []);
  if (tooMuch.length) return { can: 'not', tools: [...new Set(tooMuch)], unknown };

  const atLeast = fewestShares(piles);
  const daysFor = (shares: number) => Math.ceil(shares / crew);
  const placesFor = (shares: number) => daysFor(shares) * crew;
  const small = restsOf(piles) ** 2 * Math.max(1, placesFor(atLeast)) <= exactWork;
  const { fewest, shares } = (small ? shareExactly : shareByDealing)(piles, placesFor);
  const worstFirst = shares
    .map((share) => ({ share, load: loadOf(piles, share) }))
    .sort((a, b) => b.load - a.load);
  return {
    can: 'share',
    people: fewest,
    days: daysFor(fewest),
    atLeast,
    proven: small || fewest === atLeast,
    allotments: worstFirst.map(({ share, load }, place) => ({
      day: Math.floor(place / crew) + 1,
      person: (place % crew) + 1,
      hours: share.flatMap((units, index) => {
        const tool = piles[index]?.tool;
        return tool && units > 0 ? [{ tool, hours: units * step }] : [];
      }),
      load,
    })),
    unknown,
    figures: ['share.step', 'share.shift'],
  };
}
