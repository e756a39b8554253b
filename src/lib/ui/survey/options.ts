import type { Zone } from '$lib/answers/job';
import type { CrackKind } from '$lib/answers/survey';
import { crackNames, surveyWords as words } from '$words/survey';

const kinds: readonly CrackKind[] = ['hairline', 'open', 'crumbling', 'moving'];
export const crackOptions: readonly (readonly [CrackKind | '', string])[] = [
  ['', crackNames['not-sure']],
  ...kinds.map((kind) => [kind, crackNames[kind]] as const),
];

/** The zones of a job to pick from; first, where it may stay open, the zone a mark lies in. */
export const zoneOptions = (
  zones: readonly Zone[],
  nameOf: (id: string) => string,
  open: boolean,
): readonly (readonly [string, string])[] => [
  ...(open ? [['', words.zoneOfPlace] as const] : []),
  ...zones.map(({ id }) => [id, nameOf(id)] as const),
];
