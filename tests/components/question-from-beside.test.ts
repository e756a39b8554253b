import { cleanup, render } from '@testing-library/svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { QuestionId } from '$lib/answers/questions';
import { preferences } from '$lib/ui/preferences.svelte';
import { loadParts } from '$lib/ui/question/load';
import QuestionPage from '$lib/ui/question/QuestionPage.svelte';
import { session } from '$lib/ui/session.svelte';
import { boatShed } from '../helpers/boat-shed';

vi.setConfig({ testTimeout: 60_000 });
afterEach(() => {
  cleanup();
  preferences.reader = null;
});

/** What stands under “Find out how”. */
async function finding(question: QuestionId, element: string, reader: 'own' | 'work') {
  preferences.reader = reader;
  await session.startNew(boatShed({ element: [element] }, {}));
  render(QuestionPage, { question, parts: await loadParts(question), zone: 'a' });
  return document.querySelector('.find')?.textContent?.replace(/\s+/g, ' ') ?? '';
}

// Common practice, no source: to find out about a balcony or a soffit nobody is sent onto or under it.
describe('how to find out', () => {
  it.each(['own', 'work'] as const)(
    'sends nobody onto a balcony for warning signs: %s',
    async (reader) => {
      const told = await finding('warnings', 'suspended-slab', reader);
      expect(told).toMatch(/Look from firm ground beside it, not from on it or under it/);
      expect(told).not.toMatch(/Walk all round|straight board/);
      expect(told).toMatch(/Ask whoever owned/);
    },
  );
  it('lays a board only where a crew stands on the ground', async () => {
    expect(await finding('warnings', 'slab', 'work')).toMatch(/straight board/);
    cleanup();
    expect(await finding('warnings', 'slab', 'own')).not.toMatch(/straight board/);
  });
  it('has no owner tap a soffit; they look, ask, or say that they do not know', async () => {
    const told = await finding('looseness', 'soffit', 'own');
    expect(told).not.toMatch(/Tap|chain|scraper/);
    expect(told).toMatch(
      /Do not go on it or under it.*or ask who knows it. Else choose “Not sure”/,
    );
  });
  it('says so to an owner in the open, before anybody opens anything', async () => {
    const open = /Look from beside it: nobody goes on it or under it\./;
    await finding('looseness', 'suspended-slab', 'own');
    expect(document.querySelector('section > p > b')?.textContent).toMatch(open);
    cleanup();
    // A crew has its own way there, under “Find out how”.
    await finding('looseness', 'suspended-slab', 'work');
    expect(document.body.textContent).not.toMatch(open);
    cleanup();
    await finding('looseness', 'slab', 'own');
    expect(document.body.textContent).not.toMatch(open);
  });
  it('has a crew tap it from beside it, with nobody below', async () => {
    const told = await finding('looseness', 'soffit', 'work');
    expect(told).toMatch(/Nobody stands under it.*on a tower or a lift.*Tap it with a hammer/);
    cleanup();
    expect(await finding('looseness', 'slab', 'work')).not.toMatch(/tower/);
  });
  it('sends nobody under it to see whether it hangs', async () => {
    const told = await finding('element', 'slab', 'own');
    expect(told).toMatch(/Look from the side, not from under it/);
    expect(told).not.toMatch(/Look underneath/);
  });
});
