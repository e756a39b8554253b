import { cleanup, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import OwnerPage from '$lib/ui/owner/OwnerPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
const user = userEvent.setup();
const job: Job = {
  name: 'Yard (invented)',
  site: { element: ['slab'], thickness: 150 },
  zones: [{ id: 'a', name: 'Ramp', answers: { depth: 20, looseness: ['hollow'], area: 12 } }],
};
beforeEach(async () => {
  preferences.units = 'metric';
  await session.startNew(job);
});
afterEach(cleanup);

describe('the total area on the owner’s sheet', () => {
  it('stays where it was typed, with its value and the focus', async () => {
    render(OwnerPage);
    const field = screen.getByLabelText('Total area');
    await user.type(field, '40');
    expect(session.job.totalArea).toBe(40);
    expect(field).toHaveFocus();
    await user.tab();
    expect(field).toBeInTheDocument();
    expect(field).toHaveValue('40');
    expect(screen.getAllByLabelText('Total area')).toHaveLength(1);
  });

  it('is what the zones come to, by one button, where they are all of it', async () => {
    const zones = job.zones.map((zone, at) => ({
      ...zone,
      answers: { ...zone.answers, area: 10 + at },
    }));
    await session.startNew({ ...job, zones });
    const whole = zones.reduce((sum, { answers }) => sum + answers.area, 0);
    render(OwnerPage);
    await user.click(
      screen.getByRole('button', { name: new RegExp(`^The zones are all of it: ${whole}.m²$`) }),
    );
    expect(session.job.totalArea).toBe(whole);
    expect(screen.getByLabelText('Total area')).toHaveValue(String(whole));
    expect(screen.getByLabelText('Total area')).toHaveFocus();
    expect(screen.queryByRole('button', { name: /are all of it/ })).toBeNull();
  });

  it('stands with the prices where it was known when the sheet was opened', async () => {
    await session.startNew({ ...job, totalArea: 40 });
    render(OwnerPage);
    const field = screen.getByLabelText('Total area');
    expect(field.closest('details')).not.toBeNull();
    expect(field).toHaveValue('40');
  });
});

describe('the owner’s sheet', () => {
  const text = () => document.body.textContent?.replace(/\s+/g, ' ') ?? '';

  const none = { yes: [], maybe: [] };
  const site = {
    element: ['slab'],
    setting: ['open'],
    salts: ['none'],
    freezeThaw: ['some'],
    thickness: 150,
    warnings: none,
  } as const;
  const answers = {
    looseness: ['hollow'],
    contamination: none,
    texture: ['sandy'],
    cracks: ['none'],
    steel: ['none-seen'],
    finish: ['overlay'],
    depth: 20,
    area: 12,
  } as const;
  const whole = (more: Partial<Job>, zone: object = {}): Job => ({
    ...job,
    site,
    zones: [{ id: 'a', name: 'Ramp', answers: { ...answers, ...zone } }],
    ...more,
  });

  it('says on paper where it stands, each part, and who asks, where and when', async () => {
    render(OwnerPage);
    const zone = screen.getByText('Ramp', { selector: '.paper b' }).closest('li');
    expect(zone).toHaveTextContent(/12.m²/);
    expect(text()).toMatch(/Thickness: 150.mm · Salt: Not known · Frost: Not known/);
    for (const each of ['Name', 'Place', 'Date'])
      expect(screen.getByText(each, { selector: '.sign span' })).toBeInTheDocument();
  });

  // Whole percents beside each other add up as they stand.
  it('rounds one share in one way: 12 of 72 m² is 17% wherever it stands', async () => {
    await session.startNew(whole({ totalArea: 72 }, { looseness: ['fractured'], depth: 2 }));
    render(OwnerPage);
    expect(text()).not.toContain('83.');
    expect(text()).toMatch(/17 to 100%/);
    expect(text()).toMatch(/Not entered, 83%/);
  });

  // An owner who is told that somebody looks first is not to read prices as if nobody had to.
  it('tells what options take as after the look, where somebody looks before anybody prices', async () => {
    const job = whole({ totalArea: 72 }, { cracks: ['moving'] });
    await session.startNew(job);
    render(OwnerPage);
    expect(text()).toContain('before anybody prices anything');
    expect(text()).toContain('After that look: what each option may take');
    expect(text()).not.toContain('What each option takes');
  });
  it('has no table of which nothing is known, and says what is not counted', async () => {
    const { totalArea: _, ...job } = whole({}, { depth: ['20-to-50'], looseness: ['hollow'] });
    const site = { ...job.site, element: ['suspended-slab'], thickness: 160 };
    await session.startNew({ ...job, site } as unknown as Job);
    render(OwnerPage);
    expect(text()).toContain('before anybody prices anything');
    expect(text()).not.toMatch(/what each option (may )?take/i);
    expect(text()).toMatch(/Not counted, as it cannot be planned yet: /);
  });

  it('says that a crew is too small for hands and ears, where the plan says so', async () => {
    const line = /More people or days are needed to keep hands and ears safe/;
    await session.startNew(whole({ totalArea: 72 }));
    render(OwnerPage);
    await vi.waitFor(() => expect(text()).toContain('What each option takes'));
    cleanup();
    await session.startNew(whole({}, { depth: 30, area: 60 }));
    render(OwnerPage);
    await vi.waitFor(() => expect(text()).toMatch(line), { timeout: 20_000 });
  });
});
