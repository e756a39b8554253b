import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { spellsOf } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { logAt } from '$lib/answers/task-log';
import CrewPage from '$lib/ui/crew/CrewPage.svelte';
import { session } from '$lib/ui/session.svelte';
import { hollow } from '../helpers/crew-jobs';

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

  it('is no step of the day: it stands apart, by its zone', async () => {
    await open(two());
    const heading = screen.getByRole('heading', { name: /only once this is cleared/ });
    const apart = heading.nextElementSibling as HTMLElement;
    expect(within(apart).getByText('Break out (Forecourt)')).toBeInTheDocument();
    // Above it nothing is broken out, and no card has it as work.
    expect(screen.queryByRole('button', { name: 'Start: Break out' })).toBeNull();
    for (const card of screen.getAllByRole('article'))
      expect(card.querySelector('p')?.textContent ?? '').not.toContain('Break out');
  });

  it('asks before anybody begins there, and begins only on a yes', async () => {
    await open(two());
    const start = 'Start: Break out (Forecourt)';
    await user.click(button(start));
    expect(log('break-out')).toEqual({});
    expect(
      screen.getByText(/^Forecourt must wait\. .*locates cables and pipes.*Is that done\?$/),
    ).toBeInTheDocument();
    expect(document.activeElement).toHaveAccessibleName('Yes, begin');
    await user.click(button('Leave it'));
    expect(log('break-out')).toEqual({});
    expect(document.activeElement).toHaveAccessibleName(start);
    await user.click(button('Done: Break out (Forecourt)'));
    expect(log('break-out')).toEqual({});
    await user.click(button('Leave it'));
    await user.click(button(start));
    await user.click(button('Yes, begin'));
    expect(spellsOf(log('break-out'))).toHaveLength(1);
    // Stopping what goes on is never asked about.
    await user.click(button('Stop: Break out (Forecourt)'));
    expect(spellsOf(log('break-out'))[0]?.to).toBeDefined();
  });
});
