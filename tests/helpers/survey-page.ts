import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeEach, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import type { Survey } from '$lib/answers/survey';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import SurveyPage from '$lib/ui/survey/SurveyPage.svelte';

export const user = userEvent.setup();
// Long, so that a busy machine turns nothing red.
vi.setConfig({ testTimeout: 60_000 });
// Nothing has a size in jsdom, and so nothing changes it.
globalThis.ResizeObserver ??= class {
  observe() {}
  unobserve() {}
  disconnect() {}
} as unknown as typeof ResizeObserver;
beforeEach(() => {
  preferences.units = 'metric';
});

export const job = (survey?: Survey): Job => ({
  name: 'Yard, invented',
  site: { thickness: 150, freezeThaw: ['rare'] },
  zones: [
    { id: 'a', name: 'Gate', answers: {} },
    { id: 'b', name: 'Yard', answers: {} },
  ],
  ...(survey && { survey }),
});
export async function open(survey?: Survey) {
  await session.startNew(job(survey));
  return render(SurveyPage);
}
export const slab = { length: 6000, width: 4000 };
export const drawn = () => session.job.survey;
export const type = async (label: string, text: string) => {
  const field = screen.getByLabelText(label, { selector: 'input' });
  await user.clear(field);
  await user.type(field, text);
};
export const pad = () => screen.getByRole('application', { name: 'Drawing of the slab' });
