import '@testing-library/jest-dom/vitest';
import { cleanup, render } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { rest } from '$lib/ui/advice/arriving.svelte';
import Hazards from '$lib/ui/advice/Hazards.svelte';
import { speech } from '$lib/ui/speech.svelte';
import { hazardIds } from '$shared/methods';
import { hazardWords } from '$words/hazards';
import { hazardShort } from '$words/hazards/short';

vi.setConfig({ testTimeout: 60_000 });
beforeAll(() => rest.load());
afterEach(cleanup);

const tiles = () => [...document.querySelectorAll<HTMLDetailsElement>('.signs > details')];
const words = (element: Element | null | undefined) =>
  element?.textContent?.replace(/\s+/g, ' ') ?? '';

describe('the tiles of the hazards', () => {
  it('are one for each, with its sign and its short name; what it does is hidden until it is opened', () => {
    render(Hazards, { cautions: hazardIds });
    expect(tiles()).toHaveLength(hazardIds.length);
    for (const [at, id] of hazardIds.entries()) {
      const tile = tiles()[at];
      expect(tile?.open, id).toBe(false);
      const summary = tile?.querySelector('summary');
      expect(summary).toHaveAttribute('id', `hazard-${id}`);
      expect(words(summary).trim()).toBe(hazardShort[id]);
      expect(summary?.querySelector('.sign svg'), id).not.toBeNull();
    }
    // Two that look alike would be one to whoever does not open them.
    expect(new Set(tiles().map((tile) => tile.querySelector('svg')?.innerHTML)).size).toBe(
      hazardIds.length,
    );
  });

  it.each(hazardIds)(
    '%s, opened, tells when to stop, what it does, and what helps, best first',
    async (id) => {
      render(Hazards, { cautions: [id, ...hazardIds.filter((each) => each !== id)] });
      const [tile, next] = tiles();
      await userEvent.setup().click(tile?.querySelector('summary') as HTMLElement);
      expect(tile?.open).toBe(true);
      expect(next?.open).toBe(false);
      const { stop, controls, harm } = hazardWords(speech.say)[id];
      await vi.waitFor(() => expect(tile?.querySelector('.card')).not.toBeNull(), {
        timeout: 20_000,
      });
      // A word of the glossary brings its meaning along: the sentences are told by how they begin.
      const begins = (text: string) => text.split(/\s+/).slice(0, 2).join(' ');
      const told = [...(tile?.querySelectorAll('.card > p:not(.no-print), .card li') ?? [])];
      expect(told.map((each) => begins(words(each).trim()))).toEqual(
        [stop, harm, ...controls].map(begins),
      );
    },
  );
});
