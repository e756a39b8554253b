import { createEmptyCard, forgetting_curve, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, it } from 'vitest';
import { authored } from '$lib/practice/authored';
import { generate, generatedId } from '$lib/practice/generate';
import { dueCases, findCase, nextCase } from '$lib/practice/next';
import { standingOf, type Result } from '$lib/practice/progress';

const minute = 60_000;
const day = 24 * 60 * minute;
const start = Date.UTC(2026, 0, 5, 9);
const result = (id: string, at: number, rating: Result['rating']): Result => ({
  case: id,
  at,
  rating,
});
const ids = authored.map(({ id }) => id);

describe('what comes back when', () => {
  it('is what the published scheduler says, result by result', () => {
    const scheduler = fsrs({ enable_fuzz: false });
    let card = createEmptyCard(new Date(start));
    const progress: Result[] = [];
    for (const [after, rating, grade] of [
      [0, 'again', Rating.Again],
      [2 * minute, 'good', Rating.Good],
      [15 * minute, 'good', Rating.Good],
      [4 * day, 'hard', Rating.Hard],
      [9 * day, 'good', Rating.Good],
    ] as const) {
      progress.push(result('larch-row-oil', start + after, rating));
      ({ card } = scheduler.next(card, new Date(start + after), grade));
      expect(standingOf(progress).known.get('larch-row-oil')?.due).toBe(card.due.getTime());
    }
    // By the curve itself: when it comes back, the chance of knowing it is about nine in ten.
    const chance = forgetting_curve(scheduler.parameters.w, card.scheduled_days, card.stability);
    expect(chance).toBeGreaterThan(0.87);
    expect(chance).toBeLessThan(0.93);
  });

  it('brings a missed case back within minutes, and a known one after days', () => {
    const missed = standingOf([result('bakery-dust', start, 'again')]);
    expect(dueCases(missed, start)).toEqual([]);
    expect(dueCases(missed, start + 2 * minute)).toEqual(['bakery-dust']);
    const known = standingOf([
      result('bakery-dust', start, 'good'),
      result('bakery-dust', start + 12 * minute, 'good'),
    ]);
    const due = known.known.get('bakery-dust')?.due ?? 0;
    expect(due - start).toBeGreaterThan(day);
    expect(nextCase(known, start + 20 * minute, 1).id).not.toBe('bakery-dust');
    expect(nextCase(known, due, 1)).toEqual({ id: 'bakery-dust', why: 'comes-back' });
  });

  it('takes the longest overdue first, and passes over cases this site does not have', () => {
    const standing = standingOf([
      result('one-of-tomorrow', start, 'again'),
      result('bakery-dust', start + 1000, 'again'),
      result('larch-row-oil', start + 2000, 'again'),
    ]);
    expect(dueCases(standing, start + day)).toEqual(['bakery-dust', 'larch-row-oil']);
  });

  it('does not bring the case just looked at again at once, but the next one or a new one', () => {
    const later = start + day;
    const standing = standingOf([
      result('bakery-dust', start, 'again'),
      result('larch-row-oil', start + 1000, 'again'),
    ]);
    const after = (id: string) => nextCase(standing, later, 1, { after: id }).id;
    expect(after('bakery-dust')).toBe('larch-row-oil');
    expect(after('larch-row-oil')).toBe('bakery-dust');
    const alone = standingOf([result('bakery-dust', start, 'again')]);
    expect(nextCase(alone, later, 1, { after: 'bakery-dust' }).why).toBe('new');
    // Nor one that was left without an answer, whatever the dice.
    for (let seed = 0; seed < 80; seed += 1)
      expect(nextCase(standingOf([]), start, seed, { after: 'bakery-dust' }).id).not.toBe(
        'bakery-dust',
      );
  });

  it('does not stumble over a clock that goes back', () => {
    const standing = standingOf([
      result('bakery-dust', start + day, 'good'),
      result('bakery-dust', start, 'good'),
    ]);
    expect(standing.known.get('bakery-dust')?.tried).toBe(2);
    expect(standing.known.get('bakery-dust')?.due).toBeGreaterThan(start + day);
  });
});

describe('difficulty', () => {
  const run = (...how: Result['rating'][]) =>
    standingOf(how.map((rating, index) => result(ids[index % 40] ?? '', start + index, rating)))
      .level;
  it('grows with what is right, falls with what is wrong, and stays within its ends', () => {
    expect(run()).toBe(1);
    expect(run('good', 'good')).toBe(1);
    expect(run('good', 'good', 'good')).toBe(2);
    expect(run('good', 'again', 'good', 'good')).toBe(1);
    expect(run('good', 'hard', 'good', 'good')).toBe(2);
    expect(run('good', 'good', 'good', 'again')).toBe(2);
    expect(run('good', 'good', 'good', 'again', 'again')).toBe(1);
    expect(run('again', 'again', 'again', 'again')).toBe(1);
    expect(run(...Array.from({ length: 60 }, () => 'good' as const))).toBe(4);
  });

  it('finds a case by its id', () => {
    expect(findCase(generatedId(9))).toEqual(generate(9));
    expect(findCase('larch-row-oil')?.id).toBe('larch-row-oil');
    expect(findCase('nowhere')).toBeUndefined();
  });
});
