import type { FigureId } from '$shared/figures';
import { tools, type ToolId } from '$shared/tools';
import type { Hire } from './days';
import type { Placed } from './schedule';
import { besideTool } from './tools';

/** Each machine, with what has to stand beside it, and the days on which it is needed. */
export function hireOf(placed: readonly Placed[]): Hire[] {
  const days = new Map<ToolId, Set<number>>();
  const classes = new Map<ToolId, Set<FigureId>>();
  for (const { task, stretches } of placed) {
    const { tool: own, class: most } = task.tool;
    for (const tool of [own, ...besideTool(task.step, own)]) {
      if (!tools[tool].power.length) continue;
      const found = days.get(tool) ?? new Set();
      for (const { day } of stretches) found.add(day);
      if (found.size) days.set(tool, found);
    }
    if (most) classes.set(own, (classes.get(own) ?? new Set<FigureId>()).add(most));
  }
  return [...days].map(([tool, on]) => {
    const sorted = [...on].sort((one, other) => one - other);
    return {
      tool,
      from: sorted[0] ?? 0,
      to: sorted.at(-1) ?? 0,
      classes: [...(classes.get(tool) ?? [])],
      days: sorted,
    };
  });
}
