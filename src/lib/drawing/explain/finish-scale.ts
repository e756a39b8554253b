import { amplitudeOf } from '$lib/drawing/lines';
import { finishScale } from '$words/explain/machines';
import { rangeOf, type FigureId } from '$shared/figures';

const { names } = finishScale;

/** A finish in the drawing that shows all of them to one scale; lengths in mm. */
export interface DrawnFinish {
  readonly name: string;
  /** The thickest it is usually put on. */
  readonly thickness: number;
  /** Peak to valley of the gentlest profile it asks for. */
  readonly rough: number;
}

const drawn = (id: Exclude<keyof typeof names, 'overlay'>): DrawnFinish => ({
  name: names[id],
  thickness: rangeOf(`finish.${id}` as FigureId)[1],
  rough: amplitudeOf(rangeOf(`csp.needs.${id}` as FigureId)[0]),
});

/**
 * Finishes with a usual thickness, thinnest first. An overlay has no upper end: it is drawn by
 * whoever uses this, broken off at the top.
 */
export const drawnFinishes: readonly DrawnFinish[] = [
  drawn('sealer'),
  drawn('thin-film'),
  drawn('build-coat'),
  drawn('self-levelling'),
  drawn('thin-overlay'),
];
/** How rough an overlay wants it at least, mm peak to valley. */
export const overlayRough = amplitudeOf(rangeOf('csp.needs.overlay')[0]);
