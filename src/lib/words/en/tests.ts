import type { TestId } from '$lib/advice/types';
import type { Say, TestWords } from '$lib/words/types';
import { fieldTests } from './tests/field';
import { expertTests } from './tests/expert';

/** What an owner does instead, where the test itself is not theirs. */
export const ownersTest: Readonly<Partial<Record<TestId, readonly string[]>>> = {
  'measure-depth': [
    'Take nothing out. Lay a straight edge across the worst spot.',
    'Measure down to the bottom. If that is loose or sounds hollow, a contractor measures.',
  ],
  scrape: [
    'Draw a coin over one small spot, but not over old paint.',
    'If it takes nothing, it is tight. If thin flakes lift, it is flaking.',
  ],
  'measure-thickness': [
    'Measure at a free edge, a joint, a drain or a hole.',
    'If there is none, look for the drawings. Drill nothing.',
  ],
  'measure-bar': [
    'Do not clean it, measure it or dig for it.',
    'Lay a rule beside it and take a photo. Send it to a contractor or an engineer.',
  ],
  'ask-owner': [
    'Think back, or ask who had it before you: how old it is, what was spilled or painted on it, and whether it is salted.',
    'Look for drawings, and for what was repaired before.',
  ],
  'look-at-steel': [
    'Shine a light into holes and cracks. Look for bars, mesh and brown lines. Scrape nothing.',
    'Take photos. If you see rust, send them to a contractor or an engineer.',
  ],
};

/** The tests that settle an answer, in English. */
export const testWords = (say: Say): Readonly<Record<TestId, TestWords>> => ({
  ...fieldTests(say),
  ...expertTests(say),
});
