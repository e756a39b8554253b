import type { Job } from '$lib/answers/job';
import { dateOfDay } from '$lib/plan/calendar';
import type { DayRow } from '$lib/plan/day-rows';
import type { Plan } from '$lib/plan/plan';
import { openHours, openTooLong, type Covering } from '$lib/plan/days';
import { hiredTools } from '$lib/plan/machines';
import { toolWords } from '$words/safety/tools';
import { stepWords } from '$words/steps';
import { shortDay } from '$lib/words/by-language';
import type { Say } from '$lib/words/types';
import type { StepId } from '$shared/methods';
import type { FigureId, OwnFigures } from '$shared/figures';
import type { ToolId } from '$shared/tools';
import { spanWords } from './amounts';
import { namesInPlan, stepInPlan } from './order';
import { planPageWords } from './page';

const words = planPageWords.days;
/** Hours shorter than this are no time between two steps. */
const shortest = 1 / 60;

/** A row's name, with its dates where the job has a start. */
export function rowName({ from, to }: Pick<DayRow, 'from' | 'to'>, job: Job): string {
  const [first, last] = [dateOfDay(job, from), dateOfDay(job, to)];
  if (from === to) return words.day(from, first && shortDay(first));
  return words.run(from, to, first && last ? [shortDay(first), shortDay(last)] : null);
}

/** Whether a step goes on while the one named before it does. */
const overlaps = ({ work }: DayRow, one: StepId | undefined, other: StepId): boolean =>
  work.some(
    (a) =>
      a.step === one &&
      work.some((b) => b.step === other && b.from < a.to - shortest && a.from < b.to - shortest),
  );

/** What happens in a row of days, a sentence or a few words each. */
export function rowLines(row: DayRow, plan: Plan, say: Say): readonly string[] {
  const { steps } = plan;
  const names = namesInPlan(plan, stepWords(say));
  const numberOf = (step: string) => steps.findIndex(({ id }) => id === step) + 1;
  const done = [...new Set(row.work.map(({ step }) => step))].sort(
    (one, other) => numberOf(one) - numberOf(other),
  );
  const cures = row.waits.filter(({ step }) =>
    steps.some(({ id }) => id === step && id.includes('cure')),
  );
  return [
    ...(done.length
      ? [
          done
            .map((step, place) => {
              const besides = place > 0 && overlaps(row, done[place - 1], step);
              const waits = row.waiting.includes(step) ? ` (${words.onceCleared})` : '';
              return `${besides ? `${words.beside} ` : ''}${numberOf(step)} ${stepInPlan(plan, step, names)}${waits}`;
            })
            .join(', '),
          `${words.people(row.people)}. ${words.bring}: ${say.list(row.bring.map((tool) => toolWords[tool].name))}`,
        ]
      : []),
    ...(row.untimed.length
      ? [
          words.untimed(
            say.list(
              row.untimed.map(
                (step) =>
                  `${numberOf(step)} ${names[step].name}${row.waiting.includes(step) ? ` (${words.onceCleared})` : ''}`,
              ),
            ),
          ),
        ]
      : []),
    ...(row.off ? [words.off] : []),
    ...row.waits.map(({ step }) =>
      cures.some((cure) => cure.step === step)
        ? words.hardening(names[step].name)
        : words.dryingFor(names[step].name),
    ),
    ...(done.length || row.untimed.length || row.off || row.waits.length ? [] : [words.wholeWait]),
  ];
}

/** A tool with the most it may weigh, where the work says so: “chipping hammer of 14 kg at most”. */
export function toolNamed(tool: ToolId, classes: readonly FigureId[], say: Say): string {
  const { name } = toolWords[tool];
  const most = [...new Set(classes.map((id) => say.figure(id)))];
  return most.length ? words.ofClass(name, say.list(most)) : name;
}

/** Each machine, and the days on which it is needed; what the crew has not is named as hired. */
export const hireRows = (
  plan: Pick<Plan, 'schedule'>,
  job: Job,
  say: Say,
): readonly { readonly name: string; readonly when: string }[] => {
  const hired = hiredTools(plan, job);
  return plan.schedule.hire.map(({ tool, classes, from, to, days }) => {
    const name = toolNamed(tool, classes, say);
    return {
      name: hired.has(tool) ? words.hired(name) : name,
      when: `${rowName({ from, to }, job)}${days.length < to - from + 1 ? ` (${words.runsOn(days.length)})` : ''}`,
    };
  });
};

/** The line that is left to be filled in below the machines: the price. */
export const hirePrice = { name: planPageWords.hire.price, when: planPageWords.hire.ask };

/** The same, a line each. */
export const hireLines = (...of: Parameters<typeof hireRows>): readonly string[] => {
  const rows = hireRows(...of);
  return rows.length ? [...rows, hirePrice].map(({ name, when }) => `${name}: ${when}`) : [];
};

/** A row's name in the head of a narrow column. */
export function columnName({ from, to }: Pick<DayRow, 'from' | 'to'>, job: Job): string {
  const date = dateOfDay(job, from);
  if (from !== to) return words.runShort(from, to);
  return date ? shortDay(date) : words.day(from, null);
}

/** How long the zones lie clean and open, at the longest, against the time they may; null where nothing covers any. */
export function longestOpen(covering: Readonly<Record<string, Covering>>, say: Say): string | null {
  const open = Object.values(covering).flatMap((each) => openHours(each) ?? []);
  if (!open.length) return null;
  const longest = Math.max(...open);
  return longest < shortest
    ? words.openAtOnce
    : words.openLongest(spanWords([longest, longest], 'h', say), say.figure('open.limit'));
}

/** How long each zone lies clean and open, against the day that it may. */
export function coveringLines(
  covering: Readonly<Record<string, Covering>>,
  say: Say,
  nameOf: (zone: string) => string,
  own?: OwnFigures,
): readonly string[] {
  const limit = say.figure('open.limit');
  const over = openTooLong(covering, own);
  const told = new Map<string, string[]>();
  for (const [zone, each] of Object.entries(covering)) {
    const open = openHours(each);
    if (open === null || over.includes(zone)) continue;
    const said = open < shortest ? words.atOnce : spanWords([open, open], 'h', say);
    told.set(said, [...(told.get(said) ?? []), nameOf(zone)]);
  }
  const lines = [
    ...over.map((zone) => words.coveringOver(nameOf(zone), limit)),
    ...[...told].map(([said, zones]) => words.coveringOf(say.list(zones), said)),
  ];
  const not = Object.entries(covering).flatMap(([zone, { cover }]) =>
    cover === null ? [nameOf(zone)] : [],
  );
  return [
    ...lines,
    ...(lines.length ? [words.coveringLimit(limit)] : []),
    ...(not.length ? [words.notCovered(say.list(not))] : []),
  ];
}
