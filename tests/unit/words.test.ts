import { describe, expect, it } from 'vitest';
import { choicesOf, questionIds } from '$lib/answers/questions';
import { testIds } from '$lib/advice/types';
import { ruleIds } from '$lib/advice/rules';
import { words } from '$lib/words';
import { possibleHoldSentences } from '$words/rules/possible-holds';
import { formatter } from '$lib/words/format';
import type { Say } from '$lib/words/types';
import { hazardIds, methodIds, stepIds } from '$shared/methods';
import { allTexts, broken, mute, sentence, strangers } from '../helpers/words';

const speakers = [formatter('metric'), formatter('us')];

describe('every part has its words', () => {
  it.each(speakers.map((say) => [say.units, say] as const))('in %s', (_units, say) => {
    const questions = words.questions(say);
    expect(Object.keys(questions).sort()).toEqual([...questionIds].sort());
    for (const id of questionIds) {
      expect(Object.keys(questions[id].choices).sort()).toEqual([...choicesOf(id)].sort());
      expect(questions[id].find.length, id).toBeGreaterThan(0);
      expect(questions[id].ask, id).toMatch(/\?$/);
    }
    const steps = words.steps(say);
    expect(Object.keys(steps).sort()).toEqual([...stepIds].sort());
    for (const id of stepIds) expect(steps[id].how.at(-1), id).toMatch(/^Done when /);
    const hazards = words.hazards(say);
    expect(Object.keys(hazards).sort()).toEqual([...hazardIds].sort());
    for (const id of hazardIds) expect(hazards[id].controls.length, id).toBeGreaterThanOrEqual(4);
    expect(Object.keys(words.tests(say)).sort()).toEqual([...testIds].sort());
    expect(Object.keys(words.methods(say)).sort()).toEqual([...methodIds].sort());
    expect(Object.keys(words.rules).sort()).toEqual([...ruleIds].sort());
  });

  it.each(speakers.map((say) => [say.units, say] as const))(
    'whole sentences in %s',
    (_units, say) => {
      const texts = allTexts(say);
      expect(texts.length).toBeGreaterThan(400);
      for (const { at, text } of texts) {
        expect(text.trim(), at).not.toBe('');
        expect(text, at).not.toMatch(broken);
        expect(text, at).not.toMatch(/ {2}|\.\.| [.,;:]/);
      }
      for (const { at, text } of texts.filter(({ whole }) => whole))
        expect(text, at).toMatch(sentence);
    },
  );

  it('gives each choice of a question a name of its own', () => {
    const questions = words.questions(speakers[0] as (typeof speakers)[0]);
    for (const id of questionIds) {
      const names = Object.values(questions[id].choices).map(
        (choice) => (choice as { name: string }).name,
      );
      expect(new Set(names).size, id).toBe(names.length);
    }
  });
});

describe('what may stand before the work', () => {
  const told = (say: Say) =>
    Object.values(possibleHoldSentences).map((sentenceOf) =>
      sentenceOf({ rule: 'full-depth', facts: { half: 50 } }, say),
    );

  it('is told as an if, never as a fact', () => {
    for (const text of speakers.flatMap(told)) {
      expect(text).toMatch(/^If [a-z]/);
      expect(text).toMatch(sentence);
      expect(text).not.toMatch(broken);
      for (const stranger of strangers) expect(text).not.toMatch(stranger);
    }
  });

  it('takes its numbers from figures and from what the rule saw', () => {
    for (const text of told(mute)) expect(text).not.toMatch(/\d/);
  });
});

describe('numbers', () => {
  it('come from figures through the formatter, never typed into a sentence', () => {
    for (const { at, text } of allTexts(mute)) expect(text, at).not.toMatch(/\d/);
  });

  it('say what is wrong and what to do, with the limit', () => {
    const { numbers } = words;
    expect(numbers.tooLarge('2 m')).toContain('2 m');
    expect(numbers.tooSmall('30 mm')).toContain('30 mm');
    expect(numbers.notNumber('ten')).toContain('ten');
    expect(numbers.deeperThanSlab('100 mm')).toContain('100 mm');
  });
});

describe('the trade’s words', () => {
  it('are spelled one way', () => {
    for (const { at, text } of speakers.flatMap((say) => allTexts(say)))
      for (const stranger of strangers) expect(text, at).not.toMatch(stranger);
  });

  it('keep a reader from doubt about who comes first', () => {
    for (const first of ['law', 'local codes', 'maker', 'licensed professional'])
      expect(words.verdicts.deferral).toContain(first);
  });
});
