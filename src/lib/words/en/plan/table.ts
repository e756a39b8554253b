import type { Job } from '$lib/answers/job';
import { isKnown, type Amount } from '$lib/plan/amount';
import type { Plan } from '$lib/plan/plan';
import { quantityIds, zoneQuantityIds } from '$lib/plan/quantities';
import { questionWords } from '$words/questions';
import { toolWords } from '$words/safety/tools';
import { stepWords } from '$words/steps';
import type { Say } from '$lib/words/types';
import { shownAs } from './amounts';
import { quantityWords } from './figures';
import { quantityNames } from './quantities';
import { workingLine } from './working';

const words = quantityWords.csv;
/** Digits of a number in the table: more than anyone knows, few enough to read. */
const digits = 6;

/** Names of the columns. */
export const tableHead: readonly string[] = [
  words.invented,
  words.date,
  words.zone,
  words.quantity,
  words.least,
  words.most,
  words.unit,
  words.missing,
  words.working,
];

/** The quantities as rows for a spreadsheet: numbers as numbers, in the reader's units. */
export function quantityRows(
  job: Job,
  plan: Plan,
  say: Say,
  { date, nameOf }: { date: string; nameOf: (zone: string) => string },
): (string | number | null)[][] {
  const asked = questionWords(say);
  const steps = stepWords(say);
  const line = (zone: string, what: string, amount: Amount): (string | number | null)[] => {
    const start = [job.name, date, zone, what];
    if (!isKnown(amount))
      return [
        ...start,
        null,
        null,
        shownAs(amount.unit, Infinity, say.units).label,
        amount.missing.map((id) => asked[id].short).join(', '),
        '',
      ];
    const { label, factor } = shownAs(amount.unit, amount.span[1], say.units);
    const [least, most] = amount.span.map((value) => Number((value * factor).toPrecision(digits)));
    return [...start, least ?? null, most ?? null, label, '', workingLine(amount, say)];
  };
  const rows = plan.zones.flatMap(({ id, quantities }) =>
    zoneQuantityIds.flatMap((what) => {
      const amount = quantities[what];
      return amount ? [line(nameOf(id), quantityNames[what].name, amount)] : [];
    }),
  );
  const totals = quantityIds.flatMap((what) => {
    const amount = plan.totals[what];
    return amount ? [line(words.all, quantityNames[what].name, amount)] : [];
  });
  const hours = plan.steps.flatMap(({ id, hours: amount }) =>
    amount ? [line(words.all, `${quantityWords.hoursByStep}: ${steps[id].name}`, amount)] : [],
  );
  const count = (what: string, number: number) =>
    line(words.all, what, { span: [number, number], unit: 'count', working: [] });
  const hire = plan.schedule.hire.map(({ tool, days }) =>
    count(words.hire(toolWords[tool].name), days.length),
  );
  const bays = plan.wholeBays.flatMap(({ id, patched, whole }) =>
    (
      [
        [words.patched, patched],
        [words.whole, whole],
      ] as const
    ).flatMap(([how, { area, removed, bags }]) => [
      line(words.bay(id), `${how}: ${quantityNames.area.name}`, area),
      line(words.bay(id), `${how}: ${quantityNames.removed.name}`, removed),
      line(words.bay(id), `${how}: ${quantityNames['fill-bags'].name}`, bags),
    ]),
  );
  const { count: days, crew } = plan.schedule;
  const people = [
    line(words.all, words.days, { span: days, unit: 'count', working: [] }),
    count(words.people, crew),
  ];
  const { soFar } = plan;
  const far = soFar
    ? [
        line(words.all, words.taken, { span: [soFar.taken, soFar.taken], unit: 'h', working: [] }),
        line(words.all, words.left, {
          span: [soFar.left.low, soFar.left.high],
          unit: 'h',
          working: [],
        }),
        line(words.all, words.daysLeft, {
          span: plan.schedule.left?.count ?? [0, 0],
          unit: 'count',
          working: [],
        }),
        ...(soFar.ratio === null
          ? []
          : [
              line(words.all, words.ratio, {
                span: [soFar.ratio, soFar.ratio],
                unit: 'ratio',
                working: [],
              }),
            ]),
      ]
    : [];
  return [...rows, ...totals, ...hours, ...far, ...people, ...hire, ...bays];
}
