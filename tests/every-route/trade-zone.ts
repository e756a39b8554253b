/** What is true of a place and a zone before any tool is chosen; see `trade-table.ts`. */
import { depths, type Finish, type TradeSays, type TradeSite, type TradeZone } from './trade-types';

/** Least CSP under each finish where no data sheet speaks. ICRI 310.2R, as reported or from memory. */
const wants: Readonly<Record<Finish, number | null>> = {
  sealer: 1,
  'thin-film': 1,
  'build-coat': 3,
  'self-levelling': 4,
  'thin-overlay': 5,
  overlay: 5,
  rebuild: 5,
  undecided: null,
};

const dryFinishes: readonly Finish[] = ['sealer', 'thin-film', 'build-coat', 'self-levelling'];

export const isFloor = ({ element }: TradeSite) =>
  element === 'slab' || element === 'suspended-slab';

/** Under 1 m2; an area nobody knows is taken for an ordinary one. */
export const isSpot = ({ area }: TradeZone) => area !== 'unknown' && area < 1;

/** An old spall of 6 mm and deeper with a firm bottom that is poured full: a form, not damage. */
export const isFirmHollow = ({ depth, looseness, finish }: TradeZone) =>
  looseness === 'tight' && finish === 'rebuild' && depths.indexOf(depth) >= 3;

/** A bar that shows has to be freed. Decided here: a clean bar too, as nobody asks how far it is bonded. */
export const freesBar = ({ steel }: TradeZone) => steel === 'exposed' || steel === 'corroded';

/** Any crack with rust at it is opened to the bar, never routed and sealed. */
export const rustAtCrack = ({ cracks, steel }: TradeZone) =>
  cracks !== 'none' && steel === 'rust-stain';

/**
 * Crumbling edges, or open where it freezes often, are chased with a light hammer, and so is what
 * rusts. Decided here: a crack that moves is the engineer's, rust or none.
 */
export const chasesCrack = ({ freezeThaw }: TradeSite, zone: TradeZone) =>
  zone.cracks === 'crumbling' ||
  (zone.cracks === 'open' && freezeThaw === 'often') ||
  (rustAtCrack(zone) && zone.cracks !== 'moving');

/** The sheet's word first, then the finish's. Decided here: what is not decided has no sheet. */
export function profileLeastOf({ finish, makerProfile }: TradeZone): number | null {
  if (finish === 'undecided') return null;
  return typeof makerProfile === 'number' ? makerProfile : wants[finish];
}

export function moistureOf({ finish, makerMoisture }: TradeZone): TradeSays['moisture'] {
  if (finish === 'undecided') return 'ask-maker';
  if (makerMoisture === 'damp') return 'saturated-surface-dry';
  if (makerMoisture === 'dry') return 'dry';
  return dryFinishes.includes(finish) ? 'dry' : 'saturated-surface-dry';
}
