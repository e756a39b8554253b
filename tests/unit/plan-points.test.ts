import { describe, expect, it } from 'vitest';
import { measureIds } from '$lib/plan/options';
import { notKnownYet, pointsOf } from '$lib/plan/points';

// What is weighed for an owner. Common practice, no source.
describe('what speaks for and against each option', () => {
  const signs = (
    more: object = {},
    holds: Record<string, string[]> = {},
    warnings: string[] = [],
  ) =>
    ({
      zonesIn: (...ids: string[]) => ids.flatMap((id) => holds[id] ?? []),
      held: (rule: string) => holds[rule] ?? [],
      warned: (id: string) => warnings.includes(id),
      ...{
        patched: false,
        gone: 0,
        mostlyGone: false,
        doubtful: [],
        mostlyFree: true,
        mostly: 0.5,
      },
      ...more,
    }) as never;
  const share = (more: object = {}) => ({
    ...{ sound: 0.2, surface: 0.1, 'break-out': 0.7, replace: 0, 'not-entered': 0, ...more },
  });
  const all = { restore: true, parts: true };
  const poor = { id: 'patch-life', figures: ['patch.life-poor'] };
  const good = { id: 'patch-life', figures: ['patch.life-good'] };
  const points = (
    given: never,
    shares: object | null = share(),
    options = all,
    weighed: readonly object[] = [],
  ) => pointsOf(given, { share: shares, told: shares } as never, options, weighed as never);
  const none = { speaksFor: [], against: [] };

  it('is nothing where nothing is known, of the options that there are', () => {
    expect(points(signs())).toEqual({ restore: none, parts: none, replace: none });
    expect(points(signs(), null)).toEqual({ restore: none, parts: none, replace: none });
    expect(points(signs(), null, { restore: false, parts: false })).toEqual({ replace: none });
  });
  it('for restoring: most is sound, all is in the skin, patches that last; against it: those that do not', () => {
    const sound = share({ sound: 0.7, surface: 0.3 });
    expect(points(signs({ patched: true }), sound)).toEqual({
      restore: {
        speaksFor: [{ id: 'mostly-sound', share: 0.7 }, { id: 'surface-only' }, good],
        against: [poor],
      },
      parts: none,
      replace: {
        speaksFor: [],
        against: [{ id: 'sound-broken-out', share: 0.7 }, { id: 'surface-only' }],
      },
    });
    expect(points(signs(), share({ sound: 0.5, surface: 0.4 })).restore).toEqual(none);
  });
  it.each(['hollow-unmeasured', 'rust-with-salts', 'rust-at-crack', 'nothing-over-rust'])(
    'says not that all is in the skin while nobody has seen how deep it goes: %s',
    (rule) => {
      const sound = share({ sound: 0.7, surface: 0.3 });
      const of = (holds: Record<string, string[]>) =>
        points(signs({}, holds), sound).restore?.speaksFor.map(({ id }) => id);
      expect(of({})).toContain('surface-only');
      expect(of({ [rule]: ['a'] })).toEqual(['mostly-sound']);
    },
  );
  it('against a patch: what is gone, mostly gone, deep, or lost by the concrete itself', () => {
    const gone = {
      ...{ id: 'full-depth-parts', zones: ['g'], share: 0.1, figures: ['depth.full-limit'] },
    };
    const mostlyGone = { id: 'mostly-gone', share: 0.6, figures: ['compare.mostly'] };
    const past = { id: 'depth-past-third', zones: ['d'], figures: ['depth.partial-limit'] };
    const lost = [
      { id: 'fire-or-chemical' },
      { id: 'map-cracking', zones: ['m'] },
      { id: 'bar-loss', zones: ['b'] },
    ];
    const causes = [
      { id: 'settled' },
      { id: 'structure', zones: ['s'] },
      { id: 'moving-crack', zones: ['c'] },
    ];
    const grave = signs(
      { doubtful: ['d'], mostlyGone: true, gone: 0.6 },
      {
        ...{ replace: ['g'], 'break-out': ['k', 'g'], 'map-cracking': ['m'] },
        ...{ 'bar-section-loss': ['b'], 'structure-before-removal': ['s'], 'moving-crack': ['c'] },
      },
      ['fire-or-chemical', 'settled-or-rocking'],
    );
    const wanted = {
      restore: { speaksFor: [], against: [gone, mostlyGone, past, ...causes, ...lost] },
      parts: {
        speaksFor: [{ id: 'parts-made-new', zones: ['k', 'g'] }],
        against: [mostlyGone, ...causes, ...lost],
      },
      replace: {
        speaksFor: [gone, mostlyGone, past, ...lost],
        // New concrete moves with what moves it, and has to be propped as a whole.
        against: [{ id: 'cause-stays' }, { id: 'props-for-all', zones: ['s'] }],
      },
    };
    expect(points(grave, share({ replace: 0.1 }))).toEqual(wanted);
    // What speaks against restoring is told though nothing can be restored.
    expect(points(grave, share({ replace: 0.1 }), { restore: false, parts: true })).toEqual(wanted);
    expect(points(grave, null).restore?.against[0]).toEqual({
      ...{ id: 'full-depth-parts', zones: ['g'], figures: ['depth.full-limit'] },
    });
    const moving = points(signs({}, { 'moving-crack': ['c'] }));
    expect(moving.replace?.against).toEqual([{ id: 'cause-stays' }]);
  });
  it('by measures: what surely takes less or more than another, days of hire never', () => {
    const weigh = (one: string, other: string, lighter: object) => ({
      ...{
        one,
        other,
        lighter: { ...Object.fromEntries(measureIds.map((id) => [id, 'alike'])), ...lighter },
      },
    });
    const weighed = [
      weigh('restore', 'replace', { debris: 'first', hours: 'second', 'hire-days': 'first' }),
      weigh('parts', 'replace', { water: 'first', carbon: 'second' }),
      weigh('restore', 'parts', { cost: 'second' }),
    ];
    expect(points(signs(), share(), all, weighed)).toEqual({
      restore: {
        speaksFor: [{ id: 'less', measures: ['debris'], than: 'replace' }],
        against: [
          { id: 'more', measures: ['hours'], than: 'replace' },
          { id: 'more', measures: ['cost'], than: 'parts' },
        ],
      },
      parts: {
        speaksFor: [
          { id: 'less', measures: ['water'], than: 'replace' },
          { id: 'less', measures: ['cost'], than: 'restore' },
        ],
        against: [{ id: 'more', measures: ['carbon'], than: 'replace' }],
      },
      replace: {
        speaksFor: [{ id: 'less', measures: ['hours'], than: 'restore' }],
        against: [{ id: 'more', measures: ['debris'], than: 'restore' }],
      },
    });
  });
  it('and what nobody has found out yet', () => {
    const notKnown = (
      thickness: unknown,
      conditions: object,
      holds: Record<string, string[]> = {},
    ) =>
      notKnownYet(
        { drawn: { site: { thickness } } } as never,
        signs({}, holds),
        conditions as never,
      );
    const percent = {
      id: 'no-one-percentage',
      figures: ['rule.galion', 'rule.lauderhill', 'rule.sioux-falls', 'rule.pleasant-hill'],
    };
    expect(notKnown(150, { share: share(), whole: 10, unmeasured: [] })).toEqual([percent]);
    expect(
      notKnown('unknown', { share: null, whole: null, unmeasured: ['u'] }, { 'not-known': ['n'] }),
    ).toEqual([
      { id: 'open-answers', zones: ['n'] },
      { id: 'unmeasured', zones: ['u'] },
      { id: 'whole-unknown' },
      { id: 'thickness-unknown' },
      percent,
    ]);
    expect(
      notKnown(undefined, {
        ...{ share: share({ 'not-entered': 0.301 }), told: share({ 'not-entered': 0.3 }) },
        ...{ whole: 9, unmeasured: [] },
      }),
    ).toEqual([{ id: 'not-entered', share: 0.3 }, { id: 'thickness-unknown' }, percent]);
  });
});
