import type { Job } from '$lib/answers/job';
import type { OwnFigures } from '$shared/figures';
import type { StepId } from '$shared/methods';
import { figureTerm, isKnown, product, typicalOf, type Amount } from './amount';
import type { Plan, PlannedZone } from './plan';

/** Steps that a part cut out needs as a patch does. A cut through the slab takes no less than a shallow one. */
const outlining: readonly StepId[] = ['make-safe', 'sound-and-mark', 'saw-cut'];
/** Steps at the bars of a zone, which go where that part is made new; the rest of the zone keeps its own. */
const atBars: readonly StepId[] = [
  'break-out',
  'chase-crack',
  'free-bar',
  're-sound',
  'blast-clean',
  'clean-bar',
];

/** Steps of a zone of which a part is cut out that are done all the same. */
export function stepsKept({ method, advice: { beside } }: PlannedZone): (step: StepId) => boolean {
  const restStays = method === 'break-out' && beside !== null && beside !== 'break-out';
  return (step) => outlining.includes(step) || (restStays && !atBars.includes(step));
}

/** Whether there is any of it, as far as is known. */
export const some = (amount: Amount): boolean => !isKnown(amount) || amount.span[1] > 0;

/** Hours to saw round parts that no plan has outlined: square, as far as they go. */
export function cutThrough(
  plan: Plan,
  job: Job,
  cutOut: readonly string[],
  own?: OwnFigures,
): Amount[] {
  const saw = figureTerm('rate', 'rate.saw-cut', own, 'over');
  return job.zones
    .filter(({ id }) => cutOut.includes(id) && !plan.zones.some((zone) => zone.id === id))
    .map(({ answers: { area } }): Amount => {
      if (typeof area !== 'number') return { missing: ['area'], unit: 'h' };
      const round = 4 * Math.sqrt(area);
      return product('h', [{ what: 'perimeter', span: [round, round], unit: 'm' }, saw]);
    });
}

/** The highest of amounts, end by end: what runs side by side. */
export function longest(unit: Amount['unit'], ...amounts: readonly Amount[]): Amount {
  const open = amounts.find((amount) => !isKnown(amount));
  if (open) return open;
  const known = amounts.filter(isKnown);
  return {
    span: [
      Math.max(...known.map(({ span }) => span[0])),
      Math.max(...known.map(({ span }) => span[1])),
    ],
    typical: Math.max(...known.map(typicalOf)),
    unit,
    working: [],
  };
}
