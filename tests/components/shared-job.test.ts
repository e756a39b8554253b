import { cleanup, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { jobsState } from '$lib/ui/jobs/jobs-state.svelte';
import JobsPage from '$lib/ui/jobs/JobsPage.svelte';
import SharedJobAsk from '$lib/ui/jobs/SharedJobAsk.svelte';
import { session } from '$lib/ui/session.svelte';

vi.mock('$app/navigation', () => ({ goto: () => Promise.resolve() }));
// What stands for the browser here has no dialogs; this one stays closed.
HTMLDialogElement.prototype.close = () => undefined;
// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
const user = userEvent.setup();
const job: Job = {
  name: 'Yard (invented)',
  site: { element: ['slab'] },
  zones: [
    { id: 'a', name: 'Ramp', answers: { depth: 20 } },
    { id: 'b', name: 'Edge', answers: { depth: 30 } },
  ],
};
const bring = () => screen.queryByRole('button', { name: 'Bring it into a job here' });
const ask = () => render(SharedJobAsk, { read: { ok: true, value: job }, leave: () => undefined });
beforeEach(async () => {
  await session.startNew();
  for (const { id } of await session.list()) await (await session.store()).remove(id);
  jobsState.hush();
});
afterEach(cleanup);

describe('a job that comes by a link', () => {
  it('is not offered to be brought into a job where none is kept', async () => {
    ask();
    await session.list();
    expect(screen.getByRole('button', { name: 'Add it' })).toBeInTheDocument();
    expect(bring()).toBeNull();
  });

  it('is offered so where one is kept', async () => {
    await (await session.store()).put('here', job, 0);
    ask();
    await vi.waitFor(() => expect(bring()).not.toBeNull());
  });

  it('calls a zone without a name by its place, as every page does', () => {
    const zones = job.zones.map((zone) => ({ ...zone, name: '' }));
    render(SharedJobAsk, { read: { ok: true, value: { ...job, zones } }, leave: () => undefined });
    expect(screen.getByText(/Its zones/)).toHaveTextContent(/: Zone.1, Zone.2$/);
  });

  it('leads on from where the focus stands once it is added', async () => {
    render(JobsPage);
    ask();
    await user.click(screen.getByRole('button', { name: 'Add it' }));
    const on = await screen.findByRole('link', { name: 'See the job' });
    await vi.waitFor(() => expect(on).toHaveFocus());
    expect(on.getAttribute('href')).toMatch(/\/job\/$/);
    expect(session.job.name).toBe(job.name);
    // The way on is of that one step.
    jobsState.hush();
    await vi.waitFor(() => expect(screen.queryByRole('link', { name: 'See the job' })).toBeNull());
  });
});
