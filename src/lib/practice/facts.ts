import { isFloor } from '$lib/advice/place';
import type { QuestionId } from '$lib/answers/questions';
import type { Case, Told } from './case';
import { levelOf, twistsOf } from './level';

/** What decides a case whatever it is: a fact about one of these always stands open. */
const telling: readonly QuestionId[] = [
  'depth',
  'looseness',
  'texture',
  'contamination',
  'warnings',
  'barLoss',
];

/**
 * Whether a fact may stand folded: in a case of the first level, where it tells of nothing that
 * decides it. Cracks, of which a case of that level has none, and the winter do not; a bar in sight
 * does, and so does the place where it is no floor, or its size where that decides.
 */
export function isAside(one: Case, { about }: Pick<Told, 'about'>): boolean {
  if (levelOf(one) > 1) return false;
  const place = !isFloor(one.site.element) || twistsOf(one).includes('size-decides');
  return !about.some(
    (id) =>
      telling.includes(id) ||
      (place && (id === 'element' || id === 'area')) ||
      (id === 'steel' && one.zone.steel !== 'none-seen'),
  );
}

/**
 * Of where it is and what goes on next, what the facts that stand open leave out: both bear on the
 * choice, and a line above names them.
 */
export const leftOut = (one: Case, told: readonly Pick<Told, 'about'>[]) =>
  (['element', 'finish'] as const).filter(
    (id) => !told.some((fact) => fact.about.includes(id) && !isAside(one, fact)),
  );

/** What is best seen of a fact, most telling first. */
const shown = [
  'contamination',
  'looseness',
  'texture',
  'cracks',
  'steel',
  'depth',
  'warnings',
] as const;

/** The picture beside each fact: a question it is about and the answer; none twice, none of what is not there. */
export function picturesOf(one: Case, told: readonly Pick<Told, 'about'>[]) {
  const { site, zone } = one;
  const answers: Readonly<Record<(typeof shown)[number], string | undefined>> = {
    contamination: zone.contamination[0],
    looseness: zone.looseness,
    texture: zone.texture,
    cracks: zone.cracks === 'none' ? undefined : zone.cracks,
    steel: zone.steel === 'none-seen' ? undefined : zone.steel,
    depth: zone.depth,
    // Of several, nobody knows which of them a fact tells.
    warnings: site.warnings.length === 1 ? site.warnings[0] : undefined,
  };
  const taken = new Set<string>();
  return told.map(({ about }) => {
    const question = shown.find((id) => about.includes(id) && answers[id] && !taken.has(id));
    if (!question) return null;
    taken.add(question);
    return { question, choice: answers[question] as string };
  });
}
