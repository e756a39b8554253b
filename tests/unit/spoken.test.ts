import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adviseZone } from '$lib/advice/advise';
import { ruleIds, type RuleId } from '$lib/advice/rules';
import { adviseSettled } from '$lib/advice/settle';
import type { Hold, SettledSite, SettledZone } from '$lib/advice/types';
import { choicesOf, type QuestionId } from '$lib/answers/questions';
import { words } from '$lib/words';
import { ruleSentences } from '$words/rules';
import { methodIds } from '$shared/methods';
import { formatter } from '../helpers/plain-formatter';
import type { Say } from '$lib/words/types';
import { broken, mute, sentence, spokenBy, strangers } from '../helpers/words';

const one = <Q extends QuestionId>(id: Q) => fc.constantFrom(...choicesOf(id));
/** A few of many: more than three at once is rare, and most often there is none. */
const some = <Q extends QuestionId>(id: Q) =>
  fc.oneof(fc.constant([]), fc.subarray([...choicesOf(id)], { maxLength: 3 }));

const sites = fc.record({
  element: one('element'),
  setting: one('setting'),
  salts: one('salts'),
  freezeThaw: one('freezeThaw'),
  thickness: fc.constantFrom<number | 'unknown'>('unknown', 75, 100, 150, 300),
  warnings: some('warnings'),
}) as fc.Arbitrary<SettledSite>;

/** Methods that failed on test patches: now and then some, rarely all. */
const failed = fc
  .tuple(
    fc.oneof(
      { weight: 6, arbitrary: fc.constant([]) },
      { weight: 2, arbitrary: fc.subarray([...methodIds], { minLength: 1, maxLength: 3 }) },
      { weight: 1, arbitrary: fc.constant(methodIds) },
    ),
    fc.constantFrom<'too-much' | 'too-little' | 'both'>('too-much', 'too-little', 'both'),
    fc.constantFrom(['bruised'], ['too-deep'], ['too-smooth']),
  )
  .map(([methods, because, why]) => methods.map((method) => ({ method, because, why })));

const zones = fc
  .record({
    depth: one('depth'),
    looseness: one('looseness'),
    contamination: some('contamination'),
    texture: one('texture'),
    cracks: one('cracks'),
    steel: one('steel'),
    loss: fc.option(one('barLoss'), { nil: undefined }),
    finish: one('finish'),
    area: fc.constantFrom<number | 'unknown'>('unknown', 0.5, 12),
    border: fc.constantFrom(undefined, 0, 7),
    makerProfile: fc.constantFrom(undefined, undefined, 2, 4, 8),
    makerMoisture: fc.constantFrom(undefined, undefined, 'damp', 'dry'),
    triedOut: failed,
    stopped: fc.constantFrom([], [], [], ['hollow-below']),
  })
  .map(({ loss, border, makerProfile, makerMoisture, triedOut, stopped, ...zone }) => ({
    ...zone,
    ...(triedOut.length && { triedOut }),
    ...(stopped.length && { stopped }),
    ...(loss && zone.steel === 'corroded' && { barLoss: loss }),
    ...(border !== undefined && { border }),
    ...(makerProfile !== undefined && { makerProfile }),
    ...(makerMoisture !== undefined && { makerMoisture }),
  })) as fc.Arbitrary<SettledZone>;

const cases = fc.sample(fc.tuple(sites, zones), { seed: 2026, numRuns: 4000 });
const advices = [
  ...cases.map(([site, zone]) => adviseSettled(site, zone)),
  adviseZone({ element: ['slab'] }, { depth: ['under-3', 'over-50'], finish: ['overlay'] }),
  adviseZone({}, {}),
];
const speakers = [formatter('metric'), formatter('us')];

/** Every different sentence the cases are told in. */
const told = (say: Say) => {
  const texts = new Map<string, ReturnType<typeof spokenBy>[number]>();
  for (const advice of advices)
    for (const each of spokenBy(advice, say)) texts.set(`${each.at} ${each.text}`, each);
  return [...texts.values()];
};

