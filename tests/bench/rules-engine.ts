import { Engine, type NestedCondition } from 'json-rules-engine';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { clears, leaves } from '../every-route/trade-table';
import { loosenesses } from '../every-route/trade-types';
import {
  dirtLeftBy,
  factsOf,
  heavy,
  methodOf,
  methods,
  needsNoRule,
  profileTold,
  ridesOver,
  type Method,
} from './decisions';

/** The table as rules of a general-purpose engine of rules. */
const is = (fact: string, value: unknown): NestedCondition => ({ fact, operator: 'equal', value });

/** What a method asks of a zone, its profile apart. */
function conditions(method: Method): NestedCondition[] {
  const removal: NestedCondition[] = loosenesses.map((state, place) => ({
    all: [
      is('loose', place),
      { fact: 'depth', operator: 'lessThan', value: clears[method][state] },
    ],
  }));
  const all: NestedCondition[] = [{ any: removal }];
  for (const each of dirtLeftBy(method)) {
    const none: NestedCondition = { fact: 'dirt', operator: 'doesNotContain', value: each };
    // Off floors a heavy coating is scraped off first, yet washing alone may not follow.
    const scraped = heavy.includes(each) && method !== 'pressure-wash';
    all.push(scraped ? { any: [none, is('floor', false)] } : none);
  }
  if (ridesOver(method))
    all.push({
      any: [
        is('low', false),
        ...(method === 'scarify' ? [{ all: [is('floor', true), is('heavy', true)] }] : []),
      ],
    });
  return all;
}

/** One rule a method that asks for everything, and one for each gentle method that lacks the profile only. */
export function buildEngine(): Engine {
  const engine = new Engine();
  for (const method of methods) {
    const profile: NestedCondition =
      method === 'pressure-wash'
        ? {
            all: [
              { fact: 'least', operator: 'lessThanInclusive', value: { fact: 'found' } },
              is('opened', false),
            ],
          }
        : { fact: 'least', operator: 'lessThanInclusive', value: leaves[method][1] };
    const asked = conditions(method);
    engine.addRule({ conditions: { all: [...asked, profile] }, event: { type: method } });
    if (profileTold.includes(method))
      engine.addRule({
        conditions: { all: [...asked, { not: profile }] },
        event: { type: `${method}:profile-only` },
      });
  }
  return engine;
}

/** The method the engine's rules lead to. */
export async function decide(engine: Engine, site: SettledSite, zone: SettledZone) {
  if (needsNoRule(zone)) return 'break-out';
  const { events } = await engine.run({ ...factsOf(site, zone) });
  return methodOf(new Set(events.map(({ type }) => type)), site, zone);
}
