import { cleanup, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import OwnerPage from '$lib/ui/owner/OwnerPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
const user = userEvent.setup();
const job: Job = {
  name: 'Yard (invented)',
  site: { element: ['slab'], thickness: 150 },
  zones: [{ id: 'a', name: 'Ramp', answers: { depth: 20, looseness: ['hollow'], area: 12 } }],
};
beforeEach(async () => {
  preferences.units = 'metric';
  await session.startNew(job);
});
afterEach(cleanup);

describe('the total area on the owner’s sheet', () => {
  it('stays where it was typed, with its value and the focus', async () => {
    render(OwnerPage);
    const field = screen.getByLabelText('Total area');
    await user.type(field, '40');
    expect(session.job.totalArea).toBe(40);
    expect(field).toHaveFocus();
    await user.tab();
    expect(field).toBeInTheDocument();
    expect(field).toHaveValue('40');
    expect(screen.getAllByLabelText('Total area')).toHaveLength(1);
  });

  it('is what the zones come to, by one button, where they are all of it', async () => {
    const zones = job.zones.map((zone, at) => ({
      ...zone,
      answers: { ...zone.answers, area: 10 + at },
    }));
    await session.startNew({ ...job, zones });
    const whole = zones.reduce((sum, { answers }) => sum + answers.area, 0);
    render(OwnerPage);
    await user.click(
      screen.getByRole('button', { name: new RegExp(`^The zones are all of it: ${whole}.m²$`) }),
    );
    expect(session.job.totalArea).toBe(whole);
    expect(screen.getByLabelText('Total area')).toHaveValue(String(whole));
    expect(screen.getByLabelText('Total area')).toHaveFocus();
    expect(screen.queryByRole('button', { name: /are all of it/ })).toBeNull();
  });

  it('stands with the prices where it was known when the sheet was opened', async () => {
    await session.startNew({ ...job, totalArea: 40 });
    render(OwnerPage);
    const field = screen.getByLabelText('Total area');
    expect(field.closest('details')).not.toBeNull();
    expect(field).toHaveValue('40');
  });
});
