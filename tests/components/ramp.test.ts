import { cleanup, render, screen, within, waitFor } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import AdvicePage from '$lib/ui/advice/AdvicePage.svelte';
import JobPage from '$lib/ui/job/JobPage.svelte';
import PlanPage from '$lib/ui/job/PlanPage.svelte';
import QuantitiesPart from '$lib/ui/job/QuantitiesPart.svelte';
import Summary from '$lib/ui/job/Summary.svelte';
import OwnerPage from '$lib/ui/owner/OwnerPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { rampJob } from '../helpers/ramp-job';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
beforeEach(async () => {
  preferences.units = 'metric';
  await session.startNew(rampJob());
});
afterEach(cleanup);

const text = () => (document.body.textContent ?? '').replace(/\s+/g, ' ');
const row = (name: string) =>
  within(screen.getAllByRole('row', { name: new RegExp(`^${name}`) })[0] as HTMLElement)
    .getAllByRole('cell')
    .map((cell) => cell.textContent?.trim());

// A third of 150 mm is 50 mm (FHWA checklist 9: the top third); the hole goes 40 + 13 = 53 mm deep.
describe('a part whose hole passes the top third of the slab', () => {
  it('is doubtful on its advice', () => {
    render(AdvicePage, { zone: 'z1' });
    expect(text()).toMatch(/may go past 50.mm, a third of the slab: a patch is doubtful/);
  });
  it('is doubtful on no other advice', () => {
    render(AdvicePage, { zone: 'z0' });
    expect(text()).not.toMatch(/doubtful/);
  });
  it('is doubtful in the list of zones, once', () => {
    render(JobPage);
    expect(text().match(/doubtful/g)).toHaveLength(1);
    expect(text()).toMatch(/may go past 50.mm, a third of the slab: a patch is doubtful/);
  });
  it('is doubtful on the plan, by name', () => {
    render(PlanPage);
    expect(text()).toMatch(/Edge by the road: The hole may go past 50.mm, a third of the slab/);
  });
  it('is a part on the owner’s sheet, and its hole is told', () => {
    render(OwnerPage);
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent(
      'Most can be restored; a part is doubtful',
    );
    expect(text()).toMatch(/53.mm in all, 35.?% of the thickness/);
    expect(text()).toMatch(/Up to 1 of 3 parts made new/);
  });
});

describe('a number on two pages', () => {
  // Nobody has said whether it is a patio or a drive: cars are an if.
  it('is one: days closed, the days before cars only where any drive', () => {
    render(OwnerPage);
    const days = row('Days closed')[0];
    expect(days).toMatch(/\d/);
    cleanup();
    render(Summary);
    const closed = screen.getByText('Closed').parentElement;
    expect(closed).toHaveTextContent(`${days} days`);
    expect(closed).toHaveTextContent(/after the work, if cars drive there/);
    expect(text()).not.toContain('Closed to cars');
  });
  it('is one: days of machines', () => {
    render(OwnerPage);
    const days = row('Days of hire')[0];
    expect(text()).toContain(`Machines: ${days} days of hire`);
  });
});

// Common practice, no source: cables and pipes are marked before anybody saws or breaks, whichever zone asks.
describe('whom to call', () => {
  it('stands on the plan', async () => {
    const job = rampJob();
    const warnings = { yes: ['buried-services'], maybe: [] } as const;
    await session.startNew({ ...job, site: { ...job.site, warnings } });
    render(PlanPage);
    expect(text()).toMatch(/Call before day 1: a service that locates cables and pipes/);
  });
  it('is nobody for a zone, never for the site', () => {
    preferences.reader = 'work';
    render(AdvicePage, { zone: 'z0' });
    expect(text()).toMatch(/No specialist for this zone/);
    preferences.reader = null;
  });
});

describe('the owner’s sheet', () => {
  it('says once which ranges overlap, under the table', () => {
    render(OwnerPage);
    const table = screen.getAllByRole('table')[0] as HTMLElement;
    expect(table).not.toHaveTextContent(/overlap/);
    expect(table.nextElementSibling).toHaveTextContent(/^Ranges overlap/);
  });
});

describe('the plan', () => {
  it('asks for a drawing where one piece or many spots makes the range', () => {
    render(QuantitiesPart);
    expect(screen.getAllByRole('link', { name: 'Draw it' })[0]).toHaveAttribute(
      'href',
      expect.stringMatching(/survey/),
    );
  });
  it('tells the note of a figure once among the amounts', async () => {
    const { container } = render(QuantitiesPart);
    const folds = container.querySelectorAll<HTMLDetailsElement>(
      '.columns > div:first-child details',
    );
    for (const fold of folds) {
      fold.open = true;
      fold.dispatchEvent(new Event('toggle'));
    }
    await waitFor(() => expect(container.querySelectorAll('.own').length).toBeGreaterThan(5));
    expect(text().match(/Square patches laid on/g)).toHaveLength(1);
  });
  it('says beside the repair material that the overlay is not in it', () => {
    render(Summary);
    expect(screen.getByText('Repair material').parentElement).toHaveTextContent(
      /without the overlay on top/i,
    );
  });
});
