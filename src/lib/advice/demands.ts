import { atLeast } from '$lib/answers/depth';
import type {
  Contaminant,
  Cracks,
  DepthBand,
  Finish,
  Looseness,
  Texture,
} from '$lib/answers/questions';
import type { TriedOut } from '$lib/answers/trial-record';
import { placeOf, type Place } from './place';
import { profileWanted } from './sheet';
import type { SettledSite, SettledZone } from './types';

/** What the zone asks of a method. A method is sufficient when it meets every one of these. */
export interface Demands {
  /** What can stand there, and the ladder that is climbed. */
  readonly place: Place;
  /** How deep loose concrete goes, and how it holds. Nothing is to be removed where it is `tight`. */
  readonly remove: {
    readonly band: DepthBand;
    readonly looseness: Looseness;
    /** As measured, where somebody has. */
    readonly mm?: number;
  };
  /** What has to be cleared by the method itself, after the steps before it have done their part. */
  readonly contaminants: readonly Contaminant[];
  /** Oil, coatings: what was there before any step, since it can rule a method out all the same. */
  readonly oil: boolean;
  /** A heavy coating is scraped off first: no machine that takes it off can stand here. */
  readonly stripped: boolean;
  /** A heavy coating is left to the machine. */
  readonly heavyCoating: boolean;
  /** The low spots must be reached too. Cracks have their own step. */
  readonly belowPlane: boolean;
  /** Cracks are open: of two methods that would do, the one that cleans them in the same pass. */
  readonly openCracks: boolean;
  readonly texture: Texture;
  /** Washing leaves the skin that has to come off: why, or null where it does not. */
  readonly skin: 'trowelled' | 'dusting' | null;
  /** A bar shows and has to be freed: only breaking out along it does that. */
  readonly bar: boolean;
  /** CSP wanted; null while neither a sheet nor a finish says. */
  readonly profile: readonly [number, number] | null;
  /** Methods that have failed on a test patch. */
  readonly triedOut: readonly TriedOut[];
}

/** Whether a crack is open enough to be cleaned. */
export const opensBelow = (cracks: Cracks): boolean => cracks === 'open' || cracks === 'crumbling';

/** Whether any coating, thin or heavy, is among what is on it. */
export const hasCoating = (contamination: readonly Contaminant[]): boolean =>
  contamination.some((contaminant) => contaminant.endsWith('-coating'));

/** Whether a bar shows: it is undercut, followed past the rust, and cleaned. */
export const showsBar = ({ steel }: Pick<SettledZone, 'steel'>): boolean =>
  steel === 'exposed' || steel === 'corroded';

/** Whether the finish is bonded to the concrete: every one but a sealer. */
export const isBonded = ({ finish }: Pick<SettledZone, 'finish'>): boolean => finish !== 'sealer';

/** Paints and levelling layers: they pull on the skin, and show everything under it. */
const films: ReadonlySet<Finish> = new Set(['thin-film', 'build-coat', 'self-levelling']);
export const isFilm = ({ finish }: Pick<SettledZone, 'finish'>): boolean => films.has(finish);

/** What is stiff breaks again where the ground or a crack moves under it. */
export const isStiff = ({ finish }: Pick<SettledZone, 'finish'>): boolean =>
  finish !== 'sealer' && finish !== 'thin-film' && finish !== 'undecided';

/** An old spall with a firm bottom that is filled up: a form to fill, not concrete to remove. */
export const isFirmHollow = ({
  looseness,
  depth,
  finish,
}: Pick<SettledZone, 'looseness' | 'depth' | 'finish'>): boolean =>
  looseness === 'tight' && finish === 'rebuild' && atLeast(depth, '6-to-20');

/**
 * Why a surface that washing would clean still has to be opened by machine.
 * Source: common practice, no published source.
 */
function skinOf(zone: Pick<SettledZone, 'texture' | 'looseness' | 'finish'>): Demands['skin'] {
  if (zone.looseness === 'powdery' && isFilm(zone)) return 'dusting';
  if (zone.texture === 'smooth' && isBonded(zone) && zone.finish !== 'undecided')
    return 'trowelled';
  return null;
}

/** What a reason tells of the damage: how it holds, and how deep it goes, as measured or by its band. */
export const removalFacts = ({
  remove: { band: depth, looseness, mm },
}: Pick<Demands, 'remove'>) => ({ depth, looseness, ...(mm !== undefined && { mm }) });

const isHeavy = (contaminant: Contaminant): boolean =>
  contaminant === 'thick-coating' || contaminant === 'rubbery-coating';

/**
 * What every demand is found by, from the answers. Without machines a heavy coating is scraped off
 * before; degreasing comes before any method.
 * Source: common practice, no published source, except the profile (figures `csp.needs.*`).
 */
const found = {
  place: (site, zone) => placeOf(site.element, zone.area, isFirmHollow(zone)),
  remove: (_, { depth: band, looseness, depthMm: mm }) =>
    mm === undefined ? { band, looseness } : { band, looseness, mm },
  contaminants: (_, zone, machines) =>
    zone.contamination.filter((each) => each !== 'oil' && (machines() || !isHeavy(each))),
  oil: (_, zone) => zone.contamination.includes('oil'),
  stripped: (_, zone, machines) => !machines() && zone.contamination.some(isHeavy),
  heavyCoating: (_, zone, machines) => machines() && zone.contamination.some(isHeavy),
  belowPlane: (_, zone) => zone.texture === 'pitted',
  openCracks: (_, zone) => opensBelow(zone.cracks),
  texture: (_, zone) => zone.texture,
  skin: (_, zone) => skinOf(zone),
  bar: (_, zone) => showsBar(zone),
  profile: (_, zone) => profileWanted(zone),
  triedOut: (_, zone) => zone.triedOut ?? [],
} as const satisfies {
  readonly [K in keyof Demands]: (
    site: SettledSite,
    zone: SettledZone,
    machines: () => boolean,
  ) => Demands[K];
};

/** The demands of a zone, from its answers. */
export function demandsOf(site: SettledSite, zone: SettledZone): Demands {
  const place = found.place(site, zone);
  const machines = () => place === 'floor';
  return {
    place,
    remove: found.remove(site, zone),
    contaminants: found.contaminants(site, zone, machines),
    oil: found.oil(site, zone),
    stripped: found.stripped(site, zone, machines),
    heavyCoating: found.heavyCoating(site, zone, machines),
    belowPlane: found.belowPlane(site, zone),
    openCracks: found.openCracks(site, zone),
    texture: found.texture(site, zone),
    skin: found.skin(site, zone),
    bar: found.bar(site, zone),
    profile: found.profile(site, zone),
    triedOut: found.triedOut(site, zone),
  };
}

/** The same, each found when it is asked for and from no more than it needs. */
export function demandsAsked(site: SettledSite, zone: SettledZone): Demands {
  const machines = () => found.place(site, zone) === 'floor';
  const remove = {
    get band() {
      return zone.depth;
    },
    get looseness() {
      return zone.looseness;
    },
    get mm() {
      return zone.depthMm;
    },
  };
  const demands = { remove };
  for (const name of Object.keys(found) as (keyof typeof found)[])
    if (name !== 'remove')
      Object.defineProperty(demands, name, { get: () => found[name](site, zone, machines) });
  return demands as Demands;
}
