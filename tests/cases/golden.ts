import { adviseZone } from '$lib/advice/advise';
import { approachTo } from '$lib/advice/approach';
import { keepClear } from '$lib/advice/keep-clear';
import { looksForCoating, waitsForSample } from '$lib/advice/untested-coating';
import type { TestId } from '$lib/advice/types';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Answer } from '$lib/answers/answers';
import type { Job, Zone } from '$lib/answers/job';
import { siteQuestionIds, zoneQuestionIds, type QuestionId } from '$lib/answers/questions';
import type { Block, TextDocument } from '$lib/keep/export-document';
import { markdownOf } from '$lib/keep/export-markdown';
import { ownerOptionIds, measureIds } from '$lib/plan/options';
import { planJob, type Plan } from '$lib/plan/plan';
import { readForOwner } from '$lib/plan/conclusion';
import { needsOf } from '$lib/readiness/open-needs';
import { crewDaysOf } from '$lib/safety/from-plan';
import { noiseAim } from '$lib/safety/noise-limits';
import { safetyOf, type SafetyOfWorker } from '$lib/safety/safety-of';
import { drawnJob } from '$lib/survey/drawn';
import { surveyOf } from '$lib/survey/survey';
import { measureText } from '$lib/ui/owner/amount-text';
import { speakAnswer } from '$lib/ui/speak-answer';
import { possibleHoldSentence } from '$words/rules/possible-holds';
import { allWords as words } from '$words';
import { measureWords, ownerPageWords, pointSentences, conclusionWords } from '$words/owner';
import { planDocument } from '$words/plan/document';
import { planPageWords } from '$words/plan/page';
import { checkWords } from '$words/readiness/checks';
import { needSentences } from '$words/readiness/needs';
import { readyPage } from '$words/readiness/page';
import { boundsWords, standingWords } from '$words/safety/noise';
import { zoneNames } from '$words/zone-names';
import type { Say } from '$lib/words/types';
import type { UnitSystem } from '$lib/answers/units';
import { questionPageWords } from '$words/ui/question';
import { approachWords } from '$words/ui/approach';
import { mayWords } from '$words/ui/glance';
import { formatter, untied } from '../helpers/plain-formatter';

/** A part of the document; nothing where there is nothing to list. */
const list = (lead: string, items: readonly string[], numbered = false): Block[] =>
  items.length
    ? [
        { kind: 'text', text: `${lead}:` },
        { kind: 'list', items, numbered },
      ]
    : [];

function answersIn(
  ids: readonly QuestionId[],
  answers: Readonly<Partial<Record<QuestionId, unknown>>>,
  say: Say,
): string[] {
  const asked = words.questions(say);
  return ids.flatMap((id) => {
    const answer = answers[id] as Answer<QuestionId> | undefined;
    return answer === undefined
      ? []
      : [`${asked[id].short}: ${speakAnswer(id, answer, asked, say)}`];
  });
}

/** What one zone comes to: verdict, method and steps with their reasons, and what stands round them. */
function zoneBlocks(job: Job, zone: Zone, advice: ZoneAdvice, say: Say): Block[] {
  const { rules, verdicts } = words;
  const [methods, steps, tests] = [words.methods(say), words.steps(say), words.tests(say)];
  const hazards = words.hazards(say);
  const clear = keepClear(job.site, advice);
  const before = (test: TestId) => {
    const comes = approachTo(test, clear, false);
    if (comes !== 'as-usual') return `: ${approachWords[comes]}`;
    if (waitsForSample(job.site, test)) return `: ${questionPageWords.sampleFirst}`;
    const looks = looksForCoating(job.site, zone.answers, test);
    return looks ? `: ${questionPageWords.leaveCoating}` : '';
  };
  const why = (reason: Parameters<(typeof rules)['make-safe-first']>[0]) =>
    `${rules[reason.rule](reason, say)}${reason.likeliest ? ' (likeliest)' : ''}`;
  const checks = checkWords(say);
  const { profile, bruisedSkin, moisture, behindBar, followsTexture, fromSheet } = advice.target;
  const open = (part: string) => ((advice.openTargets as string[]).includes(part) ? ' (open)' : '');
  const named = advice.method ? [advice.method] : advice.methods;
  return [
    ...list('Answers', answersIn(zoneQuestionIds, zone.answers, say)),
    {
      kind: 'text',
      text: `${verdicts.verdicts[advice.verdict].name}. ${say.either(named.map((id) => methods[id].name)) || 'No method'}${advice.beside ? `, and beside the bars ${methods[advice.beside].name}` : ''}.`,
    },
    ...list('Before anything else', clear ? [mayWords[clear]] : []),
    ...list('Why', advice.reasons.map(why)),
    ...list(
      'Stands before it',
      advice.holds.map((hold) => `${verdicts.who[hold.who].name}: ${why(hold)}`),
    ),
    ...list(
      'May stand before it',
      advice.possibleHolds.map(
        (hold) => `${verdicts.who[hold.who].name}: ${possibleHoldSentence(hold, say)}`,
      ),
    ),
    ...list(
      'Steps',
      advice.steps.map((step) => `${steps[step.id].name}. ${step.why.map(why).join(' ')}`),
      true,
    ),
    ...list(
      'Not these',
      advice.rejections.map((each) => `${methods[each.method].name}: ${why(each)}`),
    ),
    ...list('Find out', [
      ...advice.findOut.map(
        ({ test, question }) =>
          `${tests[test].name} (${words.questions(say)[question].short})${before(test)}`,
      ),
    ]),
    {
      kind: 'text',
      text: `Aim: ${followsTexture && !fromSheet ? 'as found' : profile ? say.csp(profile) : 'no roughness said'}${open('profile')}; bruised skin ${bruisedSkin}${open('bruisedSkin')}; ${moisture}${open('moisture')}${behindBar ? `; ${say.length(behindBar)} behind the bar${open('behindBar')}` : ''}.`,
    },
    {
      kind: 'text',
      text: `Cautions: ${advice.cautions.map((id) => hazards[id].name).join(', ') || 'none'}.`,
    },
    ...list(
      'Would change it',
      advice.margins.map((margin) => words.margins(margin, say, words.questions(say))),
    ),
    ...list(
      'Ready when',
      needsOf(job.site, zone.answers, advice, job.own).needs.map(
        (need) =>
          `${checks[need.check].name} (${need.level}${need.certain ? '' : ', if'}): ${[needSentences[need.why.rule](need.why, say), ...need.locate.map((sign) => readyPage.locate[sign])].join(' ')}`,
      ),
    ),
  ];
}

