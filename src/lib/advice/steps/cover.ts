import type { RuleId } from '$lib/advice/rules';
import { moistureOf } from '$lib/advice/sheet';
import type { Target } from '$lib/advice/types';
import type { Finish } from '$lib/answers/questions';
import { chasesCrack, routesCrack } from './cracks';
import type { StepReasons } from './work';

/** What goes on in one pour with what fills the crack. */
const fills: ReadonlySet<Finish> = new Set<Finish>(['overlay', 'rebuild']);

const wettings = {
  dry: 'dry-for-coating',
  'saturated-surface-dry': 'damp-not-wet',
  'ask-maker': 'finish-undecided',
} as const satisfies Record<Target['moisture'], RuleId>;

const lastLooks = {
  dry: 'last-vacuum-and-tape',
  'saturated-surface-dry': 'last-look',
  'ask-maker': 'last-look-as-maker-says',
} as const satisfies Record<Target['moisture'], RuleId>;

const isDecided = ({ finish }: { readonly finish: Finish }): boolean => finish !== 'undecided';

/**
 * From the proven surface to the covered one. The day that a surface may lie open runs from its
 * last cleaning to its covering; what takes longer is followed by one more cleaning right before.
 * Source: UFC 3-270-03 for the day (figure `open.limit`); the rest common practice, no published source.
 */
export const coveringSteps: StepReasons = {
  'wet-or-dry': [
    ({ site, zone }) =>
      routesCrack(site, zone) && { rule: 'routed-crack-sealed', figures: ['seal.temperature'] },
    ({ site, zone }) =>
      chasesCrack(site, zone) && !fills.has(zone.finish) && { rule: 'chased-crack-filled' },
    ({ zone }) => ({ rule: wettings[moistureOf(zone)], facts: { finish: zone.finish } }),
    ({ zone }) => !!zone.makerMoisture && isDecided(zone) && { rule: 'moisture-from-sheet' },
  ],
  'moisture-test': [({ zone }) => moistureOf(zone) === 'dry' && { rule: 'dry-enough-measured' }],
  'last-clean': [
    ({ zone }) => ({ rule: lastLooks[moistureOf(zone)] }),
    () => ({ rule: 'cover-within-a-day', figures: ['open.limit'] }),
  ],
  // Dew is a film of water: it spoils a coating, and does cement on a damp surface no harm.
  cover: [
    ({ zone }) =>
      isDecided(zone) && {
        rule:
          moistureOf(zone) === 'saturated-surface-dry'
            ? 'surface-warm-enough'
            : 'surface-warm-and-above-dew',
      },
  ],
  cure: [
    ({ zone }) =>
      isDecided(zone) && {
        rule:
          moistureOf(zone) === 'saturated-surface-dry' ? 'cure-kept-damp' : 'cure-as-maker-says',
      },
  ],
};
