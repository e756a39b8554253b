import { wholeFigures } from '$shared/figure-notes';
import type { FigureId } from '$shared/figures';
import type { SourceId } from '$shared/sources';
import { checks } from './checks';
import type { ZoneCheck } from './zone';

/** Every figure a zone's checks lean on, each once, in the order of the checks. */
export function figuresBehind(zoneChecks: readonly ZoneCheck[]): FigureId[] {
  const used = zoneChecks.flatMap(({ need, wanted, verdict }) => [
    ...need.passes,
    ...(wanted?.figures ?? []),
    ...(verdict.figures ?? []),
  ]);
  return [...new Set(used)];
}

/** Every source a zone's checks lean on, by their way of doing or by their figures, each once. */
export function sourcesBehind(zoneChecks: readonly ZoneCheck[]): SourceId[] {
  const bySource = zoneChecks.flatMap(({ need }) => checks[need.check].sources);
  const byFigure = figuresBehind(zoneChecks).flatMap((id) => wholeFigures[id].source ?? []);
  return [...new Set([...bySource, ...(byFigure as SourceId[])])];
}
