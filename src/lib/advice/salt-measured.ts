import { warnedOf, type SiteAnswers } from '$lib/answers/answers';
import type { Zone } from '$lib/answers/job';
import { valueOf, type OwnFigures } from '$shared/figures';

/** How much salt one sample has at the steel. */
export type SaltMark = 'pass' | 'chloride-high' | 'chloride-between' | 'chloride-tendons';

/**
 * What a laboratory's number says of old steel: low, high, or for an engineer to judge.
 * @param value percent of the cement
 * @param tendons there may be tendons in it, which bear far less than bars
 * Source: the figures name it.
 */
export const saltMark = (value: number, tendons: boolean, own?: OwnFigures): SaltMark =>
  value > valueOf('chloride.high', own)
    ? 'chloride-high'
    : value >= valueOf('chloride.old-low', own)
      ? 'chloride-between'
      : tendons && value > valueOf('chloride.prestressed', own)
        ? 'chloride-tendons'
        : 'pass';

/** Whether an answer leaves it possible that there are tendons. */
export const mayHoldTendons = (site: SiteAnswers): boolean =>
  warnedOf(site)?.includes('tendons-possible') ?? true;

/** What a laboratory found at the steel of a zone; what is not a number is not read. */
const samplesOf = ({ readiness }: Pick<Zone, 'readiness'>) =>
  (readiness?.results.chloride?.readings ?? []).filter((each) => each !== '');

/** Whether one sample has so much salt that an engineer has to judge it. */
export const saltInDoubt = (
  site: SiteAnswers,
  zone: Pick<Zone, 'readiness'>,
  own?: OwnFigures,
): boolean =>
  samplesOf(zone).some(
    (value) => typeof value === 'number' && saltMark(value, mayHoldTendons(site), own) !== 'pass',
  );

/**
 * The site as the steel of one zone has it: where salt reaches the concrete but a laboratory found
 * little at the steel, in as many samples as are asked for, salt is not what rusts it. What the
 * reader answered stays: frost and the face still meet the salt.
 * Source: common practice, no published source; the limits by the figures.
 */
export function siteMeasured(
  site: SiteAnswers,
  zone: Pick<Zone, 'readiness'>,
  own?: OwnFigures,
): SiteAnswers {
  const samples = samplesOf(zone);
  const tendons = mayHoldTendons(site);
  const low = samples.every(
    (value) => typeof value === 'number' && value >= 0 && saltMark(value, tendons, own) === 'pass',
  );
  return low && samples.length >= valueOf('sampling.least', own)
    ? { ...site, salts: ['none'] }
    : site;
}
