import type { Finish } from '$lib/answers/questions';
import type { RuleId } from '$lib/advice/rules';
import type { Target } from '$lib/advice/types';
import { moistureOf } from '$lib/advice/sheet';
import { call, type Situation, type Work } from './work';

/** What goes on in one pour with what fills the crack. */
const fills: ReadonlySet<Finish> = new Set<Finish>(['overlay', 'rebuild']);

const lastLooks = {
  dry: 'last-vacuum-and-tape',
  'saturated-surface-dry': 'last-look',
  'ask-maker': 'last-look-as-maker-says',
} as const satisfies Record<Target['moisture'], RuleId>;

/**
 * From the proven surface to the covered one. The day that a surface may lie open runs from its
 * last cleaning to its covering; what takes longer is followed by one more cleaning right before.
 * Source: UFC 3-270-03 for the day (figure `open.limit`); the rest common practice, no published source.
 */
export function callCovering(work: Work, { zone }: Situation): void {
  const moisture = moistureOf(zone);
  if (work['route-crack'])
    call(work, 'wet-or-dry', { rule: 'routed-crack-sealed', figures: ['seal.temperature'] });
  if (work['chase-crack'] && !fills.has(zone.finish))
    call(work, 'wet-or-dry', { rule: 'chased-crack-filled' });
  call(work, 'wet-or-dry', {
    rule:
      moisture === 'saturated-surface-dry'
        ? 'damp-not-wet'
        : moisture === 'dry'
          ? 'dry-for-coating'
          : 'finish-undecided',
    facts: { finish: zone.finish },
  });
  const decided = zone.finish !== 'undecided';
  if (zone.makerMoisture && decided) call(work, 'wet-or-dry', { rule: 'moisture-from-sheet' });
  if (moisture === 'dry') call(work, 'moisture-test', { rule: 'dry-enough-measured' });
  call(
    work,
    'last-clean',
    { rule: lastLooks[moisture] },
    { rule: 'cover-within-a-day', figures: ['open.limit'] },
  );
  if (!decided) return;
  // Dew is a film of water: it spoils a coating, and does cement on a damp surface no harm.
  call(work, 'cover', {
    rule:
      moisture === 'saturated-surface-dry' ? 'surface-warm-enough' : 'surface-warm-and-above-dew',
  });
  call(work, 'cure', {
    rule: moisture === 'saturated-surface-dry' ? 'cure-kept-damp' : 'cure-as-maker-says',
  });
}
