import { cleanup, render, screen, waitFor, within } from '@testing-library/svelte';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import AdvicePage from '$lib/ui/advice/AdvicePage.svelte';
import { rest, whileOpen } from '$lib/ui/advice/arriving.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { boatShed as job } from '../helpers/boat-shed';

const headings = () =>
  [...document.querySelectorAll('.body h2')].map(({ textContent }) => textContent?.trim());

// Rendering a whole page takes its time on a busy machine.
vi.setConfig({ testTimeout: 120_000 });
const patience = { timeout: 60_000 };

// What is folded, and what only open answers need, is fetched apart.
beforeAll(() => Promise.all([rest.load(), whileOpen.load()]));
afterEach(() => {
  cleanup();
  preferences.reader = null;
});

describe('what may not start yet', () => {
  it('says at the top that it may stop, and whom to call, and lists no step as if it might', async () => {
    await session.startNew(
      job({ warnings: { yes: [], maybe: ['holds-something-up'] } }, { depth: ['20-to-50'] }),
    );
    render(AdvicePage, { zone: null });
    const head = screen.getByRole('heading', { level: 1 }).parentElement;
    expect(head).toHaveTextContent('It may come to a stop. Take off no more than a test needs');
    expect(head).toHaveTextContent('call a licensed structural engineer');
    expect(headings()).toContain('Steps, once it may start');
    expect(headings().join()).not.toContain('in any case');
  });

  it('says at the top of a stop whom to call', async () => {
    await session.startNew(job({}, { cracks: ['moving'] }));
    render(AdvicePage, { zone: null });
    const head = screen.getByRole('heading', { level: 1 }).parentElement;
    expect(head).toHaveTextContent('Call a licensed structural engineer.');
  });
});

describe('open answers', () => {
  it('begin with the one test to do now, and what each result would mean', async () => {
    await session.startNew(
      job(
        {},
        {
          looseness: ['powdery', 'fractured', 'hollow'],
          texture: ['sandy', 'pitted'],
        },
      ),
    );
    render(AdvicePage, { zone: null });
    expect(headings()).toContain('Do now');
    expect(headings()).toContain('Ways it may turn out');
    const said = document.querySelector('.said') as HTMLElement;
    await waitFor(() => within(said).getAllByText('What each result would mean'), patience);
    const [first] = within(said).getAllByText('What each result would mean');
    await waitFor(
      () => expect(first?.parentElement?.querySelectorAll('dt').length).toBeGreaterThan(1),
      patience,
    );
    // A count of possibilities reads as a likelihood.
    expect(document.body.textContent).not.toContain('%');
  });
});
