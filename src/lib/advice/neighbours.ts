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

/** For each open question, every answer it may turn out to have; those with none but one left out. */
interface Open {
  /** Each of these alone calls for `make-safe`, and for nothing else in the work or the target. */
  readonly apart: readonly (readonly Change[])[];
  readonly rest: readonly (readonly Change[])[];
}

function openOf(open: SiteAnswers & ZoneAnswers): Open {
  const site = (['element', 'salts', 'freezeThaw'] as const).map((name) =>
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
  // One of several that is doubtful can be there or not: two answers, one of which is had.
  const each = <C extends string>({ maybe }: ManyAnswer<C>, change: (choice: C) => Change) =>
    maybe.map((choice) => [change(choice)]);
  const settings = possible('setting', open.setting).map((setting) => inSite({ setting }));
  const several = ({ length }: readonly Change[]) => length > 1;
  return {
    apart: [
      ...[settings].filter(several),
      ...each(
        openMany('warnings', open.warnings),
        (choice) => (one) => inSite({ warnings: toggled(one.site.warnings, choice) })(one),
      ),
    ],
    rest: [
      ...[...site, ...zone, depths, steel].filter(several),
      ...each(
        openMany('contamination', open.contamination),
        (choice) => (one) =>
          inZone({ contamination: toggled(one.zone.contamination, choice) })(one),
      ),
    ],
  };
}

/**
 * All completions that differ from this one in one answer, or in two. What stands apart has nothing
 * to do with any other answer, so it differs alone.
 */
export function besides(one: Completion, open: SiteAnswers & ZoneAnswers): Completion[] {
  const { apart, rest } = openOf(open);
  const after = (from: Completion, place: number): Completion[] =>
    rest.slice(place).flatMap((changes) => changes.map((change) => change(from)));
  return [
    ...apart.flatMap((changes) => changes.map((change) => change(one))),
    ...rest.flatMap((changes, place) =>
      changes.flatMap((change) => {
        const next = change(one);
        return [next, ...after(next, place + 1)];
      }),
    ),
  ];
}

/**
 * Every completion but for what stands apart, and that once, where there are at most so many; else
 * that many, spread over all of them by the golden section, so that no answer goes in step with
 * another.
 */
export function spread(
  one: Completion,
  open: SiteAnswers & ZoneAnswers,
  { all, some }: { readonly all: number; readonly some: number },
): { readonly found: readonly Completion[]; readonly whole: boolean } {
  const { apart, rest } = openOf(open);
  // A doubtful one of several is there or not; every other question has one of its answers.
  const withSame = (changes: readonly Change[]) =>
    changes.length > 1 ? changes : [...changes, (same: Completion) => same];
  const product = (questions: readonly (readonly Change[])[]) =>
    questions.reduce((total, { length }) => total * length, 1);
  const few = rest.map(withSame);
  if (product(few) <= all) {
    const found = few.reduce<Completion[]>(
      (list, changes) => list.flatMap((each) => changes.map((change) => change(each))),
      [one],
    );
    return {
      found: [...found, ...apart.flatMap((changes) => changes.map((change) => change(one)))],
      whole: true,
    };
  }
  const questions = [...apart, ...rest].map(withSame);
  const total = product(questions);
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
