import { testIds, type TestId } from '$lib/advice/types';
import { holdRules } from '$lib/advice/rules';
import { checkIds, type CheckId } from '$lib/answers/readiness-record';
import { choicesOf, questionIds, type Finish, type QuestionId } from '$lib/answers/questions';
import {
  hazardIds,
  methodIds,
  stepIds,
  type HazardId,
  type MethodId,
  type StepId,
} from '$shared/methods';

/** What the site can name to a reader, by kind, and the type of its ids. */
export interface Explained {
  readonly method: MethodId;
  readonly step: StepId;
  readonly hazard: HazardId;
  readonly question: QuestionId;
  readonly finish: Finish;
  readonly test: TestId;
  readonly check: CheckId;
  readonly hold: (typeof holdRules)[number];
}
export type Kind = keyof Explained;

/** Every id that needs an explainer. A step that is a method is explained by the method's page. */
export const explained: { readonly [K in Kind]: readonly Explained[K][] } = {
  method: methodIds,
  step: stepIds.filter((id) => !(methodIds as readonly string[]).includes(id)),
  hazard: hazardIds,
  question: questionIds,
  finish: choicesOf('finish'),
  test: testIds,
  check: checkIds,
  hold: holdRules,
};
export const kinds = Object.keys(explained) as Kind[];

/** The parts of the library, in the order the index shows them; their titles are words. */
export const groups = [
  'start',
  'method',
  'question',
  'test',
  'step',
  'steel',
  'hazard',
  'check',
  'finish',
  'stop',
] as const;
export type Group = (typeof groups)[number];
