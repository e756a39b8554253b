import * as v from 'valibot';
import {
  bases,
  extents,
  figureParts,
  units,
  type Figure,
  type FigurePart,
  type Source,
} from './types';

const figureShape = v.strictObject({
  unit: v.picklist(units, 'unit: expected one of the units in shared/types.ts'),
  value: v.optional(v.pipe(v.number(), v.finite('value: expected a finite number'))),
  range: v.optional(v.tuple([v.pipe(v.number(), v.finite()), v.pipe(v.number(), v.finite())])),
  typical: v.optional(v.pipe(v.number(), v.finite())),
  basis: v.picklist(bases, 'basis: expected published, reported, memory, practice or derived'),
  partBasis: v.optional(
    v.record(v.picklist(figureParts, 'expected value, low, high or typical'), v.picklist(bases)),
  ),
  seen: v.optional(v.picklist(extents, 'seen: expected whole, excerpt or second-hand')),
  source: v.optional(v.pipe(v.array(v.string()), v.minLength(1))),
  note: v.optional(v.string()),
});

const sourceShape = v.strictObject({
  title: v.string(),
  by: v.string(),
  year: v.optional(v.number()),
  kind: v.picklist(['standard', 'regulation', 'guide', 'research', 'manual', 'trade', 'data']),
  note: v.optional(v.string()),
});

interface Numbers {
  readonly value?: number | undefined;
  readonly range?: readonly [number, number] | undefined;
  readonly typical?: number | undefined;
}

/** One number of a figure; undefined where it has none of that kind. */
export function partOf({ value, range, typical }: Numbers, part: FigurePart): number | undefined {
  return { value, low: range?.[0], high: range?.[1], typical }[part];
}

/** Everything wrong with one figure, as lines that name the figure; empty when it is sound. */
export function figureFaults(
  id: string,
  figure: unknown,
  sources: Readonly<Record<string, unknown>>,
): string[] {
  const parsed = v.safeParse(figureShape, figure);
  if (!parsed.success) {
    return parsed.issues.map(
      (issue) => `${id}: ${v.getDotPath(issue) ?? 'figure'}: ${issue.message}`,
    );
  }
  const { value, range, typical, basis, partBasis = {}, seen, source, note } = parsed.output;
  const faults: string[] = [];
  const stated = [basis, ...Object.values(partBasis)];
  for (const part of Object.keys(partBasis) as FigurePart[])
    if (partOf({ value, range, typical }, part) === undefined)
      faults.push(`${id}: partBasis names "${part}", which the figure does not have`);
  if (seen && !source) faults.push(`${id}: seen is said of no source`);
  if ((value === undefined) === (range === undefined))
    faults.push(`${id}: expected either value or range`);
  if (range && range[0] > range[1]) faults.push(`${id}: range is the wrong way round`);
  if (typical !== undefined && (!range || typical < range[0] || typical > range[1]))
    faults.push(`${id}: typical lies outside its range`);
  for (const each of new Set(stated))
    if ((each === 'published' || each === 'reported') && !source)
      faults.push(`${id}: a ${each} figure needs a source`);
  if (stated.includes('derived') && !note)
    faults.push(`${id}: a derived figure needs its arithmetic in note`);
  for (const name of source ?? [])
    if (!(name in sources)) faults.push(`${id}: unknown source "${name}"`);
  return faults;
}

/** Everything wrong with a source; empty when it is sound. */
export function sourceFaults(id: string, source: unknown): string[] {
  const parsed = v.safeParse(sourceShape, source);
  return parsed.success ? [] : parsed.issues.map((issue) => `source ${id}: ${issue.message}`);
}

/**
 * Checks whole files of facts and returns them merged.
 * @throws Error listing every fault, one a line, when anything is wrong or an id is used twice.
 */
export function loadFacts(
  figureFiles: readonly Readonly<Record<string, unknown>>[],
  sourceFiles: readonly Readonly<Record<string, unknown>>[],
): { figures: Record<string, Figure>; sources: Record<string, Source> } {
  const faults: string[] = [];
  const merge = (files: readonly Readonly<Record<string, unknown>>[], what: string) => {
    const all: Record<string, unknown> = {};
    for (const [id, entry] of files.flatMap((file) => Object.entries(file))) {
      if (id in all) faults.push(`${what} ${id}: the id is used twice`);
      all[id] = entry;
    }
    return all;
  };
  const sources = merge(sourceFiles, 'source');
  const figures = merge(figureFiles, 'figure');
  for (const [id, source] of Object.entries(sources)) faults.push(...sourceFaults(id, source));
  for (const [id, figure] of Object.entries(figures))
    faults.push(...figureFaults(id, figure, sources));
  if (faults.length) throw new Error(`The facts in shared/ are not sound:\n${faults.join('\n')}`);
  return { figures: figures as Record<string, Figure>, sources: sources as Record<string, Source> };
}
