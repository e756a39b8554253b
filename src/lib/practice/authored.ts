import { bandOf } from '$lib/answers/depth';
import {
  choicesOf,
  followUps,
  questionIds,
  questions,
  type QuestionId,
} from '$lib/answers/questions';
import { ruleIds } from '$lib/advice/rules';
import inside from '$content/practice/cracks-and-steel.json';
import floors from '$content/practice/floors.json';
import standing from '$content/practice/stops.json';
import upright from '$content/practice/steps-and-walls.json';
import { hazardIds, methodIds } from '$shared/methods';
import { adviceOn, callOf, calls, senses, type AuthoredCase } from './case';
import { nonsenseIn } from './nonsense';

type Written = Record<string, unknown> & { readonly zone: Record<string, unknown> };

/** A case as it is written: a depth is a number of mm, or the band where there is nothing to measure. */
function read(written: Written): AuthoredCase {
  const { depth } = written.zone;
  const { thickness } = written.site as { thickness: number | 'unknown' };
  const zone = {
    ...written.zone,
    ...(typeof depth === 'number' && { depth: bandOf(depth, thickness), depthMm: depth }),
  };
  return { ...written, zone } as unknown as AuthoredCase;
}

/** Every authored case, all set in the invented town of Marrow Quay. */
export const authored: readonly AuthoredCase[] = [floors, upright, inside, standing].flatMap(
  (file) => (file.cases as unknown as Written[]).map(read),
);

/** Everything wrong with the authored cases, a line each; empty when they may be built. */
export function authoredFaults(cases: readonly AuthoredCase[] = authored): string[] {
  const faults: string[] = [];
  const ids = new Set<string>();
  for (const one of cases) {
    const fault = (text: string) => faults.push(`${one.id}: ${text}`);
    if (!/^[a-z][a-z-]{2,39}$/.test(one.id)) fault('an id of lower-case letters and dashes');
    if (ids.has(one.id)) fault('the id is used twice');
    ids.add(one.id);
    const shape = shapeFaults(one);
    for (const text of shape.length ? shape : meaningFaults(one)) fault(text);
  }
  return faults;
}

/** Whether every id in a case is one this site knows. */
function shapeFaults({
  site,
  zone,
  told,
  senior,
  intended,
  cleared,
  ...rest
}: AuthoredCase): string[] {
  const faults: string[] = [];
  const known = (id: QuestionId, value: unknown) =>
    (choicesOf(id) as readonly unknown[]).includes(value);
  for (const [id, value] of Object.entries({ ...site, ...zone })) {
    if (id === 'depthMm') continue;
    // The grade a sheet asks for stands as its number, as in a job file.
    if (id === 'makerProfile') {
      if (!known(id, `csp-${String(value)}`))
        faults.push(`${id}: unknown value ${JSON.stringify(value)}`);
      continue;
    }
    const question = questions[id as QuestionId] as (typeof questions)[QuestionId] | undefined;
    const right =
      question &&
      (question.kind === 'number'
        ? typeof value === 'number' || value === 'unknown'
        : [value].flat().every((each) => known(id as QuestionId, each)));
    if (!right) faults.push(`${id}: unknown value ${JSON.stringify(value)}`);
  }
  const optional: readonly QuestionId[] = [...followUps, 'makerProfile', 'borderLength'];
  for (const id of questionIds)
    if (!optional.includes(id) && !(id in site) && !(id in zone)) faults.push(`${id}: missing`);
  for (const { by, about, text } of told) {
    if (!senses.includes(by)) faults.push(`told: unknown sense "${by}"`);
    for (const id of about) if (!questionIds.includes(id)) faults.push(`told: unknown "${id}"`);
    if (/\d/.test(text)) faults.push(`told: a bare number in "${text}"`);
  }
  if (typeof senior !== 'string' || senior.length < 40)
    faults.push('senior: expected what somebody long in the trade would do, and why');
  if (!calls.includes(intended.call)) faults.push(`call: unknown "${intended.call}"`);
  if (!ruleIds.includes(intended.reason)) faults.push(`reason: unknown "${intended.reason}"`);
  for (const id of cleared ?? [])
    if (!hazardIds.includes(id)) faults.push(`cleared: unknown "${id}"`);
  const { trap } = intended;
  if (trap && !(methodIds.includes(trap.method) && ruleIds.includes(trap.rule)))
    faults.push(`trap: unknown "${trap.method}" or "${trap.rule}"`);
  const extra = Object.keys(rest).filter((key) => key !== 'id' && key !== 'title');
  if (extra.length) faults.push(`unknown field "${extra[0]}"`);
  return faults;
}

/** Whether the engine comes to what the author meant. */
function meaningFaults(one: AuthoredCase): string[] {
  const faults: string[] = [];
  const advice = adviceOn(one);
  const { verdict, call, reason, trap } = one.intended;
  if (advice.verdict !== verdict) faults.push(`verdict: meant ${verdict}, is ${advice.verdict}`);
  if (callOf(advice) !== call) faults.push(`call: meant ${call}, is ${callOf(advice)}`);
  const reasons = [...advice.reasons, ...advice.steps.flatMap(({ why }) => why)];
  if (!reasons.some(({ rule }) => rule === reason)) faults.push(`reason: ${reason} is not given`);
  const against = advice.rejections.find(({ method }) => method === trap?.method);
  if (trap && against?.rule !== trap.rule)
    faults.push(`trap: ${trap.method} falls by ${against?.rule}, not ${trap.rule}`);
  for (const name of nonsenseIn(one.site, one.zone)) faults.push(`against: ${name}`);
  return faults;
}
