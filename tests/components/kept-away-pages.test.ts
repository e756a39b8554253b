import { cleanup, render } from '@testing-library/svelte';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import CrewPage from '$lib/ui/crew/CrewPage.svelte';
import JobPage from '$lib/ui/job/JobPage.svelte';
import PlanPage from '$lib/ui/job/PlanPage.svelte';
import OwnerPage from '$lib/ui/owner/OwnerPage.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import ReadyPage from '$lib/ui/ready/ReadyPage.svelte';
import { session } from '$lib/ui/session.svelte';
import { boatShed } from '../helpers/boat-shed';

// Rendering a whole page takes its time on a busy machine.
vi.setConfig({ testTimeout: 120_000 });
Element.prototype.scrollIntoView = () => undefined;
beforeEach(() => {
  preferences.units = 'metric';
  preferences.reader = null;
});
afterEach(cleanup);

const words = (element: Element | null) => element?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
const line = 'Keep people off it and from under it. Call a licensed structural engineer.';
const hollow = { looseness: ['hollow'], depth: 40 };
const tight = { looseness: ['tight'], depth: ['film'] };
const balcony = boatShed({ element: ['suspended-slab'], thickness: 160 }, hollow);
/** A slab that holds a post up, hollow in one zone and sound in the other. */
const holding = boatShed(
  { thickness: 160, warnings: { yes: ['holds-something-up'], maybe: [] } },
  hollow,
);
const offIt = 'Keep people away from it. Call a licensed structural engineer.';
const withSound: Job = {
  ...holding,
  zones: holding.zones.flatMap((zone) => [
    zone,
    { id: 'b', name: 'By the rail', answers: { ...zone.answers, ...tight } as never },
  ]),
};
const pages = [
  ['job', () => render(JobPage)],
  ['plan', () => render(PlanPage)],
  ['owner’s sheet', () => render(OwnerPage)],
  ['crew’s day', () => render(CrewPage, { day: null })],
  ['readiness', () => render(ReadyPage, { zone: 'a' })],
] as const;
const boxes = () => [...document.querySelectorAll('.away')].map(words);

// Common practice, no source: who reads any page of a job learns there to keep away from what may fall.
describe.each(pages)('the page: %s', (name, show) => {
  it('says first to keep away from a hollow balcony, and whom to call', async () => {
    await session.startNew(balcony);
    show();
    expect(boxes()[0]).toBe(line);
    const [box] = document.querySelectorAll('.away');
    // Before any figure, any step and any check.
    for (const later of document.querySelectorAll('dl, table, .card, article'))
      expect(box?.compareDocumentPosition(later)).toBe(Node.DOCUMENT_POSITION_FOLLOWING);
  });

  it('says whom to call once', async () => {
    await session.startNew(boatShed(balcony.site, { ...hollow, steel: ['rust-stain'] }));
    show();
    expect(words(document.body)).not.toMatch(/ask a licensed structural engineer/i);
  });

  it('says it of the same hollow on the ground to nobody', async () => {
    await session.startNew(boatShed({}, hollow));
    show();
    expect(boxes()).toEqual([]);
  });

  it('says of which zone it is where another is sound', async () => {
    await session.startNew(withSound);
    show();
    const own = name === 'job' || name === 'readiness';
    expect(boxes()).toContain(own ? offIt : `By the door: ${offIt}`);
    if (name === 'job') {
      expect(words(document.querySelector('#zone-a'))).toContain(offIt);
      expect(words(document.querySelector('#zone-b'))).not.toContain(offIt);
    }
  });
});

// Common practice, no source: what may come down is propped as an engineer says before anybody works there.
describe('the plan', () => {
  it.each(['own', 'work', null] as const)(
    'tells a reader (%s) of collapse, props and falling pieces, though nothing can be planned',
    async (reader) => {
      preferences.reader = reader;
      await session.startNew(balcony);
      render(PlanPage);
      const page = words(document.body);
      expect(page).toContain('No zone can be planned yet');
      expect(page).toContain('Collapse and stretched cables');
      expect(page).toMatch(/Put up the props they ask for first/);
      expect(page).toContain('Falling pieces');
    },
  );
  it('tells of them beside what can be planned, too', async () => {
    await session.startNew(withSound);
    render(PlanPage);
    expect(words(document.querySelector('.cautions'))).toMatch(/Put up the props they ask for/);
    cleanup();
    await session.startNew(boatShed({}, tight));
    render(PlanPage);
    expect(words(document.querySelector('.cautions'))).not.toMatch(/Put up the props/);
  });
  it('has the owner’s sheet say that an engineer says what to prop', async () => {
    preferences.reader = 'own';
    await session.startNew(balcony);
    render(OwnerPage);
    expect(words(document.body)).toMatch(/An engineer says how, and what to prop/);
  });
});

describe('an owner who is kept away', () => {
  it('is told of no check to do there, nor to type any result', async () => {
    preferences.reader = 'own';
    await session.startNew(balcony);
    render(ReadyPage, { zone: 'a' });
    const screen = [...document.querySelectorAll('.no-print')].map(words).join(' ');
    expect(screen).toContain(line);
    expect(screen).toContain('Do not go there. Whoever you call does these');
    expect(document.querySelector('.card')).toBeNull();
    expect(screen).not.toMatch(/Tap with a hammer|Checked by|Length of the zone|Do the checks/);
  });

  it('is no crew, which reads its checks under that line', async () => {
    preferences.reader = 'work';
    await session.startNew(balcony);
    render(ReadyPage, { zone: 'a' });
    expect(document.querySelectorAll('.card').length).toBeGreaterThan(0);
  });
});
