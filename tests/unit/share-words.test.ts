import { expect, it } from 'vitest';
import { pointSentences } from '$words/owner';
import { shareSaid } from '$words/shares';
import { formatter } from '../helpers/plain-formatter';

const say = formatter('us');

// Nobody has measured a surface to one part in a hundred: an owner hears "nearly all", not "99%".
it.each([
  [1, 'all'],
  [0.996, 'all'],
  [0.99, 'nearly all'],
  [0.95, 'nearly all'],
  [0.94, '94%'],
  [0.5, '50%'],
  [0.01, '1%'],
  [0.009, 'less than 1%'],
  [0.004, 'less than 1%'],
  [0, '0%'],
])('a share of %d is said "%s"', (share, said) => {
  expect(shareSaid(share, say)).toBe(said);
});

it('begins a sentence with a capital', () => {
  expect(pointSentences['mostly-sound']({ id: 'mostly-sound', share: 0.99 }, say)).toBe(
    'Nearly all of the whole surface is sound.',
  );
});
