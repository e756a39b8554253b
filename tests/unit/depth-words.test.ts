import { expect, it } from 'vitest';
import { questionWords } from '$words/questions';
import { formatter } from '$lib/words/format';

// Common practice, no source: whoever has a sound surface has to find it among the depths.
it('a sound surface finds itself among the depths of damage', () => {
  const { film } = questionWords(formatter('metric')).depth.choices;
  expect(film.name).toMatch(/^Nothing, or skin only/);
});
