import { cleanup, render } from '@testing-library/svelte';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { questions } from '$lib/answers/questions';
import AdvicePage from '$lib/ui/advice/AdvicePage.svelte';
import { rest, whileOpen } from '$lib/ui/advice/arriving.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { boatShed } from '../helpers/boat-shed';

/** Every warning sign "Not sure". */
const unsure = { warnings: { yes: [], maybe: questions.warnings.choices } };
const balcony = boatShed(
  { element: ['suspended-slab'], ...unsure },
  { looseness: ['hollow'], depth: undefined },
);

// Rendering a whole page takes its time on a busy machine.
vi.setConfig({ testTimeout: 120_000 });
beforeAll(() => Promise.all([rest.load(), whileOpen.load()]));
beforeEach(() => {
  preferences.reader = 'own';
});
afterEach(() => {
  cleanup();
  preferences.reader = null;
});
const words = (element: Element | null) => element?.textContent?.replace(/\s+/g, ' ') ?? '';
async function shown(given: Job): Promise<void> {
  await session.startNew(given);
  render(AdvicePage, { zone: null });
}
/** What nothing has to be unfolded for. */
const inSight = () => {
  const page = document.body.cloneNode(true) as HTMLElement;
  for (const folded of page.querySelectorAll('details')) folded.remove();
  return words(page);
};

// Common practice, no source: a hollow balcony is cleared and an engineer called; its owner tests nothing.
describe('an owner whom the page tells to keep off', () => {
  it('reads on the first screen to keep off and whom to call, and of no test', async () => {
    await shown(balcony);
    const said = words(document.querySelector('.said'));
    expect(said).toContain('Keep people off it and from under it.');
    expect(said).toContain('Call a licensed structural engineer.');
    expect(said).not.toMatch(/may come to a stop|Look round|Take off|Enter the result/);
  });

  it('reads why without opening anything, and of no step to do there', async () => {
    await shown(balcony);
    expect(words(document.querySelector('.body h2'))).toMatch(/What may have to come first/);
    expect(inSight()).toContain('If it is hollow where it hangs free, an engineer has its depth');
    const page = words(document.body);
    expect(page).not.toMatch(/Do now|Take off no more than a test needs|one small spot/);
    expect(page).toContain('What they test there');
    expect(page).toContain('Whoever you call does these');
    expect(page).not.toMatch(/Lay a straight edge|Walk round/);
  });

  it('is no crew: whoever works on it reads the test, and what to do now', async () => {
    preferences.reader = 'work';
    await shown(balcony);
    expect(words(document.querySelector('.said'))).toMatch(/Look round the place/);
    expect(words(document.body)).toContain('Do now');
  });
});
