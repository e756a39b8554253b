import { hasAirBelow } from '$lib/answers/elements';
import type { SiteAnswers } from '$lib/answers/answers';
import type { QuestionId } from '$lib/answers/questions';

/** How somebody comes near to what is tested: as anywhere, only from beside it, or not before others have looked. */
export type Approach = 'as-usual' | 'from-beside' | 'leave';

/** Questions that are answered by standing on it, reaching up to it or knocking on it. */
const answeredThere: ReadonlySet<QuestionId> = new Set<QuestionId>([
  'thickness',
  'depth',
  'looseness',
  'contamination',
  'texture',
  'cracks',
  'crackLength',
  'steel',
  'barLoss',
  'barCover',
  'barDiameter',
  'barSpacing',
  'barLength',
  'area',
  'borderLength',
]);

/**
 * How somebody comes near who finds out an answer, before anything is known of what hangs: the same
 * as with the tests. Warning signs are looked for by owners from beside it wherever it is.
 * Source: common practice, no published source.
 */
export function approachFor(question: QuestionId, site: SiteAnswers, toOwner: boolean): Approach {
  const hangs = !!site.element?.some(hasAirBelow);
  if (question === 'warnings') return hangs || toOwner ? 'from-beside' : 'as-usual';
  if (!hangs || !answeredThere.has(question)) return 'as-usual';
  return toOwner ? 'leave' : 'from-beside';
}
