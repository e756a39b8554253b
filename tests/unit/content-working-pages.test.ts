import { explainers } from '$lib/learn/library.server';
import { words } from '$lib/words';
import { formatter } from '$lib/words/format';
import { rangeOf, valueOf } from '$shared/figures';
import { describe, expect, it } from 'vitest';

/*
 * What a page must hold that somebody works by. The list is common practice of the trade, no source:
 * tool and setting, order, the commonest mistake, the sign to stop, the control of dust and noise in
 * the steps, and how one knows that it is done.
 */
type Page = (typeof explainers)[number];
const bySlug = new Map(explainers.map((page) => [page.slug, page]));
const page = (slug: string): Page => {
  const found = bySlug.get(slug);
  if (!found) throw new Error(`no page ${slug}`);
  return found;
};

/** The numbered steps of a page, as one text. */
const stepsOf = ({ body }: Page): string =>
  body
    .split('\n')
    .filter((line) => /^\d+\. /.test(line))
    .join('\n');

/** Pages of work that make dust in the air at the tool. */
const dusty = [
  'grinding',
  'abrasive-blasting',
  'scarifying',
  'shotblasting',
  'needle-scaling',
  'breaking-out',
  'saw-cutting',
  'routing-cracks',
  'chasing-cracks',
  'freeing-bars',
  'cleaning-bars',
  'edge-work',
];
/** Work with no power tool that is loud, and water. */
const quiet = ['degreasing', 'removing-growth', 'stripping-coatings', 'final-wash', 'vacuuming'];
const wet = ['pressure-washing', 'water-jetting'];
const finishes = explainers.filter(({ front }) => front.covers.some((id) => /^finish:/.test(id)));
const working = [...dusty, ...quiet, ...wet, 'levelling', 'full-depth'].map(page);

