import { describe, expect, it } from 'vitest';
import { words } from '$lib/words';
import { formatter } from '$lib/words/format';
import { hazardIds } from '$shared/methods';
import { ownerTexts } from '../helpers/words';
import { readingGrade, sentencesOf, wordsOf } from '../helpers/reading-grade';

/**
 * An owner's text is to be read at an age of about 12, which is the Flesch-Kincaid grade 6.
 * Grades favour short words, so the length of a sentence has a limit of its own.
 */
const highestGrade = 6;
const longestSentence = 26;

const say = formatter('us');
const questions = ownerTexts(say);
const verdictTexts = [
  words.verdicts.verdicts,
  words.verdicts.who,
  words.verdicts.moisture,
  words.verdicts.bruisedSkin,
  words.verdicts.bases,
].map((group) =>
  Object.values(group)
    .map(({ line }) => line)
    .join(' '),
);
const hazards = words.hazards(say);

describe('the measure', () => {
  it('tells easy text from hard text', () => {
    expect(readingGrade('The cat sat on the mat. The dog ran to it.')).toBeLessThan(2);
    expect(
      readingGrade(
        'Deterioration attributable to reinforcement corrosion necessitates comprehensive investigation prior to rehabilitation.',
      ),
    ).toBeGreaterThan(15);
  });
});

describe('what an owner reads', () => {
  it.each(questions.map(({ id, text }) => [id, text] as const))('question %s', (_id, text) => {
    expect(readingGrade(text)).toBeLessThanOrEqual(highestGrade);
    for (const sentence of sentencesOf(text))
      expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(longestSentence);
  });

  it.each(hazardIds)('hazard %s', (id) => {
    const { harm, controls, stop } = hazards[id];
    const text = [harm, ...controls, stop].join(' ');
    expect(readingGrade(text)).toBeLessThanOrEqual(highestGrade);
    for (const sentence of sentencesOf(text))
      expect(wordsOf(sentence).length, sentence).toBeLessThanOrEqual(longestSentence);
  });

  it('verdicts, whom to call, and what must not be done alone', () => {
    for (const text of [...verdictTexts, Object.values(words.verdicts.ownerLimits).join(' ')])
      expect(readingGrade(text)).toBeLessThanOrEqual(highestGrade);
  });

  it('is easier than the limit on the whole', () => {
    const grades = questions.map(({ text }) => readingGrade(text));
    const mean = grades.reduce((sum, grade) => sum + grade, 0) / grades.length;
    console.info(
      `questions: mean grade ${mean.toFixed(1)}, highest ${Math.max(...grades).toFixed(1)}`,
    );
    expect(mean).toBeLessThanOrEqual(4);
  });
});
