import fc from 'fast-check';
import { cleanup, render } from '@testing-library/svelte';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '$lib/answers/job';
import { questions } from '$lib/answers/questions';
import AdvicePage from '$lib/ui/advice/AdvicePage.svelte';
import { rest, whileOpen } from '$lib/ui/advice/arriving.svelte';
import { preferences } from '$lib/ui/preferences.svelte';
import { session } from '$lib/ui/session.svelte';
import { boatShed } from '../helpers/boat-shed';
import { rounds } from '../helpers/rounds';

/** Every warning sign "Not sure". */
const unsure = { warnings: { yes: [], maybe: questions.warnings.choices } };
const balcony = boatShed(
  { element: ['suspended-slab'], ...unsure },
  { looseness: ['hollow'], depth: undefined },
);

/** An underside that may have let go, of which nobody knows how deep. */
const soffit = boatShed(
  { element: ['soffit'] },
  { looseness: ['tight', 'hollow'], depth: undefined },
);

// Rendering a whole page takes its time on a busy machine.
vi.setConfig({ testTimeout: 120_000 });
beforeAll(() => Promise.all([rest.load(), whileOpen.load()]));
beforeEach(() => {
  preferences.reader = 'own';
});
afterEach(() => {
  cleanup();
  preferences.reader = null;
});
const words = (element: Element | null) => element?.textContent?.replace(/\s+/g, ' ') ?? '';
async function shown(given: Job): Promise<void> {
  await session.startNew(given);
  render(AdvicePage, { zone: null });
}
/** What nothing has to be unfolded for. */
const inSight = () => {
  const page = document.body.cloneNode(true) as HTMLElement;
  for (const folded of page.querySelectorAll('details')) folded.remove();
  return words(page);
};

// Common practice, no source: a hollow balcony is cleared and an engineer called; its owner tests nothing.
describe('an owner whom the page tells to keep off', () => {
  it('reads on the first screen to keep off and whom to call, and of no test', async () => {
    await shown(balcony);
    const said = words(document.querySelector('.said'));
    expect(said).toContain('Keep people off it and from under it.');
    expect(said).toContain('Call a licensed structural engineer.');
    expect(said).not.toMatch(/may come to a stop|Look round|Take off|Enter the result/);
  });

  it('reads why without opening anything, and of no step to do there', async () => {
    await shown(balcony);
    expect(words(document.querySelector('.body h2'))).toMatch(/What may have to come first/);
    expect(inSight()).toContain('If it is hollow where it hangs free, an engineer has its depth');
    const page = words(document.body);
    expect(page).not.toMatch(/Do now|Take off no more than a test needs|one small spot/);
    expect(page).toContain('What they test there');
    expect(page).toContain('Whoever you call does these');
    expect(page).not.toMatch(/Lay a straight edge|Walk round/);
  });

  it('is no crew: whoever works on it reads the test, and what to do now', async () => {
    preferences.reader = 'work';
    await shown(balcony);
    expect(words(document.querySelector('.said'))).toMatch(/Look round the place/);
    expect(words(document.body)).toContain('Do now');
  });

  // Common practice, no source: see tests/unit/approach.test.ts.
  it('has a crew tap it from beside it, with nobody below, and take nothing off', async () => {
    preferences.reader = 'work';
    await shown(soffit);
    const page = words(document.body);
    expect(page).toMatch(/Tap it with a hammer.{0,80}Nobody stands under it/);
    expect(page).toMatch(
      /Measure the depth.{0,80}Take nothing off what hangs. This waits for the engineer/,
    );
    expect(page).not.toMatch(/scrape out what is loose/);
  });
});

// Common practice, no source: what is in old paint is found out before anything else; a sound floor
// on the ground is no reason to keep off because nobody has looked for a post.
describe('a painted garage floor, every warning sign not looked for', () => {
  const garage = boatShed(
    { setting: ['indoors'], freezeThaw: ['rare'], ...unsure },
    {
      depth: ['film'],
      looseness: ['tight'],
      texture: ['smooth'],
      contamination: { yes: ['thin-coating'], maybe: [] },
      finish: ['thin-film'],
      area: 36,
    },
  );
  it('has the paint tested first, and keeps nobody away', async () => {
    await shown(garage);
    const said = words(document.querySelector('.said'));
    expect(said).toContain('First a testing laboratory tests the coating: make no dust until then');
    expect(words(document.querySelector('.now h2'))).toBe('Have the coating tested');
    expect(inSight()).toContain('it may hold lead or asbestos');
    const page = words(document.body);
    expect(page).not.toMatch(/Keep people|Do not go there|the tick/);
    expect(page).not.toMatch(/Clear the place/);
    expect(page).toMatch(/sweeping or grinding an old coating/);
  });
  it('has whoever works on it take nothing off before the sample, which is taken wet', async () => {
    preferences.reader = 'work';
    await shown(garage);
    const page = words(document.body);
    expect(page).toMatch(/Do now.{0,120}Take nothing off. Somebody licensed takes a sample/);
    expect(page).toContain('takes a sample, wet and without dust');
    expect(page).not.toContain('no more than a test needs');
  });
});

/** Any answers to the questions that have choices, each given, left open or not sure. */
const open = (id: keyof typeof questions) => {
  const { kind, ...more } = questions[id];
  const choices = 'choices' in more ? (more.choices as readonly string[]) : [];
  const one = choices.map((choice) => [choice]);
  if (kind !== 'many') return fc.constantFrom(undefined, ...one);
  const list = fc.subarray([...choices], { maxLength: 2 });
  return fc.record({ yes: list, maybe: fc.constantFrom([], choices) }).map(({ yes, maybe }) => ({
    yes,
    maybe: maybe.filter((each) => !yes.includes(each)),
  }));
};
const anything = fc.record({
  site: fc.record({
    element: open('element'),
    setting: open('setting'),
    warnings: open('warnings'),
  }),
  zone: fc.record({
    looseness: open('looseness'),
    depth: fc.constantFrom(undefined, 2, 5, 30, 80),
    contamination: open('contamination'),
    steel: open('steel'),
    area: fc.constantFrom(2, 6, 30),
  }),
});

it('no heading stands over nothing, whatever an owner has answered', async () => {
  await fc.assert(
    fc.asyncProperty(anything, async ({ site, zone }) => {
      await shown(boatShed(site, zone));
      for (const heading of document.querySelectorAll('.body :is(h2, h3, summary)')) {
        const under = words(heading.closest('details, section, div, .later'));
        expect(under.trim().length, words(heading)).toBeGreaterThan(words(heading).trim().length);
      }
      cleanup();
    }),
    {
      numRuns: rounds(6, 30),
      examples: [
        [
          {
            site: { element: ['suspended-slab'], setting: ['open'], ...unsure },
            zone: {
              looseness: ['hollow'],
              depth: undefined,
              contamination: undefined,
              steel: undefined,
              area: 6,
            },
          } as never,
        ],
      ],
    },
  );
});
