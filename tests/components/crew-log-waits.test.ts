import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { spellsOf } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { logAt } from '$lib/answers/task-log';
import CrewPage from '$lib/ui/crew/CrewPage.svelte';
import { session } from '$lib/ui/session.svelte';
import { hollow } from '../helpers/crew-jobs';
import { logged } from '../helpers/crew-log';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const morning = new Date(2026, 4, 4, 7, 0);
const user = userEvent.setup({ advanceTimers: (ms) => vi.advanceTimersByTime(ms) });

async function open(job: Job) {
  await session.startNew(job);
  return render(CrewPage, { day: null });
}
const button = (name: string | RegExp) => screen.getByRole('button', { name });
const log = (step: 'break-out') => logAt(session.job, { zone: 'a', step });

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date', 'setInterval', 'clearInterval'], now: morning });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('what waits to be cleared', () => {
  // Common practice, no source: nobody works where the advice says stop or find out first, however
  // the days are planned; the crew goes on with the rest.
  const held = { yes: ['buried-services'], maybe: [] };
  const two = () => {
    const job = hollow({ crew: 2, hoursPerDay: 8 }, { warnings: held } as never);
    const [zone] = job.zones;
    if (!zone) throw new Error('no zone');
    return {
      ...job,
      zones: [
        zone,
        {
          ...zone,
          id: 'b',
          name: 'By the wall',
          answers: { ...zone.answers, looseness: ['tight'], depth: 0 },
        },
      ],
    } as Job;
  };

  const waits = 'Forecourt must wait.';
  const starts = (name: string) => screen.queryByRole('button', { name: `Start: ${name}` });

  it('cannot be begun: it stands apart by its zone, with what it waits for and no button to start it', async () => {
    await open(two());
    const heading = screen.getByRole('heading', { name: /only once this is cleared/ });
    const apart = heading.nextElementSibling as HTMLElement;
    expect(
      within(apart).getByText(/^Forecourt must wait\. .*locates cables and pipes/),
    ).toBeVisible();
    expect(within(apart).getByText(/^Then: .*[Bb]reak out/)).toBeVisible();
    expect(within(apart).queryByRole('button', { name: /^(Start|Done)/ })).toBeNull();
    expect(starts('Break out')).toBeNull();
    for (const card of screen.getAllByRole('article'))
      expect(card.querySelector('p')?.textContent ?? '').not.toContain('Break out');
  });

  it('lets be begun what keeps people safe and what is looked at', async () => {
    await open(two());
    expect(button(/^Start: Make safe/)).toBeVisible();
    expect(button(/^Start: Sound and mark/)).toBeVisible();
    // The same where nothing else may be done that day.
    await open(hollow({ crew: 2 }, { warnings: held } as never));
    expect(screen.getAllByRole('button', { name: /^Start: Sound and mark/ })[0]).toBeVisible();
  });

  it('is begun only after somebody has said that it is cleared', async () => {
    await open(two());
    await user.click(button('It is cleared: Forecourt'));
    expect(log('break-out')).toEqual({});
    expect(screen.queryByText(new RegExp(waits))).toBeNull();
    await vi.waitFor(() => expect(document.activeElement).toHaveAccessibleName(/^Start: /));
    await user.click(button('Start: Break out'));
    expect(spellsOf(log('break-out'))).toHaveLength(1);
    await user.click(button('Stop: Break out'));
    expect(spellsOf(log('break-out'))[0]?.to).toBeDefined();
  });

  // Nobody goes onto what may fall because somebody tapped a button.
  it('cannot be cleared by a tap where people are kept away from it', async () => {
    const job = two();
    const [rotten, firm] = job.zones;
    if (!rotten || !firm) throw new Error('no zones');
    const dusty = { ...firm.answers, looseness: ['powdery'], depth: 1 } as typeof firm.answers;
    await open({
      ...job,
      site: { ...job.site, element: ['suspended-slab'], warnings: { yes: [], maybe: [] } },
      zones: [rotten, { ...firm, answers: dusty }],
    } as Job);
    expect(screen.getByText(/^By the wall must wait\./)).toBeVisible();
    expect(screen.getByText(/No tap here clears it/)).toBeVisible();
    expect(screen.queryByRole('button', { name: /^It is cleared/ })).toBeNull();
  });

  it('stays cleared once it was begun, on a page opened later', async () => {
    const begun = {
      spells: { '2026-05-04T07:00:00+02:00': { to: '2026-05-04T07:30:00+02:00', people: 1 } },
    };
    await open(logged(two(), [['a', 'break-out', begun]]));
    expect(starts('Break out')).toBeVisible();
    expect(screen.queryByText(new RegExp(waits))).toBeNull();
  });
});
