import { adviseZone } from '$lib/advice/advise';
import type { ZoneAdvice } from '$lib/advice/zone-advice';
import type { Job, Zone } from '$lib/answers/job';
import { parseJob } from '$lib/keep/job-file';
import { planJob, type Plan } from '$lib/plan/plan';
import { needsOf } from '$lib/readiness/open-needs';
import { problemSentence } from '$words/keep';
import type { Case, PlanExpectation, ZoneExpectation } from './case';

const list = (value: string | readonly string[]): readonly string[] => [value].flat();
const said = (ids: readonly (string | null)[]) => ids.join(', ') || 'nothing';

/** What the program says otherwise than the case, a line each; empty where they agree. */
export function disagreements({ site, zones, expect }: Case): string[] {
  const read = parseJob({ format: 'down-to-sound.job', version: 1, site, zones });
  if (!read.ok) return [`cannot be read: ${problemSentence(read.problem)}`];
  const job = read.value;
  const plan = planJob(job);
  return [
    ...job.zones.flatMap((zone) => {
      const wanted = expect.zones[zone.id];
      return wanted ? ofZone(job, zone, plan, wanted).map((line) => `${zone.id}: ${line}`) : [];
    }),
    ...Object.keys(expect.zones)
      .filter((id) => !job.zones.some((zone) => zone.id === id))
      .map((id) => `${id}: no such zone`),
    ...(expect.plan ? ofPlan(plan, expect.plan).map((line) => `plan: ${line}`) : []),
  ];
}

function ofZone(job: Job, zone: Zone, plan: Plan, wanted: ZoneExpectation): string[] {
  const advice = adviseZone(job.site, zone.answers);
  const wrong: string[] = [];
  const { verdict, methods } = wanted;
  if (verdict && !list(verdict).includes(advice.verdict))
    wrong.push(
      `verdict ${advice.verdict} (${said(advice.holds.map(({ rule }) => rule))}), expected ${said(list(verdict))}`,
    );
  const found = advice.outcomes.map(({ method }) => method);
  if (methods && !found.every((method) => method !== null && methods.includes(method)))
    wrong.push(`method ${said(found)}, expected ${said(methods)}`);
  return [
    ...wrong,
    ...new Set(advice.outcomes.flatMap(({ example }) => ofSteps(example.steps, wanted))),
    ...ofHolds(advice, wanted),
    ...ofTarget(advice, wanted),
    ...ofLists(advice, job, zone, wanted),
    ...ofTools(plan, wanted),
  ];
}

function ofSteps(
  steps: readonly { readonly id: string }[],
  { stepsInOrder = [], stepsAny = [], stepsAbsent = [] }: ZoneExpectation,
): string[] {
  const ids = steps.map(({ id }) => id);
  const wrong: string[] = [];
  let from = 0;
  for (const step of stepsInOrder) {
    const at = ids.findIndex((id, index) => index >= from && list(step).includes(id));
    if (at === -1) {
      wrong.push(`step ${list(step).join(' or ')} missing or out of order in ${said(ids)}`);
      break;
    }
    from = at + 1;
  }
  if (stepsAny.length && !stepsAny.some((id) => ids.includes(id)))
    wrong.push(`none of ${said(stepsAny)} in ${said(ids)}`);
  const there = stepsAbsent.filter((id) => ids.includes(id));
  if (there.length) wrong.push(`step ${said(there)} does not belong here`);
  return wrong;
}

function ofHolds(advice: ZoneAdvice, { holds = [], noHolds }: ZoneExpectation): string[] {
  const found = [...advice.holds, ...advice.possibleHolds];
  const wrong: string[] = [];
  if (noHolds && found.length) wrong.push(`needless hold: ${said(found.map(({ rule }) => rule))}`);
  for (const { verdict, who } of holds)
    if (
      !advice.holds.some(
        (hold) => list(verdict).includes(hold.verdict) && (!who || who.includes(hold.who)),
      )
    )
      wrong.push(`no hold ${said(list(verdict))}${who ? ` for ${said(who)}` : ''}`);
  return wrong;
}

