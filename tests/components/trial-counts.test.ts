import '@testing-library/jest-dom/vitest';
import { cleanup, render, screen } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PatchTried } from '$lib/answers/trial-record';
import FromPatch from '$lib/ui/trial/FromPatch.svelte';
import { practice } from '$lib/ui/practice/practice.svelte';
import PatchPractice from '$lib/ui/trial/PatchPractice.svelte';
import ReadyPage from '$lib/ui/ready/ReadyPage.svelte';
import { session } from '$lib/ui/session.svelte';
import { start, user } from '../helpers/trial-page';

vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => start());
afterEach(cleanup);

describe('where a test patch counts', () => {
  const settled: PatchTried = {
    method: 'shotblast',
    notch: 1,
    passes: 1,
    minutes: 10,
    depths: [4, 4, 4, 4, 4],
    profile: 6,
    stones: 'cut',
    left: 'nothing',
    bar: 'no',
    sound: 'clear',
  };
  const tried = () =>
    session.update((job) => ({
      ...job,
      zones: job.zones.map((zone) => ({ ...zone, trial: [settled] })),
    }));

  it('is said where hours, days and exposure are', async () => {
    const { unmount } = render(FromPatch);
    expect(screen.queryByText(/from your test square/)).toBeNull();
    unmount();
    tried();
    render(FromPatch);
    expect(screen.getByText(/from your test square/)).toBeInTheDocument();
  });

  it('is named in the readiness record', async () => {
    tried();
    render(ReadyPage, { zone: null });
    expect(screen.getByText(/1 square tried; the last: S390/)).toBeInTheDocument();
  });
});

describe('practising to read a square', () => {
  it('takes a pick, says what the rules say and why, and goes on', async () => {
    render(PatchPractice);
    await user.click(screen.getByRole('button', { name: /one notch harder/i }));
    expect(screen.getByRole('heading', { name: /so it is/i })).toHaveFocus();
    expect(screen.getByText(/somebody long in the trade/i)).toBeInTheDocument();
    expect(screen.getByText(/1 of 10 read/)).toBeInTheDocument();
    expect(practice.progress.at(-1)).toMatchObject({
      case: 'square-boat-shed-smooth',
      rating: 'good',
    });
    await user.click(screen.getByRole('button', { name: /the next square/i }));
    await user.click(screen.getByRole('button', { name: /continue as set/i }));
    expect(screen.getByRole('heading', { name: /not this time/i })).toBeInTheDocument();
  });
});
