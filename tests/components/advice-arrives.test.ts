import { cleanup, render, waitFor } from '@testing-library/svelte';
import { afterEach, expect, it, vi } from 'vitest';
import AdvicePage from '$lib/ui/advice/AdvicePage.svelte';
import { session } from '$lib/ui/session.svelte';
import { tradeJob } from '../helpers/trade-jobs';

vi.setConfig({ testTimeout: 120_000 });
afterEach(cleanup);

// What the page shows while something is to be found out comes apart from it. A learner once waited
// for it in vain: every answer was given, the thickness and the edge as not sure, and a laboratory asked for.
it('comes where answers are settled and something is to be found out all the same', async () => {
  const site = { thickness: 'unknown', warnings: { yes: ['old-coating-or-adhesive'], maybe: [] } };
  await session.startNew(
    tradeJob(
      [
        {
          contamination: { yes: ['thin-coating'], maybe: [] },
          finish: ['thin-film'],
          makerProfile: ['no-sheet'],
          makerMoisture: ['no-sheet'],
          borderLength: 'unknown',
          crackLength: 0,
        },
      ],
      site,
    ),
  );
  render(AdvicePage, { zone: null });
  await waitFor(() => expect(document.body.textContent).toContain('Find out first'), {
    timeout: 60_000,
  });
});
