import { settleTask, vibrationOf } from '$lib/safety/tasks';
import { dailyVibration, pointsOf, triggerMinutes } from '$lib/safety/vibration';
import type { FigureId } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { near, published as p, through, type Guard } from './guard';

const hse = 'HSE table of common tools, as University College London prints it';
const faq = 'HSE, vibration in construction, questions and answers';
const task = { step: 'break-out', setting: 'open', hours: [1, 1] } as const;

/** What the crew's day reckons with for a tool, against the table: lowest, typical, highest. */
const tool = (
  name: ToolId,
  id: FigureId,
  [low, typical, high]: readonly [number, number | null, number],
): Guard =>
  through(`${name} shakes with ${low} to ${high} m/s2`, [id], hse, () => {
    const found = vibrationOf(settleTask({ ...task, tool: name }));
    return (
      typeof found === 'object' &&
      found.range[0] === low &&
      found.range[1] === high &&
      (typical === null || found.typical === typical)
    );
  });

/** Hand-arm vibration. */
export const vibrationGuards: readonly Guard[] = [
  through(
    '5 m/s2 for 3 h: 150 points, A(8) 3.06',
    ['vibration.day', 'vibration.action', 'vibration.action-points'],
    'HSE exposure points ready reckoner',
    () => near(pointsOf(5, 3), 150, 0.001) && near(dailyVibration(5, 3), 3.06, 0.002),
  ),
  through(
    '2.5 m/s2 and 5 m/s2 all day are the action and the limit value',
    ['vibration.action', 'vibration.limit', 'vibration.day'],
    'Directive 2002/44/EC, as reported; ANSI S2.70-2006',
    () =>
      near(triggerMinutes('action', 2.5), 480, 0.001) &&
      near(triggerMinutes('limit', 5), 480, 0.001),
  ),
  through(
    "a maker's 4 m/s2 is read as 4 to 8",
    ['vibration.maker-factor'],
    'HSE, as reported: doubling is the safer reading',
    () => {
      const found = vibrationOf(settleTask({ ...task, ownVibration: 4 }));
      return typeof found === 'object' && found.range[0] === 4 && found.range[1] === 8;
    },
  ),
  tool('jackhammer', 'vibration.road-breaker', [5, 12, 20]),
  tool('chipping-hammer', 'vibration.demolition-hammer', [8, 15, 25]),
  tool('needle-scaler', 'vibration.needle-scaler', [5, null, 18]),
  tool('scabbler', 'vibration.scabbler', [40, null, 40]),
  tool('hand-grinder', 'vibration.angle-grinder', [4, null, 8]),
  p('vibration.hammer-drill', { range: [6, 25], typical: 9 }, 'as printed', hse),
  p('vibration.stone-hammer', [10, 30], 'as printed', hse),
  p('vibration.hammer-minutes', 15, 'as printed', faq),
  p('vibration.rotary-hours', 1, 'as printed', faq),
];
