import { expect, it } from 'vitest';
import { ruleIds } from '$lib/advice/rules';
import type { Reason } from '$lib/advice/types';
import { words } from '$lib/words';
import { formatter } from '../helpers/plain-formatter';
import { measuresIn, meant, says } from '../helpers/read-back';
import { rulesSay, textsSay } from '../helpers/sentence-figures';
import { advices } from '../helpers/settled-cases';
import { broken, sentence } from '../helpers/words';

/**
 * Every rule as the engine gives it in real cases, and every method, step and hazard, in both systems of
 * units: the figures in the sentence are read back, and are those that belong there, in their order.
 * Readers differ in the order of a page, never in a sentence (components/advice.test.ts).
 */
const speakers = [formatter('metric'), formatter('us')];

/** The sources that a sentence names; fails where a number is none of those that come next. */
function readBack(text: string, sources: readonly string[], facts?: Reason['facts']): string[] {
  let from = 0;
  return measuresIn(text).map((measure) => {
    const next = sources.findIndex(
      (source, place) => place >= from && says(measure, meant(source, facts)),
    );
    expect(
      next,
      `“${measure.said}” in “${text}” (${JSON.stringify(facts)}) is not ${sources.slice(from).join(', ')}`,
    ).not.toBe(-1);
    from = next + 1;
    return sources[next] as string;
  });
}

const given = new Map<string, Map<string, readonly [Reason, boolean]>>();
for (const { reasons, holds, steps, rejections } of advices)
  for (const [list, whole] of [
    [[...reasons, ...holds, ...steps.flatMap(({ why }) => why)], true],
    [rejections, false],
  ] as const)
    for (const reason of list) {
      const cases = given.get(reason.rule) ?? new Map<string, readonly [Reason, boolean]>();
      cases.set(JSON.stringify([reason.facts, reason.figures]), [reason, whole]);
      given.set(reason.rule, cases);
    }

it.each(ruleIds)('%s says its own figures, in every case that differs', (rule) => {
  const sources = rulesSay[rule] ?? [];
  const cases = [...(given.get(rule)?.values() ?? [])];
  expect(cases).not.toEqual([]);
  for (const say of speakers) {
    const named = new Set<string>();
    for (const [reason, whole] of cases) {
      const text = words.rules[rule](reason, say);
      expect(text).not.toMatch(broken);
      expect(text).toMatch(whole ? sentence : /^[a-z].*\.$/);
      for (const source of readBack(text, sources, reason.facts)) named.add(source);
    }
    expect([...named].sort()).toEqual([...sources].sort());
  }
});

it('what a rule reckons from the thickness is that share of it', () => {
  for (const [rule, share, fact] of [
    ['full-depth', 1 / 2, 'half'],
    ['thickness-decides', 1 / 2, 'half'],
    ['depth-past-third', 1 / 3, 'third'],
  ] as const)
    for (const [{ facts }] of given.get(rule)?.values() ?? [])
      if (facts?.[fact]) expect(facts[fact]).toBeCloseTo(Number(facts.thickness) * share, 1);
});

it.each(['methods', 'steps', 'hazards'] as const)('%s say their own figures', (kind) => {
  for (const say of speakers) {
    const found: Record<string, string[]> = {};
    const walk = (value: unknown, at: string): void => {
      if (typeof value === 'string') {
        const named = readBack(value, textsSay[at] ?? []);
        if (named.length) found[at] = named;
      } else if (value && typeof value === 'object')
        for (const [key, inner] of Object.entries(value)) walk(inner, `${at}.${key}`);
    };
    walk(words[kind](say), kind);
    const wanted = Object.entries(textsSay).filter(([at]) => at.startsWith(`${kind}.`));
    expect(found).toEqual(Object.fromEntries(wanted));
  }
});
