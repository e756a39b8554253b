import { describe, expect, it } from 'vitest';
import { ruleIds, type RuleId } from '$lib/advice/rules';
import { adviseSettled } from '$lib/advice/settle';
import type { Hold, SettledSite, SettledZone } from '$lib/advice/types';
import { words } from '$lib/words';
import { ruleSentences } from '$words/rules';
import { formatter } from '../helpers/plain-formatter';
import type { Say } from '$lib/words/types';
import { advices } from '../helpers/settled-cases';
import { broken, mute, sentence, spokenBy, strangers } from '../helpers/words';

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
      'would stop too soon. The damage is 6 to 20 mm deep, and on flaking concrete this method reaches only 3 mm.',
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