/** What one person breathes, hears and feels on a day. */
function exposureOf({ id, mask, noise, vibration }: SafetyOfWorker, region: 'us', say: Say) {
  const { part, standing, typical } = noise.limits[noiseAim[region]];
  const percent = { ...part, low: Math.round(100 * part.low), high: Math.round(100 * part.high) };
  const points = vibration.points;
  const shaken = { ...points, low: Math.round(points.low), high: Math.round(points.high) };
  return [
    `person ${id}: mask factor ${String(mask.factor)}${mask.hood ? ' with a hood' : ''}`,
    `noise ${boundsWords(say, percent, '%')} of the limit, usually ${say.number(Math.round(100 * typical.part))}% (${standingWords[standing]})`,
    `vibration ${boundsWords(say, shaken, 'points')}, usually ${say.number(Math.round(vibration.typical.points))} (action value ${standingWords[vibration.standing.action]})`,
  ].join('; ');
}

function exposures(plan: Plan, job: Job, say: Say): string[] {
  const steps = words.steps(say);
  return crewDaysOf(plan, job).shifts.flatMap(({ days: [from, to], steps: done, workers }) => {
    const found = safetyOf({ region: 'us', workers }, job.own);
    const when = `Day ${String(from)}${to > from ? ` to ${String(to)}` : ''} (${done.map((step) => steps[step].name).join(', ')})`;
    if (!found.ok) return [`${when}: cannot be worked out`];
    const busy = found.safety.workers.filter(({ tasks }) => tasks.length);
    return busy.map((worker) => `${when}, ${exposureOf(worker, 'us', say)}`);
  });
}

function ownerBlocks(given: Job, plan: Plan, say: Say, nameOf: (id: string) => string): Block[] {
  const { conclusion, points, notKnown, options } = readForOwner(given, plan);
  const told = (all: typeof notKnown) =>
    all.map((point) =>
      pointSentences[point.id](
        { ...point, ...(point.zones && { zones: point.zones.map(nameOf) }) },
        say,
      ),
    );
  return [
    {
      kind: 'text',
      text: `${conclusionWords[conclusion].name}. ${conclusionWords[conclusion].line}`,
    },
    ...ownerOptionIds.flatMap((id) => [
      ...list(`For: ${ownerPageWords.option[id]}`, told(points[id]?.speaksFor ?? [])),
      ...list(`Against: ${ownerPageWords.option[id]}`, told(points[id]?.against ?? [])),
    ]),
    ...list('Not known yet', told(notKnown)),
    {
      kind: 'table',
      head: ['', ...ownerOptionIds.map((id) => ownerPageWords.optionShort[id])],
      rows: measureIds.map((id) => [
        measureWords[id].name,
        ...ownerOptionIds.map((option) => {
          const taken = options[option];
          return taken ? measureText(id, taken[id], say) : ownerPageWords.notPlanned;
        }),
      ]),
    },
  ];
}

/** Everything the program says of a job, as text that a person of the trade can read through. */
export function toldOf(title: string, given: Job, units: UnitSystem): string {
  const say = formatter(units, given.own);
  const job = drawnJob(given, surveyOf(given));
  const plan = planJob(given, given.own);
  const names = zoneNames(job.zones);
  const nameOf = (id: string) => names[job.zones.findIndex((zone) => zone.id === id)] ?? id;
  const document: TextDocument = {
    title,
    sections: [
      { title: 'The site', blocks: list('Answers', answersIn(siteQuestionIds, job.site, say)) },
      ...job.zones.map((zone) => ({
        title: nameOf(zone.id),
        blocks: zoneBlocks(job, zone, adviseZone(job.site, zone.answers), say),
      })),
      ...planDocument(job, plan, say, { date: 'today', nameOf }).sections.filter(
        ({ title: of, blocks }) => of && of !== planPageWords.cautions.title && blocks.length,
      ),
      { title: 'Exposures', blocks: list('By person', exposures(plan, job, say)) },
      { title: 'For the owner', blocks: ownerBlocks(given, plan, say, nameOf) },
    ],
  };
  return untied(markdownOf(document)).replace(/\\(.)/g, '$1');
}
