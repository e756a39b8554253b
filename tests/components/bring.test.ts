import { cleanup, render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { bringing } from '$lib/ui/carry/bringing.svelte';
import Bring from '$lib/ui/carry/Bring.svelte';
import { jobsState } from '$lib/ui/jobs/jobs-state.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';

vi.setConfig({ testTimeout: 60_000 });
const user = userEvent.setup();
const here: Job = {
  name: 'Yard (invented)',
  site: { element: ['slab'], thickness: 150 },
  zones: [{ id: 'a', name: 'Ramp', answers: { depth: 20, looseness: ['hollow'], area: 12 } }],
};
/** The same job from the yard: deeper than thought, the texture seen, and a second zone. */
const yard: Job = {
  ...here,
  crew: 3,
  zones: [
    {
      id: 'a',
      name: 'Ramp',
      answers: { depth: 40, looseness: ['hollow'], texture: ['pitted'], area: 12 },
    },
    { id: 'b', name: 'Kerb', answers: { area: 2 } },
  ],
};
beforeEach(async () => {
  preferences.units = 'metric';
  await session.startNew(here);
  session.update((job) => job);
  await session.settled();
  await jobsState.refresh();
});
afterEach(cleanup);
const depth = () => session.zone('a')?.answers.depth;

describe('a job brought back', () => {
  it('adds what only it says, asks where they differ, and can be put back', async () => {
    bringing.begin(yard);
    render(Bring, { job: yard });
    expect(await screen.findByText('4 entries come along.')).toBeInTheDocument();
    const differs = screen.getByRole('group', { name: 'Ramp: Depth' });
    expect(within(differs).getByLabelText(/Here\s+20 mm/)).toBeChecked();
    await user.click(screen.getByRole('button', { name: 'Bring it in' }));
    expect(depth()).toBe(20);
    expect(session.zone('a')?.answers.texture).toEqual(['pitted']);
    expect(session.job.zones.map(({ name }) => name)).toEqual(['Ramp', 'Kerb']);
    expect(session.job.crew).toBe(3);
    await bringing.undo();
    expect(session.job).toEqual(here);
  });

  it('takes the brought answer where the reader says so', async () => {
    render(Bring, { job: yard });
    await user.click(await screen.findByLabelText(/Brought\s+40 mm/));
    await user.click(screen.getByRole('button', { name: 'Bring it in' }));
    expect(depth()).toBe(40);
  });

  it('keeps two zones of one letter apart unless they are one', async () => {
    const other: Job = { ...here, zones: [{ id: 'a', name: 'Kerb', answers: { depth: 60 } }] };
    render(Bring, { job: other });
    expect(await screen.findByLabelText('Two zones: keep both')).toBeChecked();
    expect(screen.queryByRole('group', { name: /Depth/ })).toBeNull();
    await user.click(screen.getByLabelText('One zone: compare them'));
    expect(screen.getByRole('group', { name: 'Ramp: Depth' })).toBeInTheDocument();
    await user.click(screen.getByLabelText('Two zones: keep both'));
    await user.click(screen.getByRole('button', { name: 'Bring it in' }));
    expect(session.job.zones.map(({ name }) => name)).toEqual(['Ramp', 'Kerb']);
    expect(depth()).toBe(20);
  });
});
