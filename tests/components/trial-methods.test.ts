import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen, within } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { adviseTried } from '$lib/trial/chain';
import TrialPage from '$lib/ui/trial/TrialPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { speech } from '$lib/ui/speech.svelte';
import { hazardWords } from '$words/hazards';
import { tradeJob } from '../helpers/trade-jobs';
import {
  box,
  find,
  mossy,
  oneByMethod,
  pitted,
  start,
  torn,
  trial,
  user,
  withTrial,
  zone,
} from '../helpers/trial-page';
import { sampled } from '../helpers/rounds';

vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => start());
afterEach(cleanup);

describe('every method tried on a square metre', () => {
  it('follows to another method where this one has failed, and back where its square is deleted', async () => {
    await start({ ...pitted, texture: ['sandy'] });
    const { method } = adviseTried(session.job.site, zone()).advice;
    expect(method).toBe('scarify');
    session.update((job) => withTrial(job, [torn(1)]));
    render(TrialPage, { zone: null });
    await user.click(screen.getByRole('button', { name: /try the next square/i }));
    await find({ stones: /torn/i });
    const box = screen.getByRole('region', { name: /another method/i });
    expect(within(box).getByText(/no answer was wrong.*shotblasting/i)).toBeVisible();
    // The square stays in the form until its reader goes on.
    expect(screen.getByRole('radio', { name: /torn/i })).toBeChecked();
    await user.click(screen.getByRole('button', { name: /try shotblasting on a square/i }));
    expect(screen.getByText('S390')).toBeInTheDocument();
    expect(screen.getByRole('radio', { name: /torn/i })).not.toBeChecked();
    await find({});
    expect(screen.getByRole('heading', { name: /continue as set/i })).toBeInTheDocument();
    expect(trial().map((each) => each.method)).toEqual(['scarify', 'scarify', 'shotblast']);
    expect(planJob(session.job).zones[0]?.method).toBe('shotblast');
    await user.click(screen.getByRole('button', { name: /delete: square 2/i }));
    expect(planJob(session.job).zones[0]?.method).toBe('scarify');
    await user.click(screen.getByRole('button', { name: /undo the deleted square/i }));
    expect(planJob(session.job).zones[0]?.method).toBe('shotblast');
  });

  it('goes on to the next number with Enter, and then to what is ticked', async () => {
    render(TrialPage, { zone: null });
    await user.type(box(/minutes/i), '6{Enter}4{Enter}4{Enter}4{Enter}5{Enter}4{Enter}');
    expect(trial()[0]).toMatchObject({ minutes: 6, depths: [4, 4, 4, 5, 4] });
    expect(screen.getByRole('radio', { name: /cut/i })).toHaveFocus();
  });

  it('asks for no chip where nothing asks for roughness, and takes five noughts with one tap', async () => {
    await start({ ...mossy, finish: ['undecided'] });
    render(TrialPage, { zone: null });
    expect(screen.queryByRole('combobox', { name: /chip/i })).toBeNull();
    await user.click(screen.getByRole('button', { name: /nothing came off/i }));
    expect(trial()[0]?.depths).toEqual([0, 0, 0, 0, 0]);
    expect(screen.queryByRole('button', { name: /nothing came off/i })).toBeNull();
  });

  it.each(sampled(Object.entries(oneByMethod), 3))(
    '%s: the dangers of the work stand at the try',
    async (method, [answers, site]) => {
      await session.startNew(tradeJob([answers], site));
      const [only] = adviseTried(session.job.site, zone()).advice.outcomes;
      expect(only?.method).toBe(method);
      render(TrialPage, { zone: null });
      const dangers = within(screen.getByRole('region', { name: /same dangers/i }));
      const step = only?.example.steps.find(({ id }) => id === method);
      expect(step?.hazards.length).toBeGreaterThan(2);
      for (const hazard of step?.hazards ?? [])
        expect(
          dangers.getByRole('link', { name: hazardWords(speech.say)[hazard].name }),
        ).toBeVisible();
      expect(dangers.getAllByRole('link')).toHaveLength(step?.hazards.length ?? 0);
    },
  );

  it('shows what a worn nozzle leaves where blasting is tried', async () => {
    const [answers, site] = oneByMethod['abrasive-blast'];
    await session.startNew(tradeJob([answers], site));
    preferences.units = 'metric';
    render(TrialPage, { zone: null });
    await user.click(screen.getByText(/pressure at a worn nozzle/i));
    const air = box(/air from the compressor/i);
    await user.clear(air);
    await user.type(air, '6');
    // By hand: 0.62 + 0.1013 = 0.7213 MPa takes 8.21 m3/min at 11.1 mm; 6 leave 0.43, in bar ten times that.
    expect(screen.getByText(/4\.3\sbar is left of 6\.2\sbar/)).toBeInTheDocument();
  });
});
