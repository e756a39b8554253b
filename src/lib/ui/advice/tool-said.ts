import type { Step } from '$lib/advice/types';
import type { InterviewContext } from '$lib/interview/context';
import { placeOfZone, toolFor } from '$lib/plan/tools';
import { toolHere, type ToolSaid } from '$words/settings';
import type { Say } from '$lib/words/types';
import type { MethodId } from '$shared/methods';

/** The tool of the case in hand, as the plan reckons with it; null where the usual line says it. */
export function toolSaid(
  method: MethodId,
  { site, zone }: InterviewContext,
  steps: readonly Step[],
  say: Say,
): ToolSaid | null {
  const why = steps.find(({ id }) => id === method)?.why.map(({ rule }) => rule) ?? [];
  const { tool, class: kind } = toolFor(method, { ...placeOfZone(site, zone), why });
  return toolHere(tool, kind, say);
}
