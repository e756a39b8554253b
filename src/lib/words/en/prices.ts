import type { Prices } from '$lib/answers/job';
import type { Say } from '$lib/words/types';

/** What each price is for, in the reader's units. */
export const priceLabels = ({
  units,
}: Pick<Say, 'units'>): Readonly<Record<keyof Prices, string>> => ({
  perHour: 'One person, an hour',
  perBag: 'A bag of repair material',
  perConcrete:
    units === 'us' ? 'Concrete delivered, a cubic yard' : 'Concrete delivered, a cubic metre',
  perTonne: units === 'us' ? 'Debris taken away, a US ton' : 'Debris taken away, a tonne',
});
