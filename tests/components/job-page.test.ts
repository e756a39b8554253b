import { cleanup, render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import JobPage from '$lib/ui/job/JobPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { keptDraft } from '$lib/ui/question/kept-draft';
import { session } from '$lib/ui/session.svelte';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
// The page under test scrolls; what stands for the browser here cannot.
Element.prototype.scrollIntoView = () => undefined;
const user = userEvent.setup();
const job: Job = {
  name: 'Yard (invented)',
  site: { element: ['slab'], thickness: 150 },
  zones: [
    { id: 'a', name: 'Ramp', answers: { depth: 20, looseness: ['hollow'], area: 12 } },
    { id: 'b', name: 'Steps', answers: {} },
  ],
};
beforeEach(async () => {
  preferences.units = 'metric';
  await session.startNew(job);
});
afterEach(cleanup);

const answersOf = (id: string) => session.zone(id)?.answers;
const open = async (name: RegExp) => user.click(screen.getByText(name, { selector: 'summary' }));
const button = (name: string | RegExp) =>
  screen.findByRole('button', { name }, { timeout: 20_000 });

describe('answers on the job page', () => {
  it('are told at a glance, changed in place, and undone; the focus stays there', async () => {
    render(JobPage);
    expect(screen.getByText('Depth: 20 mm · Hollow')).toBeInTheDocument();
    await open(/^Answers \(3\)/);
    await user.click(await button('Change: Depth of Ramp'));
    const form = await screen.findByRole('button', { name: 'Save' }, { timeout: 20_000 });
    const field = screen.getByLabelText('Depth of the damage');
    expect(field).toHaveValue('20');
    await user.clear(field);
    await user.type(field, '200');
    await user.click(form);
    // The same question refuses what it refuses in the interview, and what was typed stays.
    expect(screen.getByText(/deeper than the slab/)).toBeInTheDocument();
    expect(field).toHaveValue('200');
    await user.clear(field);
    await user.type(field, '35');
    await user.click(form);
    expect(answersOf('a')?.depth).toBe(35);
    expect(await button('Change: Depth of Ramp')).toHaveFocus();
    await user.click(await button('Undo: Depth of Ramp'));
    expect(answersOf('a')?.depth).toBe(20);
    expect(await button('Change: Depth of Ramp')).toHaveFocus();
    // Seen, not only heard: the answer that stands again.
    const said = screen.getByText('Undone: Depth of Ramp is 20 mm again.');
    expect(said).not.toHaveClass('unseen');
  });

  it('have no bar over their Save: who answers a second one does not undo the first', async () => {
    render(JobPage);
    await open(/^Answers \(3\)/);
    await user.click(await button('Change: Depth of Ramp'));
    const field = await screen.findByLabelText('Depth of the damage', {}, { timeout: 20_000 });
    await user.clear(field);
    await user.type(field, '35');
    await user.click(await button('Save'));
    const bar = screen.getByText('Changed: Depth of Ramp.').closest('[role=status]');
    expect(bar).toHaveClass('over');
    await user.click(await button('Change: Looseness of Ramp'));
    await button('Save');
    expect(bar).not.toHaveClass('over');
    await user.click(await button('Leave it as it was'));
    expect(bar).toHaveClass('over');
  });

  it('are counted as they are shown, and none of a length is said in the words of its choice', async () => {
    await session.startNew({
      ...job,
      zones: [
        // Through the whole thickness: looseness and texture count for nothing.
        {
          id: 'a',
          name: 'Ramp',
          answers: { depth: ['through'], looseness: ['hollow'], texture: ['pitted'] },
        },
        { id: 'b', name: 'Steps', answers: { borderLength: 0 } },
      ],
    });
    render(JobPage);
    const [ramp, steps] = screen.getAllByText(/^Answers \(1\)/, { selector: 'summary' });
    await user.click(ramp as HTMLElement);
    expect(screen.queryByText('Pitted')).toBeNull();
    await user.click(steps as HTMLElement);
    expect(await screen.findByText('None of it')).toBeInTheDocument();
    expect(screen.queryByText('0 m')).toBeNull();
  });

  it('that were measured do not come along with a copy, and that is said', async () => {
    render(JobPage);
    await open(/^Answers \(3\)/);
    await user.click(await button('Copy Ramp'));
    const [, copy] = session.job.zones;
    expect(copy).toMatchObject({ name: 'Ramp 2', answers: { depth: 20, looseness: ['hollow'] } });
    expect(copy?.answers.area).toBeUndefined();
    const said = screen.getByText(/^Copied: Ramp\. Its area and lengths are left open/);
    expect(said).not.toHaveClass('unseen');
  });

  it('are left as they were by one button', async () => {
    render(JobPage);
    await open(/^Answers \(3\)/);
    await user.click(await button('Change: Looseness of Ramp'));
    await user.click(await screen.findByRole('radio', { name: 'Rotten' }));
    // What is begun waits in the tab: a reload does not cost it.
    expect(keptDraft(session.id, 'looseness', 'a')).not.toBeNull();
    await user.click(await button('Leave it as it was'));
    expect(keptDraft(session.id, 'looseness', 'a')).toBeNull();
    expect(answersOf('a')?.looseness).toEqual(['hollow']);
    expect(await button('Change: Looseness of Ramp')).toHaveFocus();
  });

  it('of the site are changed in place too', async () => {
    render(JobPage);
    await user.click(await button('Change: Thickness of the site'));
    const field = await screen.findByLabelText(/thick/i, { selector: '#thickness-number' });
    await user.clear(field);
    await user.type(field, '180');
    await user.click(await button('Save'));
    expect(session.job.site.thickness).toBe(180);
  });

  it('are not written when the zone is gone: the form goes, and it is told', async () => {
    render(JobPage);
    await open(/^Answers \(3\)/);
    await user.click(await button('Change: Looseness of Ramp'));
    await user.click(await screen.findByRole('radio', { name: 'Rotten' }));
    // As another tab would.
    session.update((now) => ({ ...now, zones: now.zones.filter(({ id }) => id !== 'a') }));
    expect(
      await screen.findByText(
        'The zone you were changing is not there any more. Nothing was changed.',
      ),
    ).toBeInTheDocument();
    expect(screen.queryByRole('button', { name: 'Save' })).toBeNull();
    expect(session.job.zones.map(({ answers }) => answers)).toEqual([{}]);
  });

  it('changed elsewhere meanwhile are not written over unseen', async () => {
    render(JobPage);
    await open(/^Answers \(3\)/);
    await user.click(await button('Change: Looseness of Ramp'));
    await user.click(await screen.findByRole('radio', { name: 'Rotten' }));
    session.update((now) => ({
      ...now,
      zones: now.zones.map((zone) =>
        zone.id === 'a' ? { ...zone, answers: { ...zone.answers, looseness: ['flaking'] } } : zone,
      ),
    }));
    await user.click(await button('Save'));
    expect(answersOf('a')?.looseness).toEqual(['flaking']);
    expect(await screen.findByText(/was changed elsewhere/)).toBeInTheDocument();
    await user.click(await button('Save'));
    expect(answersOf('a')?.looseness).toEqual(['rotten']);
  });
});

describe('zones from a table', () => {
  const paste = async (text: string) => {
    render(JobPage);
    await open(/^Zones from a table/);
    const box = await screen.findByLabelText('Your table', {}, { timeout: 20_000 });
    await user.click(box);
    await user.paste(text);
    return box;
  };

  it('are looked at before they are added, and go again with one undo', async () => {
    await paste('Zone\tDepth (mm)\tLooseness\nKerb\t12,5\tPowdery\nSill\t\tnot sure\n');
    const read = screen.getByText('What we read').closest('[role=status]') as HTMLElement;
    expect(within(read).getByText('Kerb')).toBeInTheDocument();
    expect(within(read).getByText(/Depth: 12\.5 mm · Powdery/)).toBeInTheDocument();
    expect(session.job.zones).toHaveLength(2);
    await user.click(await button('Add these 2 zones'));
    expect(session.job.zones.map(({ name }) => name)).toEqual(['Ramp', 'Steps', 'Kerb', 'Sill']);
    await user.click(await button('Undo: take the added zones out'));
    expect(session.job).toEqual(job);
  });

  it('are not added while anything is wrong; what was pasted stays for mending', async () => {
    const text = 'Zone\tDepth\nKerb\tdeep\n';
    const box = await paste(text);
    expect(screen.getByText(/^Row 2, Depth: “deep” cannot be read\. Expected/)).toBeInTheDocument();
    expect(screen.queryByRole('button', { name: /^Add (this zone|these \d)/ })).toBeNull();
    expect(box).toHaveValue(text);
    await user.clear(box);
  });
});
