import { explainers, glossary } from '$lib/learn/library.server';
import { depthsOf, plainText } from '$lib/learn/plain-text';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { describe, expect, it } from 'vitest';

/**
 * Flesch-Kincaid grade: years of US school. Grade 6 to 7 is an age of about 12.
 * Formula: Kincaid and others, 1975 (through the library).
 */
function gradeOf(text: string): number {
  const sentences = text
    .split(/(?<=[.!?])["”’]?\s+|\n+/)
    .filter((sentence) => /[a-z]/i.test(sentence));
  const words = text.match(/[a-zà-ÿ]+(?:['’-][a-z]+)*/gi) ?? [];
  return fleschKincaid({
    sentence: sentences.length,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  });
}

const plainOf = (body: string) => plainText(depthsOf(body).plain);
const owned = explainers.filter(({ front }) => front.readers.includes('owns'));
const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('reading age of what owners read', () => {
  it('tells easy text from hard text', () => {
    expect(gradeOf('The cat sat on the mat. The dog ran to it.')).toBeLessThan(2);
    expect(
      gradeOf(
        'Deterioration attributable to reinforcement corrosion necessitates comprehensive investigation prior to rehabilitation.',
      ),
    ).toBeGreaterThan(15);
  });

  it.each(owned.map((page) => [page.slug, page] as const))('%s reads easily', (_, page) => {
    expect(gradeOf(plainOf(page.body))).toBeLessThanOrEqual(7);
  });

  it('is about 12 or less over all pages', () => {
    const grades = owned.map((page) => gradeOf(plainOf(page.body)));
    console.info(
      `plain part of ${owned.length} pages: mean grade ${mean(grades).toFixed(1)}, highest ${Math.max(...grades).toFixed(1)}`,
    );
    expect(mean(grades)).toBeLessThanOrEqual(6);
  });

  it('holds for the glossary as a whole', () => {
    const grade = gradeOf(
      Object.values(glossary)
        .map(({ says }) => says)
        .join('\n'),
    );
    expect(grade).toBeLessThanOrEqual(7);
  });
});
