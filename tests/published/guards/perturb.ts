import { wholeFigures } from '$shared/figure-notes';
import { figures, type FigureId } from '$shared/figures';
import { partOf } from '$shared/check';
import { figureParts, type Basis, type Figure, type FigurePart, type Unit } from '$shared/types';
import type { Guard } from './guard';

const sourced: ReadonlySet<Basis> = new Set(['published', 'reported', 'derived']);

/** The numbers of a figure that stand on a source or on arithmetic. */
export const sourcedParts = (figure: Figure): FigurePart[] =>
  figureParts.filter(
    (part) =>
      partOf(figure, part) !== undefined && sourced.has(figure.partBasis?.[part] ?? figure.basis),
  );

/** Units that are counted in whole steps: these change by one instead of 15 %. */
const stepped: ReadonlySet<Unit> = new Set<Unit>(['CSP', 'count']);

/** A value moved up and down, by 15 % or by one step, whichever is more for whole numbers. */
function moved(value: number, unit: Unit): number[] {
  const by =
    stepped.has(unit) && Number.isInteger(value)
      ? Math.max(1, Math.round(Math.abs(value) * 0.15))
      : Math.abs(value) * 0.15 || 1;
  return [value - by, value + by];
}

type Loose = { value?: number; range?: readonly [number, number]; typical?: number };

/** Runs something with one number of a figure changed, and puts it back. */
export function withChange<T>(id: FigureId, part: FigurePart, to: number, run: () => T): T {
  const figure = figures[id] as Loose;
  const before = { ...figure };
  const [low, high] = figure.range ?? [0, 0];
  if (part === 'low') figure.range = [to, high];
  else if (part === 'high') figure.range = [low, to];
  else figure[part] = to;
  try {
    return run();
  } finally {
    Object.assign(figure, before);
  }
}

const isRed = (guard: Guard): boolean => {
  try {
    return !guard.holds();
  } catch {
    return true;
  }
};

export interface GuardReport {
  /** Figures with at least one number that stands on a source or on arithmetic. */
  readonly sourced: readonly FigureId[];
  /** Those of which every such number, moved up and moved down, turned a check red. */
  readonly guarded: readonly FigureId[];
  /** Of the guarded: those a check reads through the code that uses them. */
  readonly throughCode: readonly FigureId[];
  /** Of the guarded: only as printed, in the figure's own unit. */
  readonly asPrinted: readonly FigureId[];
  /** Checks that are red as it stands. */
  readonly red: readonly Guard[];
}

/** Changes every sourced number, one at a time, and sees which checks turn red. */
export function perturbAll(guards: readonly Guard[]): GuardReport {
  const ids = (Object.keys(wholeFigures) as FigureId[]).filter(
    (id) => sourcedParts(wholeFigures[id]).length > 0,
  );
  const catching = (id: FigureId, among: readonly Guard[]): boolean => {
    const own = among.filter((guard) => guard.figures.includes(id));
    return sourcedParts(wholeFigures[id]).every((part) =>
      moved(partOf(figures[id], part) as number, figures[id].unit).every((to) =>
        withChange(id, part, to, () => own.some(isRed)),
      ),
    );
  };
  const red = guards.filter(isRed);
  const green = guards.filter((guard) => !red.includes(guard));
  const guarded = ids.filter((id) => catching(id, green));
  const code = green.filter(({ kind }) => kind === 'code');
  const unit = green.filter(({ kind }) => kind !== 'printed');
  return {
    sourced: ids,
    guarded,
    throughCode: guarded.filter((id) => catching(id, code)),
    asPrinted: guarded.filter((id) => !catching(id, unit)),
    red,
  };
}
