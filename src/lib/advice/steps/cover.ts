import { moistureOf } from '$lib/advice/sheet';
import { call, type Situation, type Work } from './work';

/**
 * From the proven surface to the covered one. The day that a surface may lie open runs from its
 * last cleaning to its covering; what takes longer is followed by one more cleaning right before.
 * Source: UFC 3-270-03 for the day (figure `open.limit`); the rest common practice, no published source.
 */
export function callCovering(work: Work, { zone }: Situation): void {
  const moisture = moistureOf(zone);
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
    { rule: moisture === 'dry' ? 'last-vacuum-and-tape' : 'last-look' },
    { rule: 'cover-within-a-day', figures: ['open.limit'] },
  );
  if (!decided) return;
  call(work, 'cover', { rule: 'surface-warm-and-above-dew' });
  call(work, 'cure', {
    rule: moisture === 'saturated-surface-dry' ? 'cure-kept-damp' : 'cure-as-maker-says',
  });
}
