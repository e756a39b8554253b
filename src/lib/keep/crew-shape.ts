import * as v from 'valibot';
import { dustHoursIds, regions, turnsIds } from '$lib/answers/crew-day';
import { choicesOf } from '$lib/answers/questions';
import { rangeOf } from '$shared/figures';
import { stepIds, type StepId } from '$shared/methods';
import { toolIds, type ToolId } from '$shared/tools';
import { list, measured, object, picked, says, within } from './shapes';

const oneOf = <const C extends string>(choices: readonly C[]) =>
  picked(choices, { id: 'one-of', choices });

/** The same optional field for each of these ids. */
const fieldsFor = <K extends string, S extends v.GenericSchema>(ids: readonly K[], shape: S) =>
  Object.fromEntries(ids.map((id) => [id, v.exactOptional(shape)])) as unknown as Record<
    K,
    v.ExactOptionalSchema<S, undefined>
  >;

/** What the reader knows of their own tools. */
export const toolLevelsShape = object(
  fieldsFor<ToolId, v.GenericSchema<unknown, ToolLevelRead>>(
    toolIds,
    object({
      noise: v.exactOptional(measured('limit.noise-level')),
      vibration: v.exactOptional(measured('limit.vibration')),
      measured: v.exactOptional(v.boolean(says({ id: 'truth' }))),
      wheel: v.exactOptional(measured('limit.wheel')),
    }),
  ),
);
type ToolLevelRead = {
  noise?: number;
  vibration?: number;
  measured?: boolean;
  wheel?: number;
};

/** Minutes there can be in a day. */
const minutes = ((): readonly [number, number] => {
  const [least, most] = rangeOf('limit.exposure-hours');
  return [least * 60, most * 60];
})();

/** More tasks than this in one person's day are a slip. */
const mostTasks = 40;

/** Choices made for the crew's day. */
export const crewDayShape = object({
  region: v.exactOptional(oneOf(regions)),
  turns: v.exactOptional(oneOf(turnsIds)),
  dustHours: v.exactOptional(oneOf(dustHoursIds)),
  tools: v.exactOptional(object(fieldsFor<StepId, ReturnType<typeof tool>>(stepIds, tool()))),
  mix: v.exactOptional(
    list(
      object({
        step: oneOf(stepIds),
        tool: tool(),
        minutes: within(minutes, { id: 'amount', unit: 'min', range: minutes }),
      }),
      mostTasks,
    ),
  ),
  mixSetting: v.exactOptional(oneOf(choicesOf('setting'))),
});

function tool() {
  return oneOf(toolIds);
}
