import { regionOf } from '$lib/answers/crew-day';
import type { Job } from '$lib/answers/job';
import type { Block, TextDocument } from '$lib/keep/export-document';
import { isKnown, type Amount } from '$lib/plan/amount';
import { hazardsOn, keptAway } from '$lib/plan/kept-away';
import type { Plan } from '$lib/plan/plan';
import { doneOf } from '$lib/plan/so-far';
import { quantityIds } from '$lib/plan/quantities';
import { mustWait, waitsAt } from '$lib/plan/waiting';
import { earsOver } from '$lib/safety/ears-over';
import { handsOver } from '$lib/safety/hands';
import { capital } from '$lib/words/by-language';
import { hazardWords } from '$words/hazards';
import { methodWords } from '$words/methods';
import { ruleSentences } from '$words/rules';
import { earsAtStep, earsLines } from '$words/safety/ears';
import { handsLines } from '$words/safety/hands';
import { logWords } from '$words/safety/log';
import { stepWords } from '$words/steps';
import { keepAwayLine } from '$words/ui/keep-away';
import { verdictWords } from '$words/verdicts';
import type { Say } from '$lib/words/types';
import type { StepId } from '$shared/methods';
import { amountWords, spanWords } from './amounts';
import { assumptionSentences } from './assumptions';
import { coveringLines, hireLines, rowLines, rowName, toolNamed } from './days';
import { jobPageWords } from './job';
import { quantityWords } from './figures';
import { orderReasons, namesInPlan, stepInPlan } from './order';
import { logLines } from './log-lines';
import { planPageWords as words } from './page';
import { quantityNames } from './quantities';
import { soFarLines, soFarTitle } from './so-far';
import { workingLine } from './working';

const list = (items: readonly string[], numbered = false): Block[] =>
  items.length ? [{ kind: 'list', items, numbered }] : [];

/**
 * The plan as plain text under headings, to be kept outside the site.
 * @param about.date the day it was worked out, as it is to stand there
 */
