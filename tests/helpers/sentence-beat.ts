import { plainText } from '$lib/learn/plain-text';
import { wordsOf } from './reading-grade';

/** The beat of a page: how long its sentences are. */
export interface Beat {
  /** Sentences, list items and labels that end in a full stop, a question or an exclamation mark. */
  readonly sentences: number;
  /** Words a sentence, on average. */
  readonly mean: number;
  /** Share of sentences with fewer than six words, 0 to 1. */
  readonly short: number;
}

const telegram = 6;

/** Words as a reader counts them: a figure with its unit is one word for the number and one for the unit. */
const lengthOf = (sentence: string) =>
  wordsOf(sentence).length + (sentence.match(/(?<![\w.,/])\d[\d.,/]*/g) ?? []).length;

/**
 * Measures an explainer's Markdown. Headings and tables are no sentences; a new line ends one.
 */
export function beatOf(body: string): Beat {
  const lengths = plainText(body.replace(/^\|.*$/gm, ''))
    .split(/(?<=[.!?])["”’)]*\s+|\n+/)
    .map(lengthOf)
    .filter((length) => length > 0);
  const words = lengths.reduce((sum, length) => sum + length, 0);
  return {
    sentences: lengths.length,
    mean: words / lengths.length,
    short: lengths.filter((length) => length < telegram).length / lengths.length,
  };
}
