import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { spellsOf } from '$lib/answers/day-log';
import type { Job } from '$lib/answers/job';
import { logAt } from '$lib/answers/task-log';
import PlanPage from '$lib/ui/job/PlanPage.svelte';
import CrewPage from '$lib/ui/crew/CrewPage.svelte';
import { momentAt } from '$lib/ui/crew/moment';
import { session } from '$lib/ui/session.svelte';
import { hollow } from '../helpers/crew-jobs';
import { logged } from '../helpers/crew-log';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const morning = new Date(2026, 4, 4, 7, 0);
const user = userEvent.setup({ advanceTimers: (ms) => vi.advanceTimersByTime(ms) });
const pass = (hours: number) => vi.setSystemTime(new Date(Date.now() + hours * 3_600_000));

async function open(job: Job = hollow({ crew: 2, hoursPerDay: 8 }), day: string | null = null) {
  await session.startNew(job);
  return render(CrewPage, { day });
}
const button = (name: string | RegExp) => screen.getByRole('button', { name });
const log = (step: 'saw-cut' | 'break-out') => logAt(session.job, { zone: 'a', step });
const local = (hours: number) =>
  momentAt(new Date(morning.getTime() + hours * 3_600_000)).slice(0, 16);

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date', 'setInterval', 'clearInterval'], now: morning });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('a step of the crew’s day', () => {
  beforeEach(() => open());

  it('is started, stopped and done, by one button each that stays where it is', async () => {
    const start = button('Start: Saw the edge');
    await user.click(start);
    expect(document.activeElement).toBe(start);
    expect(start).toHaveAccessibleName('Stop: Saw the edge');
    expect(screen.getByText(/since 07:00/)).toBeInTheDocument();
    expect(screen.getByText('Saw the edge: started 07:00.')).toBeInTheDocument();
    pass(1.5);
    await user.keyboard('{Enter}');
    expect(document.activeElement).toHaveAccessibleName('Start: Saw the edge');
    pass(1);
    const done = button('Done: Saw the edge');
    await user.click(done);
    expect(document.activeElement).toBe(done);
    expect(done).toHaveAttribute('aria-pressed', 'true');
    // What passed while it was stopped does not count.
    expect(screen.getByText(/done, 1\.5\shours/)).toBeInTheDocument();
    expect(spellsOf(log('saw-cut'))).toHaveLength(1);
  });

  it('takes a wrong done back, and undoes what was pressed last', async () => {
    await user.click(button('Done: Saw the edge'));
    await user.click(button('Done: Saw the edge'));
    expect(log('saw-cut')).toEqual({});
    await user.click(button('Start: Saw the edge'));
    await user.click(button('Undo: Saw the edge: started 07:00.'));
    expect(log('saw-cut')).toEqual({});
    expect(screen.getByText('Taken back: Saw the edge: started 07:00.')).toBeInTheDocument();
  });

  // Common practice, no source: what was pressed by mistake in gloves is more than one press.
  it('undoes press by press, the last first, back to not started; the focus stays, then goes to the step', async () => {
    await user.click(button('Start: Saw the edge'));
    pass(1);
    await user.click(button('Stop: Saw the edge'));
    pass(1);
    await user.click(button('Done: Saw the edge'));
    const undo = document.querySelector<HTMLElement>('.said button');
    await user.click(button('Undo: Saw the edge: done.'));
    expect(document.activeElement).toBe(undo);
    expect(log('saw-cut').done).toBeUndefined();
    expect(spellsOf(log('saw-cut'))[0]?.to).toBeDefined();
    await user.click(button('Undo: Saw the edge: stopped 08:00.'));
    expect(document.activeElement).toBe(undo);
    expect(spellsOf(log('saw-cut'))[0]?.to).toBeUndefined();
    await user.click(button('Undo: Saw the edge: started 07:00.'));
    expect(log('saw-cut')).toEqual({});
    await vi.waitFor(() =>
      expect(document.activeElement).toHaveAccessibleName('Start: Saw the edge'),
    );
  });

  it('keeps the focus at the time that was put in or put right, not at the note', async () => {
    pass(3);
    await user.click(button(/^Saw the edge Walk-behind saw/));
    await user.type(screen.getByLabelText('Started'), local(0.5));
    await user.type(screen.getByLabelText('Stopped'), local(2));
    await user.click(button('Add a time'));
    await vi.waitFor(() => expect(document.activeElement).toHaveAccessibleName('Save'));
    await user.click(button('Take out'));
    await vi.waitFor(() => expect(document.activeElement).toHaveAccessibleName('Add a time'));
  });

  it('undoes nothing that another tab has changed since', async () => {
    await user.click(button('Start: Saw the edge'));
    session.update((job) => logged(job, [['a', 'saw-cut', { note: 'Other tab' }]]));
    await user.click(button('Undo: Saw the edge: started 07:00.'));
    expect(log('saw-cut')).toEqual({ note: 'Other tab' });
    expect(screen.getByText(/changed elsewhere since/)).toBeInTheDocument();
  });

  it('takes a start that was forgotten, and refuses times that cannot be', async () => {
    pass(3);
    await user.click(button(/^Saw the edge Walk-behind saw/));
    const type = async (from: string, to: string) => {
      const [start, stop] = [screen.getByLabelText('Started'), screen.getByLabelText('Stopped')];
      await user.clear(start);
      await user.type(start, from);
      await user.clear(stop);
      await user.type(stop, to);
      await user.click(button('Add a time'));
    };
    await user.click(button('Add a time'));
    expect(screen.getByText(/^Say when it was started/)).toBeInTheDocument();
    await type(local(2), local(1));
    expect(screen.getByText(/^Stopped before it was started/)).toBeInTheDocument();
    await type(local(2), local(9));
    expect(screen.getByText(/still to come/)).toBeInTheDocument();
    await type(local(-20), local(2));
    expect(screen.getByText(/^Longer than 12\shours without a stop/)).toBeInTheDocument();
    expect(log('saw-cut')).toEqual({});
    await type(local(0.5), local(2));
    expect(spellsOf(log('saw-cut')).map(({ to, people }) => [to?.slice(0, 16), people])).toEqual([
      [local(2), 1],
    ]);
    // And puts it right.
    await user.clear(screen.getAllByLabelText('Stopped')[0] as HTMLElement);
    await user.type(screen.getAllByLabelText('Stopped')[0] as HTMLElement, local(1));
    await user.click(button('Save'));
    expect(spellsOf(log('saw-cut'))[0]?.to?.slice(0, 16)).toBe(local(1));
    await user.click(button('Take out'));
    expect(log('saw-cut')).toEqual({});
  });

  it('keeps a note, and says how many are at it where hands share the work', async () => {
    await user.click(button(/^Saw the edge Walk-behind saw/));
    await user.type(screen.getByRole('textbox', { name: 'Note' }), 'Blade worn{Enter}');
    await user.tab();
    expect(log('saw-cut')).toEqual({ note: 'Blade worn' });
    // One person guides a saw: how many stand by does not matter.
    expect(screen.queryByRole('group', { name: 'People' })).toBeNull();
  });

  it('left running overnight asks when it stopped, and counts nothing by itself', async () => {
    await user.click(button('Start: Saw the edge'));
    pass(24);
    await vi.advanceTimersByTimeAsync(60_000);
    await user.click(button('Done: Saw the edge'));
    const ask = screen.getByLabelText(/^Running since Mon 4 May 07:00\. When did it stop\?/);
    expect(document.activeElement).toBe(ask);
    expect(log('saw-cut').done).toBeUndefined();
    await user.type(ask, local(3));
    await user.click(button('Stop then'));
    expect(spellsOf(log('saw-cut'))[0]?.to?.slice(0, 16)).toBe(local(3));
  });

  it('tells a time that cannot have been, at its step', async () => {
    session.update((job) =>
      logged(job, [
        [
          'a',
          'saw-cut',
          {
            spells: { '2026-05-04T06:00:00+02:00': { to: '2026-05-04T05:00:00+02:00', people: 1 } },
          },
        ],
      ]),
    );
    const row = (await screen.findByText(/^Stopped before it was started, so it does not count/))
      .parentElement as HTMLElement;
    expect(within(row).getByText('Saw the edge')).toBeInTheDocument();
  });
});

