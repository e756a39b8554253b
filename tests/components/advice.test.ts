import { cleanup, render, screen, waitFor, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { adviseZone } from '$lib/advice/advise';
import { limitsHere } from '$lib/advice/owner-limits';
import AdvicePage from '$lib/ui/advice/AdvicePage.svelte';
import { rest, whileOpen } from '$lib/ui/advice/arriving.svelte';
import { forOwner, partsFor, partOrders } from '$lib/ui/advice/part-order';
import { preferences, readers } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { formatter } from '$lib/words/format';
import { hazardWords } from '$words/hazards';
import { methodNames } from '$words/names';
import { askedInZone } from '$lib/plan/ask';
import { askWords, soundQuote } from '$words/owner';
import { ruleSentences } from '$words/rules';
import { possibleHoldSentence } from '$words/rules/possible-holds';
import { stepHere } from '$words/steps/here';
import { advicePageWords } from '$words/ui/advice';
import { verdictWords } from '$words/verdicts';
import { boatShed as job } from '../helpers/boat-shed';
import { sampled } from '../helpers/rounds';

const say = formatter('metric');
const cases: Readonly<Record<string, Job>> = {
  settled: job({}, {}),
  'held up by a warning': job({ warnings: { yes: ['old-coating-or-adhesive'], maybe: [] } }, {}),
  stopped: job({ element: ['suspended-slab'] }, { looseness: ['hollow'], depth: 30 }),
  open: job({}, { looseness: ['powdery', 'fractured', 'hollow'], texture: ['sandy', 'pitted'] }),
  'warnings not known': job(
    { warnings: { yes: [], maybe: ['settled-or-rocking', 'old-coating-or-adhesive'] } },
    {},
  ),
  'stopped one way or another': job(
    { thickness: 100 },
    { looseness: ['hollow'], depth: ['over-50', 'through'] },
  ),
};

/** The text of the page, folded parts and all. */
const text = () => document.body.textContent?.replace(/\s+/g, ' ') ?? '';
const headings = () =>
  [...document.querySelectorAll('.body h2')].map(({ textContent }) => textContent?.trim());
const headline = () => document.querySelector('h1')?.textContent?.trim();
/** The text that nothing has to be unfolded for. */
const inSight = () => {
  const page = document.body.cloneNode(true) as HTMLElement;
  for (const folded of page.querySelectorAll('details')) folded.remove();
  return page.textContent?.replace(/\s+/g, ' ') ?? '';
};

// Rendering a whole page takes its time on a busy machine.
vi.setConfig({ testTimeout: 120_000 });
const patience = { timeout: 60_000 };

// What is folded, and what only open answers need, is fetched apart.
beforeAll(() => Promise.all([rest.load(), whileOpen.load()]));
afterEach(() => {
  cleanup();
  preferences.reader = null;
});

describe.each(sampled(Object.entries(cases), 3))('the same advice, %s,', (_name, given) => {
  const [zone] = given.zones;
  const advice = adviseZone(given.site, zone?.answers ?? {});

  it('tells every reader every fact, each in an order of their own, and folds it', async () => {
    const verdict = verdictWords.verdicts[advice.verdict].name;
    const facts = [
      ...advice.holds.map((hold) => ruleSentences[hold.rule](hold, say)),
      ...advice.holds.map(({ who }) => verdictWords.who[who].name),
      ...advice.possibleHolds.map((hold) => possibleHoldSentence(hold, say)),
      ...advice.cautions.flatMap((id) => [
        hazardWords(say)[id].harm,
        ...hazardWords(say)[id].controls,
        hazardWords(say)[id].stop,
      ]),
      ...advice.steps.flatMap((step) => [
        stepHere(step, say).name,
        ...step.why.map((reason) => ruleSentences[reason.rule](reason, say)),
      ]),
      ...advice.rejections.map((each) => ruleSentences[each.rule](each, say)),
      ...limitsHere(given.site, zone?.answers ?? {}, advice).map(
        (id) => verdictWords.ownerLimits[id],
      ),
      ...askedInZone(advice).map((id) => askWords[id]),
      ...soundQuote,
      verdictWords.deferral,
    ];
    const orders = new Set<string>();
    for (const reader of readers) {
      preferences.reader = reader;
      await session.startNew(given);
      render(AdvicePage, { zone: null });
      expect(headline()).toMatch(
        advice.method ? new RegExp(`^${verdict}: ${methodNames[advice.method]}$`, 'i') : verdict,
      );
      const page = text();
      for (const fact of facts) expect(page, reader).toContain(fact.replace(/\s+/g, ' '));
      orders.add(headings().join());
      // What stops the work is in sight of everybody.
      for (const hold of advice.holds)
        expect(inSight()).toContain(ruleSentences[hold.rule](hold, say).replace(/\s+/g, ' '));
      for (const hold of advice.possibleHolds) {
        // What may stop it stands in sight; what may only have to be asked is one tap away.
        const told = possibleHoldSentence(hold, say).replace(/\s+/g, ' ');
        expect(hold.verdict === 'stop' ? inSight() : page).toContain(told);
        // What is not sure is not said as a fact.
        expect(page).not.toContain(ruleSentences[hold.rule](hold, say).replace(/\s+/g, ' '));
      }
      cleanup();
    }
    expect(orders.size).toBe(readers.length);
  });

  it('says where a number comes from once, and leads there from each', async () => {
    preferences.reader = 'work';
    await session.startNew(given);
    render(AdvicePage, { zone: null });
    const links = [...document.querySelectorAll<HTMLAnchorElement>('a[href^="#figure-"]')];
    const reasons = [...advice.holds, ...advice.steps.flatMap(({ why }) => why), ...advice.reasons];
    const numbered = reasons.filter(({ figures }) => figures?.length).length;
    expect(links).toHaveLength(numbered + (advice.target.figures.length ? 1 : 0));
    const [first] = links;
    if (!first) return;
    await userEvent.click(first);
    await waitFor(() => expect(document.activeElement?.id).toBe(first.hash.slice(1)), patience);
    expect(document.activeElement?.closest('details')).toHaveAttribute('open');
    for (const { hash } of links)
      expect(document.querySelectorAll(`[id="${hash.slice(1)}"]`)).toHaveLength(1);
    // Nothing else tells of sources.
    expect(document.querySelectorAll('ul:has(> [id^="figure-"])')).toHaveLength(1);
    expect(text()).not.toContain(advicePageWords.where);
  });
});

describe('the first screen', () => {
  it('tells tool, depth and its next limit, who, whom to call, and what comes first', async () => {
    await session.startNew(cases.settled);
    render(AdvicePage, { zone: null });
    const said = document.querySelector('.said')?.textContent ?? '';
    expect(said).toMatch(/Tool\s*Scarifier/);
    // Past 1/4 in it is broken out: common practice, no source.
    expect(said).toMatch(/How deep\s*Down to 5\smm\. Damage past 6\smm: breaking out/);
    expect(said).toMatch(/Who\s*A trained crew/);
    expect(said).toMatch(/Call\s*A contractor/);
    expect(said).toMatch(/First\s*Sound and mark, then this/);
  });

  it('says the edge of a band as the limit beside it, not to the tenth', async () => {
    const { settled } = cases;
    if (!settled) throw new Error('No such case');
    const banded = settled.zones.map((zone) => ({
      ...zone,
      answers: { ...zone.answers, depth: ['3-to-6'] as const },
    }));
    await session.startNew({ ...settled, zones: banded });
    render(AdvicePage, { zone: null });
    const said = document.querySelector('.said')?.textContent ?? '';
    expect(said).toMatch(/Down to 6\smm\. Damage past 6\smm/);
  });

  it('has the main step open with its settings, and every hazard as a sign that opens', async () => {
    await session.startNew(cases.settled);
    render(AdvicePage, { zone: null });
    const advice = adviseZone(cases.settled?.site ?? {}, cases.settled?.zones[0]?.answers ?? {});
    const open = [...document.querySelectorAll('.body ol > li > details[open]')];
    expect(open).toHaveLength(1);
    for (const name of ['Tool', 'Setting', 'Pass', 'Stop'])
      expect(within(open[0] as HTMLElement).getByText(name)).toBeInTheDocument();
    for (const id of advice.cautions) {
      const card = document.getElementById(`hazard-${id}`)?.closest('details');
      expect(card?.textContent?.replace(/\s+/g, ' ')).toContain(hazardWords(say)[id].stop);
    }
  });
});

it('says what it may be where it stops one way or another', async () => {
  await session.startNew(cases['stopped one way or another'] as Job);
  render(AdvicePage, { zone: null });
  expect(headline()).toBe(verdictWords.verdicts.stop.name);
  expect(headings()[0]).toBe(advicePageWords.possible.someStop);
});

it('says only “may” of what may stop it, where something is sure to', async () => {
  const given = job({ warnings: { yes: ['fire-or-chemical'], maybe: ['settled-or-rocking'] } }, {});
  await session.startNew(given);
  render(AdvicePage, { zone: null });
  expect(headings()).not.toContain(advicePageWords.possible.someStop);
  expect(headings()[0]).toBe(advicePageWords.holds.stop);
});

describe('ways of reading', () => {
  beforeEach(() => session.startNew(cases.settled));

  it('hold the same parts', () => {
    for (const given of Object.values(cases)) {
      const advice = adviseZone(given.site, given.zones[0]?.answers ?? {});
      const [first, ...others] = readers.map((reader) =>
        [
          ...new Set(partsFor(reader, advice).flatMap((id) => (id === 'owner' ? forOwner : [id]))),
        ].sort(),
      );
      for (const other of others) expect(other).toEqual(first);
    }
    for (const { open } of Object.values(partOrders)) expect(open).toContain('holds');
  });

  it('are switched on the page, and it says so', async () => {
    render(AdvicePage, { zone: null });
    const before = headline();
    await userEvent.click(screen.getByLabelText('I own it'));
    expect(preferences.reader).toBe('own');
    expect(screen.getByText(/^Same advice/)).toBeInTheDocument();
    expect(headline()).toBe(before);
    // Yes before no.
    expect(headings().slice(0, 2)).toEqual([
      'What you may do yourself',
      'What not to do yourself here',
    ]);
    await userEvent.click(screen.getByLabelText('I explain it'));
    expect(headings()[0]).toBe('Restore or replace');
    expect(screen.getByRole('link', { name: 'To the owner’s sheet' })).toHaveAttribute(
      'href',
      expect.stringContaining('/owner/'),
    );
  });

  it('show what would change it once that is worked out, depths as numbers, likeliest first', async () => {
    render(AdvicePage, { zone: null });
    const part = screen.getByText('What would change it').closest('section') as HTMLElement;
    await waitFor(() => within(part).getByText('Two answers together'), patience);
    const rows = [...part.querySelectorAll('li')].map(({ textContent }) => textContent);
    expect(rows[0]).toMatch(/^Looseness: /);
    expect(rows).toContainEqual(expect.stringMatching(/^Depth from 6\smm ?Breaking out/));
    // Half of 150 mm, less the half inch that breaking out goes into sound concrete.
    expect(rows).toContainEqual(expect.stringMatching(/^Depth from 62\smm ?Stop/));
  });
});
