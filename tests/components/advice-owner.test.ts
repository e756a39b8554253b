import { cleanup, render } from '@testing-library/svelte';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import AdvicePage from '$lib/ui/advice/AdvicePage.svelte';
import { rest, whileOpen } from '$lib/ui/advice/arriving.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';

const none = { yes: [], maybe: [] };
const job = (site: object, zone: object): Job =>
  ({
    name: 'Lock-keeper’s garden (invented)',
    site: {
      element: ['slab'],
      setting: ['open'],
      salts: ['none'],
      freezeThaw: ['some'],
      thickness: 120,
      warnings: none,
      ...site,
    },
    zones: [
      {
        id: 'a',
        name: 'By the pond',
        answers: {
          depth: ['film'],
          looseness: ['tight'],
          contamination: { yes: ['growth'], maybe: [] },
          texture: ['sandy'],
          cracks: ['none'],
          steel: ['none-seen'],
          finish: ['sealer'],
          area: 20,
          ...zone,
        },
      },
    ],
  }) as unknown as Job;
const mossyPatio = job({}, {});
const rustySteps = job(
  { element: ['steps'], thickness: 'unknown' },
  {
    depth: ['20-to-50'],
    looseness: ['fractured'],
    steel: ['corroded'],
    barLoss: ['within-limit', 'one-bar', 'neighbours'],
    contamination: { yes: [], maybe: ['growth', 'salt-bloom'] },
    finish: ['overlay', 'rebuild'],
    area: 2,
  },
);

// Rendering a whole page takes its time on a busy machine.
vi.setConfig({ testTimeout: 120_000 });
// What is folded, and what only open answers need, is fetched apart.
beforeAll(() => Promise.all([rest.load(), whileOpen.load()]));
afterEach(() => {
  cleanup();
  preferences.reader = null;
});
const shown = async (given: Job, selector = 'body') => {
  await session.startNew(given);
  render(AdvicePage, { zone: null });
  return document.querySelector(selector)?.textContent?.replace(/\s+/g, ' ') ?? '';
};

