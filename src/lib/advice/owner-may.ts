import { warnedOf, type SiteAnswers, type ZoneAnswers } from '$lib/answers/answers';
import type { MethodId } from '$shared/methods';
import { cutsIn, goesOverAll } from './hidden-lines';
import { clearOf, keepClear, type KeptClear } from './keep-clear';
import { limitsHere, type LimitId } from './owner-limits';
import { isSpot } from './place';
import type { Hold } from './types';
import type { ZoneAdvice } from './zone-advice';

/** What an owner may do without a crew, first things first. Source: common practice, no published source. */
export const mayIds = [
  'keep-off',
  'keep-from-under',
  'measure',
  'tap',
  'clear',
  'growth',
  'degrease',
  'wash',
  'grind-spot',
  'lead-water-away',
  'keep-damp',
  'seal',
] as const;
export type MayId = (typeof mayIds)[number];

/** Who may do the main work. */
export type Doer = 'owner' | 'owner-with-hood' | 'crew' | 'specialist';

type Advised = Pick<
  ZoneAdvice,
  'verdict' | 'method' | 'methods' | 'steps' | 'cautions' | 'holds' | 'possibleHolds'
>;

/** Work that has one of these in it is a crew's, however gentle the method. */
const crewOnly: readonly LimitId[] = [
  'edges',
  'overhead',
  'steel',
  'break-out',
  'blasting',
  'old-coating',
];

/**
 * Who may do the main work of settled advice; null while there is none to do.
 * An owner washes, and grinds no more than a spot, and neither where a limit of theirs is in it.
 */
export function doerOf(site: SiteAnswers, zone: ZoneAnswers, advice: Advised): Doer | null {
  const { method } = advice;
  if (!method) return null;
  if (method === 'water-jet') return 'specialist';
  if (limitsHere(site, zone, advice).some((limit) => crewOnly.includes(limit))) return 'crew';
  if (method === 'pressure-wash') return 'owner';
  return method === 'grind' && isSpot({ area: zone.area ?? 'unknown' })
    ? 'owner-with-hood'
    : 'crew';
}

/** Lines that name a method already, by what they leave to others. */
const namedBy: Readonly<Partial<Record<MethodId, LimitId>>> = {
  'break-out': 'break-out',
  shotblast: 'blasting',
  'abrasive-blast': 'blasting',
};

/**
 * The advised method, where it is not for owners and no line of what they leave to others names it;
 * else null.
 */
export function methodLeftToOthers(
  site: SiteAnswers,
  zone: ZoneAnswers,
  advice: Advised,
): MethodId | null {
  const doer = doerOf(site, zone, advice);
  const { method } = advice;
  if (!method || doer === 'owner' || doer === 'owner-with-hood') return null;
  return namedBy[method] ? null : method;
}

/** What an owner may do themselves in this case, in their order. */
export function ownerMay(site: SiteAnswers, zone: ZoneAnswers, advice: Advised): MayId[] {
  const limits = limitsHere(site, zone, advice);
  const doer = doerOf(site, zone, advice);
  const calls = (id: string) => advice.steps.some((step) => step.id === id);
  const firmGround = !limits.includes('edges') && !limits.includes('overhead');
  const stopped = advice.verdict === 'stop';
  const settled = advice.method !== null;
  // What stands before everything else on the page is not told again here.
  const kept: KeptClear | null =
    (stopped || !firmGround) && !keepClear(site, advice) ? clearOf(site) : null;
  // Nobody brushes, scrapes or wets what may hold lead or asbestos.
  const clean = firmGround && !stopped && !limits.includes('old-coating');
  const has = (id: 'growth' | 'oil' | 'salt-bloom') => !!zone.contamination?.yes.includes(id);
  const may: Readonly<Record<MayId, boolean>> = {
    'keep-off': kept === 'keep-off',
    'keep-from-under': kept === 'keep-from-under',
    measure: firmGround && settled,
    // With answers open, the test that decides is told by itself, and what comes after the repair can wait.
    tap: clean && settled,
    clear: !stopped && !keepClear(site, advice),
    growth: clean && has('growth'),
    degrease: clean && has('oil'),
    wash: clean && doer === 'owner',
    'grind-spot': clean && doer === 'owner-with-hood',
    'lead-water-away': firmGround && (has('salt-bloom') || !!site.freezeThaw?.includes('often')),
    'keep-damp': clean && settled && advice.steps.some(({ why }) => why.some(isDampCure)),
    seal: clean && doer === 'owner' && calls('cover') && !!zone.finish?.every(isSealer),
  };
  return mayIds.filter((id) => may[id]);
}

const isDampCure = ({ rule }: { readonly rule: string }) => rule === 'cure-kept-damp';
const isSealer = (finish: string) => finish === 'sealer';

/** Somebody who is called before the work; a jetting crew comes with its own people and machine. */
export type Called = Hold['who'] | 'jetting-crew';

/**
 * Who is called before the work, gravest first: who lifts a hold, who may have to come, where
 * something is cut or broken and cables or pipes may lie there, or they do and a machine goes over
 * them, who marks them, and who jets with water.
 */
export function whomToCall(
  site: SiteAnswers,
  {
    holds,
    possibleHolds,
    steps,
    methods,
  }: Pick<ZoneAdvice, 'holds' | 'possibleHolds' | 'steps' | 'methods'>,
): Called[] {
  const needed = [...holds, ...possibleHolds.filter(({ verdict }) => verdict === 'stop')];
  const does = (is: (id: string) => boolean) => steps.some(({ id }) => is(id)) || methods.some(is);
  const jets = methods.length > 0 && methods.every((method) => method === 'water-jet');
  const hidden = warnedOf(site)?.includes('buried-services') ?? true;
  const ticked = !!site.warnings?.yes.includes('buried-services');
  const marks = (hidden && does(cutsIn)) || (ticked && does(goesOverAll));
  return [
    ...new Set([
      ...needed.map(({ who }) => who),
      ...(marks ? (['locator'] as const) : []),
      ...(jets ? (['jetting-crew'] as const) : []),
    ]),
  ];
}
