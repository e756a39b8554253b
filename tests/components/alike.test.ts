import { render, screen } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { choicesOf } from '$lib/answers/questions';
import CrewPage from '$lib/ui/crew/CrewPage.svelte';
import JobPage from '$lib/ui/job/JobPage.svelte';
import PlanPage from '$lib/ui/job/PlanPage.svelte';
import OwnerPage from '$lib/ui/owner/OwnerPage.svelte';
import ReadyPage from '$lib/ui/ready/ReadyPage.svelte';
import { session } from '$lib/ui/session.svelte';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

/** Zones with one name and the same answers, some of them open: a crew calls every tread “Tread”. */
const answers = {
  depth: ['20-to-50'],
  looseness: ['fractured'],
  contamination: { yes: [], maybe: ['growth'] },
  cracks: ['none', 'hairline'],
  steel: ['none-seen'],
  finish: choicesOf('finish'),
  area: 2,
} as const;
const held = { ...answers, depth: ['through'] } as const;
const job = {
  name: 'Treads, invented',
  site: {
    element: ['steps'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['rare'],
    thickness: 200,
    warnings: { yes: [], maybe: [] },
  },
  zones: [
    { id: 'a', name: 'Tread', answers },
    { id: 'b', name: 'Tread', answers },
    { id: 'c', name: 'Tread', answers: held },
    { id: 'd', name: 'Tread', answers: held },
    { id: 'e', name: 'Tread', answers: {} },
    { id: 'f', name: 'Tread', answers: {} },
  ],
} as unknown as Job;

describe('zones that are alike, of one name', () => {
  it.each([
    ['job', () => render(JobPage)],
    ['plan', () => render(PlanPage)],
    ['crew', () => render(CrewPage, { day: null })],
    ['ready', () => render(ReadyPage, { zone: null })],
    ['owner', () => render(OwnerPage)],
  ])('stand on the page: %s', async (_, page) => {
    await session.startNew(job);
    page();
    // Told apart by their places: the one may have to wait and the other not.
    expect(screen.getAllByText(/Zone 3: Tread/).length).toBeGreaterThan(0);
  });
});
