import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import type { SettledSite, SettledZone } from '$lib/advice/types';
import { choicesOf } from '$lib/answers/questions';
import { asFound, flat, takesOff, washingIsEnough } from '../every-route/trade-table';
import { contaminants, depths, loosenesses, type TradeZone } from '../every-route/trade-types';
import { freesBar, isFirmHollow, isFloor, profileLeastOf } from '../every-route/trade-zone';

/** The decisions that are compared: the trade's table of methods, as any engine of rules can hold it. */
export const ladders = {
  floor: ['pressure-wash', 'grind', 'scarify', 'shotblast', 'break-out'],
  offFloor: ['pressure-wash', 'grind', 'abrasive-blast', 'needle-scale', 'break-out'],
  recess: ['pressure-wash', 'abrasive-blast', 'break-out'],
} as const;
export type Method = (typeof ladders)['floor' | 'offFloor'][number];
export const methods = [...new Set<Method>([...ladders.floor, ...ladders.offFloor])];
export const heavy = ['thick-coating', 'rubbery-coating'];
/** For these alone it is told apart whether nothing but the profile is lacking. */
export const profileTold: readonly Method[] = ['pressure-wash', 'grind'];
export const dirtLeftBy = (method: Method) =>
  contaminants.filter((each) => !takesOff[method].includes(each));
export const ridesOver = (method: Method) => flat.includes(method);

/** What the rules are asked about a zone. */
export interface Facts {
  readonly floor: boolean;
  /** Place in `loosenesses` */
  readonly loose: number;
  /** Place in `depths` */
  readonly depth: number;
  readonly dirt: readonly string[];
  readonly heavy: boolean;
  readonly low: boolean;
  readonly opened: boolean;
  /** Least CSP asked for, and found */
  readonly least: number;
  readonly found: number;
}

export function factsOf(site: SettledSite, zone: SettledZone): Facts {
  const recess = isFirmHollow(zone as TradeZone);
  return {
    // In a recess a heavy coating is scraped off, as off floors.
    floor: isFloor(site) && !recess,
    loose: loosenesses.indexOf(zone.looseness),
    depth: depths.indexOf(zone.depth),
    dirt: zone.contamination,
    heavy: zone.contamination.some((each) => heavy.includes(each)),
    low: zone.texture === 'pitted',
    opened: !washingIsEnough(zone as TradeZone),
    least: profileLeastOf(zone as TradeZone) ?? 0,
    found: asFound[zone.texture][0],
  };
}

/** No rule is asked where a bar has to be freed. */
export const needsNoRule = (zone: SettledZone): boolean => freesBar(zone as TradeZone);

/** The method the rules lead to, on the ladder of the place. `fit` has `METHOD`, or `METHOD:profile-only`. */
export function methodOf(fit: ReadonlySet<string>, site: SettledSite, zone: SettledZone) {
  const recess = isFirmHollow(zone as TradeZone);
  const ladder = recess ? ladders.recess : isFloor(site) ? ladders.floor : ladders.offFloor;
  const first = ladder.find((method) => fit.has(method));
  const profileOnly = profileTold.some((method) => fit.has(`${method}:profile-only`));
  const openCracks = zone.cracks === 'open' || zone.cracks === 'crumbling';
  const spared = first === 'scarify' && (profileOnly || openCracks) && fit.has('shotblast');
  return spared ? 'shotblast' : first;
}

export interface Case {
  readonly site: SettledSite;
  readonly zone: SettledZone;
}

/** So many zones, always the same. */
export function anyCases(count: number): readonly Case[] {
  const dice = mersenne(20_261_125);
  const below = (most: number): number => Math.floor(uniformFloat64(dice) * most);
  const one = <T>(list: readonly T[]): T => list[below(list.length)] as T;
  return Array.from({ length: count }, () => ({
    site: {
      element: one(choicesOf('element')),
      setting: one(choicesOf('setting')),
      salts: one(choicesOf('salts')),
      freezeThaw: one(choicesOf('freezeThaw')),
      thickness: 'unknown',
      warnings: [],
    },
    zone: {
      depth: one(choicesOf('depth')),
      looseness: one(choicesOf('looseness')),
      contamination: choicesOf('contamination').filter(() => below(4) === 0),
      texture: one(choicesOf('texture')),
      cracks: one(choicesOf('cracks')),
      crackLength: 'unknown',
      steel: one(choicesOf('steel')),
      barLoss: one(choicesOf('barLoss')),
      finish: one(choicesOf('finish')),
      area: 10,
    } as unknown as SettledZone,
  }));
}