describe('advice over thousands of cases', () => {
  it.each(speakers.map((say) => [say.units, say] as const))(
    'is told in whole sentences in the house spelling, in %s',
    (_units, say) => {
      const sentences = told(say);
      expect(sentences.length).toBeGreaterThan(150);
      for (const { at, text, whole } of sentences) {
        expect(text, at).not.toMatch(broken);
        // What speaks against a method follows its name and a colon.
        expect(text, at).toMatch(whole ? sentence : /^[a-z].*\.$/);
        expect(text.length, at).toBeLessThan(420);
        for (const stranger of strangers) expect(text, at).not.toMatch(stranger);
      }
    },
  );

  it('takes every number from what the rule saw or from a figure', () => {
    for (const { at, text } of told(mute)) expect(text, at).not.toMatch(/\d/);
  });

  it('puts every rule that can be raised into words', () => {
    const heard = new Set<RuleId>();
    for (const { rule } of told(mute)) heard.add(rule);
    expect(ruleIds.filter((rule) => !heard.has(rule))).toEqual([]);
  });

  it('names whom to call in every hold', () => {
    const [say] = speakers as [Say];
    const calls = {
      engineer: /licensed structural engineer/,
      laboratory: /testing laboratory/,
      locator: /service that locates/,
      'concrete-contractor': /concrete contractor/,
      // Nobody is called: the crew is told what to do.
      crew: /Measure the|Sound round|Open the crack|Find where|Find that out/,
    } satisfies Record<Hold['who'], RegExp>;
    const seen = new Set<string>();
    for (const hold of advices.flatMap(({ holds }) => holds)) {
      seen.add(hold.who);
      expect(words.rules[hold.rule](hold, say), hold.rule).toMatch(calls[hold.who]);
    }
    expect([...seen].sort()).toEqual(Object.keys(calls).sort());
  });

  it('shows a value the rule saw', () => {
    const [say] = speakers as [(typeof speakers)[0]];
    const heard = (rule: RuleId, facts: Record<string, string | number | readonly string[]>) =>
      words.rules[rule]({ rule, facts }, say);
    expect(
      heard('past-its-reach', { looseness: 'flaking', depth: '6-to-20', reach: 'under-3' }),
    ).toBe(
      'would stop too soon. The damage is 6.4 to 20 mm deep, and on flaking concrete this method reaches only 3.2 mm.',
    );
    expect(heard('too-smooth-after', { leaves: 2, needs: 5 })).toContain('CSP 2 at the roughest');
    expect(heard('leaves-contaminant', { contamination: ['growth', 'thin-coating'] })).toContain(
      'the growth and the thin coating',
    );
    expect(heard('full-depth', { half: 50, thickness: 100 })).toContain('50 mm');
  });
});

// A practice case said that nothing had to be taken off, and in the next line that its skin had to.
it('a sound surface whose closed skin comes off is not told that nothing does', () => {
  const site: SettledSite = {
    element: 'slab',
    setting: 'indoors',
    salts: 'none',
    freezeThaw: 'rare',
    thickness: 120,
    warnings: [],
  };
  const zone: SettledZone = {
    depth: 'film',
    looseness: 'tight',
    contamination: [],
    texture: 'smooth',
    cracks: 'none',
    steel: 'none-seen',
    finish: 'thin-film',
    area: 20,
  };
  const { reasons } = adviseSettled(site, zone);
  const rules = reasons.map(({ rule }) => rule);
  expect(rules).toContain('nothing-to-remove');
  expect(rules).toContain('trowelled-is-closed');
  const say = formatter('metric');
  const said = reasons.map((reason) => ruleSentences[reason.rule](reason, say)).join(' ');
  expect(said).toMatch(/closed skin/);
  expect(said).not.toMatch(/nothing (has|have) to (be taken|come) off/i);
});
