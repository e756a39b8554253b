import Engine from 'publicodes';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { clears, leaves } from '../every-route/trade-table';
import { contaminants, loosenesses } from '../every-route/trade-types';
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

/** The table in a language of rules; its own words are French. */
type Condition = string | Record<string, unknown>;
const all = (list: readonly Condition[]) => ({ 'toutes ces conditions': list });
const any = (list: readonly Condition[]) => ({ 'une de ces conditions': list });
/** Names of rules are words without a hyphen. */
const named = (id: string) => id.replaceAll('-', ' ').replace(':', ' ');
const no = (fact: string) => `${fact} = non`;

/** What a method asks of a zone, its profile apart. */
function conditions(method: Method): Condition[] {
  const list: Condition[] = [
    any(
      loosenesses.map((state, place) =>
        all([`loose = ${place}`, `depth < ${clears[method][state]}`]),
      ),
    ),
  ];
  for (const each of dirtLeftBy(method)) {
    const scraped = heavy.includes(each) && method !== 'pressure-wash';
    list.push(scraped ? any([no(named(each)), no('floor')]) : no(named(each)));
  }
  if (ridesOver(method))
    list.push(any([no('low'), ...(method === 'scarify' ? [all(['floor', 'heavy'])] : [])]));
  return list;
}

export function buildLanguage() {
  const rules: Record<string, unknown> = {
    ...Object.fromEntries(
      ['floor', 'heavy', 'low', 'opened', ...contaminants.map(named)].map((name) => [
        name,
        { 'par défaut': 'non' },
      ]),
    ),
    ...Object.fromEntries(
      ['loose', 'depth', 'least', 'found'].map((name) => [name, { 'par défaut': 0 }]),
    ),
  };
  for (const method of methods) {
    const profile =
      method === 'pressure-wash'
        ? all(['least <= found', no('opened')])
        : all([`least <= ${leaves[method][1]}`]);
    rules[`${named(method)} profile`] = profile;
    rules[`${named(method)} work`] = all(conditions(method));
    rules[named(method)] = all([`${named(method)} work`, `${named(method)} profile`]);
    if (profileTold.includes(method))
      rules[named(`${method}:profile-only`)] = all([
        `${named(method)} work`,
        no(`${named(method)} profile`),
      ]);
  }
  return new Engine(rules as never);
}
const outcomes = [...methods, ...profileTold.map((method) => `${method}:profile-only`)];

/** The method its rules lead to. */
export function decideByLanguage(
  engine: ReturnType<typeof buildLanguage>,
  site: SettledSite,
  zone: SettledZone,
) {
  if (needsNoRule(zone)) return 'break-out';
  const { dirt, ...facts } = factsOf(site, zone);
  const yes = (value: boolean | number) =>
    typeof value === 'number' ? value : value ? 'oui' : 'non';
  engine.setSituation({
    ...Object.fromEntries(Object.entries(facts).map(([name, value]) => [name, yes(value)])),
    ...Object.fromEntries(contaminants.map((each) => [named(each), yes(dirt.includes(each))])),
  } as never);
  const fit = new Set(outcomes.filter((id) => engine.evaluate(named(id) as never).nodeValue));
  return methodOf(fit, site, zone);
}
