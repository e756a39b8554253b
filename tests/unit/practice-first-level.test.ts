import { describe, expect, it } from 'vitest';
import { authored } from '$lib/practice/authored';
import { adviceOn, callOf, type Case } from '$lib/practice/case';
import { isAside, leftOut, picturesOf } from '$lib/practice/facts';
import { generate } from '$lib/practice/generate';
import { grade } from '$lib/practice/grade';
import { askedAt, levelOf, levels } from '$lib/practice/level';
import { caseTitle, inShort, toldOf } from '$words/practice/told';
import { formatter } from '$lib/words/format';

const all: readonly Case[] = [
  ...authored,
  ...Array.from({ length: 240 }, (_, seed) => generate(seed)),
];
const first = all.filter((one) => levelOf(one) === 1);
const say = formatter('us');
const words = (text: string) => text.split(/\s+/).filter(Boolean).length;

describe('a case of the first level', () => {
  it('asks for the method alone, and the levels above ask for more, never less', () => {
    expect(askedAt[1]).toEqual({ steps: false, hazards: false });
    expect(askedAt[4]).toEqual({ steps: true, hazards: true });
    const asked = levels.map((level) => Object.values(askedAt[level]).filter(Boolean).length);
    expect(asked).toEqual([...asked].sort());
  });

  it('is right where the method is, and wrong where it is not, with nothing else asked', () => {
    expect(first.length).toBeGreaterThan(20);
    for (const one of first) {
      const unasked = { steps: null, hazards: null };
      const right = grade(one, { call: callOf(adviceOn(one)), ...unasked });
      expect([right.rating, right.steps, right.hazards], one.id).toEqual(['good', null, null]);
      const other = adviceOn(one).method === 'break-out' ? 'pressure-wash' : 'break-out';
      expect(grade(one, { call: other, ...unasked }).rating, one.id).toBe('again');
    }
  });

  it('leaves room for its question: what stands open of it is at most 74 of the 120 words', () => {
    for (const one of first) {
      const open = toldOf(one, say).filter((fact) => !isAside(one, fact));
      const told = [
        caseTitle(one),
        ...open.map(({ text }) => text),
        inShort(one, leftOut(one, open), say),
      ];
      // How it was found out is said in two words where no picture shows it.
      const unseen = picturesOf(one, open).filter((picture) => !picture).length * 2;
      const standing = told.reduce((sum, text) => sum + words(text), unseen);
      expect(standing, one.id).toBeLessThanOrEqual(74);
    }
  });

  it('folds nothing that decides it', () => {
    // A learner who reads only what stands open can come to the method: whatever decides it is there.
    for (const one of first) {
      const open = toldOf(one, say)
        .filter((fact) => !isAside(one, fact))
        .flatMap(({ about }) => about);
      for (const id of ['looseness', 'depth', 'texture'] as const)
        expect(open, one.id).toContain(id);
      if (one.zone.steel !== 'none-seen') expect(open, one.id).toContain('steel');
      if (one.zone.contamination.length) expect(open, one.id).toContain('contamination');
      if (one.site.warnings.length) expect(open, one.id).toContain('warnings');
      if (!['slab', 'suspended-slab'].includes(one.site.element))
        expect(open, one.id).toContain('element');
    }
  });

  // Common practice, no source: a floor and a soffit ask for other tools, paint and mortar for another roughness.
  it('says where it is and what goes on next, in a fact that stands open or in the line above', () => {
    for (const one of first) {
      const told = toldOf(one, say);
      const open = told.filter((fact) => !isAside(one, fact)).flatMap(({ about }) => about);
      const above = leftOut(one, told);
      expect([...open, ...above], one.id).toEqual(expect.arrayContaining(['element', 'finish']));
      const line = inShort(one, above, say);
      if (!open.includes('finish')) expect(line, one.id).toMatch(/Next: [a-z].*\.$/);
      if (!open.includes('element'))
        expect(line, one.id).toMatch(/^(Slab on the ground|Suspended slab)\./);
    }
    const dusty = authored.find(({ id }) => id === 'bakery-dust') as Case;
    expect(inShort(dusty, leftOut(dusty, toldOf(dusty, say)), say)).toBe(
      'Slab on the ground. Next: thin paint.',
    );
  });

  it('shows no picture twice, and none of what is not there', () => {
    for (const one of all) {
      const shown = picturesOf(one, toldOf(one, say)).flatMap((picture) => picture ?? []);
      expect(new Set(shown.map(({ question }) => question)).size, one.id).toBe(shown.length);
      expect(shown.length, one.id).toBeGreaterThan(1);
      for (const { choice } of shown) expect(['none', 'none-seen']).not.toContain(choice);
    }
  });
});
