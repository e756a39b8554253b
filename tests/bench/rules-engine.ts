import { Engine, type NestedCondition } from 'json-rules-engine';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import {
  asFound,
  clears,
  flat,
  leaves,
  takesOff,
  washingIsEnough,
} from '../every-route/trade-table';
import { depths, loosenesses, type TradeZone } from '../every-route/trade-types';
import { freesBar, isFirmHollow, isFloor, profileLeastOf } from '../every-route/trade-zone';

/** The trade's table of methods as rules of a general-purpose engine, to decide the same zones. */
const ladders = {
  floor: ['pressure-wash', 'grind', 'scarify', 'shotblast', 'break-out'],
  offFloor: ['pressure-wash', 'grind', 'abrasive-blast', 'needle-scale', 'break-out'],
  recess: ['pressure-wash', 'abrasive-blast', 'break-out'],
} as const;
type Method = (typeof ladders)['floor' | 'offFloor'][number];

const heavy = ['thick-coating', 'rubbery-coating'];
const contaminants = ['salt-bloom', 'growth', 'oil', 'thin-coating', ...heavy];
const is = (fact: string, value: unknown): NestedCondition => ({ fact, operator: 'equal', value });

/** What a method asks of a zone, its profile apart. */
function conditions(method: Method): NestedCondition[] {
  const removal: NestedCondition[] = loosenesses.map((state) => ({
    all: [
      is('looseness', state),
      { fact: 'depth', operator: 'lessThan', value: clears[method][state] },
    ],
  }));
  const all: NestedCondition[] = [{ any: removal }];
  for (const each of contaminants) {
    if ((takesOff[method] as readonly string[]).includes(each)) continue;
    const none: NestedCondition = { fact: 'dirt', operator: 'doesNotContain', value: each };
    // Off floors a heavy coating is scraped off first, yet washing alone may not follow.
    const scraped = heavy.includes(each) && method !== 'pressure-wash';
    all.push(scraped ? { any: [none, is('floor', false)] } : none);
  }
  if (flat.includes(method))
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
  for (const method of new Set<Method>([...ladders.floor, ...ladders.offFloor])) {
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
    if (method === 'pressure-wash' || method === 'grind')
      engine.addRule({
        conditions: { all: [...asked, { not: profile }] },
        event: { type: `${method}:profile-only` },
      });
  }
  return engine;
}

/** The method the engine's rules lead to, on the ladder of the place. */
export async function decide(engine: Engine, site: SettledSite, zone: SettledZone) {
  if (freesBar(zone as TradeZone)) return 'break-out';
  const recess = isFirmHollow(zone as TradeZone);
  // In a recess a heavy coating is scraped off, as off floors.
  const floor = isFloor(site) && !recess;
  const { events } = await engine.run({
    floor,
    looseness: zone.looseness,
    depth: depths.indexOf(zone.depth),
    dirt: [...zone.contamination],
    heavy: zone.contamination.some((each) => heavy.includes(each)),
    low: zone.texture === 'pitted',
    opened: !washingIsEnough(zone as TradeZone),
    least: profileLeastOf(zone as TradeZone) ?? 0,
    found: asFound[zone.texture][0],
  });
  const fit = new Set(events.map(({ type }) => type));
  const ladder = recess ? ladders.recess : floor ? ladders.floor : ladders.offFloor;
  const first = ladder.find((method) => fit.has(method));
  const profileOnly = fit.has('pressure-wash:profile-only') || fit.has('grind:profile-only');
  const openCracks = zone.cracks === 'open' || zone.cracks === 'crumbling';
  const spared = first === 'scarify' && (profileOnly || openCracks) && fit.has('shotblast');
  return spared ? 'shotblast' : first;
}
