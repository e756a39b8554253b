import { figures, type FigureId } from '$shared/figures';
import { partOf } from '$shared/check';
import type { FigurePart } from '$shared/types';

/**
 * A check that holds one or more figures against something outside the project. Pure: it reads the
 * figures at each call, so that `npm run facts` can change one and see whether the check turns red.
 */
export interface Guard {
  readonly figures: readonly FigureId[];
  /** What is checked, for whoever reads a red one. */
  readonly says: string;
  /** Where the value from outside was read. */
  readonly source: string;
  /** `code`: through the code that uses the figure; `unit`: in the source's own unit; `printed`: as printed, in the figure's unit. */
  readonly kind: 'code' | 'unit' | 'printed';
  readonly holds: () => boolean;
}

/** Engine units in one of the source's unit. Source: NIST Special Publication 811, Appendix B. */
const factors = {
  in: 25.4,
  mil: 0.0254,
  ft: 0.3048,
  'ft in mm': 304.8,
  ft2: 0.09290304,
  'ft2/h': 0.09290304,
  'ft3/h': 0.02831685,
  ft3: 0.02831685,
  cfm: 0.02831685,
  'cfm/in': 0.02831685 / 25.4,
  gpm: 3.785412,
  'mL/min': 0.001,
  psi: 0.006894757,
  ksi: 6.894757,
  'psi in bar': 0.06894757,
  lb: 0.4535924,
  'lb/ft3': 16.01846,
  'kg/t': 0.001,
  'mg/m3': 1000,
  'percent as ratio': 0.01,
} as const;
export type SourceUnit = keyof typeof factors;

/** A value as the source prints it: one number, or the ends of a range, and what it calls typical. */
export type Printed =
  | number
  | readonly [number, number]
  | { readonly range?: readonly [number, number]; readonly typical: number };

const partsOf = (printed: Printed): Partial<Record<FigurePart, number>> => {
  if (typeof printed === 'number') return { value: printed };
  if ('typical' in printed)
    return {
      typical: printed.typical,
      ...(printed.range && { low: printed.range[0], high: printed.range[1] }),
    };
  return { low: printed[0], high: printed[1] };
};

/** Rounding between units, far below the 15 % by which a figure is changed. */
const near = (one: number, other: number, within: number) =>
  Math.abs(one - other) <= Math.abs(other) * within + 1e-9;

/** A figure as the source prints it, in the source's unit. Rounded to 3 % at most. */
export function published(
  id: FigureId,
  printed: Printed,
  unit: SourceUnit | '°F' | 'as printed',
  source: string,
): Guard {
  const turn = (value: number) =>
    unit === 'as printed' ? value : unit === '°F' ? (value - 32) / 1.8 : value * factors[unit];
  const within = unit === 'as printed' ? 0 : 0.03;
  return {
    figures: [id],
    says: `${id} is ${JSON.stringify(printed)} ${unit}`,
    source,
    kind: unit === 'as printed' ? 'printed' : 'unit',
    holds: () =>
      Object.entries(partsOf(printed)).every(([part, value]) => {
        const here = partOf(figures[id], part as FigurePart);
        return here !== undefined && near(here, turn(value), within);
      }),
  };
}

/** One end of a range whose other end has no source. */
export function publishedPart(
  id: FigureId,
  part: FigurePart,
  printed: number,
  unit: SourceUnit | 'as printed',
  source: string,
): Guard {
  const value = unit === 'as printed' ? printed : printed * factors[unit];
  return {
    figures: [id],
    says: `${id}: ${part} is ${printed} ${unit}`,
    source,
    kind: unit === 'as printed' ? 'printed' : 'unit',
    holds: () => near(partOf(figures[id], part) ?? NaN, value, unit === 'as printed' ? 0 : 0.03),
  };
}

/** A result of the code that uses the figures, against a result from outside. */
export const through = (
  says: string,
  ids: readonly FigureId[],
  source: string,
  holds: () => boolean,
): Guard => ({ figures: ids, says, source, kind: 'code', holds });

export { near };
