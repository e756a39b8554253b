import type { Call } from '$lib/practice/case';

/** What the numbers in a result's code mean. A table that a site has had is never changed. */
export interface ResultTable {
  /** Authored cases by their place. */
  readonly cases: readonly string[];
  /** The way generated cases are drawn. */
  readonly drawing: string;
  /** What can be picked, by its place. */
  readonly calls: readonly Call[];
}

const first: Omit<ResultTable, 'drawing'> = {
  calls: [
    'pressure-wash',
    'grind',
    'abrasive-blast',
    'scarify',
    'shotblast',
    'needle-scale',
    'break-out',
    'water-jet',
    'engineer',
    'concrete-contractor',
    'laboratory',
    'locator',
    'crew',
  ],
  cases: (
    'hall-forecourt-moss bakery-dust net-yard-dust boat-shed-skin waiting-room-paint larch-row-oil ' +
    'larch-row-crust larch-row-pits net-loft-membrane cooperage-topping museum-floor granary-skin ' +
    'quay-walk-sheet dye-house-sheet tea-room-bloom hall-forecourt-hollow rope-walk-hole ' +
    'fish-market-rot hall-steps-flakes hall-steps-nosing harbour-office-wall ferry-stair-soffit ' +
    'bath-house-wall pump-house-plinth chandlery-spot net-loft-deck pottery-hairline ' +
    'school-hairline mill-ramp-crack chapel-path-crack hall-ramp-crack market-hall-stain ' +
    'sea-walk-stain customs-yard-crack lantern-terrace-bar ferry-ramp-bar library-build-coat ' +
    'gannet-court-balcony lighthouse-stair drill-hall-floor mill-path-rocks bus-yard-crack ' +
    'smokehouse-fire creamery-map workshop-glue lamp-yard-cable cattle-yard-rot ferry-stop-rot ' +
    'slipway-hole brewhouse-depth laundry-yard-depth salt-store-bars'
  ).split(' '),
};

/**
 * One for each version of the code, oldest first; the last is written. A case, a method or a way of
 * drawing that comes needs the next one: `tests/unit/practice-result-code.test.ts` is red until then.
 */
export const resultTables: readonly ResultTable[] = [
  { drawing: 'g2', ...first },
  { drawing: 'g3', ...first },
];
