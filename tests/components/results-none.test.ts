import { cleanup, render } from '@testing-library/svelte';
import { afterEach, expect, it } from 'vitest';
import type { ResultOf } from '$lib/advice/zone-advice';
import Results from '$lib/ui/advice/Results.svelte';
import { speech } from '$lib/ui/speech.svelte';
import { questionWords } from '$words/questions';

afterEach(cleanup);

const result = (choice: string | null, stops = false) =>
  ({
    choice,
    outcomes: stops
      ? [{ verdict: 'stop', method: null }]
      : [{ verdict: 'prepare', method: 'grind' }],
    brings: [],
  }) as unknown as ResultOf;
const rows = (question: 'warnings' | 'contamination', ...choices: string[]) => {
  const results = [result(null), ...choices.map((choice) => result(choice, true))];
  render(Results, { question, results, words: questionWords(speech.say), waiting: false });
  return [...document.querySelectorAll('dt')].map((each) => each.textContent?.trim());
};

// A result has to say of what it is the result.
it('names the one thing that may be there where it is not', () => {
  expect(rows('warnings', 'old-coating-or-adhesive')).toEqual([
    'Not there: Lead or asbestos',
    'Lead or asbestos',
  ]);
});
it('says what none is of, where there may be several', () => {
  expect(rows('warnings', 'old-coating-or-adhesive', 'map-cracking')[0]).toBe(
    'None of the signs that may be there',
  );
  cleanup();
  expect(rows('contamination', 'oil', 'growth')[0]).toBe('Nothing of what may be on it');
});