export function planDocument(
  job: Job,
  plan: Plan,
  say: Say,
  { date, nameOf }: { date: string; nameOf: (zone: string) => string },
): TextDocument {
  const steps = namesInPlan(plan, stepWords(say));
  const methods = methodWords(say);
  const said = (amount: Amount) =>
    isKnown(amount) ? (amountWords(amount, say) ?? '') : quantityWords.missing;
  const held = plan.held.map(({ id, verdict, holds, methods: named }) =>
    [
      `${nameOf(id)}: ${verdictWords.verdicts[verdict].name}.`,
      ...holds.map((hold) => ruleSentences[hold.rule](hold, say)),
      ...(holds.length ? [] : [named > 1 ? words.held.unsettled : words.held.oneMethod]),
    ].join(' '),
  );
  // In the order and the days too, but not to be begun before.
  const waiting = plan.zones.flatMap(({ id, holds, possibleHolds }) => {
    const told = [
      ...holds.map((hold) => ruleSentences[hold.rule](hold, say)),
      ...(holds.length ? [] : possibleHolds).map(({ who }) =>
        capital(`${jobPageWords.may(verdictWords.who[who].name)}.`),
      ),
    ];
    return told.length ? [`${nameOf(id)}: ${[...new Set(told)].join(' ')}`] : [];
  });
  const skin = plan.zones.filter(({ skinLeft }) => skinLeft).map(({ id }) => nameOf(id));
  const away = keptAway(plan);
  const over = handsOver(plan, job);
  const loud = earsOver(plan, job, regionOf(job.crewDay, say.units));
  const bodies = [over && handsLines(say, over), loud && earsLines(say, loud)].flatMap((told) =>
    told ? [[told.title, ...told.lines].join(' ')] : [],
  );
  const waits = waitsAt(plan);
  const heldBack = mustWait(plan);
  const named = (step: StepId, zones: readonly string[]) => {
    const [free, later] = [
      zones.filter((zone) => !waits(step, zone)),
      zones.filter((zone) => waits(step, zone)),
    ].map((some) => say.list(some.map(nameOf)));
    return [...(free ? [free] : []), ...(later ? [words.order.onceCleared(later)] : [])].join('; ');
  };
  const order = plan.steps.map(({ id, zones, after, wait, free, waiting: later, tooling }) => {
    const done = doneOf(plan, id);
    const tooLoud = loud?.steps.get(id);
    return [
      `${heldBack({ step: id, zones }) ? `${words.order.notYet} ` : ''}${stepInPlan(plan, id, steps)} (${named(id, zones)})`,
      ...(done ? [words.order.done(done)] : []),
      ...(wait ? [words.order.wait(spanWords(wait.hours, 'h', say)).replace(/\.$/, '')] : []),
      ...after.map(({ step, why }) => words.order.after(steps[step].name, orderReasons[why])),
      `${words.order.with} ${say.list(tooling.map((each) => toolNamed(each.tool, each.class ? [each.class] : [], say)))}`,
      ...(free ? [`${words.order.hours}: ${said(free)}`] : []),
      ...(tooLoud === undefined ? [] : [earsAtStep(say, tooLoud).replace(/\.$/, '')]),
      ...(later ? [`${words.order.hours}, ${words.order.onceCleared(said(later))}`] : []),
    ].join('; ');
  });
  const log = logLines(job, say, nameOf);
  const { day, step, zone, from, to, people, hours: spent, note } = logWords.sheet;
  const days = plan.dayRows.map(
    (row) =>
      `${rowName(row, job)}: ${rowLines(row, plan, say)
        .map((line) => line.replace(/\.$/, ''))
        .join('; ')}`,
  );
  const covering = coveringLines(plan.schedule.covering, say, nameOf, job.own);
  const hire = hireLines(plan, job, say);
  const totals = quantityIds.flatMap((id) => {
    const amount = plan.totals[id];
    return amount ? [[quantityNames[id].name, said(amount), workingLine(amount, say)]] : [];
  });
  const hazards = hazardWords(say);
  const [least, most] = plan.schedule.count;
  return {
    title: `${words.title}: ${job.name || words.unnamed}`,
    sections: [
      {
        blocks: [
          { kind: 'text', text: words.made(date) },
          ...(away
            ? [
                {
                  kind: 'text' as const,
                  text: keepAwayLine(away, away.all ? [] : away.zones.map(nameOf), say.list),
                },
              ]
            : []),
          { kind: 'text', text: verdictWords.deferral },
          ...list(plan.zones.map(({ id, method }) => `${nameOf(id)}: ${methods[method].name}`)),
        ],
      },
      ...(held.length ? [{ title: words.held.title, blocks: list(held) }] : []),
      ...(skin.length
        ? [
            {
              title: words.held.skinTitle,
              blocks: list([`${say.list(skin)}: ${words.held.skin}`]),
            },
          ]
        : []),
      ...(waiting.length ? [{ title: words.waits, blocks: list(waiting) }] : []),
      ...(plan.soFar ? [{ title: soFarTitle, blocks: list(soFarLines(plan, say)) }] : []),
      { title: words.order.title, blocks: list(order, true) },
      {
        title: `${words.fold.days}: ${words.days.most(String(least), String(most))}`,
        blocks: [...bodies.map((text) => ({ kind: 'text' as const, text })), ...list(days)],
      },
      ...(log.length
        ? [
            {
              title: logWords.sheet.title,
              blocks: [
                {
                  kind: 'table' as const,
                  head: [day, step, zone, from, to, people, spent, note],
                  rows: log.map((line) => [
                    line.date,
                    line.step,
                    line.zone,
                    line.from,
                    line.to,
                    line.people,
                    line.hours,
                    line.note,
                  ]),
                },
              ],
            },
          ]
        : []),
      ...(hire.length ? [{ title: words.hire.machines, blocks: list(hire) }] : []),
      ...(covering.length ? [{ title: words.days.covering, blocks: list(covering) }] : []),
      {
        title: quantityWords.title,
        blocks: totals.length
          ? [
              {
                kind: 'table' as const,
                head: [quantityWords.what, quantityWords.howMuch, quantityWords.working],
                rows: totals,
              },
            ]
          : [],
      },
      {
        title: words.assumptions.title,
        blocks: list(assumptionSentences(job, plan, say, nameOf)),
      },
      {
        title: words.cautions.title,
        blocks: list(
          hazardsOn(plan).map(
            (id) => `${hazards[id].name}: ${hazards[id].harm} ${hazards[id].stop}`,
          ),
        ),
      },
    ],
  };
}