function ofTarget({ target }: ZoneAdvice, { target: wanted = {} }: ZoneExpectation): string[] {
  const wrong: string[] = [];
  const { profileLeast, moisture, bruisedSkin, bruisedSkinNot, behindBarLeast } = wanted;
  if (profileLeast !== undefined && target.profile?.[0] !== profileLeast)
    wrong.push(`least profile ${target.profile?.[0] ?? 'none'}, expected ${profileLeast}`);
  if (moisture && target.moisture !== moisture)
    wrong.push(`moisture ${target.moisture}, expected ${moisture}`);
  if (bruisedSkin && target.bruisedSkin !== bruisedSkin)
    wrong.push(`bruised skin ${target.bruisedSkin}, expected ${bruisedSkin}`);
  if (bruisedSkinNot && target.bruisedSkin === bruisedSkinNot)
    wrong.push(`bruised skin must not be ${bruisedSkinNot}`);
  if (behindBarLeast !== undefined && !((target.behindBar ?? 0) >= behindBarLeast))
    wrong.push(`behind the bar ${target.behindBar ?? 'nothing'}, expected ${behindBarLeast}`);
  return wrong;
}

function ofLists(advice: ZoneAdvice, job: Job, zone: Zone, wanted: ZoneExpectation): string[] {
  const missing = (what: string, ids: readonly string[] = [], has: (id: string) => boolean) =>
    ids.filter((id) => !has(id)).map((id) => `${what} ${id} missing`);
  const needed = () => needsOf(job.site, zone.answers, advice).needs;
  return [
    ...missing('caution', wanted.cautions, (id) =>
      advice.cautions.some((hazard) =>
        id === 'falls' ? hazard.startsWith('fall') : hazard === id,
      ),
    ),
    ...missing('test', wanted.findOut, (id) => advice.findOut.some(({ test }) => test === id)),
    ...advice.findOut
      .filter(({ test }) => wanted.findOutAbsent?.includes(test))
      .map(({ test }) => `test ${test} cannot tell`),
    ...(wanted.findOutFirst && advice.findOut[0]?.test !== wanted.findOutFirst
      ? [`test ${advice.findOut[0]?.test ?? 'none'} first, expected ${wanted.findOutFirst}`]
      : []),
    ...(wanted.nowAtMost && advice.beginning
      ? advice.beginning.now
          .filter((step) => !wanted.nowAtMost?.includes(step))
          .map((step) => `${step} may not be done yet`)
      : []),
    ...missing('check', wanted.checks, (id) => needed().some(({ check }) => check === id)),
    ...(wanted.wouldChange ?? [])
      .filter(
        (change) =>
          !advice.margins.some(
            ({ question, method }) => question === change.question && method === change.method,
          ),
      )
      .map(({ question, method }) => `does not say that ${question} would make it ${method}`),
  ];
}

function ofTools(plan: Plan, { tools = {} }: ZoneExpectation): string[] {
  return Object.entries(tools).flatMap(([step, { has = [], absent = [] }]) => {
    const found: readonly string[] = plan.steps.find(({ id }) => id === step)?.tools ?? [];
    return [
      ...has.filter((id) => !found.includes(id)).map((id) => `${step} without ${id}`),
      ...absent.filter((id) => found.includes(id)).map((id) => `${step} with ${id}`),
    ];
  });
}

function ofPlan(plan: Plan, wanted: PlanExpectation): string[] {
  const ids: readonly string[] = plan.steps.map(({ id }) => id);
  const wrong: string[] = [];
  for (const [before, after] of wanted.order ?? []) {
    const [one, other] = [ids.indexOf(before), ids.indexOf(after)];
    if (one === -1 || other === -1)
      wrong.push(`${one === -1 ? before : after} missing in ${said(ids)}`);
    else if (one > other) wrong.push(`${before} comes after ${after}`);
  }
  for (const id of wanted.absent ?? [])
    if (ids.includes(id)) wrong.push(`${id} does not belong here`);
  for (const [step, zones] of Object.entries(wanted.only ?? {})) {
    const found = plan.steps.find(({ id }) => id === step)?.zones ?? [];
    if (found.toSorted().join() !== [...zones].sort().join())
      wrong.push(`${step} in ${said(found)}, expected ${said(zones)}`);
  }
  const held = plan.held.map(({ id }) => id);
  if (wanted.held && held.toSorted().join() !== [...wanted.held].sort().join())
    wrong.push(`held ${said(held)}, expected ${said(wanted.held)}`);
  for (const [zone, instead] of Object.entries(wanted.instead ?? {})) {
    const found = plan.substitutes.find((each) => each.zone === zone);
    if (!found || found.instead !== instead)
      wrong.push(`${zone}: instead ${found?.instead ?? 'nothing'}, expected ${instead ?? 'hire'}`);
  }
  return wrong;
}
