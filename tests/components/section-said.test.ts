import { render } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import type { SiteAnswers, ZoneAnswers } from '$lib/answers/answers';
import CrossSection from '$lib/drawing/CrossSection.svelte';
import type { Hole } from '$lib/drawing/section/state';
import type { Formatter } from '$lib/words/types';
import { untied } from '../helpers/plain-formatter';

const holeNote = ({ least, most }: Hole, say: Formatter) =>
  `finished hole: ${say.lengths(least, most)}`;
const section = (element: 'wall' | 'slab', zone: ZoneAnswers) => {
  const site: SiteAnswers = { element: [element], thickness: 150 };
  return render(CrossSection, {
    props: { site, zone, units: 'metric', label: 'Cut through', holeNote },
  }).container;
};
const hollow: ZoneAnswers = { depth: ['20-to-50'], looseness: ['hollow'] };

// What the reader said is not there is not drawn. A matter of this site, no source.
it('draws bars in a wall of which nobody has spoken, and none where none was seen', () => {
  const marks = (element: 'wall' | 'slab', zone: ZoneAnswers) =>
    section(element, { ...hollow, ...zone }).innerHTML.replace(/\bid="[^"]*"|url\([^)]*\)/g, '')
      .length;
  expect(marks('wall', { steel: ['none-seen'] })).toBeLessThan(marks('wall', {}));
  expect(marks('wall', {})).toBeLessThan(marks('wall', { steel: ['rust-stain'] }));
  // In a slab on the ground none is taken for granted either way.
  expect(marks('slab', {})).toBe(marks('slab', { steel: ['none-seen'] }));
});

it('says the hole of a wall in two lines, since beside a wall there is room for half of it', () => {
  const lines = (element: 'wall' | 'slab') =>
    [...section(element, hollow).querySelectorAll('text')].map(({ textContent }) =>
      untied(textContent).trim(),
    );
  expect(lines('wall')).toEqual(expect.arrayContaining(['finished hole:', '33 to 63 mm']));
  expect(lines('slab')).toContain('finished hole: 33 to 63 mm');
});
