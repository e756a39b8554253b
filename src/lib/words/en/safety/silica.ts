import { toUs } from '$lib/answers/units';
import type { DutyId } from '$lib/safety/duties';
import { maskOfTask, type Mask } from '$lib/safety/masks';
import type { SilicaOfDay, SilicaOfTask, SilicaWay } from '$lib/safety/silica';
import type { Region } from '$lib/safety/types';
import type { Say } from '$lib/words/types';
import type { SilicaControlId, SilicaRowId } from '$shared/silica-table';
import { toolWords } from './tools';

/** What each row of the US table is about. */
export const silicaRowWords: Readonly<Record<SilicaRowId, string>> = {
  ii: 'row (ii), hand-held power saws',
  iv: 'row (iv), walk-behind saws',
  vii: 'row (vii), hand-held and stand-mounted drills',
  x: 'row (x), jackhammers and hand-held powered chipping tools',
  xi: 'row (xi), hand-held grinders that take out mortar',
  xii: 'row (xii), hand-held grinders for other work',
  xiii: 'row (xiii), walk-behind milling machines and floor grinders',
  xiv: 'row (xiv), small milling machines that you drive',
};

/** What to run against the dust, as one order each. */
export const silicaControlWords = (
  say: Say,
): Readonly<Record<SilicaControlId | 'exhaust-the-room', string>> => ({
  'water-to-blade': 'Use the saw’s own water feed: water runs on the blade all the time.',
  'water-to-wheel': 'Use the grinder’s own water feed: water runs on the wheel all the time.',
  'water-to-cutter': 'Use the machine’s own water feed: water runs on the cutters all the time.',
  'water-at-point': 'Spray water without a break where the point hits the concrete.',
  'water-with-surfactant': 'Use the machine’s water sprays, with a wetting agent in the water.',
  'shroud-and-collector': `Fit a shroud on the tool and a dust collector with a filter that stops ${say.figure('silica.filter')} or more.`,
  'makers-collector': `Run the dust collector that the maker asks for, with a filter that stops ${say.figure('silica.filter')} or more and cleans itself.`,
  'cyclone-or-cleaning':
    'The collector needs a cyclone before the filter, or a filter that cleans itself.',
  'hepa-for-holes': 'Clean holes with a fine-dust (HEPA) vacuum.',
  'vacuum-between-passes': 'Take up loose dust with a fine-dust (HEPA) vacuum between passes.',
  'exhaust-the-room': 'Draw the air out of the room, so that no dust hangs in it.',
});

/** What an employer has to see to. */
export const dutyWords = (say: Say): Readonly<Record<DutyId, string>> => ({
  'ask-your-country': `Your country’s rule comes first. In the European Union the limit is ${say.figure('silica.limit-eu')} over 8 hours, and many countries set less. Masks are often named P3 or FFP3 there.`,
  'assess-exposure':
    'No table settles this task. Somebody who can measure dust has to assess it before work starts.',
  'written-plan': 'Write down how each task keeps dust down, and who stays out of the area.',
  'competent-person': 'Name one person on site who knows the plan and may stop the work.',
  training: 'Show everybody what the dust does and how the controls work.',
  'no-dry-sweeping': 'Do not sweep dry. Vacuum, or wet the dust first.',
  'no-compressed-air': 'Do not blow dust off floors or clothes with air.',
  'fit-test': 'Test that each tight mask fits its wearer. A beard breaks the seal.',
  'medical-exam': `Whoever has to wear a respirator for ${say.figure('silica.exam-days')} or more a year is offered a medical examination.`,
});

/** Air the collector has to move, for one way. */
export function airflowSentence(say: Say, { airflow }: SilicaWay): string | null {
  if (!airflow) return null;
  if (airflow.by === 'maker')
    return 'The collector has to move as much air as the tool’s maker asks for.';
  if (airflow.flow === undefined)
    return `The collector has to move ${say.figure('silica.airflow')} of wheel. Type the wheel’s size to see how much that is.`;
  return `A wheel of ${say.length(airflow.wheel ?? 0)} wants a collector that moves ${airWords(say, airflow.flow)} or more.`;
}

/** Air in both units, since collectors are labelled in either. */
function airWords(say: Say, flow: number): string {
  const cubicFeet = toUs('m3', flow);
  return `${say.number(flow)} m³/min (${say.number(Math.ceil(cubicFeet - 1e-6))} cfm)`;
}

/** The respirator of one way. */
export const protectionSentence = (factor: number): string =>
  factor > 0
    ? `Wear a respirator with a protection factor of ${String(factor)} or more.`
    : 'With this control the table asks for no respirator.';

/** What to begin with where no table has a row. */
function beginSentence({ factor, hood }: Mask): string {
  const mask = `a mask of factor ${String(factor)} or more`;
  return hood
    ? `Until then, whoever blasts wears a hood fed with clean air. Whoever is near wears ${mask}, or stays outside the barrier.`
    : `Until then, run the maker’s dust collector (class H or M) and wear ${mask}.`;
}

/** What the table says of one task, in one sentence or two. */
export function silicaSentence(say: Say, task: SilicaOfTask, region: Region): string {
  const tool = toolWords[task.tool].name;
  const mask = maskOfTask(task, region);
  switch (task.kind) {
    case 'not-dusty':
      return `This step with the ${tool} is not known for concrete dust. Dried slurry is dust again: clean it up wet.`;
    case 'housekeeping':
      return 'Cleaning up raises dust too. Use a fine-dust (HEPA) vacuum; never sweep dry.';
    case 'not-in-table':
      return `The ${tool} ${task.open ? 'may not be' : 'is not'} in the dust table for this step. The dust has to be assessed by somebody who can measure it. ${beginSentence(mask)}${
        task.open
          ? ` It could be argued to stand in ${rowList(say, task.rows)}; we take the stricter way.`
          : ''
      }`;
    case 'row':
      return [
        region === 'us'
          ? `The ${tool} stands in ${rowList(say, task.rows)} of 29 CFR 1926.1153 Table 1.`
          : `Your country’s rule decides. The same controls as in the US table, ${rowList(say, task.rows)}, are good practice for the ${tool}.`,
        ...(mask.by === 'country'
          ? [
              `Great Britain asks for extraction of class H or M and a mask of factor ${String(mask.factor)} at such work. That is stricter than the US table: take it where your country asks for no more.`,
            ]
          : []),
        ...(task.open
          ? ['The table does not name it clearly, so we ask for the stricter respirator.']
          : []),
        ...(task.shelteredAsEnclosed
          ? ['A roof or walls can hold dust in, so we treat this place as enclosed.']
          : []),
      ].join(' ');
  }
}

const rowList = (say: Say, rows: readonly SilicaRowId[]): string =>
  say.either(rows.map((row) => silicaRowWords[row]));

/** Which column of the table counts for a day. */
export function columnSentence(
  say: Say,
  { hours, column, columnDependsOnHours }: SilicaOfDay,
): string {
  const shift = say.figure('silica.long-shift');
  if (column === 'up-to-4')
    return `All dusty tasks of the table together stay within ${shift} in this shift.`;
  return columnDependsOnHours
    ? `The dusty tasks may take ${say.hours(hours.low)} to ${say.hours(hours.high)} together. Past ${shift} the stricter column counts for each of them, so we use that one.`
    : `The dusty tasks take more than ${shift} together, so the stricter column counts for each of them.`;
}
