import type { Place } from '$lib/answers/survey';
import { valueOf, type OwnFigures } from '$shared/figures';
import type { Bay } from './bays';
import type { Patch } from './patches';

export interface SurveyedBay {
  readonly id: string;
  /** Its lower left corner as drawn, mm. */
  readonly corner: Place;
  /** m2 */
  readonly area: number;
  /** m2 of it that patches take. */
  readonly patched: number;
  /** m to saw round them. */
  readonly saw: number;
  /** More than half of it is patched (figure `patch.whole-bay`): treating it whole is offered. */
  readonly whole: boolean;
}

/**
 * A surface with every bay that is offered whole treated whole. A bay has joints and edges all round
 * and needs no cut.
 */
export interface IfWhole {
  /** m2 of patches and whole bays. */
  readonly area: number;
  /** m */
  readonly sawCut: number;
}

export function surveyedBay(bay: Bay, patches: readonly Patch[], own?: OwnFigures): SurveyedBay {
  const mine = patches.filter((patch) => patch.bay === bay.id);
  const patched = total(mine.map(({ area }) => area));
  const saw = total(mine.map((patch) => patch.saw));
  const most = valueOf('patch.whole-bay', own) / 100;
  const corner = lowest(bay.ring);
  return { id: bay.id, corner, area: bay.area, patched, saw, whole: patched > bay.area * most };
}

export const ifWhole = (bays: readonly SurveyedBay[]): IfWhole | null =>
  bays.some(({ whole }) => whole)
    ? {
        area: total(bays.map(({ whole, area, patched }) => (whole ? area : patched))),
        sawCut: total(bays.map(({ whole, saw }) => (whole ? 0 : saw))),
      }
    : null;

/** The corner of a ring nearest to the reader's own. */
const lowest = (ring: Bay['ring']): Place =>
  ring.reduce((best, each) => (each[0] + each[1] < best[0] + best[1] ? each : best));

const total = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);