describe('several zones of a step', () => {
  it('are begun together and done one by one', async () => {
    const one = hollow({ crew: 2 });
    const zones = one.zones.flatMap((zone) => [zone, { ...zone, id: 'b', name: 'Ramp' }]);
    await open({ ...one, zones });
    await user.click(button('Start: Saw the edge'));
    const both = () => ['a', 'b'].map((id) => logAt(session.job, { zone: id, step: 'saw-cut' }));
    expect(both().map((each) => spellsOf(each)[0]?.together)).toEqual([true, true]);
    await user.click(button(/^Saw the edge Walk-behind saw/));
    await user.click(button('Done: Saw the edge, Ramp'));
    expect(both().map(({ done }) => done !== undefined)).toEqual([false, true]);
  });
});

describe('the plan of a job that has begun', () => {
  it('says once how long it took, and what is left', async () => {
    const from = '2026-05-04T07:00:00+02:00';
    const to = '2026-05-04T16:00:00+02:00';
    const begun = logged(hollow({ crew: 2 }), [
      ['a', 'break-out', { spells: { [from]: { to, people: 2 } }, done: to }],
    ]);
    await session.startNew(begun);
    render(PlanPage);
    const said = screen.getAllByText(/times as long as reckoned so far/);
    expect(said).toHaveLength(1);
    expect(said[0]).toHaveTextContent(
      /^1 of \d+ tasks done\. Left: .* hours of work, .* working days?\./,
    );
    expect(screen.getAllByText(/, done$/).length).toBeGreaterThan(0);
  });
});
