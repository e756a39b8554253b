import type { Requirement, RequirementId } from '$lib/answers/readiness-record';
import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { readNumber } from './entries';
import { pieces } from './sampling';
import type { Problem } from './rules';

/** The strength asked for, worked out. Stresses in MPa. */
export interface Asked {
  readonly id: RequirementId;
  readonly mean: number;
  readonly least?: number;
  /** Results that make a mean. */
  readonly tests: number;
  /** Tests on the whole area, where the rule counts by area. */
  readonly onArea?: number;
  /** CSP the surface must reach, where the rule has one. */
  readonly profile?: number;
  readonly figures: readonly FigureId[];
  /** A class of repair products, borrowed: it was not written for sites. */
  readonly borrowed: boolean;
}

const figureOf = {
  'overlay-control': 'pulloff.overlay-mean',
  'german-repair': 'pulloff.german-mean',
  'product-r4': 'pulloff.product-r4',
  'product-r3': 'pulloff.product-r3',
  'product-r2': 'pulloff.product-r2',
} as const;

/** How many tests make a mean, where the requirement has a number of its own. */
const testsOf: Readonly<Partial<Record<RequirementId, FigureId>>> = {
  'overlay-control': 'pulloff.overlay-tests',
  'german-repair': 'pulloff.german-tests',
};

/** The tests of the German rules: so many up to its first area, as many again for each further one. */
function germanTests(area: number | 'unknown', own?: OwnFigures): number {
  const tests = valueOf('pulloff.german-tests', own);
  const beyond = area === 'unknown' ? 0 : area - valueOf('pulloff.german-first-area', own);
  return tests * (1 + Math.max(0, pieces(beyond, valueOf('pulloff.german-more-area', own))));
}

/**
 * What the chosen requirement asks; null when none is chosen or its number cannot be read.
 * The German repair rules have a least single result beside their mean; under any other, `least`
 * counts only where the reader types it.
 * @param area m2, for a rule that counts its tests by area
 */
export function askedBy(
  requirement: Requirement | undefined,
  problems: Problem[],
  own?: OwnFigures,
  area: number | 'unknown' = 'unknown',
): Asked | null {
  if (!requirement) return null;
  const read = (field: 'mean' | 'least') =>
    readNumber(requirement[field], 'limit.stress', { check: 'pull-off', field }, problems);
  const { id } = requirement;
  const german = id === 'german-repair';
  const least = read('least') ?? (german ? valueOf('pulloff.german-least', own) : undefined);
  const mean = id === 'own' ? read('mean') : valueOf(figureOf[id], own);
  if (mean === undefined) return null;
  const overlay = id === 'overlay-control';
  return {
    id,
    mean,
    ...(least !== undefined && { least }),
    tests: valueOf(testsOf[id] ?? 'pulloff.least-tests', own),
    ...(german && { onArea: germanTests(area, own) }),
    ...(overlay && { profile: valueOf('pulloff.overlay-profile', own) }),
    figures: [
      ...(id === 'own' ? [] : [figureOf[id]]),
      ...(german
        ? ([
            'pulloff.german-least',
            'pulloff.german-first-area',
            'pulloff.german-more-area',
          ] as const)
        : []),
      testsOf[id] ?? 'pulloff.least-tests',
      ...(overlay ? (['pulloff.overlay-profile'] as const) : []),
    ],
    borrowed: id.startsWith('product-'),
  };
}
