import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import TrialPage from '$lib/ui/trial/TrialPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { box, find, mossy, pitted, start, tick, trial, user } from '../helpers/trial-page';

vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => start());
afterEach(cleanup);

describe('the page on which a square metre is tried', () => {
  it('says what to set, with its basis, and what can hurt', () => {
    render(TrialPage, { zone: null });
    expect(screen.getByText('S390')).toBeInTheDocument();
    expect(screen.getByText('as reported', { exact: false })).toBeInTheDocument();
    expect(screen.getByRole('link', { name: /silica dust/i })).toBeInTheDocument();
  });

  it('answers at once with its reason, and goes on with one change', async () => {
    render(TrialPage, { zone: null });
    await find({ chip: '4' });
    expect(screen.getByRole('heading', { name: /one notch harder/i })).toBeInTheDocument();
    const box = screen.getByRole('region', { name: /one notch harder/i });
    expect(within(box).getByText(/smoother than what goes on next needs/i)).toBeVisible();
    expect(screen.getByText(/change only this: travel/i)).toBeInTheDocument();
    await user.click(screen.getByRole('button', { name: /try the next square/i }));
    expect(trial()).toHaveLength(2);
    expect(trial()[1]).toEqual({ method: 'shotblast', notch: 2, passes: 1 });
    await find({ minutes: '10' });
    expect(screen.getByRole('heading', { name: /continue as set/i })).toBeInTheDocument();
    expect(screen.getByText(/pace here/i)).toBeInTheDocument();
  });

  it('takes an answer back where that is asked, says so, and stays in the group', async () => {
    render(TrialPage, { zone: null });
    await tick(/hammer/i, /clear/i);
    const group = within(screen.getByRole('group', { name: /hammer/i }));
    await user.click(group.getByRole('button', { name: /take back/i }));
    expect(trial()[0]?.sound).toBeUndefined();
    expect(group.getByRole('status')).toHaveTextContent(/answer is taken back/i);
    expect(group.getByRole('radio', { name: /clear/i })).toHaveFocus();
    await tick(/hammer/i, /dull/i);
    expect(group.getByRole('status').textContent).toBe('');
  });

  it('says what is wrong with a depth once, under the row, and names the place', async () => {
    render(TrialPage, { zone: null });
    await user.type(box(/place 3/i), 'deep');
    const problem = screen.getByText(/^place 3: “deep” is not a number/i);
    expect(screen.getAllByText(/is not a number/i)).toHaveLength(1);
    expect(problem.closest('.depths')).toBeNull();
    expect(screen.getAllByRole('textbox', { name: /^place/i })).toHaveLength(5);
    expect(box(/place 3/i)).toHaveAccessibleDescription(/^place 3: /i);
    await user.clear(box(/place 3/i));
    await user.type(box(/place 3/i), '4');
    expect(screen.queryByText(/is not a number/i)).toBeNull();
  });

  it('heads nothing with “learnt” where nothing was learnt', async () => {
    await start({ ...mossy, area: undefined });
    render(TrialPage, { zone: null });
    await find({ depth: '0', chip: '2' });
    expect(screen.getByRole('heading', { name: /continue as set/i })).toBeInTheDocument();
    const head = screen.queryByRole('heading', { name: /learnt/i });
    expect(head && !head.parentElement?.querySelector('p')).toBeFalsy();
  });

  it('says one size of a square in US units, a round one, and reckons with it', async () => {
    preferences.units = 'us';
    render(TrialPage, { zone: null });
    expect(screen.getByText(/prepare about 10\ssq ft/i)).toBeInTheDocument();
    expect(box(/square, sq ft/i)).toHaveValue('10');
    await tick(/steel/i, /no/i);
    expect(trial()[0]?.area).toBeCloseTo(10 * 0.3048 ** 2, 6);
  });

  it('names growth among what still comes off where growth was there', async () => {
    render(TrialPage, { zone: null });
    expect(screen.queryByRole('radio', { name: /growth/i })).toBeNull();
    cleanup();
    await start(mossy);
    render(TrialPage, { zone: null });
    expect(screen.getByRole('radio', { name: /growth/i })).toBeInTheDocument();
    expect(screen.getByRole('heading', { name: /same dangers as the whole job/i })).toBeVisible();
    await user.click(screen.getByText(/what the water does/i));
    expect(box(/pressure at the gauge \(optional\)/i)).toBeInTheDocument();
  });

  it('keeps every tick at once, and says what is still to look at', async () => {
    render(TrialPage, { zone: null });
    await tick(/steel/i, /yes/i);
    expect(trial()).toEqual([{ method: 'shotblast', notch: 1, passes: 1, bar: 'yes' }]);
    expect(screen.getByText(/still to look at: depth, stones/i)).toBeInTheDocument();
  });

  it('asks again where a number cannot be read, and counts nothing until then', async () => {
    render(TrialPage, { zone: null });
    await user.type(box(/minutes/i), 'ten');
    expect(screen.getByText(/“ten” is not a number/)).toBeInTheDocument();
    expect(trial()[0]?.minutes).toBe('ten');
  });

  it('changes the disproved answers by the way answers take, and back', async () => {
    render(TrialPage, { zone: null });
    await find({});
    await tick(/hammer/i, /dull/i);
    expect(screen.getByRole('heading', { name: /stop and find out/i })).toBeInTheDocument();
    const before = session.job.zones[0]?.answers;
    await user.click(screen.getByRole('button', { name: /change the answers/i }));
    expect(session.job.zones[0]?.answers.looseness).toEqual(['hollow']);
    expect(trial()).toHaveLength(1);
    await user.click(screen.getByRole('button', { name: /undo/i }));
    expect(session.job.zones[0]?.answers).toEqual(before);
    expect(screen.getByRole('heading', { name: /stop and find out/i })).toBeInTheDocument();
  });

  it('deletes a square and brings it back', async () => {
    render(TrialPage, { zone: null });
    await find({});
    const before = trial();
    await user.click(screen.getByRole('button', { name: /delete: square 1/i }));
    expect(trial()).toEqual([]);
    expect('trial' in (session.job.zones[0] ?? {})).toBe(false);
    await user.click(screen.getByRole('button', { name: /undo the deleted square/i }));
    expect(trial()).toEqual(before);
  });

  it('tries nothing while something stands before the work', async () => {
    await start({ ...pitted, depth: ['through'] });
    render(TrialPage, { zone: null });
    expect(screen.getByRole('heading', { name: /nothing to try yet/i })).toBeInTheDocument();
    expect(screen.queryByRole('textbox')).toBeNull();
  });

  it('shows the push at the lance where washing is tried', async () => {
    await start({
      depth: ['film'],
      looseness: ['powdery'],
      finish: ['sealer'],
      area: 30,
      borderLength: 0,
    });
    preferences.units = 'us';
    render(TrialPage, { zone: null });
    await user.click(screen.getByText(/what the water does/i));
    const [pressure, flow, hose] = [/pressure/i, /flow/i, /hose/i].map((name) => box(name));
    for (const [field, value] of [
      [pressure, '3000'],
      [flow, '4'],
      [hose, '3.3'],
    ] as const) {
      await user.clear(field as HTMLElement);
      await user.type(field as HTMLElement, value);
    }
    // 51.3 N by momentum, less what three feet of hose take: 11.5 lbf.
    expect(screen.getByText(/it pushes back with 11\.5 lbf/i)).toBeInTheDocument();
  });
});