describe('a page somebody works by', () => {
  const pages = [...working, ...finishes.filter(({ slug }) => slug !== 'choosing-a-finish')].map(
    (one) => [one.slug, one] as const,
  );

  it.each(pages)('%s has steps in order, a mistake, a sign to stop and an end', (_, one) => {
    expect(stepsOf(one).split('\n').length, 'steps').toBeGreaterThanOrEqual(4);
    expect(one.body, 'commonest mistake').toMatch(/commonest mistake/);
    expect(one.body, 'sign to stop').toMatch(/^(\*\*)?(They s|S)top\b/m);
    expect(one.body, 'done when').toMatch(/(You are|It is) done when/);
  });

  it.each(dusty.map((slug) => [slug, page(slug)] as const))(
    '%s has the control of dust, eyes and ears in its steps',
    (_, one) => {
      const steps = stepsOf(one);
      expect(steps, 'dust at the tool').toMatch(/vacuum|dust collector|[Ww]ater|sheets/);
      expect(steps, 'breathing').toMatch(/respirator|breathing air/);
      expect(steps, 'eyes').toMatch(/goggles|hood/);
      expect(steps, 'noise').toMatch(/ear protection|plugs and muffs/);
    },
  );

  /*
   * A face shield goes over goggles and never alone (OSHA, 29 CFR 1910 subpart I, Appendix B, chart
   * and its note on shields). That chipping, breaking, grinding, sawing and wire brushing are such
   * work is common practice; in the stream of grit it is the blasting hood.
   */
  const shielded = /goggles with a face shield over them/;
  it.each(
    [
      'grinding',
      'saw-cutting',
      'edge-work',
      'needle-scaling',
      'breaking-out',
      'routing-cracks',
      'chasing-cracks',
      'freeing-bars',
      'cleaning-bars',
      'full-depth',
      'half-cell',
      'one-patch',
      'overhead',
    ].map((slug) => [slug, page(slug)] as const),
  )('%s puts a face shield over the goggles', (_, one) => {
    expect(stepsOf(one)).toMatch(shielded);
  });

  // NIOSH 98-126: from `noise.double` on, plugs and muffs together.
  it.each([
    ['grinding', 'noise.hand-grinder'],
    ['edge-work', 'noise.hand-grinder'],
    ['routing-cracks', 'noise.hand-grinder'],
    ['cleaning-bars', 'noise.hand-grinder'],
    ['breaking-out', 'noise.jackhammer'],
    ['freeing-bars', 'noise.chipping-hammer'],
    ['chasing-cracks', 'noise.chipping-hammer'],
    ['saw-cutting', 'noise.concrete-saw'],
    ['full-depth', 'noise.concrete-saw'],
  ] as const)('%s asks for plugs and muffs, for its tool may be that loud', (slug, figure) => {
    expect(rangeOf(figure)[1]).toBeGreaterThan(valueOf('noise.double'));
    expect(stepsOf(page(slug))).toMatch(/plugs and muffs/);
  });

  it('leads on from the grinder to noise, hands and eyes', () => {
    expect(page('grinding').front.related).toEqual(
      expect.arrayContaining(['noise', 'vibration', 'eyes']),
    );
    expect(page('grinding').body).toMatch(/\[their minutes\]\(\.\.\/vibration\/\)/);
  });

  it('says one rule for the eyes on its page, in the warnings and in the briefing', () => {
    const jobs = 'chipping, breaking, grinding, sawing and wire brushing';
    for (const slug of ['what-owners-can-do', 'what-not-to-hire', 'first-morning'])
      expect(page(slug).body, slug).toMatch(shielded);
    expect(page('eyes').body).toContain(`for ${jobs}, goggles with a face shield over them`);
    expect(page('eyes').body).toContain('for abrasive blasting, the blasting hood');
    const say = formatter('metric');
    const warned = words.hazards(say).eyes.controls.join(' ');
    expect(warned).toContain(`with a face shield over them for ${jobs}`);
    expect(warned).toContain('For abrasive blasting wear the blasting hood');
    // Nowhere is a shield a choice instead of goggles.
    for (const { slug, body } of explainers)
      expect(body, slug).not.toMatch(/or a face shield|goggles with a (face )?shield(?! over)/);
  });

  it.each(
    working
      .filter(({ front }) => front.covers.some((id) => /^method:/.test(id)))
      .map(({ slug, ...rest }) => [slug, rest] as const),
  )('%s gives a setting that is a figure', (_, { body }) => {
    expect(body.match(/<Fig id="/g)?.length ?? 0).toBeGreaterThan(1);
  });

  it.each(
    explainers
      .filter(({ front }) => front.group !== 'start')
      .map((one) => [one.slug, one] as const),
  )('%s says how one knows that it is done, or when to stop', (_, { body }) => {
    expect(body).toMatch(
      /(You are|It is) (done|ready|set up)|You have (done|chosen) well|[Ss]top\b/,
    );
  });
});

describe('who comes before concrete that carries is touched', () => {
  // Common practice, no source: breaking and cutting weaken it, cleaning a thin skin does not.
  it.each(['when-to-call-an-engineer', 'warning-signs', 'structure-and-tendons'])(
    '%s calls the engineer before breaking or cutting, and in doubt, not before cleaning',
    (slug) => {
      const { body } = page(slug);
      expect(body).toMatch(/break(ing|s)?( it)? out/);
      expect(body).toMatch(/chas(e|ing)/);
      expect(body).toMatch(/free(s|ing)? (a )?bars?/);
      expect(body).toMatch(/[Ii]n doubt, call/);
      expect(body).toMatch(/[Cc]leaning (firm concrete|a thin)/);
      expect(body).not.toMatch(/before any concrete comes off|before you remove anything/);
    },
  );
});

describe('a page without a source', () => {
  it.each(
    explainers.filter(({ front }) => !front.sources.length).map((one) => [one.slug, one] as const),
  )('%s says so', (_, { body }) => {
    expect(body).toMatch(/common practice|[Nn]o (published )?source|needs no source/);
  });
});
