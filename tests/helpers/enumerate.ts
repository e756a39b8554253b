import type { Answers } from '$lib/answers/answers';
import type { TriedAnswers } from '$lib/answers/trial-record';
import { bandOf } from '$lib/answers/depth';
import { choicesOf, questionIds, type Choice, type QuestionId } from '$lib/answers/questions';
import type { SettledSite, SettledZone } from '$lib/advice/types';

/** A bar shows, so that what it has lost can be measured. */
const bare: readonly string[] = ['exposed', 'corroded'];

/** Plain enumeration of every completion of open answers: slow, obvious, and the measure of the quick way. */
export function* completions(
  answers: Answers,
): Generator<{ site: SettledSite; zone: SettledZone }> {
  const thickness = answers.thickness ?? 'unknown';
  const one = <Q extends QuestionId>(id: Q): readonly Choice<Q>[] =>
    (answers[id] as readonly Choice<Q>[] | undefined) ?? choicesOf(id);
  const lists = {
    element: one('element'),
    setting: one('setting'),
    salts: one('salts'),
    freezeThaw: one('freezeThaw'),
    warnings: sets('warnings', answers.warnings),
    depth: typeof answers.depth === 'number' ? [answers.depth] : one('depth'),
    looseness: one('looseness'),
    contamination: sets('contamination', answers.contamination),
    texture: one('texture'),
    cracks: one('cracks'),
    finish: one('finish'),
  };
  for (const picked of product(lists) as Generator<Record<string, never>>) {
    const { element, setting, salts, freezeThaw, warnings, depth, ...rest } = picked as Record<
      string,
      unknown
    >;
    const site = {
      element,
      setting,
      salts,
      freezeThaw,
      warnings,
      thickness,
    } as unknown as SettledSite;
    const deep =
      typeof depth === 'number' ? { depth: bandOf(depth, thickness), depthMm: depth } : { depth };
    for (const steel of one('steel'))
      for (const barLoss of bare.includes(steel) && answers.barLoss ? answers.barLoss : [undefined])
        yield {
          site,
          zone: {
            ...rest,
            ...deep,
            steel,
            ...(barLoss && { barLoss }),
            ...said(answers),
          } as unknown as SettledZone,
        };
  }
}

/** What is said in numbers or by the data sheet: never open. The roughest of several grades counts. */
function said(answers: Answers & TriedAnswers) {
  const {
    area = 'unknown',
    borderLength,
    barCover,
    makerProfile,
    makerMoisture,
    triedOut,
    stopped,
  } = answers;
  const grades = makerProfile?.map((grade) => Number(grade.replace('csp-', ''))) ?? [NaN];
  // Who has no sheet at hand cannot have read the moisture in it.
  const sheetless = makerProfile?.every((grade) => grade === 'no-sheet');
  return {
    area,
    ...(triedOut && { triedOut }),
    ...(stopped && { stopped }),
    ...(typeof borderLength === 'number' && { border: borderLength }),
    ...(typeof barCover === 'number' && { barCover }),
    ...(grades.every((grade) => grade > 0) && { makerProfile: Math.max(...grades) }),
    ...(!sheetless &&
      makerMoisture?.[0] &&
      makerMoisture[0] !== 'no-sheet' && { makerMoisture: makerMoisture[0] }),
  };
}

export function sets<Q extends 'warnings' | 'contamination'>(
  id: Q,
  answer: { yes: readonly string[]; maybe: readonly string[] } | undefined,
): string[][] {
  const { yes, maybe } = answer ?? { yes: [], maybe: choicesOf(id) as readonly string[] };
  return Array.from({ length: 1 << maybe.length }, (_, bits) => [
    ...yes,
    ...maybe.filter((_each, index) => bits & (1 << index)),
  ]);
}

function* product(lists: Record<string, readonly unknown[]>): Generator<Record<string, unknown>> {
  const [first, ...others] = Object.entries(lists);
  if (!first) return yield {};
  for (const rest of product(Object.fromEntries(others)))
    for (const value of first[1]) yield { [first[0]]: value, ...rest };
}

/** Without an answer, these leave nothing open: nobody measured, or there is no sheet. */
const neverOpen: ReadonlySet<QuestionId> = new Set(['barLoss', 'makerProfile', 'makerMoisture']);

/** How many completions the answers have. */
export function countCompletions(answers: Answers): number {
  let count = 1;
  for (const id of questionIds) {
    const answer = answers[id];
    if (id === 'warnings' || id === 'contamination')
      count *=
        1 << ((answer as { maybe: readonly string[] } | undefined)?.maybe ?? choicesOf(id)).length;
    else if (Array.isArray(answer)) count *= answer.length;
    else if (answer === undefined)
      count *= Math.max(1, neverOpen.has(id) ? 1 : choicesOf(id).length);
  }
  return count;
}
