import type { Questions } from '$lib/answers/questions';
import type { Table, TableRow } from './table';
import { version1 } from './version-1';
import { version2 } from './version-2';

/**
 * The questions as each version of file and link has them, oldest first; the last is written.
 * A question, a choice or a unit that comes, goes or changes needs a new version: what was sent
 * before must go on meaning what it meant. `tests/kept/README.md` says how.
 */
export const tables = [version1, version2] as const satisfies readonly Table[];

type Last<T extends readonly unknown[]> = T extends readonly [...unknown[], infer L] ? L : never;
type Newest = Last<typeof tables>;
export const newest: Newest = tables[tables.length - 1] as Newest;
/** The number of the version that is written. */
export const newestVersion: (typeof tables)['length'] = tables.length;

type Meaning<R> = R extends { scope: infer S; kind: infer K }
  ? {
      scope: S;
      kind: K;
      unit: R extends { unit: infer U } ? U : 'none';
      choices: R extends { choices: readonly (infer C)[] } ? C : never;
    }
  : 'missing';
type Frozen = { [R in Extract<Newest[number], TableRow> as R['id']]: Meaning<R> };
type Live = { [Q in keyof Questions]: Meaning<Questions[Q]> };
type At<T, K> = K extends keyof T ? T[K] : 'missing';
type Changed = {
  [K in keyof Live | keyof Frozen]: [At<Live, K>] extends [At<Frozen, K>]
    ? [At<Frozen, K>] extends [At<Live, K>]
      ? never
      : K
    : K;
}[keyof Live | keyof Frozen];

/** Does not compile while a question means something that no version has written down. */
export const nothingChanged: [Changed] extends [never]
  ? true
  : { 'a new version is needed, because this changed:': Changed } = true;
