import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { demoJob } from '$lib/keep/demos';
import CrewPage from '$lib/ui/crew/CrewPage.svelte';
import { session } from '$lib/ui/session.svelte';
import { hollow } from '../helpers/crew-jobs';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

/** Puts a job in hand and opens the page on it. */
async function open(job = hollow({ crew: 2 }), day: string | null = null) {
  await session.startNew(job);
  return render(CrewPage, { day });
}
const user = userEvent.setup();

describe('a day of the plan', () => {
  beforeEach(() => open());

  it('shows each step with its row of the dust table and how loud its tool is', async () => {
    await user.click(screen.getByLabelText('United States'));
    const card = screen.getByRole('heading', { name: /Break out/ }).closest('article');
    if (!card) throw new Error('no card for breaking out');
    expect(card).toHaveTextContent('row (x)');
    expect(card).toHaveTextContent('103 to 113 dB(A)');
    expect(card).toHaveTextContent('Forecourt');
  });

  it('says what it does not know, and takes the maker’s figure for it', async () => {
    const card = screen.getByRole('heading', { name: /Saw the edge/ }).closest('article');
    if (!card) throw new Error('no card for the saw cut');
    expect(card).toHaveTextContent('No published vibration. Ask the maker.');
    await user.type(within(card).getByLabelText('Vibration at the hand'), '3');
    expect(card).toHaveTextContent('3 to 6 m/s² (the maker’s, counted up to double)');
    expect(session.job.toolLevels?.['walk-behind-saw']).toEqual({ vibration: 3 });
  });

  it('refuses a level nobody works in at the field, and keeps the last good one', async () => {
    const card = screen.getByRole('heading', { name: /Saw the edge/ }).closest('article');
    if (!card) throw new Error('no card for the saw cut');
    const field = within(card).getByLabelText('Level at the ear', { selector: 'input' });
    await user.type(field, '98');
    expect(card).toHaveTextContent('98 dB(A) (your own)');
    await user.type(field, '0');
    expect(field).toBeInvalid();
    expect(within(card).getByRole('alert')).toHaveTextContent('980 dB(A) is not a working level');
    expect(card).toHaveTextContent('98 dB(A) (your own)');
  });

  // What is read must not be struck through: every word stands on a ground drawn after the last line.
  it('runs no limit line through the words of a chart', () => {
    const charts = [...document.querySelectorAll('.pictures svg')].filter((svg) =>
      svg.querySelector('path.limit'),
    );
    expect(charts.length).toBeGreaterThan(1);
    for (const svg of charts) {
      const drawn = [...svg.querySelectorAll('path, rect, text')];
      const last = Math.max(
        ...drawn.map((mark, at) => (mark.matches('.limit, .action') ? at : -1)),
      );
      const grounds = drawn.slice(last + 1).filter((mark) => mark.matches('rect.ground'));
      const words = drawn.slice(last + 1).filter((mark) => mark.matches('text'));
      expect(words.length).toBeGreaterThan(2);
      expect(grounds).toHaveLength(words.length);
      for (const word of words) {
        const number = (mark: Element, name: string) => Number(mark.getAttribute(name));
        const [x, y] = [number(word, 'x'), number(word, 'y')];
        const wide = Math.min(
          352,
          (word.textContent ?? '').replace(/\s+/g, ' ').trim().length * 6.2,
        );
        const from = word.getAttribute('text-anchor') === 'end' ? x - wide : x;
        const under = grounds.some((ground) => {
          const [left, top] = [number(ground, 'x'), number(ground, 'y')];
          const [right, bottom] = [left + number(ground, 'width'), top + number(ground, 'height')];
          return left <= from && right >= from + wide && top <= y - 9 && bottom >= y;
        });
        expect(under, word.textContent ?? '').toBe(true);
      }
    }
  });

  it('takes turns when told so, and keeps that with the job', async () => {
    await user.click(screen.getByLabelText('Everybody in equal turns'));
    expect(session.job.crewDay?.turns).toBe('equal');
  });
});

// Common practice, no source: what is not counted is said, or "nothing" would stand for it.
describe('what a day leaves out', () => {
  it('a day on which something is placed says that its tools are not counted', async () => {
    await open(demoJob('community-hall-forecourt'), '3');
    expect(screen.getByText(/not counted here: Cover it/)).toBeInTheDocument();
  });

  it('no card is without a line of work', async () => {
    await open(demoJob('community-hall-forecourt'), '1');
    for (const card of document.querySelectorAll('article:has(> h2)'))
      expect(card.querySelector('h2 + p')?.textContent ?? '', card.textContent).not.toBe('');
    expect(screen.getByText('Only what everybody does.')).toBeInTheDocument();
  });

  it('tools stand with the size the plan has them in, where their step is told', async () => {
    await open(demoJob('community-hall-forecourt'), '1');
    const card = screen.getByRole('heading', { name: /Break out/, level: 3 }).closest('article');
    expect(card).toHaveTextContent(/chipping hammer of 14\skg at most/);
    expect(screen.getAllByText(/chipping hammer of 14\skg at most/).length).toBeGreaterThan(1);
  });
});

describe('without a plan', () => {
  it('reckons a day put together by hand, and refuses a day of more than 24 hours', async () => {
    await open({ name: '', site: {}, zones: [{ id: 'a', name: '', answers: {} }] });
    await user.click(screen.getByRole('button', { name: 'Add a task' }));
    const minutes = screen.getByLabelText('Minutes running');
    await user.clear(minutes);
    await user.type(minutes, '180');
    // HSE ready reckoner: 5 m/s2 for 3 h is 150 points; 5 is the low end of a breaker.
    expect(screen.getAllByText(/150 to/).length).toBeGreaterThan(0);
    await user.type(minutes, '0');
    expect(screen.getByRole('alert')).toHaveTextContent('A day has 24 hours');
    // No plan, no times: what the ticks are worth is said beside them.
    expect(screen.getByText(/^Ticks stay in this tab\./)).toBeInTheDocument();
    expect(session.job.crewDay?.mix).toEqual([
      { step: 'break-out', tool: 'jackhammer', minutes: 180 },
    ]);
    await user.clear(minutes);
    await user.type(minutes, '-5');
    expect(screen.getByRole('alert')).toHaveTextContent('Time cannot be less than zero');
    expect(session.job.crewDay?.mix?.[0]?.minutes).toBe(180);
  });

  it('takes the same tool twice in a day', async () => {
    await open({ name: '', site: {}, zones: [{ id: 'a', name: '', answers: {} }] });
    for (const text of ['60', '90']) {
      await user.click(screen.getByRole('button', { name: 'Add a task' }));
      const minutes = screen.getAllByLabelText('Minutes running').at(-1) as HTMLElement;
      await user.clear(minutes);
      await user.type(minutes, text);
    }
    // Both count towards the day: 5 m/s2 for 2.5 h is 125 points by the HSE ready reckoner.
    expect(screen.getAllByText(/125 to/).length).toBeGreaterThan(0);
    const strip = screen.getByRole('img', { name: /dust/i });
    expect(strip).toHaveAccessibleName(/1\shour.*1\.5\shours/);
    const card = screen.getByRole('heading', { name: /Break out/, level: 3 }).closest('article');
    expect(card).toHaveTextContent('Tool running: 2.5 hours');
  });
});
