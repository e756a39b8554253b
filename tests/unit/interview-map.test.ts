import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { render } from 'svelte/server';
import { describe, expect, it } from 'vitest';
import { interview } from '$lib/interview/machine';
import { interviewMap } from '$lib/interview/map';
import { choicesOf, questionIds, questions, type QuestionId } from '$lib/answers/questions';
import Page from '../../src/routes/learn/interview-map/+page.svelte';
import { toTheEnd } from '../helpers/answers-given';
import { load } from '../../src/routes/learn/interview-map/+page.server';
import { onTrial, rounds } from '../helpers/rounds';

const map = interviewMap();
const { body } = render(Page as never, { props: { data: load() } as never });
const { document } = new JSDOM(body).window;
const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];

interface Arrow {
  readonly from: string;
  readonly to: string;
}
const named = ({ from, to }: Arrow) => `${from} ${to}`;

/** Any answer to a question: certain, several, or not sure. */
const anyAnswer = (id: QuestionId): fc.Arbitrary<unknown> => {
  const { kind } = questions[id];
  if (kind === 'number') return fc.oneof(fc.constant('unknown'), fc.integer({ min: 1, max: 400 }));
  const choices = choicesOf(id);
  if (kind === 'many')
    return fc.record({
      yes: fc.subarray([...choices], { maxLength: 2 }),
      maybe: fc.constant([]),
    });
  return fc.oneof(
    fc.constantFrom(...choices).map((choice) => [choice]),
    fc.subarray([...choices], { minLength: 1 }),
  );
};
const anyAnswers = fc.record(
  Object.fromEntries(questionIds.map((id) => [id, anyAnswer(id)])) as Record<
    QuestionId,
    fc.Arbitrary<unknown>
  >,
);

describe('the map of the interview', () => {
  it('shows every state of the machine once, each question linked to its page', () => {
    const states = Object.keys(interview.states);
    const boxes = all('svg [data-state]').map(({ dataset }) => dataset.state);
    expect([...boxes].sort()).toEqual([...states].sort());
    for (const id of questionIds)
      expect(document.querySelector(`svg a[data-state="${id}"]`)?.getAttribute('href')).toBe(
        `../../assess/${id}/`,
      );
  });

  it('lets no name run out of its box on a phone', () => {
    const lines = all('svg a .name').map(({ textContent }) => textContent.trim());
    // 20 heavy letters of 12.5 px are at most 150 px wide; the box has 168.
    expect(lines.filter((line) => line.length > 20)).toEqual([]);
    expect(lines).toEqual(expect.arrayContaining(['16. Thickness of the', 'bar']));
    for (const box of all('svg a')) expect(box.querySelectorAll('.name').length).toBeLessThan(3);
  });

  it('says that a question further up is gone back to, and why', () => {
    const order = all('[data-question]').map(({ dataset }) => dataset.question);
    for (const item of all('[data-question]'))
      for (const line of item.querySelectorAll<HTMLElement>('[data-to]')) {
        const up = order.indexOf(line.dataset.to) < order.indexOf(item.dataset.question);
        if (line.dataset.why || line.dataset.to === 'done') continue;
        expect(line.textContent).toMatch(up ? /^Or back to .* count after all/ : /^Then: /);
      }
  });

  it('draws only arrows that the machine can take', () => {
    const targets = interview.states.next?.always?.map(({ target }) => target?.[0]?.key) ?? [];
    for (const { from, to } of map.arrows) {
      const answer = interview.states[from]?.on.ANSWER;
      expect(
        answer?.map(({ target }) => target?.[0]?.key),
        named({ from, to }),
      ).toEqual(['next']);
      expect(targets, named({ from, to })).toContain(to);
    }
  });

  it('has every arrow that any answers lead along', () => {
    const drawn = new Set(map.arrows.map(named));
    fc.assert(
      fc.property(anyAnswers, (answers) => {
        for (const arrow of toTheEnd((question) => answers[question]).steps)
          expect(drawn).toContain(named(arrow));
      }),
      // While rules are changed for trial each step takes long, and a few walks tell.
      { numRuns: onTrial(rounds(15, 60), 6) },
    );
  });

  it('draws each arrow, and says each in words with its reason', () => {
    const paths = all('svg path[data-from]').map(({ dataset }) => dataset);
    const drawn = paths.map(({ from = '', to = '' }) => named({ from, to }));
    expect([...drawn].sort()).toEqual(
      [...new Set(['next element', ...map.arrows.map(named)])].sort(),
    );
    for (const { from, to, why } of map.arrows) {
      const lines = all(`li[data-question="${from}"] [data-to="${to}"]`);
      expect(lines.filter(({ dataset }) => dataset.why === (why ?? '')).length).toBe(1);
    }
  });

  it('gives each jump a single reason for all it passes over', () => {
    for (const { why, skipped } of map.arrows)
      expect(skipped.every((each) => each.why === why)).toBe(true);
    expect(map.arrows.filter(({ why }) => why).length).toBeGreaterThan(5);
  });
});
