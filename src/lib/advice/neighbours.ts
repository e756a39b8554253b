import type { ManyAnswer, SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import { bandOf } from '$lib/answers/depth';
import { openMany, possible, possibleDepths, steelStates } from './completions';
import type { SettledSite, SettledZone } from './types';

/** One completion of open answers. */
export interface Completion {
  readonly site: SettledSite;
  readonly zone: SettledZone;
}
type Change = (one: Completion) => Completion;

/** Puts a doubtful one into a set, or takes it out. */
const toggled = <C extends string>(now: readonly C[], each: C): C[] =>
  now.includes(each) ? now.filter((other) => other !== each) : [...now, each];

const inSite =
  (change: Partial<SettledSite>): Change =>
  ({ site, zone }) => ({ site: { ...site, ...change }, zone });
const inZone =
  (change: Partial<SettledZone>): Change =>
  ({ site, zone }) => ({ site, zone: { ...zone, ...change } });

/** For each open question, every answer it may turn out to have. */
function changesOf(open: SiteAnswers & ZoneAnswers): Change[][] {
  const site = (['element', 'setting', 'salts', 'freezeThaw'] as const).map((name) =>
    possible(name, open[name]).map((choice) => inSite({ [name]: choice })),
  );
  const zone = (['looseness', 'texture', 'cracks', 'finish'] as const).map((name) =>
    possible(name, open[name]).map((choice) => inZone({ [name]: choice })),
  );
  const depths = possibleDepths(open).map(
    (depth): Change =>
      (one) =>
        typeof depth === 'number'
          ? inZone({ depth: bandOf(depth, one.site.thickness), depthMm: depth })(one)
          : inZone({ depth })(one),
  );
  const steel = steelStates(open).map((state): Change => ({ site: now, zone: before }) => {
    const next: { -readonly [K in keyof SettledZone]: SettledZone[K] } = { ...before, ...state };
    if (!state.barLoss) delete next.barLoss;
    return { site: now, zone: next };
  });
  const each = <C extends string>({ maybe }: ManyAnswer<C>, change: (choice: C) => Change) =>
    maybe.map((choice) => [change(choice)]);
  // A question with one answer left changes nothing; a doubtful one of several can be there or not.
  return [
    ...[...site, ...zone, depths, steel].filter(({ length }) => length > 1),
    ...each(
      openMany('warnings', open.warnings),
      (choice) => (one) => inSite({ warnings: toggled(one.site.warnings, choice) })(one),
    ),
    ...each(
      openMany('contamination', open.contamination),
      (choice) => (one) => inZone({ contamination: toggled(one.zone.contamination, choice) })(one),
    ),
  ];
}

/** All completions that differ from this one in one answer, or in two. */
export function besides(one: Completion, open: SiteAnswers & ZoneAnswers): Completion[] {
  const questions = changesOf(open);
  const after = (from: Completion, place: number): Completion[] =>
    questions.slice(place).flatMap((changes) => changes.map((change) => change(from)));
  return questions.flatMap((changes, place) =>
    changes.flatMap((change) => {
      const next = change(one);
      return [next, ...after(next, place + 1)];
    }),
  );
}

/**
 * Every completion where there are at most so many; else that many, spread over all of them by the
 * golden section, so that no answer goes in step with another.
 */
export function spread(
  one: Completion,
  open: SiteAnswers & ZoneAnswers,
  { all, some }: { readonly all: number; readonly some: number },
): { readonly found: readonly Completion[]; readonly whole: boolean } {
  // A doubtful one of several is there or not; every other question has one of its answers.
  const questions = changesOf(open).map((changes) =>
    changes.length > 1 ? changes : [...changes, (same: Completion) => same],
  );
  const total = questions.reduce((product, { length }) => product * length, 1);
  if (total <= all) {
    const found = questions.reduce<Completion[]>(
      (list, changes) => list.flatMap((each) => changes.map((change) => change(each))),
      [one],
    );
    return { found, whole: true };
  }
  const found = Array.from({ length: some }, (_, index) => {
    let rest = Math.floor(((index * 0.618033988749895) % 1) * total);
    return questions.reduce((now, changes) => {
      const change = changes[rest % changes.length] as Change;
      rest = Math.floor(rest / changes.length);
      return change(now);
    }, one);
  });
  return { found, whole: false };
}