// Common practice, no source: what a careful owner of a house is told, and what is not theirs.
describe('whoever owns it', () => {
  beforeEach(() => {
    preferences.reader = 'own';
  });

  it('reads of no depth at which a sound patio would stop', async () => {
    const said = await shown(mossyPatio, '.said');
    expect(said).toContain('Nothing loose to take off');
    expect(said).not.toContain('Damage past');
  });

  // A hole past the top third is doubtful as a patch: no yes may stand above that.
  it('reads no plain yes where a patch is doubtful for its depth', async () => {
    const deep = { depth: ['20-to-50'], looseness: ['rotten'], contamination: none };
    const said = await shown(job({ thickness: 150 }, { ...deep, finish: ['overlay'] }), '.said');
    expect(said).toContain('A patch is doubtful here.');
    expect(said).not.toContain('This can be repaired.');
    cleanup();
    expect(await shown(mossyPatio, '.said')).toContain('This can be repaired.');
  });

  it('reads of no laboratory, lead or locating where nothing of the kind was said to be there', async () => {
    const page = await shown(mossyPatio);
    expect(page).not.toMatch(/asbestos|laboratory|switches them off/);
  });

  it('reads no heading over an empty list where nothing is left to others', async () => {
    const heading = 'What not to do yourself here';
    const clean = job({}, { contamination: none });
    expect(await shown(clean)).not.toContain(heading);
    cleanup();
    expect(await shown(rustySteps)).toContain(heading);
    cleanup();
    preferences.reader = 'work';
    expect(await shown(clean)).not.toContain('What an owner does not do here');
  });

  it('reads that harsher methods are too much for a sound patio, not that they would do', async () => {
    const page = await shown(mossyPatio);
    expect(page).toContain('7 harsher than needed');
    expect(page).not.toMatch(/possible too|0 ruled out/);
  });

  it('reads that a sealer takes the texture as it is, with no clash of numbers', async () => {
    const page = await shown(mossyPatio);
    expect(page).toMatch(
      /Roughness it needs\s*CSP 1 at least: a sealer takes the texture as it is/,
    );
    const said = document.querySelector('.said')?.textContent ?? '';
    expect(said).toContain('texture as it is');
    expect(said).not.toContain('CSP 1 to 2');
  });

  it('reads how the moss goes in the step that washes it off', async () => {
    const page = await shown(mossyPatio);
    expect(page).toContain('Scrape off thick growth while it is damp, and bag it.');
    expect(page).not.toContain('Take off growth');
    cleanup();
    expect(await shown(job({}, { contamination: none }))).not.toContain('Scrape off thick growth');
  });

  // Common practice, no source: acid eats concrete, bleach with acid gives off chlorine.
  it('reads of no acid and no mixing, that moss comes back, and of nothing to be marked for a wash', async () => {
    const page = await shown(mossyPatio);
    const part = document.querySelectorAll('.body section')[1]?.textContent ?? '';
    expect(part).toMatch(/What not to do yourself here.*Acid, or two cleaners mixed/s);
    expect(page).toContain('comes back where it stays damp and shady');
    expect(page).toContain('may be slippery when wet');
    expect(page).not.toContain('Call for the marking');
    cleanup();
    const broken = { depth: 30, looseness: ['hollow'], contamination: none, finish: ['overlay'] };
    const cut = await shown(job({}, broken));
    expect(cut).toContain('Call for the marking');
    expect(cut).not.toContain('two cleaners mixed');
  });

  it('reads of no bruised skin and no hammer where nothing strikes, and of degreasing first', async () => {
    const page = await shown(mossyPatio);
    expect(page).toContain('kill hearing');
    expect(page).not.toMatch(/[Bb]ruised skin|a hammer can make/);
    await vi.waitFor(
      () => {
        const told = document.body.textContent?.replace(/\s+/g, ' ') ?? '';
        expect(told).toMatch(/Oil or grease ?Degrease; afterwards grinding/);
      },
      { timeout: 60_000 },
    );
    cleanup();
    const broken = { depth: 30, looseness: ['hollow'], contamination: none, finish: ['overlay'] };
    expect(await shown(job({}, broken))).toMatch(
      /Bruised skin[^]*a hammer can make|a hammer can make[^]*Bruised skin/,
    );
  });

  it('is not told to ask the owner', async () => {
    const page = await shown(job({}, { texture: ['smooth'], finish: ['sealer', 'overlay'] }));
    expect(page).toContain('Think back, or ask who had it before you');
    expect(page).not.toContain('Ask the owner');
  });

  // Common practice: nobody knows by looking what is in old paint.
  it('reads of the laboratory before the first step wherever there is a coating', async () => {
    const painted = { contamination: { yes: ['thin-coating'], maybe: [] } };
    const line = /from before the 1980s, goes to a laboratory/;
    expect(await shown(job({}, painted))).toMatch(line);
    cleanup();
    expect(await shown(mossyPatio)).not.toMatch(line);
  });

  // UFC 3-270-04: loose to half the thickness, the part is replaced; the rest is common practice.
  it('reads what a contractor does where a part is made new, and of nothing to clear or prepare', async () => {
    const rotten = { depth: 70, looseness: ['rotten'], contamination: none, finish: ['overlay'] };
    const unasked = { texture: undefined, cracks: undefined, steel: undefined };
    const apron = JSON.parse(JSON.stringify(job({}, { ...rotten, ...unasked }))) as Job;
    const page = await shown(apron);
    expect(page).toContain('What a contractor does');
    expect(page).toContain('nobody patches, seals or salts it');
    expect(page).not.toMatch(
      /cleared|licence|Collapse|hold the concrete up|[Bb]ruised|CSP|must wait|salt bloom/,
    );
    cleanup();
    // What carries, or may, keeps all that stands before it.
    const above = { ...apron, site: { ...apron.site, element: ['suspended-slab'] } } as Job;
    expect(await shown(above)).toMatch(/Collapse[^]*licensed structural engineer/);
  });

  it('calls a contractor where a crew does the work', async () => {
    const said = await shown(
      job({}, { depth: 30, looseness: ['hollow'], finish: ['overlay'] }),
      '.said',
    );
    expect(said).toMatch(/Call\s*A contractor/);
  });

  // One rule: a crew calls nobody for its own work, everybody else calls the crew.
  it.each([
    ['own', 'A contractor'],
    ['explain', 'A contractor'],
    [null, 'A contractor'],
    ['work', 'No specialist for this zone'],
  ] as const)('shotblasting, read by those who %s it: %s', async (reader, called) => {
    preferences.reader = reader;
    const shot = { texture: ['smooth'], contamination: none, finish: ['overlay'] };
    for (const depth of [['film'], ['3-to-6']]) {
      const loose = depth[0] === 'film' ? ['tight'] : ['flaking'];
      const said = await shown(job({}, { ...shot, depth, looseness: loose }), '.said');
      expect(said).toContain('A trained crew. Not for owners');
      expect(said).toContain(called);
      cleanup();
    }
  });

  it('cleans and measures no bar, and calls now whoever does', async () => {
    const said = await shown(rustySteps, '.said');
    expect(said).toContain('Call a licensed structural engineer now');
    const page = document.body.textContent?.replace(/\s+/g, ' ') ?? '';
    expect(page).toContain('take a photo. Send it to a contractor or an engineer');
    expect(page).not.toContain('Clean it down to bright steel');
  });

  it('calls nobody before a test that everybody can do', async () => {
    const said = await shown(
      job(
        {},
        { texture: ['sandy', 'pitted'], depth: 5, looseness: ['flaking'], finish: ['overlay'] },
      ),
      '.said',
    );
    expect(said).toContain('Call no contractor yet');
  });
});
