import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import Failed from '$lib/ui/ready/Failed.svelte';

const check = (id: string, state: string, steps: readonly string[] = [], counts = true) => ({
  need: { check: id },
  counts,
  verdict: { check: id, state, redo: { steps, ask: [] } },
});

// What a crew has to do next stands with the verdict, not under the fields of its check.
it('names each check that failed, and what is done again, where the verdict stands', async () => {
  document.body.innerHTML = '<details id="pull-off"></details>';
  render(Failed, {
    readiness: {
      checks: [
        check('pull-off', 'not-ready', ['shotblast', 're-sound']),
        check('water-drop', 'not-ready'),
        check('tape', 'ready'),
        check('sounding', 'not-yet-checked'),
        check('carbonation', 'not-ready', ['break-out'], false),
      ],
    } as never,
  });
  const lines = screen.getAllByRole('listitem').map((line) => line.textContent?.trim());
  expect(lines).toHaveLength(2);
  expect(lines[0]).toMatch(/^Strong enough \(pull-off\)\. Do again: Shotblast and Sound again$/);
  expect(lines[1]).toMatch(/^Open \(drinks water\)$|^Clean \(water drop\)$/);
  await userEvent.click(screen.getByRole('link', { name: /Strong enough/ }));
  expect(document.getElementById('pull-off')).toHaveAttribute('open');
});

it('says nothing while nothing has failed', () => {
  render(Failed, { readiness: { checks: [check('tape', 'ready')] } as never });
  expect(screen.queryByRole('list')).toBeNull();
});
