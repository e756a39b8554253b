import type { Advice } from '$lib/advice/types';
import { methodIds, methods, type MethodId } from '$shared/methods';
import type { Job } from '$lib/answers/job';
import { toolsOf, type ToolId } from '$shared/tools';
import type { Plan } from './plan';

/** What happens to a zone whose advised machine the crew does not have. */
export interface Substitute {
  readonly zone: string;
  readonly wanted: MethodId;
  /** The gentlest sufficient method they have; null: hire one. */
  readonly instead: MethodId | null;
  /** What it costs against the advice. */
  readonly costs: readonly ('bruises-more' | 'rougher' | 'slower' | 'harsher')[];
}

const bruising = ['no', 'hardly', 'little', 'yes', 'most'] as const;
const slow: readonly MethodId[] = ['needle-scale', 'break-out', 'abrasive-blast'];

/** The best sufficient machine the crew has in place of the advised one; null where they have it. */
export function substituteFor(
  zone: string,
  advice: Advice,
  machines: readonly string[],
): Substitute | null {
  const wanted = advice.underneath;
  if (!wanted || machines.includes(wanted)) return null;
  const able = advice.rejections
    .filter(({ wouldDo, method }) => wouldDo && machines.includes(method))
    .map(({ method }) => method)
    .sort(
      (one, other) =>
        methods[one].class - methods[other].class ||
        methodIds.indexOf(one) - methodIds.indexOf(other),
    );
  const [instead = null] = able;
  const costs: Substitute['costs'][number][] = [];
  if (instead) {
    const worse = (of: MethodId) => bruising.indexOf(methods[of].bruises);
    if (methods[instead].class > methods[wanted].class) costs.push('harsher');
    if (worse(instead) > worse(wanted)) costs.push('bruises-more');
    if (instead === 'break-out' || instead === 'scarify') costs.push('rougher');
    if (slow.includes(instead)) costs.push('slower');
  }
  return { zone, wanted, instead, costs };
}

/** The methods that a tool belongs to: whoever does one of them has it. */
const methodsWith = (tool: ToolId): readonly MethodId[] =>
  methodIds.filter((id) => [true, false].some((onFloor) => toolsOf(id, onFloor).includes(tool)));

/**
 * Machines that the plan runs in any step and the crew has not: hired, whatever else would do. What
 * belongs to no method (a saw, a vacuum) nobody was asked about, and nothing is said of it.
 */
export const hiredTools = (
  { schedule }: Pick<Plan, 'schedule'>,
  { machines }: Pick<Job, 'machines'>,
): ReadonlySet<ToolId> =>
  new Set(
    schedule.hire
      .map(({ tool }) => tool)
      .filter((tool) => {
        const doneBy = methodsWith(tool);
        return machines && doneBy.length > 0 && !doneBy.some((id) => machines.includes(id));
      }),
  );
