import 'fake-indexeddb/auto';
import { cleanup, render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { readResultCode } from '$lib/keep/practice/result-code';
import { practice } from '$lib/ui/practice/practice.svelte';
import SetDone from '$lib/ui/practice/SetDone.svelte';

// Rendering takes its time on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
const user = userEvent.setup();
afterEach(cleanup);

describe('the end of a set', () => {
  const calls = ['crew', 'grind'] as const;
  async function through() {
    await practice.open();
    practice.start({ cases: ['bakery-dust', 'larch-row-oil'] });
    for (const call of calls) {
      await practice.check({ call, steps: [], hazards: [] });
      practice.goOn();
    }
  }
  const link = () => (screen.getByLabelText('Link with your result') as HTMLInputElement).value;
  const read = () => readResultCode(new URL(link()).hash);

  it('gives the result as a link, with the name the learner chose or none', async () => {
    await through();
    const { run } = practice;
    if (!run) throw new Error('no run');
    render(SetDone, { run, onleave: () => undefined, onagain: () => undefined });
    // It stands open, and nothing else there is louder.
    expect(screen.getByText('Give it to your crew lead').closest('details')).toHaveAttribute(
      'open',
    );
    expect(screen.getAllByRole('button').filter((each) => each.classList.contains('do'))).toEqual([
      screen.getByRole('button', { name: 'Copy the link' }),
    ]);
    expect(new URL(link()).pathname).toBe('/learn/practice/results/');
    const nameless = read();
    expect(nameless).toMatchObject({
      ok: true,
      value: { set: run.set, calls, name: '', ...run.end },
    });
    const name = screen.getByLabelText('Your name, if you like: up to 12 letters');
    await user.type(name, ' Mira of Quay');
    expect(read()).toMatchObject({ ok: true, value: { name: 'Mira of Quay' } });
    await user.type(name, 's');
    expect(screen.getByRole('alert')).toHaveTextContent('Up to 12 letters fit');
    expect(screen.queryByLabelText('Link with your result')).toBeNull();
    expect(name).toHaveValue(' Mira of Quays');
    await user.clear(name);
    // The same run, whatever the name: it is told as one result.
    expect(read()).toEqual(nameless);
  });

  it('is there again when the phone had closed the page, and not once the set was left', async () => {
    await through();
    const { run } = practice;
    if (!run) throw new Error('no run');
    practice.take({ cases: ['bakery-dust'] });
    expect(practice.run?.at).toBe(0);
    practice.take(run.set);
    expect(practice.run).toEqual(run);
    practice.leaveSet();
    practice.take(run.set);
    expect(practice.run).toMatchObject({ at: 0, calls: [] });

    // Half done, it goes on with the next case; nonsense counts as none.
    await practice.check({ call: 'grind', steps: [], hazards: [] });
    practice.take(run.set);
    expect(practice.run).toMatchObject({ at: 1, calls: ['grind'] });
    const [key = ''] = Object.keys(sessionStorage).filter((each) => each.includes('set-run'));
    const kept = sessionStorage.getItem(key) ?? '';
    for (const spoilt of [
      '',
      '[',
      '{}',
      'null',
      kept.replace('"grind"', '"soup"'),
      kept.replace('"went"', '"gone"'),
    ]) {
      sessionStorage.setItem(key, spoilt);
      practice.take(run.set);
      expect(practice.run).toMatchObject({ at: 0, calls: [] });
    }
    practice.leaveSet();
  });
});
