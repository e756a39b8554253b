import { whomToCall, type Called } from '$lib/advice/owner-may';
import { saltInDoubt } from '$lib/advice/salt-measured';
import type { Job } from '$lib/answers/job';
import type { Plan } from '$lib/plan/plan';
import type { Say } from '$lib/words/types';
import { verdictWords } from '$words/verdicts';
import { planPageWords as words } from './page';

/** Whether salt measured at the steel of a zone is for an engineer to judge. */
const saltAsksEngineer = ({ site, zones, own }: Job, id: string): boolean =>
  zones.some((zone) => zone.id === id && saltInDoubt(site, zone, own));

/** Whether its work goes into nothing, so that no cable has to be marked for it. */
const isUncut = ({ advice }: Plan['zones'][number]): boolean =>
  advice.steps.some(({ why }) => why.some(({ rule }) => rule === 'nothing-cut'));

/**
 * Who has to come before day 1, and for which zones; what the crew measures for itself stands apart.
 * That nobody has to come is said too: no line could mean that nobody has looked.
 */
export function callLines(
  { drawn, zones }: Pick<Plan, 'drawn' | 'zones'>,
  nameOf: (zone: string) => string,
  say: Say,
): readonly string[] {
  const asked = zones.flatMap(({ id, method, advice, holds, possibleHolds }) =>
    whomToCall(drawn.site, {
      holds,
      possibleHolds,
      steps: advice.steps,
      methods: [method],
    })
      .concat(saltAsksEngineer(drawn, id) ? ['engineer'] : [])
      .map((who) => ({ who, name: nameOf(id) })),
  );
  const namesOf = (who: Called) => asked.filter((each) => each.who === who).map(({ name }) => name);
  const called = [...new Set(asked.map(({ who }) => who))].filter((who) => who !== 'crew');
  const itself = namesOf('crew');
  return [
    called.length
      ? `${words.callFirst}: ${called
          .map((who) => {
            const { name } = verdictWords.who[who];
            const names = namesOf(who);
            return names.length < zones.length ? `${name} (${say.list(names)})` : name;
          })
          .join('; ')}.`
      : words.callNobody,
    // Whoever locates them marks them: where nobody is called for it, it still has to be had.
    ...(called.includes('locator') || zones.every(isUncut) ? [] : [words.markAhead]),
    ...(itself.length ? [words.measureFirst(say.list(itself))] : []),
  ];
}
