import type { RuleId } from '$lib/advice/rules';
import type { Plan } from './plan';

/** Steps by which a coating comes off, whole or as dust. */
const comesOff: readonly RuleId[] = [
  'coating-comes-off',
  'coating-by-scraper',
  'coating-debris-apart',
];

/** Whether a coating comes off somewhere: it is bagged apart, and is in none of the amounts. */
export const coatingComesOff = ({ zones }: Pick<Plan, 'zones'>): boolean =>
  zones.some(({ advice }) =>
    advice.steps.some(({ why }) => why.some(({ rule }) => comesOff.includes(rule))),
  );
