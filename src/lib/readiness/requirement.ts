import type { Requirement, RequirementId } from '$lib/answers/readiness-record';
import { valueOf, type FigureId, type OwnFigures } from '$shared/figures';
import { readNumber } from './entries';
import type { Problem } from './rules';

/** The strength asked for, worked out. Stresses in MPa. */
export interface Asked {
  readonly id: RequirementId;
  readonly mean: number;
  readonly least?: number;
  readonly tests: number;
  /** CSP the surface must reach, where the rule has one. */
  readonly profile?: number;
  readonly figures: readonly FigureId[];
  /** A class of repair products, borrowed: it was not written for sites. */
  readonly borrowed: boolean;
}

const figureOf = {
  'overlay-control': 'pulloff.overlay-mean',
  'product-r4': 'pulloff.product-r4',
  'product-r3': 'pulloff.product-r3',
  'product-r2': 'pulloff.product-r2',
} as const;

/**
 * What the chosen requirement asks; null when none is chosen or its number cannot be read.
 * The German repair rules have a least single result beside their mean (figures `pulloff.german-*`);
 * here `least` counts only where the reader types it.
 */
export function askedBy(
  requirement: Requirement | undefined,
  problems: Problem[],
  own?: OwnFigures,
): Asked | null {
  if (!requirement) return null;
  const read = (field: 'mean' | 'least') =>
    readNumber(requirement[field], 'limit.stress', { check: 'pull-off', field }, problems);
  const least = read('least');
  const { id } = requirement;
  const mean = id === 'own' ? read('mean') : valueOf(figureOf[id], own);
  if (mean === undefined) return null;
  const overlay = id === 'overlay-control';
  return {
    id,
    mean,
    ...(least !== undefined && { least }),
    tests: valueOf(overlay ? 'pulloff.overlay-tests' : 'pulloff.least-tests', own),
    ...(overlay && { profile: valueOf('pulloff.overlay-profile', own) }),
    figures: [
      ...(id === 'own' ? [] : [figureOf[id]]),
      ...(overlay
        ? (['pulloff.overlay-tests', 'pulloff.overlay-profile'] as const)
        : (['pulloff.least-tests'] as const)),
    ],
    borrowed: id.startsWith('product-'),
  };
}
