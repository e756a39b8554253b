import { describe, expect, it } from 'vitest';
import { planJob } from '$lib/plan/plan';
import { formatter } from '$lib/words/format';
import { planDocument } from '$words/plan/document';
import { tradeJob } from '../helpers/trade-jobs';

const say = formatter('metric');
const stained = { looseness: ['hollow'], depth: 20, steel: ['rust-stain'] };
const dusty = { looseness: ['powdery'] };
const orderOf = (...zones: readonly object[]) => {
  const job = tradeJob(zones, { salts: ['de-icing'] });
  const { sections } = planDocument(job, planJob(job), say, { date: '', nameOf: (zone) => zone });
  const steps = sections.flatMap(({ blocks }) =>
    blocks.flatMap((block) => (block.kind === 'list' && block.numbered ? block.items : [])),
  );
  return steps;
};

// Common practice, no source: on paper too, nobody takes a step that must wait for one they may begin.
describe('a step that nobody may begin yet', () => {
  it('says so before its name where it waits in every zone, and not where one zone is free', () => {
    const held = orderOf(stained);
    expect(held.length).toBeGreaterThan(3);
    // Making safe and sounding harm nothing, and are how it gets cleared.
    const [safe, sound, ...work] = held;
    expect(safe).toMatch(/^Make safe/);
    expect(sound).toMatch(/^Sound and mark/);
    for (const step of work) expect(step).toMatch(/^Not yet: /);
    const shared = orderOf(stained, dusty);
    expect(shared.some((step) => step.includes('once cleared: z0'))).toBe(true);
    expect(shared.filter((step) => /^Not yet: (Shotblast|Grind)/.test(step))).toEqual([]);
    for (const step of orderOf(dusty)) expect(step).not.toContain('Not yet');
  });
});

// Cement is laid on damp concrete, a coating on dry (trade.md 6, common practice): one plan says one.
describe('the step that makes it damp, or dry', () => {
  const nameOf = (...zones: readonly object[]) =>
    orderOf(...zones).find((step) => /damp|[Ll]et it dry/.test(step.split(' (')[0] ?? ''));
  it('is named by the case in hand, and by both where the zones differ', () => {
    expect(nameOf({ finish: ['overlay'] })).toMatch(/^\d*\.?\s?Make it damp \(/);
    expect(nameOf({ finish: ['thin-film'] })).toMatch(/^Let it dry \(/);
    expect(nameOf({ finish: ['overlay'] }, { finish: ['thin-film'] })).toMatch(
      /^Make it damp or dry, as its label asks \(/,
    );
  });
});
