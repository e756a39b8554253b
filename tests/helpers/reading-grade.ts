import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** A text as sentences: what ends in a full stop, a question mark or an exclamation mark. */
export const sentencesOf = (text: string): string[] =>
  text.split(/(?<=[.!?])["”’]?\s+/).filter((sentence) => /[a-z]/i.test(sentence));

export const wordsOf = (text: string): string[] => text.match(/[a-zà-ÿ]+(?:['’-][a-z]+)*/gi) ?? [];

/**
 * Flesch-Kincaid grade of a text: years of US school; grade 6 is an age of about 12.
 * Formula: Kincaid and others, 1975, through the `flesch-kincaid` library; syllables through `syllable`.
 */
export function readingGrade(text: string): number {
  const words = wordsOf(text);
  return fleschKincaid({
    sentence: sentencesOf(text).length,
    word: words.length,
    syllable: words.reduce((sum, word) => sum + syllable(word), 0),
  });
}
